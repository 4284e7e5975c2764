"""What the bot is told by name to write down: "bot can you put 2 kg of veg in green for Dev"."""

from handlers.reading.message import Message, read_message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in("put record add log note write enter book")
_ORDER = Late(
    r"^(?:(?:please|pls|plz|kindly|hey|hi|,|can you|could you|would you|will you|just) )*"
    r"(?:put down|write down|note down|put|record|add|log|note|enter|book)\b(?: down)?"
)
_OTHER_DEEDS = words_in("drained sealed buried opened bran starter liquid")
_LONGEST = 30


def as_report(message: Message) -> Message | None:
    """The order to write something down as the report of it; None if it is none."""
    bots, norms = message.bot, message.norms
    if not message.context.in_room or not bots or bots[0] > 1 or len(norms) > _LONGEST:
        return None
    if (
        not message.has(CUES)
        or message.has(_OTHER_DEEDS)
        or "?" in norms
        or not (message.measured() and message.bins)
    ):
        return None
    start = bots[0] + 1
    start += norms[start : start + 1] in ([","], [":"])
    order = _ORDER.match(" ".join(norms[start:]))
    if order is None:
        return None
    at = start + len(order.group().split())
    words = [message.text(i, i + 1) for i in range(len(norms))]
    for led, spans in (("to", message.bins), ("on", message.days)):
        for span in spans:
            lead = span.start - 1 - (norms[span.start - 1] in ("the", "our"))
            if lead >= at and norms[lead] in ("for", "from"):
                words[lead] = led
    who = "I"
    for member in message.members:
        if member.start > at and norms[member.start - 1] == "for":
            who = member.name
            words[member.start - 1 : member.end] = [""] * (member.end - member.start + 1)
    return read_message(f"{who} added {' '.join(filter(None, words[at:]))}", message.context)
