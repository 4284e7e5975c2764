"""Text as dictation and phones write it, made plain."""

import pytest

from handlers.reading.words.madeplain import made_plain


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("put two kilos in the blue been", "put two kilos in the blue bin"),
        ("800 g in the blue bun", "800 g in the blue bin"),
        ("the yard been is fifteen liters", "the yard bin is fifteen liters"),
        ("what did I put in 2day", "what did I put in today"),
        ("waht's due", "what's due"),
        ("whats do", "whats due"),
        ("what's do this weak?", "what's due this week?"),
        ("how much barn for 2 kg", "how much bran for 2 kg"),
        ("how fulll is it", "how full is it"),
        ("remnid us", "remind us"),
        ("we have bin blue, 20 liter", "we have the blue bin, 20 liter"),
        ("put 1 kg in the bin of the balcony", "put 1 kg in the balcony bin"),
        ("opened bin of balcony, 15 L", "opened the balcony bin, 15 L"),
        ("yeah nah it was more like 350", "no, it was more like 350"),
        ("nah mate 400", "no, 400"),
        ("sorry sorry, not half kilo, 750 gms", "sorry, not half kilo, 750 gms"),
        ("One paav methi stalks", "quarter kilo methi stalks"),
        ("a film o' white on bin 3", "a film of white on bin 3"),
        ("patches o green on the shed", "patches of green on the shed"),
        ("oops 4 not 3 hundred", "oops 4 hundred not 3 hundred"),
    ],
)
def test_what_was_meant(text: str, meant: str) -> None:
    assert made_plain(text) == meant


@pytest.mark.parametrize(
    "text",
    [
        "had 2 kg of buns delivered",
        "pan o arroz in the shed",
        "layer o no layer",
        "the yard been swept?",
        "where has the blue been all week",
        "2day old bread",
        "what's do with the lid",
        "what do we do today",
        "the horses are in the barn",
        "the liquid is weak",
        "Ben put 2 kg in",
        "watt and wattle",
        "nah yeah, I'll take it",
        "4 not 3 bins",
        "chucked in bin green beans",
        "the bin blue mould and all",
        "a bin of leaves",
        "a paav bhaji",
    ],
)
def test_what_stays_as_it_is(text: str) -> None:
    assert made_plain(text) == text
