"""What a few words change of the question that was asked last: "and for meat?", "and twice that?".

They count only where nothing else is said in them and the question's own reading finds something
that it has a place for. What they ask is that question anew, so that nothing is written down.
"""

from collections.abc import Mapping, Sequence
from dataclasses import fields, replace

from handlers.reading.acts import Act, Ask, Drain, Topic
from handlers.reading.amending import plain_text
from handlers.reading.briefly import PLANTS
from handlers.reading.duequestions import days_asked
from handlers.reading.fewwords import TIMES
from handlers.reading.howmany import asks_how_many
from handlers.reading.items import one_food
from handlers.reading.late import Late
from handlers.reading.makeups import makeup
from handlers.reading.message import LIQUID, Message, read_message
from handlers.reading.numbers import read_number
from handlers.reading.questions import filled, is_why, question_of
from handlers.reading.severally import each_asked
from handlers.reading.spans import indexes
from handlers.reading.vocabulary import words_in

LONGEST, _LETTERS = 12, 120
"""Words and letters of a message that may lean so; a longer one asks for itself."""

_LEADS = words_in("and so then but or what how now")
_OPENING = words_in("ok okay thanks great")
"""What such a message may only begin with."""
_SMALL = _LEADS | words_in(
    "for in on with of from to about if a an the it its it's is are 's be was were that this there "
    "only just instead please pls bot we i you use used have has had got do does too say under "
    "into ? , . ! : -"
)
_AMOUNT = words_in("as much many amount full times can bin bucket")
_TIME = words_in("this last next week weekend month year")
_WITHOUT = words_in("without no minus")
_UNASKED = Late(
    r"^(?:(?:ok|okay|thanks|great|,) )*(?:(?:(?:and |but )?for|(?:and|but) (?:in|with|without|if|"
    r"on)|what if|(?:and )?(?:what|how) about)\b|(?:and )?(?:double|twice|half|three times)"
    r"(?: of)? that$)"
)
"""How it asks without its sign."""
_SCALED = ("mass_kg", "volume_l", "water_l", "liquid_l", "area_m2", "week_kg", "people")
_OF_BINS: frozenset[Topic] = frozenset(
    ("dose", "due", "bin", "trench", "bed", "trouble", "totals", "custody", "full", "liquid",
     "moisture", "carbon")
)  # fmt: skip
"""What may be asked of one bin and then of another."""
_OF_MEMBERS: frozenset[Topic] = frozenset(("totals", "due"))
_OF_SCRAPS: frozenset[Topic] = frozenset(("dose", "allowed", "moisture", "carbon"))
_WORDS: Mapping[Topic, frozenset[str]] = {
    "dilution": _SMALL | PLANTS | LIQUID | words_in("water can"),
    "totals": _SMALL | _TIME,
    "trench": _SMALL
    | words_in("half full deep wide long cover foxes fox rats dogs dog badgers animals dig"),
    "due": _SMALL | _TIME,
}
"""What else may be said in it, by topic."""
_ALIKE: Mapping[Topic, frozenset[str]] = {
    "dose": words_in("winter summer cold warm hot weather"),
    "batch": words_in("rice wheat oat bran"),
}
"""What may be named with a question whose answer does not go by it: it is the same again."""
_MUCH = frozenset(("mass_kg", "volume_l", "depth_m"))
_MAKE_UP = frozenset(("materials", "rich"))
_INSTEAD: Mapping[Topic, Sequence[frozenset[str]]] = {
    "dose": (_MUCH, _MAKE_UP),
    "trench": (_MUCH | {"bin"},),
    "bed": (_MUCH | {"bin"},),
    "batch": (_MUCH,),
    "moisture": (_MUCH | {"bin"}, _MAKE_UP | {"what", "bin"}),
    "carbon": (_MUCH | {"bin"}, _MAKE_UP | {"what", "bin"}),
    "allowed": (_MAKE_UP | {"what"},),
    "dilution": (frozenset(("use", "parts")),),
    "bins": (frozenset(("people", "week_kg", "days", "volume_l", "what")),),
}
"""Of these fields of a question, those that are told anew take the place of all."""
_FIRST = _LEADS | _OPENING | TIMES.keys() | {"for", "three"}
_RULE = ("the question asked last, changed by a few words",)


def may_follow(body: str) -> bool:
    """Whether a message is so short and so formed that it may change the question before it."""
    words = body.casefold().split() if len(body) <= _LETTERS else []
    return 0 < len(words) <= LONGEST and ("?" in body or words[0] in _FIRST)


def asked_again(message: Message) -> tuple[Act, ...]:
    """The question asked last with what the words change of it; none if they say anything else."""
    context = message.context
    if len(message.norms) > LONGEST + len(message.bot) or not _asks(message):
        return ()
    if so_much := _so_much(message):
        return (so_much,)
    if context.asked and is_why(message):
        return (Ask(topic="why", rules=_RULE),)
    for asked in reversed(context.asked):
        changed = _times(asked, message) or _without(asked, message) or _other(asked, message)
        if changed is not None:
            return tuple(each_asked([replace(changed, rules=_RULE)], message))
    return ()


