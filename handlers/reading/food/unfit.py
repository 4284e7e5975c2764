"""Things that stay out of a bin: asked about, or put in all the same.

The words are those of the craft's table; what is food is left to the rest of the reading.
"""

import re
from collections.abc import Iterator

from handlers.practice.allowed import MOST_OIL, rows_named, strictest
from handlers.practice.goes_in import OF_KIND, Row
from handlers.practice.stays_out import RUBBISH, SPOILT, STAYS_OUT
from handlers.reading.acts import Ask
from handlers.reading.arranged import Unfit
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.questions.question import CRAFT
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


def _cues() -> Iterator[str]:
    """The words of the table, short ones where they are no part of longer words."""
    for phrase in (phrase for row in STAYS_OUT for phrase in row.words):
        if len(phrase) > 4:
            yield phrase.removesuffix("y")
        else:
            yield from (f" {phrase}{end}" for end in (" ", "s", "?", ",", "."))


CUES = (*sorted(set(_cues())), "oil", "ashes")

_IN = r"(?:in|into|inside|to|on)"
_WHERE = (
    rf"(?: {_IN})?(?: (?:the|our|my|a|an|this|that|one of the|their|your))?"
    r"(?: (?:qbin|bins?|buckets?|pails?|caddy|tubs?|drums?|bokashi|it|there|here|them|ferment|bin "
    r"bucket))?"
)
_MORE = (
    r"(?: (?:too|also|as well|please|now|then|or not|at all|yes or no|do you think|with (?:the|my|"
    r"our) scraps|together with it|by accident|by mistake|accidentally|earlier|qday|again|sorry|"
    r"oops|"
    r"ok|okay|allowed|fine|alright|about|roughly|approx|\d\S*|kg|kilos?|g|grams?|l|litres?|lbs?|"
    r"pounds?|half a kilo|a kilo|any ?more|either))*"
)
_DEED = (
    r"(?:put(?:ting)?|add(?:ing)?|chuck(?:ing)?|throw(?:ing)?|includ(?:e|ing)|feed(?:ing)?|bung|"
    r"toss|"
    r"stick|compost(?:ing)?|dump|ferment(?:ing)?|bin|pop|use|tip|mix)"
)
_ASKS = (
    Late(
        rf"\b(?:can|could|may|should|shall|do|am|are|is|ok|okay|safe|fine|allowed|possible|what if|"
        rf"mind if)\b(?: (?:it|i|we|you|one|anyone|people|they|ok|okay|safe|fine|alright|allowed|"
        rf"able|"
        rf"possible|to|also|still|just|even|ever|really))* {_DEED} (?:{_IN} )?"
        rf"(?P<what>\S.{{0,60}}?){_WHERE}{_MORE}$"
    ),
    Late(
        rf"\b(?:can|could|may|do|does|will|should|would|is|are)(?: it)? (?P<what>\S.{{0,60}}?) "
        rf"(?:go(?:es)?|be (?:put|added|used|composted|fermented)|belong|count|"
        rf"(?:be )?(?:allowed|ok|"
        rf"okay|fine|alright|accepted|permitted|welcome|safe)){_WHERE}{_MORE}$"
    ),
)
_ABOUT = Late(rf"^(?:and |or |but )?(?:what|how) about (?P<what>\S.{{0,50}}?){_WHERE}{_MORE}$")
_BARE = Late(rf"^(?:and |or )?(?P<what>\S+(?: \S+){{0,3}}?){_WHERE}{_MORE}$")
_PUT = Late(
    rf"\b(?:put|threw|thrown|chucked|added|dropped|tossed|tipped|dumped|binned|popped|stuck|"
    rf"emptied|"
    rf"bunged|slung)(?: {_IN})?(?: (?:\d\S*|kg|kilos?|of|a|an|some|the|my|our|his|her|in|into|"
    rf"qbin|bin|"
    r"bucket|g|grams?|litres?|l|lbs?|pounds?|half|it))* (?P<what>\S.{0,40}?)"
    rf"(?: (?:{_IN}|with|from|using|without|for|by|after|before)\b.*|{_MORE})$"
)
_GOT_IN = Late(
    r"^(?:\S+ ){0,3}?(?P<what>\S.{0,40}?) (?:(?:has|have|had|must have|seems to have) )?(?:also )?"
    r"(?:went|gone|got|gotten|fell|fallen|ended up|slipped|dropped|landed|came|come) (?:in|into|"
    rf"inside)(?: (?P<ours>(?:the |our |my )?qbin|with (?:it|them|that|(?:the|my|our|those|these)"
    rf"(?: \S+){{1,3}})))?{_WHERE}{_MORE}$"
)
"""What got in by itself, or so it is told."""
_LIES_IN = Late(
    r"^(?:\S+ ){0,3}?(?:there (?:is|was|are|were|'s)|found|spotted|saw)"
    r"(?: (?:an?|some|the|two|three|bits?|pieces?|half|of|out))* (?P<what>\S.{0,40}?) "
    r"(?P<ours>(?:in|inside) (?:the |our |my )?qbin)(?: (?:again|qday))*$"
)
"""What was seen there."""
_AMONG = Late(
    r"\bwith (?P<what>(?:an?|some|the|two|three|my|our|a few|bits of) \S.{0,40}?) "
    r"(?:in|inside|among|amongst|mixed in|mixed into|stuck to)(?: (?:it|them|there|that|with it))?$"
)
"""What was among the scraps that went in."""
_HOW = Late(r"^(?:and |so )?(?:how|what|when|where|who|why|which)\b(?! about)")
_NO_THING = Late(
    r"\b(?:not|should|is|are|was|were|did|does|had|there|you|i|we|it|"
    r"any ?one|any ?body|some ?one|some ?body|who|he|she|they|"
    r"factory|heaps?|piles?)\b|^in\b|^(?:is that |smells? )?(?:sour|rotten|off|bad|fresh) or "
    r"(?:sour|rotten|off|bad|fresh)$"
)
_VESSEL_OF = Late(
    r"^.*\b(?:bucket|bag|tub|jar|box|can|tin|pot|bowl|tray|caddy|container|cup|glass|pail|"
    r"bottle|litre|liter|kilo|gram|pound|kg|g|lb|l)s? of "
)
_VESSEL_ITSELF = Late(
    r"\b(?:use|take|ferment in) (?:an?|any|my|the)\b.{0,30}\b(?:bucket|bin|pail|tub|pot|drum|qbin|"
    r"barrel|dustbin|container|jar|can)$"
)
"""A vessel to ferment in is asked about, and nothing that goes into one."""
_TO_BIN = Late(
    r"\b(?:in|into|inside|to) (?:the |our |my )?(?:qbin|bin|bucket|pail|caddy|tub|drum)\b|"
    r"\b(?:in|into)$"
)
_WEIGHED = Late(
    r"\b(?:put|threw|thrown|chucked|added|dropped|tossed|tipped|dumped)(?: in)? (?:about |some )?\d"
)
_ON_THE_GROUND = Late(
    r"\b(?:on|onto|in|into|around|round|under|over|at|by|behind) (?:the|our|my|a|his|her|their) "
    r"(?:\S+ )?(?:roses?|beds?|borders?|lawn|garden|allotment|plot|plants?|trees?|tomatoes|hedge|"
    r"street|road|pavement|park|yard|drive|alley|lane|woods?|field|river|canal|beach|heap|skip|"
    r"tip|lawns|pots?|patch|veg|vegetables)\b"
)
"""Where things lie that went into no bin."""
_SLIP = Late(r"\b(?:accident\w*|mistake|oops|sorry|whoops)\b")
_ELSEWHERE = words_in(
    "recycling recycle council wheelie landfill dishwasher fridge freezer oven microwave skip tip "
    "collection lorry kerb curb car garage washing laundry oil-lamp"
)
_WASTE = SPOILT | {
    "pet waste",
    "nappies and human waste",
    "bags called compostable",
    "coated paper",
    "dead animals",
}
_MOULDY = words_in("mouldy moldy")
_CLEANING = words_in("wash washing clean cleaning rinse rinsing scrub scrubbing line lining")
_OF_ELSE = _ELSEWHERE | _CLEANING
_BAGS = words_in("bag bags")
_OF_CRAFT = CRAFT | words_in("bins bokashi")


