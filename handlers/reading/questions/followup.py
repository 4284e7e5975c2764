"""What a few words change of the question that was asked last: "and for meat?", "and twice that?".

They count only where nothing else is said in them and the question's own reading finds something
that it has a place for. What they ask is that question anew, so that nothing is written down.
"""

from dataclasses import fields, replace

from handlers.practice.dilution_words import use_said
from handlers.reading.acts import Act, Ask, Batch, Drain, Layer
from handlers.reading.corrections.fewwords import TIMES
from handlers.reading.corrections.numberright import number_meant
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message, read_message
from handlers.reading.plaintext import plain_text
from handlers.reading.questions.askedanew import LEADS, OPENING, SMALL, is_bare, is_only, with_named
from handlers.reading.questions.asks import is_why
from handlers.reading.questions.briefly import PLANTS
from handlers.reading.questions.inunits import in_other_units
from handlers.reading.questions.severally import each_asked
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

LONGEST, _LETTERS = 12, 120
"""Words and letters of a message that may lean so; a longer one asks for itself."""
_FEWEST = 2
"""Words of a message that may lean so however it is worded: "paper towels"."""

_AMOUNT = words_in("as much many amount full times can bin bucket")
_WITHOUT = words_in("without no minus")
_UNASKED = Late(
    r"^(?:(?:ok|okay|thanks|great|,) )*(?:(?:(?:and |but )?for|(?:and|but) (?:in|with|without|if|"
    r"on)|what if|(?:and )?(?:what|how) about)\b|(?:and )?(?:double|twice|half|three times)"
    r"(?: of)? that$)"
)
"""How it asks without its sign."""
_SCALED = frozenset(
    ("mass_kg", "volume_l", "water_l", "liquid_l", "total_l", "area_m2", "week_kg", "people")
)
_REFUSING = words_in("no nope nah sorry oops wait mean meant actually make")
_RIGHTING = _REFUSING | words_in("oh i it its is 's that , . ! -")
_FURTHER = words_in("and plus also with + &")
_WAS = words_in("was were")
_FIRST = (
    LEADS
    | OPENING
    | TIMES.keys()
    | _REFUSING
    | _FURTHER
    | words_in("for how three i in what's what’s whats now can could would")
    | words_in("we i've we've counted weighed checked bought got spilled spilt dropped")
)
_RULE = ("the question asked last, changed by a few words",)


def may_follow(body: str) -> bool:
    """Whether a message is so short and so formed that it may change the question before it."""
    words = body.casefold().split() if len(body) <= _LETTERS else []
    return 0 < len(words) <= LONGEST and (
        "?" in body
        or len(words) <= _FEWEST
        or words[0].rstrip(",.!") in _FIRST
        or body.lstrip()[:1].isdecimal()
    )


def asked_again(message: Message) -> tuple[Act, ...]:
    """The question asked last with what the words change of it; none if they say anything else."""
    context = message.context
    if of_use := _to_use(message):
        return (of_use,)
    if len(message.norms) > LONGEST + len(message.bot):
        return ()
    if in_units := in_other_units(message):
        return tuple(replace(asked, rules=_RULE) for asked in in_units)
    if of_batch := _of_batch(message):
        return (replace(of_batch, rules=_RULE),)
    if not context.asked:
        return _so_much(message) or _of_drawn(message)
    if is_why(message):
        return (Ask(topic="why", rules=_RULE),)
    if message.norms in _NOW:
        return tuple(replace(asked, rules=_RULE) for asked in context.asked)
    if right := _told_of_question(message):
        return (replace(right, rules=_RULE),)
    return _changed_by(message) if _asks(message) else ()


_NOW = (["and", "now", "?"], ["and", "now"], ["now", "?"], ["so", "now", "?"])
"""What asks the same again, since something was told."""