def _asks(message: Message) -> bool:
    """Whether it is asked as a whole: "3 kg in the shed, ok?" tells something."""
    norms = message.norms
    if not any(sentence.asked for sentence in message.sentences):
        return _UNASKED.search(plain_text(message)) is not None
    if norms[-2:-1] in ([","], ["."]) or (message.amounts and message.bins and _is_bare(norms)):
        return False
    told = [s for s in message.sentences if not s.asked]
    return all(_OPENING.issuperset(norms[s.start : s.end - 1]) for s in told)


def _is_bare(norms: Sequence[str]) -> bool:
    """Whether it begins with what it names: "3 kg in the shed?"."""
    return norms[0] not in _SMALL | _OPENING


def _only(message: Message, held: frozenset[int], words: frozenset[str] = _SMALL) -> bool:
    """Whether nothing else is said than what is held and such words."""
    held |= frozenset(message.bot)
    start = next((i for i, norm in enumerate(message.norms) if norm not in _OPENING), 0)
    return all(i < start or i in held or n in words for i, n in enumerate(message.norms))


_SO_MUCH = Late(
    r"^(?:(?:and|so|hm+|but|,) )*(?:is|was|isnt|isn't) (?:that|it|this) (?:not )?(?:too much|"
    r"too little|a lot|much|enough|normal|usual|ok|okay|all right|alright|fine)(?: then)?$"
)


def _so_much(message: Message) -> Ask | None:
    """ "Is that too much?" behind what was drained."""
    last = message.context.last
    if not isinstance(last, Drain) or message.bins or not _SO_MUCH.search(plain_text(message)):
        return None
    return Ask(topic="liquid", bin=last.bin, rules=_RULE)


def _times(asked: Ask, message: Message) -> Ask | None:
    """ "And twice that?", "what if it's only half full?": all that was measured, so many times."""
    told = [name for name in _SCALED if getattr(asked, name) is not None]
    if not told or ("water_l" in told and "liquid_l" in told):
        return None
    at = next((i for i, norm in enumerate(message.norms) if norm not in _SMALL | _AMOUNT), None)
    if at is None:
        return None
    factor, end = TIMES.get(message.norms[at]), at + 1
    if factor is None:
        number = read_number(message.words, at)
        if number is None or message.norms[number.end : number.end + 1] not in (["times"], ["of"]):
            return None
        factor, end = number.value, number.end
    if factor <= 0 or not _only(message, frozenset(range(at, end)), _SMALL | _AMOUNT):
        return None
    return replace(asked, **{name: getattr(asked, name) * factor for name in told})


def _without(asked: Ask, message: Message) -> Ask | None:
    """ "And without the meat?": what is left of the scraps."""
    if not asked.materials or not message.items or not message.has(_WITHOUT):
        return None
    if not _only(message, indexes(message.items), _SMALL | _WITHOUT):
        return None
    gone = {kind for item in message.items for kind, _ in item.food.shares}
    kept = {kind: share for kind, share in asked.materials.items() if kind not in gone}
    left = sum(kept.values())
    if not left or len(kept) == len(asked.materials):
        return None
    return replace(
        asked,
        mass_kg=None if asked.mass_kg is None else asked.mass_kg * left,
        volume_l=None if asked.volume_l is None else asked.volume_l * left,
        materials={kind: share / left for kind, share in kept.items()},
        rich=None,
    )


def _other(asked: Ask, message: Message) -> Ask | None:
    """ "And for 3 kg?", "for pots?", "and the yard?": what is named, in the place of its like."""
    if message.has(_WITHOUT):
        return None
    alike = _ALIKE.get(asked.topic, frozenset())
    if message.has(alike) and _only(message, frozenset(), _SMALL | alike):
        return asked
    told = _how_many(asked, message) if asked.topic == "bins" else _told(asked.topic, message)
    return _overlaid(asked, told, message) if told else None


def _told(topic: Topic, message: Message) -> Mapping[str, object]:
    """The fields of a question on that topic that the words name; none if they say more."""
    if not _only(message, _held(topic, message), _WORDS.get(topic, _SMALL)):
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
        masses = q.amounts("mass")
        told = replace(
            told,
            materials=made.shares if made else None,
            rich=made.rich if made else None,
            mass_kg=sum(masses) if masses else None,
            what=told.what if topic == "allowed" else one_food(message.items),
        )
    return _fields(told)


def _how_many(asked: Ask, message: Message) -> Mapping[str, object]:
    """What is told anew of how many bins are wanted, read behind the words that ask for them."""
    norms = message.norms
    start = next((i for i, norm in enumerate(norms) if norm not in _SMALL | _OPENING), 0)
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
        told = _in_its_place(asked, told)
    gone = set[str]()
    for like in _INSTEAD.get(asked.topic, ()):
        gone |= like if not like.isdisjoint(told) else set()
    if asked.topic == "dilution" and len({"water_l", "liquid_l"} & told.keys()) == 1:
        both = asked.water_l is not None and asked.liquid_l is not None
        gone |= set() if both else {"water_l", "liquid_l"}
    return replace(asked, **{**dict.fromkeys(gone), **told})  # type: ignore[arg-type]


def _in_its_place(asked: Ask, told: Mapping[str, object]) -> Mapping[str, object]:
    """An amount that is called neither liquid nor water: what was told of the two before."""
    amounts = [told[name] for name in ("water_l", "liquid_l") if name in told]
    if len(amounts) != 1 or asked.liquid_l is None or asked.water_l is not None:
        return told
    rest = {name: value for name, value in told.items() if name not in ("water_l", "liquid_l")}
    return {**rest, "liquid_l": amounts[0]}
