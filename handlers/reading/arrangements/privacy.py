"""What somebody asks the bot about themselves: what it knows of them, and to be forgotten.

The reading contract has no such acts: they are read only where a message is said to the bot
(`Context.to_bot`), and only where it says nothing else.
"""

from handlers.reading.acts import Act, Ask, Forget
from handlers.reading.message import Message
from handlers.reading.words.late import Late

_POLITE = r"(?:(?:so|ok|hey|hi|hello|please|and|can you|could you|would you|will you|tell me|show me|i want you to|i would like you to|i want to know|now|just) )*"  # noqa: E501
_THINGS = r"(?:data|details|info|information|records?)"
_KEEP = (
    r"(?:know|knew|have|got|keep|kept|store|stored|hold|held|remember|remembered|save|saved|record|"
    r"recorded|collect|collected|note|noted|write|written)"
)
_KNOWN = Late(
    rf"{_POLITE}(?:"
    rf"(?:what|which|everything|all)(?: all)?(?: (?:personal )?{_THINGS})?"
    rf"(?: (?:do|have|did))? you(?: all)? (?:have )?{_KEEP}(?: down| stored| saved)?"
    r" (?:about|on|of) me"
    rf"|(?:what|which) (?:personal )?{_THINGS} (?:is|are) (?:there|{_KEEP}) (?:about|on|of) me"
    rf"|what(?: is| 's) {_KEEP} (?:about|on|of) me"
    rf"|(?:all )?my (?:own |personal )?(?:data|{_THINGS}))(?: please| then| now| here)*"
)
_FORGET = Late(
    rf"{_POLITE}(?:forget|delete|erase|remove|wipe) (?:"
    r"(?:all about |everything about |everything on )?me"
    rf"|(?:all )?(?:of )?my (?:personal )?(?:data|{_THINGS}|name|account)"
    rf"|(?:everything|all|what) (?:that )?you {_KEEP} (?:about|on|of) me)"
    r"(?: from (?:the|your|this) (?:books?|records?|room|memory))?"
    r"(?: please| now| completely| entirely| altogether)*(?P<sure> for good| for ever| forever)?"
    r"(?: please| now)*"
)
_ANOTHER = Late(
    rf"{_POLITE}(?:forget|erase|delete) (?:all about |everything about |everything on )?qname"
    r"(?: s (?:data|records?|name|account|messages|details))?"
    r"(?: from (?:the|your|this) (?:books?|records?|memory))?"
    r"(?: please| now| completely| entirely)*(?: for good| for ever| forever)?(?: please| now)*"
)


def about_oneself(message: Message) -> tuple[Act, ...]:
    """What the sender asks about themselves; nothing if the message says anything else."""
    names = message.context.bot_names
    words = [word.norm for word in message.words if word.kind == "word" and word.norm not in names]
    said = " ".join(words)
    if _KNOWN.fullmatch(said):
        return (Ask(topic="me", rules=("asks what is kept about the sender",)),)
    if found := _FORGET.fullmatch(said):
        return (Forget(sure=bool(found["sure"]), rules=("asks to be forgotten",)),)
    return _of_another(message)


def _of_another(message: Message) -> tuple[Act, ...]:
    """ "Pailkeeper, forget Bram": what only Bram can ask."""
    if len(message.members) != 1:
        return ()
    [member] = message.members
    norms = [*message.norms[: member.start], "qname", *message.norms[member.end :]]
    names = message.context.bot_names
    said = " ".join(norm.lstrip("'") for norm in norms if norm.isalnum() or norm == "'s")
    said = " ".join(word for word in said.split() if word not in names)
    if not _ANOTHER.fullmatch(said) or member.name == message.context.sender:
        return ()
    return (Forget(whose=member.name, rules=("asks it of another",)),)
