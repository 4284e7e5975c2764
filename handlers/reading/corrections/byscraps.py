"""A record called by what it holds, to be struck out or put right: "delete the 1 kg of bread", "the
rice Olu put in on Monday was really 1.5 kg", "it was Len who put the bread in, not me".
"""

from handlers.reading.acts import Amend, Layer, Retract
from handlers.reading.corrections.partright import BY_PART
from handlers.reading.food.makeups import makeup
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

_STRIKING = words_in("strike delete cancel scratch remove erase cross undo")
_RIGHTING = words_in("actually really fact correction sorry oops wrong should")
_PUTTING = words_in("put added add tipped chucked threw dropped brought poured gave")
CUES = _STRIKING | _RIGHTING | {"who", "was", "were"}
"""Words without one of which no record is called so."""
_LEAD = words_in(
    "please pls bot can could you ok okay sorry oops no nope wait actually correction hi hey and "
    "but in fact , : ! . -"
)
_OUT = words_in("out off")
_THE = words_in("the that those my")
_BEING = words_in("was were is be")
_BEHIND = words_in("not really actually only please sorry in fact , . ! about more like and")
RULE = "a record called by what it holds"


def called(message: Message) -> Amend | Retract | None:
    """What is to be struck out or put right, where the record is called by what it holds."""
    if len(message.sentences) != 1 or message.sentences[0].asked or not message.words:
        return None
    norms = message.norms
    at = next((i for i, norm in enumerate(norms) if norm not in _LEAD), len(norms) - 1)
    if norms[at] in _STRIKING:
        return _struck(message, at + 1)
    if not _PUTTING.isdisjoint(norms) and "who" in norms[at : at + 4]:
        return _done_by(message, at)
    if norms[at] not in _THE or not (message.has(_RIGHTING) or _calls_amount(message, at)):
        return None
    return _measured_anew(message, at) or _placed_anew(message, at)


def _calls_amount(message: Message, at: int) -> bool:
    """ "The 3 kg in the shed bin was 2 kg": the record is called by its amount."""
    return any(a.start in (at, at + 1) for a in message.measured()[:1])


def _struck(message: Message, at: int) -> Amend | Retract | None:
    at += message.norms[at : at + 1] != [] and message.norms[at] in _OUT
    if message.norms[at : at + 1] == []:
        return None
    if len(message.measured()) == 2:  # "delete the 2 kg in red, it was 3 kg"
        return _measured_anew(message, at, struck=True) if message.norms[at] in _THE else None
    if not message.measured():
        return _swapped(message, at) or _struck_in(message, at)
    if len(message.measured()) != 1:
        return None
    amount = message.measured()[0]
    if (part := _part_anew(message, at, amount)) is not None:
        return part
    between = message.norms[at + 1 : amount.start]
    if message.norms[at] not in _THE or len(between) > 1 or not all(n.isalpha() for n in between):
        return None
    return Retract(which=_which(message, at, len(message.words)), rules=(RULE,))


_IT_WAS = words_in("it that was is were 's they only just about should be make , :")


def _part_anew(message: Message, at: int, right: Amount) -> Amend | None:
    """ "Scratch the bread, it was 2 kg": the amount of that part, and of no other."""
    items = [item for item in message.items if item.start > at and not item.generic]
    if len(items) != 1 or message.norms[at] not in _THE or items[0].end > right.start:
        return None
    [item], made = items, makeup(items)
    between = message.norms[item.end : right.start]
    if item.start != at + 1 or made is None or not _IT_WAS.issuperset(between):
        return None
    if not {"was", "is", "were", "'s", "be", "make"}.intersection(between):
        return None
    if not _is_all(message, right.start, right):
        return None
    mass = right.value if right.quantity == "mass" else None
    volume = right.value if mass is None else None
    return Amend(
        mass_kg=mass, volume_l=volume, materials=made.shares, rich=made.rich, rules=(BY_PART,)
    )


def _swapped(message: Message, at: int) -> Amend | None:
    """ "Scratch the bread, it was rice": one thing in place of another in the last layer."""
    last = message.context.last
    items = [item for item in message.items if item.start > at and not item.generic]
    if len(items) != 2 or not isinstance(last, Layer) or not last.materials or message.bins:
        return None
    wrong, right = (makeup([item]) for item in items)
    between = message.norms[items[0].end : items[1].start]
    rest = message.norms[items[1].end :]
    if wrong is None or right is None or not _IT_WAS.issuperset(between) or not between:
        return None
    if not {"was", "were", "is", "'s", "be"}.intersection(between) or not _BEHIND.issuperset(rest):
        return None
    out = sum(share for kind, share in last.materials.items() if kind in wrong.shares)
    if not out:
        return None
    shares = {kind: much for kind, much in last.materials.items() if kind not in wrong.shares}
    for kind, much in right.shares.items():
        shares[kind] = shares.get(kind, 0.0) + much * out
    return Amend(materials=shares, rules=(RULE,))


