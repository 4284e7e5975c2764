"""A sentence pared to the words that say what is to be said: without those that say when."""

import re

from handlers.reading.message import Message
from handlers.reading.people.doers import is_sender
from handlers.reading.words.vocabulary import words_in

_TRAILING = words_in('" , - : please pls plz thanks ta thx cheers ok and by the on at for . !')
_LEADING = words_in('" , - : please to that about of we i you')


class Pared:
    """Words of a sentence joined by spaces: some left out, the bot's name too, members as one."""

    def __init__(self, message: Message, start: int, end: int, without: frozenset[int]) -> None:
        left_out = without | set(message.bot)
        members = {m.start: m for m in message.members if not m.owner}
        self.message = message
        self.at: list[int] = []
        self.members: dict[int, str] = {}
        norms: list[str] = []
        i = start
        while i < end:
            if i in left_out:
                i += 1
                continue
            member = members.get(i)
            if member is not None and norms and self._is_called(norms):
                norms.append("qmember")
                self.members[i] = member.name
            else:
                norms.append(message.norms[i])
            self.at.append(i)
            i = member.end if norms[-1] == "qmember" and member is not None else i + 1
        self.text = " ".join(norms)

    @staticmethod
    def _is_called(norms: list[str]) -> bool:
        """Whether a member who is named behind these words is one that is to be reminded."""
        led = norms[-1] in ("remind", "reminding", "for")
        return led or (norms[-1] in ("and", ",") and norms[-2:-1] == ["qmember"])

    def said(self, match: re.Match[str], group: str) -> str:
        """The words of a group as they were written."""
        first = len(self.text[: match.start(group)].split())
        last = len(self.text[: match.end(group)].split())
        places = self.at[first:last]
        while places and self.message.norms[places[-1]] in _TRAILING:
            places.pop()
        while places and self.message.norms[places[0]] in _LEADING:
            places.pop(0)
        return "".join(
            self._written(i, before) for before, i in zip([-1, *places], places, strict=False)
        )

    def _written(self, i: int, before: int) -> str:
        """A word as it was written, parted from the one before as it was, or by a space."""
        word = self.message.words[i]
        joined = before == i - 1 and i and self.message.words[before].end == word.start
        return word.text if before < 0 or joined else f" {word.text}"

    def whom(self, match: re.Match[str]) -> tuple[str | None, str]:
        """For whom it is, None for all; and how the words begin that call several by name."""
        who = match.groupdict().get("who")
        if who == "me":
            return self.message.context.sender, ""
        if who != "qmember":
            return None, ""
        names = list(self.members.values())
        if len(names) > 1:
            return None, f"{', '.join(names[:-1])} and {names[-1]}: "
        is_own = is_sender(self.message, names[0])
        return (self.message.context.sender if is_own else names[0]), ""
