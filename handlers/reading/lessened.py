"""What was weighed with the scraps is taken off: "knock 200 g off for the bowl"."""

from handlers.reading.acts import Amend
from handlers.reading.amending import SHORT, word_count
from handlers.reading.message import Message
from handlers.reading.numbers import read_number
from handlers.reading.rightwrong import BY_FORM, REASONS, VESSELS
from handlers.reading.unitright import amount_of
from handlers.reading.vocabulary import words_in

OFF = words_in("off")
_TAKING = words_in("take knock drop minus shave")
_LED = words_in("sorry oops please pls bot can you could we no and so oh ah better , !") | _TAKING
_FROM_THAT = words_in("that it for the my last one mine a , . ! because i forgot was in on")


def lessened(message: Message) -> Amend | None:
    """The last amount less what is taken off it; without it where no record tells."""
    norms = message.norms
    if OFF.isdisjoint(norms) or word_count(message) > SHORT:
        return None
    at = next((i for i, norm in enumerate(norms) if norm not in _LED), len(norms))
    if at == len(norms) or _TAKING.isdisjoint(norms[:at]):
        return None
    amount = next((a for a in message.amounts if a.start == at), None)
    number = read_number(message.words, at)
    end = amount.end if amount else number.end if number and not number.word else 0
    if norms[end : end + 1] != ["off"] or not _is_of_record(norms[end + 1 :]):
        return None
    last = message.context.last
    mass, volume = getattr(last, "mass_kg", None), getattr(last, "volume_l", None)
    kind, said = ("mass", mass) if mass else ("volume", volume)
    taken = amount.value if amount and amount.quantity == kind else None
    if amount is None and number is not None and message.context.units == "metric":
        taken = number.value / 1000 if number.value >= _GRAMS else number.value
    left = said - taken if said and taken else 0.0
    found = amount_of(kind, left) if left > 0 else None
    return Amend(
        mass_kg=found.mass_kg if found else None,
        volume_l=found.volume_l if found else None,
        rules=(BY_FORM,),
    )


_GRAMS = 20
"""A bare number from here on is of grams or millilitres."""


def _is_of_record(rest: list[str]) -> bool:
    """Whether it is taken off the record: "that", "for the tub", "it, I forgot the bowl"."""
    plain = all(norm in _FROM_THAT | VESSELS | REASONS for norm in rest)
    return plain and bool(rest) and (rest[0] in ("that", "it") or not VESSELS.isdisjoint(rest))
