"""Questions the bot can answer: which topic is asked, and the figures that were said."""

from collections.abc import Callable
from typing import NamedTuple

from handlers.reading.acts import Act, Ask, Topic
from handlers.reading.materials import makeup
from handlers.reading.message import LIQUID, Message
from handlers.reading.names import BinRef
from handlers.reading.sense import is_question
from handlers.reading.told import is_sender
from handlers.reading.vocabulary import words_in


class Question(NamedTuple):
    """A stretch of a message that asks something."""

    message: Message
    start: int
    end: int
    words: frozenset[str]
    to_bot: bool

    @property
    def text(self) -> str:
        """The words, for phrases of two or more."""
        return " ".join(self.message.norms[self.start : self.end])


_HOW_MUCH = words_in("much many amount ratio dose dosage quantity rate double scoops spoons spoonfuls "
                     "tablespoons handfuls cuanto cuanta enough measure per what's proportion extra")  # fmt: skip
_WATER = words_in("water dilute diluted dilution diluting thin weaken watering can watered plants plant "
                  "roses tomatoes houseplants lawn seedlings beds neat straight concentrated regadera "
                  "parts part strength feed feeding undiluted spray hose")  # fmt: skip
_MAKE = words_in("make making mix mixing prepare recipe brew made prep inoculate ingredients jaggery "
                 "molasses knock mekkin scratch")  # fmt: skip
_LEFT = words_in("left remaining have enough last run stock low more out supply got remain leftover spare "
                 "next lasts hand soon need")  # fmt: skip
_DIG = words_in("deep dig trench hole wide depth digging trenches spade holes")
_READY = words_in("ready due open opened bury buried done finished finish empty emptied seal sealed drain "
                  "drained cooked ripe long days weeks nearer next when ferment fermenting")  # fmt: skip
_TROUBLE = words_in("normal bad ok okay wrong worry worried problem alright fine why help fix save ruined safe "
                    "happening happened do sposed supposed serious trouble gone dangerous harmful sign "
                    "mean means signify hago rescue matter cause causing lost toast right good concern")  # fmt: skip
_ALLOWED = words_in(
    "can may ok okay allowed safe alright fine put add go goes right include accept acceptable "
    "allow throw chuck in yes goer compostable fermentable possible suitable bokashiable should"
)
_INTO = words_in(
    "in into to inside add put chuck throw toss accept take go goes allowed include stick bung"
)
_FULL = words_in("full fill filled space room empty level inside status contents capacity weight heavy stage "
                 "state doing last")  # fmt: skip
_TOTALS = words_in("total totals altogether far together year month week collected saved diverted sum "
                   "overall kilos kg pounds lbs tonnes all since combined average")  # fmt: skip
_CUSTODY = words_in("who whose who's whos")
_TURN = words_in("turn week has have got keeper keeping keeps take taking rota next duty minding looking "
                 "looks charge holds holding host hosting mind schedule with go job")  # fmt: skip
_CRAFT = words_in("bokashi scraps leachate ferment fermented fermenting fermentation bin bins bucket "
                  "buckets pail pails mould mold lid trench layer layers peels")  # fmt: skip
_OUTSIDE = words_in("match weather football shop recipe oven film movie flight holiday train bus spare car wifi "
                    "password parking sourdough muffins muffin birthday party bake cake kettle sofa")  # fmt: skip
_WHY = frozenset({"why", "how come", "hows that", "how is that", "why is that", "where 's that from",
                  "where is that from", "says who", "why so much", "why that", "why so", "really",
                  "how so", "on what basis", "source", "why not", "who says", "how do you know",
                  "how do you know that", "how did you get that", "why that much", "explain",
                  "why so many", "why so little", "where do you get that", "according to who"})  # fmt: skip


def asks(message: Message, *, told: bool = False) -> tuple[Act, ...]:
    """The questions of a message that the bot can answer, each topic once.

    `told` says that the message also reports something, so that it asks only where it plainly asks.
    """
    if message.context.after_bot and _bare(message) in _WHY:
        return (Ask(topic="why", rules=("why, behind the bot's words",)),)
    out: list[Ask] = []
    for question in _questions(message, told):
        act = _ask(question)
        if act is not None and all(act.topic != other.topic for other in out):
            out.append(act)
    return tuple(out)


