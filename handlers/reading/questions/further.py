"""Questions that only a room can be asked: the reading contract has no topic for them.

When a bin will be full, how many are wanted, whether the liquid, the moisture and the C:N are as
they should be, and what a bed had. Each is one turn of phrase, and counts only where bins are
spoken of or the bot was just heard, so that weather and football are never answered.
"""

import re
from collections.abc import Callable
from dataclasses import replace
from functools import lru_cache

from handlers.reading.acts import Ask, Topic
from handlers.reading.message import Message
from handlers.reading.questions.branasked import CUES as OF_BRAN
from handlers.reading.questions.branasked import asks_of_bran
from handlers.reading.questions.contents import CUES, asks_contents
from handlers.reading.questions.doses import of_scraps, weighs_scraps
from handlers.reading.questions.howmany import asks_how_many
from handlers.reading.questions.question import CRAFT, Question
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_LEAD = (
    r"^ (?:(?:so|ok|okay|and|but|hey|hi|right|well|please|bot|pailkeeper|now|then|any idea|do you "
    r"know|does anyone know|anyone know|,|:) )*"
)
_TAIL = (
    r"(?: (?:now|yet|then|again|today|please|bot|in there|inside|in it|do you think|you think|at "
    r"all|still|already|or not|,|\.|!))* $"
)

_WHEN_FULL = Late(
    _LEAD + r"(?:by when|when|how (?:long|soon|many (?:more )?days|much longer))\b"
    r"(?! (?:it is|it 's|they are|the bin is|your bin is|full)\b.*\b(?:do|should|can|must)\b)"
    r".{0,60}?\b(?:full|filled(?: up)?|fill up|fills up)" + _TAIL
)
_FULL_BY = Late(
    _LEAD + r"(?:will|would|might|could|is|are)\b.{0,40}\b(?:be |going to be |likely to be )?"
    r"(?:full|filled) (?:by|before|on|this|next|within)\b.{0,30} $"
)
_ONCE = Late(r".\b(?:when|once|after|if|while)\b.*\bfull\b")
_ELSEWHERE = words_in(
    "lorry truck collection recycling rubbish council wheelie car park train bus moon freezer "
    "fridge tank inbox hall church class course hotel dishwasher"
)

_LIQUIDS = r"(?:liquid|leachate|liquor|run ?off|juice|tea|fluid)"
_IS_SO_MUCH = Late(
    _LEAD
    + rf"(?:is|are|was|'s|isn't|isnt)\b.{{0,40}}?\b(?:too much|too little|so much|so little|enough|"
    rf"normal|usual|ok|okay|a lot of|much)\b(?:.{{0,25}}\b{_LIQUIDS}\b.{{0,30}})?"
    r"(?: (?:from|off|out of|in) \S+(?: \S+){0,2})?" + _TAIL
)
_HOW_MUCH_LIQUID = Late(
    _LEAD + rf"(?:how much|what amount of) {_LIQUIDS} (?:should|will|would|can|do|does|is|ought|"
    r"might)\b.{0,40}?\b(?:expect|get|come|give|gives|make|makes|produce|drain|normal|usual|"
    r"expected|be|there)\b.{0,30} $"
)
_PLAINLY_OURS = words_in("liquid leachate")
_THINNED = words_in(
    "water dilute diluted dilution thin thinned plants plant tomatoes roses can watering seedlings "
    "pots bed beds garden drink cup breakfast"
)

_TOO_WET = Late(
    _LEAD + r"(?:is|are|'s|isn't|isnt|was)\b.{0,30}?\b(?:it|that|this|mine|ours|\S+ bin|\S+ bucket|"
    r"bin \d+|the \S+(?: \S+)?)"
    r"(?: (?:getting|looking|a bit|far|way|maybe|much|perhaps|quite))* too (?:wet|moist|damp|soggy|"
    r"sloppy|dry)(?: or too (?:wet|dry))?(?: for (?:the )?(?:ferment|bokashi|bin|bucket|"
    r"fermenting))?" + _TAIL
)
_HOW_WET = Late(
    _LEAD + r"(?:how (?:wet|moist|dry|damp) (?:is|are|'s|should)\b.{0,40}|(?:how|what) (?:is|'s|are"
    r"|about)\b.{0,20}\bmoisture\b.{0,60}) $"
)

