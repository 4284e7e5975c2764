"""How much there was of a record that was told without an amount: "300 mL" behind "drained blue",
"dunno, 200 g?" behind "some kale in green".
"""

from handlers.reading.acts import Amend, Drain, Layer, Unsure
from handlers.reading.corrections.amending import BARE_AMOUNT, is_bare_amount
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.food.makeups import makeup
from handlers.reading.food.quantities import amount_sum, scrap_amounts
from handlers.reading.grouping import groups_of
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message, read_message
from handlers.reading.plaintext import is_asking, plain_text, word_count
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.wording import FURTHER, first_in

_MOST_WORDS = 12


def amount_owed(message: Message) -> Amend | Unsure | None:
    """ "300 mL" behind "drained blue", "a bowl and a half" behind "leftovers in green": how much
    there was of the record that lacks it, and no further layer.

    Where others have spoken since, scraps are asked about: it may be their question's answer.
    """
    record = spoken_of(message)
    if not isinstance(record, Drain | Layer) or is_measured(record):
        return None
    hedged = message.context.after_bot or message.has(_ROUNDLY | _ESTIMATED)
    message = _without_hedges(message)
    match record:
        case Drain(volume_l=None) if is_bare_amount(_without_coming(message)):
            owed = [a for a in message.measured() if a.quantity == "volume"]
        case Layer(mass_kg=None, volume_l=None) as layer if _is_amount_of(layer, message):
            owed = scrap_amounts(groups_of(message)[-1])
        case Drain() | Layer() if hedged:
            return _if_sure(_small_units_owed(record, message), message)
        case _:
            return None
    mass, volume = amount_sum(owed)
    if not (mass or volume):
        return None
    return _if_sure(Amend(mass_kg=mass, volume_l=volume, rules=(BARE_AMOUNT,)), message)


def is_measured(record: Drain | Layer) -> bool:
    """Whether the record tells how much it was."""
    return bool(record.volume_l or (isinstance(record, Layer) and record.mass_kg))


def _if_sure(owing: Amend | None, message: Message) -> Amend | Unsure | None:
    """The amount; asked about where it may answer what another has said since."""
    if owing is None:
        return None
    doubtful = message.context.last is None and isinstance(message.context.earlier, Layer)
    return Unsure(guess=(owing,), rules=owing.rules) if doubtful else owing


def _without_coming(message: Message) -> Message:
    """ "Got 150 ml", "about half a litre came out": without what says that it came out."""
    norms, end = message.norms, len(message.norms)
    start = next((i for i, norm in enumerate(norms) if norm not in _COMING), end)
    while end > start and norms[end - 1] in _COME:
        end -= 1
    if (start, end) == (0, len(norms)) or start == end:
        return message
    return read_message(message.text(start, end), message.context)


_COMING = words_in("got it gave there was were about we i had took that 's")
_COME = words_in("out off came this time of it . !")


def _small_units_owed(record: Drain | Layer, message: Message) -> Amend | None:
    """ "About 500" in answer to how much it was: grams or millilitres, in a metric group."""
    norms = [norm for norm in message.norms if norm not in _ROUNDLY]
    metric = message.context.units == "metric" and not (message.amounts or message.bins)
    if not metric or len(norms) != 1 or is_asking(message):
        return None
    at = message.norms.index(norms[0])
    number = read_number(message.words, at)
    if number is None or number.word or not _FEWEST <= number.value <= _MOST:
        return None
    if isinstance(record, Drain):
        return Amend(volume_l=number.value / 1000, rules=(BARE_AMOUNT,))
    return Amend(mass_kg=number.value / 1000, rules=(BARE_AMOUNT,))


_ROUNDLY = words_in("about around roughly approx maybe ish or so ~ . ! , say probably")
_FEWEST, _MOST = 50, 5000
"""A bare number between them is of grams or millilitres."""


def _is_amount_of(layer: Layer, message: Message) -> bool:
    """Whether no more is told than an amount, of the same things if of any."""
    if message.bins or any(c.verb is not None or c.sense != "none" for c in message.clauses):
        return False
    few = word_count(message) <= _MOST_WORDS and len(message.measured()) == 1
    if not few or is_asking(message) or first_in(FURTHER, plain_text(message)):
        return False
    made = makeup([item for item in message.items if not item.generic])
    return made is None or made.shares.keys() <= (layer.materials or {}).keys()


_UNSURE = (
    r"(?:no idea|no clue|not sure|(?:i )?dont know|hard to say|hm+|um|er|oh|well|wait|sorry|no|"
    r"perhaps|possibly|probably|maybe|i (?:think|guess|reckon|suppose|(?:'d|would) say)|say|like|"
    r"but|[,.?-])"
)
_LED = Late(rf"^(?:{_UNSURE} )+")
_ENDED = Late(rf"(?: (?:{_UNSURE}|tops))+$")
_ESTIMATED = words_in(
    "idea clue sure know maybe perhaps possibly probably think guess reckon suppose say wait sorry"
)


def _without_hedges(message: Message) -> Message:
    """ "Dunno, 200 g?", "about 200 I think": what is said, without that it is an estimate."""
    if word_count(message) > _MOST_WORDS or not message.has(_ESTIMATED):
        return message
    text = " ".join(message.norms)
    led, ended = _LED.match(text), _ENDED.search(text)
    start = led.group().count(" ") if led else 0
    end = len(message.norms) - (ended.group().count(" ") if ended else 0)
    if not start < end or (start, end) == (0, len(message.norms)):
        return message
    return read_message(message.text(start, end), message.context)