def unfit(message: Message) -> Iterator[Found]:
    """Every question about a thing that stays out, and every such thing that was put in."""
    for phrase in phrases(message):
        if not _OF_ELSE.isdisjoint(phrase.tokens) or _VESSEL_ITSELF.search(phrase.text):
            continue
        found = _asked(phrase) or _put(phrase) or _mouldy(phrase)
        if found is not None:
            yield found


def _asked(phrase: Phrase) -> Found | None:
    what = _what_asked(phrase)
    rows = rows_named(what) if what else []
    if (
        not rows
        or _NO_THING.search(what)
        or _HOW.match(phrase.text)
        or _is_only_seen(phrase)
        or not (_is_out(rows) or _is_much_oil(phrase, rows))
    ):
        return None
    volumes = [a.value for a in phrase.message.amounts if a.quantity == "volume"]
    plan = Ask(topic="allowed", what=what, bin=phrase.bin, volume_l=volumes[0] if volumes else None)
    return Found(*phrase.sentence, plan)


def _is_only_seen(phrase: Phrase) -> bool:
    """ "What about the maggots?": a sign of the bin, and nothing that is to go in."""
    message = phrase.message
    return bool(message.signs) and not message.items and _ABOUT.match(phrase.text) is not None


def _is_out(rows: list[Row]) -> bool:
    return strictest(rows).verdict == "no"


