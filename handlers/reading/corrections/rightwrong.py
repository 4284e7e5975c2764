"""The two sides of a short correction: the things it names, and which of them was wrong."""

from collections.abc import Sequence
from typing import NamedTuple

from handlers.reading.corrections.amending import SORRY
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.unitwords import Unit, unit_table
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.vocabulary import words_in

BY_FORM = "put right, and nothing else"
"""The rule of a correction that needs no score."""

PLAIN_CUES = (SORRY - {"actually", "wait"}) | words_in("* typed mistyped typos miskeyed misweighed")
JOINED_CUES = words_in(
    "not make should shoulda shd shld ought must meant mean rather instead wrong read call say "
    "supposed isnt wasnt pas change fix alter put putting correct true salah mali galat"
)
WEIGHING = words_in("reweighed reweigh scale scales jug dial figure amount entry weight")
"""Words that speak of what was measured or written down, and hardly of anything else."""
WEIGHED = words_in("weighed weigh weighing")
WITHOUT = words_in("less minus without")
VESSELS = words_in("box bag bowl tub lid pan tin plate tray crate bucket dish sack basin")
"""What stands on the scale and is no scraps."""
TELLING = words_in("said wrote typed logged posted entered told sent")
"""How the wrong figure came into the talk."""
_REFUSING = words_in("not than isnt wasnt pas of bukan hindi nahi nicht")
_MEANT = words_in("should shoulda shd shld ought must meant mean supposed to wanted")
_WRITING = TELLING | words_in("put say type write read have had 'd")
_PUT = TELLING | words_in("put gave")
_WRONG_BEHIND = words_in("wrong mistake typo slip error nonsense rubbish thumb thumbs")
_JOINTS = words_in("is was 's were a an the my just clearly plainly")
_LIGHT = words_in("the a an it that was is 's be as down in at to been ' \" about only just for")
"""Words that may stand between a mark and its thing: "not in the", "wrote it as"."""
_CRIES = words_in(
    "ah oh ha haha hahaha lol no nope nah na aye ok okay well um er argh ugh eish aiyo bruh ffs "
    "omg doh hang on hold actually wait bot please pls plz pray kindly thanks ta ty btw innit vex "
    "paiseh goodness hey lah la je taip ne o lads mate love yes yeah excuse ☺"
)
_COMMON = words_in(
    "so and but then now this my mine me i we you thee will last one one's number thing unit units "
    "its up there really again once second twice obviously obvs gives says comes came come out "
    "more like with all by bad let better wee course c'était cetait turns measured where when for "
    "before earlier previous record clearly nearer closer over "
    "myself regret confess admit afraid 've 'm 'll , . ! - — : ; ( ) * ' \""
)
_FILLERS = frozenset().union(
    PLAIN_CUES, JOINED_CUES, WEIGHING, WEIGHED, WITHOUT, VESSELS, TELLING, _REFUSING, _MEANT,
    _WRITING, _LIGHT, _CRIES, _COMMON,
)  # fmt: skip
"""What a correction says besides its things."""
REASONS = (
    WEIGHING
    | WEIGHED
    | VESSELS
    | words_in(
        "misread phone thumb thumbs finger fingers glasses specs eye eyes "
        "keyboard autocorrect number numbers digit digits decimal comma point "
        "typo typed typing type wrote write writing handwriting read reading upside transpose "
        "transposed dyslexia daft slipped zero nought total totals bran dose far"
    )
)
"""Behind a stop: why the figure was wrong, or what follows from the right one."""
STOPS = words_in(", . ! ; - — ( \n now")
_POINTING = words_in("that this last the previous first my")


class Thing(NamedTuple):
    """A figure, a unit or a bin in words[start:end]."""

    start: int
    end: int
    of: float | Unit | str
    """The number said, the unit that stands alone, or the bin's name."""
    amount: Amount | None = None
    """The figure with the unit that was said with it."""
    wrong: bool = False


class Sides(NamedTuple):
    """What a correction names before the first word that belongs to none."""

    figures: Sequence[Thing]
    units: Sequence[Thing]
    bins: Sequence[Thing]
    end: int
    """Where that word stands; the length of the message if there is none."""


def sides(message: Message, start: int = 0) -> Sides:
    """The things of a correction from words[start] on, each right or wrong."""
    things, end = _things(message, start)
    norms = message.norms
    refused = [thing._replace(wrong=_is_refused(norms, thing)) for thing in things]
    marked = [
        one._replace(
            wrong=one.wrong or (_is_told(norms, one, things) and not _is_against(one, refused))
        )
        for one in refused
    ]
    return Sides(
        [t for t in marked if isinstance(t.of, int | float)],
        [t for t in marked if isinstance(t.of, Unit)],
        [t for t in marked if isinstance(t.of, str)],
        end,
    )


def right(norms: Sequence[str], things: Sequence[Thing]) -> Thing | None:
    """The one that is meant: none where two may be."""
    left = [thing for thing in things if not thing.wrong]
    if len({thing.of for thing in left}) == 1:
        return left[0]
    if len(left) == 2 and not _BETWEEN.isdisjoint(norms[left[0].end : left[1].start]):
        return left[1]
    return None


_BETWEEN = words_in("should shoulda shd shld must ought meant supposed")
"""Between a wrong figure and the right one: "230 must be 320"."""


