"""Which of the dues are asked about: what is late, what comes first, all but one deed; and why
we reminded of them.
"""

from handlers.reading.acts import Ask
from handlers.reading.words.late import Late

LATE = "late"
"""In `Ask.what`: only what should have been done before."""
NEXT = "next"
"""In `Ask.what`: only what comes first."""
OF_DIGEST = "digest"
"""In `Ask.what`, of why: it is asked of our last reminder, whatever else was said since."""
ALL_BUT = "all but "
"""In `Ask.what`, before a deed: whatever else is due."""

# Pieces of the patterns of all questions of the calendar.
BEFORE = r"(?:(?:hey|hi|hello|ok|so|and|please|pls|bot|tell me|show me|,) )*"
AFTER = r"(?: (?:please|pls|then|now|again|today|currently|at the moment|in the group|,))*"
WHATS = r"(?:what(?: is| 's)|whats)"
DUE = (
    r"(?:what(?: is| 's| are)?(?: (?:all|still|there|our))?|anything|any bins|which bins are|"
    r"is anything|whats) (?:(?:is|are) )?"
    r"(?:due|to be done|scheduled|on the (?:calendar|schedule|agenda))"
)
_LATE = Late(
    rf"{BEFORE}(?:who(?: is| 's| are| else is)|{WHATS}|anyone|anybody|anything|"
    r"is any(?:one|body|thing)|which bins? (?:is|are)|who is running) (?:late|overdue|behind)"
    rf"(?: with (?:the|their|a) bins?)?{AFTER}"
)
DEED = (
    r"(?P<verb>buried|bury|burying|burials?|digging in|sealed|seal|sealing|drained|drain|draining)"
)
_ALL_BUT = Late(
    rf"{BEFORE}{DUE}(?: (?:except|but|besides|apart from|other than|not counting)(?: for)?"
    rf"(?: the)? {DEED}){AFTER}(?: \?)?"
)
_NEXT = Late(
    rf"{BEFORE}(?:{WHATS}|which bin(?: is)?|which(?: one)? is|when(?: is| 's)|whens) "
    r"(?:(?:the )?next(?: (?:thing|one|job|bin|due|date))?(?: due| to do| to come)?|"
    rf"(?:due|up|coming) next){AFTER}(?: \?)?"
)
_ALL = Late(
    rf"{BEFORE}{WHATS} (?:planned|on|happening|coming up|the plan|in the plan){AFTER}(?: \?)?"
)
"""Said to us, or behind our words."""
_HAS_DONE = Late(
    rf"{BEFORE}(?:has|have|did|is) qmember (?:already |now |just )*{DEED}"
    r"(?: (?:his|hers|her|theirs|their|the)(?: (?:bin|one|bucket))?| it)?"
    rf"(?: (?:yet|already))*{AFTER}(?: \?)?"
)
_WHY_SAID = Late(
    rf"{BEFORE}(?:why (?:did|do|are|were|have) you (?:just |again |keep )*"
    r"(?:remind|reminding|reminded|nag|nagging|ping|pinging|nudge|nudging) (?:us|me|everyone|"
    r"everybody)|why (?:this|the|that|a|did we get (?:a|this|the)) (?:reminder|digest))"
    r"(?: (?:today|now|again|this morning|about (?:it|this|that|them)|of (?:it|this|that)|so often|"
    rf"every day|on a \w+))*{AFTER}(?: \?)?"
)
_TO_PLANT = Late(
    rf"{BEFORE}(?:which|what)(?: of (?:the|our))?(?: (?:bins?|ones?|pails?|buckets?))?"
    r"(?: (?:is|are|can|do))* "
    rf"be planted{AFTER}(?: \?)?"
)
ACTS = {
    "buried": "bury", "bury": "bury", "dig": "bury", "burying": "bury", "burial": "bury",
    "ready": "bury", "burials": "bury", "digging in": "bury", "sealing": "seal",
    "draining": "drain",
    "emptied": "bury", "dug in": "bury", "dig in": "bury", "go in the ground": "bury",
    "sealed": "seal", "seal": "seal", "close": "seal", "closed": "seal", "drained": "drain",
    "drain": "drain", "empty": "drain", "planted": "plant", "plant": "plant",
    "drains": "drain", "seals": "seal", "buries": "bury",
}  # fmt: skip
"""The due that a deed is, by the words for it."""
OURS = Late(r"\b(?:bins?|pails?|buckets?|which ones)\b|\bwhat.* ripe\b")
"""Of bins, and not of a pear or a train."""


