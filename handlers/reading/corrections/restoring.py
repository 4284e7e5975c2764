"""Second thoughts: "no wait, keep it" behind a striking out, and how a mistake is put right."""

from collections.abc import Iterator

from handlers.reading.acts import Ask
from handlers.reading.arranged import Restored
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import phrases
from handlers.reading.words.late import Late

CUES = (
    "keep it", "keep that", "keep them", "keep the", "leave it", "leave that", "leave them",
    " back", "restore", "was right", "was correct", "was fine",
    "mean to", "as it was", "mistake", "how do", "how can",
    "how to", "undo", "an entry", "a record", "unscratch", "undelete", "unstrike",
    "not that", "not this", "mean that", "mean this",
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
_RESTORED = Late(
    _LEAD + rf"(?:(?:keep|leave) {_IT}{_AS}|(?:put|bring) (?:{_IT}|(?:the|my) [^\W\d]+) back{_AS}|"
    rf"restore {_IT}{_AS}|"
    rf"{_IT} (?:was|were) (?:right|correct|fine|ok|true)(?: (?:after all|all along|before|"
    r"as it was|the first time|actually))*|as it was|"
    rf"(?:i )?(?:didnt|did not) mean to (?:delete|scratch|strike|remove|undo|unseal|reopen|open|"
    rf"cancel|erase|wipe)(?: (?:{_IT}|out))*|(?:un ?scratch|un ?delete|un ?strike) {_IT}|"
    r"(?:not|i (?:did not|didnt) mean) (?:that|this)(?: (?:one|record|entry))?"
    r"(?: (?:please|sorry|though|the other(?: one)?))*)$"
)


_HOW = Late(
    r"^(?:(?:and|so|but|bot|help) )*(?:how (?:do|can|would|should|to|could|does one)|"
    r"what (?:do|should|can) (?:i|we) do (?:if|when|about)|can) ?(?:(?:i|we|you|one) )?"
    r"(?:undo (?:it|that|this)|(?:correct|undo|fix|put right|change|edit|delete|remove|take back|"
    r"strike(?: out)?|made|make|get rid of|have made)"
    r" (?:(?:a|an|the|my|that|this|one|last|wrong|previous) )*"
    r"(?:mistakes?|errors?|entry|entries|records?|typos?|message|amount|number|something|slip|"
    r"what i (?:wrote|said|logged)))(?: i made| wrong| later| again)*$"
)


def restored(message: Message) -> Iterator[Found]:
    """A message that says no more than that what was struck out is to stand."""
    for phrase in phrases(message) if len(message.words) <= _MOST_WORDS else ():
        if _HOW.match(phrase.text):
            yield Found(*phrase.sentence, Ask(topic="help", what="a mistake"))
        elif not phrase.asked and _RESTORED.match(phrase.text):
            yield Found(*phrase.sentence, Restored())
