"""A question asked anew with what a few words name: each thing in the place of its like."""

from collections.abc import Mapping, Sequence
from dataclasses import fields, replace

from handlers.practice.kinds import Kind
from handlers.reading.acts import Ask, Topic
from handlers.reading.food.items import one_food
from handlers.reading.food.makeups import makeup
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import LIQUID, Message, read_message
from handlers.reading.questions.askedfigures import filled
from handlers.reading.questions.asks import question_of
from handlers.reading.questions.bincounts import bins_counted
from handlers.reading.questions.briefly import PLANTS
from handlers.reading.questions.daysasked import days_asked
from handlers.reading.questions.howmany import asks_how_many
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

LEADS = words_in("and so then but or what how now")
OPENING = words_in("ok okay thanks great")
"""What such a message may only begin with."""
SMALL = LEADS | words_in(
    "for in on with of from to about if a an the it its it's is are 's be was were that this there "
    "only just please pls bot we i you use used have has had got do does too say under "
    "into ? , . ! : -"
)
_TIME = words_in("this last next week weekend month year")
_FULL = words_in("full")
_OF_BINS: frozenset[Topic] = frozenset(
    ("dose", "due", "bin", "trench", "bed", "trouble", "totals", "custody", "full", "liquid",
     "moisture", "carbon")
)  # fmt: skip
"""What may be asked of one bin and then of another."""
_OF_MEMBERS: frozenset[Topic] = frozenset(("totals", "due"))
_OF_SCRAPS: frozenset[Topic] = frozenset(("dose", "allowed", "moisture", "carbon"))
_OF_AMOUNTS: frozenset[Topic] = frozenset(("dose", "dilution", "moisture", "carbon"))
_WORDS: Mapping[Topic, frozenset[str]] = {
    "dilution": SMALL | PLANTS | LIQUID | words_in("water can house indoor young small my our"),
    "totals": SMALL | _TIME,
    "trench": SMALL
    | words_in("half full deep wide long cover foxes fox rats dogs dog badgers animals dig"),
    "due": SMALL | _TIME,
    "bran": SMALL | words_in("bran starter"),
}
"""What else may be said in it, by topic."""
_ALIKE: Mapping[Topic, frozenset[str]] = {
    "dose": words_in("winter summer cold warm hot weather"),
    "batch": words_in("rice wheat oat bran"),
}
"""What may be named with a question whose answer does not go by it: it is the same again."""
_MUCH = frozenset(("mass_kg", "volume_l"))
_MAKE_UP = frozenset(("materials", "rich"))
_INSTEAD: Mapping[Topic, Sequence[frozenset[str]]] = {
    "dose": (_MUCH | {"depth_m", "count"}, _MAKE_UP),
    "trench": (_MUCH | {"bin", "bins", "each", "what", "count"},),
    "bed": (_MUCH | {"bin"},),
    "batch": (_MUCH,),
    "bran": (_MUCH,),
    "moisture": (_MUCH | {"bin"}, _MAKE_UP | {"what", "bin"}),
    "carbon": (_MUCH | {"bin"}, _MAKE_UP | {"what", "bin"}),
    "allowed": (_MAKE_UP | {"what"},),
    "dilution": (frozenset(("use", "parts")),),
    "full": (frozenset(("bin", "capacity_l")),),
    "bins": (frozenset(("people", "week_kg", "days", "volume_l", "what")),),
}
"""Of these fields of a question, those that are told anew take the place of all."""


def is_bare(message: Message) -> bool:
    """Whether it begins with what it names: "3 kg in the shed?"."""
    own = (norm for i, norm in enumerate(message.norms) if i not in message.bot and norm != ",")
    return next(own, "") not in SMALL | OPENING


def is_only(message: Message, held: frozenset[int], words: frozenset[str] = SMALL) -> bool:
    """Whether nothing else is said than what is held and such words."""
    held |= frozenset(message.bot)
    start = next((i for i, norm in enumerate(message.norms) if norm not in OPENING), 0)
    return words.issuperset(unheld(message.norms, held, start))


