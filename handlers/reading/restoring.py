"""A second thought behind a striking out: "no wait, keep it", "leave it as it was"."""

import re
from collections.abc import Iterator

from handlers.reading.arranged import Restored
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import phrases

CUES = (
    "keep it", "keep that", "keep them", "keep the", "leave it", "leave that", "leave them",
    "it back", "that back", "them back", "restore", "was right", "was correct", "was fine",
    "mean to", "as it was", "unscratch", "undelete", "unstrike",
)  # fmt: skip
_MOST_WORDS = 16

_IT = r"(?:it|that|this|them|those|that one|the last one|the record|the entry|qbin)"
_AS = (
    r"(?: (?:as (?:it|that|they) (?:was|were|is)|as before|how it was|the way it was|alone|in|"
    r"there|back|on|then|after all|please|sorry|actually|in the book|on the record|where it was|"
    r"standing|it was right))*"
)
_LEAD = (
    r"^(?:(?:no|nope|oh|oops|ah|wait|hang on|hold on|actually|sorry|on second thoughts?|scrap that|"
    r"forget that|my mistake|hm+|bot|argh) )*"
)
_RESTORED = re.compile(
    _LEAD + rf"(?:(?:keep|leave) {_IT}{_AS}|(?:put|bring) {_IT} back{_AS}|restore {_IT}{_AS}|"
    rf"{_IT} (?:was|were) (?:right|correct|fine|ok|true)(?: (?:after all|all along|before|"
    r"as it was|the first time|actually))*|as it was|"
    rf"(?:i )?(?:didnt|did not) mean to (?:delete|scratch|strike|remove|undo|unseal|reopen|open|"
    rf"cancel|erase|wipe)(?: (?:{_IT}|out))*|(?:un ?scratch|un ?delete|un ?strike) {_IT})$"
)


def restored(message: Message) -> Iterator[Found]:
    """A message that says no more than that what was struck out is to stand."""
    for phrase in phrases(message) if len(message.words) <= _MOST_WORDS else ():
        if not phrase.asked and _RESTORED.match(phrase.text):
            yield Found(*phrase.sentence, Restored())
