"""What a few words add to the record that the talk is on: a sign ("flies too", "black too"), scraps
("plus a bit of chicken", "and 2 of bread"), the liquid that was seen ("I have removed it, 200 ml");
and things in a bin that nobody weighed ("3 bananas in green").
"""

from collections.abc import Sequence
from dataclasses import replace

from handlers.practice.signs import MOULD_OF_COLOUR, Sign
from handlers.reading.acts import Amend, Drain, Layer, Observe, Unsure
from handlers.reading.corrections.numberright import number_meant
from handlers.reading.food.items import Item
from handlers.reading.food.makeups import makeup
from handlers.reading.food.quantities import amount_sum
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message, read_message
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

_RULE = "a few words that go on from a record"
_LONGEST, _LONGEST_REMOVED = 8, 12
_FURTHER = words_in("and plus too also well & +")
_REMOVED = words_in("removed took taken drained poured emptied drew drawn")
_FORGOT = words_in("forgot")
CUES = _FURTHER | _REMOVED | _FORGOT
"""Words without one of which nothing goes on from a record."""
_OF_SIGNS = _FURTHER | words_in(
    "it has got have had there is are 's some a an few lots lot of bit bits as now oh the in "
    "patch patches spot spots one ones stuff , . ! ☺"
)
_COUNTED = words_in("a an bit some my our few couple couple's little old last the two half")
_OF_SCRAPS = _FURTHER | _COUNTED | words_in("of oh as bits , . !")


def goes_on(message: Message) -> Observe | Layer | Drain | None:
    """The sign, the scraps or the liquid, in the bin of the record that the talk is on."""
    last, norms = message.context.last, message.norms
    if len(norms) > _LONGEST_REMOVED or "?" in norms or message.days or message.members:
        return None
    if isinstance(last, Observe) and "much_liquid" in last.signs and message.has(_REMOVED):
        return _removed(last, message)
    if message.bins or len(norms) > _LONGEST or not message.context.after_bot:
        return None  # behind other talk it may go on from that
    if isinstance(last, Observe) and last.signs and last.bin:
        signs = _further_signs(last, message)
        new = tuple(sign for sign in signs if sign not in last.signs)
        return Observe(signs=new, bin=last.bin, on=message.today, rules=(_RULE,)) if new else None
    if not isinstance(last, Layer) or last.bin is None:
        return None
    if last.member not in (None, message.context.sender):
        return None
    if norms[0] in _FORGOT | _BEFORE_FORGOT and message.has(_FORGOT):
        return _forgotten(last, message)
    if message.amounts:
        return None
    further = _further_scraps(last, message)
    return further and replace(further, bin=last.bin, on=last.on, rules=(_RULE,))


def _forgotten(last: Layer, message: Message) -> Layer | None:
    """ "Forgot the rice, 300 g": what went in besides; unweighed it may not have gone in."""
    items, measured = _specific(message), message.measured()
    made = makeup(items) if items else None
    rest = unheld(message.norms, indexes(items, measured))
    if made is None or len(measured) != 1 or not _OF_FORGOTTEN.issuperset(rest):
        return None
    mass, volume = amount_sum(measured)
    return Layer(
        mass_kg=mass,
        volume_l=volume,
        materials=made.shares,
        rich=made.rich,
        bin=last.bin,
        on=last.on,
        rules=(_RULE,),
    )


_BEFORE_FORGOT = words_in("oh i and sorry oops also ah")
_OF_FORGOTTEN = (
    _BEFORE_FORGOT
    | _FORGOT
    | words_in(
        "about to add say mention the my some a of was were it 's that in too as well , . : - !"
    )
)


_TAKEN_OUT = Late(
    rf"(?:(?:ok|i|we|have|'ve|ive|now|just|and|so|,) )*(?:{'|'.join(sorted(_REMOVED))}) "
    r"(?:it|that|some|them|(?:the |all the )?(?:water|liquid|juice))"
    r"(?: (?:out|off|away|all|now|[,:.-]))* (?:(?:about|it was|that was|got|around) )*qmuch"
)


