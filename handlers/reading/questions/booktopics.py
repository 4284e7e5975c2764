"""Whether a question is about what the book holds: who keeps a bin, totals, what is due, a bin."""

import re

from handlers.reading.questions.question import Question
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

OUTSIDE = words_in(
    "match weather football shop recipe oven film movie flight holiday train bus spare car "
    "wifi password parking sourdough muffins muffin birthday party bake cake kettle sofa "
    "kick-off school fridge freezer concert meeting delivery parcel dinner lunch"
)
"""Other things that are asked about in the same words."""
_READY = words_in(
    "ready due open opened bury buried done finished finish empty emptied seal sealed drain "
    "drained cooked ripe long days weeks nearer next when ferment fermenting fermented "
    "sealing burying draining more turn"
)
_TIMED = words_in("when long due ready days nearer weeks wann cuando yet day date schedule soon")
_FULL = words_in(
    "full fill filled space room empty level inside status contents capacity weight heavy "
    "stage state doing hold fit"
)
_WEIGHT = words_in(
    "kilos kg pounds lbs scraps waste saved diverted tonnes collected composted weight tons "
    "landfill kilograms bokashied fermented kgs"
)
_SPAN = words_in(
    "far together year month week altogether all since combined total overall now everyone "
    "january february march april june july august september october november december spring "
    "summer season today yesterday group"
)
_WHO = words_in("who whose whom whos")
_KEEPS = words_in(
    "turn week has have got keeper keeping keeps take taking rota next duty minding looking "
    "looks charge holds holding host hosting mind schedule with go job looking-after "
    "currently moment now"
)


def asks_custody(q: Question) -> bool:
    """Who keeps a bin, or whose turn it is."""
    if q.has(frozenset({"key", "keys", "code", "ladder", "password", "wifi"})):
        return False
    if re.search(r"\bwho (?:can|could|will|would) (?:say|tell)\b", q.text):
        return False
    if re.search(r"\bwho (?:is |'s )?next\b(?: [?.!])* $", q.text):
        return True
    turn = re.search(
        r"\b(?:whose|who 's|who is|whos) (?:turn|week|go|job|got)\b|\bmy (?:turn|week)\b|\bthe "
        r"rota\b",
        q.text,
    )
    if turn and not q.has(OUTSIDE | frozenset({"cook", "dishes", "tea", "round"})):
        return "got" not in turn.group() or bool(q.bins())
    return (
        q.has(_WHO)
        and bool(q.bins() or q.to_bot)
        and q.has(_KEEPS)
        and not q.has(frozenset({"put", "added", "left"}))
    )


def asks_totals(q: Question) -> bool:
    """How much was put in altogether, or in a time."""
    if re.match(r"^ total (?:chaos|mess|nonsense|disaster|rubbish|joke|legend|carnage|shambles|"
                r"eclipse|panic|waste of)\b", q.text):  # fmt: skip
        return False
    if re.match(
        r"^ (?:so |ok |bot |, )*what (?:is |'s )(?:the |our )?totals?(?: (?:now|so|far|"
        r"please|then|[?.!]))* $",
        q.text,
    ):
        return True
    if q.has(frozenset({"total", "totals", "tally", "totalled"})):
        return q.craft() or q.has(_WEIGHT | {"our", "till", "so", "year", "month", "far"})
    if re.search(r"\bhow are we doing\b|\bhow is the group doing\b", q.text) and q.has(_WEIGHT):
        return True
    through = re.search(r"\bwhat (?:have|did) we\b", q.text) and q.has(
        frozenset({"kilos", "kg", "pounds", "lbs"})
    )
    many = bool(through) or any(
        p in q.text for p in ("how much", "how many", "what weight", "how heavy")
    )
    done = re.search(r"\b(?:have|did|has|had) (?:we|i|you|everyone|everybody|\w+)\b|\bwe (?:have|"
                     r"made|put|saved|done|collected|together)\b"
                     r"|\bhas been\b|\bsince (?:january|february|march|april|may|june|july|august|"
                     r"september|october|november|december|spring|christmas|easter)\b|\bso far\b"
                     r"|\btill (?:now|date)\b|\bthis (?:year|month)\b",
    q.text)  # fmt: skip
    so_far = " so far " in q.text and "we" in q.words and not q.has(OUTSIDE)
    saved = q.has(frozenset({"saved", "collected", "diverted", "composted"}))
    named = any(q.start <= m.start < q.end for m in q.message.members) and q.has(_WEIGHT)
    if many and done and (saved or named) and q.has(_WEIGHT):
        return True
    so_far = so_far or " put in " in q.text
    about = q.to_bot or q.craft() or q.has(_WEIGHT) or so_far
    return (
        many
        and bool(done)
        and about
        and (q.has(_SPAN) or q.to_bot)
        and not q.has(frozenset({"bran", "left"}))
    )


