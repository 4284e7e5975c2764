"""Records that the words themselves make doubtful: they are asked about before they are kept."""

from collections.abc import Callable, Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Ask, Bury, Drain, Layer, OnBins, Open, Seal, Unsure, meant
from handlers.reading.bins.targetbins import FED_BY_NAME
from handlers.reading.doubts.namesense import EATING, is_eaten_by_namesake
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.binwords import BIN_WORDS, PLACE_NAMES
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_TESTING = words_in("test testing")
_TEST = Late(
    r"^(?:(?:ok|hi|hello|hey|,|this|that|it|is|'s|just|only|a|an|i am|im|am) )*(?:test|testing)"
    r"(?: (?:test|testing|message|only|one two|1 2|1|two|,))*(?: [,.:;!—-]| \d| an? |$)"
)


def is_test(message: Message) -> bool:
    """ "Testing, 2 kg in the shed": somebody tries out the bot."""
    return message.has(_TESTING) and _TEST.search(plain_text(message)) is not None


_DOUBTFUL: tuple[Callable[[Message], bool], ...] = (is_test, is_eaten_by_namesake)
_WAVERING = words_in("or")
_OR_WAS_IT = Late(r"\bqbin \? or (?:was|is|were) (?:it|that|this) (?:in )?(?:the )?qbin\b")
_SAY = Late(
    r"^(?:(?:ok|so|,|now|and|well|let|lets|'s|us) )*say (?:i|we|you|that|somebody|someone) "
)
_SAYING = words_in("say")
_BOUGHT = words_in("bought buy buying quid bucks euros pounds cost costs £ $ €")
_PAID = words_in("bought buy buying")
_DRAWN = words_in("drained drain drew drawn tapped emptied off")
_BEGUN = words_in("opened open opening started start starting begun began set")
_CARRIED = words_in(
    "moved shifted carried brought took wheeled rolled dragged lugged stood put set"
)
_STANDS = Late(
    rf"\b(?P<deed>{'|'.join(sorted(_CARRIED))}) (?:the )?qbin (?:over |out |down |up |back )?"
    r"(?:(?P<near>to|by|near|beside|next to|against)|in|into|on|onto|under) "
)
_WHOSE = words_in("'s '")
_CUES = _BOUGHT | _CARRIED | _TESTING | EATING | _WAVERING | _SAYING | PLACE_NAMES | _WHOSE


