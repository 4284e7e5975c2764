"""One deed asked of a neighbour, or promised: "Zoe, can you drain mine?", "I'll do Bram's", "sure".

A favour is for one deed or a few days: whose bin it is does not change by it. What is passed on for
good is read in `passing` and `handing`.
"""

from collections.abc import Iterator
from datetime import date

from handlers.reading.arranged import Deed, Favour, Promise
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

CUES = (
    *(" you", "anyone", "anybody", "someone", "somebody", "who"),
    *("doing", "does ", " do ", "cover", "drain", "seal", "bury", "see to", "seeing to"),
    *("empty", " will", "stand in", "step in", "fill in", "looking after", "look after"),
    *("clos", "shut"),
)
_CLOSING = words_in("close closing shut shutting")
"""Words for sealing that are said of shops and doors as well."""
_DEEDS: dict[str, Deed] = {
    **dict.fromkeys(words_in("drain drains draining drained empty emptying"), "drain"),
    **dict.fromkeys(words_in("seal seals sealing sealed") | _CLOSING, "seal"),
    **dict.fromkeys(words_in("bury buries burying buried burial"), "bury"),
}
_MOST_SENTENCES, _LONGEST = 3, 30
"""Sentences and words of a message; a longer one tells of other things."""

_OURS = r"(?:the |my |our )?(?:qbin|mine|ours|bin|bucket|one)(?: one| bin)?"
_THEIRS = r"(?:qmember(?: 's)?(?: bin| one| bucket)?|yours|his|hers|her|theirs|your (?:bin|one))"
BIN = rf"(?:it|that|this|{_OURS}|{_THEIRS})"
_CRAFT = r"(?:drain|empty|seal|bury|close)"
VERB = rf"(?:do|see to|sort|sort out|handle|take care of|look after|mind|cover|shut|{_CRAFT})"
_DOING = (
    r"(?:doing|seeing to|sorting|handling|taking care of|looking after|minding|covering|draining|"
    r"emptying|sealing|burying|closing|shutting)"
)
_UP = r"(?: (?:up|off|too|as well|also|now))*"
_FOR = r"(?:cover|stand in|step in|fill in|deputise)(?: for (?:me|us|qmember))?"
_WHEN = (
    r"(?: (?:please|pls|thanks|instead|then|maybe|perhaps|just|qday|tonight|later|this week|"
    r"next week|this time|for me|for us|for (?:him|her|them|you|qmember)|this evening|after work|"
    r"in the (?:morning|evening)|(?:till|until|from) (?:the )?(?:then|qday)|at lunch|"
    r"when you (?:have|get) (?:a )?(?:minute|moment|chance|time)|"
    r"(?:while|when|since|as) (?:i|you|we|he|she|they|qmember)(?: (?:am|are|is|'s|'re|'m))? "
    r"(?:away|there|out|here|at it|gone|off|poorly|ill|not here|about|passing|by|are there)))*"
)
_ANYONE = r"(?:anyone|anybody|someone|somebody|one of you)(?: else)?"
_CALLED = (
    rf"(?:qmember (?:can|could|would|will) (?:you|u)|"
    rf"(?:can|could|would|will) (?:you|u|qmember|{_ANYONE})|"
    r"who(?: else)? (?:can|could|will|would|wants to|would like to)|"
    rf"(?:is )?{_ANYONE} (?:able|free|around) to)(?: (?:please|pls|maybe|perhaps|possibly|kindly))*"
)
_YOU_SHOULD = (
    r"(?:qmember |qmember (?:you|u) |(?:you|u) )"
    r"(?P<should>should|must|ought to|need to|needs to|have to|has to|had better|'d better|better|"
    r"might want to|may want to)(?: (?:probably|really|maybe|just|now))*"
)
_NOT_AIDED = "".join(
    f"(?<!{aid} )"
    for aid in ("and", "did", "does", "can", "could", "will", "would", "should", "let")
)
"""Not "did Zoe drain it", nor "Bram and Zoe drain it"."""
_WHY = r"(?: (?:because|cos|since|as|i|my|we|our|sorry)\b.{0,60})?"
_ASKED = Late(
    rf"(?:^|(?<= ))(?P<asked>{_CALLED}(?: (?:{VERB}(?: {BIN}{_UP})?|{_FOR}|(?:take over|help)))?"
    rf"{_WHEN}(?: qmember)?|"
    rf"(?:qmember (?:please|pls)|(?:please|pls) qmember) {VERB} {BIN}{_WHEN}|"
    rf"qmember {VERB} {BIN}(?: qday)? (?:for (?:me|us)|please|pls){_WHEN}|"
    rf"(?P<bidden>{_CRAFT} {BIN}{_UP}{_WHEN} qmember){_WHEN}|"
    rf"{_NOT_AIDED}qmember {_CRAFT} {BIN}{_UP}{_WHEN}|"
    rf"{_YOU_SHOULD} {VERB} {BIN}{_UP}{_WHEN}(?: qmember)?|"
    rf"(?:qmember )?(?:would|do) you mind {_DOING} {BIN}{_UP}{_WHEN}|"
    rf"who (?:is|'s) {_DOING} (?:the )?qbin{_WHEN}){_WHY}$"
)
SHALL = (
    r"(?:i|we) (?:will|can|could|shall|am going to|are going to|'ll)"
    r"(?: (?:just|gladly|happily|go and|go))*"
)
_PROMISED = Late(
    rf"^(?:(?:yes|yep|yeah|sure|no worries|no problem) )*"
    rf"(?:{SHALL} (?:{VERB} {BIN}{_UP}|{_FOR})|"
    rf"(?:i|we) (?:am|are) (?:{_DOING} (?:{_OURS}|{_THEIRS})|covering for qmember|"
    rf"standing in for qmember)){_WHEN}$"
)
_OWN_DEED = Late(
    r"(?:^|\b(?:full|now|and|so|then|but|ok|okay|yes|right) )"
    r"(?:(?:i|we) (?:am |are )?)?(?:just )?(?:"
    r"(?:sealing|draining|burying|closing|shutting)|"
    r"(?:will|'ll|shall|gonna|going to|plan to|want to) (?:seal|drain|bury|close|shut)) "
    rf"(?:it|this|that|them|{_OURS})(?: up)?{_WHEN}$"
)
_ANOTHERS = Late(
    r"^(?:qmember (?:cant|cannot|wont|is away|is busy) )?qmember (?:will|can|does|is happy to|says "
    r"(?:he|she|they) (?:will|can)|'s|is|will be)"
    rf"(?P<what> (?:{_DOING}|{VERB}|covering|standing in|stepping in)(?: for)? "
    rf"(?:{_OURS}|{_THEIRS}|me|us|it)| (?:do|does) {BIN}| {BIN}| {_FOR})?{_WHEN}$"
)


