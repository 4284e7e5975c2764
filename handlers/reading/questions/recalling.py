"""Questions about what has been: who put what in, who kept a bin when, shares, a run's story."""

import re
from collections.abc import Iterator
from datetime import timedelta

from handlers.reading.acts import Ask, Stock
from handlers.reading.arranged import Plan
from handlers.reading.arrangements.communal import Story, WhoKept, Written
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.questions.summing import CUES as SUMMING_CUES
from handlers.reading.questions.summing import DRAWN, asks_more, period_of
from handlers.reading.questions.whenlast import in_ground, said_bin, when_last
from handlers.reading.questions.whoput import IN, PUT, in_talk, who_put
from handlers.reading.words.late import Late

CUES = (
    *("who", "share", "story", "history", "keepers", "happened", "been through", "how much"),
    *("last", "how many layers", " bins", "what did", "what ha", "i recorded", "my records"),
    *("where", "plant", "what's", "what is", "whats", "how long", "when did", "when was"),
    *(
        "miss",
        "'s new",
        "anything new",
        "happen",
        "catch me",
        "me up to",
        "change",
        "i should know",
    ),
    *("what all", "what i did", "what i have", "what we have", "did i put", "did we put"),
    *("did i add",),
    *("i logged", "my entries", "what went", "what i put", "what we put", *SUMMING_CUES),
    *("any ", "which ", "how full", "sealed", "fermenting", "numbers for", "percentage", "average"),
    *("did ", "how many times", "list all", "in charge", "fit", "room", "space", "go in"),
)

_KEPT = Late(
    r"^(?:and |so )?who (?:all )?(?:kept|keeps|had|has had|looked after|minded|hosted|was keeping|"
    r"has kept|"
    r"have kept|was looking after|was the keeper of|were the keepers of|was minding)(?: (?:the )?"
    r"(?P<bin>qbin|it))?(?: bin)?(?P<when>(?: .{1,40})?)$"
)
_KEEPERS = Late(
    r"^(?:(?:all |list |show )*(?:the )?keepers of (?:the )?qbin(?: so far)?)(?P<when>)$"
)
_BEFORE = Late(r"\bbefore (?:qmember|me|that)\b")
_SHARES = (
    Late(
        r"^(?:and |so )?(?:what is|what 's|whats|what are|show|tell me)(?: us| me)? (?P<whose>my|"
        r"your|our|the|"
        r"everyone 's|everybody 's|each (?:member|person|one) 's|qmember 's|everyones|everybodys) "
        r"shares?(?: (?:of|in|so far|at) ?(?:the )?(?:qbin|scraps|bin|layers)?)?(?: so far)?$"
    ),
    Late(
        rf"^how much (?:has|have|did|does) (?:each|everyone|everybody|every one)(?: of us| one|"
        rf" member|"
        rf" person)? {PUT}(?:ed)?(?: (?:in|into|to))?(?: (?:the )?qbin| so far| there)*$"
    ),
    Late(
        rf"^who(?: has| have|'s| 's)? {PUT} (?:{IN} )?(?:the )?(?:most|how much|what|least)"
        rf"(?: (?:{IN}(?: (?:the )?qbin)?|so far|scraps|of it|(?:the )?qbin))*$"
    ),
    Late(r"^(?:the )?shares (?:of|in) (?:the )?qbin$"),
    Late(r"^who (?:(?:has been|'s been|is) (?:feeding|filling)|feeds|has fed) (?:the )?qbin"
               r"(?: so far| lately)?$"),
    Late(
        rf"^(?:and |so )?who(?: has| have|'s| 's| did)?(?: (?:{PUT}|did|done|given|brought|gave)"
        r"(?: in)?)?(?: the)? (?:most|least)(?: (?:so far|in all|altogether|this week|"
        r"this month|this year|last week|last month))*$"
    ),
    Late(
        r"^(?:(?:give|show|tell) (?:me|us) )?(?:the )?(?:numbers|figures|amounts|totals|shares|"
        r"percentages?) (?:for|of|by|per) (?:everyone|everybody|each(?: of us| person| member)?|"
        r"all of us|person|people|member|household)(?: (?:please|so far))*$"
    ),
    Late(
        r"^what (?:is|was|'s|has been) (?P<my>my) (?:share|part|percentage|contribution)"
        r"(?: (?:so far|of it|in all|altogether|in (?:the )?qbin))*$"
    ),
    Late(
        rf"^how much (?:scraps |food )?(?:has|have|did|does) (?P<who>qmember|i) (?:actually |"
        rf"already )?"
        rf"{PUT}(?:ed)?(?: (?:{IN}|so far|yet|(?:the )?qbin|the bins?))*$"
    ),
    Late(r"^(?P<own>my|everybody 's|everyone 's|our) shares?$"),
)  # fmt: skip
_STORY = Late(
    r"^(?:(?:can|could) you )?(?:(?:tell|show|give)(?: me| us)? )?(?:what is |"
    r"what 's )?(?:the )?(?:whole |"
    r"full |entire )*(?:story|history|life) of (?P<of>.{1,40})$|"
    r"^what(?: has|'s| 's)?(?: all)? happened (?:to|with|in) (?P<to>.{1,40})$|"
    r"^what (?:has|'s) (?P<has>(?:the )?qbin) been through$"
)
_LAST_RUN = Late(r"\b(?:last|previous|former|earlier) run\b|\brun before\b")
_BESIDE_RUN = Late(
    r"\b(?:the|qbin|of|in|last|previous|former|earlier|run|before|number|no|\d+|so|far|present|"
    r"this)\b"
)
_RUN = Late(r"\brun (?:number |no )?(?P<number>\d{1,3})\b")