_CARBON = Late(
    r"\bc ?(?::|/) ?n\b|\bcarbon (?:to|and|-|/|:) ?nitrogen\b|"
    + _LEAD.removeprefix("^")
    + r"(?:how (?:is|'s)|what (?:is|'s|about)|is there|is|have we got|do we have) (?:the |our |it "
    r"|there )*(?:enough |too much |too little |right )?carbon\b"
)
_OTHER_CARBON = words_in(
    "footprint monoxide dioxide offset offsets neutral fibre fiber steel copy tax emission "
    "emissions credit credits bike frame dating capture filter paper co2 alarm detector"
)

_BED_HAD = (
    r"\b(?:what|how much|how many(?: bins)?)(?: nitrogen)? (?:has|have|did|had) (?:the |our |my )?"
    r"{place} (?:had|got|get|received|take|taken)\b|\bhow much (?:has|have|did) (?:we|i|you) "
    r"(?:already )?(?:put|put in|dug|dig|buried|bury)(?: on| in| into| under)? (?:the |our |my )?"
    r"{place}\b"
)
_BED_TAKES = (
    r"\bhow much(?: more| ferment| fermented)?(?: of(?: \S+){1,3})? (?:can|may|could|should|does|"
    r"will|would|goes)\b.* {place}\b|\bcan (?:i|we|it|you) (?:put|dig|add|bury) (?:any )?more .*"
    r"{place}\b"
)
_OF_BEDS = words_in(
    "how much many more what can may could should does will would has have had did go goes on in "
    "into onto under to the a an we i it you put dig work spread give take takes taken got get "
    "received this last year twelve months month so far ? . , ! bed beds plot border of from bin "
    "bins bucket ferment fermented bokashi still already nitrogen any add bury by now our my and "
    "please bot for allowed dug buried more 's be contents measures that which is size sized with"
)


_CUES = (
    words_in(
        "many full filled fill fills liquid leachate liquor runoff run juice tea fluid wet moist "
        "dry damp soggy sloppy moisture carbon c size sized big large paper cardboard newspaper "
        "newsprint carton"
    )
    | CUES
    | OF_BRAN
)
"""Words without one of which none of these questions is asked."""


def may_be_further(message: Message) -> bool:
    """Whether it may ask what only a room can be asked."""
    return message.context.in_room and (message.has(_CUES) or names_place(message))


def names_place(message: Message) -> bool:
    """Whether a word of a place where bins were buried stands in it."""
    places = message.context.places
    return bool(places) and message.has(_words_of(places))


@lru_cache(maxsize=1024)
def _words_of(places: tuple[str, ...]) -> frozenset[str]:
    return frozenset(word for place in places for word in place.casefold().split())


def further(q: Question) -> Ask | None:
    """A question that the reading contract has no topic for; None if it is none of these."""
    if (of_bran := asks_of_bran(q)) is not None:
        return of_bran
    if not q.has(_CUES):
        return None
    wanted = asks_how_many(q) or asks_contents(q)
    if wanted is not None:
        return wanted
    for topic, asks in _TOPICS:
        if asks(q):
            act = Ask(topic=topic, bin=_bin(q), rules=(f"asks about {topic}, in a room",))
            given_off = topic == "liquid" and bool(q.amounts("mass")) and weighs_scraps(q)
            if act.bin is None and (topic in _OF_SCRAPS or given_off):
                return of_scraps(act, q)
            volumes = q.amounts("volume") if topic == "liquid" else []
            return replace(act, volume_l=volumes[0]) if volumes else act
    return None


