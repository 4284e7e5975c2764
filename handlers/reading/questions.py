"""Questions the bot can answer: where one is asked, about which topic, with which figures."""

from dataclasses import replace

from handlers.reading.acts import Act, Ask, Topic
from handlers.reading.amounts import Amount
from handlers.reading.asking import is_question
from handlers.reading.bedsizes import with_size
from handlers.reading.briefly import PLANTS
from handlers.reading.dilutions import dilution_of
from handlers.reading.doers import is_sender
from handlers.reading.doses import dose_of
from handlers.reading.further import further, may_be_further, names_place, place_in, placed
from handlers.reading.late import Late
from handlers.reading.makeups import makeup
from handlers.reading.message import Message
from handlers.reading.ofwhat import called_behind
from handlers.reading.outrightwords import BED_WORDS
from handlers.reading.question import Question
from handlers.reading.scores import Scores
from handlers.reading.summing import summed
from handlers.reading.topics import TOPICS
from handlers.reading.trenchsizes import bins_in, with_bins, with_sides
from handlers.reading.vesselsizes import sides_l, told_l
from handlers.reading.vocabulary import words_in

_WHY = frozenset({
    "why", "how come", "hows that", "how is that", "why is that", "where 's that from",
    "where is that from",
    "says who", "why so much", "why that", "why so", "really", "how so", "on what basis",
    "source", "why not",
    "who says", "how do you know", "how do you know that", "how did you get that",
    "why that much", "explain",
    "why so many", "why so little", "where do you get that", "according to who",
    "how did you work that out",
    "how do you work that out", "whats that based on", "what is that based on", "why though",
    "but why",
})  # fmt: skip
_HELP = frozenset({"help", "help me", "help please", "please help", "help me please", "pls help"})
_TELL_ME = (
    "tell me", "let me know how", "remind me how", "anybody know", "anyone know", "any idea",
    "wondering",
    "want to know", "know whether", "know if", "asking if", "asks if", "wonder if",
    "not sure if", "no idea how", "i need how", "need to know", "anyone remember",
    "advise",
)  # fmt: skip
_ASKED_BY = (
    "how ", "what ", "total ", "totals", "status", "anything due", "anything late",
    "any bins due", "recipe ",
    "which ", "help ,", "help !", "what about", "bran amount", "amount of bran", "bran for",
)  # fmt: skip


ASKED_KINDS = frozenset(f"ask {topic}" for topic, _ in TOPICS)
"""What may be asked without a room, by its name in the scores."""


def asks(message: Message, scores: Scores, *, told: bool = False) -> tuple[Act, ...]:
    """The questions of a message that the bot can answer, each topic once.

    `told` says that the message also reports something, so that it asks only where it plainly asks.
    Where the scores allow no topic, only what has no score is looked for: that which only a room
    can be asked.
    """
    if not (_is_scored(message, scores) or may_be_further(message)):
        return ()
    if "help" in message.norms and _bare(message) in _HELP:
        return (Ask(topic="help", rules=("help",)),)
    if message.context.after_bot and is_why(message):
        return (Ask(topic="why", rules=("why, behind the bot's words",)),)
    out: list[Ask] = []
    for question in _questions(message, told):
        act = _asked(question, scores)
        if act is not None and all(act.topic != other.topic for other in out):
            out.append(act)
    return tuple(out)


def _asked(question: Question, scores: Scores) -> Ask | None:
    """What a stretch asks; in a room that may be more than the reading contract has topics for."""
    topic = _topic(question, scores)
    act = None if topic is None else filled(question, topic)
    if not question.message.context.in_room:
        return act
    return further(question) or placed(act, question)


def _topic(question: Question, scores: Scores) -> Topic | None:
    """The first topic that fits; none where the scores allow none of those that fit.

    A question of a place where bins were buried needs no score.
    """
    message = question.message
    if names_place(message):
        return next((name for name, test in TOPICS if test(question)), None)
    if not _is_scored(message, scores):
        return None
    allowed = {kind.removeprefix("ask ") for kind in scores.allowed(ASKED_KINDS)}
    for k, (name, test) in enumerate(TOPICS):
        if name in allowed and test(question):
            before = (name for name, test in TOPICS[:k] if name not in allowed and test(question))
            return next(before, name)
    return None