def recalling(message: Message) -> Iterator[Found]:
    """The questions of a message about what has been."""
    for phrase in phrases(message):
        plan = _plan(phrase) or _shares(phrase) or _layers(phrase) or asks_more(phrase)
        if plan is not None:
            yield Found(*phrase.sentence, plan)


def _plan(phrase: Phrase) -> Plan | None:
    return (
        who_put(phrase)
        or _kept(phrase)
        or _story(phrase)
        or when_last(phrase)
        or in_ground(phrase)
        or _written(phrase)
    )


_WHO_HAS = Late(r"^(?:and |so )?who (?:has|'s got|is got|has got) what(?: now| then| bin)?$")
_WHO_KEEPS = Late(
    r"^(?:and |so )?who (?:keeps|is keeping|minds|looks after) (?:what|which(?: (?:bin|one))?)"
    r"(?: now| then| at the moment)?$"
)


def _layers(phrase: Phrase) -> Ask | None:
    """ "How many layers are in the shed bin?" is told with all else that is known of it; so is "how
    long does that last?" of the starter that was just counted.
    """
    of_ours, bin = in_talk(phrase), said_bin(phrase)
    if _LIST_BINS.match(phrase.text) or (of_ours and _WHICH_IS.match(phrase.text)):
        return Ask(topic="bin")
    is_so = _IS_IT_SO.match(phrase.text) if bin else None
    if is_so and (phrase.bin or is_so["ours"]):  # a shed may be open and full itself
        return Ask(topic="bin", bin=bin)
    if of_ours and _HOW_MUCH_ROOM.match(phrase.text):
        return Ask(topic="full", what="room", bin=bin)
    drawn = _HOW_MUCH_DRAWN.match(phrase.text) if of_ours or bin else None
    if drawn and (drawn["liquid"] or drawn["of"]):
        first, last = period_of(phrase)
        return Ask(topic="totals", what=DRAWN, bin=bin, first=first, last=last)
    if of_ours and _IN_CHARGE.match(phrase.text):
        return Ask(topic="custody")
    context = phrase.message.context
    to_bot = phrase.to_bot or context.after_bot or context.of_bins
    if _WHO_KEEPS.match(phrase.text) or (to_bot and _WHO_HAS.match(phrase.text)):
        return Ask(topic="custody")
    leans = isinstance(phrase.message.context.last, Stock) and _LASTS.match(phrase.text)
    if leans or _BRAN_LASTS.match(phrase.text):
        return Ask(topic="starter")
    asked = _HOW_MANY_LAYERS.match(phrase.text)
    return Ask(topic="bin", bin=phrase.bin) if asked and phrase.bin else None


