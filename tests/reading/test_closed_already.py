"""A bin that is closed already is why scraps went into another one, and no sealing of today."""

import pytest

from tests.reading.context import acts


def _told(text: str) -> list[tuple[str, str | None]]:
    return [(act.act, getattr(act, "bin", None)) for act in acts(text)]


@pytest.mark.parametrize(
    "text",
    [
        "3 lb of old mince from the freezer. The shed is sealed so it went in bin 3",
        "1 kg rice. shed's closed so bin 3",
        "big blue is shut already so I put 2 kg of leek tops in bin 3",
        "2 kg of rice in bin 3 because the shed is sealed",
        "2 kg of rice in bin 3 as the shed's already closed",
        "300 g of peel in shed.. hang on shed is closed. bin 3 then",
    ],
)
def test_scraps_go_into_the_other_bin_and_nothing_is_sealed(text: str) -> None:
    assert _told(text) == [("layer", "bin 3")]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("the shed is sealed", [("seal", "shed")]),
        (
            "the shed is full so I closed it, 2 kg of rice went into bin 3",
            [("seal", "shed"), ("layer", "bin 3")],
        ),
        (
            "shed is sealed and 2 kg of rice went into bin 3",
            [("seal", "shed"), ("layer", "bin 3")],
        ),
        (
            "sealed the shed so the 2 kg of rice went in bin 3",
            [("seal", "shed"), ("layer", "bin 3")],
        ),
        ("bin 3 closed 3 days ago", [("seal", "bin 3")]),
        ("full after three days, sealed the shed", [("seal", "shed")]),
        ("after three days sealed the shed", [("seal", "shed")]),
    ],
)
def test_a_sealing_that_is_told_stays_one(text: str, told: list[tuple[str, str]]) -> None:
    assert _told(text) == told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("shed 3 days shut, hissing a bit", [("observe", "shed")]),
        ("bin 3's been closed going on two weeks, can I bury it yet", [("ask", "bin 3")]),
    ],
)
def test_how_long_it_is_shut_is_no_deed_of_today(text: str, told: list[tuple[str, str]]) -> None:
    assert _told(text) == told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("sealed bin 3, 2 kg of leeks into the shed", [("seal", "bin 3"), ("layer", "shed")]),
        ("bin 3 is closed, 1 kg rice in the shed", [("seal", "bin 3"), ("layer", "shed")]),
        ("drained bin 3 and 2 kg of leeks in the shed", [("drain", "bin 3"), ("layer", "shed")]),
        ("sealed bin 3, 2 kg of leeks in it", [("seal", "bin 3"), ("layer", "bin 3")]),
    ],
)
def test_what_goes_into_another_bin_is_not_sealed_with_the_first(
    text: str, told: list[tuple[str, str]]
) -> None:
    assert _told(text) == told


def test_a_place_that_is_no_bin_is_closed_as_well() -> None:
    assert _told("the shop is closed so 2 kg of rice is what we had tonight") == []