def _bare(message: Message) -> str:
    return " ".join(
        w.norm
        for w in message.words
        if w.kind == "word" and w.norm not in message.context.bot_names
    )


def _questions(message: Message, told: bool) -> list[Question]:
    """Sentences that ask, each with the sentence before it where it only sets the scene."""
    names = frozenset(message.norms[i] for m in message.members for i in range(m.start, m.end))
    out: list[Question] = []
    to_bot = bool(message.bot)
    requests = to_bot and not told
    for k, sentence in enumerate(message.sentences):
        norms = message.norms[sentence.start : sentence.end]
        whole = is_question(norms, sentence.asked, names)
        part = any(c.sense == "ask" for c in message.clauses if c.sentence == k)
        if not (whole or part or (sentence.asked and to_bot) or _requests(norms, requests)):
            continue
        start = sentence.start
        if k and not _tells(message, k - 1):
            start = message.sentences[k - 1].start
        out.append(
            Question(
                message, start, sentence.end, frozenset(message.norms[start : sentence.end]), to_bot
            )
        )
    return out


def _tells(message: Message, k: int) -> bool:
    """Whether a sentence tells of something done, so that it is no part of a question behind it."""
    return any(c.sense in ("did", "not", "said") and c.verb is not None and (
        c.verb.verb.plain != "have") for c in message.clauses if c.sentence == k)  # fmt: skip


def _requests(norms: list[str], to_bot: bool) -> bool:
    """ "Bot, total so far", "tell me when the shed is due": a question in the form of an order."""
    text = " ".join(norms)
    if any(p in text for p in ("tell me", "let me know how", "remind me how", "anybody know", "anyone know",
                               "any idea", "wondering", "wonder if", "not sure if", "no idea how",
                               "i need how", "need to know")):  # fmt: skip
        return True
    if text.startswith(("how ", "what ", "total ", "totals", "status")):
        return True
    return to_bot


def _ask(question: Question) -> Ask | None:
    for topic, test in _TOPICS:
        if test(question):
            return _filled(question, topic)
    return None


def _craft(q: Question) -> bool:
    """Whether the question is about the craft, the group's bins, or asked of the bot."""
    if q.to_bot or _bins(q):
        return True
    return not q.words.isdisjoint(_CRAFT) or q.message.bran(q.start, q.end) or _liquid(q)


def _bins(q: Question) -> list[BinRef]:
    return [b for b in q.message.bins if q.start <= b.start < q.end]


def _liquid(q: Question) -> bool:
    """Whether the liquid of a bin is meant; "tea" and "juice" only beside another sign of it."""
    found = q.words & LIQUID
    if found <= {
        "tea",
        "juice",
        "brew",
        "goo",
        "saft",
        "elixir",
        "liquid",
        "liquor",
        "jus",
        "jugo",
        "fluid",
    }:
        near = bool(_bins(q)) or q.to_bot or not q.words.isdisjoint(_CRAFT) or not q.words.isdisjoint(
            {"dilute", "diluted", "dilution", "plants", "tomatoes", "roses", "watering", "can", "neat",
             "straight", "garden", "water", "bin", "parts"})  # fmt: skip
        return bool(found) and near
    return True


def _bran(q: Question) -> bool:
    return q.message.bran(q.start, q.end)


def _is_help(q: Question) -> bool:
    t = q.text
    return (q.to_bot and any(p in t for p in ("what can you do", "what do you do", "how do you work", "commands",
                            "what can i ask", "what can we ask", "how does this work", "what do you know",
                            "who are you", "how do i use", "how do we use", "what are you"))) or (
        q.to_bot and q.words <= _HELP_WORDS)  # fmt: skip


_HELP_WORDS = words_in(
    "bot pailkeeper help me please pls ! ? , hey hi : . ☺ menu ayuda @ us need i"
)


def _is_dilution(q: Question) -> bool:
    if any(w.startswith("dilut") for w in q.words):
        return True
    if _bran(q) or not _liquid(q):
        return False
    return not q.words.isdisjoint(_WATER) or not q.words.isdisjoint({"much", "strong", "ratio"})