_LASTS = Late(
    r"^(?:and |so )?how (?:long|many (?:days|weeks)) (?:does|will|would|should|might) "
    r"(?:that|it|this|they)(?: be good for| last)(?: us| me)?$"
)
_BRAN_LASTS = Late(
    r"^(?:and |so )?how (?:long|many (?:days|weeks)) (?:will|should|might) (?:the|our|this|that) "
    r"(?:bran|starter)(?: we have| we 've got| there)? last(?: us| me)?$|"
    r"^(?:and |so )?how (?:many|much) (?:more )?(?:kilos?|kgs?|scraps|layers|food|pounds?)"
    r"(?: of scraps)? (?:can|could|will|does|is) (?:we|i|it|that|this|the bran|the starter)? ?"
    r"(?:do|treat|cover|feed|make|last for|enough for|be enough for|ferment)? ?(?:with |from )?"
    r"(?:(?:the|our|this|that) (?:bran|starter)|what we have|what 's left)(?: .{1,20})?$"
)
_LIST_BINS = Late(
    r"^(?:can you |could you |bot |just )*(?:(?:list|show|name|give)(?: me| us)?(?: a list of)?"
    r"(?: all)?(?: of)?(?: the| our| my)? bins|(?:what|which)(?: all)? bins (?:do (?:we|i|you) "
    r"have|are (?:there|in use|going|on the go)|have we(?: got)?|do you know(?: of)?))"
    r"(?: (?:please|now|bot|here|at the moment|right now|there are|we have|in use|"
    r"and their state))*$"
)
_WHICH_IS = Late(
    r"^(?!.*\b(?:bin|bucket)s? (?:is|are)(?: still| already| now)* (?:open|sealed|closed|filling))"
    r"(?:and |so )?(?:(?:which|what)(?: (?:one|bin|bucket)s?)?(?: of them)? (?:is|are|has|have|'s)"
    r"(?: got)?(?: (?:still|already|now|the))* (?:fermenting|sealed|closed|open|filling|being "
    r"filled|full|fuller|fullest|empty|emptier|emptiest|in use|more|most|least|less|more room|most "
    r"room)(?: (?:in it|in|now|already|yet|room|at the moment|left))*|how full are (?:we|they|the "
    r"bins|all of them|both)(?: (?:now|all))*|(?:can you )?list all (?:of them|two|three|four|"
    r"five|six|seven|eight|nine|ten|\d+))$"
)
"""What is told by all bins with their states: where the talk is of them."""
_IS_IT_SO = Late(
    r"^(?:and |so )?(?:is|was) (?:the |our |my )?qbin(?: bin)? (?:already |still |now )*"
    r"(?:(?P<ours>sealed|fermenting|buried)|closed|shut|open|full|empty|filling|in use)"
    r"(?: (?:already|yet|now|up))*$"
)
_HOW_MUCH_ROOM = Late(
    r"^(?:and |so )?(?:how much (?:is|do we have|have we got|'s) left to (?:fill|go)|(?:will|would|"
    r"does|can) (?:another |the other )?[\d.,]+ ?(?:kgs?|kilos?|lit(?:re|er)s?|l|lbs?|pounds?|"
    r"grams?|g) (?:\w+ )?(?:still |all )*(?:fit|go in)|is there (?:still )?(?:any )?(?:room|space))"
    r"(?: (?:in|in it|in there|still|for more|left|(?:in )?(?:the )?qbin))*$"
)
_OUT_OF = r"(?:from|out of|off)(?: of)? "
_HOW_MUCH_DRAWN = Late(
    r"^(?:and |so )?how much(?P<liquid> (?:liquid|juice|leachate|run ?off|tea))?"
    r"(?: (?:did|have|has|'s))?(?: (?:we|it|i|(?:the )?qbin|the bin))? (?:get|got|gotten|had|"
    r"give|given|make|made|drain|drained|draw|drawn|take|taken|come|came|run|altogether|in all|"
    rf"so far)(?: (?:us|out|off|so far|altogether|in all|yet|{_OUT_OF}(?:it|that)|"
    rf"(?P<of>{_OUT_OF}(?:the )?qbin)|qday|(?:in|since|during|this|last) (?:the )?\w+))*$"
)
_IN_CHARGE = Late(
    r"^(?:and |so )?who(?: is|'s| 's)? (?:in charge of|responsible for|looking after|minding) "
    r"(?:it|them|this|that)(?: (?:now|at the moment|this week))*$"
)
_HOW_MANY_LAYERS = Late(
    r"^(?:and |so )?how many layers (?:are|are there|have gone|went|has|does|do we have|have we)\b"
    r".{0,20}\bqbin\b.{0,10}$"
)


def _written(phrase: Phrase) -> Written | None:
    context = phrase.message.context
    to_bot = phrase.to_bot or context.to_bot or context.after_bot
    news = _NEWS.match(phrase.text)
    today = phrase.message.today
    if news and news["day"] and in_talk(phrase):
        first, last = period_of(phrase)
        return Written(first=first or today, last=last or today, of_all=True)
    if _MISSED.match(phrase.text) or (to_bot and news):
        since = [day.past for day in phrase.days] if "since qday" in phrase.text else []
        return Written(first=since[0] if since else today - _A_WEEK, last=today, of_all=True)
    happened = _HAPPENED.match(phrase.text)
    if _WRITTEN.match(phrase.text) is None and not (happened and (to_bot or happened["long"])):
        return None
    first, last = period_of(phrase)
    return Written(
        first=first or today,
        last=last or today,
        member=phrase.member,
        of_all=_OF_ALL.search(phrase.text) is not None,
    )


