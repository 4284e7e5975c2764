"""A bin's own name with an s and no apostrophe, as phones write it: "sheilas lid"."""

import pytest

from tests.reading.context import acts

_BINS = ("Sheila", "Pebble", "Gary", "shed")


def _told(text: str, **changes: object) -> list[tuple[str, str | None]]:
    found = acts(text, **{"bins": _BINS, **changes})
    return [(act.act, getattr(act, "bin", None)) for act in found]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("sheilas lid is puffed up", ("observe", "Sheila")),
        ("is it ok that sheilas lid is bulging?", ("ask", "Sheila")),
        ("sheilas actually hissing today", ("observe", "Sheila")),
        ("pebbles first meal! 700 g of lettuce", ("layer", "Pebble")),
        ("drained garys, 200 ml", ("drain", "Gary")),
        ("garys full, sealed it", ("seal", "Gary")),
        ("1 kg of rice. garys shut so shed", ("layer", "shed")),
    ],
)
def test_what_is_said_of_it_is_of_the_bin(text: str, told: tuple[str, str]) -> None:
    assert _told(text) == [told]


@pytest.mark.parametrize(
    "text",
    [
        "sheilas coming round later",
        "garys birthday is tomorrow",
        "got pebbles in my shoe",
        "garys actually on holiday",
    ],
)
def test_people_and_things_of_that_name_are_no_bin(text: str) -> None:
    assert _told(text) == []


def test_a_member_of_that_name_may_be_meant() -> None:
    told = _told("is it ok that sheilas lid is bulging?", members=("Sheila", "Kofi"))
    assert told == [("ask", None)]
