"""Amounts that are told like a layer's, of what went into no bin: body weight, catches, spills."""

from handlers.reading.doubts.notscrapturns import AMOUNT, TURNS
from handlers.reading.food.notfood import BITS, STUFFS, is_of_stuff
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text, with_people
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in(" ".join(cues for cues, _ in TURNS))
"""Words without one of which nothing here is said."""
_PATTERNS = tuple((words_in(cues), Late(turns)) for cues, turns in TURNS)
_MANY = words_in("recipe room history banquet croutons anvil freezer potluck")
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
    """ "Weighed the shed bin: 12 kg", "8 kg with the bucket": all told, that is no layer."""
    if not message.has(WEIGHED_WHOLE) or len(message.measured()) != 1:
        return False
    text = plain_text(message)
    gross = not message.items and _GROSS.fullmatch(text) is not None
    return gross or _BIN_WEIGHED.fullmatch(text) is not None


WEIGHED_WHOLE = words_in("weighed weighs with including incl inc counting")
_GROSS = Late(
    r"(?:(?:(?:it|that|the|our|my|qbin|one|bin|bucket|so|oh|and|now) )*(?:is|was|'s|weighs|came|"
    rf"comes|to|at|about|now|nearly) )*{AMOUNT} (?:with|including|incl|inc|counting) "
    r"(?:(?:the|its|it's) )?(?:qbin|bin|bucket|pail|caddy|tub|lid|crate)"
    r"(?: (?:and|the|lid|on|all|bin|bucket|itself|too|in all|now|mind))*"
)
_BIN_WEIGHED = Late(
    r"(?:(?:i|we|just|have|so) )*(?:weighed (?:(?:the|our|my) )?qbin|"
    r"(?:(?:the|our|my) )?qbin (?:(?:now|already|just) )?weighs)(?: full| now| today)?"
    rf"(?: ?[:,=—-])? (?:(?:it|it's|'s|is|was|at|and|came|comes|to|in|now|about|nearly|over) )*"
    rf"{AMOUNT}(?: (?:now|today|already|full|in all|all in|all told|with .*))*"
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
