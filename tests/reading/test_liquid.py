import pytest

from handlers.reading.acts import Drain
from tests.reading.context import acts

US_CUP = 0.2365882365  # NIST Handbook 44, Appendix C


def drains(text: str, **changes: object) -> list[Drain]:
    return [act for act in acts(text, **changes) if isinstance(act, Drain)]


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("drained 300 ml from the shed", 0.3), ("got half a litre of juice off the shed", 0.5),
        ("shed: 0,3 L out", 0.3), ("drained shed twice today, 200ml and then another 150", 0.35),
        ("opened the tap on the shed and got 250 ml", 0.25), ("Tall Paul gave up 900 ml", 0.9),
        ("drained the shed", None), ("drained the shed at 16h30", None),
        ("drained half a litre this a.m.", 0.5), ("drained 300 ml at 14h30 from the shed", 0.3),
        ("drained 100 ml + 150 ml from the shed", 0.25),
        ("drained 300 ml, maybe 350, from the shed", 0.325),
        ("drained 300 ml from the shed, no wait 400", 0.4),
        ("drained half a litre from the shed, mixed with 50 litres for the lawn", 0.5),
    ],
)  # fmt: skip
def test_liquid_that_was_drawn_off(text: str, litres: float | None) -> None:
    (drain,) = drains(text)
    assert drain.volume_l == (None if litres is None else pytest.approx(litres))


def test_an_ounce_of_liquid_is_one_of_volume() -> None:
    (drain,) = drains("8 oz of liquid drained from the shed", units="us")
    assert drain.volume_l == pytest.approx(US_CUP)


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("Shed and bin 3 drained. 200 and 350 ml", [("shed", 0.2), ("bin 3", 0.35)]),
        ("shed 400 ml + bin 3 300 ml. Both smell fine", [("shed", 0.4), ("bin 3", 0.3)]),
        ("two-three cups from the shed, watered the figs. OK 600 ml", [("shed", 0.6)]),
        ("caught 300 ml in a cup from the shed", [("shed", 0.3)]),
    ],
)
def test_each_bin_has_its_own_litres(text: str, parts: list[tuple[str, float]]) -> None:
    assert [(d.bin, round(d.volume_l or 0, 3)) for d in drains(text)] == parts


def test_two_bins_without_amounts_are_two_drainings() -> None:
    assert [d.bin for d in drains("drained shed and bin 3")] == ["shed", "bin 3"]


@pytest.mark.parametrize(
    "text",
    ["four pints drained at the pub", "drained the pasta", "I'm drained", "we should drain the "
                                                                          "shed",
     "No liquid got drained today", "drained the radiators, 12 of them", "a pint of milk in the "
                                                                         "shed fridge"],
)  # fmt: skip
def test_what_is_no_draining(text: str) -> None:
    assert drains(text) == []


@pytest.mark.parametrize(
    "said",
    [
        "ours gave a litre a week last summer",
        "mine makes a pint every fortnight",
        "the old one produced half a litre per day",
    ],
)
def test_what_a_bin_gives_in_a_time_is_no_draining(said: str) -> None:
    assert drains(said) == []
