"""Bins that the group has not: their records go to no other bin."""

import pytest

from handlers.reading.acts import Act, Amend, Bury, Drain, Layer, Open, Seal, Unsure
from tests.reading.context import acts

RECORDS = Layer | Drain | Open | Seal | Bury


def told(text: str, bins: tuple[str, ...]) -> list[tuple[str, str | None]]:
    """Act and bin of each record."""
    found = acts(text, bins=bins, in_room=True)
    return [(act.act, act.bin) for act in found if isinstance(act, RECORDS)]


@pytest.mark.parametrize(
    ("text", "records"),
    [
        ("added 3 kg to pink", [("layer", "pink")]),
        ("added 3 kg of peel into yellow today", [("layer", "yellow")]),
        ("tipped 3 kg into the cellar", [("layer", "cellar")]),
        ("drained 300 ml from yellow", [("drain", "yellow")]),
        ("sealed black", [("seal", "black")]),
        ("buried brown", [("bury", "brown")]),
        ("sealed white and grey", [("seal", "white"), ("seal", "grey")]),
        ("drained white and the zinc bin", [("drain", "white"), ("drain", "zinc")]),
        ("buried the white bin and the zinc bin", [("bury", "white"), ("bury", "zinc")]),
        ("opened the black and pink bins, 15 L", [("open", "black"), ("open", "pink")]),
        ("opened black and pink bins, 15 L", [("open", "black"), ("open", "pink")]),
        ("sealed black and pink bins", [("seal", "black"), ("seal", "pink")]),
        ("added 3 kg to white and 2 kg to black", [("layer", "white"), ("layer", "black")]),
        ("added 3 kg to white and 2 kg to Greta", [("layer", "white"), ("layer", "Greta")]),
        ("added 2 kg to black and 3 kg to white", [("layer", "black"), ("layer", "white")]),
        ("added 2 kg to Greta and 3 kg to white", [("layer", "Greta"), ("layer", "white")]),
        ("sealed black and white", [("seal", "black"), ("seal", "white")]),
        ("sealed white, black and pink", [("seal", "white"), ("seal", "black"), ("seal", "pink")]),
        ("drained 300 ml from Greta", [("drain", "Greta")]),
        ("added 3 kg to white, 5 kg in total", [("layer", "white")]),
        ("put 3 kg in white. The tap is painted in black", [("layer", "white")]),
        ("added 3 kg to white and the cellar is dark", [("layer", "white")]),
        ("opened the 14 bin, 20 L", [("open", "bin 14")]),
        ("added 3 kg to the 14 bin", [("layer", "bin 14")]),
        ("opened the **fern** bin, 20 L", [("open", "fern")]),
        ('opened a bin called "added 3 kg of peel", 20 L', [("open", "added 3 kg of peel")]),
        ("opened a bin called scratch that", [("open", "scratch that")]),
    ],
)
def test_the_bin_that_was_said_and_no_other(
    text: str, records: list[tuple[str, str | None]]
) -> None:
    assert told(text, ("white",)) == records


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("added 3 kg to white and the zinc bin", [("white", 1.5), ("zinc", 1.5)]),
        ("added 3 kg to white and Greta", [("white", 1.5), ("Greta", 1.5)]),
        ("added 3 kg to white and black", [("white", 1.5), ("black", 1.5)]),
        ("added 3 kg to the black and pink bins", [("black", 1.5), ("pink", 1.5)]),
        ("drained 300 ml from the black and white bins", [("black", 0.15), ("white", 0.15)]),
    ],
)
def test_one_amount_for_several_bins_is_asked_about(
    text: str, parts: list[tuple[str, float]]
) -> None:
    (act,) = acts(text, bins=("white",), in_room=True)
    assert isinstance(act, Unsure)
    assert [(one.bin, _amount(one)) for one in act.guess if isinstance(one, RECORDS)] == parts


