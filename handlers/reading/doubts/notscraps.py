"""Amounts that are told like a layer's, of what went into no bin: body weight, catches, spills."""

from handlers.reading.doubts.notscrapturns import AMOUNT, TURNS
from handlers.reading.doubts.servedturns import SERVED
from handlers.reading.food.notfood import BITS, STUFFS, is_of_stuff
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text, with_people
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_TURNS = (*TURNS, *SERVED)
CUES = words_in(" ".join(cues for cues, _ in _TURNS))
"""Words without one of which nothing here is said."""
_PATTERNS = tuple((words_in(cues), Late(turns)) for cues, turns in _TURNS)
_MANY = words_in(
    "recipe room history banquet croutons anvil freezer potluck since carving courier bring "
    "shelter stall"
)
_OF_MANY = [cues for cues, _ in _PATTERNS if not cues.isdisjoint(_MANY)]
"""Those beside which more than one amount may stand."""
_PUT_IN = Late(
    r"\b(?:into|to|for|inside|feeding|fed) (?:(?:the|our|my|dear|old) )*qbin\b|"
    r"\bqbin(?: \w+)? (?:got|gets|had|ate|took|has|received|swallowed|:)|"
    r"\ball in (?:the |our )?qbin\b|[,.:(] ?(?:the )?qbin$|"
    r"\b(?:went|goes|gone|going|go) (?:straight |all )?(?:in|into|inside)\b|\bin (?:it|they) "
    r"went\b|"
    r"\b(?:binned|tipped|chucked|lobbed|slung|dumped|tossed|scraped|bunged|layered|swept)\b|"
    r"\b(?:scraps|peel|peels|peelings|skins|rinds|cores|leftovers|crusts|layer|guts|heads|bones)\b"
)
"""Words that may tell the layer itself in the rest of the message."""
_IN_BIN = Late(r"\b(?:in|inside) (?:(?:the|our|my) )*qbin\b|^qbin\b")
_MEASURED = Late(rf"\b{AMOUNT}\b")
"""An amount besides; a recipe has many."""


def is_no_scraps(message: Message) -> bool:
    """Whether the amount is of what went into no bin, and nothing besides is told."""
    words = CUES.intersection(message.norms)
    if not words:
        return False
    text = with_people(message, plain_text(message))
    in_bin = any(ref.plain for ref in message.bins)
    for cues, turns in _PATTERNS:
        found = None if words.isdisjoint(cues) else turns.search(text)
        if found is None:
            continue
        rest = f"{text[: found.start()]} ; {text[found.end() :]}".strip()
        more = cues not in _OF_MANY and _MEASURED.search(rest)
        if not (more or _PUT_IN.search(rest) or (in_bin and _IN_BIN.search(rest))):
            return True
    return False


def is_of_other_stuff(message: Message) -> bool:
    """ "Took the bag of scraps of wool to the shed, 3 kilos": nothing that was to eat is named."""
    norms = message.norms
    if not message.has(STUFFS) or any(norms[item.end - 1] not in BITS for item in message.items):
        return False
    return any(norm in BITS and is_of_stuff(norms, i + 1) for i, norm in enumerate(norms))


def is_bin_weighed(message: Message) -> bool:
    """ "Weighed the shed bin: 12 kg", "the shed is 12 kg on the scales", "it weighs 14 kg with the
    bucket": all that is told is what a bin weighs, and that is no layer.
    """
    measured = message.measured()
    if not message.has(WEIGHING) or len(measured) != 1 or measured[0].quantity != "mass":
        return False
    text = plain_text(message)
    tared = any(a.quantity == "difference" for a in message.amounts)
    tared = tared or message.norms[measured[0].end : measured[0].end + 1] in (["without"], ["net"])
    if tared or message.items or _WENT_IN.search(text):
        return False
    return _WHOLE.fullmatch(text) is not None or any(
        turn.search(text) is not None for turn in (_BIN_WEIGHED, _IT_WEIGHED)
    )


