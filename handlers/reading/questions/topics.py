"""Which topic a question is about: the tests, in the order they are tried."""

import re
from collections.abc import Callable

from handlers.reading.acts import Topic
from handlers.reading.message import LIQUID
from handlers.reading.questions.booktopics import (
    OUTSIDE,
    asks_bin,
    asks_custody,
    asks_due_of_book,
    asks_totals,
)
from handlers.reading.questions.briefly import (
    PLANTS,
    asks_dilution,
    asks_dose,
    asks_due,
    asks_trouble,
)
from handlers.reading.questions.question import Question
from handlers.reading.questions.startertopics import (
    asks_batch,
    asks_starter,
    asks_starter_dose,
    asks_whose_starter,
)
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_WATER = words_in(
    "thin thinning lettuce salad safe pot pots feed weaker stronger water watering can watered "
    "plants plant roses tomatoes houseplants lawn seedlings beds "
    "neat straight regadera parts part strength strong feed feeding undiluted spray hose weak "
    "ratio garden veg mix gallon drains"
)
_INDOORS = words_in(
    "bathroom ceiling wall walls shower window windows grout flat bedroom carpet house tiles "
    "bread cheese curtains wardrobe basement-wall car tent shoes rice cupboard"
)
_PUT = r"(?:add|put|chuck|throw|use|include|feed|bung|toss|stick|compost|dump|ferment|bin|pop)"
_MAY = (
    r"(?:ok|okay|all ?right|alright|allowed|safe|fine|can i|can we|can you|may i|may one|may we|"
    r"should i|should we|"
    r"could i|could we|do i|do we|are we able|am i allowed|is it worth|possible)"
)
_MAY_PUT = Late(
    rf"\b{_MAY} (?:to |just |still |also )*{_PUT}\b|\b(?:puedo|podemos|se puede|posso|kann ich) "
    rf"(?:echar|poner|meter|tirar|colocar|jogar)\b"
)
_GOES_IN = Late(
    r"\b(?:can|may|could|do|does|should|will)\b.{0,60}\b(?:go|goes|be put|be added) (?:in|inside|"
    r"into)\b|\bgoes? in (?:the |our |a )?(?:bin|bucket|pail)s?\b"
    r"|\b(?:do|does)\b.{0,50} count\b|\byes or no\b|\b(?:yay|yea|yes) or (?:nay|no)\b|\ba goer\b|"
    r"\ballowed\b|\baccept(?:ed|able)?\b"
    r"|\bok(?:ay)? (?:in|for) (?:the |there|these|our )"
)
_FOR_FOOD_TALK = words_in(
    "recipe sauce oven pan pot batter dough fridge freezer lunchbox grill dishwasher microwave"
)


def _help(q: Question) -> bool:
    if not q.to_bot:
        return False
    said = ("what can you do", "what do you do", "how do you work", "commands", "what can i ask",
            "what can we ask",
            "how does this work", "what do you know", "who are you", "how do i use",
            "how do we use",
            "what are you", "what can i say", "how do i talk", "how does it work")  # fmt: skip
    return any(p in q.text for p in said) or q.words <= _HELP


_HELP = words_in(
    "bot pailkeeper help me please pls ! ? , hey hi : . ☺ menu ayuda @ us need i - hello can you"
)


def _dilution(q: Question) -> bool:
    if any(w.startswith("dilut") for w in q.words) and not q.has(OUTSIDE):
        return True
    if (
        " watering can " in q.text
        and q.has(frozenset({"mix", "much", "ratio", "many"}))
        and not q.bran()
    ):
        return True
    if _SPOON_PER.search(q.text) and not q.bran() and q.words.isdisjoint(_KITCHEN):
        return True
    if re.search(r"\b1 ?(?::|to|in) ?\d{2,4}\b", q.text) and q.has(
        LIQUID | PLANTS | {"water", "can", "watering", "sprayer", "salad", "salads"}
    ):
        return True
    if q.bran() or not q.liquid():
        return False
    return q.has(_WATER) or q.has(frozenset({"much", "strong", "ratio"}))


_SPOON_PER = Late(
    r"\b(?:tablespoons?|tbsps?|teaspoons?|tsps?|spoons?|cups?|ml|capfuls?) (?:of \S+ )?(?:per|to "
    r"(?:a|the)|in a|for a|a|to each|to every|each) "
    r"(?:\d+ )?(?:gallons?|gal|litres?|liters?|l|can|bucket|quarts?)\b"
)
_KITCHEN = words_in(
    "sugar salt flour vinegar soap bleach oil milk coffee tea juice squash detergent yeast"
)