def _is_much_oil(phrase: Phrase, rows: list[Row]) -> bool:
    volume = _volume(phrase) or 0.0
    return volume > MOST_OIL.value and strictest(rows).name == OF_KIND["oil"]


def _volume(phrase: Phrase) -> float | None:
    volumes = [a.value for a in phrase.message.amounts if a.quantity == "volume"]
    return volumes[0] if volumes else None


def _what_asked(phrase: Phrase) -> str:
    text = phrase.text
    ours = _is_ours(phrase)
    for pattern in _ASKS:
        match = pattern.search(text)
        if match and (ours or re.search(rf" {_IN}{_MORE}$", text)):
            return match["what"]
    bare = _is_bare_waste(phrase) or (phrase.asked and phrase.message.context.to_bot)
    if not (phrase.asked and ours) and not phrase.message.context.after_bot and not bare:
        return ""
    match = _ABOUT.match(text) or (_BARE.match(text) if phrase.asked else None)
    return match["what"] if match else ""


def _is_bare_waste(phrase: Phrase) -> bool:
    """ "Cat litter?": nobody asks that of anything but a bin; "glass?" may be of wine."""
    if not phrase.asked or len(phrase.message.sentences) > 1:
        return False
    return any(row.name in _WASTE for row in rows_named(phrase.text))


def _put(phrase: Phrase) -> Found | None:
    """ "Put dog poo in the bin, 1 kg": no scraps; food that is spoilt is still a layer."""
    if phrase.asked or not _was_done(phrase):
        return None
    if found := _among(phrase) or _got_in(phrase):
        return found
    if _TO_BIN.search(phrase.text) is None and _THROWN_OUT.search(phrase.text):
        return None
    match = _PUT.search(phrase.text)
    what = _VESSEL_OF.sub("", match["what"]) if match else ""
    rows = rows_named(what)
    if not rows or not (_is_out(rows) or _is_much_oil(phrase, rows)):
        return None
    row, ours = strictest(rows), _is_of_bin(phrase)
    into = _TO_BIN.search(phrase.text) is not None
    if not into and _ON_THE_GROUND.search(phrase.text):
        return Found(*phrase.sentence, Unfit(what=what, ours=False))
    if not into and (row.name in SPOILT or _WEIGHED.search(phrase.text) is None):
        return None
    if not ours and row.name != RUBBISH:
        return None
    food = row.name in SPOILT or _has_food(rows) or _is_food(phrase)
    volume = _volume(phrase)
    plan = Unfit(what=what, bin=phrase.bin, volume_l=volume, beside_food=food, ours=ours)
    return Found(*phrase.sentence, plan, aside=food)


