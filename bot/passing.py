"""What a message is read with where bins pass on: what is on offer, and what names bins had."""

from collections.abc import Awaitable, Callable, Collection, Mapping, Sequence
from dataclasses import replace
from datetime import timedelta

from bot.heard import local_part
from handlers.answer import Turn
from handlers.people import namesakes
from handlers.reading.acts import Act, Open
from handlers.reading.arranged import Plan
from handlers.reading.bins.sizes import OF_SIZE
from handlers.reading.context import Context
from storage import custody
from storage.rows import Bin, Member

ASKED_LATELY = timedelta(days=35)
"""An offer said longer ago has lapsed, but for one of a day far ahead, which is named in words."""

TAKEN_LATELY = timedelta(days=2)
"""How long after a hand-over the taker's answer to the card tells what the bin is like."""


async def with_offers(
    context: Context, turn: Turn, is_next: Callable[[], Awaitable[bool]]
) -> Context:
    """The context with what is on offer, and the bin that the sender has just taken over.

    `is_next`: whether the message comes next after words of ours, however long it is.
    """
    book = turn.book
    on_offer = await custody.is_anything_asked(book, turn.at - ASKED_LATELY)
    took = None
    for entry in await book.of_event(turn.refers_to) if turn.refers_to else []:
        if entry.act == "accept" and entry.member == turn.sender and entry.bin:
            took = entry.bin.name
    first = turn.today - TAKEN_LATELY
    lately = await custody.just_taken(book, turn.sender, first, turn.today)
    if lately and not (context.after_bot or turn.refers_to or await is_next()):
        lately = None
    # Whoever has just taken a bin may yet say "not me after all".
    may_give_back = context.after_bot and lately is not None
    taken = await custody.is_anything_taken(book, turn.at - ASKED_LATELY)
    if not (on_offer or may_give_back or took or lately or taken):
        return context
    return replace(context, on_offer=on_offer or may_give_back, took=took or lately, taken=taken)


def by_present_name(act: Act | Plan, former: Mapping[str, Bin]) -> Act | Plan:
    """An act on a bin that was called by a name it had before."""
    if isinstance(act, Open) and OF_SIZE not in act.rules:
        return act  # begun under a name that is another's: see handlers/recording/bins.py
    name = getattr(act, "bin", None)
    bin = former.get(name.casefold()) if isinstance(name, str) else None
    # Not every act has a bin; those that have one take its name.
    return replace(act, bin=bin.name) if bin else act  # type: ignore[arg-type]


def by_account(
    act: Act | Plan, members: Sequence[Member], mentioned: Collection[str]
) -> Act | Plan:
    """An act of somebody who is called by the name in their Matrix id, which they show no more; or
    of the one who is mentioned, of several who show one name.
    """
    name = getattr(act, "member", None)
    if isinstance(name, str):
        meant = [one for one in namesakes(name, members) if one.user in mentioned]
        if len(meant) == 1:
            return replace(act, member=meant[0].name)  # type: ignore[arg-type]
    if not isinstance(name, str) or any(one.name.casefold() == name.casefold() for one in members):
        return act
    called = [m for m in members if m.user and local_part(m.user).casefold() == name.casefold()]
    # Not every act has a member; those that have one take the name shown.
    return replace(act, member=called[0].name) if len(called) == 1 else act  # type: ignore[arg-type]
