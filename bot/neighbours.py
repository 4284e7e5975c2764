"""What is said between neighbours: whose question a few words answer, theirs or the bot's."""

import re
from collections.abc import Collection, Sequence
from dataclasses import replace
from datetime import datetime

from bot.answered import owed_to_neighbour
from bot.heard import Edited, Said
from bot.lastasked import ASKED_US
from bot.talk import (
    ASKS,
    ASKS_AMOUNT,
    OF_ELSE,
    REMINDERS,
    TALK_GOES_ON,
    TALKS,
    TALKS_BRAN,
    TALKS_FIGURES,
    Talk,
)
from handlers.answer import Turn
from handlers.reading.acts import Act, Amend, Ask, Drain, Later, Layer, Retract, Unsure
from handlers.reading.arranged import Plan
from handlers.reading.deeds.barelayers import BARE, is_bare, is_told_in
from handlers.reading.message import Message
from handlers.reading.plans import Reading
from handlers.reading.room.amidtalk import is_of_the_bins, only_names_food
from handlers.reading.room.inthetalk import Leaning, Since, SmallTalk, leaner, leaning
from handlers.reading.room.neighbours import (
    ANSWERING,
    asked_of_layer,
    asks_amount,
    is_for_us,
    may_be_for_us,
)
from handlers.reading.room.ofbran import OF_BRAN, asks_what_was_put_on
from handlers.reading.words.vocabulary import words_in
from handlers.righting import corrections
from storage import outbox, traces
from storage.rows import Entry

MOST_SINCE = 12
"""Messages that are looked back on for what was talked of since a record."""

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


_YOU = words_in("you your yours u")
_INSIDE = words_in("in inside altogether far full bran starter")
_OF_THE_BOOK = frozenset({"bin", "totals", "full", "starter", "bran", "dose"})
"""What nobody knows as well as the book: it may be asked amid the talk of the bins."""


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
    questions = [act for act in acts if isinstance(act, Ask)]
    if reading.context.to_bot or not questions or len(questions) < len(acts):
        return list(acts)
    of_dose = all(question.topic == "dose" for question in questions)
    if of_dose and asks_what_was_put_on(reading.message):
        return []
    if any(is_of_the_bins(question, reading.message) for question in questions):
        return list(acts)
    topics = {question.topic for question in questions}
    told = (reading.context.last, reading.context.just_told)
    if topics == {"dilution"} and any(isinstance(one, Drain) for one in told):
        return list(acts)
    of_book = topics <= _OF_THE_BOOK
    of_book = of_book and reading.message.has(_INSIDE) and not reading.message.has(_YOU)
    if of_book and await talk.is_of_bins(said, most_else=3):
        return list(acts)
    if await _is_among_others(said, talk, OF_ELSE if topics == {"due"} else None):
        return []
    of_food = topics == {"allowed"} and only_names_food(reading.message)
    return [] if of_food and await _is_behind_a_record(said, talk) else list(acts)


async def only_amounts(
    acts: Sequence[Act | Plan], said: Said, reading: Reading, talk: Talk
) -> list[Act | Plan]:
    """The acts; an amount alone is a layer while layers are told, asked about where nothing else
    was talked of; where it was, peelings and the like are asked about, and other food amid the talk
    of the bins. Hours behind a record it puts none right.
    """
    acts = await _anew_when_late(acts, said, reading, talk)
    if not any(BARE in act.rules for act in acts if isinstance(act, Unsure)):
        return list(acts)
    if not await talk.book.bins():
        return []
    if said.replies_to or reading.context.to_bot:
        return list(acts)
    since = await said_behind(None, said, talk)
    if since.own or since.others or since.asked:
        items = reading.message.items
        of_ours = any(item.scrap for item in items)
        of_ours = of_ours or (bool(items) and await talk.is_of_bins(said, most_else=2))
        return list(acts) if of_ours else []
    lately = since.at is not None and said.at - since.at <= TALK_GOES_ON
    amid = lately and reading.message.items and isinstance(since.record, Layer)
    if not (amid or is_told_in(reading.message)):
        return list(acts)
    return [act for one in acts if isinstance(one, Unsure) for act in one.guess]