_THROWN_OUT = Late(
    r"\b(?:threw|thrown|chucked|tossed|dumped|put|took|cleared) (?:\S+ ){0,8}?(?:out|away)"
    r"(?: (?:qday|today|already|at last|finally))*$"
)
"""It went where rubbish goes: "threw 2 kg of old magazines out"."""


def _mouldy(phrase: Phrase) -> Found | None:
    """ "2 kg of mouldy bread, shed": a layer all the same, with a word on mould."""
    if phrase.asked or _MOULDY.isdisjoint(phrase.tokens) or not _was_done(phrase):
        return None
    weighed = any(
        amount.quantity in ("mass", "volume") and phrase.start <= amount.start < phrase.end
        for amount in phrase.message.amounts
    )
    if not (weighed and _is_food(phrase)):
        return None
    plan = Unfit(what="mouldy food", bin=phrase.bin, beside_food=True, ours=True)
    return Found(*phrase.sentence, plan, aside=True)


def _among(phrase: Phrase) -> Found | None:
    """ "Added 2 kg with a battery in it": the layer stands, the thing is to be lifted out."""
    match = _AMONG.search(phrase.text)
    if match is None or not phrase.message.amounts or not _is_never_food(match["what"]):
        return None
    if not (_is_of_bin(phrase) or any(ref.known for ref in phrase.message.bins)):
        return None
    first = phrase.spans[phrase.text[: match.start()].count(" ")][0]
    return Found(first, phrase.end, Unfit(what=match["what"], bin=phrase.bin, beside_food=True))


def _got_in(phrase: Phrase) -> Found | None:
    """ "A plastic bag went in with it", "there's foil in the shed": no layer, put in by nobody."""
    match = _GOT_IN.search(phrase.text) or _LIES_IN.search(phrase.text)
    if match is None or _is_food(phrase) or not _is_never_food(match["what"]):
        return None
    if not (match["ours"] or _is_of_bin(phrase)):
        return None
    return Found(*phrase.sentence, Unfit(what=match["what"], bin=phrase.bin))


def _is_never_food(what: str) -> bool:
    rows = rows_named(what)
    return bool(rows) and _is_out(rows) and strictest(rows).name not in SPOILT


def _was_done(phrase: Phrase) -> bool:
    return any(
        clause.sense in ("did", "none") and phrase.start <= clause.start < phrase.end
        for clause in phrase.message.clauses
    ) and not any(
        clause.sense in ("not", "will", "if", "ask") and phrase.start <= clause.start < phrase.end
        for clause in phrase.message.clauses
    )


def _is_of_bin(phrase: Phrase) -> bool:
    """Whether a bin of the group is meant, and not the one for rubbish."""
    message = phrase.message
    plain = any(ref.plain for ref in message.bins)
    into = _TO_BIN.search(phrase.text) is not None
    weighed = bool(message.amounts) and (plain or not into) and not message.has(_BAGS)
    return bool(phrase.bins) or phrase.to_bot or weighed or _SLIP.search(phrase.text) is not None


def _has_food(rows: list[Row]) -> bool:
    return any(row.verdict != "no" for row in rows)


def _is_food(phrase: Phrase) -> bool:
    """Whether something to eat is named that is in no row of what stays out."""
    message = phrase.message
    items = [item for item in message.items if phrase.start <= item.start < phrase.end]
    named = [rows_named(message.text(item.start, item.end)) for item in items]
    return any(not rows or _has_food(rows) for rows in named)


def _is_ours(phrase: Phrase) -> bool:
    message = phrase.message
    plain = any(ref.plain or ref.known for ref in message.bins)
    return plain or phrase.to_bot or message.context.after_bot or message.has(_OF_CRAFT)
