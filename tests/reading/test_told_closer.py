"""What a few words more tell of one layer or draining: shares, sizes, what it came off."""

from datetime import date

import pytest

from handlers.practice.kinds import Kind
from handlers.reading.acts import (
    Act,
    Amend,
    Ask,
    Bury,
    Drain,
    Layer,
    Observe,
    Open,
    Seal,
    Set,
    Stock,
)
from tests.reading.context import acts

BINS = ("shed", "green", "hall", "bin 3")


def told(text: str) -> list[Act]:
    return list(acts(text, bins=BINS))


@pytest.mark.parametrize(
    ("text", "makeup"),
    [
        ("noodles and duck, 2 kg, shed. Mostly noodles", {"grain": 0.7, "meat": 0.3}),
        ("put 2 kg of pasta and ham in green, about a third ham", {"grain": 2 / 3, "meat": 1 / 3}),
        ("3 kg in hall: beans, leeks, bacon ends. Half bacon", {"meat": 0.5}),
        ("stew for green, 2 litres, bits of pork and all", {"meat": 0.3}),
        ("leek tops in the shed, 700 g, there's cheese in there too", {"dairy": 0.3}),
        ("meatless meatballs into green, 300 g", {"pulse": 1.0}),
        ("veggie black pudding in the shed, 400 g", {"pulse": 1.0}),
        ("plant-based nuggets in green, 400 g", {"pulse": 1.0}),
        ("meat-free meatballs, 300 g, shed", {"pulse": 1.0}),
        ("mock duck 200 g in the hall", {"pulse": 1.0}),
        ("tofu and turkey, 600 g, shed", {"pulse": 0.5, "meat": 0.5}),
        ("celeriac steaks, 1 kg, in green", {"vegetable": 1.0}),
        ("2 kg in the shed, all plant based", {"vegetable": 1.0}),
        ("toad in the hole, 700 g, shed", {"meat": 0.5, "grain": 0.5}),
        ("tom put 700 g fish scale and guts in hall", {"fish": 1.0}),
    ],
)
def test_shares_told_behind(text: str, makeup: dict[Kind, float]) -> None:
    [layer] = [act for act in told(text) if isinstance(act, Layer)]
    assert layer.materials is not None
    assert {kind: layer.materials.get(kind) for kind in makeup} == pytest.approx(makeup)


@pytest.mark.parametrize(
    ("text", "kilos"),
    [
        ("the skins off three kilos of swede, green, 400 g", 0.4),
        ("peel from about 4 kg of beetroot, 600 g, into the hall", 0.6),
        ("tops of a stone of parsnips in the shed, I'd say 1 kg", 1.0),
        ("nearly a kilo, 940 g, of crusts into the hall", 0.94),
        ("two buckets of crusts for the shed, would've been 7 kg", 7.0),
        ("leeks 1.2, cod 600 g, all green", 1.8),
        ("4k swede peelings in the hall", 4.0),
        ("put 2 point 5 kg in the shed", 2.5),
        ("at that point 3 kg of leeks went in the shed", 3.0),
    ],
)
def test_what_went_in_is_weighed_once(text: str, kilos: float) -> None:
    [layer] = [act for act in told(text) if isinstance(act, Layer)]
    assert layer.mass_kg == pytest.approx(kilos)


@pytest.mark.parametrize("text", ["would have been 2 kg for the shed, but the dog had it"])
def test_what_would_have_gone_in_did_not(text: str) -> None:
    assert not any(isinstance(act, Layer) for act in told(text))


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("drained a 3 litre jug from the shed, half full", 1.5),
        ("drained a jug off green, the 2 litre jug but not full, like a quarter", 0.5),
    ],
)
def test_how_full_the_jug_was(text: str, litres: float) -> None:
    [drain] = [act for act in told(text) if isinstance(act, Drain)]
    assert drain.volume_l == pytest.approx(litres)


@pytest.mark.parametrize(
    ("text", "layers"),
    [
        ("1.6 kg shed, 1.2 hall", {"shed": 1.6, "hall": 1.2}),
        ("700 g green and 450 bin 3, all crusts", {"green": 0.7, "bin 3": 0.45}),
        ("2 kg shed, 3 green, 1 hall", {"shed": 2.0, "green": 3.0, "hall": 1.0}),
        ("shed and green both got 400 and 200 g of leeks", {"shed": 0.4, "green": 0.2}),
        ("2 kg crusts shed, 3 green cushions for the bench", {"shed": 2.0}),
    ],
)
def test_a_bare_number_stands_with_its_bin(text: str, layers: dict[str, float]) -> None:
    found = {act.bin: act.mass_kg for act in told(text) if isinstance(act, Layer)}
    assert found == pytest.approx(layers)