_AROUND = _LEAD | _THE | words_in("in from of on out again bin it")


def _struck_in(message: Message, at: int) -> Retract | None:
    """ "Delete the peels in green": what went into which bin, and nothing else."""
    items = [item for item in message.items if item.start > at and not item.generic]
    refs = [ref for ref in message.bins if ref.known and ref.name]
    if message.norms[at] not in _THE or not items or len(refs) != 1 or message.amounts:
        return None
    held = indexes(items, refs, message.days)
    rest = unheld(message.norms, held, at)
    if not _AROUND.issuperset(rest) or refs[0].start < items[0].start:
        return None
    return Retract(which=_which(message, at, len(message.norms)), rules=(RULE,))


def _measured_anew(message: Message, at: int, *, struck: bool = False) -> Amend | None:
    """ "The 6 kg I put in on Tuesday was really 8 kg": the amount behind is right."""
    norms = message.norms
    for i in range(at + 1, len(norms) - 1):
        if norms[i] not in _BEING:
            continue
        behind = [a for a in message.measured() if a.start > i]
        which = _which(message, at, i)
        if not behind or not _is_all(message, i + 1, behind[0]):
            return None
        if not struck and not _is_told(message, at, i):
            return None
        if not (which.mass_kg or which.volume_l or which.materials):
            return None
        right = behind[0]
        if right.quantity == "mass":
            return Amend(mass_kg=right.value, which=which, rules=(RULE,))
        return Amend(volume_l=right.value, which=which, rules=(RULE,))
    return None


def _is_all(message: Message, start: int, right: Amount) -> bool:
    """Whether nothing but the right amount, and perhaps the wrong one, stands behind."""
    norms = message.norms
    spoken = {k for a in message.amounts if a.start >= start for k in range(a.start, a.end)}
    rest = [norms[k] for k in range(start, len(norms)) if k not in spoken]
    return right.quantity in ("mass", "volume") and _BEHIND.issuperset(rest)


def _is_told(message: Message, start: int, end: int) -> bool:
    """Whether the words tell when it went in or who put it there, and no other deed."""
    verbs = [c.verb for c in message.clauses if c.verb and start <= c.verb.start < end]
    other = [v for v in verbs if message.norms[v.start] not in _PUTTING]
    put = message.has_in(_PUTTING, start, end) or _calls_amount(message, start)
    return not other and (put or any(start <= d.start < end for d in message.days))


def _placed_anew(message: Message, at: int) -> Amend | None:
    """ "The 3 kg in the shed bin were in the roof bin": the bin behind is right."""
    norms, refs = message.norms, [ref for ref in message.bins if ref.known and ref.name]
    if len(refs) != 2 or len(message.measured()) != 1:
        return None
    for i in range(refs[0].end, refs[1].start):
        if norms[i] not in _BEING or not _is_told(message, at, i):
            continue
        rest = {*norms[i + 1 : refs[1].start], *norms[refs[1].end :]}
        if rest <= _BEHIND | _IN and not rest.isdisjoint(_IN):
            return Amend(bin=refs[1].name, which=_which(message, at, i), rules=(RULE,))
    return None


_IN = words_in("in into the our")


def _done_by(message: Message, at: int) -> Amend | None:
    """ "It was Len who put the bread in on Monday, not me"."""
    norms = message.norms
    who = norms.index("who")
    named = [m for m in message.members if at <= m.start < who]
    refused = norms.index("not") if "not" in norms[who:] else len(norms)
    if len(named) != 1 or norms[who + 1] not in _PUTTING or norms[at] not in ("it", "it's"):
        return None
    which = _which(message, who + 1, refused)
    if not (which.mass_kg or which.volume_l or which.materials):
        return None
    return Amend(member=named[0].name, which=which, rules=(RULE,))


def _which(message: Message, start: int, end: int) -> Layer:
    """What words[start:end] say of the layer."""
    amounts = [a for a in message.measured() if start <= a.start < end]
    mass = next((a.value for a in amounts if a.quantity == "mass"), None)
    made = makeup([i for i in message.items if start <= i.start < end and not i.generic])
    refs = (*message.bins, *message.named)
    bins = [ref.name for ref in refs if start <= ref.start < end and ref.name is not None]
    doers = [m.name for m in message.members if start <= m.start < end]
    own = message.context.sender if message.has_in(frozenset({"i"}), start, end) else None
    return Layer(
        mass_kg=mass,
        volume_l=None if mass else next((a.value for a in amounts), None),
        materials=made.shares if made else None,
        bin=bins[0] if bins else None,
        member=doers[0] if doers else own,
        on=next((d.past for d in message.days if start <= d.start < end), None),
    )
