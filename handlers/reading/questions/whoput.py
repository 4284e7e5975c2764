"""Who put what in, and what went in: "who put bones in the shed?", "is there any meat in it?"."""

from handlers.practice.kinds import Kind
from handlers.reading.arrangements.communal import WhoPut
from handlers.reading.phrases import Phrase
from handlers.reading.questions.summing import period_of
from handlers.reading.words.late import Late

PUT = r"(?:put|puts|added|add|chucked|threw|fed|tipped|dropped|dumped|binned|stuck|bunged|tossed)"
IN = r"(?:in|into|inside|to)"
_THERE = r"(?:the )?(?:qbin|bin|bucket|it|there|here|this one|that one)"
_WHO_PUT = Late(
    rf"^(?:do (?:we|you) know |bot |does anyone know |remind me )?who(?: has| have| had|'s| 's|"
    rf" is)?"
    rf"(?: been)?(?: the one who| it who)? {PUT}(?:ing)? (?P<what>\S.{{0,60}}?) "
    rf"{IN}(?: {_THERE})?(?P<when>(?: (?:qday|this week|last week|today|again|last))*)$"
)
_WHO_FED = Late(
    rf"^who(?: has|'s| 's| is)?(?: last| already)? {PUT} (?:something |anything )?"
    rf"(?:{IN} )?(?:the )?qbin(?: last)?"
    r"(?P<when>(?: (?:qday|this week|last week))*)$|"
    rf"^who(?: has|'s| 's)?(?: all| already)? {PUT} (?:something|anything|scraps|what)"
    rf"(?: {IN}(?: {_THERE})?)? (?:qday|this week|last week|this month|last month)$"
)
_WHEN = r"(?: (?:on|qday|this|last|week|month|already|please))*$"
_WHAT_PUT = Late(
    r"^(?:and |so |bot |can you )*(?:(?:list|show)(?: me| us)? )?(?:all )?(?:"
    r"(?:what (?:all )?(?:did|have|has) (?P<who>i|we|qmember|everyone|everybody)(?: all)? "
    r"(?:put|add|added|chuck|chucked)|what (?P<told>i|we) (?:have |did )?(?:put|add|added)|"
    r"did (?P<any>i|we) (?:put|add) (?:something|anything)|"
    rf"who {PUT} what)(?: {IN}(?: {_THERE})?)?|"
    rf"what(?: all)? (?:went|has gone|'s gone) {IN}(?: {_THERE})?)"
    rf"{_WHEN}"
)
"""A question for the layers themselves, by member, bin or day."""


def who_put(phrase: Phrase) -> WhoPut | None:
    """The layers that are asked about, if they are: by what went in, by member, bin or day."""
    match = _WHO_FED.match(phrase.text)
    fed = _fed(phrase)
    if match and (fed or (match["when"] is None and in_talk(phrase))):
        first, last = period_of(phrase)
        return WhoPut(bin=fed, first=first, last=last)
    if held := _put_of(phrase):
        return held
    if asked := _WHAT_PUT.match(phrase.text):
        return _what_put(phrase, asked["who"] or asked["told"] or asked["any"])
    match = _WHO_PUT.match(phrase.text)
    span = phrase.words(match, "what") if match else None
    if match is None or span is None:
        return None
    first, last = period_of(phrase)
    items = [item for item in phrase.message.items if span[0] <= item.start < span[1]]
    kinds: list[Kind] = [kind for item in items for kind, share in item.food.shares if share > 0]
    if not kinds and not (match["what"] in _IT and _fed(phrase)):
        return None
    return WhoPut(
        kinds=tuple(dict.fromkeys(kinds)),
        words=phrase.message.text(items[0].start, items[-1].end) if kinds else "",
        bin=phrase.bin or (None if kinds else _fed(phrase)),
        first=first,
        last=last,
    )


_IT = ("it", "that", "this", "them", "those", "these")


def _fed(phrase: Phrase) -> str | None:
    """The group's bin that is named; what is fed is no room."""
    bins = phrase.message.bins
    named = (b.name for b in bins if b.known and phrase.start <= b.start < phrase.end)
    return next(named, None)


_HAS_IN_IT = Late(
    r"^(?:and |so |but )?(?:(?:is|was|are|were) there (?:already )?|has anyone put |did (?:we|i|"
    r"anyone|anybody|someone|somebody) put |have we (?:already )?put )?(?:any|some) "
    rf"(?P<what>\S.{{0,40}}?) {IN} {_THERE}(?: (?:already|yet|so far|now|at all))*$|"
    r"^(?:and |so )?how much (?P<much>\S.{0,40}?) (?:altogether|in all|so far|in total|(?:have|did)"
    r" we (?:put|add|have|got|get)(?: in)?)(?: (?:so far|altogether|in all))*$"
)
_WHICH_DAY = Late(
    r"^(?:and |so )?(?:(?:which|what|on which|on what) day|when) (?:did|have|has) "
    rf"(?P<who>i|we|qmember) {PUT} (?P<what>\S.{{0,40}}?)(?: {IN}(?: {_THERE})?)?$"
)
_HOW_OFTEN = Late(
    r"^(?:and |so )?(?:how (?:many times|often) (?:did|has|have)|when was the last time|"
    rf"when did) (?P<who>i|we|qmember) (?:last )?{PUT} (?:something|anything|scraps)"
    rf"(?: {IN}(?: {_THERE})?)?{_WHEN}"
)


def in_talk(phrase: Phrase) -> bool:
    """Whether what it leaves unsaid is of the bins."""
    return phrase.to_bot or phrase.message.context.of_bins


def _put_of(phrase: Phrase) -> WhoPut | None:
    """ "Is there any meat in it?", "which day did I put the fish in?": the layers that hold it."""
    match = _HOW_OFTEN.match(phrase.text)
    if match and in_talk(phrase):
        return _what_put(phrase, match["who"])
    match = _HAS_IN_IT.match(phrase.text) or _WHICH_DAY.match(phrase.text)
    said = match.groupdict() if match else {}
    span = phrase.words(match, "what" if said.get("what") else "much") if match else None
    if match is None or span is None:
        return None
    who = said.get("who")
    if not (_fed(phrase) or in_talk(phrase)):
        return None
    items = [item for item in phrase.message.items if span[0] <= item.start < span[1]]
    kinds: list[Kind] = [kind for item in items for kind, share in item.food.shares if share > 0]
    if not kinds:
        return None
    return WhoPut(
        kinds=tuple(dict.fromkeys(kinds)),
        words=phrase.message.text(items[0].start, items[-1].end),
        bin=_fed(phrase),
        member={"i": phrase.message.context.sender, "qmember": phrase.member}.get(who or ""),
    )


def _what_put(phrase: Phrase, who: str | None) -> WhoPut:
    """ "What did I put in today?", "what went into the shed on Monday?"."""
    member = {"i": phrase.message.context.sender, "qmember": phrase.member}.get(who or "")
    first, last = period_of(phrase)
    return WhoPut(member=member, bin=_fed(phrase), first=first, last=last)