@pytest.mark.parametrize(
    ("text", "kind", "on"),
    [
        ("yesterday I seal the hall", Seal, date(2026, 6, 16)),
        ("last night we drain green, two cups", Drain, date(2026, 6, 16)),
        ("Easter Monday leftovers, lamb bones 1 kg into green this morning", Layer, None),
        ("sealed green, the day after Boxing Day", Seal, date(2025, 12, 27)),
        ("green is brim full and sealed. A week from now is the 24th", Seal, None),
    ],
)
def test_the_day_of_the_deed(text: str, kind: type[Act], on: date | None) -> None:
    [act] = [act for act in told(text) if isinstance(act, kind)]
    assert getattr(act, "on", None) == (on or date(2026, 6, 17))


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        ("it's giving vinegar (green)", ("sour",)),
        ("hall is giving rotten egg", ("rotten",)),
        ("the shed doesn't half stink of ammonia", ("ammonia",)),
    ],
)
def test_smells_in_turns_of_phrase(text: str, signs: tuple[str, ...]) -> None:
    [seen] = [act for act in told(text) if isinstance(act, Observe)]
    assert seen.signs == signs


def test_acidity_beside_warmth() -> None:
    [seen] = [act for act in told("temp 22 and the strip says 4 point 5, hall") if act]
    assert isinstance(seen, Observe)
    assert (seen.celsius, seen.ph, seen.bin) == (22.0, 4.5, "hall")


@pytest.mark.parametrize(
    ("text", "topic", "field", "value"),
    [
        ("how big a trench for a full bucket, it's the 15 litre one", "trench", "volume_l", 15.0),
        ("bot, how much tea in a 9 litre can for the rhubarb", "dilution", "use", "rhubarb"),
        ("how much liquid to 4 litres of water? It's for the roses", "dilution", "use", "roses"),
        ("does the hall bin take cheese?", "allowed", "bin", "hall"),
    ],
)
def test_what_is_asked(text: str, topic: str, field: str, value: float | str) -> None:
    [ask] = [act for act in told(text) if isinstance(act, Ask)]
    assert (ask.topic, getattr(ask, field)) == (topic, value)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("bought 8 kg of bran, plain stuff for the ponies", Stock),
        ("closed the hall and locked the gate, Tom has the keys", Seal),
        ("bot use imperial, lol jk don't", Set),
        ("the dog had 300 g of bones, none for the shed", Layer),
    ],
)
def test_said_of_something_else(text: str, kind: type[Act]) -> None:
    assert not any(isinstance(act, kind) for act in told(text))


def test_bones_that_a_dog_has_done_with_go_in() -> None:
    [layer] = told("400 g of rib bones the dog had finished with, bin 3")
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(0.4)
    assert layer.bin == "bin 3"


def test_a_place_in_a_sentence_of_its_own() -> None:
    [bury] = told("Buried green. Second ridge from the gate.")
    assert isinstance(bury, Bury)
    assert bury.place == "Second ridge from the gate"


@pytest.mark.parametrize("text", ["no, that was the jam, not the bin"])
def test_not_the_bin_puts_nothing_right(text: str) -> None:
    assert not told(text)


@pytest.mark.parametrize(
    ("text", "makeup"),
    [
        ("coffee grounds and tea in green, 300 g", {"coffee": 1.0}),
        ("eggshells and tea into the shed, 400 g", {"bone": 0.5, "coffee": 0.5}),
    ],
)
def test_tea_among_scraps(text: str, makeup: dict[Kind, float]) -> None:
    [layer] = [act for act in told(text) if isinstance(act, Layer)]
    assert layer.materials == pytest.approx(makeup)


def test_tea_that_is_drunk_is_not_drained() -> None:
    found = told("had a cup of tea, then 2 kg of leeks to the shed")
    assert [type(act) for act in found] == [Layer]


@pytest.mark.parametrize(
    ("text", "kilos"),
    [
        ("3 kg in the shed minus the bones, so 2.4", 2.4),
        ("1 kg of leeks in green, not 3 kg", 1.0),
        ("another 2 kg in the hall, that's 9 kg this month", 2.0),
        ("the hall got 600 g of leeks and the same of crusts", 1.2),
        ("weighed the pail full 4.1 kg, empty 600 g, into the hall", 3.5),
        ("5 lb of crusts in green, tell a lie, 4 lb", 4 * 0.45359237),
    ],
)
def test_figures_that_are_no_more_of_it(text: str, kilos: float) -> None:
    [layer] = [act for act in told(text) if isinstance(act, Layer)]
    assert layer.mass_kg == pytest.approx(kilos)


