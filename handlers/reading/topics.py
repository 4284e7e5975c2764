"""Which topic a question is about: the tests, in the order they are tried."""

import re
from collections.abc import Callable

from handlers.reading.acts import Topic
from handlers.reading.briefly import PLANTS, asks_dilution, asks_dose, asks_due, asks_trouble
from handlers.reading.late import Late
from handlers.reading.message import LIQUID
from handlers.reading.question import Question
from handlers.reading.vocabulary import words_in

_HOW_MUCH = words_in(
    "much many amount ratio dose dosage quantity rate double scoops spoons spoonfuls "
    "tablespoons handfuls cuanto cuanta enough measure per proportion extra heavy generous "
    "sprinkle sprinkling twice triple"
)
_WATER = words_in(
    "thin thinning lettuce salad safe pot pots feed weaker stronger water watering can watered "
    "plants plant roses tomatoes houseplants lawn seedlings beds "
    "neat straight regadera parts part strength strong feed feeding undiluted spray hose weak "
    "ratio garden veg mix gallon drains"
)
_MAKE = words_in(
    "make making mix mixing prepare recipe brew made prep inoculate ingredients jaggery "
    "molasses mekkin scratch method steps cook brewing preparing inside"
)
_LEFT = words_in(
    "left remaining last run stock low out remain leftover spare lasts hand running supply empty"
)
_READY = words_in(
    "ready due open opened bury buried done finished finish empty emptied seal sealed drain "
    "drained cooked ripe long days weeks nearer next when ferment fermenting fermented "
    "sealing burying draining more turn"
)
_TIMED = words_in("when long due ready days nearer weeks wann cuando yet day date schedule soon")
_OUTSIDE = words_in(
    "match weather football shop recipe oven film movie flight holiday train bus spare car "
    "wifi password parking sourdough muffins muffin birthday party bake cake kettle sofa "
    "kick-off school fridge freezer concert meeting delivery parcel dinner lunch"
)
_INDOORS = words_in(
    "bathroom ceiling wall walls shower window windows grout flat bedroom carpet house tiles "
    "bread cheese curtains wardrobe basement-wall car tent shoes rice cupboard"
)
_FULL = words_in(
    "full fill filled space room empty level inside status contents capacity weight heavy "
    "stage state doing hold fit"
)
_WEIGHT = words_in(
    "kilos kg pounds lbs scraps waste saved diverted tonnes collected composted weight tons "
    "landfill kilograms bokashied fermented kgs"
)
_SPAN = words_in(
    "far together year month week altogether all since combined total overall now everyone "
    "january february march april june july august september october november december spring "
    "summer season today yesterday group"
)
_WHO = words_in("who whose whom whos")
_KEEPS = words_in(
    "turn week has have got keeper keeping keeps take taking rota next duty minding looking "
    "looks charge holds holding host hosting mind schedule with go job looking-after "
    "currently moment now"
)
_ONE_SPOON = words_in("scoop spoon spoonful tablespoon handful")
_SPOON = words_in("scoops spoons spoonfuls tablespoons sprinkle dose handfuls dosage")
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


def _starter_turn(q: Question) -> bool:
    return (
        q.bran()
        and q.has(frozenset({"make", "left", "enough"}))
        and q.has(frozenset({"turn", "any"}))
    )


def _custody(q: Question) -> bool:
    if q.has(frozenset({"key", "keys", "code", "ladder", "password", "wifi"})):
        return False
    if re.search(r"\bwho (?:can|could|will|would) (?:say|tell)\b", q.text):
        return False
    if re.search(r"\bwho (?:is |'s )?next\b(?: [?.!])* $", q.text):
        return True
    turn = re.search(
        r"\b(?:whose|who 's|who is|whos) (?:turn|week|go|job|got)\b|\bmy (?:turn|week)\b|\bthe "
        r"rota\b",
        q.text,
    )
    if turn and not q.has(_OUTSIDE | frozenset({"cook", "dishes", "tea", "round"})):
        return "got" not in turn.group() or bool(q.bins())
    return (
        q.has(_WHO)
        and bool(q.bins() or q.to_bot)
        and q.has(_KEEPS)
        and not q.has(frozenset({"put", "added", "left"}))
    )


_DINNER = words_in("dinner lunch supper menu course main dessert pudding restaurant")