def _is_batch(q: Question) -> bool:
    if not _bran(q) or q.words.isdisjoint(_MAKE):
        return False
    how = not q.words.isdisjoint(
        {"how", "recipe", "ratio", "ingredients", "what", "method", "steps"}
    )
    needing = not q.words.isdisjoint(
        {"need", "soon", "when", "should", "do", "enough", "pronto", "time"}
    )
    asks_when = needing and q.words.isdisjoint({"how", "recipe", "ratio", "ingredients", "from"})
    return how and not asks_when and not ("when" in q.words and "recipe" not in q.words)


def _is_starter(q: Question) -> bool:
    if not _bran(q):
        return False
    if not q.words.isdisjoint(_MAKE) and not q.words.isdisjoint(
        {"need", "when", "time", "should", "soon", "want", "do", "who", "due", "enough"}
    ):
        return True
    if "per" in q.words or (
        not q.words.isdisjoint({"for", "on", "double", "layer", "meat", "sprinkle"})
        and (q.words.isdisjoint({"left", "have", "remaining", "last", "run"}))
    ):
        return False
    if _amounts(q, "mass") and "left" not in q.words and "need" in q.words:
        return False
    return not q.words.isdisjoint(_LEFT - {"need", "more", "enough", "next", "soon"}) or any(
        p in q.text
        for p in (
            "enough bran",
            "enough starter",
            "more bran",
            "more starter",
            "next lot",
            "next batch",
        )
    )


def _is_dose(q: Question) -> bool:
    measure = not q.words.isdisjoint(_HOW_MUCH) or "scoops" in q.words
    if _bran(q) and not _is_left(q):
        go = any(
            p in q.text
            for p in ("how to use", "the go with", "too much", "need bran", "when do i add")
        )
        return measure or go or bool(_amounts(q, "mass")) or "more" in q.words
    spoon = not q.words.isdisjoint({"scoops", "spoons", "spoonfuls", "tablespoons", "sprinkle", "dose", "handfuls",
                                    "dosage"})  # fmt: skip
    return spoon and measure and _craft(q)


def _is_left(q: Question) -> bool:
    return not q.words.isdisjoint({"left", "remaining"})


def _is_trench(q: Question) -> bool:
    if not q.words.isdisjoint({"trench", "dig", "deep", "depth", "hole", "trenches"}):
        return _craft(q) and not q.words.isdisjoint(
            {"how", "big", "what", "much", "long", "need", "deep", "size"}
        )
    return False


def _is_bed(q: Question) -> bool:
    area = bool(_amounts(q, "area"))
    return (
        (area or not q.words.isdisjoint({"bed", "beds", "raised"}))
        and not q.words.isdisjoint({"much", "many", "enough", "take", "takes", "rate"})
        and (area or _craft(q))
        and not _liquid(q)
    )


def _is_trouble(q: Question) -> bool:
    signs = _signs(q)
    if not signs or not (q.to_bot or _bins(q) or _craft(q) or _mouldy(q)):
        return False
    return True


def _mouldy(q: Question) -> bool:
    return any(s.endswith("mould") or s in ("no_liquid", "much_liquid") for s in _signs(q))


def _signs(q: Question) -> tuple[str, ...]:
    return tuple(
        dict.fromkeys(
            s.sign
            for s in q.message.signs
            if q.start <= s.start < q.end and _sign_counts(q, s.start, s.plain)
        )
    )


def _sign_counts(q: Question, at: int, plain: bool) -> bool:
    return plain or bool(_bins(q)) or q.to_bot


def _is_due(q: Question) -> bool:
    if _bran(q) or not q.words.isdisjoint(_OUTSIDE):
        return False
    timed = not q.words.isdisjoint(
        {"when", "long", "due", "ready", "days", "nearer", "weeks", "wann", "cuando"}
    )
    about = (
        bool(_bins(q))
        or q.to_bot
        or not q.words.isdisjoint({"ferment", "fermenting", "bury", "sealed"})
    )
    return (
        timed
        and about
        and not q.words.isdisjoint(_READY)
        and not ("last" in q.words and q.words.isdisjoint({"ready", "due"}))
    )


def _is_bin(q: Question) -> bool:
    bins = _bins(q)
    if not bins or not q.words.isdisjoint(_CUSTODY):
        return False
    if not q.words.isdisjoint(_FULL) and not q.words.isdisjoint({"how", "what", "is", "any", "much", "status",
                                                               "when", "are", "has", "which", "?"}):  # fmt: skip
        return True
    return (
        ("what" in q.words and "in" in q.words)
        or any(
            p in q.text
            for p in ("in it", "how is", "how 's", "how much is in", "how much in", "what is in")
        )
        or (q.to_bot and len(q.words) <= 5)
    )


