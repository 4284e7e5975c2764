"""Goals, limits, totals and plans: what is not done, or not put in, by this message."""

from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_CUES = words_in(
    "goal target aim estimate forecast limit maximum capacity total tally plan plans planned "
    "follow todo still later next upcoming coming pencilled"
)
_FIRST = 6
"""Words of a heading."""
_WHOSE = r"(?:(?:my|our|the|new|this|last|\w+) (?:(?:week|month|year|season|\w+day) )?(?:'s )?)?"
_HEADING = Late(
    rf"^{_WHOSE}(?:goals?|targets?|aim|estimate|forecast|limit|capacity|total|tally)"
    r" (?:for|is|of|:|in|was|at)|"
    r"^(?:the )?maximum (?:is |of |: )?\d|"
    rf"^{_WHOSE}plans? (?:for [\w ]{{1,20}})?[:—-]|"
    r"^(?:to follow|still to (?:do|come|go)|todo|to do|later (?:today|on)|next up|up next|"
    r"coming up|upcoming|planned|pencilled in)\b[ \w]{0,20}[:,—-]|"
    r"^next up\b"
)


def is_outlook(message: Message) -> bool:
    """Whether a heading says that the amounts are aimed at, allowed or summed up."""
    norms = message.norms
    if _CUES.isdisjoint(norms[:_FIRST]):
        return False
    if any(c.sense == "did" and c.verb and "layer" in c.verb.verb.classes for c in message.clauses):
        return False
    if _HEADING.search(" ".join(norms[: 2 * _FIRST])) is None:
        return False
    return _AND_TODAY.search(" ".join(norms)) is None


_AND_TODAY = Late(r"[.;!] (?:(?:so|and|but) )?(?:today|just|now|this morning)\b")
"""What is told behind a heading and its list."""


_PLANNING = words_in(
    "plan plans planned list lists schedule programme program timetable target targets goal goals "
    "agenda budget intention intentions proposal proposals proposed option options variant "
    "variants itinerary worksheet decided hypothetical hypothetically picture imagine wishlist "
    "job jobs remember thinking want wanted like who stall show fair rota "
    "roadmap action ideal ideas do next forget"
)
_PLAN = Late(
    r"^(?:[\w' ]{0,30}\b)?(?:plans?|schedule|program(?:me)?|timetable|targets?|goals?|agenda|"
    r"(?:(?:to ?do|shopping|action|next) |(?:next \w+|tomorrow|(?!today)\w+day) 's )list|"
    r"budget|intentions?|proposals?|proposed|options? [a-z0-9]|variants? [a-z0-9]|itinerary|"
    r"worksheet|road ?map|ideas?|jobs (?:for|this|next)|to do (?:this|next|on)|"
    r"hypothetical(?:ly)?|wish ?list|(?!today)\w+day 's jobs?|to be decided)\b"
    r"(?: [\w'/]+){0,5} ?(?:[:—]| - )|"
    r"^proposed for [\w ]+[.:]|^next on the (?:list|agenda)\b|^things to [\w ]+:|"
    r"^in an ideal world\b|\b(?:that is|that 's) the (?:plan|idea)$|^dont forget :|"
    r"^next (?:week|month|year|weekend|\w+day) :|^who does what\b|"
    r"^what i (?:'d|would) (?:want|like)[\w ]*:|"
    r"^here (?:is|'s) what i (?:am |'m )?thinking\b|^(?:picture|imagine) (?:it|this) :|"
    r"^for the (?:stall|show|fair|fete|demo) ?:|"
    r"^options? [a-z0-9] ?,.*\boptions? [a-z0-9]\b"
)
_CARRIED_OUT = Late(
    r"\b(?:done|ticked|achieved|worked|met|hit|smashed|was|went|is sorted|all sorted|complete|"
    r"completed|is sealed|is buried|log)\b"
)
_TELLERS = words_in("i we ive weve")


def is_plan(message: Message) -> bool:
    """Whether a heading says that its list is of deeds to come, though told in participles."""
    norms = message.norms
    if _PLANNING.isdisjoint(norms[:_HEAD]) and _PLANNING.isdisjoint(norms[-2:]):
        return False
    if any(
        _is_of_teller(message, c.verb.start) for c in message.clauses if c.verb and c.sense == "did"
    ):
        return False
    text = " ".join(message.norms)
    if _PLAN.search(text) is None or _AND_TODAY.search(text):
        return False
    return _CARRIED_OUT.search(text) is None


_HEAD = 8
"""Words among which a heading says that it is one of a plan."""


def _is_of_teller(message: Message, at: int) -> bool:
    """Whether the sender says of herself that she did it: "I sealed", "we have just drained"."""
    return not _TELLERS.isdisjoint(message.norms[max(0, at - 3) : at])


_AHEAD_CUES = words_in(
    "tomorrow destined earmarked allotted allocated reserved line subject way that it there same"
)
_AHEAD = Late(
    r"^(?:first thing )?tomorrow\b[\w ]*[:,]|"
    r"\bby (?:\w+day|christmas|easter) (?:that|it|there) will\b|"
    r"(?<!was )(?<!were )\b(?:destined for|earmarked|allotted to|allocated to|reserved for|"
    r"next in line for|subject to)\b|\bcoming your way\b|"
    r"^(?:(?:so|ok|okay|right|and|well|cheers|thanks|great|lovely|night|all|,|!|[.]) )*"
    r"same (?:again|time|thing) (?:next (?:week|month|year|time|\w+day)|tomorrow)"
    r"\b"
)
_AFTER_ALL = words_in("today today's was were went got did instead")
_WEEKLY = words_in("mondays tuesdays wednesdays thursdays fridays saturdays sundays")
CUES = _CUES | _PLANNING | _AHEAD_CUES | _WEEKLY
"""Words without one of which nothing here is said."""


def is_ahead(message: Message) -> bool:
    """Whether the words say what an amount is meant for, or what tomorrow will bring."""
    if not message.has(_AHEAD_CUES) or message.has(_AFTER_ALL):
        return False
    return _AHEAD.search(" ".join(message.norms)) is not None


def is_each_week(message: Message) -> bool:
    """Whether all is said of days that come again: "Bram takes the shed bin on Mondays"."""
    days = message.days
    return bool(days) and all(message.norms[day.end - 1] in _WEEKLY for day in days)
