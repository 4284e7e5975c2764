"""How much starter goes on scraps: the figures of a question about it."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.practice.density import capacity_kg
from handlers.reading.acts import Ask, Layer
from handlers.reading.completion.unlike import made_of, things_of_each
from handlers.reading.food.items import Item, one_food
from handlers.reading.food.makeups import makeup
from handlers.reading.food.ofwhat import called_behind, of_what
from handlers.reading.food.quantities import part_at
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.questions.bincounts import bins_counted
from handlers.reading.questions.ofthelayer import OF_TALK
from handlers.reading.questions.question import Question
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_LEANING = words_in("that this it those them")
_POINTING = words_in("that those them")
_FILLING = words_in("fill filling")


def dose_of(q: Question, name: str | None) -> Ask:
    """The question with the scraps that it is asked of; `name` is their bin.

    Told only in a room: what is asked of the bottom or the top of a bin, how deep a layer is, and a
    volume of other things beside a weight, of which `severally` makes a question of its own.
    """
    in_room, rule = q.message.context.in_room, ("asks about dose",)
    if in_room and (end := _end(q)):
        sizes = [a.value for a in q.message.amounts if a.quantity == "volume" and _is_bin(a)]
        size = sizes[0] if sizes else None
        return Ask(topic="dose", what=end, capacity_l=size, bin=name, rules=rule)
    masses = _amounts_of_scraps(q, "mass")
    volumes = _amounts_of_scraps(q, "volume")
    if masses:
        volumes = _of_other_things(q, masses, volumes) if in_room else []
    masses, items = _with_parts(q, masses)
    made = makeup(items)
    mass, volume = _sum(masses), _sum(volumes)
    if mass is None and volumes and q.has(_FILLING) and in_room:
        # "To fill a 20 L bin": what it holds pressed, far more than one loose layer
        mass, volume = capacity_kg(volumes[0].value, None if made is None else made.shares), None
    depth, width = _depth(q) if in_room and mass is volume is None else (None, None)
    bare = made is None and mass is volume is depth is None
    counted = bins_counted(q.message, q.start, q.end) if bare and in_room else None
    if bare and counted is None and (leaning := _of_last_layer(q)):
        return leaning
    pointing = in_room and bare and counted is None and q.has(_POINTING)
    act = Ask(
        topic="dose",
        mass_kg=mass,
        volume_l=volume,
        materials=None if made is None else made.shares,
        rich=None if made is None else made.rich,
        depth_m=depth,
        width_m=width,
        count=counted.value if counted else None,
        what=OF_TALK if pointing else "cups" if in_room and _IN_CUPS.search(q.text) else None,
        bin=name,
        rules=rule,
    )
    return _by_amounts(act, q, masses or volumes)


def _of_last_layer(q: Question) -> Ask | None:
    """ "How much bran on that?": on what was just added."""
    last = q.message.context.last
    if not isinstance(last, Layer) or not (q.has(_LEANING) or _is_of_last(q.message, last)):
        return None
    return dose_on(last)


def dose_on(layer: Layer) -> Ask:
    """How much starter goes on a layer that was told."""
    return Ask(
        topic="dose",
        mass_kg=layer.mass_kg,
        volume_l=layer.volume_l,
        materials=layer.materials,
        rich=layer.rich,
        bin=layer.bin,
        rules=(ON_THAT,),
    )


ON_THAT = "asks about the dose on what was just added"


_BARELY = Late(
    r"^(?:(?:and|so|ok|okay|then|now|,) )*how (?:much|many (?:table)?spoons(?: of)?) "
    r"(?:bran|starter)(?: (?:then|now|please|,|(?:do|should|shall) (?:i|we) (?:use|add|need|"
    r"put on)|to (?:add|use)|does it (?:need|want)|for (?:the|this|my) layer))*$"
)


def _is_of_last(message: Message, last: Layer) -> bool:
    """ "How much bran?" and no more, right behind what the sender has just put in."""
    own = last.member in (None, message.context.sender)
    return own and message.context.in_room and _BARELY.search(plain_text(message)) is not None


_IN_CUPS = Late(r"\bin (?:\w+ )?cups\b|\b(?:how )?many cups of (?:\w+ )?(?:bran|starter)\b")


def _with_parts(q: Question, masses: Sequence[Amount]) -> tuple[list[Amount], list[Item]]:
    """The weights without those of a part, and the things with its share: "500 g of it fish"."""
    parts = {at: a for a in masses if (at := part_at(q.message, a))}
    wholes = [a for a in masses if a not in parts.values()]
    whole = sum(a.value for a in wholes)
    if not parts or not all(a.value < whole for a in parts.values()):
        return list(masses), q.items()
    shares = {at: a.value / whole for at, a in parts.items()}
    return wholes, [
        item._replace(share=shares[item.start], vague=False) if item.start in shares else item
        for item in q.items()
    ]


def of_scraps(act: Ask, q: Question) -> Ask:
    """The question with the scraps that are named, behind their amount where they have one."""
    masses, volumes = _amounts_of_scraps(q, "mass"), _amounts_of_scraps(q, "volume")
    start = min((a.start for a in [*masses, *volumes]), default=0)
    items = [item for item in q.items() if item.start >= start] or q.items()
    made = makeup(items)
    if made is None:
        return act
    volume = None if masses else _sum(volumes)
    named = replace(act, materials=made.shares, mass_kg=_sum(masses), volume_l=volume)
    return _by_amounts(replace(named, what=act.what or one_food(items)), q, masses or volumes)


def weighs_scraps(q: Question) -> bool:
    """Whether scraps are named behind their amount, so that no bin of ours need be meant."""
    return any(a.start < item.start for a in q.message.measured() for item in q.items())


def _by_amounts(act: Ask, q: Question, amounts: Sequence[Amount]) -> Ask:
    """The question with its shares by amount, where each of several things has an amount."""
    lots = things_of_each(amounts, q.message) if len(amounts) > 1 else []
    return made_of(act, lots) if lots and all(items for _, items in lots) else act


def _amounts_in(q: Question, quantity: str) -> list[Amount]:
    return [a for a in q.message.amounts if a.quantity == quantity and q.start <= a.start < q.end]


def _amounts_of_scraps(q: Question, quantity: str) -> list[Amount]:
    found = _amounts_in(q, quantity)
    if quantity == "mass":
        return [a for a in found if not _is_of_bran(q, a)]
    return [a for a in found if a.value >= _LEAST_SCRAPS and not a.negative]


def _sum(amounts: Sequence[Amount]) -> float | None:
    return sum(-a.value if a.negative else a.value for a in amounts) if amounts else None


def _of_other_things(
    q: Question, masses: Sequence[Amount], volumes: Sequence[Amount]
) -> list[Amount]:
    """The volumes beside the weights, where each of them all is said of things of its own."""
    lots = things_of_each([*masses, *volumes], q.message)
    return list(volumes) if volumes and all(items for _, items in lots) else []


def _is_of_bran(q: Question, amount: Amount) -> bool:
    """Whether an amount is of bran, and not of what bran is asked for ("how much bran on 2 kg")."""
    if called_behind(q.message, amount) == "bran":
        return True
    asked = q.message.has_in(_ASKS_MUCH, q.start, amount.start)
    return not asked and of_what(q.message, amount) == "bran"


_ASKS_MUCH = words_in("how much many would will does do can kitna cuanto cuanta what")
_LEAST_SCRAPS = 0.2
"""Litres; a smaller volume in a question of dose is that of the bran."""


def _end(q: Question) -> str | None:
    """ "On the bottom", "on top before sealing": where in the bin no scraps are dosed."""
    if not q.has(_ENDS) or q.has(_LYING) or q.amounts("mass") or q.items():
        return None
    if _ON_THE_BOTTOM.search(q.text):
        return "bottom"
    return "top" if _ON_TOP.search(q.text) else None


def _is_bin(amount: Amount) -> bool:
    return amount.size or amount.value >= _LEAST_BIN


_LEAST_BIN = 3.0
"""Litres; no bin is smaller."""
_ENDS = words_in("bottom floor empty top")
_LYING = words_in("left spilled spilt bag sack tin box jar trench hole")
_ON_THE_BOTTOM = Late(
    r"\b(?:on|at|in|for|over|goes on) (?:the )?(?:very )?(?:bottom|floor)\b|"
    r"\b(?:in|into|for) (?:an |the )empty (?:\S+ ){0,3}(?:bin|bucket|pail)\b"
)
_ON_TOP = Late(
    r"\bon (?:the )?(?:very )?top\b.{0,30}\b(?:seal|sealing|sealed|close|closing|shut|shutting)\b|"
    r"\b(?:seal|sealing|close|closing|shut|shutting)\b.{0,30}\bon (?:the )?(?:very )?top\b"
)


def _depth(q: Question) -> tuple[float | None, float | None]:
    """How deep the layer is and how wide its bucket (m): "5 cm in a 30 cm bucket"."""
    lengths = _amounts_in(q, "length")
    wide = [a for a in lengths if not _WIDE.isdisjoint(q.message.norms[a.end : a.end + 1])]
    deep = [a for a in lengths if a not in wide]
    if len(deep) != 1 or len(wide) > 1:
        return None, None
    return deep[0].value, wide[0].value if wide else None


_WIDE = words_in("bucket bin pail tub caddy wide across diameter round")