async def _anew_when_late(
    acts: Sequence[Act | Plan], said: Said, reading: Reading, talk: Talk
) -> Sequence[Act | Plan]:
    """ "1.5 kg" a day behind the last record: the acts as they would be had nothing been told."""
    amends = bool(acts) and all(isinstance(act, Amend) for act in acts)
    if not amends or said.replies_to or not is_bare(reading.message):
        return acts
    since = await said_behind(None, said, talk)
    if since.at is not None and said.at - since.at <= TALK_GOES_ON:
        return acts
    return Reading(said.body, replace(reading.context, last=None, earlier=None)).acts


async def _is_among_others(said: Said, talk: Talk, marked: Collection[str] | None) -> bool:
    """Whether others have just spoken, and the words come neither behind ours nor in reply; with
    `marked`, only messages that bear one of those marks count.
    """
    if said.replies_to or await talk.comes_next(said):
        return False
    before = await traces.said_lately(
        talk.book.db, talk.book.room.address, talk.item.id, MOST_BETWEEN
    )
    if marked is not None:
        before = [one for one in before if (one.mark or " ")[0] in marked]
    return any(one.sender != said.sender and said.at - one.at <= TALK_GOES_ON for one in before)


async def _is_behind_a_record(said: Said, talk: Talk) -> bool:
    """Whether what we answered last was another's, and no question: "and lemon?" adds to none."""
    before = await traces.last_said(talk.book.db, talk.book.room.address, talk.item.id)
    if said.replies_to or before is None or before.sender == said.sender:
        return False
    return said.at - before.at <= TALK_GOES_ON and not (before.mark or "").startswith(ASKED_US)


async def is_answered(said: Said, talk: Talk, but: str | None = None) -> bool:
    """Whether another has just asked the room something, and the words do not turn to us; with
    `but`, a question that bears that mark does not count.
    """
    if said.replies_to or talk.calls_us(said):
        return False
    between = await traces.said_lately(
        talk.book.db, talk.book.room.address, talk.item.id, MOST_BETWEEN
    )
    asked = None
    for before in between:
        if before.sender == said.sender or said.at - before.at > TALK_GOES_ON:
            break
        if (before.mark or "").startswith(ASKS) and before.mark != but:
            asked = before.at
            break
    return asked is not None and not await _turned_to_all_since(asked, talk)


async def _turned_to_all_since(moment: datetime, talk: Talk) -> bool:
    """Whether our last words came later, and were unasked or an offer to somebody: "done" is then
    of what they name, and "happy to" takes what they offer.
    """
    latest = await outbox.latest(talk.book.db, talk.book.room.id)
    if latest is None or latest[1] <= moment:
        return False
    told = await talk.book.of_event(latest[0].to_event) if latest[0].to_event else []
    return latest[0].kind in REMINDERS or any(one.act in ("offer", "swap") for one in told)


async def for_us(
    acts: Sequence[Act | Plan], said: Said, reading: Reading, talk: Talk, turn: Turn
) -> tuple[list[Act | Plan], list[ANSWERING]]:
    """The acts meant for us, and those that may be; what answers a neighbour, or goes on from other
    talk, is neither.
    """
    if owed := await owed_to_neighbour(acts, said, reading, talk):
        return owed, []
    leans = any(leaner(act, reading.message) for act in acts)
    if said.replies_to or reading.context.to_bot or not leans:
        return await _not_answering(acts, said, reading, talk)
    last = await talk.book.last_by(turn.sender)
    since = await said_since(said, last, talk)
    weighed = [(act, leaning(act, reading.message, since)) for act in acts]
    meant = [act for act, how in weighed if how is Leaning.MEANT]
    ours, asked = await _not_answering(meant, said, reading, talk)
    for act, how in weighed:
        if how is not Leaning.DOUBTFUL:
            continue
        if isinstance(act, Amend | Retract):
            asked.append(act)
        elif isinstance(act, Layer | Drain):
            ours.append(Unsure(guess=(act,), rules=act.rules))
        else:
            ours.append(act)
    return ours, asked


