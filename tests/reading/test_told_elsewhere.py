"""What another sentence or clause says of an act: its measure, its kind, its doer, its day."""

from datetime import date
from typing import Any

import pytest

from handlers.reading.actjson import as_json
from tests.reading.context import acts

TUESDAY = date(2026, 6, 16).isoformat()


def told(text: str, kind: str) -> list[dict[str, Any]]:
    """The acts of that kind, as they are printed."""
    return [act for act in map(as_json, acts(text)) if act["act"] == kind]


@pytest.mark.parametrize(
    ("text", "kind", "field", "value"),
    [
        # another sentence measures
        ("we are nearly out of bran. There is 250 g in the tin", "stock", "mass_kg", 0.25),
        ("started big blue again today. capacity 40 L", "open", "capacity_l", 40),
        ("checked bin 3: white fuzz on top, 17 °C, pH 4,1", "observe", "celsius", 17),
        ("checked bin 3: white fuzz on top, 17 °C, pH 4,1", "observe", "ph", 4.1),
        # what was said of bran is no scraps, what came out is none that went in
        ("put 300 g of bread into the shed, oh and the starter bag is low, call it 500 g",
         "layer", "mass_kg", 0.3),
        ("fed bin 3 three pounds of melon rind and poured off 8 oz", "layer", "mass_kg", 1.361),
        # who put it in, and when
        ("there were six pounds of bean pods left and Ines tipped the whole bag into the shed",
         "layer", "member", "ines"),
        ("it is 2 kg of rice that is in the shed. It went in yesterday.", "layer", "on", TUESDAY),
        ("ines put 400 g of meat, her Sunday joint, into bin 3", "layer", "on", "2026-06-17"),
        ("bin 3 drained as of yesterday, 300 ml", "drain", "on", TUESDAY),
        ("vidé 300 ml de bin 3 avant-hier", "drain", "on", "2026-06-15"),
    ],
)  # fmt: skip
def test_a_field_told_elsewhere(text: str, kind: str, field: str, value: object) -> None:
    (act,) = told(text, kind)
    found = act[field]
    assert (round(found, 3) if isinstance(found, float) else found) == value


@pytest.mark.parametrize(
    ("text", "main"),
    [
        ("1.2 kg to the shed, 0.6 kg to bin 3, all lettuce", "vegetable"),
        ("nobody wanted the fish pie. 700 g, bin 3", "fish"),
        ("peeled a heap of oranges, 900 g of peel in bin 3", "fruit"),
        ("1 kg of burrito meat into bin 3", "meat"),
        ("half a kilo of curry grease into bin 3", "oil"),
        ("a coffee can of bacon fat into bin 3", "oil"),
        ("900 g of rolls and pies mainly, and some salad, into bin 3", "grain"),
        ("bin 3 got 2 kg of beans, I am off to put my feet up", "pulse"),
        ("the shed got 400 g of leek tops, and 300 g of the same went in bin 3", "vegetable"),
        ("half a kilo of barbecue bones into bin 3", "bone"),
        ("800 g of sausages, crackers and grapes in bin 3, a third was meat", "grain"),
    ],
)
def test_the_kind_is_that_of_the_scraps(text: str, main: str) -> None:
    for layer in told(text, "layer"):
        assert max(layer["materials"], key=layer["materials"].get) == main


@pytest.mark.parametrize(
    ("text", "kind", "found"),
    [
        ("shed: 1 lb rice. bin 3: 2 lb lettuce gone slimy. big blue: nothing", "layer",
         [("shed", 0.454), ("bin 3", 0.907)]),
        ("shed 400 g tea leaves, bin 3 1 kg crusts, and 100 ml out of bin 3", "layer",
         [("shed", 0.4), ("bin 3", 1.0)]),
        ("put in bin 3 one kilo of burnt rice", "layer", [("bin 3", 1.0)]),
        ("half a pound of bacon ends to the shed, and when is big blue due?", "layer",
         [("shed", 0.227)]),
    ],
)  # fmt: skip
def test_several_bins_in_one_breath(text: str, kind: str, found: list[tuple[str, float]]) -> None:
    assert [(act["bin"], round(act["mass_kg"], 3)) for act in told(text, kind)] == found


def test_each_thing_has_the_amount_it_touches() -> None:
    (layer,) = told("a kilo of leeks and the bones, about 250 g, into bin 3", "layer")
    assert layer["rich"] == pytest.approx(0.2, abs=0.01)


def test_a_question_is_of_the_bin_it_names() -> None:
    (ask,) = told("half a pound of bacon ends to the shed, and when is big blue due?", "ask")
    assert ask["bin"] == "big blue"


def test_the_size_of_a_new_bin_is_no_layer() -> None:
    text = "new bin by the stairs. 25 litres."
    assert [a["capacity_l"] for a in told(text, "open")] == [25]
    assert not told(text, "layer")


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("drained the shed, 250", 0.25),
        ("drained the shed 3 times", None),
        ("drained the shed at 7.50", None),
    ],
)
def test_a_lone_round_number_drawn_off_is_of_millilitres(text: str, litres: float | None) -> None:
    (drain,) = told(text, "drain")
    assert drain.get("volume_l") == litres
