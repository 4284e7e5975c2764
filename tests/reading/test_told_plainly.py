"""Reports in plain words that were once misread: rooms and wings, decagrams, whose day it was."""

from datetime import date

import pytest

from handlers.reading.acts import Act, Ask, Batch, Bury, Layer, Observe, Open, Seal
from tests.reading.context import acts

_BINS = ("boiler room", "roof", "deck", "east wing", "B wing", "yard", "red", "bin 3", "Mabel")
_MEMBERS = ("ines", "kofi", "ruth")
MONDAY, TUESDAY, WEDNESDAY = (date(2026, 6, day) for day in (15, 16, 17))


def _read(text: str) -> tuple[Act, ...]:
    return acts(text, bins=_BINS, members=_MEMBERS)


@pytest.mark.parametrize(
    ("text", "bin"),
    [
        ("2 kg of peel in the boiler room bin", "boiler room"),
        ("1 kg peel, roon bin", None),
        ("1 kg of peel in the rooof", "roof"),
        ("put a kilo of peel in the deck bin", "deck"),
        ("put 1 kg of peel in the wall bin", "wall"),
        ("2 kg rice to B wing", "B wing"),
        ("2 kg rice to the east wing", "east wing"),
    ],
)
def test_a_word_of_the_house_is_no_slip_of_a_bins_name(text: str, bin: str | None) -> None:
    [layer] = _read(text)
    assert isinstance(layer, Layer)
    assert bin is None or layer.bin == bin
    assert set(layer.materials or {}) <= {"vegetable", "grain"}


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Started a new bin, 20 litres. We are calling it puck.", "puck"),
        (
            "New bin has come, 15 litres, for everybody. We're calling it the back step.",
            "back step",
        ),
        ("New bin has come, 15 litres. calling it Nettle", "Nettle"),
    ],
)
def test_a_new_bin_bears_its_own_name(text: str, name: str) -> None:
    [opened] = _read(text)
    assert isinstance(opened, Open)
    assert opened.bin == name


@pytest.mark.parametrize(
    ("text", "mass"),
    [
        ("40 dkg of potato peel in bin 3", 0.4),
        ("25 deka of crusts, Mabel", 0.25),
        ("Mabel, 15 dag of rice", 0.15),
        ("30 dkg carrot tops and 10 dkg cheese, bin 3", 0.4),
        ("2 lb of dry stuffing and half a pound of sprouts nobody wanted, in bin 3", 1.134),
        ("1 kg of rice nobody finished and 500 g of peel in bin 3", 1.5),
        ("the salad nobody ate, 600 g, to bin 3", 0.6),
        ("bin 3, 2 kg pea pods. Always 2 kg of pods for 500 g of peas", 2.0),
        ("Mabel: 1 kg of husks. Usually 1 kg of husks for 300 g of corn", 1.0),
    ],
)
def test_amounts(text: str, mass: float) -> None:
    [layer] = _read(text)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(mass, rel=0.01)


