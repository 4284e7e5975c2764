"""Who says to be away, and from which day to which: "I'm away till Monday", "I'm back"."""

from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from typing import NamedTuple

from handlers.reading.arranged import Away, AwayAgain, Back, NoSuchDay, Staying
from handlers.reading.arrangements.awayasked import away_asked
from handlers.reading.arrangements.standins import asked_in, stand_in
from handlers.reading.calendar.daywords import WEEKDAYS
from handlers.reading.calendar.nodates import is_no_date
from handlers.reading.calendar.stretches import (
    Stretch,
    begins_at,
    coming,
    further,
    stretch_in,
    told_stretch,
)
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.people.doers import is_sender
from handlers.reading.plaintext import words_between
from handlers.reading.words.late import Late
from handlers.reading.words.sentences import Sentence
from handlers.reading.words.vocabulary import words_in

CUES = (
    *("away", "back", "holiday", "vacation", "abroad", "town", "gone", "hospital", "on leave"),
    *("off from", "off until", "off till", "off for ", "off next week", "off all week"),
    *("not here", "not around", "not home", "not at home", "off on "),
    *("off this week", "off between", "out from", "out until", "out till", "out next week"),
    *("out all week", "out this week", "out mon", "out tue", "out wed", "out thu", "out fri"),
    *("out sat", "out sun", "station", "up north", "down south", "overseas", "interstate", "awa "),
    *("be here", "be around", "travelling", "traveling", "of the country"),
    "home",
    "at my",
    "with my",
    "at our",
    "with our",
)

FARTHEST = 40
"""Words behind a speaker that are looked at."""

_IS = r"(?:am|are|is|'s|will be|'?ll be|going to be|am going|are going|is going|go|goes|be)"
_ADVERBS = (
    r"(?:also|now|just|only|both|all|then|again|already|unfortunately|sadly|actually|sorry|afraid|"
    r"going to be)"
)
_STATE = (
    r"away|on (?:our |my |a )?(?:holidays?|vacation|leave|trip)|off on (?:holidays?|vacation)|"
    r"out of (?:town|station|the country|the city)|outstation|abroad|overseas|interstate|awa|"
    r"(?:off |away )?(?:up north|down south)|travell?ing|gone|in hospital|"
    r"(?:at|with) (?:my|our) (?:mum|mom|mam|dad|parents?|sister|brother|gran|granny|nan|grandma|"
    r"aunt|uncle|son|daughter|family|folks|friend|in-laws?|boyfriend|girlfriend|partner)s?(?: 's?)?"
    r"(?= (?:till|until|til|from|this|next|for|over) )|"
    r"not (?:here|around|home|at home)|"
    r"off(?= (?:from|until|till|for (?:a|the|two|three|ten|\d+) |next week|this week|all week|"
    r"between|on (?:the )?\d))|"
    r"out(?= (?:from|until|till|next week|this week|all week|"
    r"(?:mon|tues|wednes|thurs|fri|satur|sun)day (?:to|through|thru|till|until|-) ))"
)
_AWAY = Late(
    rf"(?:{_IS}(?: {_ADVERBS})* (?:{_STATE})|(?:wont|will not) be (?:here|around|home|in)|"
    r"(?:away|on leave|on holidays?)(?= (?:from|until|till|this|next|for) ))(?= |$)"
)
_BARE_AWAY = Late(
    r"(?:am |are )?(?:away(?! (?:games?|match|matches|fixtures?|kit|wins?|legs?|teams?|goals?)\b)|"
    r"off(?= (?:from|until|till) )|(?:off )?on (?:my |our )?holidays?|(?:off )?on vacation|"
    r"out of town|abroad|gone for)(?= |$)"
)
_COMING = r"(?:coming|heading|flying|driving|going) "
_BACK = Late(
    rf"(?:am|are|is|'s|will be|'?ll be|got|get)(?: {_ADVERBS})* (?P<coming>{_COMING})?"
    r"(?:back|home)(?= |$)"
)
_BARE_BACK = Late(
    rf"(?P<coming>{_COMING})?(?:back(?=$|(?: [!.])+$| (?:home|again|now|from|in town|on|early|"
    r"already|sooner|tonight|today|tomorrow|earlier|"
    r"(?:a|one|two|three) (?:days?|week) (?:early|earlier|sooner))"
    r"(?: |$))|home(?=$| [!.]| (?:at last|again|early|earlier|sooner|already|since|"
    r"(?:a|one|two|three) (?:days?|week) (?:early|earlier|sooner))(?: |$)))"
)
_STAYS = Late(
    r"(?:(?:(?:am|are|is|will) )?not (?:be |going )?(?:away|going|on holiday)|wont be away|staying|"
    r"(?:am|are|is) (?:staying|here)).* (?:after all|any ?more)(?= |$)"
)
_HOW_TOLD = Late(
    r"\b(?:how (?:do|does|can|could|should|would|must|to)|what (?:if|happens|do|should|can))\b"
    r"[^,.:]*$"
)
"""Before a speaker: it is asked how an absence is told, or what comes of it."""
_FOR_NOW = Late(r"(?: (?:now|again|for (?:a while|now|a bit|the moment)|sorry|just now))*")
_HOME = Late(
    r"(?: (?:home|again|now|safely|safe|already|early|sooner|today|all|at last|everyone|everybody|"
    r"folks|in town|sound|and|earlier|in one piece|tonight|since|(?:a|one|two|three|a few) "
    r"(?:days?|week)(?= (?:early|earlier|sooner))|than (?:planned|thought|expected)|"
    r"from(?: \S+){1,4}))*"
)
_BEFORE_ASIDE = words_in("while whilst when as because since cos")
_NOT_SAID = words_in("if unless was were were been said says whenever in")
_SKIPPED = words_in(
    "and but so also hi hello hey all folks everyone sorry ok just oh btw actually finally , - : ·"
)