def with_named(asked: Ask, message: Message) -> Ask | None:
    """ "And for 3 kg?", "for pots?", "and the yard?": what is named, in the place of its like."""
    alike = _ALIKE.get(asked.topic, frozenset())
    if message.has(alike) and is_only(message, frozenset(), SMALL | alike):
        return asked
    of_food = not (asked.topic == "dilution" and message.has(PLANTS)) and _names_only(message)
    if asked.topic in _OF_AMOUNTS and not message.measured() and of_food:
        return None
    if (many := _so_many(asked, message)) is not None:
        return many
    if (other := _the_other(asked, message)) is not None:
        return other
    if asked.topic == "bins":
        told = _how_many(asked, message)
    elif asked.topic == "trench" and asked.bin and message.has(_HALF):
        told = _half_of(asked.bin, message)
    else:
        told = _told(asked.topic, message)
    if not told:
        return None
    return _joined(asked, told, message) or _overlaid(asked, told, message)


def _joined(asked: Ask, told: Mapping[str, object], message: Message) -> Ask | None:
    """ "And with 1 kg of meat?": what is weighed comes to the scraps that were weighed before."""
    more = Ask(topic=asked.topic, **told)  # type: ignore[arg-type]
    if "with" not in message.said or not (more.mass_kg and more.materials):
        return None
    if not (asked.mass_kg and asked.materials):
        return None
    whole = asked.mass_kg + more.mass_kg
    shares: dict[Kind, float] = {}
    for part in (asked, more):
        for kind, share in (part.materials or {}).items():
            shares[kind] = shares.get(kind, 0.0) + share * (part.mass_kg or 0.0) / whole
    return replace(asked, mass_kg=whole, materials=shares, rich=None, what=None)


def _the_other(asked: Ask, message: Message) -> Ask | None:
    """ "And the other one?", of the bin asked about, where there are two."""
    others = {name for name in message.context.bins if name not in message.context.retired}
    if asked.bin not in others or asked.topic not in _OF_BINS or len(others) != 2:
        return None
    if "other" not in message.said or not is_only(message, frozenset(), SMALL | _OTHER):
        return None
    return replace(asked, bin=min(others - {asked.bin}))


_OTHER = words_in("other one bin no")


def _so_many(asked: Ask, message: Message) -> Ask | None:
    """ "And for 3 bins?": what was measured of one is of each; else so many full ones.

    A number alone counts bins where bins were counted before.
    """
    counted = bins_counted(message, 0, len(message.norms))
    if counted is None and asked.count and not message.amounts:
        at = next((i for i, norm in enumerate(message.norms) if norm not in SMALL | OPENING), 0)
        counted = read_number(message.words, at)
    if counted is None or asked.topic not in _OF_COUNTED:
        return None
    if not is_only(message, frozenset(range(counted.start, counted.end))):
        return None
    return replace(
        asked,
        count=counted.value,
        bin=None,
        bins=(),
        each=None,
        what=asked.what if asked.topic == "dose" else None,
    )


_OF_COUNTED: frozenset[Topic] = frozenset(("dose", "trench"))


def _names_only(message: Message) -> bool:
    """ "Bones ok?", "what about egg shells?": whether they may go in is asked."""
    return is_bare(message) or (bool(message.items) and "about" in message.said)


def _told(topic: Topic, message: Message) -> Mapping[str, object]:
    """The fields of a question on that topic that the words name; none if they say more."""
    if not is_only(message, _held(topic, message), _WORDS.get(topic, SMALL)):
        return {}
    if message.has(_FULL) and not message.has(_HALF):
        return {}
    q = question_of(message)
    told = filled(q, topic)
    if topic == "due":
        first, on = days_asked(message, q.start, q.end, q.text)
        whose = message.members[0].name if message.members else None
        told = replace(told, first=first, on=on, member=whose)
    elif topic in _OF_SCRAPS and message.items and told.materials is None:
        # "For meat" is read as what something is for, and so as no scraps
        made = makeup([item._replace(absent=False) for item in message.items])
        told = replace(
            told,
            materials=made.shares if made else None,
            rich=made.rich if made else None,
            mass_kg=_sum(q.amounts("mass")),
            what=told.what if topic == "allowed" else one_food(message.items),
        )
    elif topic == "bran":
        told = replace(told, mass_kg=_sum(q.amounts("mass")), volume_l=_sum(q.amounts("volume")))
    return _fields(told)