def _is_totals(q: Question) -> bool:
    t = q.text
    if not q.words.isdisjoint({"total", "totals"}):
        return _craft(q) or "waste" in q.words or "kg" in q.words
    many = any(p in t for p in ("how much", "how many", "what weight"))
    have = any(p in t for p in ("have we", "did we", "did i", "have i", "we have", "we made", "have you", "did you",
                                "so far", "we put", "we saved", "we done", "did everyone", "has been", "this year",
                                "this month", "since january", "we together"))  # fmt: skip
    return many and have and (q.to_bot or _craft(q) or not q.words.isdisjoint(
        {"kilos", "kg", "pounds", "lbs", "scraps", "waste", "saved", "diverted", "tonnes"})) and (
        not q.words.isdisjoint(_TOTALS) or q.to_bot)  # fmt: skip


def _is_custody(q: Question) -> bool:
    t = q.text
    if any(
        p in t
        for p in (
            "whose turn",
            "whose week",
            "who 's turn",
            "who is turn",
            "whos turn",
            "my turn",
            "my week",
            "the rota",
        )
    ):
        return not _OUTSIDE & q.words
    who = not q.words.isdisjoint(_CUSTODY)
    return who and bool(_bins(q) or q.to_bot) and not q.words.isdisjoint(_TURN)


def _is_allowed(q: Question) -> bool:
    items = [
        i
        for i in q.message.items
        if q.start <= i.start < q.end and i.food.name not in ("stuff", "mix")
    ]
    permits = not q.words.isdisjoint(_ALLOWED)
    if not permits:
        return False
    into = not q.words.isdisjoint(_INTO)
    bins = bool(_bins(q))
    thing = bool(items) or (bins and into)
    if not thing or (not q.words.isdisjoint(_OUTSIDE) and not bins):
        return False
    if bins or q.to_bot:
        return into or any(
            p in q.text for p in ("ok", "allowed", "a goer", "fine", "safe", "yes or no")
        )
    return _permission(q) and bool(items)


def _permission(q: Question) -> bool:
    """ "Can I put citrus in?", "is it ok to add bones", "do prawn shells go in"."""
    t = f" {q.text} "
    asked = any(p in t for p in ("can i ", "can we ", "can you put", "may i", "may one", "may we", "is it ok", "is it all right",
                                 "is it alright", "is it okay", "ok to", "okay to", "are we allowed", "allowed to",
                                 "do i put", "should i put", "does ", "do ", "can ", "are ", "is ", "safe to", "could i",
                                 "able to", "alright to", "all right to", "should "))  # fmt: skip
    goes = any(p in t for p in (" put ", " add ", " go in", " goes in", " in ?", " chuck", " throw", " in the bin",
                                " toss", " go into", " allowed", " in or ", " a goer", " bung"))  # fmt: skip
    last_in = t.rstrip(" ?.!☺").endswith(" in")
    return (
        asked
        and (goes or last_in)
        and (" in " in t or " into " in t or last_in or " allowed" in t or " a goer" in t)
    )


_TOPICS: tuple[tuple[Topic, Callable[[Question], bool]], ...] = (
    ("help", _is_help),
    ("custody", _is_custody),
    ("batch", _is_batch),
    ("starter", _is_starter),
    ("dilution", _is_dilution),
    ("dose", _is_dose),
    ("trench", _is_trench),
    ("bed", _is_bed),
    ("trouble", _is_trouble),
    ("totals", _is_totals),
    ("due", _is_due),
    ("bin", _is_bin),
    ("allowed", _is_allowed),
)


def _amounts(q: Question, quantity: str) -> list[float]:
    return [
        a.value for a in q.message.amounts if a.quantity == quantity and q.start <= a.start < q.end
    ]