def _batch(q: Question) -> bool:
    if q.bran() and re.search(
        r"\bwhat (?:goes|do (?:you|we|i) put) (?:in|into) the (?:bran|"
        r"starter)\b",
        q.text,
    ):
        return True
    if not q.bran() or not q.has(_MAKE):
        return False
    how = q.has(
        frozenset(
            {
                "how",
                "recipe",
                "ratio",
                "ingredients",
                "what",
                "method",
                "steps",
                "molasses",
                "jaggery",
            }
        )
    )
    when = q.has(
        frozenset({"need", "soon", "when", "should", "pronto", "time", "enough", "more", "some"})
    )
    return how and not (when and not q.has(frozenset({"how", "recipe", "ratio", "ingredients"})))


def _starter(q: Question) -> bool:
    if not q.bran():
        return False
    per_layer = q.has(frozenset({"per", "layer", "meat", "double", "sprinkle", "each"})) or bool(
        q.amounts("mass") and not q.has(frozenset({"left", "have", "remaining"}))
    )
    if q.has(_MAKE) and q.has(frozenset({"need", "when", "time", "should", "soon", "want", "who",
                                         "due", "enough",
                                         "more", "do", "again", "next"})):  # fmt: skip
        return True
    if "enough" in q.words and not per_layer:
        return True
    if per_layer:
        return False
    if re.search(
        r"\bdo (?:we|i) need (?:any |some |more )?(?:bran|starter)\b|\bhow are we "
        r"for\b",
        q.text,
    ):
        return True
    more = any(p in q.text for p in ("more bran", "more starter", "next lot", "next batch",
                                     "any bran", "any starter",
                                     "got bran", "have bran", "order bran", "buy bran",
    "do we have"))  # fmt: skip
    return q.has(_LEFT) or more


def _dilution(q: Question) -> bool:
    if any(w.startswith("dilut") for w in q.words) and not q.has(_OUTSIDE):
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


_NO_DOSE = Late(
    r"\b(?:costs?|price|pricey|expensive)\b|"
    r"\bhow much (?:bran|starter) (?:is there|is left|is in the|have we|do we have|we have)\b"
)


def _dose(q: Question) -> bool:
    if q.has(_DINNER) or q.amounts("money") or _NO_DOSE.search(q.text):
        return False  # a starter before the main course, a price, what is in the tin
    measure = q.has(_HOW_MUCH)
    if q.bran():
        using = any(
            p in q.text
            for p in (
                "how to use",
                "the go with",
                "too much",
                "need bran",
                "when do i add",
                "more bran",
            )
        )
        for_it = re.search(r"\b(?:bran|starter) for\b", q.text) is not None
        return for_it or measure or using or bool(q.amounts("mass"))
    spoon = q.has(_SPOON | _ONE_SPOON)
    return spoon and measure and (q.craft() or bool(q.amounts("mass")))


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


def _totals(q: Question) -> bool:
    if re.match(r"^ total (?:chaos|mess|nonsense|disaster|rubbish|joke|legend|carnage|shambles|"
                r"eclipse|panic|waste of)\b", q.text):  # fmt: skip
        return False
    if re.match(
        r"^ (?:so |ok |bot |, )*what (?:is |'s )(?:the |our )?totals?(?: (?:now|so|far|"
        r"please|then|[?.!]))* $",
        q.text,
    ):
        return True
    if q.has(frozenset({"total", "totals", "tally", "totalled"})):
        return q.craft() or q.has(_WEIGHT | {"our", "till", "so", "year", "month", "far"})
    if re.search(r"\bhow are we doing\b|\bhow is the group doing\b", q.text) and q.has(_WEIGHT):
        return True
    through = re.search(r"\bwhat (?:have|did) we\b", q.text) and q.has(
        frozenset({"kilos", "kg", "pounds", "lbs"})
    )
    many = bool(through) or any(
        p in q.text for p in ("how much", "how many", "what weight", "how heavy")
    )
    done = re.search(r"\b(?:have|did|has|had) (?:we|i|you|everyone|everybody|\w+)\b|\bwe (?:have|"
                     r"made|put|saved|done|collected|together)\b"
                     r"|\bhas been\b|\bsince (?:january|february|march|april|may|june|july|august|"
                     r"september|october|november|december|spring|christmas|easter)\b|\bso far\b"
                     r"|\btill (?:now|date)\b|\bthis (?:year|month)\b",
    q.text)  # fmt: skip
    so_far = " so far " in q.text and "we" in q.words and not q.has(_OUTSIDE)
    saved = q.has(frozenset({"saved", "collected", "diverted", "composted"}))
    named = any(q.start <= m.start < q.end for m in q.message.members) and q.has(_WEIGHT)
    if many and done and (saved or named) and q.has(_WEIGHT):
        return True
    so_far = so_far or " put in " in q.text
    about = q.to_bot or q.craft() or q.has(_WEIGHT) or so_far
    return (
        many
        and bool(done)
        and about
        and (q.has(_SPAN) or q.to_bot)
        and not q.has(frozenset({"bran", "left"}))
    )


