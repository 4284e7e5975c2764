"""Starter that comes to what is on hand, or goes from it: bought, dried, given away, spilled."""

from handlers.reading.acts import Stock
from handlers.reading.food.quantities import amount_sum
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import BRAN, Message
from handlers.reading.plaintext import is_asking, with_people
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_RULE = "starter came or went"
A_BATCH = "a batch came to so much"
"""It is that of starter where one was mixed that can be dry by now."""
_LEAD = r"^(?:(?:i|we|qmember|just|also|and|ok|oops|sorry|accidentally|have|had|'ve|,) )*"
_BRAN = r"(?:of )?(?:(?:the|our|my|dry|fresh|new|ready|finished|bokashi) )*qbran\b"
_SACK = r"(?:bag|sack|tub|box|packet|bucket)s?"
_MUCH = rf"(?:(?:about|around|roughly|some|a) )*qmuch (?:{_SACK} )?{_BRAN}"
_BAGGED = rf"(?:(?:an?|one|the|another|new|fresh|big|small) )+{_SACK} {_BRAN}(?: [,:;-])* qmuch\b"
_CAME = Late(
    _LEAD + r"(?:(?:bought|purchased|received|picked up|ordered in|collected|fetched)(?: in)? "
    r"(?:(?:another|a further|an extra|more) )?|(?:got|have) (?:another|a further|an extra) )"
    rf"(?:{_MUCH}|{_BAGGED})|"
    rf"{_LEAD}{_MUCH} (?:(?:has|have|just|finally) )*(?:arrived|came|been delivered)\b"
    r"(?! (?:out|off|from|back))|"
    rf"{_LEAD}(?:(?:an?|the|another|new) )+{_SACK} {_BRAN} (?:(?:has|just|finally) )*"
    r"(?:arrived|came|been delivered)(?: qday| today)?(?: [,:;-])* qmuch\b"
)
_SOMEBODY = r"(?!(?:it|them|this|that|each|both|all|everything|him|her|top) )\w+(?: next door)?"
_WENT = Late(
    _LEAD + r"(?:gave|lent|spilled|spilt|lost|wasted|donated|sold|binned|threw)(?: away| out)? "
    rf"{_MUCH}|{_LEAD}(?:gave|lent|sold) (?:(?:the|my|our|her|his) )?{_SOMEBODY} {_MUCH}|"
    rf"{_LEAD}(?:brought|carried|passed|handed) {_MUCH} (?:over |round |on )*(?:to|home)\b|"
    rf"{_LEAD}(?:took|taken|grabbed|borrowed|scooped|helped (?:my|him|her)self to)(?: out)? "
    rf"(?:another |some )?{_MUCH}(?! (?:for|off|and) )|"
    rf"{_LEAD}(?:spilled|spilt|lost|wasted) (?:\w+ ){{0,4}}qbran , qmuch (?:gone|lost|wasted)$"
)
_READY = r"(?:(?:the|our|my|new|starter) )*(?:qbran|batch(?: of (?:the )?qbran)?)"
_IS_DRY = (
    rf"{_LEAD}{_READY} (?:(?:is|'s|has|now|all|finally) )*(?:dry|dried)(?: (?:now|at last|qday))*|"
    rf"{_LEAD}dried (?:all )?{_READY}"
)
_DRIED = Late(
    rf"(?:{_IS_DRY})(?: (?:[,:;-]|and|it|is|'s|was|came to|made|gave|weighs|about|today))* qmuch\b|"
    rf"{_LEAD}(?:bagged|jarred|packed)(?: up)? {_MUCH}"
)
_CAME_TO = Late(
    rf"{_LEAD}{_READY} (?:dried )?(?:came (?:to|out at)|gave|made|yielded|turned out(?: at)?)"
    r"(?: (?:about|around|roughly|in all|only))* qmuch(?: of (?:dry |dried )?qbran)?$"
)
_DRY = Late(rf"(?:{_IS_DRY})(?: today| now| at last| ,| done)*$")
_CUES = words_in(
    "bought purchased received picked ordered collected fetched another extra further gave lent "
    "spilled spilt lost wasted donated sold binned threw took taken grabbed borrowed scooped "
    "helped brought carried passed handed arrived came delivered dried dry bagged jarred packed "
    "made yielded turned"
)
_BATCH = BRAN | {"batch"}
_OTHERWISE = words_in("left remaining now not on over into in")
"""Beside these the amount is what is there, or went on a layer."""


def bran_moved(message: Message) -> Stock | None:
    """How much starter came or went, if that is what a sentence in a room tells."""
    if not message.context.in_room or not message.has(_BATCH) or not message.has(_CUES):
        return None
    measured = message.measured()
    measured = [a for a in measured if not a.vessel] or measured  # "a bag of bran, 3 kg"
    if len(measured) > 1 or len(message.sentences) > 1 or is_asking(message):
        return None
    if any(c.sense in _UNDONE for c in message.clauses):
        return None
    if any(ref.known or ref.plain for ref in message.bins):
        return None
    if not measured:
        return Stock(change="more", rules=(_RULE,)) if _DRY.match(_text(message)) else None
    text = _text(message, measured[0])
    is_bran = "qbran" in text or "dry" in message.norms
    came = _CAME.match(text) or _DRIED.match(text) or _CAME_TO.match(text)
    if not is_bran and (came is None or "batch" not in came[0] or measured[0].vessel):
        return None
    found = came or _WENT.match(text)
    if found is None or not _OTHERWISE.isdisjoint(text[found.end() :].split()):
        return None
    mass, volume = amount_sum(measured)
    rule = _RULE if is_bran else A_BATCH
    return Stock(mass_kg=mass, volume_l=volume, change="more" if came else "less", rules=(rule,))


_UNDONE = frozenset({"will", "if", "not", "said", "ask"})


def _text(message: Message, amount: Amount | None = None) -> str:
    """The words, the amount as `qmuch`, starter as `qbran`, members as `qmember`."""
    norms = message.norms.copy()
    for i, norm in enumerate(message.norms):
        taken_home = norm in BRAN and message.norms[i + 1 : i + 2] == ["home"]
        if taken_home or message.bran_at(i):
            norms[i] = "qbran"
    if amount is not None:
        norms[amount.start : amount.end] = ["qmuch"]
    return with_people(message, " ".join(norms)).strip(" ,.!")