def _is_scored(message: Message, scores: Scores) -> bool:
    """Whether any topic may be asked about."""
    return message.context.after_bot or scores.any_may(ASKED_KINDS)


def _bare(message: Message) -> str:
    """The words of the message without the bot's name."""
    names = message.context.bot_names
    return " ".join(w.norm for w in message.words if w.kind == "word" and w.norm not in names)


def is_why(message: Message) -> bool:
    """Whether the message is no more than "why?"."""
    return _bare(message) in _WHY


def _questions(message: Message, told: bool) -> list[Question]:
    """Sentences that ask, each with the sentence before it where it only sets the scene."""
    names = frozenset(message.norms[i] for m in message.members for i in range(m.start, m.end))
    out: list[Question] = []
    to_bot = bool(message.bot)
    for k, sentence in enumerate(message.sentences):
        norms = message.norms[sentence.start : sentence.end]
        whole = is_question(norms, sentence.asked, names)
        part = any(c.sense == "ask" for c in message.clauses if c.sentence == k)
        plain = all(c.sense in ("none", "order", "ask") for c in message.clauses if c.sentence == k)
        hinted = not told and (sentence.asked or _requests(norms, to_bot and plain))
        if not (whole or part or hinted):
            continue
        start = sentence.start
        if k and not told and not _tells(message, k - 1):
            start = message.sentences[k - 1].start
        out.append(Question.within(message, start, sentence.end))
    return out


def _tells(message: Message, k: int) -> bool:
    """Whether a sentence tells of something done, so that it is no part of a question behind it."""
    return any(
        c.sense in ("did", "not", "said") and c.verb is not None and c.verb.verb.plain != "have"
        for c in message.clauses
        if c.sentence == k
    )


def _requests(norms: list[str], to_bot: bool) -> bool:
    """ "Bot, total so far", "tell me when the shed is due": a question in the form of an order."""
    text = " ".join(norms)
    if any(words in text for words in _TELL_ME):
        return True
    return to_bot or text.startswith(_ASKED_BY)


def question_of(message: Message) -> Question:
    """The whole message as one question."""
    return Question.within(message, 0, len(message.norms))


def asking(message: Message, topic: str) -> Question:
    """The one sentence that asks how much water goes with what it measures; else all of it."""
    if topic == "dilution" and "water" in message.norms:
        told = [s for s in message.sentences if "water" in message.norms[s.start : s.end]]
        own = [Question.within(message, s.start, s.end) for s in told if s.asked]
        if len(told) == len(own) == 1 and own[0].amounts("volume"):
            return own[0]
    return question_of(message)


def filled(q: Question, topic: Topic) -> Ask:
    """The question on that topic, with the figures and names said in it."""
    rule = (f"asks about {topic}",)
    match topic:
        case "dilution":
            return _dilution(q)
        case "dose":
            return dose_of(q, _name(q))
        case "batch":
            mass, volume = [a.value for a in _of_bran(q)], q.amounts("volume")
            mass = mass or q.amounts("mass")
            return Ask(
                topic=topic,
                mass_kg=mass[0] if mass else None,
                volume_l=volume[0] if volume and not mass else None,
                rules=rule,
            )
        case "trench":
            return _trench(q)
        case "bed":
            return _bed(q)
        case "trouble":
            return Ask(topic=topic, signs=q.signs(), bin=_name(q), rules=rule)
        case "allowed":
            return _allowed(q)
        case "totals":
            doers = [m.name for m in q.message.members if q.start <= m.start < q.end]
            others = [name for name in doers if not is_sender(q.message, name)]
            named = others[0] if others else None
            act = Ask(topic=topic, bin=_name(q), member=named, rules=rule)
            return summed(act, q) if q.message.context.in_room else act
        case "custody":
            said = [d for d in q.message.days if q.start <= d.start < q.end]
            on = said[0].future if said and q.message.context.in_room else None
            return Ask(topic=topic, bin=_name(q), on=on, rules=rule)
        case _:
            return Ask(topic=topic, bin=_name(q), rules=rule)


