"""Whether two names are one person's: people are called by a part of the name they show."""

from collections.abc import Iterable, Sequence

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


def _namesake(name: str, member: Member) -> str:
    return f"{name} ({member.user})".casefold()


def _short_names(member: Member) -> set[str]:
    first = member.name.split()[0] if member.name.split() else ""
    local = (member.user or "").removeprefix("@").partition(":")[0]
    return {first.casefold(), local.casefold()}
