"""Where a group, or one of its members, can read the calendar and the board."""

import secrets

from handlers.answer import Answer, Setting, Turn
from storage import links, session

TOKEN_BYTES = 24
"""Randomness of an address: 192 bits."""


async def link(wanted: str, turn: Turn) -> Answer:
    """The address of the calendar; "new" in place of the one before, "mine" for the sender's own.

    One that opened it before no longer does.
    """
    words = set(wanted.casefold().split())
    base = await session.address(turn.book.db)
    if base is None:
        return Answer(
            say="The calendar has no address here. Whoever runs me can give it one: see the "
            "settings “listen” and “address”. “Show the calendar” posts a picture of it here."
        )
    is_own = "mine" in words
    known = await links.token(turn.book, turn.sender if is_own else None)
    if known and "new" not in words:
        return Answer(say=told(base, known, is_own=is_own))
    token = made()
    before = " The one before no longer opens." if known else ""
    return Answer(
        settings=[Setting(what="own calendar link" if is_own else "calendar link", value=token)],
        say=told(base, token, is_own=is_own) + before,
    )


def made() -> str:
    """The part of an address that nobody can guess."""
    return secrets.token_urlsafe(TOKEN_BYTES)


def told(base: str, token: str, *, is_own: bool) -> str:
    """Where to read the calendar and the board."""
    feed = f"{base}/{token}/calendar.ics"
    if is_own:
        return f"Just what you keep, for your calendar program: {feed}"
    return (
        f"The board: {base}/{token}/\nFor a calendar program: {feed}\n"
        "Whoever has the link can read along; ask for a “new calendar link” to lock it out."
    )
