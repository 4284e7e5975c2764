"""Whether two names are one person's: people are called by a part of the name they show."""

from collections.abc import Iterable, Sequence
from dataclasses import replace

from handlers.answer import Answer, Turn
from handlers.phrasing import capital
from handlers.practice.figure import listed
from storage.rows import Member


def is_same(one: str | None, other: str | None) -> bool:
    """Whether both are the same name, in any case."""
    return one is not None and other is not None and one.casefold() == other.casefold()


def known_as(name: str, members: Iterable[Member]) -> Sequence[Member]:
    """The members of that name; else those present whom it may call: "Nives" for Nives Horvat."""
    members = list(members)
    exact = [member for member in members if is_same(member.name, name)]
    users = [member for member in exact if member.user]
    # Who shows the name that another has already is kept under it with the user behind.
    users += [one for one in members if users and one.name.casefold() == _namesake(name, one)]
    if users or " " in name.strip():
        return users or exact
    called = [
        member
        for member in members
        if member.user and member.present and name.casefold() in _short_names(member)
    ]
    return called or exact


def namesakes(name: str, members: Iterable[Member]) -> list[Member]:
    """Those present who show the same name, where several do."""
    same = [
        one
        for one in members
        if one.user
        and one.present
        and one.name.casefold() in (name.casefold(), _namesake(name, one))
    ]
    return same if len(same) > 1 else []


async def with_namesake(answer: Answer, turn: Turn) -> Answer:
    """The answer, with a word where another member shows the name of whom its records name."""
    names = {entry.member for entry in answer.entries if entry.member not in (None, turn.sender)}
    if not names:
        return answer
    members = await turn.book.members()
    others = [
        other
        for name in sorted(filter(None, names))
        for other in namesakes(name, members)
        if not is_same(other.name, name)
    ]
    if not others:
        return answer
    said = listed([other.user or "" for other in others], "or")
    line = f"More than one here has that name: if it was {said}, edit your message to say so."
    return replace(answer, say="\n".join(filter(None, (answer.say, line))))


def _namesake(name: str, member: Member) -> str:
    return f"{name} ({member.user})".casefold()


def _short_names(member: Member) -> set[str]:
    first = member.name.split()[0] if member.name.split() else ""
    local = (member.user or "").removeprefix("@").partition(":")[0]
    return {first.casefold(), local.casefold()}


def gone_from(names: Sequence[str], members: Iterable[Member]) -> str:
    """Who of them has left the room."""
    gone = [one.name for one in members if one.user and not one.present and one.name in names]
    are = "are" if len(gone) > 1 else "is"
    return f"{capital(listed(gone))} {are} not in this room any more." if gone else ""


def unheard(names: Sequence[str], members: Sequence[Member], again: str) -> str:
    """Who of them has never been here, so that nobody can be called by that name; `again`: what
    to do if it is a slip.
    """
    here = [member for member in members if member.user]
    strange = [name for name in names if not known_as(name, here)]
    if not strange:
        return ""
    they = "they are" if len(strange) > 1 else "that is"
    return (
        f"I have not heard {listed(strange)} here yet: invite them to the room, or {again} if "
        f"{they} spelled differently."
    )