def _sum(amounts: Sequence[float]) -> float | None:
    return sum(amounts) if amounts else None


def _half_of(bin: str, message: Message) -> Mapping[str, object]:
    """ "What if it's only half full?", of a bin: read behind its name; none if no part is told."""
    if not is_only(message, frozenset(), _WORDS["trench"]):
        return {}
    said = f"how long a trench for {bin}, {message.text(0, len(message.norms))}"
    q = question_of(read_message(said, message.context))
    told = _fields(filled(q, "trench"))
    return told if "what" in told else {}


_HALF = words_in("half")


def _how_many(asked: Ask, message: Message) -> Mapping[str, object]:
    """What is told anew of how many bins are wanted, read behind the words that ask for them."""
    norms = message.norms
    start = next((i for i, norm in enumerate(norms) if norm not in SMALL | OPENING), 0)
    end = len(norms) - (norms[-1] == "?")
    number = read_number(message.words, start)
    counted = f" {asked.what or 'people'}" if number is not None and number.end == end else ""
    said = f"how many bins do we need for {message.text(start, end)}{counted}"
    found = asks_how_many(question_of(read_message(said, message.context)))
    return {} if found is None else _fields(found)


def _held(topic: Topic, message: Message) -> frozenset[int]:
    """The words of what such a question has a place for."""
    held = indexes(message.amounts)
    if topic in _OF_SCRAPS:
        held |= indexes(message.items)
    if topic in _OF_BINS:
        held |= indexes(b for b in (*message.bins, *message.named) if b.known)
    if topic in _OF_MEMBERS:
        held |= indexes(message.members, message.days)
    return held


def _fields(asked: Ask) -> Mapping[str, object]:
    """What is told in a question, by the names of its fields."""
    values = {item.name: getattr(asked, item.name) for item in fields(asked)}
    return {
        name: value
        for name, value in values.items()
        if name not in ("topic", "rules") and value not in (None, ())
    }


def _overlaid(asked: Ask, told: Mapping[str, object], message: Message) -> Ask:
    """The question with what is told anew, each thing in the place of its like."""
    if asked.topic == "dilution" and not message.has(LIQUID | {"water"}):
        told = _in_its_place(asked, told, message)
    gone = set[str]()
    for like in _INSTEAD.get(asked.topic, ()):
        gone |= like if not like.isdisjoint(told) else set()
    if asked.topic == "dilution" and len(told.keys() & _DILUTED) == 1:
        both = asked.water_l is not None and asked.liquid_l is not None
        gone |= set() if both else set(_DILUTED)
    without = {item.name: item.default for item in fields(asked) if item.name in gone}
    return replace(asked, **{**without, **told})  # type: ignore[arg-type]


def _in_its_place(asked: Ask, told: Mapping[str, object], message: Message) -> Mapping[str, object]:
    """An amount that is called neither liquid nor water: the one that was told before, or what the
    vessel holds where it is "in" one.
    """
    amounts = {"water_l", "liquid_l"} & told.keys()
    before = [name for name in _DILUTED if getattr(asked, name) is not None]
    if len(amounts) != 1 or len(before) != 1:
        return told
    rest = {name: value for name, value in told.items() if name not in amounts}
    place = "water_l" if message.has(_WITHIN) else before[0]
    return {**rest, place: told[amounts.pop()]}


_WITHIN = words_in("in into inside")
_DILUTED = ("water_l", "liquid_l", "total_l")
