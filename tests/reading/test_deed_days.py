"""A deed on a day to come, or not before it; what is buried and sealed in other talk is none."""

from datetime import date

import pytest

from handlers.reading.acts import Act, Drain, Later, Layer
from handlers.reading.arranged import Plan
from handlers.reading.plans import read
from tests.reading.context import group

SATURDAY, SUNDAY, MONDAY = date(2026, 6, 20), date(2026, 6, 21), date(2026, 6, 22)
TUESDAY, IN_A_WEEK, FOURTH = date(2026, 6, 23), date(2026, 6, 24), date(2026, 7, 4)


def told(text: str) -> tuple[Act | Plan, ...]:
    """What Bram means by it on Wednesday 17 June."""
    context = group(
        bins=("shed", "blue", "green"),
        members=("ines", "bram", "zoe"),
        sender="bram",
        in_room=True,
    )
    return read(text, context)


@pytest.mark.parametrize(
    ("text", "later"),
    [
        ("I'll bury it on Tuesday", Later(what="bury", on=TUESDAY)),
        ("I can only bury it on Sunday", Later(what="bury", on=SUNDAY)),
        ("burying mine on Sunday", Later(what="bury", on=SUNDAY)),
        ("we're sealing on Saturday", Later(what="seal", on=SATURDAY)),
        ("we'll bury ours on Saturday, if it's dry", Later(what="bury", on=SATURDAY)),
        ("I'm going to seal mine on Sunday", Later(what="seal", on=SUNDAY)),
        ("can't bury blue before Saturday", Later(what="bury", bin="blue", on=SATURDAY)),
        ("can't bury this week, the ground's waterlogged", Later(what="bury", on=MONDAY)),
        ("can't bury yet, the ground's frozen", Later(what="bury", on=IN_A_WEEK)),
        ("Ground's frozen, can't bury yet", Later(what="bury", on=IN_A_WEEK)),
        ("too wet to bury, on Sunday then", Later(what="bury", on=SUNDAY)),
        ("won't get to seal it till Tuesday, sorry", Later(what="seal", on=TUESDAY)),
    ],
)
def test_what_the_sender_has_to_do(text: str, later: Later) -> None:
    assert told(text) == (later,)


@pytest.mark.parametrize(
    ("text", "later"),
    [
        ("let's bury everything on Saturday the 4th", Later(what="bury", on=FOURTH, each=True)),
        ("Let’s do the burying on Saturday", Later(what="bury", on=SATURDAY, each=True)),
        ("shall we seal them all on Sunday?", Later(what="seal", on=SUNDAY, each=True)),
        ("can we push the burial to Sunday?", Later(what="bury", on=SUNDAY, each=True)),
        ("let's postpone the burial by a week", Later(what="bury", on=IN_A_WEEK, each=True)),
        ("how about burying both on Sunday?", Later(what="bury", on=SUNDAY, each=True)),
        ("shall I bury blue on Sunday?", Later(what="bury", bin="blue", on=SUNDAY)),
    ],
)
def test_what_is_to_be_agreed_on(text: str, later: Later) -> None:
    assert told(text) == (later,)


@pytest.mark.parametrize(
    "text",
    [
        "let's bury the hatchet on Saturday",
        "let's bury the cat on Sunday",
        "we'll seal the deal on Monday",
        "I'll drain the pasta on Sunday",
        "can't drain the pond before Sunday",
        "I can't seal the deck this week",
        "sealing the windows on Saturday",
        "we can't bury our heads in the sand any longer",
        "the burial is on Friday",
        "can't bury it, sorry",
        "what if we seal green on Friday, when can it be buried?",
        "if we seal it on Friday, when can we bury it?",
        "he said we'll bury it on Tuesday, but I doubt it",
        "we could bury it but not on Tuesday",
    ],
)
def test_other_things(text: str) -> None:
    assert not any(isinstance(act, Later) for act in told(text))


@pytest.mark.parametrize(
    "text",
    [
        "I'll bury mine on Sunday. Drained green, 200 ml",
        "drained green on Monday, 200 ml. I'll bury mine on Sunday",
    ],
)
def test_what_else_is_told_stands(text: str) -> None:
    record, later = sorted(told(text), key=str)
    assert isinstance(record, Drain)
    assert (record.bin, record.volume_l) == ("green", 0.2)
    assert later == Later(what="bury", on=SUNDAY)


@pytest.mark.parametrize(
    "text",
    [
        "I'll bury it on Sunday, I drained green today, 200 ml",
        "can't seal it before Friday, I put 2 kg in green today",
    ],
)
def test_a_record_behind_a_plan_is_no_reason(text: str) -> None:
    assert any(isinstance(act, Drain | Layer) for act in told(text))
