"""Eight neighbours and their bins, in any conversation: who keeps what is watched at every step.

What is watched is the promise alone: each bin has one keeper, who is in the room, or is openly
unattended; and nobody comes to a bin but by their own word, by coming back, by beginning its
records, or because something said before was taken back.
"""

import re
from dataclasses import dataclass, field
from datetime import date
from itertools import pairwise
from pathlib import Path
from typing import Any

from handlers.sharing.keepers import custody_of, whole_custody
from handlers.sharing.spells import spells
from storage.book import Book
from storage.database import Database
from storage.moments import local_day
from storage.rows import Bin, Message
from tests.room import TalkingRoom

NAMES = ("ada", "bram", "cleo", "dov", "esi", "finn", "gita", "hugo")
BINS = ("yard", "shed", "porch")

Step = tuple[str, int, int, int]
"""What happens, who does it, and two numbers that choose the rest."""

SAYING = ("feed", "offer", "offer", "ask", "ask", "accept", "accept", "take", "decline", "withdraw")
MARKING = ("thumb", "thumb", "thumb down")
CHANGING = ("edit", "edit", "delete", "cross", "restore")
ROOM = ("leave", "return", "return", "return", "return", "wait", "wait", "restart")
HAPPENING = ("late", "open", "retire", "rota")
WHATS = (*SAYING, *MARKING, *CHANGING, *ROOM, *HAPPENING)

DAYS = ("", " on Friday", " tomorrow", " next Monday")
BY_WORD = frozenset({"accept", "take", "thumb", "yes", "late", "open", "feed", "rota"})
"""Steps by which whoever takes them may come to keep a bin."""
ANYBODY = "anybody"
WILL_YOU = re.compile(r"(?P<to>\w+), will you take the (?P<bin>\w+) bin")
SAID_OF_OFFERS = (
    (WILL_YOU, True),
    (re.compile(r"(?P<to>\w+), it is your turn to keep the (?P<bin>\w+) bin"), True),
    (re.compile(r"Who takes the (?P<bin>\w+) bin"), True),
    (re.compile(r"nobody keeps the (?P<bin>\w+) bin\. Who takes it"), True),
    (re.compile(r"to \w+ the (?P<bin>\w+) bin by .* who takes it"), True),
    (re.compile(r"The (?P<bin>\w+) bin (?:stays with|is no longer on offer|is out of use)"), False),
    (
        re.compile(r"\b(?!Who)\w+ (?:keeps|takes) the (?P<bin>\w+) bin (?:now|\w+ \d|tomorrow)"),
        False,
    ),
    (re.compile(r"Fair enough: .* take the (?P<bin>\w+) bin\?"), True),
    (re.compile(r"Nobody took the (?P<bin>\w+) bin"), False),
)
"""How the bot says that a bin is on offer, or no longer."""
BY_CHANGE = frozenset({"edit", "delete", "cross", "restore"})


