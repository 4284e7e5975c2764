"""When a few words may lean on a record, or answer what the bot asked a while ago.

A reply always may. Right behind its record almost anything may ("3 kg", "mine", "and a loaf"). Once
something else was talked of, or hours have gone by, only what is for the book by its own words: the
record's bin, its food, its deed, or an open correction with an amount that could have been meant.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import Enum
from math import log

from handlers.reading.acts import Act, Amend, Drain, Layer, Retract, meant
from handlers.reading.arranged import Plan
from handlers.reading.completion.planned import AS_PLANNED
from handlers.reading.context import Context
from handlers.reading.corrections.amending import SORRY
from handlers.reading.corrections.numberright import FARTHEST
from handlers.reading.corrections.sametoo import AS_JUST_TOLD
from handlers.reading.deeds.barelayers import BARE
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.room.askeddeed import AS_ASKED
from handlers.reading.room.neighbours import BOOKED, CRAFT, OF_RECORD, calls_record, is_for_us
from handlers.reading.room.ofbran import OF_BRAN
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.wording import FURTHER, MORE, first_in

MOST_TALK = 2
"""Messages of other talk behind which an open correction still goes without asking."""


class Leaning(Enum):
    """What becomes of words that lean on a record."""

    MEANT = "meant"
    DOUBTFUL = "doubtful"
    """It is asked about before the book is changed."""
    ANOTHERS = "another's"
    """It is of what was talked about since."""


@dataclass(frozen=True, slots=True)
class Since:
    """What was said since the sender's last record, or the group's where they have none."""

    record: Act | None = None
    late: bool = False
    """Whether that was over an hour ago."""
    own: int = 0
    """Messages of the sender's about other things."""
    others: int = 0
    figures: bool = False
    """Whether any of the others' told a figure."""
    own_figures: bool = False
    asked: bool = False
    """Whether another has asked the neighbours something."""
    asked_us: bool = False
    """Whether another has asked the bot something."""
    at: datetime | None = None
    """When the record was told behind which that was said."""

    @property
    def nothing(self) -> bool:
        """Whether nobody has spoken of anything else."""
        return not (self.own or self.others or self.asked_us)


@dataclass(frozen=True, slots=True)
class SmallTalk:
    """A message that the book does not keep: of other things than the bins, or of starter."""

    figure: bool
    bran: bool = False


def small_talk(body: str, context: Context, acts: Sequence[Act | Plan]) -> SmallTalk | None:
    """What is talked of beside the book; None for what else is of it, or a mere courtesy."""
    if acts or context.to_bot:
        return None
    words = [found[0] for found in _WORD.finditer(body.casefold().replace("’", "'"))]
    names = {word for name in context.members for word in name.casefold().split()}
    known = {word.removesuffix("'s") for word in words} - names
    figure = _FIGURE.search(" ".join(words)) is not None
    if not known.isdisjoint(OF_BRAN):
        return SmallTalk(figure, bran=True)
    if not known.isdisjoint(CRAFT | BOOKED) or (not figure and known <= OF_RECORD | _COURTESY):
        return None
    return SmallTalk(figure)


_WORD = Late(r"[\w']+")
_FIGURE = Late(
    r"(?<!\bat )(?<!\bby )(?<!\btill )(?<!\buntil )(?<!\bnumber )(?<!\bno )(?<!\bpast )"
    r"\b(?:\d|(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|dozen|half)\b)"
)
"""A number that may be an amount: no hour and no house."""
_COURTESY = words_in(
    "a an morning good evening night afternoon hello hi hey lovely nice great grand brilliant "
    "super fine cool wow perfect right sure ok okay thanks thank ta cheers please welcome well "
    "done too yes yep yeah yup no nope nah me we us everyone everybody folks friends neighbours "
    "lol haha ha oops sorry i'm back sunny what for very so much not bad"
)


def leaner(act: Act | Plan, message: Message) -> Amend | Retract | Layer | Drain | None:
    """What an act tells, if it depends on what was said since a record how that is meant."""
    told = act if isinstance(act, Plan) else meant(act)
    if not isinstance(told, Amend | Retract | Layer | Drain) or message.bot:
        return None
    if not isinstance(act, Plan) and not _OF_TALK.isdisjoint(act.rules):
        return None  # it leans on another's, or was weighed against the talk before
    of_else = isinstance(told, Amend) and _is_of_else(told, message)
    return told if of_else or not _stands_alone(told, message) else None