def _bed(q: Question) -> Ask:
    area, mass, in_room = q.amounts("area"), q.amounts("mass"), q.message.context.in_room
    if in_room and area and q.has(_DUG) and not q.has(BED_WORDS):
        return _trench(q)  # "the trench is 2 m x 30 cm": its sides, and no bed's
    act = Ask(
        topic="bed",
        area_m2=area[0] if area else None,
        mass_kg=mass[0] if mass and in_room else None,
        place=place_in(q) if in_room else None,
        bin=_name(q),
        rules=("asks about bed",),
    )
    if not in_room:
        return act
    names = bins_in(q)
    return with_size(replace(act, bins=names) if len(names) > 1 else act, q)


_DUG = words_in("trench trenches hole pit ditch")


def _trench(q: Question) -> Ask:
    mass, by_sides = q.amounts("mass"), sides_l(q)
    litres = told_l(q) if by_sides is None else by_sides
    act = Ask(
        topic="trench",
        mass_kg=mass[0] if mass else None,
        volume_l=None if mass else litres,
        bin=_name(q),
        rules=("asks about trench",),
    )
    if not q.message.context.in_room:
        return act
    return with_bins(act if by_sides else with_sides(act, q.message), q)


def _dilution(q: Question) -> Ask:
    """The dilution; where soil or scraps are measured out, the trench or the dose instead."""
    if not q.liquid() and _SOIL_FOR.search(q.text):
        return _trench(q)
    return (
        dose_of(q, _name(q)) if not q.liquid() and _measures_scraps(q) else dilution_of(q, _name(q))
    )


def _measures_scraps(q: Question) -> bool:
    """ "How much for 2 litres of peelings?" """
    starts = {item.start for item in q.items() if not q.message.has(PLANTS, item.start, item.end)}
    lots = [a for a in q.message.amounts if a.quantity == "volume" and q.start <= a.start < q.end]
    of_scraps = any({a.end, a.end + 1} & starts for a in lots)
    return of_scraps and q.words.isdisjoint({"water", "can"})


_SOIL_FOR = Late(
    r"^ (?:(?:and|so|then) )?(?:how much|how many \w+ of|what amount of) (?:soil|earth|dirt)\b"
)


def _name(q: Question) -> str | None:
    """The bin asked about; "it" is the one named before."""
    asked = [c for c in q.message.clauses if c.sense == "ask"]
    refs = [b for b in q.bins() if any(c.start <= b.start < c.end for c in asked)] or q.bins()
    named = [b.name for b in refs if b.name is not None]
    if named:
        return named[0]
    before = [b.name for b in q.message.bins if b.start < q.start and b.name is not None]
    means_it = not q.words.isdisjoint({"it", "its", "that", "this"})
    return before[-1] if before and means_it and not q.bins() else None


def _of_bran(q: Question) -> list[Amount]:
    """Masses in the words that ask, or else those that are said to be of bran."""
    masses = [a for a in q.message.amounts if a.quantity == "mass"]
    start, end = q.own
    asked = [a for a in masses if start <= a.start < end]
    return asked or [a for a in masses if called_behind(q.message, a) == "bran"]


def _allowed(q: Question) -> Ask:
    items = q.items()
    made = makeup(items)
    return Ask(
        topic="allowed",
        what=q.message.text(_with_its_state(q, items[0].start), _with_its_ill(q, items[-1].end))
        if items
        else None,
        materials=None if made is None else made.shares,
        rich=None if made is None else made.rich,
        bin=_name(q),
        rules=("asks about allowed",),
    )


_STATES = words_in(
    "mouldy moldy rotten rotting spoiled spoilt rancid putrid slimy fuzzy furry dead big large raw"
)
_LEAD_STATES = words_in("old very slightly really a bit of gone off bad and green blue")


def _with_its_ill(q: Question, end: int) -> int:
    """Where the words for a thing end, what ails it among them: "potatoes with late blight"."""
    norms = q.message.norms
    ill = [i for i in range(end, min(end + 4, len(norms))) if norms[i] in _ILLS]
    return ill[0] + 1 if ill and norms[end] in ("with", "that") else end


_ILLS = words_in("blight mould mold rot mildew")


def _with_its_state(q: Question, start: int) -> int:
    """Where the words for a thing begin, its state among them: mouldy bread is no bread."""
    norms = q.message.norms
    begin = start
    for i in range(start - 1, max(q.start, start - 4) - 1, -1):
        if norms[i] in _STATES:
            begin = i
        elif norms[i] not in _LEAD_STATES:
            break
    return begin