@dataclass
class Watch:
    """What every step must leave true; counts what happened."""

    room: TalkingRoom
    path: Path
    here: set[str] = field(default_factory=lambda: set(NAMES))
    said: list[tuple[str, str]] = field(default_factory=list)
    """Event and sender of what was said and marked."""
    marks: list[tuple[str, str]] = field(default_factory=list)
    late: list[dict[str, Any]] = field(default_factory=list)
    """Messages that are on their way still."""
    spoken: list[Message] = field(default_factory=list)
    before: dict[str, str | None] = field(default_factory=dict)
    offers: dict[str, str] = field(default_factory=dict)
    """What is on offer by all that the bot has said: bin to whom, or to anybody."""
    heard: int = 0
    """How much of what the bot said was taken in."""
    agreed: dict[str, set[str]] = field(default_factory=dict)
    """For each bin whoever has agreed to take it on a day to come."""
    changes: int = 0
    steps: int = 0

    async def begin(self) -> None:
        """Everybody is there, and each bin has a keeper."""
        for name in NAMES:
            await self._moves(name, "join")
        for bin, who in zip(BINS, NAMES, strict=False):
            await self._says(f"opened the {bin} bin, 30 L, shared", who)
        self.spoken += await self.room.waits(minutes=1)
        self.before = await self._keepers()

    async def step(self, step: Step) -> None:
        """One thing happens; then all is looked at."""
        what, who, pick, more = step
        name = NAMES[who % len(NAMES)]
        if what in ("accept", "decline", "thumb", "withdraw") and more % 3:
            name = self._concerned(what, pick) or name
        self.steps += 1
        if await self._happens(what, name, pick, more):
            await self._check(what, name)

    def _concerned(self, what: str, pick: int) -> str | None:
        """Somebody who was offered a bin of late, or keeps one that was."""
        asked = [match for message in self.spoken[-8:] for match in WILL_YOU.finditer(message.body)]
        if not asked:
            return None
        match = asked[pick % len(asked)]
        name = self.before.get(match["bin"]) if what == "withdraw" else match["to"]
        return name.casefold() if name else None

    async def _happens(self, what: str, name: str, pick: int, more: int) -> bool:
        """Let it happen; False where it cannot."""
        if what in ROOM:
            return await self._of_the_room(what, name, pick)
        if name not in self.here:
            return False
        if what in MARKING or what in CHANGING:
            return await self._changes(what, name, pick, more)
        words = self._words(what, pick, more)
        if what == "late":
            await self._delayed(words, name, pick)
        else:
            await self._says(words, name)
            if what == "take" and more % 2:
                await self._says("yes", name)
        return True

    async def _of_the_room(self, what: str, name: str, pick: int) -> bool:
        """Time runs on, the bot starts again, or somebody comes or goes."""
        match what:
            case "restart":
                await self.room.db.close()
                self.room = self.room.restarted(await Database.open(self.path))
            case "wait":
                self.spoken += await self.room.waits(hours=(1, 6, 24, 30, 80)[pick % 5])
            case "return" if name not in self.here:
                self.here.add(name)
                await self._moves(name, "join")
            case "leave" if name in self.here and len(self.here) > 2:
                self.here.discard(name)
                await self._moves(name, "leave")
            case _:
                return False
        return True

    def _words(self, what: str, pick: int, more: int) -> str:
        bin, day = BINS[pick % len(BINS)], DAYS[more % len(DAYS)]
        other = NAMES[more % len(NAMES)].title()
        return {
            "feed": f"added 1 kg scraps to the {bin} bin",
            "open": f"opened the {bin} bin, 20 L",
            "offer": f"handing the {bin} bin to {other}{day}",
            "ask": f"can anyone take the {bin} bin{day}?",
            "accept": ("I'll take it", f"I'll take the {bin} bin", "I've got it now")[more % 3],
            "late": (
                "I'll take it",
                f"I'll take the {bin} bin",
                f"handing the {bin} bin to {other}",
            )[more % 3],
            "take": f"I'll take the {bin} bin",
            "decline": ("not me", f"I can't take the {bin} bin")[more % 2],
            "withdraw": (f"I'll keep the {bin} bin after all", "I'll keep it after all")[more % 2],
            "retire": f"retire the {bin} bin",
            "rota": f"rota for the {bin} bin: {other}, Ada and Bram, every 3 days",
        }[what]

    async def _changes(self, what: str, name: str, pick: int, more: int) -> bool:
        if what in MARKING:
            targets = [message.tx_id for message in self.spoken[-12:]]
            targets += [event for event, _ in self.said[-12:]]
            if not targets:
                return False
            event = f"$m{self.room.count}"
            sign = "👎" if what == "thumb down" else "👍"
            self.spoken += await self.room.marks(
                targets[pick % len(targets)], sign, who=name, event=event
            )
            self.marks.append((event, name))
            return True
        own = [event for event, sender in self.said[-25:] if sender == name]
        marks = [event for event, sender in self.marks[-25:] if sender == name]
        targets = marks if what == "restore" else own
        if not targets:
            return False
        target = targets[pick % len(targets)]
        if what == "edit":
            kind = ("offer", "ask", "accept", "feed", "decline", "take")[more % 6]
            self.spoken += await self.room.edits(target, self._words(kind, pick, more), who=name)
        elif what == "cross":
            event = f"$m{self.room.count}"
            self.spoken += await self.room.marks(target, "❌", who=name, event=event)
            self.marks.append((event, name))
        else:
            self.spoken += await self.room.deletes(target, who=name)
        return True

    async def _says(self, words: str, name: str) -> None:
        event = f"$s{self.room.count}"
        self.spoken += await self.room.says(words, who=name, event=event)
        self.said.append((event, name))

    async def _delayed(self, words: str, name: str, pick: int) -> None:
        """A message is written now and comes later, or one that was written before comes now."""
        if self.late and pick % 2:
            raw = self.late.pop(0)
            taken = await self.room.playback.take(raw, self.room.now)
            self.spoken += [spoken.message for spoken in taken]
            return
        self.room.count += 1
        event = f"$l{self.room.count}"
        self.late.append(
            {
                "type": "m.room.message",
                "event_id": event,
                "sender": f"@{name}:test",
                "origin_server_ts": int(self.room.now.timestamp() * 1000),
                "content": {"msgtype": "m.text", "body": words},
            }
        )
        self.said.append((event, name))

    async def _moves(self, name: str, membership: str) -> None:
        self.room.count += 1
        raw = {
            "type": "m.room.member",
            "event_id": f"$j{self.room.count}",
            "sender": f"@{name}:test",
            "state_key": f"@{name}:test",
            "origin_server_ts": int(self.room.now.timestamp() * 1000),
            "content": {"membership": membership, "displayname": name.title()},
        }
        taken = await self.room.playback.take(raw, self.room.now)
        self.spoken += [spoken.message for spoken in taken]

    async def _today(self, book: Book) -> date:
        return local_day(self.room.now, book.room.zone)

    async def _keepers(self) -> dict[str, str | None]:
        """The keeper of each bin in use; whoever has agreed to take one is noted."""
        book = await self.room.book()
        today = await self._today(book)
        found = {}
        for bin in await book.bins():
            custody = await custody_of(book, bin, today)
            found[bin.name] = custody.keeper
            if custody.coming and custody.coming.member:
                self.agreed.setdefault(bin.name, set()).add(custody.coming.member)
            # Without a keeper it is said why: he left, or nobody has begun or taken it.
            assert custody.keeper or custody.left or custody.by is None
            await self._check_days(book, bin, today, custody.keeper)
        failed = await book.db.rows("SELECT 1 FROM inbox WHERE state = 'failed'")
        assert not failed
        return found

    async def _check_days(self, book: Book, bin: Bin, today: date, keeper: str | None) -> None:
        """Every day of a bin's life is in one care, and the last one in its keeper's."""
        kept = spells(await whole_custody(book, bin), today, book.room.zone)
        if not kept:
            assert keeper is None
            return
        assert kept[-1].last is None
        assert kept[-1].keeper == keeper
        for one, after in pairwise(kept):
            assert one.last is not None
            assert one.first <= one.last
            assert (after.first - one.last).days == 1

    async def _check(self, what: str, name: str) -> None:
        now = await self._keepers()
        present = {member.title() for member in self.here}
        for bin, keeper in now.items():
            assert keeper is None or keeper in present, f"{keeper} keeps the {bin} bin and is gone"
            was = self.before.get(bin)
            if keeper == was:
                continue
            self.changes += 1
            assert self._may_change(what, name, bin, keeper), (what, name, bin, was, keeper)
            if what in ("accept", "thumb") and was and keeper not in self.agreed.get(bin, ()):
                was_offered = self.offers.get(bin) in (ANYBODY, name.title())
                assert was_offered or self._was_asked(name, bin), (name, bin, self.offers)
        self.before = now
        self._take_in(what)

    def _take_in(self, what: str) -> None:
        """What the bot has said of offers; what was taken back may let an older one stand again."""
        new = self.spoken[self.heard :]
        for message in new:
            for pattern, is_open in SAID_OF_OFFERS:
                for match in pattern.finditer(message.body):
                    to = match.groupdict().get("to") or ANYBODY
                    self.offers[match["bin"]] = to if is_open else "nobody"
        self.heard = len(self.spoken)
        if what in BY_CHANGE | {"late"}:
            about = {message.to_event for message in new}
            told = " ".join(one.body for one in self.spoken if one.to_event in about)
            self.offers |= {bin: ANYBODY for bin in BINS if f"{bin} bin" in told}

    def _was_asked(self, name: str, bin: str) -> bool:
        """Whether somebody was asked if a bin is to be taken from its keeper, and said yes."""
        own = {event for event, sender in self.said if sender == name}
        return any(
            message.to_event in own
            and f"keeps the {bin} bin. Shall I write down that you keep it" in message.body
            for message in self.spoken
        )

    def _may_change(self, what: str, name: str, bin: str, keeper: str | None) -> bool:
        gives_back = what == "decline" and self.before.get(bin) == name.title()
        if keeper is None or gives_back:
            return gives_back or what in {"leave", "retire", "late"} | BY_CHANGE
        if what in BY_CHANGE or what in {"return", "late"}:
            return True
        if what == "wait" or keeper in self.agreed.get(bin, ()):
            return keeper in self.agreed.get(bin, ())
        is_new = bin not in self.before and what == "offer"
        return (what in BY_WORD or is_new) and keeper == name.title()
