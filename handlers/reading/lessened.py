"""What was weighed with the scraps is taken off: "knock 200 g off for the bowl"."""

from handlers.reading.acts import Amend
from handlers.reading.amending import SHORT, word_count
from handlers.reading.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.numbers import read_number
from handlers.reading.rightwrong import BY_FORM, REASONS, VESSELS
from handlers.reading.unitright import amount_of
from handlers.reading.vocabulary import words_in

OFF = words_in("off too")
_TAKING = words_in("take knock drop minus shave")
_LED = words_in("sorry oops please pls bot can you could we no and so oh ah better , !") | _TAKING
_FROM_THAT = words_in("that it for the my last one mine a , . ! because i forgot was in on")


def lessened(message: Message) -> Amend | None:
    """The last amount less what is taken off it; without it where no record tells."""
    norms = message.norms
    if OFF.isdisjoint(norms) or word_count(message) > SHORT:
        return None
    if (over := _over(message)) is not None:
        return _left(message, over)
    at = next((i for i, norm in enumerate(norms) if norm not in _LED), len(norms))
    if "off" not in norms or at == len(norms) or _TAKING.isdisjoint(norms[:at]):
        return None
    amount = next((a for a in message.amounts if a.start == at), None)
    number = read_number(message.words, at)
    end = amount.end if amount else number.end if number and not number.word else 0
    if norms[end : end + 1] != ["off"] or not _is_of_record(norms[end + 1 :]):
        return None
    bare = None
    if amount is None and number is not None and message.context.units == "metric":
        bare = number.value / 1000 if number.value >= _GRAMS else number.value
    return _left(message, amount, bare) or Amend(rules=(BY_FORM,))


def _over(message: Message) -> Amount | None:
    """ "That's 500 g too much": what was written down beyond what went in."""
    norms, measured = message.norms, message.measured()
    if len(measured) != 1 or norms[measured[0].end : measured[0].end + 1] != ["too"]:
        return None
    told = _TOO_MUCH.issuperset(norms[measured[0].end :])
    return measured[0] if told and _SAID.issuperset(norms[: measured[0].start]) else None


_TOO_MUCH = words_in("too much many heavy high sorry , . ! i said wrote")
_SAID = words_in(
    "that it this is was 's i we said wrote put typed logged sorry oops no oh ah , . !"
)


def _left(message: Message, taken: Amount | None, bare: float | None = None) -> Amend | None:
    """The last amount less what is taken off; none where nothing would be left."""
    last = message.context.last
    mass, volume = getattr(last, "mass_kg", None), getattr(last, "volume_l", None)
    kind, said = ("mass", mass) if mass else ("volume", volume)
    much = taken.value if taken is not None and taken.quantity == kind else bare
    left = said - much if said and much else 0.0
    found = amount_of(kind, left) if left > 0 else None
    if found is None:
        return None
    return Amend(mass_kg=found.mass_kg, volume_l=found.volume_l, rules=(BY_FORM,))


_GRAMS = 20
"""A bare number from here on is of grams or millilitres."""


def _is_of_record(rest: list[str]) -> bool:
    """Whether it is taken off the record: "that", "for the tub", "it, I forgot the bowl"."""
    plain = all(norm in _FROM_THAT | VESSELS | REASONS for norm in rest)
    return plain and bool(rest) and (rest[0] in ("that", "it") or not VESSELS.isdisjoint(rest))
