"""Answers between neighbours: "I do. What time?", "yes, I have room", "my heart can't"."""

from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_LED = r"^(?:(?:yes|yep|yeah|yea|aye|sure|ok|okay|oh|ah|well|of course|course|no|nope|,|!) )*"
_BACK = Late(
    rf"{_LED}(?:(?:i|we|me|he|she|they)(?: (?:do|does|did|am|are|is|can|could|will|would|have|has|"
    r"might|should))?(?: not)?(?: too)?|(?:i|we) have (?:one|some|two|plenty)|will do|can do) "
    r"[.,!] (?:(?:but|and|so|just|hon|love|mate|pal|,) )*"
    r"(?:what|when|where|why|who|which|how|do|are|is|shall|should)\b"
)
"""An answer in a word or two, and what is asked back of whoever had asked."""
_ROOM = Late(
    rf"{_LED}(?:i|we)(?: do)? have (?:(?:got|plenty of|a|an|the|some|spare|lots of|loads of|enough|"
    r"just) )*(?:room|space|bed|sofa|couch|seat|seats|spot|spots)"
    r"(?: (?:here|too|left|love|hon|dear|for (?:you|them|him|her|both|all))| [.,!])*$"
)
_FLESH = Late(
    r"\b(?:my|our|his|her) (?:\w+ )?(?:hearts?|body|soul|brain|head|mind|nerves|knees?|legs?|feet|"
    r"back|hips?|shoulders?|eyes?|ears?|stomach|belly|lungs|liver|arms?|hands?|wallet|purse|bank|"
    r"budget|bladder|jeans|trousers|car|phone|laptop) (?:(?:just|simply|really|honestly|"
    r"literally) )*(?:cant|cannot)(?= [.,!]|$| (?:with|even|any ?more|handle|cope)\b|"
    r" take (?:it|this|much|any)\b| this (?:week|month)$)"
)
"""What a part of somebody cannot bear refuses no bin."""
_FETCHED = Late(
    rf"{_LED}(?:got|fetched|collected|grabbed|found) (?:it|them|your)\b.{{0,40}}"
    r"\b(?:whats|what (?:is|'s|are|have you got)).{0,20} in (?:it|them|there|here)\b|"
    r"\b(?:parcel|package|box|suitcase|rucksack|handbag|envelope|hamper)\b.{0,40}"
    r"\b(?:whats|what (?:is|'s)).{0,20} in (?:it|them|there|here)\b"
)
"""What is carried for somebody, and asked what is in it."""


def is_to_a_person(kind: str, message: Message) -> bool:
    """Whether an answer or question of that kind, with no bin in it, is between two people."""
    context = message.context
    if message.bot or context.on_offer or context.after_bot or context.on_handover:
        return False
    if kind == "ask bin" and message.has(_ASKED_IN) and _FETCHED.search(plain_text(message)):
        return True
    if kind == "done" and not context.in_room and message.has(_FINISHED):
        return True
    if kind == "accept" and message.has(_ROOMS) and _ROOM.search(plain_text(message)):
        return True
    if kind == "decline" and message.has(_UNABLE) and _FLESH.search(plain_text(message)):
        return True
    asked = kind in ("accept", "decline") or kind.startswith("ask ")
    return asked and len(message.sentences) > 1 and _BACK.search(plain_text(message)) is not None


_FINISHED = words_in(
    "paid form forms essay exam exams test homework tax taxes marathon race words chapter thesis "
    "dissertation interview passed sofa laundry ironing dishes booked posted voted spring-clean "
    "hoovering degree driving"
)
"""What people finish of their own; in a room it is asked about, where a job waits."""
_ASKED_IN = words_in("what whats")
_ROOMS = words_in("room space bed sofa couch seat seats spot spots")
_UNABLE = words_in("cant cannot")
