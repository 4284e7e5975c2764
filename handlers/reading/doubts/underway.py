"""Scraps that are still on the way to a bin, or that somebody else is asked to put in."""

from handlers.reading.message import Message
from handlers.reading.phrases import named_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in(
    "way heading headed popping nipping coming setting bound bringing carrying taking halfway "
    "peeling chopping basket rucksack backpack handlebars pannier panniers trailer gate door "
    "padlocked locked would please pls when anybody somebody someone anyone bagged boxed weighed "
    "for waiting offload shift rid home list pop throw tip chuck drop stick bung sling lob "
    "scrape add will going gonna planning"
)
_TO_PUT = r"(?:pop|throw|tip|chuck|drop|stick|bung|sling|lob|scrape|shove|add|put)"
_UNDER_WAY = Late(
    r"^(?:\S+ ){0,2}on (?:the|my|our|his|her) way (?:over |up |down |round |out )?"
    rf"(?:with|to (?:qbin|the qbin|{_TO_PUT})) |"
    r"\b(?:heading|headed|popping|nipping|coming|setting) "
    r"(?:off |out |over |down |up |round |now |straight |across |there |just ){1,3}(?:with|to)\b|"
    r"\bbound for\b|\b(?:am|we are) (?:just )?(?:bringing|carrying|taking)\b|"
    r"\bhalfway through (?:chopping|peeling|cutting)\b|^still (?:peeling|chopping)\b|"
    r"\bin my (?:basket|rucksack|backpack|panniers?|trailer|bike bag)\b|\bon my handlebars\b|"
    r"\b(?:bagged|boxed|weighed)(?: up| out)? (?:\S+ ){0,6}for qbin\b|"
    r"\bfor qbin (?:, )?(?:but|not)\b|\bnext on my list\b|\bto let me in\b|"
    r"\b(?:got|have) (?:\S+ ){1,8}waiting$|"
    r"\bwaiting (?:for|to go in|to go into) (?:the |our )?qbin\b|"
    r"\b(?:got|have) (?:\S+ ){1,8}for (?:the |our )?qbin ,? ?"
    r"(?:who|whos|can|could|any|anyone|anybody|where|when|if|is)\b|"
    r"\b(?:got|have) (?:\S+ ){1,8}(?:to get rid of|to offload|to shift|that needs? a home)\b|"
    r"\bby the (?:back |front )?door for qbin\b|"
    r"^(?:got )?as far as the (?:gate|door|steps|stairs) .{0,60}\b(?:padlocked|locked)(?: \S+)?$"
)
_ARRIVED = Late(
    r"\bin (?:it|she|he|they|that) (?:all )?went\b|\bwent in\b|"
    r"\bgot (?:it|them|the lot)\b|\bin now\b"
)
_TURNED_BACK = Late(
    r"\b(?:padlocked|locked) , (?:so )?(?:i )?(?:carried|brought|took|lugged) "
    r"(?:\S+ ){1,4}(?:back|home|down|again)\b"
)
_LEFT_BESIDE = Late(
    r"^(?:someone|somebody|who|whoever|people|they) (?:has |have |'s )?"
    r"(?:left|dumped|dropped|spilled|spilt) (?:\S+ ){1,8}"
    r"(?:by|beside|behind|outside|near|next to|on top of|in front of) (?:the |our )?qbin\b"
)
_REQUEST = Late(
    r"\bwould (?:you|u|ye)(?: please| love| mate)?(?: ,|$| \?)|"
    rf"^(?:someone|somebody|anyone|anybody|one of you) {_TO_PUT} .{{1,60}}\b(?:please|pls)\b|"
    rf"^qmember (?:, |(?:love|sweetheart|darling|dear|pet|mate) ,? ?)(?!put|add){_TO_PUT} |"
    rf"^{_TO_PUT} .{{1,60}}\bwhen (?:you|u) (?:are|get|go)\b|"
    r"^(?:qmember , ){1,3}(?:anybody|anyone|somebody|someone) [:,]"
)


def is_under_way(message: Message) -> bool:
    """Whether scraps are only carried, kept ready or commended to others, none yet put in."""
    if not message.has(CUES):
        return False
    if message.has(_WILL) and _is_for_later(message):
        return True
    text = named_text(message)
    if any(t.search(text) for t in (_REQUEST, _TURNED_BACK, _LEFT_BESIDE)):
        return True
    going = _UNDER_WAY.search(text) is not None and _ARRIVED.search(text) is None
    return going and not _is_put_in(message)


_WILL = words_in("will going gonna planning")
_TO_FEED = words_in("feed give do top fill get have treat")


def _is_for_later(message: Message) -> bool:
    """ "I'll feed the shed tomorrow, there's 2 kg of stalks in the fridge": what waits for a bin
    that is to be fed.
    """
    measured = message.measured()
    if not measured or len(message.bins) != 1 or message.bins[0].start > measured[0].start:
        return False
    (ref,) = message.bins
    planned = message.has_in(_WILL, 0, ref.start) and message.has_in(_TO_FEED, 0, ref.start)
    behind = message.norms[ref.end :]
    if not planned or behind[0] in _FED or behind[-1] == "in" or not _PUT_IN.isdisjoint(behind):
        return False
    clause = message.clause_at(measured[0].start)
    undated = clause is None or all(day.start < clause.start for day in message.days)
    return undated and not _is_put_in(message)


_PUT_IN = words_in("went into inside layered done already just")
_FED = words_in("got gets had has took ate :")
_CARRIED = frozenset({"have", "get", "go", "come", "do", "take", "bring", "carry"})


def _is_put_in(message: Message) -> bool:
    return any(
        clause.sense == "did"
        and clause.verb is not None
        and clause.verb.verb.form in ("past", "either")
        and "layer" in clause.verb.verb.classes
        and clause.verb.verb.plain not in _CARRIED
        for clause in message.clauses
    )
