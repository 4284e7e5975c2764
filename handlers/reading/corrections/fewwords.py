"""A few words right behind one's own record that change it: "double that", "more like 2", "green*",
"that was all fish", "half of it was Jo's".
"""

from collections import defaultdict
from dataclasses import replace

from handlers.practice.kinds import Kind
from handlers.reading.acts import Act, Amend, Drain, Layer, Unsure
from handlers.reading.completion.lots import share_of
from handlers.reading.corrections.amending import amend
from handlers.reading.corrections.likewise import CUES as OF_LIKEWISE
from handlers.reading.corrections.likewise import LED, LIKEWISE
from handlers.reading.corrections.numberright import number_meant
from handlers.reading.corrections.unitright import in_unit
from handlers.reading.food.makeups import makeup
from handlers.reading.food.quantities import amount_sum
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message, read_message
from handlers.reading.plaintext import is_asking, plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

_RULE = "a few words behind its record"
_LONGEST = 8
TIMES = {"double": 2.0, "twice": 2.0, "half": 0.5, "treble": 3.0, "triple": 3.0}
_POINTING = words_in("that thats it its this them those they")
_BEING = words_in("was were is 's are , . ! : - ")
_ASIDE = words_in(
    "btw tbh sorry really actually though lol oops just by the way honestly only more like rather "
    "i think no nearer closer to make about be should well oh nearly almost roughly ish"
)
_ALL = words_in("all mostly mainly mainly just entirely purely")
_SMALL = _POINTING | _BEING | _ASIDE
_CUES = (
    _POINTING
    | _ALL
    | words_in(
        "* more nearer closer nearly almost make same too ditto half only actually not no without"
    )
)


def changed_by_few(message: Message) -> tuple[Act, ...]:
    """What the words change of the record that the talk is on; none if they say anything else."""
    last, norms = message.context.last, message.norms
    if len(norms) == 1 and (bare := _bare_number(message)):
        return bare
    if len(norms) > _LONGEST or not message.has(_CUES | OF_LIKEWISE):
        return ()
    if last is None and _is_of_own(message) and message.context.earlier:
        context = replace(message.context, last=message.context.earlier, earlier=None)
        return changed_by_few(read_message(message.text(0, len(norms)), context))
    if not isinstance(last, Layer | Drain):
        return ()
    if norms[0] == "and" and not _GOES_ON.isdisjoint(norms[1:2]):
        return _gone_on(read_message(message.text(1, len(norms)), message.context))
    own = last.member in (None, message.context.sender)
    if not own and isinstance(last, Layer):
        return _likewise(last, message)
    return _of_own_record(last, message) if own and message.has(_CUES) else ()


def _of_own_record(last: Layer | Drain, message: Message) -> tuple[Act, ...]:
    if is_asking(message) or message.measured():
        return ()
    if isinstance(last, Layer) and (shared := _shared(last, message)):
        return shared
    if isinstance(last, Layer) and _HALF.search(plain_text(message)):
        return _halved(last)
    found = _times(last, message) or _starred(message) or _number(last, message)
    if found is None and isinstance(last, Layer):
        found = _unit(message) or _made_of(last, message) or _made_else(last, message)
        found = found or _partly_of(last, message)
    return (replace(found, rules=(_RULE,)),) if found else ()


def _bare_number(message: Message) -> tuple[Act, ...]:
    """ "1.2", right behind the answer to one's own record: it may be what it was."""
    last = message.context.last
    if not message.context.after_bot or not isinstance(last, Layer | Drain):
        return ()
    figure = _FIGURE.fullmatch(message.norms[0])
    number = read_number(message.words, 0) if figure else None
    own = last.member in (None, message.context.sender)
    if number is None or number.word or message.bins or number.value <= 0 or not own:
        return ()
    before = _amended(last)
    meant = number_meant(number.value, message) if before != Amend() else None
    if meant is None or meant == before:
        return ()
    return (Unsure(guess=(meant,), rules=(_RULE,)),)


_FIGURE = Late(r"(?!19\d\d|20\d\d)(?:0?[.,]\d+|[1-9]\d*(?:[.,]\d+)?)")
"""A figure, and no year or agent."""