def _things(message: Message, i: int) -> tuple[list[Thing], int]:
    measured = {a.start: a for a in message.amounts if a.quantity in ("mass", "volume")}
    bins = {b.start: b for b in message.bins if b.name is not None and (b.known or b.plain)}
    of_bins = _is_of_bins(message)
    if bins or of_bins:
        bins = _by_short_names(message, bins)
    fillers = _FILLERS | _WRONG_ONES if of_bins else _FILLERS
    table = unit_table(message.context.units)
    things: list[Thing] = []
    while i < len(message.norms):
        if message.norms[i : i + 2] == ["no", "one"]:
            break  # nobody
        thing = _figure(message, i, measured.get(i), bins.get(i))
        if thing is None and message.norms[i] not in fillers:
            unit = table.get(message.norms[i])
            thing = None if unit is None else Thing(i, i + 1, unit)
        if thing is not None:
            things.append(thing)
            i = thing.end
        elif (vessel := _behind_vessel(message.norms, i)) is not None:
            i = vessel
        elif message.norms[i] in fillers:
            i += 1
        else:
            break
    return things, i


def _by_short_names(message: Message, bins: dict[int, BinRef]) -> dict[int, BinRef]:
    """With the bins that are called by half their name beside another: "squat" for "squat bin"."""
    short = {name.casefold().removesuffix(" bin"): name for name in message.context.bins}
    if _is_of_bins(message):
        short = {name.casefold().split(" ")[-1]: name for name in message.context.bins} | short
    return bins | {
        i: BinRef(i, i + 1, short[norm], known=True)
        for i, norm in enumerate(message.norms)
        if norm in short and norm.isalpha() and not any(b.start <= i < b.end for b in bins.values())
    }


def _is_of_bins(message: Message) -> bool:
    """ "Wrong bin, hut not gate": no other thing is spoken of."""
    return "wrong" in message.said and message.has(_WRONG_ONES)


_WRONG_ONES = words_in("bin bucket tub pail")


def _behind_vessel(norms: Sequence[str], i: int) -> int | None:
    """Behind "less the crate", "without its bucket"."""
    if norms[i] not in WITHOUT:
        return None
    return next((k + 1 for k in range(i + 1, min(i + 4, len(norms))) if norms[k] in VESSELS), None)


def _figure(message: Message, i: int, amount: Amount | None, bin: BinRef | None) -> Thing | None:
    """The bin, the measured or the bare figure that begins at words[i]."""
    if bin is not None and bin.name is not None:
        return Thing(i, bin.end, bin.name)
    number = read_number(message.words, i)
    if number is None:
        return None
    norms = message.norms
    if norms[i : i + 1] == ["one"] and norms[i - 1 : i] and norms[i - 1] in _POINTING:
        return None
    if norms[i : i + 2] == ["half", "that"]:
        return None
    refused = norms[i - 1 : i] == ["not"]  # "not a gallon, a pint": the unit is refused alone
    vessel = amount is not None and amount.vessel
    bare = amount is None and norms[i - 2 : i] != ["make", "that"]
    if number.word and (bare or refused or vessel):
        return None
    if amount is not None:
        return Thing(i, amount.end, number.value, amount)
    return Thing(i, number.end, number.value)


def _is_against(thing: Thing, refused: Sequence[Thing]) -> bool:
    """ "I said 15, not 50": what was said is right where another of its sort is refused."""
    return any(other.wrong and type(other.of) is type(thing.of) for other in refused)


def _is_refused(norms: Sequence[str], thing: Thing) -> bool:
    """Whether it is said to be wrong: "not the 3", "for 3 read", "3 was a slip"."""
    at = _mark(norms, thing)
    before = norms[at] if at >= 0 else ""
    if before in _REFUSING or (at >= 0 and _is_for(norms, at)):
        return True
    if before == "no" and norms[at + 1] == "the":
        return True  # "1.2, no the 1.8"
    return _is_called_wrong(norms, thing.end)


def _is_told(norms: Sequence[str], thing: Thing, things: Sequence[Thing]) -> bool:
    """Whether it is what came into the talk before: "I put 3", "said it was 3"."""
    if norms[thing.end : thing.end + 1] in (["i"], ["we"]) and not _PUT.isdisjoint(
        norms[thing.end + 1 : thing.end + 2]
    ):
        return True  # "the 3 I put is 5"
    at = _mark(norms, thing)
    if at < 0 or norms[at] not in _WRITING or not _MEANT.isdisjoint(norms[max(0, at - 2) : at]):
        return False
    by_us = norms[at - 1 : at] in (["i"], ["we"], ["you"], ["mine"])
    if by_us and any(other.end == at - 1 for other in things):
        return False  # "the 3 I put is 5": it was the other that was put
    return norms[at] in TELLING or by_us


def _mark(norms: Sequence[str], thing: Thing) -> int:
    """Where the word stands that may mark it, its light words passed over."""
    at = thing.start - 1
    while at >= 0 and norms[at] in _LIGHT and not _is_for(norms, at):
        at -= 1
    return at


def _is_for(norms: Sequence[str], at: int) -> bool:
    """ "For 900 read 90", "read pints for pounds"."""
    return norms[at] == "for" and "read" in norms


def _is_called_wrong(norms: Sequence[str], end: int) -> bool:
    """ "2.2 was wrong", "4 is a typo", "5 wrong"."""
    at = end
    while at < len(norms) and norms[at] in _JOINTS:
        at += 1
    return norms[at : at + 1] == ["wrong"] or (
        at > end and not _WRONG_BEHIND.isdisjoint(norms[at : at + 1])
    )
