"""A stretch of a message that asks something, and what stands in it."""

from typing import NamedTuple

from handlers.practice.signs import Sign
from handlers.reading.food.items import Item
from handlers.reading.message import LIQUID, Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.vocabulary import words_in

CRAFT = words_in(
    "bokashi scraps leachate ferment fermented fermenting fermentation bin bins bucket "
    "buckets pail pails lid trench layer layers peels inoculant tap spigot"
)
_ANY_LIQUID = words_in("tea juice brew goo saft elixir liquid liquor jus jugo fluid juices")
_BESIDE_LIQUID = words_in(
    "dilute diluted dilution plants tomatoes roses watering can neat straight garden water "
    "bin parts mix seedlings houseplants lawn undiluted strength strong thin gallon ratio "
    "spray bucket soil feed"
)


class Question(NamedTuple):
    """words[start:end] of a message, which ask something."""

    message: Message
    start: int
    end: int
    words: frozenset[str]
    text: str
    """The words, one space between and one at either end."""
    to_bot: bool
    """The bot is called by its name."""

    @classmethod
    def within(cls, message: Message, start: int, end: int) -> "Question":
        """What words[start:end] ask."""
        norms = message.norms[start:end]
        text = f" {' '.join(norms)} "
        return cls(message, start, end, frozenset(norms), text, bool(message.bot))

    def has(self, words: frozenset[str]) -> bool:
        """Whether one of the words stands in it."""
        return not self.words.isdisjoint(words)

    @property
    def own(self) -> tuple[int, int]:
        """The words of the sentence itself, without one before it that sets the scene."""
        last = max(s.start for s in self.message.sentences if s.start < self.end)
        return max(self.start, last), self.end

    @property
    def own_text(self) -> str:
        """The words of the sentence itself, one space between and one at either end."""
        start, end = self.own
        return f" {' '.join(self.message.norms[start:end])} "

    @property
    def is_alone(self) -> bool:
        """Whether the message is this one sentence."""
        return len(self.message.sentences) == 1

    def bins(self) -> list[BinRef]:
        """The bins it speaks of."""
        return [b for b in self.message.bins if self.start <= b.start < self.end]

    def items(self) -> list[Item]:
        """The things named that may be scraps."""
        return [i for i in self.message.items if self.start <= i.start < self.end]

    def amounts(self, quantity: str) -> list[float]:
        """The amounts of a quantity, in our units."""
        return [
            a.value
            for a in self.message.amounts
            if a.quantity == quantity and not a.negative and self.start <= a.start < self.end
        ]

    def signs(self) -> tuple[Sign, ...]:
        """The signs it speaks of; a loose word ("dry") counts only where a bin is meant."""
        meant = bool(self.bins()) or self.to_bot
        found = [s for s in self.message.signs if self.start <= s.start < self.end]
        return tuple(dict.fromkeys(s.sign for s in found if s.plain or meant))

    def bran(self) -> bool:
        """Whether starter bran is named."""
        return self.message.bran(self.start, self.end)

    def liquid(self) -> bool:
        """Whether a bin's liquid is meant; "tea" and "juice" only beside another sign of it."""
        found = self.words & LIQUID
        if not found <= _ANY_LIQUID:
            return True
        near = (
            bool(self.bins())
            or bool(self.amounts("volume"))
            or self.to_bot
            or self.has(CRAFT)
            or self.has(_BESIDE_LIQUID)
        )
        return bool(found) and near

    def craft(self) -> bool:
        """Whether it is about the craft or the group's bins, or asked of the bot."""
        return (
            self.to_bot
            or any(b.known or b.plain for b in self.bins())
            or self.has(CRAFT)
            or self.bran()
            or self.liquid()
        )