class Speaker(NamedTuple):
    """Who is spoken of (None: the sender), by words[start:end]."""

    start: int
    end: int
    member: str | None


def absences(message: Message) -> Iterator[Found]:
    """Every absence, return and question about them in a message."""
    for sentence in message.sentences:
        asks = sentence.asked or message.norms[sentence.start] == "who"
        if asks and (asked := away_asked(message, sentence)):
            yield asked
            continue
        for speaker in _speakers(message, sentence.start, sentence.end):
            if _HOW_TOLD.search(words_between(message, sentence.start, speaker.start)):
                break
            found = _said_by(message, speaker, sentence)
            if found:
                yield from found
                break


def _speakers(message: Message, start: int, end: int) -> Iterator[Speaker]:
    """Whoever is named in a sentence, in order; first the sender, who need not be."""
    at = start
    while at < end and (message.norms[at] in _SKIPPED or _is_greeted(message, at)):
        at += 1
    yield Speaker(at, at, None)
    named = {member.start: member for member in message.members}
    for i in range(start, end):
        if message.norms[i] in ("i", "we"):
            yield Speaker(i, i + 1, None)
        elif i in named:
            member = named[i]
            is_own = is_sender(message, member.name)
            yield Speaker(i, member.end, None if is_own else member.name)


def _is_greeted(message: Message, at: int) -> bool:
    """Whether the bot is called there, before anything is said to it."""
    return at in message.bot


def _said_by(message: Message, speaker: Speaker, sentence: Sentence) -> list[Found]:
    before = message.norms[speaker.start - 1] if speaker.start else ""
    if before in _NOT_SAID:
        return []
    end = min(sentence.end, speaker.end + FARTHEST)
    text = words_between(message, speaker.end, end)
    bare = speaker.start == speaker.end
    if _STAYS.match(text):
        return [Found(speaker.start, end, Staying(member=speaker.member))]
    if match := (_BARE_AWAY if bare else _AWAY).match(text):
        at = speaker.end + len(match.group().removesuffix(" for").split())
        leant_on = before in _BEFORE_ASIDE
        ahead = None if leant_on else _told_ahead(message, sentence.start, speaker.start)
        found = list(_away(message, speaker, at, end, leant_on=leant_on, ahead=ahead))
    elif match := (_BARE_BACK if bare else _BACK).match(text):
        at = speaker.end + len(match.group().split())
        found = _back(message, speaker, at, end, is_coming=bool(match["coming"]))
    else:
        return []
    if bare and sentence.asked:
        return []
    return [one._replace(aside=before in _BEFORE_ASIDE) for one in found]


