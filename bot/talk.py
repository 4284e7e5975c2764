"""What a message is read in: who is there, what was said before it, and what it leans on."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import timedelta
from typing import Any
from zoneinfo import ZoneInfo

from bot import askeddeed, planned
from bot.heard import Edited, Heard, Said, local_part
from bot.lastasked import ASKED_US, asked_lately, may_be_of_topic, talked_of
from bot.mentions import PLAIN_NAME, by_plain_name, may_call
from handlers.answer import Turn
from handlers.doubtful.unsure import guess_of
from handlers.practice.harm import ADVICE
from handlers.reading.acts import Act, Ask, Drain, Layer
from handlers.reading.bins.keptbins import may_own
from handlers.reading.completion.askedfood import may_put_in
from handlers.reading.completion.planned import may_tell_planned
from handlers.reading.context import Context, Subject
from handlers.reading.corrections.sametoo import may_do_as_told
from handlers.reading.harm.harmwords import NEXT_CUES
from handlers.reading.questions.duekinds import OF_DIGEST
from handlers.reading.questions.followup import may_follow
from handlers.reading.room.askeddeed import may_be_told_as_asked
from handlers.reading.room.ofbins import may_be_of_bins
from handlers.righting import corrections
from handlers.sharing.favours import kept_by
from handlers.sharing.keepers import custody_of, is_return
from storage import outbox, traces, words
from storage.book import Book
from storage.inbox import Item
from storage.rows import Entry

ASKS = "?"
"""The mark of a message that asks the others in the room; all that is kept of it, but for a favour:
see bot/favours.py."""

TALKS, TALKS_FIGURES = "~", "#"
"""The marks of a message that was of other things, without and with a figure in it."""

TALKS_BRAN = "%"
"""The mark of a message that was of how much starter is put on."""

ASKS_AMOUNT = f"{ASKS}#"
"""The mark of a message that asked the others how much there was of some food."""

OF_ELSE = frozenset({ASKS, TALKS, TALKS_FIGURES})
"""Marks of what is not told of the bins: behind a word on them "who's late?" asks of them too."""

NAMES = "@"
"""Stands before the bin in the mark of a message that named one, behind any other sign."""

REMINDERS = frozenset({"digest", "reminder"})
"""What is said unasked, so that an answer to it is about what it names."""

SAME = "same"
"""The word with which one does as another has just told, though it was answered with a mark."""

TALK_GOES_ON = timedelta(hours=1)
"""How long "another 2 kg" is more of what its sender had written down."""

SWALLOWED = tuple(ADVICE[hazard].lines[0] for hazard in ADVICE if hazard.startswith("swallowed"))
"""How what is said begins where somebody swallowed of it."""

SAME_DAY = timedelta(hours=12)
"""How long our last words may be answered, where nobody has spoken since."""

MOST_COURTESIES = 3
"""Messages looked back on for what another has just told."""

MOST_BEFORE = 4
"""Messages looked back on for whether the talk is of the bins."""

MOST_LEANING_WORDS, MOST_CORRECTING_WORDS = 6, 16
"""A longer message is read for itself, whatever was said before; a correction may be longer."""


@dataclass(frozen=True, slots=True)
class Talk:
    """The talk of a room, at one event."""

    book: Book
    item: Item
    own: str

    def calls_us(self, said: Said) -> bool:
        """Whether it is said to the bot by its name."""
        first = said.body.lstrip("@ ").casefold()
        return self.own in said.mentions or first.startswith((PLAIN_NAME, "bot,", "bot ", "bot:"))

    async def with_names(self, heard: Heard) -> Heard:
        """The same, with the names that members show in place of their Matrix ids, and the bot's
        plain name in place of the one that it shows.
        """
        if not isinstance(heard, Said | Edited):
            return heard
        body = heard.body
        for user in heard.ids:
            name = await self.book.name_of(user)
            if name and user != self.own:
                body = body.replace(words.text(f"@{local_part(user)}"), name, 1)
        for shown in {self.book.room.own_name, local_part(self.own)} - {"", PLAIN_NAME}:
            if may_call(body, shown):
                body = by_plain_name(body, shown, await self._others())
        return replace(heard, body=body)

    async def _others(self) -> list[str]:
        """What else has a name in the room: its members and bins."""
        members = [member.name for member in await self.book.members()]
        return [*members, *(bin.name for bin in await self.book.bins())]

    async def context(self, heard: Said | Edited, turn: Turn, former: tuple[str, ...]) -> Context:
        """What its words are read with; `former`: names that bins had."""
        after_bot = isinstance(heard, Said) and await self._answers_us(heard)
        lately = await self._own_lately(heard, turn) if isinstance(heard, Said) else None
        own = lately if lately and not lately.struck else None
        earlier = own is not None and not turn.refers_to and await self._spoke_last(heard) is False
        retired = tuple([bin.name for bin in await self.book.retired()])
        members = tuple([member.name for member in await self.book.members()])
        return Context(
            at=turn.at,
            zone=ZoneInfo(self.book.room.zone),
            units=self.book.room.units,
            bins=(*[bin.name for bin in await self.book.bins()], *former, *retired),
            retired=retired,
            members=members,
            sender=turn.sender,
            after_bot=after_bot,
            replied=isinstance(heard, Said) and await self._replies_to_own(heard, turn),
            last=await self._record_in_talk(heard, turn, lately, after_bot=after_bot),
            earlier=corrections.as_act(own) if own and earlier else None,
            **await self._just_told(heard, turn),
            asked=await self._asked_lately(heard),
            asked_food=await self._asked_food(heard),
            **await self._planned(heard, turn),
            asked_deed=await self._asked_deed(heard),
            on_reminder=own is not None and own.act == "date",
            on_absence=own is not None and own.act == "away",
            on_rota=own is not None and own.act in ("rota", "join"),
            on_handover=own is not None and (own.act == "offer" or is_return(own)),
            to_bot=isinstance(heard, Said) and await self._is_to_us(heard),
            harmed=any(cue in heard.body for cue in NEXT_CUES) and await self._told_of_harm(),
            talk_of=await self._talk_of(heard),
            of_bins=after_bot or (may_be_of_bins(heard.body) and await self.is_of_bins(heard)),
            in_room=True,
            places=tuple(await self.book.places()),
            kept=await self._kept(turn) if may_own(heard.body, members) else (),
        )

    async def is_of_bins(self, said: Said | Edited, most_else: int = 1) -> bool:
        """Whether the room has just talked of its bins, with few words on other things since."""
        db, address = self.book.db, self.book.room.address
        latest = await outbox.latest(db, self.book.room.id)
        if latest and isinstance(said, Said) and await self.comes_next(said):
            return said.at - latest[1] <= SAME_DAY
        of_else = 0
        for before in await traces.said_lately(db, address, self.item.id, MOST_BEFORE):
            mark = (before.mark or "")[:1]
            of_else += mark in OF_ELSE
            if said.at - before.at > TALK_GOES_ON or of_else > most_else:
                return False
            if mark == ASKED_US or (latest is not None and latest[0].to_event == before.event):
                return True  # it asked us, or was answered
            if await self.book.of_event(before.event):
                return True
        return False

    async def _kept(self, turn: Turn) -> tuple[tuple[str, str], ...]:
        """The members with the bins that each keeps."""
        bins = [
            (bin, await custody_of(self.book, bin, turn.today)) for bin in await self.book.bins()
        ]
        return tuple([(held.keeper, bin.name) for bin, held in bins if held.keeper])

    async def _is_to_us(self, said: Said) -> bool:
        """Whether it is said to the bot by name, in reply to it, or where nobody else is."""
        if self.calls_us(said) or PLAIN_NAME in said.body.casefold():
            return True
        if said.replies_to:
            return await self._is_ours(said.replies_to)
        return sum(m.present and m.user is not None for m in await self.book.members()) <= 1

    async def _is_ours(self, event: str) -> bool:
        """Whether we said it."""
        return await outbox.said_as(self.book.db, self.book.room.id, event) is not None

    async def _answers_us(self, said: Said) -> bool:
        """Whether it replies to words of ours, or comes next after them and is as short."""
        return len(said.body.split()) <= MOST_LEANING_WORDS and await self.comes_next(said)

    async def comes_next(self, said: Said) -> bool:
        """Whether it replies to words of ours, or comes next after them."""
        if said.replies_to:
            return await self._is_ours(said.replies_to)
        latest = await outbox.latest(self.book.db, self.book.room.id)
        if latest is None:
            return False
        message, made_at = latest
        before = await traces.last_said(self.book.db, self.book.room.address, self.item.id)
        return before is None or message.to_event == before.event or made_at > before.at

    async def _asked_lately(self, heard: Said | Edited) -> tuple[Ask, ...]:
        """The question that was answered last, if nobody has spoken since but the sender."""
        if not may_follow(heard.body):
            return ()
        comes_next = isinstance(heard, Said) and await self.comes_next(heard)
        if not comes_next and not await self._spoke_last(heard):
            return ()
        return await asked_lately(heard, self.book, self.item, TALK_GOES_ON)

    async def _talk_of(self, heard: Said | Edited) -> Subject | None:
        """What the talk is of, where the words may lean on that."""
        if not may_be_of_topic(heard.body):
            return None
        return await talked_of(heard, self.book, self.item, TALK_GOES_ON)

    async def _asked_food(self, heard: Said | Edited) -> Ask | None:
        """The question whether a food may go in, if the sender has asked it right before."""
        if not isinstance(heard, Said) or not may_put_in(heard.body):
            return None
        before = await traces.last_said(self.book.db, self.book.room.address, self.item.id)
        if before is None or before.sender != heard.sender:
            return None
        asked = await asked_lately(heard, self.book, self.item, TALK_GOES_ON)
        of_food = len(asked) == 1 and asked[0].topic == "allowed"
        return asked[0] if of_food else None

    async def _planned(self, heard: Said | Edited, turn: Turn) -> dict[str, Any]:
        """What the sender has told they would put in, if these words may tell that it is in."""
        if not isinstance(heard, Said) or not may_tell_planned(heard.body):
            return {}
        layers, is_next = await planned.lately(heard, self.book, self.item, turn)
        return {"planned": layers, "planned_next": is_next} if layers else {}

    async def _asked_deed(self, heard: Said | Edited) -> Drain | Layer | None:
        """What another has just asked to have been done, if these words may tell that it was."""
        if not isinstance(heard, Said) or not may_be_told_as_asked(heard.body):
            return None
        return await askeddeed.asked_before(heard, self.book, self.item, TALK_GOES_ON)

    async def _told_of_harm(self) -> bool:
        """Whether we last told what to do for somebody who swallowed of it, and lately."""
        latest = await outbox.latest(self.book.db, self.book.room.id)
        if latest is None or self.item.at - latest[1] > TALK_GOES_ON:
            return False
        return latest[0].body.startswith(SWALLOWED)

    async def _replies_to_own(self, said: Said, turn: Turn) -> bool:
        """Whether it replies to what we answered to a record of the sender's own."""
        if (
            turn.refers_to is None
            or not said.replies_to
            or not await self._is_ours(said.replies_to)
        ):
            return False
        record = await self.book.last_standing(turn.refers_to)
        return record is not None and turn.sender in (record.writer, record.member)

    async def _record_in_talk(
        self, heard: Said | Edited, turn: Turn, own: Entry | None, *, after_bot: bool
    ) -> Act | None:
        """The record that a few words may lean on: the one replied to, the one we answered last,
        or the sender's `own` if nobody else has spoken since; of an edit, what stood in its place.
        """
        if len(heard.body.split()) > MOST_CORRECTING_WORDS:
            return None
        if isinstance(heard, Edited):
            entries = await self.book.last_of_event(heard.original)
            return corrections.as_act(entries[-1]) if entries else None
        event = turn.refers_to
        if event is None and after_bot:
            latest = await outbox.latest(self.book.db, self.book.room.id)
            event = latest[0].to_event if latest else None
        last = await self.book.last_standing(event) if event else None
        if last is None and turn.refers_to is None and own and await self._spoke_last(heard):
            last = await self.book.last_standing(own.event)
        if last is None and event is None and SAME in heard.body.casefold().split():
            before = await traces.last_said(self.book.db, self.book.room.address, self.item.id)
            last = await self.book.last_standing(before.event) if before else None
        return corrections.as_act(last) if last else None

    async def _just_told(self, heard: Said | Edited, turn: Turn) -> dict[str, Any]:
        """What another told in the message just before, but for a "lovely", and the bin that the
        sender keeps, where the words may go on from that; for an edit, before what it changes.
        """
        if not may_do_as_told(heard.body) or (isinstance(heard, Said) and heard.replies_to):
            return {}
        db, room, item = self.book.db, self.book.room.address, self.item.id
        if isinstance(heard, Edited):
            item = await traces.item_of(db, room, heard.original) or item
        for before in await traces.said_lately(db, room, item, MOST_COURTESIES):
            if before.sender == heard.sender or turn.at - before.at > TALK_GOES_ON:
                break
            told = await self.book.last_standing(before.event)
            act = corrections.as_act(told) if told else None
            if act is None and (question := await self.book.question_about(before.event)):
                act = next(iter(guess_of(question)), None)
            if act is not None:
                return {"just_told": act, "own_bin": await kept_by(turn.sender, turn)}
            if before.mark not in (None, TALKS_BRAN) and not before.mark.startswith(NAMES):
                break  # other things were talked of since
        return {}

    async def told_together(self, said: Said) -> Sequence[Entry]:
        """What stands of the sender's own, where a message told several answers and is replied to.

        Empty where they had but one there.
        """
        if not said.replies_to:
            return ()
        db, room = self.book.db, self.book.room.id
        events = await outbox.told_in(db, room, said.replies_to, said.sender)
        made = [entry for event in events for entry in await self.book.of_event(event)]
        return made if len({entry.event for entry in made}) > 1 else ()

    async def told_of_sender(self, turn: Turn) -> str | None:
        """The message before, or the one we answered last, if another told there what the sender
        of this one did.
        """
        before = await traces.last_said(self.book.db, self.book.room.address, self.item.id)
        latest = await outbox.latest(self.book.db, self.book.room.id)
        answered = latest[0].to_event if latest else None
        for event in (before.event if before else None, answered):
            entries = await self.book.of_event(event) if event else []
            if any(entry.member == turn.sender != entry.writer for entry in entries):
                return event
        return None

    async def told_since_opening(self, turn: Turn) -> str | None:
        """The message before, where another told a record there and the sender's own last one only
        opened a bin: a bin put right is of the other's.
        """
        own = await self.book.last_by(turn.sender)
        before = await traces.last_said(self.book.db, self.book.room.address, self.item.id)
        if own is None or own.act != "open" or before is None:
            return None
        told = await self.book.last_standing(before.event)
        return before.event if told and turn.sender != told.writer and told.act != "open" else None

    async def _spoke_last(self, heard: Said | Edited) -> bool | None:
        """Whether the words before were the sender's own; None where there are none."""
        before = await traces.last_said(self.book.db, self.book.room.address, self.item.id)
        return None if before is None else before.sender == heard.sender

    async def _own_lately(self, said: Said, turn: Turn) -> Entry | None:
        """The sender's own last record, if a few words may still lean on it."""
        if len(said.body.split()) > MOST_CORRECTING_WORDS:
            return None
        last = await self.book.last_by(turn.sender)
        lately = last is not None and said.at - last.written_at <= TALK_GOES_ON
        return last if last and lately else None

    async def record_behind(self, event: str | None) -> str | None:
        """The message that an event is about: what we answered, or the message itself."""
        if event is None:
            return None
        ours = await outbox.said_as(self.book.db, self.book.room.id, event)
        if ours:
            by_itself = ours.kind in REMINDERS or (ours.kind == "notice" and not ours.to_event)
            return ours.tx_id if by_itself else ours.to_event
        trace = await traces.trace(self.book.db, self.book.room.address, event)
        if trace and trace.kind == "automatic" and trace.about:
            return trace.about
        return event

    async def figure_asked_about(self, heard: Heard, what: str | None) -> str | None:
        """What was kept of the arithmetic behind the answer replied to, or the last words; or, if
        that is `what` is asked about, behind the last digest.
        """
        db, room = self.book.db, self.book.room.id
        if isinstance(heard, Said) and heard.replies_to:
            asked = await outbox.said_as(db, room, heard.replies_to)
            if asked is None and (event := await self.record_behind(heard.replies_to)):
                found = await outbox.answer_to(db, room, event)
                asked = found[1] if found else None
            return asked.why if asked else None
        last = outbox.latest_digest if what == OF_DIGEST else outbox.latest_to_people
        latest = await last(db, room)
        return latest[0].why if latest else None