def of_a_kind(text: str, *, to_bot: bool) -> Ask | None:
    """The question for one kind of dues, or why we said them; members in the text are `qmember`."""
    if _WHY_SAID.fullmatch(text):
        return Ask(topic="why", what=OF_DIGEST)
    if _LATE.fullmatch(text):
        return Ask(topic="due", what=LATE)
    if match := _ALL_BUT.fullmatch(text):
        return Ask(topic="due", what=ALL_BUT + ACTS[match["verb"]])
    if _NEXT.fullmatch(text) and (to_bot or _BINS_OR_DUE.search(text)):
        return Ask(topic="due", what=NEXT)
    if to_bot and _ALL.fullmatch(text):
        return Ask(topic="due")
    return Ask(topic="due", what="plant") if _TO_PLANT.fullmatch(text) else None


def whether_done(text: str, member: str | None) -> Ask | None:
    """ "Has Bram drained his yet?": whether a member still has it to do."""
    match = _HAS_DONE.fullmatch(text) if member else None
    return Ask(topic="due", member=member, what=ACTS[match["verb"]]) if match else None


def of_it(text: str) -> Ask | None:
    """ "When's it ready?", "can we dig it in on Saturday?", "when do we drain next?", while the
    talk is of the bins.
    """
    if match := _DEED_NEXT.fullmatch(text):
        return Ask(topic="due", what=ACTS[match["verb"] or match["time"] or match["by"]])
    if match := _NEEDS_IT.fullmatch(text):
        return Ask(topic="due", what=ACTS[match["verb"] or match["done"]])
    asked = _IT_READY.fullmatch(text) or _MAY_IT.fullmatch(text)
    return Ask(topic="due", what="bury") if asked else None


_IT = r"(?:it|they|them|that(?: one)?|this(?: one)?|ours|mine|the bin|the bucket)"
_DEED_NEXT = Late(
    rf"{BEFORE}(?:when (?:do|will|can|should|shall|are) (?:we|i) (?:next )?(?:going to )?"
    r"(?P<verb>dig|bury|drain|seal)(?: (?:in|one|anything|a bin))?(?: next| again| the next one)|"
    r"when(?: is|s| 's) (?:the |our )?next (?:time (?:that )?(?:we|i) )?(?:have to |need to |can )?"
    r"(?P<time>dig|bury|drain|seal)|"
    r"(?:what(?: is|s| 's) the (?:date|day|deadline)|by (?:when|what (?:date|day))|what (?:date|"
    r"day))(?: that)? (?:(?:do|must|should|are) )?(?:(?:we|i) )?(?:(?:need|have|are|must|should|"
    rf"supposed) )*(?:(?:to|for) )?(?P<by>dig|bury|drain|seal|sealing|burying|draining)(?: {_IT})?"
    rf"(?: (?:in|by|on|up))*){AFTER}(?: \?)?"
)
_NEEDS_IT = Late(
    rf"{BEFORE}(?:(?:do|should|must) (?:we|i) (?:(?:need|have) to )?(?P<verb>drain|seal|bury)"
    rf"(?: {_IT})?|"
    rf"(?:does|should|must) {_IT} (?:(?:need|have|want)(?: to)? )?(?:be )?(?P<done>drained|"
    rf"draining|sealed|sealing|buried|burying)){AFTER}(?: \?)?"
)
_IT_READY = Late(
    rf"{BEFORE}when(?: is| 's| are| 're| will|s)? {_IT}(?: be)? (?:ready|ripe|done|finished)"
    rf"(?: (?:to (?:bury|dig in)|then|to go in))*{AFTER}(?: \?)?"
)
_MAY_IT = Late(
    rf"{BEFORE}(?:can|could|may|should|shall) (?:we|i) (?:already |now |just )?"
    rf"(?:bury {_IT}|dig {_IT} (?:in|under)|put {_IT} in the (?:ground|soil|earth))"
    rf"(?: (?:on|this|next|at|the|in|by|then)| \w{{3,9}})?(?: \w{{3,9}}){{0,2}}{AFTER}(?: \?)?"
)
_BINS_OR_DUE = Late(r"\b(?:bins?|due)\b")