def placed(act: Ask | None, q: Question) -> Ask | None:
    """The question about a bed with the place that is meant, if the group buried bins there."""
    place = place_in(q)
    if place is None:
        return act
    if act is not None and act.topic == "bed":
        return replace(act, place=place)
    if (act is None or act.topic == "allowed") and _asks_of_bed(q, place):
        area = q.amounts("area")
        return Ask(
            topic="bed",
            area_m2=area[0] if area else None,
            bin=_bin(q),
            place=place,
            rules=("asks about a bed, in a room",),
        )
    return act


def place_in(q: Question) -> str | None:
    """The place where bins were buried that a question names, in the words it is known by."""
    return next((p for p in _places(q) if f" {p} " in q.text), None)


def _bin(q: Question) -> str | None:
    return next((b.name for b in q.bins() if b.name is not None), None)


def _of_bins(q: Question) -> bool:
    """Whether bins are spoken of, or the bot is spoken to or was just heard."""
    bins = [b for b in q.message.bins if b.start < q.end]
    spoken_of = any(b.plain or (b.known and not b.place) for b in bins)
    return spoken_of or q.to_bot or q.message.context.after_bot or q.has(CRAFT)


def _full(q: Question) -> bool:
    if q.has(_ELSEWHERE) or not (_of_bins(q) or q.bins()):
        return False
    asked = _WHEN_FULL.match(q.text) or _FULL_BY.match(q.text)
    return asked is not None and _ONCE.search(q.text.lstrip()) is None


def _liquid(q: Question) -> bool:
    if q.has(_THINNED) or q.bran() or not re.search(rf"\b{_LIQUIDS}\b", q.text):
        return False
    if _IS_SO_MUCH.match(q.text) is None and _HOW_MUCH_LIQUID.match(q.text) is None:
        return False
    return _of_bins(q) or q.has(_PLAINLY_OURS) or q.liquid()


def _moisture(q: Question) -> bool:
    if q.bran() or not (_of_bins(q) or weighs_scraps(q)):
        return False
    if _soaked_up(q):
        return not q.has(_HEAP)
    return _TOO_WET.match(q.text) is not None or _HOW_WET.match(q.text) is not None


def _carbon(q: Question) -> bool:
    if weighs_scraps(q) and _soaked_up(q):
        return q.has(_HEAP)
    return not q.has(_OTHER_CARBON) and _CARBON.search(q.text) is not None


def _soaked_up(q: Question) -> bool:
    """ "How much cardboard for 5 kg of melon?": what dries it, or feeds a heap beside it."""
    return q.has(_DRY_THINGS) and _HOW_MUCH_DRY.match(q.text) is not None


_HEAP = words_in("heap compost pile composting")
_DRY_THINGS = words_in("paper cardboard newspaper newsprint carton")
_HOW_MUCH_DRY = Late(
    _LEAD + r"how much (?:(?:more|torn|dry|shredded|extra|plain|old) )*(?:paper|cardboard|"
    r"newspaper|newsprint|carton) (?:(?:is|do|should|must|shall|does|goes|to|i|we|you|one|it|need|"
    r"needed|needs|add|put|mix|want|take|in) )*(?:for|to|with|on|into|beside) \S"
)


_OF_SCRAPS = ("carbon", "moisture")
"""What may be asked of scraps that are named."""
_TOPICS: tuple[tuple[Topic, Callable[[Question], bool]], ...] = (
    ("full", _full),
    ("liquid", _liquid),
    ("moisture", _moisture),
    ("carbon", _carbon),
)


def _places(q: Question) -> list[str]:
    """The places where bins were buried, in the words they are recognised by, the longest first."""
    names = {" ".join(place.casefold().split()) for place in q.message.context.places}
    bare = {re.sub(r"^(?:the|our|my|your) ", "", name) for name in names}
    return sorted(bare - {""}, key=len, reverse=True)


def _asks_of_bed(q: Question, place: str) -> bool:
    forms = (form.replace("{place}", re.escape(place)) for form in (_BED_HAD, _BED_TAKES))
    if all(re.search(form, q.text) is None for form in forms):
        return False
    held = indexes(q.message.amounts, q.bins())
    ours = _OF_BEDS | set(place.split())
    return all(i in held or q.message.norms[i] in ours for i in range(q.start, q.end))