_OF_TALK = frozenset({AS_JUST_TOLD, AS_PLANNED, AS_ASKED, BARE})


def leaning(act: Act | Plan, message: Message, since: Since) -> Leaning:
    """Whether an act is meant for the record that it leans on, if it leans on one."""
    told = leaner(act, message)
    if told is None:
        return Leaning.MEANT
    if told is not act and since.nothing:
        return Leaning.MEANT  # it is asked about as it is
    if isinstance(told, Amend) and _is_of_else(told, message):
        return Leaning.ANOTHERS
    if isinstance(told, Amend | Retract) and since.record and _is_named(told, message, since):
        return Leaning.MEANT
    if isinstance(told, Retract) or _corrects(message) or message.has(_MORE):
        return _openly(told, message, since)
    barely = _barely(told, message, since)
    if barely is Leaning.ANOTHERS and _went_in(told, message):
        return Leaning.DOUBTFUL
    return barely


def _went_in(told: Amend | Layer | Drain, message: Message) -> bool:
    """ "In it went, 1.3 kg": it went in somewhere, while the room talks of its bins."""
    measured = isinstance(told, Layer) and bool(told.mass_kg or told.volume_l)
    return measured and message.context.of_bins and message.has(_INSIDE)


_INSIDE = words_in("in into topped")


def _openly(told: Amend | Retract | Layer | Drain, message: Message, since: Since) -> Leaning:
    """What says that it puts a record right, strikes it out or adds to it."""
    strikes = isinstance(told, Retract)
    apart = since.own or since.others > MOST_TALK or since.figures
    if not apart and not (since.late and (since.others or strikes)):
        return Leaning.MEANT
    if strikes:
        of_talk = since.own and not message.has(_STRIKING)
        return Leaning.ANOTHERS if of_talk else Leaning.DOUBTFUL
    if since.own_figures:
        return Leaning.ANOTHERS
    could_be = _fits(told, since.record) if _measures(told) else not since.late
    return Leaning.DOUBTFUL if could_be else Leaning.ANOTHERS


_STRIKING = words_in("undo delete remove strike")
"""Words of the book, and of no talk."""


def _barely(told: Amend | Layer | Drain, message: Message, since: Since) -> Leaning:
    """What is only an amount, a day or a name."""
    if isinstance(told, Amend):
        known = since.record is not None
        if since.nothing and not since.late:
            return Leaning.MEANT if known else Leaning.ANOTHERS
        points = _POINTING.match(plain_text(message)) is not None
        could_be = _fits(told, since.record) if _measures(told) else not since.late
        may_be = known and points and could_be
    else:
        further = first_in(FURTHER, plain_text(message)) is not None
        may_be = further and since.record is not None and not since.late
        joins = isinstance(message.context.just_told, Layer) and bool(message.items)
        if since.nothing and (may_be or joins or not further):
            return Leaning.ANOTHERS if message.norms[0] in _YES else Leaning.MEANT
        may_be = may_be and not since.asked_us
    apart = since.own or since.figures or since.asked or since.others > MOST_TALK
    return Leaning.DOUBTFUL if may_be and not apart else Leaning.ANOTHERS


_YES = words_in("yes yep yeah yup")
_POINTING = Late(r"^(?:(?:oh|ah|so|and|,) )*it (?:was|is|'s)\b")


def _stands_alone(told: Amend | Retract | Layer | Drain, message: Message) -> bool:
    """Whether it is for the book by its own words: a bin, a deed of the craft, scraps weighed."""
    named = any(ref.known and ref.name for ref in message.bins)
    if named and not (isinstance(told, Amend) and _is_bare_place(told, message)):
        return True
    if not isinstance(told, Layer | Drain):
        called = any(getattr(told, name, None) for name in NAMING[type(told)])
        return called or message.has(CRAFT) or calls_record(message)
    if message.has(CRAFT) or any(ref.plain for ref in message.bins):
        return True
    if isinstance(told, Drain) and message.has(_TAP):
        return True
    verbs = [clause.verb.verb for clause in message.clauses if clause.verb is not None]
    if any(verb.classes & _DEEDS or verb.plain in _PUT_IN for verb in verbs):
        return True
    further = MORE if message.context.of_bins else FURTHER  # "went in: rice, peas"
    return bool(message.items) and first_in(further, plain_text(message)) is None