def _changed_by(message: Message) -> tuple[Act, ...]:
    """What the words, which ask, change of the questions asked before."""
    context = message.context
    several = [_times(asked, message) for asked in context.asked]
    if (scaled := [act for act in several if act]) and len(scaled) == len(several):
        return tuple(replace(act, rules=_RULE) for act in scaled)
    for asked in reversed(context.asked):
        if (changed := _changed(asked, message)) is not None:
            return tuple(each_asked([replace(changed, rules=_RULE)], message))
    return ()


def _told_of_question(message: Message) -> Ask | None:
    """ "No, 3 kg", "and 1 kg of fish": what is told of the amount that was asked of, and of no
    record."""
    for asked in message.context.asked:
        if not _is_of_last(asked, message):
            return _put_right(asked, message) or _and_more(asked, message)
    return None


def _is_of_last(asked: Ask, message: Message) -> bool:
    """Whether it was asked of no amount, or of that of the record which the talk is on."""
    last = message.context.last
    if not any(getattr(asked, name) for name in _MEASURED):
        return True
    if not isinstance(last, Layer) or asked.materials not in (None, last.materials):
        return False
    return (asked.mass_kg, asked.volume_l) == (last.mass_kg, last.volume_l)


_MEASURED = ("mass_kg", "volume_l", "water_l", "liquid_l")


def _put_right(asked: Ask, message: Message) -> Ask | None:
    """ "No, 3 kg", "sorry, 3": another amount in the place of the one that was asked of."""
    norms = message.norms
    at = next((i for i, norm in enumerate(norms) if norm not in _RIGHTING), len(norms))
    if at == len(norms) or _REFUSING.isdisjoint(norms[:at]) or message.bins:
        return None
    if message.has(_WAS):
        return None  # "no, the rice was 3 kg" is of what went in
    rest = read_message(message.text(at, len(norms)), message.context)
    if rest.measured():
        return with_named(asked, rest)
    number = read_number(message.words, at)
    if number is None or number.word or {*norms[number.end :]} - {".", "!"}:
        return None
    like = Layer(mass_kg=asked.mass_kg, volume_l=asked.volume_l)
    meant = number_meant(number.value, replace(rest, context=replace(rest.context, last=like)))
    if meant is None:
        return None
    return replace(asked, mass_kg=meant.mass_kg, volume_l=meant.volume_l)


def _and_more(asked: Ask, message: Message) -> Ask | None:
    """ "And 1 kg of fish", "plus 2 kg of rice": it comes to the scraps that were asked of."""
    norms, items = message.norms, [item for item in message.items if not item.generic]
    at = next((i for i, norm in enumerate(norms) if norm not in _FURTHER), 0)
    if not at or not items or len(message.measured()) != 1 or message.bins or "?" in norms:
        return None
    if not asked.mass_kg or any(clause.verb is not None for clause in message.clauses):
        return None
    whole = replace(asked, materials=asked.materials or {"mixed": 1.0})
    with_it = read_message(f"with {message.text(at, len(norms))}", message.context)
    return with_named(whole, with_it)


def _changed(asked: Ask, message: Message) -> Ask | None:
    """The question with what the words change of it."""
    if message.has(_WITHOUT):
        return _without(asked, message)
    return _times(asked, message) or with_named(asked, message)


def _asks(message: Message) -> bool:
    """Whether it is asked as a whole: "3 kg in the shed, ok?" tells something."""
    norms = message.norms
    if _ASKS_ITSELF.search(plain_text(message)):
        return False
    if not message.asked:
        unasked = _UNASKED.search(plain_text(message)) is not None
        return unasked or _is_amount(message) or _is_next_food(message)
    if norms[-2:-1] in ([","], ["."]) or (message.bins and is_bare(message)):
        return False
    told = [s for s in message.sentences if not s.asked]
    much = indexes(message.amounts)
    return all(_BESIDE.issuperset(unheld(norms, much, s.start, s.end)) for s in told)


_BESIDE = OPENING | words_in("can cans bucket buckets it its it's is 's a the in of with , . ! -")
"""What may stand beside the question, with an amount: "and for pots? It's a 5 litre can"."""