def favours(message: Message) -> Iterator[Found]:
    """A favour that is asked or promised, if the message is of no more than that."""
    said = phrases(message) if len(message.words) <= _LONGEST else ()
    if not said or len(said) > _MOST_SENTENCES:
        return
    for phrase in said:
        plan = _asked(phrase, message) or (None if phrase.asked else _promised(phrase))
        if plan is not None:
            whole = isinstance(plan, Favour) and message.has(_CANNOT) and not message.amounts
            start = 0 if whole else _begins(phrase)
            yield Found(start, phrase.sentence[1], plan)
            return


_CANNOT = words_in("cant cannot wont unable")
"""Why it is asked is no refusal of ours."""


def _begins(phrase: Phrase) -> int:
    """Where what is asked begins in the message, behind what else the sentence tells."""
    match = _ASKED.search(phrase.text)
    span = phrase.words(match, "asked") if match else None
    return span[0] if span else phrase.start


def _asked(phrase: Phrase, message: Message) -> Favour | None:
    match = _ASKED.search(phrase.text)
    if match is None or len(phrase.bins) > 1:
        return None
    if match["bidden"] and not any(clause.sense == "order" for clause in message.clauses):
        return None
    begin = _begins(phrase)
    named = [ref for ref in phrase.members if ref.start >= begin]
    asked = [ref for ref in named if not ref.owner]
    owner = next((ref.name for ref in named if ref.owner), None)
    deed = _deed(message)
    bin = phrase.bin or _bin_done(phrase, deed) or _bin_of_it(match[0], message)
    of_bin = bin is not None or owner is not None or _is_of_ones_own(match[0])
    of_bin = of_bin or "take over" in match[0]
    if deed is None and not of_bin:
        return None
    cover = _COVER.search(match[0]) is not None
    to = asked[0].name if asked else None
    if bin is None and match["should"] and to is None:
        return None  # "you should drain it" teaches anybody
    is_it = not (bin or owner) and _IT.search(match[0]) is not None
    if match["should"] and not bin:
        owner = owner or to  # their own, where nothing else was named
    return Favour(deed=deed, bin=bin, whose=owner, is_it=is_it, to=to, cover=cover)


def _bin_done(phrase: Phrase, deed: Deed | None) -> str | None:
    """The bin called by its place alone that a deed of the craft is done to: "drain the shed"."""
    refs = [ref for ref in phrase.message.bins if phrase.start <= ref.start < phrase.end]
    sure = deed is not None and not phrase.message.has(_CLOSING)
    return refs[0].name if sure and len(refs) == 1 and refs[0].known else None


_SEEN_TO = Late(r"\b(?:do|see to|look after|mind|take care of) (?:the )?qbin for (?:you|qmember)\b")


