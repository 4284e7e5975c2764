"""What is said between neighbours: whose question a few words answer, theirs or the bot's."""

import re
from collections.abc import Sequence
from datetime import datetime

from bot.heard import Edited, Said
from bot.talk import REMINDERS, TALK_GOES_ON, Talk
from handlers.reading.acts import Act, Ask, Drain, Layer, Retract
from handlers.reading.amidtalk import is_of_the_bins
from handlers.reading.arranged import Plan
from handlers.reading.message import Message
from handlers.reading.neighbours import (
    ANSWERING,
    asked_of_layer,
    goes_on_from_other,
    is_for_us,
    may_be_for_us,
    puts_other_right,
)
from handlers.reading.plans import Reading
from storage import inbox, outbox

ASKS = "?"
"""The mark of a message that asks the others in the room; all that is kept of it."""

ELSE = "."
"""The mark of a message with a number that is of none of our things; all that is kept of it."""

MOST_BETWEEN = 3
"""Messages behind which a question is taken for answered, or forgotten."""


async def not_of_another(
    acts: Sequence[Act | Plan], heard: Said | Edited, talk: Talk
) -> list[Act | Plan]:
    """The acts; none where they are questions that one neighbour, who is mentioned and called by
    name, asks another.
    """
    if not acts or not all(isinstance(act, Ask) for act in acts) or talk.own in heard.mentions:
        return list(acts)
    names = [await talk.book.name_of(user) for user in heard.mentions]
    called = any(name and _calls(heard.body, name) for name in names)
    return [] if called else list(acts)


def _calls(body: str, name: str) -> bool:
    """Whether the words begin with a name, or end with one behind a comma."""
    first = f"@?{re.escape(name)}"
    return bool(
        re.match(
            rf"(?:(?:hey|hi|hello|oi|ok|so|and)\b[ ,]*)*{first}\b(?!'s|’s)", body, re.IGNORECASE
        )
        or re.search(rf", {first}[ ?!.]*$", body, re.IGNORECASE)
    )


async def not_among_others(
    acts: Sequence[Act | Plan], said: Said, reading: Reading, talk: Talk
) -> list[Act | Plan]:
    """The acts; none where they are questions amid the talk of others that name nothing of ours."""
    if reading.context.to_bot or not acts or not all(isinstance(act, Ask) for act in acts):
        return list(acts)
    if any(isinstance(act, Ask) and is_of_the_bins(act, reading.message) for act in acts):
        return list(acts)
    if await _is_among_others(said, talk):
        return []
    of_food = all(isinstance(act, Ask) and act.topic == "allowed" for act in acts)
    return [] if of_food and await _is_behind_a_record(said, talk) else list(acts)


async def _is_among_others(said: Said, talk: Talk) -> bool:
    """Whether others have just spoken, and the words come neither behind ours nor in reply."""
    if said.replies_to or await talk.comes_next(said):
        return False
    before = await inbox.said_lately(
        talk.book.db, talk.book.room.address, talk.item.id, MOST_BETWEEN
    )
    return any(one.sender != said.sender and said.at - one.at <= TALK_GOES_ON for one in before)


async def _is_behind_a_record(said: Said, talk: Talk) -> bool:
    """Whether what we answered last was another's, and no question: "and lemon?" adds to none."""
    before = await inbox.last_said(talk.book.db, talk.book.room.address, talk.item.id)
    if said.replies_to or before is None or before.sender == said.sender:
        return False
    return said.at - before.at <= TALK_GOES_ON and not (before.mark or "").startswith("[")


async def is_answered(said: Said, talk: Talk) -> bool:
    """Whether another has just asked the room something, and the words do not turn to us."""
    if said.replies_to or talk.calls_us(said):
        return False
    between = await inbox.said_lately(
        talk.book.db, talk.book.room.address, talk.item.id, MOST_BETWEEN
    )
    asked = None
    for before in between:
        if before.sender == said.sender or said.at - before.at > TALK_GOES_ON:
            break
        if before.mark == ASKS:
            asked = before.at
            break
    return asked is not None and not await _reminded_since(asked, talk)


async def of_else(said: Said, talk: Talk) -> bool:
    """Whether the sender's own last words were of other things, which few words may be of too."""
    if said.replies_to or talk.calls_us(said):
        return False
    between = await inbox.said_lately(
        talk.book.db, talk.book.room.address, talk.item.id, MOST_BETWEEN
    )
    own = next((before for before in between if before.sender == said.sender), None)
    if own is None or own.mark not in (ASKS, ELSE) or said.at - own.at > TALK_GOES_ON:
        return False
    return not await _reminded_since(own.at, talk)


async def _reminded_since(moment: datetime, talk: Talk) -> bool:
    """Whether our last words were unasked, and came later: "done" is then of what they name."""
    latest = await outbox.latest(talk.book.db, talk.book.room.id)
    return latest is not None and latest[0].kind in REMINDERS and latest[1] > moment


async def for_us(
    acts: Sequence[Act | Plan], said: Said, reading: Reading, talk: Talk
) -> tuple[list[Act | Plan], list[ANSWERING]]:
    """The acts meant for us, and those that may be; what answers a neighbour is neither, and a
    layer that may do so is asked about.
    """
    if not any(isinstance(act, ANSWERING | Layer | Drain) for act in acts):
        return list(acts), []
    message = reading.message
    if await is_answered(said, talk):
        acts = [asked_of_layer(act, message) for act in acts]
        ours = [a for a in acts if not isinstance(a, ANSWERING) or is_for_us(a, message)]
        rest = [a for a in acts if isinstance(a, ANSWERING) and a not in ours]
    elif await of_else(said, talk):
        ours = [a for a in acts if not _is_of_else(a, message)]
        rest = [a for a in acts if isinstance(a, ANSWERING) and a not in ours]
        rest = [a for a in rest if isinstance(a, Retract) or message.measured()]  # not "no, 3"
    else:
        return list(acts), []
    return ours, [act for act in rest if may_be_for_us(act, message)]


def _is_of_else(act: Act | Plan, message: Message) -> bool:
    if isinstance(act, ANSWERING):
        return puts_other_right(act, message)
    return goes_on_from_other(act, message)
