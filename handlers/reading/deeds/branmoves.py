"""Starter that comes to what is on hand, or goes from it: bought, dried, given away, spilled."""

from typing import Literal

from handlers.reading.acts import Batch, Stock
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
_SAY = r"(?:(?:about|around|roughly|maybe|perhaps|some|like|say|only|just|a|nearly|almost) )*"
_SACK = r"(?:bag|sack|tub|box|packet|bucket)s?"
_MUCH = rf"(?:(?:about|around|roughly|some|a|another) )*qmuch (?:{_SACK} )?{_BRAN}"
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
_EATERS = r"(?:mice|mouse|rats?|hens|chickens|dogs?|birds|pigeons|goats?|squirrels?|ants|weevils)"
_WENT = Late(
    _LEAD + r"(?:gave|lent|spilled|spilt|lost|wasted|donated|sold|binned|threw)(?: away| out)? "
    rf"{_MUCH}|{_LEAD}(?:gave|lent|sold) (?:(?:the|my|our|her|his) )?{_SOMEBODY} {_MUCH}|"
    rf"{_LEAD}(?:brought|carried|passed|handed) {_MUCH} (?:over |round |on )*(?:to|home)\b|"
    rf"{_LEAD}(?:took|taken|grabbed|borrowed|scooped|helped (?:my|him|her)self to)(?: out)? "
    rf"(?:another |some )?{_MUCH}(?! (?:for|off|and) )|"
    rf"{_LEAD}(?:spilled|spilt|dropped|lost|wasted) (?:\w+ ){{0,4}}qbran(?: ,| -| \()* {_SAY}qmuch"
    rf"(?: (?:gone|lost|wasted|or so|i think|i guess|sorry|oops|,|\)))*$|"
    rf"{_LEAD}(?:dropped|knocked over|tipped over) {_MUCH} qfloor|"
    rf"{_LEAD}(?:the |some )?{_EATERS} (?:(?:have|has|had|'ve|all|just) )*(?:ate|eaten|had|got|got "
    rf"at|nicked|stole|stolen|scoffed) {_MUCH}|"
    rf"{_LEAD}(?:the )?{_EATERS} .{{0,20}}qbran .{{0,12}}(?:lost|gone|ate) {_SAY}qmuch(?: gone)?$|"
    rf"{_LEAD}(?:(?:about|around|roughly|some|a|nearly) )*{_MUCH} (?:(?:has|is|'s|was|had|just|all)"
    r" )*(?:(?:went|gone|ended up|landed|fell) qfloor|spilled|spilt|lost|wasted|ruined|"
    r"spoiled|spoilt|thrown|binned|(?:got|gone|went|been) (?:wet|damp|mouldy|moldy|off|bad|green|"
    r"black|in the (?:bin|rubbish|trash))|to be (?:thrown|binned|chucked)|down the drain)\b"
)
_FLOOR = Late(
    r"\b(?:all )?(?:on|over|onto|across|by accident on|to) (?:to )?(?:the |my |our )?(?:kitchen |"
    r"garage |shop )?(?:floor|ground|carpet|stairs|path|grass|lawn|worktop|counter|table)\b|"
    r"\bby accident\b"
)
"""Where nobody puts starter on purpose: it is lost there."""
_COUNTED = Late(
    rf"^(?:(?:i|we|just|so|ok|,|now|well|there|is|'s|that|have|'ve|and|only|still|got|it|then) )*"
    rf"(?:(?:counted|weighed|checked|measured)(?: (?:it|that|again|up|the rest|[,:-]))* )?"
    rf"{_SAY}qmuch(?: (?:is )?(?:left|remaining|on hand|in stock|still there|altogether|in all|now|"
    r"in the (?:jar|bag|tin|tub|sack|bucket|cupboard|box)))*(?: (?:, )?(?:i think|i guess))?$"
)
"""What is there, told in a talk of starter."""
_FOUND = words_in(
    "counted weighed checked measured left remaining hand stock still jar bag tin tub sack box "
    "cupboard altogether"
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
    "made yielded turned dropped knocked tipped mice mouse rat rats hens chickens dog birds "
    "pigeons goat squirrels ants weevils floor ground wet damp mouldy moldy ruined spoiled thrown"
)
_LEANING = _CUES | _FOUND
_BATCH = BRAN | {"batch"}
_OTHERWISE = words_in("left remaining now not on over into in")
"""Beside these the amount is what is there, or went on a layer."""