def _bin_seen_to(phrase: Phrase) -> str | None:
    """The same where it is done for somebody: "I'll do the shed for you"."""
    bins = phrase.known_bins if _SEEN_TO.search(phrase.text) else []
    return bins[0].name if len(bins) == 1 else None


_IT = Late(r"\b(?:it|this|that)\b(?! (?:week|time|evening|morning|afternoon)\b)")


def _bin_of_it(text: str, message: Message) -> str | None:
    """The one bin that another sentence of the message names, where this one says "it"."""
    named = {ref.name for ref in message.bins if ref.known and ref.name}
    return named.pop() if len(named) == 1 and _IT.search(text) else None


_COVER = Late(
    r"\b(?:cover(?:ing)?|take over|(?:stand|step|fill)(?:ing)? in|deputise|look(?:ing)? after)\b"
)
_OWN = Late(r"\b(?:mine|ours|my (?:bin|qbin|one|bucket)|for (?:me|us))\b")


def _is_of_ones_own(text: str) -> bool:
    return _OWN.search(text) is not None


def _deed(message: Message) -> Deed | None:
    """The one deed of the craft that is named, if it is not done to other things."""
    norms = message.norms
    at = [i for i, norm in enumerate(norms) if norm in _DEEDS]
    of_bin = any(ref.name or ref.plain for ref in message.bins) or message.context.of_bins
    at = [i for i in at if norms[i] not in _CLOSING or of_bin]
    deeds = {_DEEDS[norms[i]] for i in at}
    return deeds.pop() if len(deeds) == 1 and all(_is_of_bins(message, i + 1) for i in at) else None


def _is_of_bins(message: Message, at: int) -> bool:
    """Whether what stands behind a deed is a bin, or no thing at all: "drain the pasta"."""
    norms = message.norms
    while at < len(norms) and norms[at] in _BEFORE_THING:
        at += 1
    held = indexes(message.bins, message.days, message.members)
    return at == len(norms) or at in held or norms[at] in _NO_THING or not norms[at].isalpha()


_BEFORE_THING = words_in("the my our your his her up off out")
_NO_THING = words_in(
    "mine ours yours hers theirs it them this that these one ones bin bins bucket buckets for "
    "tonight now later because cos as since before after until till and or but while when with on "
    "in at by next either any too again instead please who can could i we you if this soon anyone"
)


def _when(phrase: Phrase) -> tuple[date | None, date | None]:
    """The day to come that is told, or from which on; and the last one, of "till the 19th"."""
    message = phrase.message
    ahead = [day for day in phrase.days if day.future > message.today]
    if len(ahead) != 1:
        return None, None
    [day] = ahead
    lead = set(message.norms[max(0, day.start - 2) : day.start])
    return (None, day.future) if lead & {"till", "until", "til"} else (day.future, None)


def _promised(phrase: Phrase) -> Promise | None:
    """ "I'll do Bram's", "Zoe's doing mine this week", "Mila can't, Zoe will"."""
    message = phrase.message
    if len(phrase.bins) > 1:
        return None
    owner = next((ref.name for ref in phrase.members if ref.owner), None)
    cover = _COVER.search(phrase.text) is not None
    ahead = any(day.future > message.today for day in message.days)  # it is put off
    if _PROMISED.match(phrase.text):
        whose = owner or (phrase.member if cover or "for qmember" in phrase.text else None)
        bin = phrase.bin or _bin_done(phrase, _deed(message)) or _bin_seen_to(phrase)
        bin = bin or (None if whose else _bin_of_it(phrase.text, message))
        if not (whose or bin):
            deed = None if ahead else _deed(message)
            return Promise(deed=deed) if deed else None
        if bin and not _deed(message) and message.context.on_offer:
            return None  # "I'll look after green" takes what is on offer
        on, until = _when(phrase)
        return Promise(deed=_deed(message), bin=bin, whose=whose, cover=cover, on=on, until=until)
    plain = _OWN_DEED.search(phrase.text) and not (ahead or phrase.members)
    if plain and (deed := _deed(message)):
        return Promise(deed=deed, bin=phrase.bin or _bin_of_it(phrase.text, message))
    match = _ANOTHERS.match(phrase.text)
    if match is None or not phrase.members:
        return None
    tells_whose = _is_of_ones_own(phrase.text) or _ME.search(phrase.text) is not None
    by = next((ref for ref in reversed(phrase.members) if not ref.owner), None)
    if by is None or (match["what"] and not (tells_whose or phrase.bin)):
        return None
    own = message.context.sender if tells_whose else None
    on, until = _when(phrase)
    return Promise(
        deed=_deed(message),
        bin=phrase.bin,
        whose=own,
        by=by.name,
        cover=tells_whose,
        on=on,
        until=until,
    )


_ME = Late(r"\bfor (?:me|us)\b")
