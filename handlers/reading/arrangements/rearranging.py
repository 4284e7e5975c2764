"""Changes of the rota there is: "put Bram after Ines on the rota", "ten days per keeper"."""

import re

from handlers.reading.arrangements.communal import Place, Rearranged
from handlers.reading.phrases import Phrase
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_ROTA = (
    r"(?:(?:the|our|a|this|bin|keeping|new|weekly|draining) ){0,3}(?:rota|roster|rotation)"
    r"(?: (?:for|of) (?:the )?qbin)?"
)
_LEAD = (
    r"^(?:(?:can|could|would|will) (?:you|we) |(?:please|bot|lets|let us|let 's|we want to|"
    r"we have agreed|we 've agreed|we agreed|now|and|make it so|have) )*"
)
_TAIL = r"(?: (?:please|from now on|from now|from here on|instead|for good|from today|change it))*$"
_WHO = r"(?:qmember|me|myself|[a-z]\w+)"
_ON = rf"(?: (?:on|in|into|to|onto|of) {_ROTA})?"
_WHERE = (
    rf"(?P<place>first|last|(?:at|to) the (?:top|front|start|head|end|bottom)|(?:right |straight )?"
    rf"(?:before|after|ahead of|behind) (?P<other>{_WHO})|between (?P<left>{_WHO}) and {_WHO})"
)
_NUMBER = r"(?P<number>\d{1,2}|a|one|two|three|four|five|six|seven|ten|fourteen)"
_LENGTH = rf"{_NUMBER} (?P<unit>days?|weeks?|fortnights?|months?)"
_NUMBERS = {
    "a": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "ten": 10,
    "fourteen": 14,
}  # fmt: skip
_DAYS = {"d": 1, "w": 7, "f": 14, "m": 28}
"""Days of a unit by its first letter; a month of turns is four weeks."""
_EACH = r"(?: each| apiece| a turn| per (?:keeper|person|household|head|turn|member))"
_PLACED = (
    Late(rf"{_LEAD}(?:put|move|place|slot|shift|add) (?P<who>{_WHO}){_ON} {_WHERE}{_ON}"
               rf"{_TAIL}"),
    Late(rf"{_LEAD}(?:swap|change|alter|reorder|arrange) {_ROTA} so (?:that )?"
               rf"(?P<who>{_WHO}) (?:goes|comes|is|gets it|has it) {_WHERE}{_TAIL}"),
)  # fmt: skip
_SWAPPED = Late(
    rf"{_LEAD}(?:swap|switch|exchange) (?P<who>{_WHO}) (?:and|with|for) (?P<other>{_WHO})"
    rf"(?: round| around| over)? (?:on|in) {_ROTA}{_TAIL}"
)
_RELIEVED = Late(
    rf"^(?:(?:rota|roster) change )?(?P<other>{_WHO}) (?:is |'s )?out (?:and )?(?P<who>{_WHO}) "
    rf"(?:is |'s )?in{_ON}{_TAIL}"
)
_BY_NAME = Late(
    rf"{_LEAD}(?:(?:put |make )?{_ROTA} (?:(?:goes|go|is|to be|should be|should go) )?"
    rf"(?:alphabetically|(?:in )?alphabetical(?: order)?)|"
    rf"(?:make )?(?:it )?(?:an )?alphabetical {_ROTA}){_TAIL}"
)
_LASTING = (
    Late(rf"{_LEAD}(?:make |set |change |do |put )?{_ROTA} (?:(?:to|will be|is|be|at|of|for|"
               rf"go|goes) )*{_LENGTH}{_EACH}{_TAIL}"),
    Late(rf"{_LEAD}{_LENGTH} per (?:keeper|household|member)(?: instead of \S+)?{_TAIL}"),
    Late(rf"{_LEAD}(?:the )?(?:keeping|turn) (?:period|length|time) (?:is |to |of )?"
               rf"{_LENGTH}{_TAIL}"),
    Late(rf"{_LEAD}(?:each|every) (?:person|keeper|member|household) (?:keeps|has) "
               rf"(?:it|the bins?|(?:the )?qbin|a bin) (?:for )?{_LENGTH}{_TAIL}"),
)  # fmt: skip
_LASTING_NOW = Late(rf"{_LEAD}make (?:it|that|them|turns) {_LENGTH}{_EACH}{_TAIL}")
"""Right behind our words."""
_RHYTHM = Late(
    rf"{_LEAD}(?:make|set|change|turn|put) {_ROTA} (?:(?:to|into|be|go|be every|every|to every) )*"
    rf"(?P<each>fortnightly|weekly|monthly|daily|fortnight|(?:two|2|other|second) weeks|"
    rf"(?:other|second) week|week|month|day){_TAIL}"
)
_BARELY = Late(
    rf"^(?:(?:yes|yep|no|nope|ok|make|it|them|better|rather|lets|say|turns|of) )*"
    rf"(?:(?:every )?(?P<each>fortnightly|weekly|monthly|daily|fortnight|(?:two|2|other|second) "
    rf"weeks|(?:other|second) week|week|month|day)|(?:every )?{_LENGTH}){_EACH}?{_TAIL}"
)
"""Right behind our question how long a turn is."""
_OF_ROTA = Late(r"\b(?:rota|roster|rotation)\b")
_NOBODY = words_in("it them everyone the this that him her us our my everything and we you")