def bran_moved(message: Message) -> Stock | None:
    """How much starter came or went, if that is what a sentence in a room tells."""
    if not message.context.in_room:
        return None
    named = message.has(_BATCH)
    if not message.has(_CUES if named else _LEANING) or not _tells_one_thing(message):
        return None
    measured = message.measured()
    measured = [a for a in measured if not a.vessel] or measured  # "a bag of bran, 3 kg"
    if len(measured) > 1:
        return None
    if not named:
        talked_of = (
            measured
            and len(message.norms) <= _LONGEST
            and not message.items
            and _is_talk_of_bran(message)
        )
        return _of_talk(message, measured[0]) if talked_of else None
    if not measured:
        return Stock(change="more", rules=(_RULE,)) if _DRY.match(bran_text(message)) else None
    return _moved(message, measured[0])


def _tells_one_thing(message: Message) -> bool:
    """Whether it is one sentence of what was done, and of no bin."""
    if len(message.sentences) > 1 or is_asking(message):
        return False
    undone = any(
        c.sense in _UNDONE and message.norms[c.start : c.start + 2] != ["had", "to"]
        for c in message.clauses
    )
    return not undone and not any(ref.known or ref.plain for ref in message.bins)


def _moved(message: Message, amount: Amount) -> Stock | None:
    """What came or went, where starter or a batch is named."""
    text = bran_text(message, amount)
    is_bran = "qbran" in text or "dry" in message.said
    came = _CAME.match(text) or _DRIED.match(text) or _CAME_TO.match(text)
    if not is_bran and (came is None or "batch" not in came[0] or amount.vessel):
        return None
    found = came or _WENT.match(text)
    if found is None or not _OTHERWISE.isdisjoint(text[found.end() :].split()):
        return None
    return _stock(amount, "more" if came else "less", _RULE if is_bran else A_BATCH)


def _of_talk(message: Message, amount: Amount) -> Stock | None:
    """ "Counted it, 2.4 kg", "bought another kilo", "spilled 100 g": told in a talk of starter, and
    nothing else said.
    """
    text = bran_text(message, amount)
    if message.has(_FOUND) and _COUNTED.match(text):
        return _stock(amount, None, _RULE)
    text = _OF_IT.sub("qmuch qbran", text)
    came = _CAME.match(text)
    found = came or _WENT.match(text)
    whole = found is not None and _BESIDES.issuperset(text[found.end() :].split())
    return _stock(amount, "more" if came else "less", _RULE) if whole else None


def _stock(amount: Amount, change: Literal["more", "less"] | None, rule: str) -> Stock:
    mass, volume = amount_sum([amount])
    return Stock(mass_kg=mass, volume_l=volume, change=change, rules=(rule,))


def _is_talk_of_bran(message: Message) -> bool:
    """Whether the record or the question just before was of starter, so that an amount is of it."""
    context = message.context
    if isinstance(context.just_told or context.last, Stock | Batch):
        return True
    return bool(context.asked) and context.asked[-1].topic == "starter"


_LONGEST = 20
"""Words that may lean on a talk of starter."""
_OF_IT = Late(r"\bqmuch\b(?: of (?:it|that|the stuff|the stock))?")
_BESIDES = words_in("qfloor , too today yesterday again sorry oops just now . ! in town")
"""Words that may stand behind what came or went."""
_UNDONE = frozenset({"will", "if", "not", "said", "ask"})


def bran_text(message: Message, amount: Amount | None = None) -> str:
    """The words, the amount as `qmuch`, starter as `qbran`, members as `qmember`."""
    norms = message.norms.copy()
    for i, norm in enumerate(message.norms):
        taken_home = norm in BRAN and message.norms[i + 1 : i + 2] == ["home"]
        if taken_home or message.bran_at(i):
            norms[i] = "qbran"
    if amount is not None:
        norms[amount.start : amount.end] = ["qmuch"]
    return _FLOOR.sub("qfloor", with_people(message, " ".join(norms)).strip(" ,.!"))
