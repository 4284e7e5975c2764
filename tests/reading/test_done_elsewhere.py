""" "Done" said of a job of ours, and of whatever else people finish."""

import pytest

from handlers.reading.acts import Done
from tests.reading.context import acts

ROOM = {"in_room": True, "after_bot": True, "kept": (("kofi", "shed"),)}


def told(text: str) -> list[Done]:
    return [act for act in acts(text, **ROOM) if isinstance(act, Done)]


@pytest.mark.parametrize(
    "text",
    [
        "did all four marathons",
        "did both the bathrooms",
        "done my taxes at last",
        "done with the solicitor",
        "well done Ruth",
        "easier said than done",
        "done deal",
        "all of us did",
        "shed sale's done",
        "dinner's done",
        "all done with the wrapping paper",
        "sorted the spare room",
        "all sorted with the bank",
        "that's the ironing done",
        "the car's done, new brakes",
        "shed done, painted it white",
        "shed's finished, paint still wet",
        "the shed is done, two coats",
        "did the shed yesterday, gloss",
        "finished the shed, roof and all",
        "shed's done, new hinges on the door",
        "shed done, swept and tidied",
    ],
)
def test_other_things_are_no_job(text: str) -> None:
    assert told(text) == []


@pytest.mark.parametrize(
    "text",
    [
        "done, exam was easy",
        "did it, everyone in the choir wept",
        "both done, half marathon and whole",
        "sorted, the plumber comes Monday",
        "did it already, tax return",
    ],
)
def test_a_remark_of_other_things_makes_it_doubtful(text: str) -> None:
    assert [one.doubtful for one in told(text)] == [True]


@pytest.mark.parametrize(
    "text",
    [
        "done",
        "all done, boss",
        "done and dusted",
        "done all four",
        "did the big blue one, stank",
        "the deed is done",
        "she's done",
        "well, done at last",
        "did it first thing, hands are freezing",
        "that's the draining done",
        "shed done, back home now",
        "shed's done, drained into the gutter",
        "did mine yesterday, forgot to say",
        "did it before work, sorry it's late",
    ],
)
def test_a_job_of_ours_is_told_plainly(text: str) -> None:
    assert told(text)
    assert not any(one.doubtful for one in told(text))