def _is_of_own(message: Message) -> bool:
    """ "Make it 3", "and it was 3 kg": of one's own last record, whoever has spoken since."""
    first, second, third = (*message.norms[:3], "", "", "")[:3]
    told = first == "and" and second in _POINTING and third in _BEING and message.measured()
    return (first, second) == ("make", "it") or bool(told)


_HALF = Late(r"^(?:(?:no|nope|nah|sorry|oops|,|only|just|about) )+half(?: of (?:it|that))?$")


def _halved(last: Layer) -> tuple[Act, ...]:
    """ "No, half": of the amount; of meat, half of it may be meant to be that."""
    if last.rich == 1:
        return (Unsure(guess=(Amend(),), rules=(_RULE,)),)
    half = _amended(share_of(last, TIMES["half"]))
    return (replace(half, rules=(_RULE,)),) if half != Amend() else ()


_GOES_ON = words_in("it that only just was")


def _gone_on(rest: Message) -> tuple[Act, ...]:
    """ "And it was 2", "and only 1.5 kg": no further amount, but that of the record."""
    if not rest.measured():
        return changed_by_few(rest)
    if rest.has(_MORE) and "like" not in rest.norms:  # "and it was a kilo more"
        return ()
    alone = not (rest.items or rest.bins or is_asking(rest))
    found = (_amount(rest) or amend(rest, plain_text(rest))) if alone else None
    return (replace(found, rules=(_RULE,)),) if found else ()


def _amount(rest: Message) -> Amend | None:
    """ "It was 2 cups": how much the record was, and nothing else."""
    amounts, last = rest.measured(), rest.context.last
    led = rest.norms[0] in _POINTING and rest.norms[1:2] and rest.norms[1] in _BEING
    if len(amounts) != 1 or not led or not _only(rest, indexes(amounts), _SMALL | _ABOUT):
        return None
    mass, volume = amount_sum(amounts)
    if mass and not isinstance(last, Layer):
        return None
    return Amend(mass_kg=mass, volume_l=volume)


_MORE = words_in("more another extra again too also less further")
_ABOUT = words_in("about roughly around nearly almost some only maybe")
_LIKEWISE = Late(rf"{LED}{LIKEWISE}$")


def _likewise(last: Layer, message: Message) -> tuple[Act, ...]:
    """ "Same here" behind another's layer: as much of the sender's own, if it is meant so."""
    if _LIKEWISE.search(plain_text(message)) is None or not (last.mass_kg or last.volume_l):
        return ()
    own = replace(last, member=None, on=message.today, rules=(_RULE,))
    return (Unsure(guess=(own,), rules=(_RULE,)),)


def _amended(act: Layer | Drain) -> Amend:
    return Amend(mass_kg=getattr(act, "mass_kg", None), volume_l=act.volume_l)


def _only(message: Message, held: frozenset[int], words: frozenset[str] = _SMALL) -> bool:
    """Whether nothing else is said than what is held and such words."""
    return words.issuperset(unheld(message.norms, held))


def _times(last: Layer | Drain, message: Message) -> Amend | None:
    """ "Double that", "half that"."""
    factor = TIMES.get(message.norms[0])
    if factor is None or message.norms[1:2] not in (["that"], ["it"]):
        return None
    told = _only(message, frozenset({0}))
    return _amended(share_of(last, factor)) if told else None


def _starred(message: Message) -> Amend | None:
    """ "Green*": a bin's name put right."""
    names = {ref.name for ref in (*message.bins, *message.named) if ref.known}
    held = indexes(message.bins, message.named)
    alone = message.norms[-1] == "*" and _only(message, held, frozenset({"*"}))
    return Amend(bin=names.pop()) if alone and len(names) == 1 else None


def _number(last: Layer | Drain, message: Message) -> Amend | None:
    """ "More like 2", "it was 2": the number in the unit of the record."""
    at = next((i for i, norm in enumerate(message.norms) if norm not in _SMALL), None)
    number = None if at is None else read_number(message.words, at)
    if at is None or number is None or message.bins or number.value <= 0:
        return None
    if message.norms[at] in TIMES:  # "only half that" is half of what was told
        return None
    if not _only(message, frozenset(range(at, number.end))):
        return None
    meant = number_meant(number.value, message)
    return None if meant is None or meant == _amended(last) else meant