def _told_ahead(message: Message, start: int, end: int) -> Stretch | None:
    """The days that stand alone before a speaker ("from the 10th to the 14th I'm away"), or those
    that something is missed on, which this is the reason of."""
    while start < end and (message.norms[start] in _SKIPPED or _is_greeted(message, start)):
        start += 1
    stretch = stretch_in(message, start, end)
    if stretch is None:
        return None
    behind = words_between(message, stretch.end, end)
    if behind == "," and not _MISSED.isdisjoint(message.norms[start : stretch.end]):
        return stretch
    return stretch if behind in ("", ",") and begins_at(message, start, stretch) else None


_MISSED = words_in("skip cant cannot wont miss")
"""What is not done on some days, and behind it why: "I can't on Friday, I'm away"."""


def _away(
    message: Message, speaker: Speaker, at: int, end: int, *, leant_on: bool, ahead: Stretch | None
) -> Iterator[Found]:
    if is_no_date(message.words[at:end]):
        yield Found(speaker.start, end, NoSuchDay())
        return
    if _COMES_AGAIN.search(words_between(message, at, _clause_end(message, at, end))):
        yield Found(speaker.start, end, AwayAgain())
        return
    stretch = told_stretch(message, at, end) or _behind_comma(message, at, end)
    if stretch is None:
        stretch = None if leant_on else _for_now(message, speaker, at, end, ahead)
        if stretch is None:
            return
    elif ahead and stretch.first == message.today:
        stretch = _from(ahead, stretch, is_length=not _days_in(message, at, stretch.end))
    stretch, *more = _joined([stretch, *further(message, stretch, end)])
    told_to = more[-1].end if more else stretch.end
    asked, told = asked_in(message, told_to)
    named, told = (None, told) if asked else stand_in(message, told_to)
    if stretch.last is None and message.norms[told : told + 1] in _TILL:
        upto = stretch_in(message, told, end)
        stretch = stretch._replace(last=upto.last if upto else None)
        told = upto.end if upto else told
    begin = speaker.start
    for one in (stretch, *more):
        stop = max(one.end, told) if one.end == told_to else one.end
        plan = Away(
            first=one.first,
            last=one.last,
            member=speaker.member,
            stand_in=named,
            asked=asked,
        )
        yield Found(begin, stop, plan)
        begin = stop
    other, stop = _too(message, begin)
    if other:
        for one in (stretch, *more):
            yield Found(begin, stop, Away(first=one.first, last=one.last, member=other))
            begin = stop


def _for_now(
    message: Message, speaker: Speaker, at: int, end: int, ahead: Stretch | None
) -> Stretch | None:
    """ "I'm away for a while": from today on, or on the days told ahead; "Odile is not here" tells
    of no absence.
    """
    behind = f" {words_between(message, at, _clause_end(message, at, end))}".rstrip()
    if "not" in message.norms[speaker.end : at] or not _FOR_NOW.fullmatch(behind):
        return None
    return ahead._replace(end=at) if ahead else Stretch(message.today, None, at)


def _joined(stretches: Sequence[Stretch]) -> list[Stretch]:
    """Stretches of which one begins on the day behind another are one; so are those of which one
    lies in another: the later tells its days ("over Easter, 2nd to 7th of April").
    """
    out: list[Stretch] = []
    for one in stretches:
        last = out[-1].last if out else None
        if last is not None and one.first == last + timedelta(days=1):
            out[-1] = one._replace(first=out[-1].first)
        elif last is not None and one.last is not None and _within(one, out[-1]):
            out[-1] = one
        else:
            out.append(one)
    return out


