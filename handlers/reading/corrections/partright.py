"""Parts of what was told, put right by name: "the bread was 3", "no, green was 3 and blue 2",
"Dev's was 3 kg".

Which record of the message each is of, the book knows.
"""

from dataclasses import replace

from handlers.reading.acts import Amend
from handlers.reading.corrections.amending import BARE_AMOUNT, SORRY
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.corrections.numberright import number_of_talk
from handlers.reading.corrections.unitright import amount_of
from handlers.reading.food.makeups import makeup
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in

BY_PART = "a part of what was told, put right"
"""The rule of a correction that is of no record but one of such scraps, or in that bin."""
_CUES = words_in("was were is are should")
_LEADS = SORRY | words_in("no nope nah correction , - :")
_BEFORE = words_in("the my our and but , &")
_JOINTS = _CUES | words_in("be only just about more like actually really nearer one lot stuff 's")
_ENDS = words_in(". ! sorry please ,")
_MOST_WORDS = 24


def parts_right(message: Message) -> tuple[Amend, ...]:
    """A correction for each part, if nothing else is said."""
    norms = message.norms
    if _CUES.isdisjoint(norms) or len(norms) > _MOST_WORDS:
        return ()
    if spoken_of(message) is None and not any(m.owner for m in message.members):
        return ()
    i = next((k for k, norm in enumerate(norms) if norm not in _LEADS), len(norms))
    led, out = i > 0, list[Amend]()
    while i < len(norms) and not _ENDS.issuperset(norms[i:]):
        part = _part(message, i, further=bool(out))
        if part is None:
            return ()
        amend, i = part
        out.append(amend)
    if len(out) == 1 and out[0].bin is not None and not led:
        if not message.measured():
            return ()  # "Rosie was 3"
        return (replace(out[0], rules=(BY_PART, BARE_AMOUNT)),)  # it may have gone in just now
    return tuple(out)


def _part(message: Message, i: int, *, further: bool) -> tuple[Amend, int] | None:
    """The part that begins at words[i], with the end of its figure."""
    norms = message.norms
    while i < len(norms) and norms[i] in _BEFORE:
        i += 1
    bin = next((b for b in message.bins if b.start == i and b.known and b.name), None)
    item = next((m for m in message.items if m.start == i and not m.generic), None)
    owner = next((m for m in message.members if m.start == i and m.owner), None)
    named = bin or item or owner
    if named is None:
        return None
    at = named.end
    while at < len(norms) and norms[at] in _JOINTS:
        at += 1
    if not further and _CUES.isdisjoint(norms[named.end : at]):
        return None
    found = _figure(message, at) or (_bin(message, at) if item and not bin else None)
    if found is None:
        return None
    right, end = found
    if norms[end : end + 1] not in ([], [","], ["and"], ["&"], ["."], ["!"]):
        return None
    made = makeup([item]) if item is not None and bin is None else None
    return (
        replace(
            right,
            bin=bin.name if bin else right.bin,
            whose=owner.name if owner else None,
            materials=made.shares if made else None,
            rich=made.rich if made else None,
            rules=(BY_PART,),
        ),
        end,
    )


def _figure(message: Message, at: int) -> tuple[Amend, int] | None:
    """The right amount, if one stands at words[at], and its end."""
    amount = next((a for a in message.measured() if a.start == at), None)
    number = read_number(message.words, at) if at < len(message.norms) else None
    figure, end = None, at
    if amount is not None:
        figure, end = amount_of(amount.quantity, amount.value), amount.end
    elif number is not None and not number.word and number.value > 0:
        figure, end = number_of_talk(number.value, message), number.end
    return None if figure is None else (figure, end)


def _bin(message: Message, at: int) -> tuple[Amend, int] | None:
    """The right bin: "the bread was in green"."""
    while at < len(message.norms) and message.norms[at] in _INTO:
        at += 1
    ref = next((b for b in message.bins if b.start == at and b.known and b.name), None)
    return None if ref is None else (Amend(bin=ref.name), ref.end)


_INTO = words_in("in into to for the")
