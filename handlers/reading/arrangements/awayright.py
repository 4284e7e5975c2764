"""An absence put right in few words: "back Tuesday, not Wednesday", "leaving a day later", "coming
home early", "I'm here till Sunday", "we're not going now". Of one who is not away it is no news.
"""

from datetime import date, timedelta

from handlers.reading.arranged import AwayChanged, Staying
from handlers.reading.calendar.days import Day
from handlers.reading.calendar.stretches import coming
from handlers.reading.phrases import Phrase
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = (
    *("back ", "home ", "leaving", "setting off", "heading off", "going away", "here till"),
    *("here until", "around till", "around until", "not going", "cancelled", "canceled", "stay"),
)
_DAY, _WEEK = timedelta(days=1), timedelta(days=7)

LEAD = (
    r"(?:(?:actually|sorry|no|oh|so|but|and|hi|all|folks|hey|news|update|(?:small|slight) change|"
    r"change of plans?|plans? (?:has |have |'ve )?changed|bad news|good news|looks like|it looks "
    r"like|turns out|it turns out|just to say|fyi|scrap that|in the end|after all|everyone|"
    r"(?:the |my |our )?(?:trip|holiday)(?: is| 's)? cut short|cutting it short|well|right|ok) )*"
)
_WHO = r"(?:(?:i|we|he|she|they|qmember)(?: (?:am|are|is|'s|'re|will|'ll|be|have|has))* )"
_RATHER = r"(?: (?:not|and not|rather than|instead of|instead)(?: (?:on|the|from))*(?: qday)?)"
_BESIDE = (
    rf"(?:{_RATHER}| (?:now|already|then|after all|early|sooner|as planned|i am afraid|sorry|again|"
    r"for (?:work|a change)))"
)
_WAY = (
    r"(?:coming|flying|driving|heading|getting|travelling|traveling|arriving|be|only|now|already)"
)
_BACK = Late(
    rf"^{LEAD}(?P<who>{_WHO})?(?:{_WAY} )*(?:back|home)(?: (?:home|here|again|only|now|already|on|"
    rf"by|early|earlier|sooner|the))* qday(?P<beside>{_BESIDE}*)$"
)
"""When somebody is back; that of a whole sentence is read as such, unless it is instead."""
_LEAVES = Late(
    rf"^{LEAD}{_WHO}?(?:(?:only|now) )*(?:leaving|setting off|heading off|going away|"
    rf"not (?:leaving|going|going away|setting off|away) (?:till|until|til|before))"
    rf"(?: (?:only|now|on|from|the))* qday{_BESIDE}*$|"
    rf"^{LEAD}{_WHO}?(?:going|off|away)(?: (?:only|on|from|the))* qday{_RATHER}+$"
)
_STILL_HERE = Late(
    rf"^{LEAD}{_WHO}(?:still )?(?:here|home|at home|around)(?: still)? (?:till|until|til)"
    rf"(?: the)? qday{_BESIDE}*$"
)
_MOVED = Late(
    r"(?P<what>leaving|setting off|heading off|going away|staying|"
    r"(?:coming|come|flying|driving|heading|getting|get|arriving|be)(?: (?:back|home))+)"
    r"(?: (?:home|here|only|again|away))* (?P<count>a|an|one|two|three|four|five|six|\d{1,2}) "
    r"(?:whole |full )?(?P<unit>day|night|week)s? "
    r"(?P<way>early|earlier|sooner|late|later|less|fewer|shorter)"
    r"(?: (?:than (?:planned|thought|expected|(?:i|we) (?:said|thought))|after all|now|"
    r"instead|sorry))*$"
)
_COUNTS = {"two": 2, "three": 3, "four": 4, "five": 5, "six": 6}
_SOONER = words_in("early earlier sooner less fewer shorter")
_NOW = r"(?: (?:after all|instead|now|then|this time|any ?more))"
_OFF = Late(
    rf"^{LEAD}{_WHO}?(?:not (?:going|travelling|leaving|flying|away)"
    r"(?: away| anywhere| on holiday| qday)?(?: (?:after all|any ?more|this time))+|"
    rf"(?:going to be )?staying(?: at)? (?:home|put|here){_NOW}+|"
    rf"(?:have |'ve )?decided (?:not to go|against going|to stay(?: at)? (?:home|here|put)){_NOW}*|"
    r"(?:have |'ve )?(?:cancelled|canceled|called off) (?:the|our|my) (?:trip|holidays?|vacation|"
    r"visit|weekend away)|not going away now)(?P<end>)(?: \S+){0,10}$"
)
_OFF_NOW = Late(
    rf"^{LEAD}{_WHO}(?:not going|staying(?: at)? (?:home|put)){_NOW}*(?P<end>)(?: \S+){{0,10}}$"
)
"""It may be said of any outing: only right behind an absence is that meant."""
_STOPS = words_in(", . ; : - ( !")


def put_right(phrase: Phrase) -> AwayChanged | Staying | None:
    """What a sentence says anew of an absence."""
    if phrase.asked:
        return None
    days = [day for day in phrase.days if phrase.message.norms[day.start - 1] not in _NOT_ON]
    if shifted := _shifted(phrase):
        return shifted
    if days and (changed := _on_a_day(phrase, days[0])):
        return changed
    context = phrase.message.context
    off = _OFF.match(phrase.text)
    if off is None and (context.on_absence or context.on_handover):
        off = _OFF_NOW.match(phrase.text)
    if off is None or not _ends(phrase, off.start("end")):
        return None
    return Staying(member=phrase.member)


_NOT_ON = words_in("not than of")


def _on_a_day(phrase: Phrase, day: Day) -> AwayChanged | None:
    on = coming(day.past, day.future, phrase.message.today)
    told = AwayChanged(member=phrase.member, weekday=day.future - day.past == _WEEK)
    back = _BACK.match(phrase.text)
    alone = back and (back["who"] is None or back["beside"] or "only" in phrase.tokens)
    if alone and on > phrase.message.today:
        only = "only" in phrase.tokens
        return _anew(told, last=on - _DAY, is_back=True, no_earlier=only)
    if _LEAVES.match(phrase.text):
        return _anew(told, first=on)
    return _anew(told, first=on, no_earlier=True) if _STILL_HERE.match(phrase.text) else None


def _anew(
    told: AwayChanged,
    *,
    first: date | None = None,
    last: date | None = None,
    is_back: bool = False,
    no_earlier: bool = False,
) -> AwayChanged:
    return AwayChanged(
        first=first,
        last=last,
        is_back=is_back,
        no_earlier=no_earlier,
        weekday=told.weekday,
        member=told.member,
    )


def _shifted(phrase: Phrase) -> AwayChanged | None:
    """ "Coming home a day early", "leaving two days later"."""
    if phrase.bins:
        return None
    match = _MOVED.search(phrase.message_text.replace(" ,", ""))
    if match is None:
        return None
    said = match["count"]
    count = int(said) if said.isdecimal() else _COUNTS.get(said, 1)
    days = count * (7 if match["unit"] == "week" else 1)
    days = -days if match["way"] in _SOONER else days
    if match["what"].startswith(("leaving", "setting", "heading off", "going")):
        return AwayChanged(later=days, member=phrase.member)
    return AwayChanged(more=days, member=phrase.member)


def _ends(phrase: Phrase, at: int) -> bool:
    """Whether a clause ends there: what stands behind may say why."""
    last = phrase.text[:at].count(" ")
    if last + 1 >= len(phrase.spans):
        return True
    return not _STOPS.isdisjoint(
        phrase.message.norms[phrase.spans[last][1] : phrase.spans[last + 1][0]]
    )
