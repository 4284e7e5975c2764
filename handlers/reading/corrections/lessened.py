"""What was weighed with the scraps is taken off: "knock 200 g off for the bowl", "1 kg less"."""

from handlers.reading.acts import Amend, Layer
from handlers.reading.corrections.rightwrong import BY_FORM, REASONS, VESSELS
from handlers.reading.corrections.unitright import amount_of
from handlers.reading.measures.amountlists import read_amounts
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.plaintext import SHORT, word_count
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

OFF = words_in("off too less minus more twice double half without subtract deduct weighs weighed")
_TAKING = words_in("take knock drop minus shave subtract")
_LED = words_in("sorry oops please pls bot can you could we no and so oh ah better , !") | _TAKING
_FROM_THAT = words_in("that it for the my last one mine a , . ! because i forgot was in on")


def lessened(message: Message) -> Amend | None:
    """The last amount less what is taken off it; without it where no record tells."""
    norms = message.norms
    if OFF.isdisjoint(norms) or word_count(message) > SHORT:
        return None
    if (tare := _tare(message)) is not None:
        return _left(message, tare)
    if (over := _over(message)) is not None:
        return _left(message, over)
    if (over := _differing(message)) is not None:
        of_record = message.context.last is not None or "than" in norms
        return _left(message, over) or (Amend(rules=(BY_FORM,)) if of_record else None)
    if (times := _times_that(message)) is not None:
        return _so_often(message, times)
    if (taken := _taken_off(message)) is not None:
        amount, bare = taken
        of_last = {getattr(message.context.last, "bin", None)}.issuperset(_bins(message))
        return (_left(message, amount, bare) if of_last else None) or Amend(rules=(BY_FORM,))
    at = next((i for i, norm in enumerate(norms) if norm not in _LED), len(norms))
    if "off" not in norms or at == len(norms) or _TAKING.isdisjoint(norms[:at]):
        return None
    amount = next((a for a in message.amounts if a.start == at), None)
    number = read_number(message.words, at)
    end = amount.end if amount else number.end if number and not number.word else 0
    if norms[end : end + 1] != ["off"] or not _is_of_record(norms[end + 1 :]):
        return None
    bare = None if amount else _bare(message, at)
    return _left(message, amount, bare) or Amend(rules=(BY_FORM,))


def _bare(message: Message, at: int) -> float | None:
    """Kilos or litres that the number at words[at] may be of in a metric group."""
    number = read_number(message.words, at)
    if number is None or number.word or message.context.units != "metric":
        return None
    return number.value / 1000 if number.value >= _GRAMS else number.value


def _taken_off(message: Message) -> tuple[Amount | None, float | None] | None:
    """ "It was with the bucket, so take off 500 g", "minus 200 g for the bowl": what is taken off,
    or a bare number of it. It is no order to drain: it is of a layer, or a vessel was weighed.
    """
    norms = message.norms
    found = [k for k, norm in enumerate(norms) if norm in _TAKING]
    weighed = not VESSELS.isdisjoint(norms)
    if len(found) != 1 or not (weighed or isinstance(message.context.last, Layer)):
        return None
    [verb] = found
    at = verb + 1
    if norms[verb] in ("take", "knock", "shave"):
        off = norms[at : at + 1] == ["off"]
        at += off
    else:
        off = True
    while at < len(norms) and norms[at] in _ABOUT:
        at += 1
    amount = next((a for a in message.measured() if a.start == at), None)
    bare = None if amount else _bare(message, at)
    number = read_number(message.words, at) if amount is None and bare is not None else None
    end = amount.end if amount else number.end if number else 0
    rest = norms[end:] if off else norms[end + 1 :] if norms[end : end + 1] == ["off"] else None
    if not end or rest is None or any(day.start >= at for day in message.days):
        return None
    reason = norms[:verb]
    led = _LED.issuperset(reason) or (weighed and _WHY.issuperset(reason[-1:]))
    said = unheld(norms, indexes(message.bins), 0, verb)
    led = led or (_WHY.issuperset(reason[-1:]) and (_LED | _COUNTED).issuperset(said))
    return (
        (amount, bare) if led and all(n in _FROM_THAT | VESSELS | REASONS for n in rest) else None
    )


