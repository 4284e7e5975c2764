"""What a bin got, told again of the layer just written down: "Elm was 3 lb", "red only got 2"."""

from dataclasses import replace

from handlers.reading.acts import Amend, Layer, Unsure
from handlers.reading.corrections.amended import amend_from
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.corrections.numberright import number_meant
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.plaintext import is_asking, plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_RULE = "what the bin got, told again"
_TOLD_AGAIN = Late(
    r"(?P<no>(?:(?:no|nope|nah|oh|ah|oops|sorry|actually|wait|well|hang on|,) )*)"
    r"(?:(?:the|my|our) )?qbin(?: bin)? "
    r"(?:(?P<only>only|just|really|actually) )*(?P<verb>got|had|was|took|weighed) "
    r"(?P<less>(?:only |just |really )?)"
)


def same_bin_again(message: Message) -> Amend | None:
    """The right amount of the layer that the talk is on, if that was in the bin named."""
    last = spoken_of(message)
    if not isinstance(last, Layer) or last.bin is None or is_asking(message):
        return None
    names = {ref.name for ref in message.bins}
    if names != {last.bin} or not message.measured():
        return None
    match = _TOLD_AGAIN.match(plain_text(message) + " ")
    if match is None or message.days:
        return None
    taken_back = match["no"] or match["only"] or match["less"] or "not" in message.said
    alone = match["verb"] == "was" and not message.items
    if not (taken_back or alone) or len(message.sentences) > 1:
        return None
    found = amend_from(message, _RULE)
    return replace(found, bin=None) if found.mass_kg or found.volume_l else None


def bare_in_another(message: Message) -> Unsure | None:
    """ "3 in blue" right behind the sender's "4 kg in red": asked about, in the same unit."""
    last, norms = message.context.last, message.norms
    if not isinstance(last, Layer) or len(message.bins) != 1 or message.amounts or message.items:
        return None
    [ref] = message.bins
    own = last.member in (None, message.context.sender)
    number = read_number(message.words, 1 if norms[0] == "and" else 0)
    if not own or not ref.known or ref.name in (None, last.bin) or number is None or number.word:
        return None
    between, behind = norms[number.end : ref.start], norms[ref.end :]
    if between not in _INTO or not _ENDS.issuperset(behind):
        return None
    much = number_meant(number.value, message)
    if much is None:
        return None
    told = Layer(
        bin=ref.name,
        mass_kg=much.mass_kg,
        volume_l=much.volume_l,
        materials={"mixed": 1.0},
        on=message.today,
        rules=(_BARE,),
    )
    return Unsure(guess=(told,), rules=(_BARE,))


_BARE = "so many in another bin"
_INTO = tuple([[lead, *the] for lead in ("in", "into", "to") for the in ([], ["the"])])
_ENDS = words_in(". ! bin one too as well")