NAMING: Mapping[type[Amend | Retract], Sequence[str]] = {
    Amend: ("which", "what", "whose", "was", "rest", "crossed"),
    Retract: ("which", "what", "materials", "of_bin"),
}
"""The fields that say which record is meant."""
_DEEDS = frozenset({"drain", "open", "seal", "bury", "batch", "stock"})
_TAP = words_in("tap taps spigot spout tray liquid")
_PUT_IN = words_in("add chuck toss dump throw tip feed bung lob sling scrape load shove")
"""What is done with scraps; others of the verbs by which a layer is told are of any talk."""


def _is_bare_place(told: Amend, message: Message) -> bool:
    """ "It was the blue one": the bin is what is put right, and names no record."""
    bare = not _measures(told) and told.on is None and told.crossed is None
    return bare and not _corrects(message)


def _is_named(told: Amend | Retract, message: Message, since: Since) -> bool:
    """Whether it names what the record holds, and could be of it."""
    return is_for_us(told, message) and (since.nothing or _fits(told, since.record))


def _measures(told: Act) -> bool:
    return any(getattr(told, name, None) for name in ("mass_kg", "volume_l"))


def _fits(told: Act, record: Act | None) -> bool:
    """Whether an amount could stand in the place of the record's, or of none."""
    mass, volume = (getattr(told, name, None) for name in ("mass_kg", "volume_l"))
    had = [getattr(record, name, None) for name in ("mass_kg", "volume_l", "capacity_l")]
    if record is None or not any(had):
        return record is not None
    said, same = mass or volume, had[0] if mass else had[1] or had[2]
    if not said or not same:
        return False
    return abs(log(said / same)) <= log(FARTHEST)


def _corrects(message: Message) -> bool:
    """ "No, 3 kg", "make it 2", "2 kg, not 3"."""
    norms = message.norms
    if not _CORRECTING.isdisjoint(norms[:3]) or not _CORRECTING_ANYWHERE.isdisjoint(norms):
        return True
    if "not" in norms and any(word.kind == "number" for word in message.words):
        return True
    return _THAT_WAS.match(plain_text(message)) is not None


_THAT_WAS = Late(r"^(?:(?:oh|ah|so|and|,) )*that(?: was|'s| is)\b")


_CORRECTING = SORRY | words_in("no nope nah make mean correction * only just")
_CORRECTING_ANYWHERE = words_in("meant mistake typo wrong should shouldve wasnt isnt actually")


_MORE = words_in("another more extra further additional again")


def _is_of_else(told: Amend, message: Message) -> bool:
    """Whether its own grammar is of something else: "she was", "600 g per kilo", "22 degrees" where
    none were told.
    """
    if told.celsius is not None and getattr(message.context.last, "celsius", None) is not None:
        return False
    if _OF_ELSE.search(plain_text(message)) is not None:
        return True
    alone = told.on is not None and not (told.mass_kg or told.volume_l or told.bin or told.member)
    return alone and _tells_figure(message)


def _tells_figure(message: Message) -> bool:
    """Whether it tells a number that is of no day and no amount."""
    held = indexes(message.days, message.amounts, message.bins)
    for i in range(len(message.norms)):
        number = None if i in held else read_number(message.words, i)
        if number is not None and not number.word:
            return True
    return False


_OF_ELSE = Late(
    r"\b(?:she|he|her|his)(?: was| is| 's|'s| weighs| weighed| got| had)\b|^i was (?:about )?\d|"
    r"\bper\b|\b1 ?(?:in|to|:) ?\d{2,4}\b|"
    r"\b(?:i'd|id|i would|you'd|we'd) (?:go|say|use|take|do|put)\b|"
    r"^sorry (?:to|about|for) (?!the amount|the mix|the noise|that\b)|"
    r"\b(?:dinner|lunch|supper|breakfast|brunch)\b(?! scraps| leftovers)|\bdegrees\b"
)


def may_answer(since: Since) -> bool:
    """Whether a bare yes or a name may answer what the bot asked before what was said since."""
    return since.own == 0 and since.others <= MOST_TALK_BEHIND_QUESTION


MOST_TALK_BEHIND_QUESTION = 6
"""Messages of the others behind which a bare yes is no answer to the bot."""
