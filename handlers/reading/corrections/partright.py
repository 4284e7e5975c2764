"""Parts of what was told, put right by name: "the bread was 3", "no, green was 3 and blue 2",
"Dev's was 3 kg", "make the green 3", "I was wrong about the green, that was 3", "the bread was
Friday".

Which record of the message each is of, the book knows.
"""

from dataclasses import replace

from handlers.reading.acts import Amend, Layer
from handlers.reading.corrections.amending import BARE_AMOUNT, SORRY
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.corrections.numberright import number_of_talk
from handlers.reading.corrections.unitright import amount_of
from handlers.reading.food.items import Item
from handlers.reading.food.makeups import makeup
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in

BY_PART = "a part of what was told, put right"
"""The rule of a correction that is of no record but one of such scraps, or in that bin."""
_CUES = words_in("was were is are should")
_MAKING = words_in("make")
_EITHER = _CUES | _MAKING
"""Words without one of which nothing is put right so."""
_WRONG_ABOUT = tuple(
    tuple(f"{said} {of}".split())
    for said in ("i was wrong", "i got it wrong", "my mistake", "typo", "slip")
    for of in ("about", "with", "on", "in", "for")
)
_LEADS = SORRY | words_in("no nope nah yes yep yeah ok correction , - :")
_BEFORE = words_in("the my our and but , &")
_JOINTS = _CUES | words_in(
    "be only just about more like actually really nearer one lot stuff 's that it , :"
)
_ENDS = words_in(". ! sorry please ,")
_MOST_WORDS = 24


def parts_right(message: Message) -> tuple[Amend, ...]:
    """A correction for each part, if nothing else is said."""
    norms = message.norms
    if _EITHER.isdisjoint(norms) or len(norms) > _MOST_WORDS:
        return ()
    if spoken_of(message) is None and not any(m.owner for m in message.members):
        return ()
    i = next((k for k, norm in enumerate(norms) if norm not in _LEADS), len(norms))
    wrong = next((len(w) for w in _WRONG_ABOUT if tuple(norms[i : i + len(w)]) == w), 0)
    made = _MAKING.issuperset(norms[i : i + 1])
    i += wrong or made
    led, out = i > 0, list[Amend]()
    while i < len(norms) and not _ENDS.issuperset(norms[i:]):
        part = _part(message, i, further=made or bool(out))
        if part is None:
            return ()
        amend, i = part
        out.append(amend)
    if len(out) == 1 and out[0].bin is not None and not (led or out[0].member):
        if not (message.measured() or message.context.after_bot or "should" in norms):
            return ()  # "Rosie was 3"
        return (replace(out[0], rules=(BY_PART, BARE_AMOUNT)),)  # it may have gone in just now
    return tuple(out)


def _part(message: Message, i: int, *, further: bool) -> tuple[Amend, int] | None:
    """The part that begins at words[i], with the end of its figure."""
    norms = message.norms
    while i < len(norms) and norms[i] in _BEFORE:
        i += 1
    refs = (*message.bins, *message.named)
    bin = next((b for b in refs if b.start == i and b.known and b.name), None)
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
    found = _figure(message, at)
    if found is None and item and not bin:
        found = _bin(message, at) or _day(message, item, at)
    if found is None and not owner:
        found = _owner(message, at)
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


def _owner(message: Message, at: int) -> tuple[Amend, int] | None:
    """Whose it was: "the shed one was Tom's"."""
    ref = next((m for m in message.members if m.start == at and m.owner), None)
    end = ref.end if ref else at
    while ref and message.norms[end : end + 1] and message.norms[end] in _REALLY:
        end += 1
    return (Amend(member=ref.name), end) if ref else None


_REALLY = words_in("'s really actually")


def _day(message: Message, item: Item, at: int) -> tuple[Amend, int] | None:
    """The right day of what the talk is on: "the bread was Friday"."""
    at += message.norms[at : at + 1] == ["on"]
    day = next((d for d in message.days if d.start == at), None)
    last, made = spoken_of(message), makeup([item])
    if day is None or day.past > message.today or not isinstance(last, Layer) or made is None:
        return None
    held = not made.shares.keys().isdisjoint(last.materials or {})
    end = day.end + (message.norms[day.end : day.end + 1] == ["'s"])
    return (Amend(on=day.past), end) if held else None