def _trench(q: Question) -> bool:
    if not q.has(
        frozenset({"trench", "dig", "deep", "depth", "hole", "trenches", "pit", "deeply"})
    ):
        return False
    measured = bool(q.amounts("volume") or q.amounts("mass"))
    asks = q.has(
        frozenset({"how", "big", "what", "much", "long", "need", "deep", "size", "wide", "enough"})
    )
    return asks and (q.craft() or measured or q.has(frozenset({"bury", "fermented", "burying"})))


def _bed(q: Question) -> bool:
    area = bool(q.amounts("area"))
    if not area and not (q.has(frozenset({"bed", "beds"})) and q.craft()):
        return False
    return (
        q.has(frozenset({"much", "many", "enough", "take", "takes", "rate", "want", "need"}))
        and not q.liquid()
    )


def _trouble(q: Question) -> bool:
    signs = q.signs()
    if not signs or (q.has(_INDOORS) and not q.has(frozenset({"bin", "bucket", "scraps", "bran"}))):
        return False
    loose = {"insects", "rodents", "gas", "warm", "cold", "wet", "dry"}
    if (
        set(signs) <= loose
        and all(b.place and not b.plain for b in q.bins())
        and not q.has(
            frozenset({"bin", "bucket", "bins", "buckets", "pail", "scraps", "bran", "lid"})
        )
    ):
        return q.to_bot
    if re.search(r"\b(?:meant|supposed) to (?:smell|be|look|stink)\b", q.text):
        return True
    mould = any(s.endswith("mould") or s in ("no_liquid", "much_liquid") for s in signs)
    return q.craft() or mould


_PARTS = words_in("stone stones pit pits top tops end ends head heads tails stalks leaves")
_INEDIBLE = ("shell", "bone", "paper", "cardboard", "bag", "bags", "coffee", "grounds", "oil")


def _allowed(q: Question) -> bool:
    items = [i for i in q.items() if i.food.name not in ("stuff", "mix", "food")]
    asking_person = q.words & {"who", "where", "when", "why", "whose", "how", "what"}
    if " what about " in q.text or " how about " in q.text:
        asking_person = frozenset()
    if not items or asking_person:
        return False
    t = q.text
    if q.has(_FOR_FOOD_TALK) and not q.bins():
        return False
    if _MAY_PUT.search(t):
        return True
    if _GOES_IN.search(t):
        return True
    if re.search(
        r"^ (?:(?:bot|hey|hi|,) )*(?:is|are) (?:\S+ ){1,4}(?:ok|okay|fine|alright|"
        r"allowed)(?: [?.!])* $",
        t,
    ):
        return True
    if t.startswith((" what about ", " and what about ", " how about ", " bot what about ")):
        return q.to_bot or any(
            i.scrap or i.food.name.endswith(_INEDIBLE) or q.message.norms[i.end - 1] in _PARTS
            for i in items
        )
    last_in = t.rstrip(" ?.!☺").endswith((" in", " in there", " it in", " them in"))
    may = re.search(rf"\b{_MAY}\b|\b(?:is|are|does|do|can)\b", t)
    if bool(may) and last_in:
        return True
    if q.bins() or q.to_bot:
        return bool(
            re.search(r"\b(?:ok|okay|allowed|fine|safe|goer|accept|can|may|alright|yes or no)\b", t)
        )
    return bool(re.search(r"\b(?:ok|okay|allowed|fine|alright) (?:in|for)\b", t))


def _allowed_thing(q: Question) -> bool:
    """ "Can I put this in the shed?": a thing we have no word for, into a bin."""
    plain = any(b.plain for b in q.bins())
    return (
        plain
        and not q.items()
        and bool(_MAY_PUT.search(q.text))
        and q.has(frozenset({"in", "into"}))
        and (not q.has(frozenset({"how", "when", "who", "more"})))
    )


TOPICS: tuple[tuple[Topic, Callable[[Question], bool]], ...] = (
    ("help", _help),
    ("starter", asks_whose_starter),
    ("custody", asks_custody),
    ("batch", asks_batch),
    ("starter", asks_starter),
    ("dilution", _dilution),
    ("dose", asks_starter_dose),
    ("trench", _trench),
    ("bed", _bed),
    ("trouble", _trouble),
    ("totals", asks_totals),
    ("due", asks_due_of_book),
    ("bin", asks_bin),
    ("allowed", _allowed),
    ("allowed", _allowed_thing),
    ("dilution", asks_dilution),
    ("dose", asks_dose),
    ("due", asks_due),
    ("trouble", asks_trouble),
)
