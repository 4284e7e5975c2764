"""What its sender means to put in and later tells to be in: "I'll add 2 kg of peelings tonight",
and then "added it".
"""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Done, Layer, Unsure
from handlers.reading.corrections.numberright import nearest
from handlers.reading.measures.digits import digits_value
from handlers.reading.message import Message, read_message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.sentences import Clause
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

AS_PLANNED = "what was planned is in"
_MOST_PLANNED, _MOST_TOLD = 40, 14
"""Words of a message that tells a plan, and of one that tells it is done."""

_NOT_PUT = words_in("get have go come bring")
_OTHERS = words_in("you he she they who whoever someone somebody anyone anybody")
_LATER = words_in("later soon afterwards tonight")
_BEHIND = words_in("when once after before if unless until till as while because since then so")
"""What stands behind these is when, or why, and nothing of what goes in."""
_OPEN = words_in("or not either instead")


def as_told(message: Message) -> Message | None:
    """The plan of a layer as the report of it; None where none is told with its amount."""
    if not message.measured() or len(message.norms) > _MOST_PLANNED or message.has(_OPEN):
        return None
    for clause in message.clauses:
        if _is_plan(clause, message):
            words = _what(clause, message)
            said = f"I added {words}" if words else ""
            return read_message(said, replace(message.context, last=None)) if said else None
    return None


def _is_plan(clause: Clause, message: Message) -> bool:
    """Whether it tells that its sender is going to put something in."""
    use = clause.verb
    if use is None or "layer" not in use.verb.classes or use.verb.plain in _NOT_PUT:
        return False
    if message.sentences[clause.sentence].asked:
        return False
    named = any(clause.start <= one.start < use.start for one in message.members)
    if named or message.has_in(_OTHERS, clause.start, use.start):
        return False
    ahead = message.has(_LATER) or any(day.future > message.today for day in message.days)
    return clause.sense == "will" or (use.verb.form == "ing" and ahead)


def _what(clause: Clause, message: Message) -> str:
    """What is to go in, with its amount and bin, in the words of the sentence."""
    sentence = message.sentences[clause.sentence]
    at = clause.verb.end if clause.verb else clause.end
    amounts = [one for one in message.measured() if sentence.start <= one.start < sentence.end]
    if not amounts:
        return ""
    start, end = at, sentence.end
    if not any(one.start >= at for one in amounts):  # "got 2 kg of peelings to add tonight"
        start, end = amounts[0].start, clause.start
    days, kept = indexes(message.days), list[str]()
    for i in range(start, end):
        if message.norms[i] in _BEHIND:
            break
        if i not in days and message.norms[i] not in _LATER:
            kept.append(message.text(i, i + 1))
    return " ".join(kept)


_ADDED = r"(?:put|added|chucked|threw|tossed|tipped|bunged|popped|dumped|dropped|scraped|poured)"
_IT = r"(?:it|them|that|those|everything|all|the lot|the whole lot)(?: all)?(?: of (?:it|them))?"
_BIN = r"(?: (?:in|into|to|in to)(?: (?:the )?qbin)?)"
_LEAD = (
    r"(?:(?:ok|okay|right|so|all|just|now|there|done|finally|yes|yep|yeah|and|finished|already|i|"
    r"we|have|hi|hello|home|back|qday|[,.!:]|-|✅|👍) )*"
)
_END = (
    r"(?: (?:now|already|too|all|just|safely|as|planned|promised|said|after|finally|qday|then|"
    r"done|thanks|[,.!]|-|✅|👍|☺))*"
)
_TOLD = Late(
    rf"{_LEAD}(?:(?:{_ADDED} {_IT}{_BIN}?|added|{_ADDED}{_BIN})|"
    rf"(?:(?:{_IT}|they) (?:is|are|'s|'re|am|has gone|have gone|went)(?: (?:all|now|finally|both))*"
    rf"|all){_BIN}|in (?:it|they) went|put in){_END}"
)
"""That it is in, and nothing besides."""
_RIGHT = Late(
    r"(?P<told>.+?)(?: [,.!;-])* (?:(?:it|that|they|which|and|but) )*"
    r"(?:(?:was|were|came to|weighed|turned out)(?: to be)? )?"
    r"(?:(?:more like|only|actually|about|just|nearer|really|around|closer to|a good) )*"
    r"(?P<much>\d[\d.,]*)(?: (?!only|rather|instead|though|so)(?P<of>[a-z]+))?"
    r"(?: (?:in the end|actually|after all|all told|though|so|only|rather|instead))*"
    r"(?: [.!])*"
)
""" "It's in, was more like 2.5": the same behind it, and how much that was."""
_DONE = Late(
    rf"{_LEAD}(?:done(?: (?:it|that))?|did (?:it|that)|(?:it|that)(?: is| 's|s) (?:done|sorted)|"
    rf"sorted){_END}"
)
""" "Done, but it was 1.2 only", right behind the plan."""
_AS_MUCH = 4.0
"""A bare figure is in the unit of the plan where it is no more than so many times that, or less."""
_POINTS = words_in("it them that those")
_MAY = Late(
    rf"\b{_ADDED}(?:(?: \w+){{0,2}} (?:it|them|that|those|everything|all|lot|in|into)\b|\W*$|"
    r" ?[,.!;-])|\b(?:s|is|are|re|gone|went|all) (?:(?:all|now|both|finally) )*in\b|"
    r"\bin (?:it|they) went\b|\b(?:done|did (?:it|that)|sorted)\b"
)