def _removed(last: Observe, message: Message) -> Drain | None:
    """ "I have removed it, 200 ml", of the liquid that was seen."""
    amounts = [a for a in message.measured() if a.quantity == "volume"]
    if len(amounts) != 1 or len(message.amounts) != 1:
        return None
    [much], norms = amounts, message.norms
    behind = [norm for norm in norms[much.end :] if norm not in ".!☺"]
    text = " ".join([*norms[: much.start], "qmuch", *behind])
    if _TAKEN_OUT.fullmatch(text) is None:
        return None
    return Drain(volume_l=much.value, bin=last.bin, on=message.today, rules=(_RULE,))


def _further_signs(last: Observe, message: Message) -> Sequence[Sign]:
    """ "Flies too"; "black too" behind another mould."""
    norms = message.norms
    seen = [each for each in message.signs if not each.absent]
    if len(seen) < len(message.signs):
        return ()
    colours = [norm for norm in norms if norm in MOULD_OF_COLOUR]
    if not seen and len(colours) == 1 and any("mould" in sign for sign in last.signs):
        seen = list(read_message(f"{colours[0]} mould", message.context).signs)
        return [each.sign for each in seen] if _OF_SIGNS.issuperset({*norms} - {*colours}) else ()
    held = indexes(seen)
    rest = unheld(norms, held)
    return [each.sign for each in seen] if seen and _OF_SIGNS.issuperset(rest) else ()


def _further_scraps(last: Layer, message: Message) -> Layer | None:
    """ "Garlic peel also", "plus a bit of chicken", "and 2 of bread"."""
    norms, items = message.norms, _specific(message)
    if not items:
        return None
    made, held = makeup(items), set(indexes(items))
    if made is None:
        return None
    number = read_number(message.words, 1) if norms[0] in _FURTHER and len(norms) > 1 else None
    amount: Amend | None = None
    if number and not number.word and norms[number.end : number.end + 1] == ["of"]:
        amount = number_meant(number.value, message)
        held |= {*range(1, number.end)}
    rest = {*unheld(norms, held)}
    lone = norms[0] == "and" and rest.isdisjoint(_COUNTED | _FURTHER - {"and"}) and amount is None
    if lone or not _OF_SCRAPS.issuperset(rest):
        return None  # "and chicken" may ask
    return Layer(
        mass_kg=amount.mass_kg if amount else None,
        volume_l=amount.volume_l if amount else None,
        materials=made.shares,
        rich=made.rich,
    )


def _specific(message: Message) -> list[Item]:
    """What is named of scraps; none where any of it is said not to be there."""
    items = [item for item in message.items if not item.generic]
    whole = all(not i.absent and i.food.shares[0][0] != "liquid" for i in items)
    return items if whole else []


_LED = words_in("a an some my our few couple of half the leftover last old bits bit and + &")
_INTO = words_in("in into to the our")


def things_in(message: Message) -> Layer | Unsure | None:
    """ "3 bananas in green", "some stale bread in the shed": the whole of what is said; of a bin
    that is called by a place it is asked about, for the place may be meant."""
    norms = message.norms
    if len(message.bins) != 1 or message.amounts or len(norms) > _LONGEST:
        return None
    items = _specific(message)
    if not items:
        return None
    [ref], last = message.bins, items[-1]
    number = read_number(message.words, 0)
    led = number is not None or norms[0] in _LED
    if not (led and ref.known and ref.name) or message.signs or "?" in norms or message.members:
        return None
    start = number.end if number else 0
    held = indexes(items)
    lead = unheld(norms, held, start, last.end)
    between = norms[last.end : ref.start]
    behind = [norm for i, norm in enumerate(norms) if i >= ref.end and norm not in ".!☺"]
    day = next((d for d in message.days if d.start == ref.end and d.end == len(norms)), None)
    whole = _LED.issuperset(lead) and between and _INTO.issuperset(between) and (not behind or day)
    made = makeup(items)
    if not whole or made is None:
        return None
    on = day.past if day else message.today
    layer = Layer(bin=ref.name, materials=made.shares, rich=made.rich, on=on, rules=(_RULE,))
    return Unsure(guess=(layer,), rules=(_RULE,)) if ref.place and not ref.plain else layer