@pytest.mark.parametrize(
    ("text", "bin", "kg"),
    [
        ("added 2 kg to Tina's", "Tina's", 2),
        ("put 2 kg in Marta's", "Marta's", 2),
        ("2 kg of rice into tina's", "tina's", 2),
        ("added 2 kg to Tina's before lunch", "Tina's", 2),
        ("put 2 kg in the neighbour's", "neighbour's", 2),
        ("put 2 kg into the Hendersons'", "Hendersons'", 2),
        ("chucked 2 kg of peel into Mrs. Hill's", "Mrs. Hill's", 2),
        ("added 2 kg to Ruth's", "Ruth's", 2),
        ("tossed 2 kg of scraps into the porch one", "porch", 2),
        ("added 2 kg to the kitchen one", "kitchen", 2),
    ],
)
def test_a_bin_told_by_whose_or_where_it_is_is_asked_about(text: str, bin: str, kg: float) -> None:
    (act,) = acts(text, bins=("white",), in_room=True)
    assert isinstance(act, Unsure)
    assert [(one.bin, _amount(one)) for one in act.guess if isinstance(one, Layer)] == [(bin, kg)]


@pytest.mark.parametrize(
    ("text", "records"),
    [
        ("brought 2 kg of scraps to Tina's", []),
        ("dropped 2 kg off to Tina's", []),
        ("put 2 kg in Tina's kitchen", []),
        ("put 2 kg into the kitchen one day", []),
        ("added 2 kg of peel from Tina's to white", [("layer", "white")]),
        ("added Tina's 2 kg to white", [("layer", "white")]),
        ("added 2 kg of Tina's bread to white", [("layer", "white")]),
        ("put 2 kg in it's smelly", [("layer", None)]),
        ("I'm in the dentist's, 2 kg went into white", [("layer", "white")]),
        ("my brother in law's a plumber, drained 2 L from white", [("drain", "white")]),
        ("added 2 kg to Tina's bin", [("layer", "Tina's")]),
        ("put 2 kg into the Hendersons' bin", [("layer", "Hendersons'")]),
        ("drained 300 ml from the porch one", [("drain", "porch")]),
    ],
)
def test_whose_the_scraps_are_is_no_bin(text: str, records: list[tuple[str, str | None]]) -> None:
    assert told(text, ("white",)) == records
    assert not any(isinstance(act, Unsure) for act in acts(text, bins=("white",), in_room=True))


def _amount(act: Act) -> float | None:
    return act.mass_kg if isinstance(act, Layer) else getattr(act, "volume_l", None)


@pytest.mark.parametrize(
    ("text", "bin"),
    [
        ("no, into the black bin", "black"),
        ("nope, it went to black", "black"),
        ("no, the black bin", "black"),
        ("nah, that was into the zinc bin", "zinc"),
    ],
)
def test_a_refusal_with_another_bin_puts_the_record_right(text: str, bin: str) -> None:
    last = Layer(mass_kg=3.0, bin="white")
    (act,) = acts(text, bins=("white", "black"), in_room=True, after_bot=True, last=last)
    assert isinstance(act, Amend)
    assert act.bin == bin


def test_a_bin_on_offer_may_be_refused_by_its_name() -> None:
    last = Layer(mass_kg=3.0, bin="white")
    bins = ("white", "black")
    found = acts("no, black", bins=bins, in_room=True, after_bot=True, last=last, on_offer=True)
    assert not any(isinstance(act, Amend) for act in found)


@pytest.mark.parametrize(
    ("text", "bin"),
    [
        ("sealed Austin", "Austin"),
        ("drained Earl, 1 cup", "Earl"),
        ("2 kg melon rind in Carport", "Carport"),
    ],
)
def test_what_is_written_as_a_name_is_not_the_bin_last_spoken_of(text: str, bin: str) -> None:
    last = Layer(bin="Dolly", mass_kg=1.0)
    [act] = acts(text, in_room=True, bins=("Dolly",), last=last)
    assert getattr(act, "bin", None) == bin


@pytest.mark.parametrize("text", ["Sealed Tupperware", "sealed the deal", "drained Pasta"])
def test_other_things_that_are_sealed_are_no_bins(text: str) -> None:
    assert acts(text, in_room=True, bins=("Dolly",)) == ()