WEIGHING = words_in(
    "weighed weighs weighing weight scale scales told bucket lid altogether gross with including "
    "incl inc counting"
)
_WHOLE = Late(
    r"(?:(?:(?:it|that|the|our|my|qbin|one|bin|bucket|so|oh|and|now) )*(?:is|was|'s|weighs|came|"
    rf"comes|to|at|about|now|nearly) )*{AMOUNT} (?:with|including|incl|inc|counting) "
    r"(?:(?:the|its|it's) )?(?:qbin|bin|bucket|pail|caddy|tub|lid|crate)"
    r"(?: (?:and|the|lid|on|all|bin|bucket|itself|too|in all|now|mind))*"
)
_WENT_IN = Late(
    r"\b(?:in|into|inside|to) (?:(?:the|our|my) )*qbin\b|"
    r"\b(?:added|went|gone|goes|more|another|scraps|leftovers|waste|stuff)\b|"
    r"\b(?:put|chucked|threw|dropped|tipped)\b(?! (?:the )?qbin on)"
)
_MINE = r"(?:(?:the|our|my|whole|all of) )*"
_GROSS = (
    r"(?:(?:with|including|incl|inc|counting) (?:(?:the|its|own) )*(?:qbin|bucket|bin|lid|pail)|"
    r"bucket and all|lid and all|all told|altogether|gross|on the (?:bathroom |kitchen )?scales?)"
)
_BIN_WEIGHED = Late(
    rf"\b(?:weighed|weighing) {_MINE}qbin\b|"
    rf"\bqbin (?:(?:now|already|just|itself|alone) )?(?:weighs|weighed|tips the scales?)\b|"
    rf"\bqbin (?:(?:is|'s|was|came|comes|has come) )?.{{0,30}}{AMOUNT}.{{0,20}}\b{_GROSS}|"
    rf"\b(?:put|stood|got|set|lifted|hung|had|plonked|popped) {_MINE}qbin (?:up )?on(?:to)? "
    r"(?:(?:the|a|my|our|some|bathroom|kitchen|luggage) )*scales?\b|"
    rf"\bscales? (?:says?|said|shows?|showed|reads?|read|gave|gives) .{{0,20}}{AMOUNT} "
    rf"(?:for|on|with) {_MINE}qbin\b|"
    rf"\bweight of {_MINE}qbin\b|\bqbin 's (?:(?:total|gross|full) )?weight\b"
)
_IT_WEIGHED = Late(
    rf"\b(?:weighed (?:it|that)|(?:it|that) (?:weighs|weighed)) .{{0,40}}\b{_GROSS}|"
    rf"\b(?:weighed it|(?:it|that) weighs) {_GROSS}"
)


def is_taken_out(message: Message) -> bool:
    """ "Took 1 kg of meat out of the blue bin": nothing went in."""
    return message.has(TAKEN) and _TAKEN_OUT.search(plain_text(message)) is not None


TAKEN = words_in("took taken pulled fished scooped picked removed lifted")
_TAKEN_OUT = Late(
    r"\b(?:took|taken|pulled|fished|scooped|picked|removed|lifted) .{1,40}\b(?:out of|back out of|"
    r"from inside) (?:the |our |my )?qbin\b(?!.* (?:into|to|in) (?:the |our |my )?qbin)"
)


def is_poured_over(message: Message) -> bool:
    """ "Tipped bin 2 into the shed bin, 10 kg": what one bin held is no new scraps in either."""
    if not message.has(POURED) or message.has(_CARRIERS) or message.items:
        return False
    return _POURED_OVER.search(plain_text(message)) is not None


_CARRIERS = words_in("caddy bowl tub bag colander")
"""What scraps are carried to a bin in."""
POURED = words_in(
    "tipped emptied poured moved transferred decanted combined merged tip emptying turned dumped"
)
_POURED_OVER = Late(
    r"\b(?:tipped|tip|emptied|emptying|poured|moved|transferred|decanted|combined|merged|turned|"
    r"dumped) (?:all of |everything (?:in|from|out of) |the rest of )?"
    r"(?:(?:the|our|my) )?qbin (?:out |over |all |right )*"
    r"(?:in|into|to|with) (?:the |our |my )?qbin\b"
)
