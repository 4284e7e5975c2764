"""Answers to a list of jobs, job by job."""

from datetime import date

import pytest

from handlers.reading.acts import Done, Later, Observe
from tests.reading.context import acts

TODAY, YESTERDAY = date(2026, 6, 17), date(2026, 6, 16)
ROOM = {"in_room": True, "kept": (("kofi", "shed"), ("ruth", "big blue"))}


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("did mine yesterday", [Done(bin="shed", on=YESTERDAY)]),
        ("did mine yesterday, forgot to say", [Done(bin="shed", on=YESTERDAY)]),
        ("did mine, about 150 ml", [Done(bin="shed", volume_l=0.15)]),
        (
            "sorry, only just saw this. Did the shed yesterday, forgot to say. 300 ml",
            [Done(bin="shed", on=YESTERDAY, volume_l=0.3)],
        ),
        ("mine's done and I did Ruth's too", [Done(bin="shed"), Done(bin="big blue")]),
        (
            "shed done, big blue done, bin 3 tomorrow",
            [Done(bin="shed"), Done(bin="big blue"), Later(bin="bin 3", days=1)],
        ),
        ("shed done but big blue isn't", [Done(bin="shed")]),
        ("the sealing is done, the draining isn't", [Done(what="seal")]),
        ("sealed but not drained", [Done(what="seal")]),
        ("drained yes, sealed no", [Done(what="drain")]),
        ("drained it, haven't buried it yet", [Done(what="drain")]),
        ("did the draining on bin 3 for Ruth, she's poorly", [Done(bin="bin 3", what="drain")]),
        ("Ruth did mine", [Done(bin="shed", member="ruth")]),
        ("done all four", [Done(each=True, count=4)]),
        ("did the whole lot", [Done(each=True, count=0)]),
        ("drained and it's fine", [Done(what="drain")]),
        (
            "there. 400 ml and it stank",
            [Done(volume_l=0.4), Observe(signs=("rotten",))],
        ),
    ],
)
def test_each_job_is_told(text: str, told: list[Done | Later | Observe]) -> None:
    assert list(acts(text, **ROOM)) == told


@pytest.mark.parametrize(
    "text",
    [
        "did the dishes and all",
        "did you do mine?",
        "mine's not done",
        "almost done mine",
        "doing it now",
        "full. sealing tonight",
        "did mine last week, took hours to get the paint off",
        "sealed mine and the big blue",
        "drained, then the tap broke off",
        "ok there. 5 minutes and it was over",
        "nearly done, shed tomorrow",
        "did Ruth's shopping, 2 bags",
        "neither, sorry",
        "not drained, not sealed",
        "sealed the deal, drained a pint",
    ],
)
def test_what_is_not_done_or_no_job_is_none(text: str) -> None:
    assert not [act for act in acts(text, **ROOM) if isinstance(act, Done)]


@pytest.mark.parametrize(
    ("text", "on"),
    [
        ("did that yesterday actually", YESTERDAY),
        ("done", None),
        ("did it on Monday", date(2026, 6, 15)),
    ],
)
def test_the_day_of_a_job_is_kept(text: str, on: date | None) -> None:
    [done] = acts(text, **ROOM)
    assert isinstance(done, Done)
    assert done.on == on
