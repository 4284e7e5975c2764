"""The one door: any text is read, in time linear in its length."""

import time
from dataclasses import replace
from datetime import date, datetime
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.reading.actjson import as_json
from handlers.reading.acts import Bury, Drain, Layer
from handlers.reading.explain import explain
from handlers.reading.read import read
from tests.reading.context import acts, group
from tests.reading.hostile import PIECES, text

WORDS = st.sampled_from(
    [
        "added",
        "put",
        "2",
        "kg",
        "in",
        "the",
        "shed",
        "bin",
        "3",
        "and",
        "drained",
        "300",
        "ml",
        "of",
        "from",
        "not",
        "if",
        "?",
        ".",
        ",",
        '"',
        "I'll",
        "she",
        "said",
        "yesterday",
        "on",
        "3rd",
        "may",
        "half",
        "a",
        "bucket",
        "third",
        "bran",
        "mould",
        "white",
        "smells",
        "like",
        "no",
        "1/2",
        "-",
        "-3",
        "9/5",
        "ph",
        ":",
        "sealed",
        "buried",
        "how",
        "much",
        "is",
        "it",
        "ok",
        "*",
        "sorry",
        "can't",
        "take",
        "Ines",
        "to",
    ]
)


@given(st.text(max_size=300))
def test_any_text_is_read(any_text: str) -> None:
    for act in read(any_text, group()):
        assert as_json(act)["act"] == act.act


@given(st.lists(WORDS, max_size=40))
def test_any_order_of_the_crafts_own_words_is_read(words: list[str]) -> None:
    for act in read(" ".join(words), group()):
        assert act.rules


@given(st.floats(min_value=0.01, max_value=99), st.sampled_from(["kg", "kilos"]))
def test_an_amount_written_is_the_amount_read(kg: float, unit: str) -> None:
    (act,) = acts(f"added {kg:.2f} {unit} scraps to the shed")
    assert getattr(act, "mass_kg", None) == pytest.approx(round(kg, 2))


@pytest.mark.parametrize("piece", PIECES)
def test_no_pattern_runs_away_on_hostile_text(piece: str) -> None:
    hostile = text(piece)
    read("added 2 kg to the shed", group())
    started = time.process_time()
    read(hostile, group())
    assert time.process_time() - started < 2  # what runs away takes minutes; the bench has figures


def test_the_day_is_that_of_the_group_not_of_the_clock() -> None:
    late = datetime(2026, 6, 17, 23, 30, tzinfo=ZoneInfo("UTC"))
    (act,) = acts("2 kg in the shed", at=late, zone=ZoneInfo("Asia/Tokyo"))
    assert str(getattr(act, "on", "")) == "2026-06-18"


def test_an_explanation_names_what_was_found_and_why() -> None:
    lines = explain("added 2 kg peel to the shed", group())
    assert "“2 kg”: mass 2" in lines
    assert any(line.startswith("layer: ") for line in lines)


@pytest.mark.parametrize("signs", ["🏴", "-", "…", "Sunn\ny? No, no place in there, sorry."])
@pytest.mark.parametrize("after_bot", [False, True])
def test_signs_without_words_are_read_behind_any_record(signs: str, *, after_bot: bool) -> None:
    on = date(2026, 6, 1)
    for last in (Bury(bin="shed", on=on), Layer(mass_kg=2.0, bin="shed", on=on), Drain(bin="shed")):
        context = replace(group(), in_room=True, after_bot=after_bot, last=last)
        assert not any(isinstance(act, Bury | Layer | Drain) for act in read(signs, context))
