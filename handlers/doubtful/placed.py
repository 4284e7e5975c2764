"""What an answer in a few words says of the bins that were asked about: which it was, or how much
went into each.
"""

import re
from collections.abc import Sequence
from dataclasses import replace
from zoneinfo import ZoneInfo

from handlers.practice.units import KILOGRAMS
from handlers.reading.acts import Act, Amend, Layer
from handlers.reading.context import Context
from handlers.reading.food.makeups import makeup
from handlers.reading.message import Message, read_message
from handlers.reading.read import read
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in
from storage.book import Book
from storage.rows import Entry, Question

MOST_WORDS = 10
"""A longer message is read for itself."""

OWN_BIN = "the bin named behind its things"
_PLACING = words_in(
    "it that they them this thing lot both all three went goes go was is 's are were in into to a "
    "an the one ones please pls plz i we mean meant think reckon put my our mine said sorry yeah "
    "yes yep oh ah um er well ok and then of for sure probably again , . ! : -"
)
"""What may stand beside the bin's name in an answer."""
_LIKE = words_in("same as with like")
_HALVES = re.compile(r"(?:half(?: (?:each|and half|n half|in each))|50/50|evenly|equally|halves)")
_WHOLES = re.compile(r"(?:(?:all of it |that much |that |the lot )?(?:in |to |for )?each|both)")
_LEAD = re.compile(r"^(?:(?:no|nope|nah|sorry|actually|well|oh)\b[ ,.]*)+", re.IGNORECASE)
_UNITS = {
    "mass": (("kg", 1.0), ("lb", KILOGRAMS["pound"]), ("g", KILOGRAMS["gram"])),
    "volume": (("litres", 1.0),),
}
_EXACT = 0.02


async def placed(words: str, question: Question, book: Book) -> list[Act] | None:
    """What puts the records of the question into the bin that was said, or into several."""
    entries = [entry for entry in await book.of_event(question.event) if not entry.bin]
    context = await context_of(question, book)
    message = read_message(words, context)
    if len(message.words) > MOST_WORDS or len(entries) != 1 or "?" in words:
        return None
    facts = entries[0].facts
    whole = Layer(
        mass_kg=facts.mass_kg,
        volume_l=facts.volume_l,
        materials=facts.materials,
        rich=facts.rich,
        member=entries[0].member,
        on=entries[0].on,
    )
    if entries[0].act == "layer" and (parts := _parts(words, whole, context)):
        first, *rest = parts
        return [Amend(bin=first.bin, mass_kg=first.mass_kg, volume_l=first.volume_l), *rest]
    if own := _own_bin(entries[0], message):
        return [Amend(bin=own, rules=(OWN_BIN,))]
    name = _only_bin(message) or await _like(message, book)
    return [Amend(bin=name)] if name else None


async def divided(
    words: str, guess: Sequence[Act], question: Question, book: Book
) -> list[Act] | None:
    """The layers of a lot that was guessed to be shared evenly, as they were shared."""
    layers = [act for act in guess if isinstance(act, Layer)]
    if len(layers) < 2 or len(layers) < len(guess) or "?" in words:
        return None
    if words.count(" ") >= MOST_WORDS:
        return None
    said = _LEAD.sub("", words.strip().casefold()).rstrip(" .!")
    if _HALVES.fullmatch(said):
        return list(layers)
    whole = _times(layers[0], len(layers))
    if _WHOLES.fullmatch(said):
        return [replace(whole, bin=layer.bin) for layer in layers]
    return list(_parts(words, whole, await context_of(question, book))) or None


async def context_of(question: Question, book: Book) -> Context:
    """What an answer to the question is read with."""
    return Context(
        at=question.asked_at,
        zone=ZoneInfo(book.room.zone),
        units=book.room.units,
        bins=tuple([bin.name for bin in await book.bins()]),
        members=tuple([member.name for member in await book.members()]),
        sender=question.sender,
        bot_names=("pailkeeper", "bot"),
        in_room=True,
    )


def _times(layer: Layer, share: float) -> Layer:
    return replace(
        layer,
        mass_kg=layer.mass_kg and layer.mass_kg * share,
        volume_l=layer.volume_l and layer.volume_l * share,
    )


def _parts(words: str, whole: Layer, context: Context) -> Sequence[Layer]:
    """The whole as it was shared out ("2 in green and the rest in bin 2"); none if it was not."""
    much = whole.mass_kg or whole.volume_l
    if not much:
        return ()
    said = _LEAD.sub("", words.strip())
    for unit, factor in _UNITS["mass" if whole.mass_kg else "volume"]:
        acts = read(f"{much / factor:.10g} {unit}: {said}", context)
        parts = [act for act in acts if isinstance(act, Layer) and act.bin]
        given = sum(part.mass_kg or part.volume_l or 0 for part in parts)
        if len(parts) == len(acts) > 1 and abs(given - much) <= _EXACT * much:
            return [
                replace(whole, bin=part.bin, mass_kg=part.mass_kg, volume_l=part.volume_l)
                for part in parts
            ]
    return ()


def _only_bin(message: Message) -> str | None:
    """ "It went in the green": the one bin named, where nothing else is said."""
    names = {ref.name for ref in (*message.bins, *message.named) if ref.known}
    held = indexes(message.bins, message.named) | set(message.bot)
    free = {norm for i, norm in enumerate(message.norms) if i not in held}
    return names.pop() if len(names) == 1 and free <= _PLACING else None


def _own_bin(entry: Entry, message: Message) -> str | None:
    """ "Scraps green, bread Rosie": the bin named behind what the record is made of."""
    start = 0
    for ref in sorted((*message.bins, *message.named)):
        items = [item for item in message.items if start <= item.start < ref.start]
        made = makeup(items) if items else None
        if made and made.shares == entry.facts.materials and ref.known:
            return ref.name
        start = ref.end
    return None


async def _like(message: Message, book: Book) -> str | None:
    """ "Same one as Ewa": the bin that a member fed last."""
    held = indexes(message.members)
    free = {norm for i, norm in enumerate(message.norms) if i not in held}
    if len(message.members) != 1 or "same" not in free or not free <= _PLACING | _LIKE | {"'s"}:
        return None
    last = await book.last_layer_by(message.members[0].name)
    return last.bin.name if last and last.bin else None