def rearranged(phrase: Phrase) -> Rearranged | None:
    """What a sentence changes in the order or the length of the turns there are."""
    text, answers = phrase.text, phrase.message.context.after_bot
    if (days := _lasting(text)) is not None:
        return Rearranged(days=days, bin=phrase.bin_said)
    if answers and (match := _LASTING_NOW.match(text)):
        return Rearranged(days=_days(match), bin=phrase.bin_said, maybe=True)
    if answers and phrase.message.context.on_rota and (match := _BARELY.match(text)):
        days = _rhythm(match["each"]) if match["each"] else _days(match)
        return Rearranged(days=days, maybe=True)
    for pattern in _PLACED:
        named = _OF_ROTA.search(text) is not None
        if (answers or named) and (match := pattern.match(text)):
            return _moved(phrase, match, _place(match["place"]), maybe=not named)
    if not _OF_ROTA.search(phrase.message_text + " " + " ".join(phrase.message.norms)):
        return None
    if _BY_NAME.match(text):
        return Rearranged(place="by name", bin=phrase.bin_said)
    for pattern, place in _EXCHANGED:
        if match := pattern.match(text):
            return _moved(phrase, match, place)
    return None


_EXCHANGED: tuple[tuple[Late, Place], ...] = (
    (_SWAPPED, "swapped"),
    (_RELIEVED, "instead"),
)


def _moved(
    phrase: Phrase, match: re.Match[str], place: Place, *, maybe: bool = False
) -> Rearranged | None:
    member = _name(phrase, match, "who")
    behind = "left" if match.groupdict().get("left") else "other"
    other = _name(phrase, match, behind)
    if member is None or (other is None and place not in ("first", "last")):
        return None
    return Rearranged(member=member, place=place, other=other, bin=phrase.bin_said, maybe=maybe)


def _place(words: str) -> Place:
    if "before" in words or "ahead" in words:
        return "before"
    if "after" in words or "behind" in words or "between" in words:
        return "after"
    return "last" if words.endswith(("last", "end", "bottom")) else "first"


def _name(phrase: Phrase, match: re.Match[str], group: str) -> str | None:
    """Who stands in that part of a match: a member, the sender, or a name with its capital."""
    span = phrase.words(match, group)
    if span is None:
        return None
    known = next((ref.name for ref in phrase.message.members if ref.start == span[0]), None)
    said = phrase.said(match, group)
    if known or said in ("me", "myself"):
        return known or phrase.message.context.sender
    return said if said[:1].isupper() and said.casefold() not in _NOBODY else None


def _lasting(text: str) -> int | None:
    """How many days a turn is to last."""
    for pattern in _LASTING:
        if match := pattern.match(text):
            return _days(match)
    match = _RHYTHM.match(text)
    return _rhythm(match["each"]) if match else None


def _rhythm(said: str) -> int:
    """Days of "fortnightly", "every two weeks", "monthly"."""
    if said.startswith(("two", "2", "other", "second")):
        return 14
    return _DAYS[said[0]]


def _days(match: re.Match[str]) -> int:
    number = match["number"]
    return int(_NUMBERS.get(number, number)) * _DAYS[match["unit"][0]]
