"""Further settings asked for in one message: "metric please, and the digest at seven"."""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Set
from handlers.reading.arrangements.settingtold import setting_told
from handlers.reading.arrangements.wishes import plain_wish
from handlers.reading.message import Message, read_message
from handlers.reading.words.vocabulary import words_in

_JOINTS = words_in(", ; . ! and & n + plus also then — –") | {"\n"}
_SETTABLE = frozenset(
    {"units", "zone", "habit", "reminder time", "quiet hours", "quiet before", "quiet after",
     "ferment days", "dilution", "pot dilution", "trench depth", "planting days", "soil",
     "nitrogen limit", "recipe"}
)  # fmt: skip
_HOURS = frozenset({"quiet hours", "quiet before", "quiet after"})
_MOST_PARTS = 8
_SPANNING, _NEAR = words_in("between from"), 4
"""Words of a stretch of hours, and how far before its "and" they stand at most."""


def with_further_settings(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts with what the other parts of a message that sets something ask for besides."""
    first = next((act for act in acts if isinstance(act, Set)), None)
    if first is None or not (first.what in _SETTABLE or _is_named(first)):
        return list(acts)
    parts = list(_parts(message))
    if not 1 < len(parts) <= _MOST_PARTS:
        return list(acts)
    known = {act.what for act in acts if isinstance(act, Set)}
    further: list[Act] = []
    for text in parts:
        told = _told(text, message)
        if told is None or told.what in known or (told.what in _HOURS and known & _HOURS):
            continue
        known.add(told.what)
        further.append(told)
    told_of = [*acts, *further]
    # The new quiet hours come first: a reminder time is held against them.
    return sorted(told_of, key=_is_reminder_time) if known & _HOURS else told_of


def _is_named(first: Set) -> bool:
    """Reminders turned off in so many words; not where it was told by a guess."""
    return first.what == "reminders" and "a setting" in first.rules


def _is_of_language(wish: Set, part: Message) -> bool:
    """What there is no setting for is named: "polish" by itself is what is done to a lid."""
    return wish.what == "language" and "language" in part.norms


def _is_reminder_time(act: Act) -> bool:
    return isinstance(act, Set) and act.what == "reminder time"


def _parts(message: Message) -> Iterator[str]:
    """The stretches between commas, "and" and the ends of sentences; "between 10 and 7" is one."""
    start = 0
    for i, norm in enumerate((*message.norms, ".")):
        if norm in _JOINTS and _SPANNING.isdisjoint(message.norms[max(0, i - _NEAR) : i]):
            if i > start:
                yield message.text(start, i)
            start = i + 1


def _told(text: str, message: Message) -> Set | None:
    """The setting that a part asks for, alone or behind the verb of the part before it."""
    context = replace(message.context, to_bot=True)  # as what sets one thing is
    for words in (text, f"set {text}"):
        part = read_message(words, context)
        told = setting_told(part)
        if told is not None and told.what in _SETTABLE | {"reminders"} and told.value:
            return told
        wish = plain_wish(part)
        if wish is not None and (wish.what in _SETTABLE or _is_of_language(wish, part)):
            return wish
    return None