def asks_due_of_book(q: Question) -> bool:
    """When a bin is due, or what all is."""
    if _ALL_DUE.match(q.text) or _TO_DO.match(q.text):
        return True
    if q.bran() or (q.has(OUTSIDE) and not any(b.plain for b in q.bins())):
        return False
    it = "it" in q.words and bool(q.message.bins)
    handled = q.has(frozenset({"ferment", "fermenting", "bury", "sealed", "drain", "seal"}))
    about = (
        bool(q.bins())
        or q.to_bot
        or it
        or (handled and q.has(frozenset({"we", "i", "it", "them", "should"})))
    )
    last = "last" in q.words and not q.has(frozenset({"ready", "due"}))
    return q.has(_TIMED) and about and q.has(_READY) and not last and not _fills(q)


_TO_DO = Late(
    r"^ (?:(?:so|ok|hey|hi|bot|folks|all|,) )*what (?:needs (?:doing|draining|burying|sealing|to "
    r"be done)|"
    r"is next|'s next|is on(?= this| next| today| for)|'s on(?= this| next| today| for)|"
    r"(?:is|'s) on the (?:calendar|schedule|agenda)|(?:is|'s) scheduled|do we have to do|"
    r"have we got on)\b"
    r"(?: (?:on|for|the|this|next|week|calendar|today|tomorrow|month|bins|with|then|rota|bot|"
    r"please|[?.!,]))* $"
)
_ALL_DUE = Late(
    r"^ (?:(?:so|ok|hey|hi|morning|bot|folks|all|,|!|and|whats) )*(?:what|which|who(?= (?:is |'s "
    r")?(?:late|due|overdue))|anything|"
    r"whats|any|is anything)(?: is| 's| are)?(?: bins?)?"
    r"(?: is| 's| are)? (?:due|late|overdue|next|outstanding|coming up)\b(?: (?:this|next|now|"
    r"today|tomorrow|week|then|on|for|the|"
    r"us|we|bins|month|soon|weekend|at|to|be|done|please|bot|morra|monday|tuesday|wednesday|"
    r"thursday|friday|saturday|sunday|[?.!,]))* $"
)


def _fills(q: Question) -> bool:
    return q.has(frozenset({"full"})) and not q.has(frozenset({"when", "ready", "due"}))


def asks_bin(q: Question) -> bool:
    """How a bin is doing: what is in it, what room is left."""
    bins = q.bins()
    if not bins or q.has(_WHO):
        return False
    asks = q.has(frozenset({"how", "what", "is", "any", "much", "status", "when", "are", "has",
                            "which", "?", "where",
                            "whats", "can"}))  # fmt: skip
    if asks and q.has(_FULL):
        return True
    said = ("in it", "how is", "how 's", "how much is in", "how much in", "what is in",
            "what went in", "what 's in",
            "where are we", "where is", "more can", "more will", "more does", "take any more",
            "any more in", "what has gone",
            "going on with", "have room", "like at", "like now", "did we put", "about",
    "has room", "got room", "room for", "last went",
    "last fed", "went into", "how far", "news on", "up with", "up to")  # fmt: skip
    if any(p in q.text for p in said) and not (_food_question(q) and "how" not in q.words):
        return True
    return (q.to_bot and len(q.words) <= 5) or (q.has(_FULL) and len(q.words) <= 5)


def _food_question(q: Question) -> bool:
    return bool(q.items())