def _bins(message: Message) -> set[str | None]:
    return {ref.name for ref in message.bins if ref.known and ref.name}


_COUNTED = words_in(
    "double doubled counted doublecounted twice already some a bit of the i 'd 've "
    "have had been we it in bin - ."
)
"""What says that too much was written down: "I'd counted some twice, take 200 g off"."""
_ABOUT = words_in("about roughly around maybe another")
_WHY = words_in("so , . ; - and then please pls ! should can could to")


def _over(message: Message) -> Amount | None:
    """ "That's 500 g too much": what was written down beyond what went in."""
    norms, measured = message.norms, message.measured()
    if len(measured) != 1 or norms[measured[0].end : measured[0].end + 1] != ["too"]:
        return None
    told = _TOO_MUCH.issuperset(norms[measured[0].end :])
    return measured[0] if told and _SAID.issuperset(norms[: measured[0].start]) else None


def _tare(message: Message) -> Amount | None:
    """ "Less the tub, 200 g", "the bowl weighs 300 g": what a vessel weighs that stood on the scale
    too; what is more than half of the record is what is left of it.
    """
    whole, measured = getattr(message.context.last, "mass_kg", None), message.measured()
    if not whole or len(measured) != 1 or len(message.amounts) != 1:
        return None
    [much] = measured
    rest = [norm for norm in unheld(message.norms, indexes(measured)) if norm.isalpha()]
    told = not VESSELS.isdisjoint(rest) and not _WITHOUT.isdisjoint(rest)
    if not told or not (VESSELS | _WITHOUT | _OF_TARE).issuperset(rest):
        return None
    return much if much.quantity == "mass" and 0 < much.value <= whole / 2 else None


_WITHOUT = words_in("less minus without off subtract deduct weighs weighed")
_OF_TARE = words_in(
    "the my our a for of its itself empty alone that take knock is please sorry and"
)


def is_only_a_difference(message: Message) -> bool:
    """ "We have 1 kg of bran less": nothing is measured but how much less it is."""
    return not message.measured() and any(a.quantity == "difference" for a in message.amounts)


def _differing(message: Message) -> Amount | None:
    """ "It was 1 kg less", "that's 200 g more than I said": how much less than is written down."""
    if len(message.amounts) != 1 or message.amounts[0].quantity != "difference":
        return None
    norms, [told] = message.norms, message.amounts
    if not (_SAID.issuperset(norms[: told.start]) and _THAN_SAID.issuperset(norms[told.end + 1 :])):
        return None
    amounts = read_amounts(message.words[: told.end], norms[: told.end], message.context.units)
    if len(amounts) != 1:
        return None
    more = norms[told.end] == "more"
    return amounts[0]._replace(value=-amounts[0].value) if more else amounts[0]


_THAN_SAID = words_in("than that it i we said wrote put typed logged sorry please actually , . !")


def _times_that(message: Message) -> float | None:
    """ "It was twice that", "half that actually": how often the amount that is written down."""
    match = _TIMES_THAT.fullmatch(" ".join(message.norms))
    return _TIMES[match["times"]] if match and (match["it"] or match["times"] == "twice") else None


_TIMES = {"twice": 2.0, "double": 2.0, "half": 0.5}
_TIMES_THAT = Late(
    r"(?:(?:no|sorry|oops|oh|actually|,) )*"
    r"(?P<it>(?:(?:it|that) (?:was|is|'s) |make (?:it|that) )?)"
    r"(?:(?:only|really|actually|about|more like) )*(?P<times>twice|double|half) (?:of )?that"
    r"(?: (?:actually|really|sorry|please|[,.!]))*"
)


def _so_often(message: Message, times: float) -> Amend | None:
    """The last amount so many times; none where no record tells one."""
    last = message.context.last
    mass, volume = getattr(last, "mass_kg", None), getattr(last, "volume_l", None)
    if not (mass or volume):
        return None
    mass, volume = mass and mass * times, volume and volume * times
    return Amend(mass_kg=mass, volume_l=volume, rules=(BY_FORM,))


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
