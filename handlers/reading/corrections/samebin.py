"""What a bin got, told again of the layer just written down: "Elm was 3 lb", "red only got 2"."""

from dataclasses import replace

from handlers.reading.acts import Amend, Layer
from handlers.reading.corrections.amended import amend_from
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.message import Message
from handlers.reading.plaintext import is_asking, plain_text
from handlers.reading.words.late import Late

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
    taken_back = match["no"] or match["only"] or match["less"] or "not" in message.norms
    alone = match["verb"] == "was" and not message.items
    if not (taken_back or alone) or len(message.sentences) > 1:
        return None
    found = amend_from(message, _RULE)
    return replace(found, bin=None) if found.mass_kg or found.volume_l else None