def _within(one: Stretch, other: Stretch) -> bool:
    """Whether one of two stretches lies in the other."""
    ends = one.last or date.max, other.last or date.max
    return (one.first - other.first).days * (ends[0] - ends[1]).days <= 0


def _from(ahead: Stretch, told: Stretch, *, is_length: bool) -> Stretch:
    """What is told of an absence from the day on that stands before it."""
    if told.last is None or (not is_length and told.last < ahead.first):
        return told._replace(first=ahead.first)
    last = ahead.first + (told.last - told.first) if is_length else told.last
    return told._replace(first=ahead.first, last=last)


def _days_in(message: Message, start: int, end: int) -> bool:
    return any(start <= day.start < end for day in message.days)


def _behind_comma(message: Message, at: int, end: int) -> Stretch | None:
    """ "At half term, 25 to 29 May": days behind the name of a time."""
    comma = _clause_end(message, at, end)
    if comma in (at, end) or message.norms[at] not in ("at", "over", "during", "for"):
        return None
    stretch = stretch_in(message, comma + 1, end)
    return stretch if stretch and begins_at(message, comma + 1, stretch) else None


_TILL = (["till"], ["until"], ["til"])
_COMES_AGAIN = Late(
    rf"\b(?:every|each) (?:(?:other|second|single|third) )?(?:{'|'.join(WEEKDAYS)}|weekend|week|"
    r"fortnight|month)(?= |$)|\b(?:(?:mon|tues|wednes|thurs|fri|satur|sun)days|weekends)(?= |$)"
)


def _too(message: Message, at: int) -> tuple[str | None, int]:
    """ "…, and so is Dev": who is away on the same days; and where that ends."""
    for member in message.members:
        ahead = words_between(message, at, max(at, member.start))
        if _SO_IS.fullmatch(ahead) and not is_sender(message, member.name):
            return member.name, member.end
    return None, at


_SO_IS = Late(r"(?:(?:as well|too|,|and) )*so (?:is|are|will)")


def _back(message: Message, speaker: Speaker, at: int, end: int, *, is_coming: bool) -> list[Found]:
    stop = _clause_end(message, at, end)
    said = [d for d in message.days if message.norms[d.end - 1] != "earlier"]
    day = next((d for d in said if at <= d.start < stop), None)
    if day is None and message.norms[stop : stop + 2] in ([",", "back"], [",", "home"]):
        day = next((d for d in said if stop < d.start < end), None)
        stop = _clause_end(message, stop + 1, end) if day else stop
    if is_coming and day is None:
        return []
    upto = day.start if day else stop
    while upto > at and message.norms[upto - 1] in ("on", "by", "in", "back", "home", ","):
        upto -= 1
    if not _HOME.fullmatch(f" {words_between(message, at, upto)}".rstrip()):
        return []
    on = message.today if day is None else coming(day.past, day.future, message.today)
    if message.norms[speaker.start - 1 : speaker.start] in _AWAITED:
        return []
    is_home = is_coming or "home" in message.norms[at - 1 : at]
    alone = speaker.start == speaker.end and stop == at  # "back" answers where, too
    if is_home and message.norms[max(0, speaker.start - 1) : speaker.start] == ["when"]:
        return []  # "remind me when I'm home"
    by_the_way = is_home or alone
    weekday = day is not None and day.future - day.past == _WEEK
    plan = Back(on=on, member=speaker.member, weekday=weekday, by_the_way=by_the_way)
    return [Found(speaker.start, stop, plan)]


_WEEK = timedelta(days=7)


_AWAITED = (*_TILL, ["before"], ["once"], ["after"])
"""Before a speaker who is not back yet: "Bram has it till we're back"."""


def _clause_end(message: Message, at: int, end: int) -> int:
    return next((i for i in range(at, end) if message.norms[i] in (",", "(", "-", ":")), end)