async def _not_answering(
    acts: Sequence[Act | Plan], said: Said, reading: Reading, talk: Talk
) -> tuple[list[Act | Plan], list[ANSWERING]]:
    """The acts that are no answer to a neighbour, and those that may be none; a layer that may be
    one is asked about.
    """
    doubted = [asked_of_layer(act, reading.message) for act in acts]
    if doubted == list(acts) and not any(isinstance(act, ANSWERING) for act in acts):
        return list(acts), []
    if not await is_answered(said, talk):
        return await _not_of_talk(acts, said, reading, talk), []
    message = reading.message
    ours = [a for a in doubted if not isinstance(a, ANSWERING) or is_for_us(a, message)]
    rest = [a for a in doubted if isinstance(a, ANSWERING) and a not in ours]
    return ours, [act for act in rest if may_be_for_us(act, message)]


async def _not_of_talk(
    acts: Sequence[Act | Plan], said: Said, reading: Reading, talk: Talk
) -> list[Act | Plan]:
    """The acts, without a putting off of what another has just talked of: "leave it another week"
    behind a party is none of a reminder.
    """
    leans = any(isinstance(act, Later) and act.bin is None for act in acts)
    if not leans or not reading.message.has(_IT) or said.replies_to or talk.calls_us(said):
        return list(acts)
    if await talk.comes_next(said):
        return list(acts)
    before = await traces.last_said(talk.book.db, talk.book.room.address, talk.item.id)
    if before is None or before.sender == said.sender or said.at - before.at > TALK_GOES_ON:
        return list(acts)
    is_talk = (before.mark or "")[:1] in (TALKS, TALKS_FIGURES)
    return [act for act in acts if not (is_talk and isinstance(act, Later))]


_IT = words_in("it that this them")


def mark_of(talked: SmallTalk | None) -> str | None:
    """All that is kept of talk of other things, or of starter."""
    if talked is None or talked.bran:
        return TALKS_BRAN if talked else None
    return TALKS_FIGURES if talked.figure else TALKS


def asking_mark(message: Message) -> str:
    """All that is kept of what asks the others in the room."""
    if message.has(OF_BRAN):
        return f"{ASKS}{TALKS_BRAN}"
    return ASKS_AMOUNT if asks_amount(message) else ASKS


async def said_since(said: Said, record: Entry | None, talk: Talk) -> Since:
    """What was talked of since a record; since the group's last one where there is none."""
    since = await said_behind((record.event, record.cause) if record else None, said, talk)
    return replace(
        since,
        record=corrections.as_act(record) if record else None,
        late=record is not None and said.at - record.written_at > TALK_GOES_ON,
    )


async def said_behind(events: Collection[str] | None, said: Said, talk: Talk) -> Since:
    """What was talked of behind one of some messages; behind any that is in the book, if None."""
    own, others = 0, 0
    told, at = list[Entry](), None
    marks: set[tuple[bool, str]] = set()
    book = talk.book
    for before in await traces.said_lately(book.db, book.room.address, talk.item.id, MOST_SINCE):
        if events is None:
            told = await book.of_event(before.event)
        if before.event in events if events is not None else told:
            at = before.at
            break
        mine, mark = before.sender == said.sender, (before.mark or "")[:1]
        if mark in OF_ELSE:
            own, others = own + mine, others + (not mine)
        marks.add((mine, mark))
    return Since(
        own=own,
        others=others,
        figures=(False, TALKS_FIGURES) in marks,
        own_figures=(True, TALKS_FIGURES) in marks,
        asked=(False, ASKS) in marks,
        asked_us=(False, ASKED_US) in marks,
        record=corrections.as_act(told[-1]) if told else None,
        at=at,
    )
