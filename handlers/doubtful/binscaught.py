"""Of several bins told at once, some were caught: which, and how to tell the others."""

from collections.abc import Sequence

from handlers.answer import Answer, Query, Turn
from handlers.phrasing import the, volume
from handlers.practice.figure import listed
from handlers.reading.acts import Act, Open


def some_of(count: int, caught: Sequence[Act], turn: Turn) -> Answer:
    """The question whether those that were caught are to be written down."""
    named = [_with_size(one, turn) for one in caught if isinstance(one, Open)]
    told = "Tell me each in few words, such as “opened the red bin, 12 L”."
    if not named:
        return Answer(say=f"You told me of {count} bins, and I caught none of them. {told}")
    say = f"You told me of {count} bins, and I caught only {listed(named)}."
    rest = f"Shall I write that down? {told.replace('each', 'the others')}"
    return Answer(say=f"{say} {rest}", query=Query.about(*caught, lacks="yes"))


def _with_size(act: Open, turn: Turn) -> str:
    size = f" ({volume(act.capacity_l, turn.units)})" if act.capacity_l else ""
    return f"{the(act.bin or '')}{size}"