def _filled(q: Question, topic: Topic) -> Ask:
    bins = [b.name for b in _bins(q) if b.name is not None]
    name = bins[0] if bins else None
    rule = (f"asks about {topic}",)
    mass = _scrap_masses(q)
    volume = _amounts(q, "volume")
    items = [i for i in q.message.items if q.start <= i.start < q.end]
    match topic:
        case "dilution":
            return _dilution(q, name)
        case "dose":
            made = makeup(items) if items else None
            volumes = [v for v in volume if v >= 0.5] if not mass else []
            return Ask(
                topic=topic,
                mass_kg=sum(mass) if mass else None,
                volume_l=sum(volumes) if volumes else None,
                materials=None if made is None else made.shares,
                rich=None if made is None else made.rich,
                bin=name,
                rules=rule,
            )
        case "batch" | "trench":
            return Ask(
                topic=topic,
                mass_kg=_amounts(q, "mass")[0] if _amounts(q, "mass") else None,
                volume_l=volume[0] if volume and not mass else None,
                bin=name if topic == "trench" else None,
                rules=rule,
            )
        case "bed":
            area = _amounts(q, "area")
            return Ask(topic=topic, area_m2=area[0] if area else None, bin=name, rules=rule)
        case "trouble":
            return Ask(topic=topic, signs=_signs(q), bin=name, rules=rule)  # type: ignore[arg-type]
        case "allowed":
            made = makeup(items) if items else None
            what = q.message.text(items[0].start, items[-1].end) if items else None
            return Ask(
                topic=topic,
                what=what,
                materials=None if made is None else made.shares,
                bin=name,
                rules=rule,
            )
        case "totals" | "custody":
            doers = [m.name for m in q.message.members if q.start <= m.start < q.end]
            member = (
                doers[0]
                if topic == "totals" and doers and not is_sender(q.message, doers[0])
                else None
            )
            return Ask(topic=topic, bin=name, member=member, rules=rule)
        case _:
            return Ask(topic=topic, bin=name, rules=rule)


def _scrap_masses(q: Question) -> list[float]:
    """Masses in the question that are not of bran."""
    out: list[float] = []
    for a in q.message.amounts:
        if a.quantity == "mass" and q.start <= a.start < q.end:
            after = range(a.end, min(len(q.message.norms), a.end + 3))
            if not any(q.message.bran_at(i) for i in after):
                out.append(a.value)
    return out


def _dilution(q: Question, name: str | None) -> Ask:
    water: float | None = None
    liquid: float | None = None
    norms = q.message.norms
    for a in q.message.amounts:
        if a.quantity not in ("volume", "mass") or not q.start <= a.start < q.end:
            continue
        litres = a.value if a.quantity == "volume" else a.liquid_l
        if litres is None or (a.vessel and a.start == a.end):
            continue
        of_liquid = _of_liquid(norms, a.end) and not a.size
        if of_liquid and liquid is None:
            liquid = litres
        elif not of_liquid and water is None:
            water = litres
    return Ask(
        topic="dilution",
        water_l=water,
        liquid_l=liquid,
        parts=_parts(q),
        use=_use(q),
        bin=name,
        rules=("asks about dilution",),
    )


def _of_liquid(norms: list[str], at: int) -> bool:
    for i in range(at, min(len(norms), at + 4)):
        if norms[i] in LIQUID:
            return True
        if norms[i] in ("water", "can", "watering", ",", "how", "bucket", "sprayer"):
            return False
    return False


def _parts(q: Question) -> float | None:
    """The parts of water in "1:100", "1 to 100", "100 to 1"."""
    words = q.message.words
    for i in range(q.start, q.end):
        norm = words[i].norm
        if ":" in norm:
            one, _, many = norm.partition(":")
            if one == "1" and many.isdecimal() and len(many) <= 4:
                return float(many)
        if (
            norm == "1"
            and q.message.norms[i + 1 : i + 2] in (["to"], ["in"], ["part"])
            and (i + 2 < q.end and words[i + 2].norm.isdecimal() and len(words[i + 2].norm) <= 4)
        ):
            return float(words[i + 2].norm)
    return None


_USES = words_in(
    "roses rose tomatoes tomato houseplants houseplant seedlings lawn drains drain plants beds pots "
    "vegetables flowers trees orchids herbs garden balcony soil compost peppers chillies basil lettuce shrubs"
)


def _use(q: Question) -> str | None:
    for i in range(q.start, q.end):
        if q.message.norms[i] in _USES:
            return q.message.norms[i]
    return None