@pytest.mark.parametrize(
    "text",
    [
        "Lunch waste total 9 kg. 5 in Mabel, 4 in bin 3.",
        "total 9 kg: 5 in Mabel, 4 in bin 3",
        "9 kg of waste in total, 5 in Mabel and 4 in bin 3",
    ],
)
def test_what_is_told_of_each_bin_adds_up_to_the_total(text: str) -> None:
    layers = [act for act in _read(text) if isinstance(act, Layer)]
    assert [(layer.bin, layer.mass_kg) for layer in layers] == [("Mabel", 5.0), ("bin 3", 4.0)]


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("I was ill yesterday so I forgot: on Monday I put 1 kg of leek in bin 3", [MONDAY]),
        ("I was away on Monday so here it is: on Tuesday I put 2 kg of rice in bin 3", [TUESDAY]),
        ("Put 2 kg in bin 3 last night. Sealed it too.", [TUESDAY, TUESDAY]),
        ("put 2 kg of peel in bin 3 on Monday. drained it also", [MONDAY, MONDAY]),
        ("Put 2 kg in bin 3 last night. Sealed it this morning.", [TUESDAY, WEDNESDAY]),
    ],
)
def test_days(text: str, days: list[date]) -> None:
    assert [act.on for act in _read(text) if not isinstance(act, Ask)] == days  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("bin 3 went in the ground yesterday two feet down by the lilacs", "lilacs"),
        ("Mabel went into the ground 40 cm deep under the fig", "fig"),
        ("bin 3 has been given to the bean bed", "bean bed"),
        ("gave bin 3 to the rose bed this morning", "rose bed"),
        ("bin 3 went in the ground yesterday 40 cm deep", "ground"),
    ],
)
def test_places(text: str, place: str) -> None:
    [buried] = _read(text)
    assert isinstance(buried, Bury)
    assert buried.place == place


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("done Mabel last night, about 2 kg", ["layer"]),
        ("did bin 3 this morning, 2 kg of peel", ["layer"]),
        ("done bin 3", ["done"]),
        (
            "please strike that last entry. It was the school's cart I weighed, not ours",
            ["retract"],
        ),
        ("Bran made yesterday: 5 kg of rice bran, jaggery and culture mixed", ["batch"]),
        ("closed er up", ["seal"]),
        ("taped er down", ["seal"]),
        ("the red one's froze solid", ["observe"]),
        ("red has froze on top this morning", ["observe"]),
        ("bin 3 smells like a barrel of pickles", ["observe"]),
        ("bin 3 tap is leaking, I put a bowl under", []),
        ("put a bucket under the bin 3 tap, got 300 ml", ["drain"]),
        ("Mabels been sealed near two weeks, when can it go in the ground", ["ask"]),
        ("just sealed bin 3, when is it ready", ["seal", "ask"]),
        ("bin 3 stays shut till Sunday, correct?", ["ask"]),
        ("red gets buried on Sunday, no?", ["ask"]),
        ("I have washed bin 3 and begun it anew", ["open"]),
        ("2 kg begun in bin 3", ["layer"]),
    ],
)
def test_kinds(text: str, kinds: list[str]) -> None:
    assert [act.act for act in _read(text)] == kinds


@pytest.mark.parametrize(
    ("text", "topic"),
    [
        ("did anyone feed Mabel today", "bin"),
        ("has anybody put owt in bin 3 yet", "bin"),
        ("is the juice meant to be so brown", "trouble"),
        ("wait is the liquid supposed to be that dark", "trouble"),
        ("do we have to chuck the whole lot now?", "trouble"),
        ("should we bin the whole lot", "trouble"),
        ("do i really have to put bran in every time", "dose"),
        ("do we need to add bran with every layer", "dose"),
        ("do you need molasses for the bran or could you use brown sugar", "batch"),
    ],
)
def test_topics(text: str, topic: str) -> None:
    [asked] = _read(text)
    assert isinstance(asked, Ask)
    assert asked.topic == topic


@pytest.mark.parametrize(
    "text",
    [
        "did anyone feed the cat today",
        "do you really have to sing every time",
        "should I bin the letter",
        "someone else will have to drive",
        "I'll keep the receipt till Sunday",
        "I'll take the stairs instead of the lift",
    ],
)
def test_no_question_of_ours(text: str) -> None:
    assert _read(text) == ()


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("someone else will have to do my week on Mabel, sorry", "decline"),
        ("somebody else has to take my turn", "decline"),
        ("I shall take the turn instead of ruth", "accept"),
        ("I'll mind it till Sunday then, ruth, you rest", "accept"),
        ("I'll have her until you're back", "accept"),
        ("I shan't manage Mabel for a day or two. Would somebody mind it for me?", "offer"),
        ("does anyone want to mind Mabel this week, my back's bad", "offer"),
    ],
)
def test_turns(text: str, kind: str) -> None:
    [answer] = _read(text)
    assert answer.act == kind


def test_one_batch_is_told_once() -> None:
    [batch] = _read("Bran made on Monday: 5 kg wheat bran, molasses and culture mixed")
    assert isinstance(batch, Batch)
    assert batch.mass_kg == 5.0


def test_a_growth_of_ice_is_cold() -> None:
    [seen] = _read("bin 3 is froze on top")
    assert isinstance(seen, Observe)
    assert seen.signs == ("cold",)


def test_a_seal_that_is_told_has_its_day() -> None:
    [sealed] = _read("sealed er up tight last night")
    assert isinstance(sealed, Seal)
    assert sealed.on == TUESDAY