def doubted(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts with the doubtful records to be asked about, and without a bin that is in doubt."""
    if message.has(FED_BY_NAME):
        acts = [_asked_first(act) if _is_fed_by_name(act, message) else act for act in acts]
    if not message.has(_CUES):
        return list(acts)
    if message.has(_WAVERING) and _OR_WAS_IT.search(plain_text(message)):
        return [replace(act, bin=None) if isinstance(act, OnBins) else act for act in acts]
    if message.has(_SAYING) and _SAY.search(plain_text(message)):
        beside: list[Act] = [act for act in acts if not isinstance(act, OnBins)]
        return beside or [_asked_of(act) for act in acts if isinstance(act, Layer)]
    if message.has(_CARRIED) and any(map(_is_burial, acts)):
        acts = _without_standing(acts, message)
    if message.has(_BOUGHT) and not message.has(_BEGUN):
        acts = [_asked_first(a) if _is_size_of_known(a, message) else a for a in acts]
    acts = [
        _asked_first(act)
        if _is_in_a_place(act, message) or (isinstance(act, Seal) and _is_a_room_shut(act, message))
        else act
        for act in acts
    ]
    if not any(is_such(message) for is_such in _DOUBTFUL):
        return list(acts)
    return [_asked_first(act) if isinstance(act, OnBins) else act for act in acts]


BY_PLACE = "a bin called by where it stands"
"""The rule of a deed on a bin that has no name: it may be any of those there are."""


def by_place(acts: Sequence[Act], message: Message) -> tuple[Act, ...]:
    """The acts, with that rule on those of "the bin under the sink"."""
    names = {
        ref.name
        for ref in message.bins
        if ref.place and not ref.known and message.norms[ref.start] in BIN_WORDS
    }
    if not names:
        return tuple(acts)
    return tuple(
        replace(act, rules=(*act.rules, BY_PLACE))
        if isinstance(act, OnBins) and act.bin in names
        else act
        for act in acts
    )


def _is_in_a_place(act: Act, message: Message) -> bool:
    """ "Put 3 kilo in balcony", "2 kg to Tina's", "to the porch one" where no bin is called so: a
    bin that stands there, the room or the house.
    """
    if not isinstance(act, Layer):
        return False
    norms = message.norms
    refs = [ref for ref in message.bins if ref.place and not ref.known and ref.name == act.bin]
    if any(norms[ref.end - 1] == "one" for ref in refs):
        return bool(message.context.bins)  # where there are others it may be one of them
    return any(
        norms[ref.start - 1 : ref.start] in (["in"], ["into"]) or norms[ref.end - 1] in _WHOSE
        for ref in refs
    )


def _is_fed_by_name(act: Act, message: Message) -> bool:
    """ "Hector got 2 kg of leeks", where no bin is called so: a new one, or a person."""
    if not isinstance(act, Layer):
        return False
    refs = [ref for ref in message.bins if ref.name == act.bin and not ref.known]
    refs = [r for r in refs if r.end - r.start == 1 and message.norms[r.start] not in BIN_WORDS]
    behind = {norm for ref in refs for norm in message.norms[ref.end : ref.end + 1]}
    return message.context.in_room and not behind.isdisjoint(FED_BY_NAME)


def _is_a_room_shut(act: Seal, message: Message) -> bool:
    """ "Closed the shed": the bin there, or the room."""
    named = [ref for ref in message.bins if ref.name == act.bin]
    rooms = bool(named) and all(ref.place and not ref.plain for ref in named)
    return message.context.in_room and rooms and not message.has(_OF_A_BIN)


_OF_A_BIN = words_in(
    "seal sealed sealing lid lids lidded taped tape clamped full brimming ferment fermenting "
    "fermentation good bran starter pressed airtight weeks fortnight bin bins bucket"
)
"""Words with which what was shut is a bin."""


def _without_standing(acts: Sequence[Act], message: Message) -> list[Act]:
    """ "Moved the shed bin to the pear bed": where it stands from now on, and it is not said to be
    buried; "into the pear bed" is asked about."""
    moved = _STANDS.search(plain_text(message))
    if moved is None or message.has(_DUG) or (moved["deed"], moved["near"]) == ("put", "to"):
        return list(acts)  # "put the shed bin to bed"
    if moved["near"]:
        return [act for act in acts if not _is_burial(act)]
    asked = moved["deed"] not in _PUT_IN
    return [_asked_first(a) if asked and isinstance(a, Bury) else a for a in acts]


_DUG = words_in("buried dug bury")
_PUT_IN = ("put", "set", "took")


def _is_burial(act: Act) -> bool:
    return isinstance(meant(act), Bury)


def _asked_first(act: Act) -> Unsure:
    return Unsure(guess=(act,), rules=("said in doubt",))


def _is_size_of_known(act: Act, message: Message) -> bool:
    """ "New kitchen bin 30 quid, 50 litres": of the bin that ferments, or of one in the shops."""
    if isinstance(act, Drain):
        return message.has(_PAID) and not message.has(
            _DRAWN
        )  # litres of a vessel, and of no liquid
    if not isinstance(act, Open) or not act.capacity_l:
        return False
    return any(ref.known and ref.name == act.bin for ref in message.bins)


def _asked_of(layer: Layer) -> Ask:
    """ "Say I put 2 kg in the shed": the dose for a layer that is only supposed."""
    return Ask(
        topic="dose", mass_kg=layer.mass_kg, volume_l=layer.volume_l, materials=layer.materials,
        rich=layer.rich, bin=layer.bin, rules=("of a supposed layer",),
    )  # fmt: skip