def _is_amount(message: Message) -> bool:
    """ "4 kg", right behind what was asked of another amount."""
    return len(message.measured()) == 1 and is_only(message, indexes(message.amounts), frozenset())


def _is_next_food(message: Message) -> bool:
    """ "And bones", "oil", right behind the question whether another may go in."""
    asked = any(one.topic == "allowed" and not one.at_most for one in message.context.asked)
    if not asked or not message.items or message.amounts or message.bins:
        return False
    return len(message.norms) <= _NEXT_FOOD and is_only(message, indexes(message.items))


_NEXT_FOOD = 4
_ASKS_ITSELF = Late(
    r"^(?:is|are|was|were|do|does|did|has|have|had|got|say|used)\b|, is (?:that|this|it)$|"
    r"\b(?:what|how)\b(?! (?:about|if|for|of|with)\b)"
)
"""A question of its own, which leans on none before it."""


_SO_MUCH = Late(
    r"^(?:(?:and|so|hm+|but|,) )*(?:is|was|isnt|isn't) (?:that|it|this) (?:not )?(?:too much|"
    r"too little|a lot|much|enough|normal|usual|ok|okay|all right|alright|fine)(?: then)?$"
)


def _so_much(message: Message) -> tuple[Act, ...]:
    """ "Is that too much?" behind what was drained."""
    last = message.context.last
    if not isinstance(last, Drain) or message.bins or not _SO_MUCH.search(plain_text(message)):
        return ()
    return (Ask(topic="liquid", bin=last.bin, rules=_RULE),)


def _of_drawn(message: Message) -> tuple[Act, ...]:
    """ "How much water?", "and for pots?", "house plants?" behind what was drained."""
    last = _drawn_last(message)
    if last is None:
        return ()
    if _WATER.search(plain_text(message)):
        return (Ask(topic="dilution", liquid_l=last.volume_l, rules=_RULE),)
    if not message.has(PLANTS) or not (_asks(message) or _UNASKED.search(plain_text(message))):
        return ()
    thinned = with_named(Ask(topic="dilution"), message)
    return (replace(thinned, rules=_RULE),) if thinned and thinned.use else ()


def _drawn_last(message: Message) -> Drain | None:
    """What was just drained, where no bin is named and the words may be of that."""
    told = (message.context.last, message.context.just_told)
    return next((act for act in told if isinstance(act, Drain) and not message.bins), None)


def _to_use(message: Message) -> Ask | None:
    """ "What can I do with it? I have roses", behind what was drained."""
    last = _drawn_last(message)
    asked = next((one for one in message.context.asked if one.topic == "dilution"), None)
    use = use_said(message.norms) if last or asked else None
    if use is None or message.bins or _TO_USE.search(plain_text(message)) is None:
        return None
    if asked:
        return replace(asked, use=use, rules=_RULE)
    return Ask(topic="dilution", liquid_l=last.volume_l if last else None, use=use, rules=_RULE)


_TO_USE = Late(
    r"^(?:(?:and|so|ok|but|,) )*how much(?: (?:of (?:it|that)|juice|liquid|do|should|can|would|i|"
    r"we|you|give|need|use|put|pour))* (?:for|on|to) |"
    r"\b(?:what (?:can|do|should|could|shall) (?:i|we) do with (?:it|that|this)|"
    r"(?:any|some) use for (?:it|that|this)|"
    r"(?:can|could|may|should|shall) (?:i|we) (?:use|put|pour|give|feed) (?:it|that|this)|"
    r"(?:would|will|do|does|can|could) .{1,40}\b(?:like|love|want|have|stand|take) (?:it|that|this|"
    r"some))\b"
)
"""What is asked of the liquid just drained, while a plant is named beside it."""