@pytest.mark.parametrize(
    ("text", "makeup"),
    [
        ("2 kg of leeks in green, not 1 kg of pork as somebody said", {"vegetable": 1.0}),
        ("3 kg in the shed of which 0 meat", {"mixed": 1.0}),
        ("2 kg of scraps in the hall, some of it was bones", {"bone": 0.3, "mixed": 0.7}),
    ],
)
def test_what_is_not_in_it(text: str, makeup: dict[Kind, float]) -> None:
    [layer] = [act for act in told(text) if isinstance(act, Layer)]
    assert layer.materials == pytest.approx(makeup)


@pytest.mark.parametrize(
    "text",
    [
        "I'm sealing green when it's two thirds full",
        "the hall gets buried Friday",
        "green is sealed shut, can't get the lid off",
        "sealed green Sunday... I mean I will Sunday",
        "another 3 kg of bran needed",
        "so that makes 6 kg in the hall this week",
        "hall is 9 kg heavier than last week",
    ],
)
def test_not_done_or_not_there(text: str) -> None:
    assert not told(text)


def test_the_wrong_smell_is_asked_about_but_not_told() -> None:
    found = told("the shed smells like vinegar, is that wrong?")
    assert all(getattr(act, "signs", None) != ("rotten",) for act in found)
    assert {sign for act in found for sign in getattr(act, "signs", None) or ()} == {"sour"}


def test_a_growth_of_another_colour() -> None:
    last = Observe(signs=("white_mould",), bin="shed")
    [seen] = acts("actually it's more green", bins=("shed",), in_room=True, of_bins=True, last=last)
    assert isinstance(seen, Observe)
    assert seen.signs == ("green_mould",)


def test_one_more_bin_behind_an_opening() -> None:
    last = Open(bin="shed", capacity_l=12.0)
    [opened] = acts("and the cellar bin, 18 L", bins=("shed",), in_room=True, last=last)
    assert isinstance(opened, Open)
    assert (opened.bin, opened.capacity_l) == ("cellar", 18.0)


def test_a_bare_figure_behind_a_question_is_no_size() -> None:
    last, asked = Open(bin="shed", capacity_l=12.0), Ask(topic="dilution", liquid_l=0.05)
    context = {"in_room": True, "last": last, "asked": (asked,), "after_bot": True}
    assert not any(isinstance(a, Amend) for a in acts("no wait it's 80", bins=("shed",), **context))


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("drained the shed while having a mug of tea", None),
        ("had a nice cup of tea and drained the green, 200 ml", 0.2),
        ("drained the hall over a glass of wine, got 150 ml", 0.15),
        ("drained a cup of tea from the shed", 0.25),
        ("had a cup of tea from the shed tap", 0.25),
        ("we had half a litre of juice off green", 0.5),
    ],
)
def test_what_somebody_drinks_is_not_drained(text: str, litres: float | None) -> None:
    [drain] = told(text)
    assert isinstance(drain, Drain)
    assert drain.volume_l == (None if litres is None else pytest.approx(litres))


@pytest.mark.parametrize(
    ("text", "on"),
    [
        ("missed yesterday, so 800 g today in the shed", date(2026, 6, 17)),
        ("700 g in green today, nothing yesterday", date(2026, 6, 17)),
        ("didn't manage Monday, 1 kg in the hall on Tuesday", date(2026, 6, 16)),
        ("no time on Sunday but 900 g in the shed on Monday", date(2026, 6, 15)),
        ("forgot to say, 900 g in the shed on Monday", date(2026, 6, 15)),
        ("900 g in the shed yesterday, no meat today", date(2026, 6, 16)),
    ],
)
def test_a_day_without_it_is_not_its_day(text: str, on: date) -> None:
    [layer] = told(text)
    assert isinstance(layer, Layer)
    assert layer.on == on


@pytest.mark.parametrize(
    "text",
    [
        "no bran left so I put 1 kg in the shed",
        "ran out of bran so 1 kg went in the shed without",
        "1 kg in the shed, no bran on it",
    ],
)
def test_scraps_without_bran_are_no_bran(text: str) -> None:
    [layer] = acts(text, bins=BINS, in_room=True)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(1.0)