_OF_ALL = Late(r"\b(?:we|everybody|everyone|happen\w+|new)\b")
_A_WEEK = timedelta(days=6)
"""How far is looked back for whoever asks what they missed."""
_I_WAS = (
    r"i (?:am|'m|have|'ve|was|have been|'ve been) (?:away|off|out|back|gone)"
    r"(?: (?:since|for|all|the|last|this|qday|week|weeks|fortnight|a|few|days|two|three))*(?: so)?"
)
_MISSED = Late(
    rf"^(?:and |so )?(?:{_I_WAS} )?(?:what (?:have|did|'ve) i miss(?:ed)?|"
    r"(?:did i miss|have i missed) anything|what happened|catch me up|(?:bring|get) me up to (?:"
    r"speed|date)|(?:what 's|anything) (?:new|changed)|what has changed)"
    r"(?: (?:here|with the bins|in here|since qday|since last week|while (?:i was |i 've been )?"
    r"(?:away|out|gone|off)))+$|"
    rf"^(?:and |so )?(?:{_I_WAS} )?(?:what (?:have|did|'ve) i miss(?:ed)?|"
    rf"(?:did i miss|have i missed) anything)$|^{_I_WAS} anything i should know$"
)
_NEWS = Late(r"^(?:and |so )?(?:what 's|anything) new(?P<day> (?:qday|today|yesterday))?$")
_HAPPENED = Late(
    r"^(?:and |so )?what (?:(?:has |'s )?(?:been )?happen(?:ed|ing)|(?:did|have|has) "
    r"(?:i|we|everybody|everyone|qmember) (?:do|done|get done))"
    r"(?: (?:here|with the bins|in the group))? (?:(?P<long>this week|last week|this month|"
    r"last month)|today|yesterday|qday)$"
)
_WROTE = (
    r"(?:record|recorded|log|logged|write down|written down|write|put down|enter|entered|note|"
    r"noted|report|reported|tell you|told you)"
)
_WRITTEN = Late(
    r"^(?:and |so )?(?:what (?:is|was|'s) (?:the |my )?last (?:thing|record|entry)(?: that)?(?: i)?"
    rf"(?: {_WROTE})?|what (?:all )?(?:did|have|has) (?:i|we|everybody|everyone|"
    rf"qmember) (?:already |all )?{_WROTE}|"
    r"(?:(?:show|list)(?: me)? )?(?:what i (?:recorded|logged|wrote|entered)|"
    r"my (?:records|entries|log)))(?: down| so far| already| for| of| on| from)*"
    r"(?: (?:qday|this week|last week|this month|last month|today|yesterday))?$"
)


def _kept(phrase: Phrase) -> WhoKept | None:
    match = _KEPT.match(phrase.text) or _KEEPERS.match(phrase.text)
    if match is None:
        return None
    first, last = period_of(phrase)
    before = _BEFORE.search(phrase.text) is not None
    is_plain = "kept" in phrase.tokens or "keepers" in phrase.tokens or "keeping" in phrase.tokens
    if not phrase.bin and not (is_plain and (first or before)):
        return None
    when = match["when"].strip()
    if when and not (first or before or when in ("so far", "until now", "before", "when", "ever")):
        return None
    member = phrase.member if before else None
    if before and member is None and "me" in phrase.tokens:
        member = phrase.message.context.sender
    return WhoKept(bin=phrase.bin, first=first, last=last, before=member)


def _shares(phrase: Phrase) -> Ask | None:
    """How much each member has put in, or one of them."""
    text = phrase.text
    match = next((found for pattern in _SHARES if (found := pattern.match(text))), None)
    if match is None:
        return None
    who = match.groupdict().get("who")
    about = (
        who
        or phrase.message.context.of_bins
        or phrase.bin
        or phrase.to_bot
        or re.search(
            r"\b(?:in|into|scraps|layers|put|"
            r"added|numbers|figures|percentages?|my share)\b",
            text,
        )
    )
    if not about:
        return None
    said = match.groupdict()
    whose = said.get("whose") or said.get("own") or said.get("my")
    own = whose == "my" or who == "i"
    member = phrase.message.context.sender if own else None
    if "qmember" in (whose or who or ""):
        member = next((ref.name for ref in phrase.message.members), None)
    return Ask(topic="totals", by="member", bin=phrase.bin, member=member)


_THE_BIN = Late(r"(?:the|our|this|that) (?:qbin|bin|bucket)")
"""Of the only bin, or of that which the talk is on."""


def _story(phrase: Phrase) -> Story | None:
    match = _STORY.match(phrase.text)
    if match is None:
        return None
    said = " ".join(filter(None, match.groups()))
    number = _RUN.search(said)
    run = int(number["number"]) if number else -1 if _LAST_RUN.search(said) else 0
    bin = said_bin(phrase) or (phrase.strange_bin if match["of"] else None)
    if not bin and _THE_BIN.fullmatch(said):
        return Story(run=run)
    if not bin and not (run and phrase.to_bot):
        return None
    return None if _BESIDE_RUN.sub("", said).strip() else Story(bin=bin, run=run)