_NEEDED = (
    r"(?: (?:(?:do|does|did|should|must|will|would) (?:we|i|it|that|you)(?: (?:need|want|take|use|"
    r"add|put|have))?|(?:we|i|you|it) (?:must|should|need|needs|have|has|want)(?: to)?"
    r"(?: (?:add|put|use|have|mix in|take))?|goes|is needed|to that|to it|with it|with that|"
    r"for it|for that|then|in|on))*"
)
_WATER = Late(rf"^(?:(?:and|so|ok|but|,) )*(?:how much|what about) water{_NEEDED}$")
_MADE_WITH = Late(
    rf"^(?:(?:and|so|ok|but|,) )*(?:how much )?(?:the )?(?:water|molasses|jaggery|sugar|culture|em)"
    rf"{_NEEDED}$"
)
_MADE = Late(
    r"^(?:(?:and|so|ok|but|,) )*how (?:do|can|should|would) (?:we|i|you) make (?:it|some|more|some "
    r"more|our own|that|new|a batch|a new batch)$"
)
_MADE_OF = Late(
    r"^(?:(?:and|so|ok|but|,) )*(?:what (?:do|would) (?:we|i) need|how much (?:do|would) (?:we|i) "
    r"need|and|what about|how about) (?:for|with) .{1,20}$|"
    r"^(?:and )?for .{1,12}(?: (?:of )?bran)?$|"
    r"^(?:(?:ok|so|well|and|but|,) )*(?:i|we)(?: (?:'ve|have|only|just|got))+ .{1,20} bran"
    r"(?: (?:here|to hand|at home|in the shop|for it))?$"
)


def _of_batch(message: Message) -> Ask | None:
    """ "And water?", "what do we need for 5 kg?", "how do we make it?", of starter asked about."""
    context, text = message.context, plain_text(message)
    last = context.last if isinstance(context.last, Batch) else None
    asked = next((one for one in context.asked if one.topic == "batch"), None)
    if asked is None and last is not None:
        asked = Ask(topic="batch", mass_kg=last.mass_kg, volume_l=last.volume_l)
    of_bran = asked or any(one.topic in ("starter", "bran") for one in context.asked)
    if of_bran and _MADE.search(text):
        return asked or Ask(topic="batch")
    if asked is None or message.bins or message.items:
        return None
    if _MADE_WITH.search(text):
        return asked
    if _MADE_OF.search(text) is None or len(measured := message.measured()) > 1:
        return None
    if measured and measured[0].quantity in ("mass", "volume"):
        weighed, value = measured[0].quantity == "mass", measured[0].value
        return replace(
            asked, mass_kg=value if weighed else None, volume_l=None if weighed else value
        )
    at = next((i for i, norm in enumerate(message.norms) if norm == "for"), len(message.norms)) + 1
    number = read_number(message.words, at) if at < len(message.norms) else None
    if number is None or number.word or {*message.norms[number.end :]} - {"?", ".", "!"}:
        return None
    return replace(asked, mass_kg=number.value) if asked.mass_kg else None


def _times(asked: Ask, message: Message) -> Ask | None:
    """ "And twice that?", "what if it's only half full?": all that was measured, so many times."""
    named = [item.name for item in fields(asked) if item.name in _SCALED]
    told = [name for name in named if getattr(asked, name) is not None]
    if not told or ("water_l" in told and "liquid_l" in told):
        return None
    at = next((i for i, norm in enumerate(message.norms) if norm not in SMALL | _AMOUNT), None)
    if at is None:
        return None
    factor, end = TIMES.get(message.norms[at]), at + 1
    if factor is None:
        number = read_number(message.words, at)
        if number is None or message.norms[number.end : number.end + 1] not in (["times"], ["of"]):
            return None
        factor, end = number.value, number.end
    if factor <= 0 or not is_only(message, frozenset(range(at, end)), SMALL | _AMOUNT):
        return None
    return replace(asked, **{name: getattr(asked, name) * factor for name in told})


def _without(asked: Ask, message: Message) -> Ask | None:
    """ "And without the meat?": what is left of the scraps."""
    if not asked.materials or not message.items:
        return None
    if not is_only(message, indexes(message.items), SMALL | _WITHOUT):
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