def may_tell_planned(body: str) -> bool:
    """Whether a message is so short and so formed that it may tell that something planned is in."""
    said = body.casefold().replace("’", " ").replace("'", " ")
    return said.count(" ") <= 2 * _MOST_TOLD and _MAY.search(said) is not None


def with_planned(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, with the layers that the sender had planned where these are told to be in; asked
    about where other things were talked of since.
    """
    planned = message.context.planned
    if not planned or "?" in message.said:
        return list(acts)
    right = _with_its_amount(planned[0], message) if len(planned) == 1 else None
    if right:
        planned, acts = (right,), ()
    layers = [act for act in acts if isinstance(act, Layer) and (act.mass_kg or act.volume_l)]
    if len(layers) == len(acts) == len(planned) == 1:
        return [_of_planned(layers[0], planned[0], message)]
    if layers:
        return list(acts)
    if not all(isinstance(act, Done | Layer) for act in acts):
        return list(acts)
    done = len(acts) == 1 and isinstance(acts[0], Done) and acts[0].volume_l is None
    told = right is not None or _is_in(plain_text(message, days=True))
    if not told and not (done and message.context.planned_next):
        return list(acts)
    names = {ref.name for ref in message.bins if ref.known and ref.name}
    over = {day.past for day in message.days if day.past <= message.today}
    bin = names.pop() if len(names) == 1 else None
    on = over.pop() if len(over) == 1 else message.today
    put: list[Act] = [
        replace(one, bin=bin or one.bin, on=on, rules=(AS_PLANNED,)) for one in planned
    ]
    return put if message.context.planned_next else [Unsure(guess=(*put,), rules=(AS_PLANNED,))]


def _is_in(text: str) -> bool:
    return _TOLD.fullmatch(text) is not None


def _with_its_amount(planned: Layer, message: Message) -> Layer | None:
    """What was planned, with as much as is told to have gone in."""
    match = _RIGHT.fullmatch(plain_text(message, days=True))
    if match is None:
        return None
    done = message.context.planned_next and _DONE.fullmatch(match["told"]) is not None
    if not done and not _is_in(match["told"]):
        return None
    measured = message.measured()
    if len(measured) == 1:
        one = measured[0]
        mass, volume = (one.value, None) if one.quantity == "mass" else (None, one.value)
        return replace(planned, mass_kg=mass, volume_l=volume)
    figure = digits_value(match["much"])
    meant = planned.mass_kg or planned.volume_l
    if measured or match["of"] or not figure or not meant:
        return None
    # kilos or litres, grams or millilitres
    much = nearest((figure, figure / 1000), meant, _AS_MUCH)
    if much is None:
        return None
    by_mass = planned.mass_kg is not None
    return replace(planned, mass_kg=much if by_mass else None, volume_l=None if by_mass else much)


def _of_planned(told: Layer, planned: Layer, message: Message) -> Layer:
    """ "Added it, 1.8 kg in the end": of what was planned, and as much as is told."""
    if message.items or not message.has(_POINTS):
        return told
    rich = planned.rich
    return replace(told, materials=planned.materials, rich=rich, bin=told.bin or planned.bin)