def _unit(message: Message) -> Amend | None:
    """ "That's pounds btw"."""
    words = [norm for norm in message.norms if norm not in _SMALL | {"in"}]
    return in_unit(message, words[0]) if len(words) == 1 and not message.items else None


_REFUSING = words_in("no nope nah sorry oh , . ! actually wait")


def _made_of(last: Layer, message: Message) -> Amend | None:
    """ "That was all fish", "mostly bread tbh": what it is made of."""
    refused = message.norms[0] in _REFUSING and not _POINTING.isdisjoint(message.norms[1:3])
    items = [item._replace(absent=False) for item in message.items if refused or not item.absent]
    first = next((norm for norm in message.norms if norm not in _REFUSING), "")
    led = first in _POINTING | _ALL  # "no it was coffee grounds mostly"
    if not items or not led or not _only(message, indexes(items), _SMALL | _ALL | {"and"}):
        return None
    made = makeup(items)
    if made is None or made.shares == last.materials or all(item.generic for item in items):
        return None
    return Amend(materials=made.shares, rich=made.rich)


def _partly_of(last: Layer, message: Message) -> Amend | None:
    """ "Half of that was citrus": a share of it, the rest being what was told before."""
    number = read_number(message.words, 0)
    items = [item._replace(share=None) for item in message.items if not item.absent]
    if number is None or not 0 < number.value < 1 or not items or not last.materials:
        return None
    held = indexes(items) | frozenset(range(number.end))
    if message.norms[number.end : number.end + 1] != ["of"] or not _only(message, held, _PARTLY):
        return None
    if (made := makeup(items)) is None:
        return None
    share, shares = number.value, defaultdict[Kind, float](float)
    for weight, kinds in ((share, made.shares), (1 - share, last.materials)):
        for kind, part in kinds.items():
            shares[kind] += weight * part
    rich = share * (made.rich or 0.0) + (1 - share) * (last.rich or 0.0)
    return Amend(materials=dict(shares), rich=None if made.rich is None else rich)


_PARTLY = _SMALL | words_in("of about and")


def _made_else(last: Layer, message: Message) -> Amend | None:
    """ "Coffee, not peelings", "coffee grounds actually", "there was no meat in it": what it is
    made of instead, and what is not among it.
    """
    items, norms = message.items, message.norms
    if not items or not _only(message, indexes(items), _SMALL | _OF_SORTS):
        return None
    denied = [item for item in items if norms[item.start - 1 : item.start] in _DENYING]
    told = [item for item in items if item not in denied]
    if told and (denied or not _PUT_RIGHT.isdisjoint(norms)):
        made = makeup(told)
        return None if made is None else Amend(materials=made.shares, rich=made.rich)
    gone = makeup([item._replace(absent=False) for item in denied]) if denied else None
    left = {
        k: v for k, v in (last.materials or {}).items() if k not in (gone.shares if gone else {})
    }
    if gone is None or not left or len(left) == len(last.materials or {}):
        return None
    whole = sum(left.values())
    return Amend(materials={kind: share / whole for kind, share in left.items()})


_DENYING = (["not"], ["no"], ["without"])
_PUT_RIGHT = words_in("actually sorry mean meant")
_OF_SORTS = words_in(
    "not no without there was had has in it with any of all but oops mean meant and"
)


def _shared(last: Layer, message: Message) -> tuple[Act, ...]:
    """ "Half of that was Jo's": what stays the sender's, and the other's share."""
    if len(message.members) != 1 or "of" not in message.said:
        return ()
    [member] = message.members
    number = read_number(message.words, 0)
    if number is None or not 0 < number.value < 1 or not (last.mass_kg or last.volume_l):
        return ()
    held = indexes(message.members) | frozenset(range(number.end))
    if not _only(message, held, _SMALL | {"of", "'s", "s", "'"}):
        return ()
    part = replace(share_of(last, number.value), member=member.name, rules=(_RULE,))
    return replace(_amended(share_of(last, 1 - number.value)), rules=(_RULE,)), part