def _due(q: Question) -> bool:
    if _ALL_DUE.match(q.text) or _TO_DO.match(q.text):
        return True
    if q.bran() or (q.has(_OUTSIDE) and not any(b.plain for b in q.bins())):
        return False
    it = "it" in q.words and bool(q.message.bins)
    handled = q.has(frozenset({"ferment", "fermenting", "bury", "sealed", "drain", "seal"}))
    about = (
        bool(q.bins())
        or q.to_bot
        or it
        or (handled and q.has(frozenset({"we", "i", "it", "them", "should"})))
    )
    last = "last" in q.words and not q.has(frozenset({"ready", "due"}))
    return q.has(_TIMED) and about and q.has(_READY) and not last and not _fills(q)


_TO_DO = Late(
    r"^ (?:(?:so|ok|hey|hi|bot|folks|all|,) )*what (?:needs (?:doing|draining|burying|sealing|to "
    r"be done)|"
    r"is next|'s next|is on(?= this| next| today| for)|'s on(?= this| next| today| for)|"
    r"is on the calendar|'s on the calendar|do we have to do|have we got on)\b"
    r"(?: (?:on|for|the|this|next|week|calendar|today|tomorrow|month|bins|with|then|rota|[?.!]))* $"
)
_ALL_DUE = Late(
    r"^ (?:(?:so|ok|hey|hi|morning|bot|folks|all|,|!|and|whats) )*(?:what|which|who(?= (?:is |'s "
    r")?(?:late|due|overdue))|anything|"
    r"whats|any|is anything)(?: is| 's| are)?(?: bins?)?"
    r"(?: is| 's| are)? (?:due|late|overdue|next|outstanding|coming up)\b(?: (?:this|next|now|"
    r"today|tomorrow|week|then|on|for|the|"
    r"us|we|bins|month|soon|weekend|at|to|be|done|please|bot|morra|monday|tuesday|wednesday|"
    r"thursday|friday|saturday|sunday|[?.!,]))* $"
)


def _fills(q: Question) -> bool:
    return q.has(frozenset({"full"})) and not q.has(frozenset({"when", "ready", "due"}))


def _bin(q: Question) -> bool:
    bins = q.bins()
    if not bins or q.has(_WHO):
        return False
    asks = q.has(frozenset({"how", "what", "is", "any", "much", "status", "when", "are", "has",
                            "which", "?", "where",
                            "whats", "can"}))  # fmt: skip
    if asks and q.has(_FULL):
        return True
    said = ("in it", "how is", "how 's", "how much is in", "how much in", "what is in",
            "what went in", "what 's in",
            "where are we", "where is", "more can", "more will", "more does", "take any more",
            "any more in", "what has gone",
            "going on with", "have room", "like at", "like now", "did we put", "about",
    "has room", "got room", "room for", "last went",
    "last fed", "went into", "how far", "news on", "up with", "up to")  # fmt: skip
    if any(p in q.text for p in said) and not (_food_question(q) and "how" not in q.words):
        return True
    return (q.to_bot and len(q.words) <= 5) or (q.has(_FULL) and len(q.words) <= 5)


def _food_question(q: Question) -> bool:
    return bool(q.items())


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
    ("starter", _starter_turn),
    ("custody", _custody),
    ("batch", _batch),
    ("starter", _starter),
    ("dilution", _dilution),
    ("dose", _dose),
    ("trench", _trench),
    ("bed", _bed),
    ("trouble", _trouble),
    ("totals", _totals),
    ("due", _due),
    ("bin", _bin),
    ("allowed", _allowed),
    ("allowed", _allowed_thing),
    ("dilution", asks_dilution),
    ("dose", asks_dose),
    ("due", asks_due),
    ("trouble", asks_trouble),
)
