"""What has just been told put right, by whoever told it or by another, who is asked whether it is
meant: "no, that was 2, not 3, and in the green", "that was 2 kg and it went into the green bin".

Every word is accounted for, so that no score is asked.
"""

from dataclasses import replace
from math import isclose

from handlers.reading.acts import Amend, Drain, Layer
from handlers.reading.corrections.numberright import number_beside
from handlers.reading.corrections.rightwrong import BY_FORM
from handlers.reading.corrections.unitright import amount_of
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

JUST_TOLD = "what another has just told"
"""The rule of a correction of the record that a member told last, in whatever bin that was."""
CUES = words_in("no nope nah that it not make")
_NO = words_in("no nope nah")
_BEING = words_in("was were went should wasnt make")
_LEADS = words_in("hang on wait sorry actually oh i think thought hey but surely mate")
_OF_RIGHT = (
    _NO
    | _BEING
    | _LEADS
    | words_in(
        "that it not and in into the bin only just about more like be have been gone from of "
        ", . ; : ! - – though instead"
    )
)
_ME = words_in("me mine us ours")
_OF_ME = _OF_RIGHT | _ME | words_in("by i did put that's 's is")
_MOST_WORDS = 18


def anothers_right(message: Message) -> Amend | None:
    """How much it was, and which bin it went into, by somebody other than who told it."""
    told = message.context.just_told
    if not isinstance(told, Layer | Drain) or told.member in (None, message.context.sender):
        return None
    if _is_by_sender(told, message):
        return Amend(member=message.context.sender, whose=told.member, rules=(BY_FORM, JUST_TOLD))
    right = _right_of(told, message)
    if right is None:
        return None
    right = replace(right, whose=told.member)
    if message.members or not _may_be_own(message) or _refuses(told, message):
        return right
    if not message.has(_NO):
        return right
    return replace(right, whose=None) if _is_whole(right) else None


def _is_by_sender(told: Layer | Drain, message: Message) -> bool:
    """ "No, that was me, 1.5 kg in the green": told once more as the sender's own."""
    if not message.has(_ME) or not message.measured() or message.days or "?" in message.said:
        return False
    held = indexes(message.amounts, message.bins, message.items, message.members)
    rest = unheld(message.norms, held)
    if rest[:1] == [] or not _OF_ME.issuperset(rest) or not message.has(_BEING):
        return False
    values = {told.volume_l, told.mass_kg if isinstance(told, Layer) else None} - {None}
    same = all(any(isclose(a.value, v or 0) for v in values) for a in message.measured())
    return same and all(ref.name == told.bin for ref in message.bins)


def own_right(message: Message) -> Amend | None:
    """ "That was 2 kg and in the green": the amount and the bin of one's own, and no second one."""
    told = message.context.last
    if not isinstance(told, Layer | Drain) or message.members:
        return None
    if told.member not in (None, message.context.sender):
        return None
    right = _right_of(told, message)
    return right if right and _is_whole(right) else None


def _is_whole(right: Amend) -> bool:
    return right.bin is not None and bool(right.mass_kg or right.volume_l)


def _right_of(told: Layer | Drain, message: Message) -> Amend | None:
    """What is right of the record, where nothing else is said."""
    norms = message.norms
    if len(norms) > _MOST_WORDS or "?" in message.said or message.items or message.days:
        return None
    if any(ref.name != told.member for ref in message.members) or not _puts_right(message):
        return None
    bins = [ref for ref in message.bins if norms[ref.start - 1] != "not"]
    if len(bins) > 1 or any(not ref.known for ref in message.bins):
        return None
    right = _amount(told, message)
    if right is None:
        return None
    bin = bins[0].name if bins and bins[0].name != told.bin else None
    if bin is None and not (right.mass_kg or right.volume_l):
        return None
    return replace(right, bin=bin, rules=(BY_FORM, JUST_TOLD))


def _may_be_own(message: Message) -> bool:
    """Whether the sender told such a thing of late, too, which "no, 2 kg" may be of."""
    return isinstance(message.context.earlier, Layer | Drain)


def _puts_right(message: Message) -> bool:
    """Whether it refuses what was told, or says of it how it was, and nothing else."""
    norms = message.norms
    held = indexes(message.amounts, message.bins, message.members)
    rest = [norm for i, norm in enumerate(norms) if i not in held and not norm[0].isdigit()]
    if not _OF_RIGHT.issuperset(rest):
        return False
    first = next((norm for norm in rest if norm.isalpha() and norm not in _LEADS), "")
    refused = first in _NO or "not" in rest
    return refused or (first in ("that", "it", "make") and not _BEING.isdisjoint(rest))


def _refuses(told: Layer | Drain, message: Message) -> bool:
    """ "2, not 3", "not in the yard": whether the amount or the bin that was told is refused."""
    norms = message.norms
    much = told.volume_l if isinstance(told, Drain) or not told.mass_kg else told.mass_kg
    for i, norm in enumerate(norms[:-1]):
        if norm != "not":
            continue
        number = read_number(message.words, i + 1)
        meant = number and number_beside(number.value, told, message)
        amounts = [a.value for a in message.measured() if a.start == i + 1]
        if meant:
            amounts.append(meant.mass_kg or meant.volume_l or 0.0)
        bins = [ref.name for ref in message.bins if i < ref.start <= i + _LED]
        if told.bin in bins or any(isclose(a, much or 0.0, rel_tol=_ROUNDED) for a in amounts):
            return True
    return False


_LED, _ROUNDED = 3, 0.05


def _amount(told: Layer | Drain, message: Message) -> Amend | None:
    """The amount that is not refused, with its unit or in that of what was told; None for more
    than one.
    """
    norms = message.norms
    amounts: list[Amend | None] = [
        amount_of(a.quantity, a.value) for a in message.measured() if _is_right(a.start, message)
    ]
    held = indexes(message.amounts, message.bins)
    for i, word in enumerate(message.words):
        number = read_number(message.words, i) if word.kind == "number" and i not in held else None
        if number is not None and norms[i - 1] != "not":
            amounts.append(number_beside(number.value, told, message))
    if not amounts:
        return Amend()
    return amounts[0] if len(amounts) == 1 else None


def _is_right(start: int, message: Message) -> bool:
    return start == 0 or message.norms[start - 1] != "not"
