"""Turns, as members agree on them: "rota for the shed bin: Ines, Bram, weekly", "swap my week"."""

import re
from collections.abc import Iterator
from datetime import date

from handlers.reading.arranged import Plan
from handlers.reading.arrangements.communal import (
    Joining,
    Quitting,
    Rearranged,
    Rota,
    RotaOver,
    Swap,
    SwapOff,
    WhoseTurn,
)
from handlers.reading.arrangements.newrota import duty_of, rota_set
from handlers.reading.arrangements.rearranging import rearranged
from handlers.reading.calendar.daywords import MONTHS
from handlers.reading.calendar.stretches import stretch_in
from handlers.reading.calendar.weeks import named_in
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, first_plan, phrases
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

LONGEST = 3
"""Sentences of a message that arranges turns."""

CUES = (
    "rota",
    "roster",
    "turn",
    "swap",
    "my week",
    "'s week",
    "’s week",
    "per keeper",
    "per household",
    "keeping period",
    "keeps",
    "list of keepers",
    "me out",
    "skip me",
    "weeks each",
    "days each",
    "me after",
    "me before",
    "between me",
    "me between",
)

_ROTA = (
    r"(?:(?:the|our|a|this|bin|draining|drain|keeping|carrying|new|weekly) ){0,4}(?:rota|roster)"
)
_OF_BIN = r"(?: (?:for|of|with) (?:the )?qbin)?"
_SHOW = Late(
    rf"^(?:(?:can|could) (?:you|we|i) )?(?:show|post|see|give|what is|what 's|whats)"
    rf"(?: us| me)? {_ROTA}{_OF_BIN}$|^{_ROTA}{_OF_BIN}(?: now)?$"
)
_SHOW_IN = Late(
    rf"^(?:whose (?:turn|week|go) (?:is it|it is|is)|who has (?:the |a )?turns?|{_ROTA}|"
    rf"(?:show|what is|what 's|whats)(?: us| me)? {_ROTA}){_OF_BIN}(?: (?:for|with) the bins?)? "
    rf"(?:in|for) (?P<month>{'|'.join(MONTHS)}|next month)$"
)
_REASON = r"(?: (?:he|she|they|i|we|as|because|since)\b.{1,60})?$"
_JOIN = Late(
    rf"^(?:can you |could you |can |could )?(?:add|put) (?P<who>me|us|qmember|[a-z]\w+) "
    rf"(?:on|to|onto|in|down for) {_ROTA}{_OF_BIN}(?: too| as well| again)*{_REASON}|"
    rf"^(?P<joiner>i|qmember) (?:will |would like to |'d like to |want to |wants to |can |am |is |"
    rf"'s )?(?:join|joining|joins)(?: in)? {_ROTA}{_OF_BIN}(?: too| as well| again)*$|"
    rf"^(?:can|could|may|might) (?P<asker>i|we|qmember) (?:please |also )*(?:join|be (?:in|on|part "
    rf"of)|(?:come|get|go) (?:in|on|onto|into)) {_ROTA}{_OF_BIN}(?: too| as well| again| please)*$"
)
_LEAVING = (
    r"(?P<leaving>(?:i|we|qmember) (?:am |are |is |'m |'s |will be |have to |has to |has |have |"
    r"'ve )?(?:moving out|moving away|moving|leaving|going away|away|off|out|left|moved out|"
    r"moved away|gone|quit)(?: us| the group| our group)?"
    r"(?: (?:on |from )?qday| soon| for good)?"
    r"(?: ,)?(?: (?:so|and|please))* )?"
)
_QUIT = Late(
    rf"^{_LEAVING}(?:please |can you |could you |can |could )*(?:take|remove|drop|leave|"
    rf"strike|get) (?P<who>me|qmember|him|her|them|[a-z]\w+) (?:off|from|out of|off of) "
    rf"(?:the list of keepers|{_ROTA}{_OF_BIN})"
    rf"(?: from now(?: on)?| for good| please| (?:on|from) qday(?: on)?|"
    rf"(?P<after> after (?:this|my)(?: (?:turn|week|one|time|go))?))*{_REASON}|"
    rf"^(?P<leaver>i|qmember) (?:am |is |'s |will |have to |has to |must |want to |wants to |"
    rf"need to )?"
    rf"(?:off|out of|leave|leaving|quit|quitting|come off|coming off|leaves) {_ROTA}{_OF_BIN}$"
)
_OUT_FOR = Late(
    rf"^(?:(?:please|can you|could you|just) )*(?:(?:leave|count|take|keep) (?P<who>me|us|qmember) "
    rf"out(?: of {_ROTA})?|(?P<leaver>i|qmember) (?:am|is|will be) out of {_ROTA}|"
    rf"no (?:turns?|weeks?|{_ROTA}) for (?P<spared>me|us|qmember)|"
    r"(?P<unable>i) (?:cant|cannot|wont) (?:do|take|have) (?:any|a|my) (?:more )?turns?)"
    r"(?= (?:for|in|over|during|from|till|until|next|this|between|all|qday)\b)"
)
"""Out of it for some time, whose days are told behind."""
_OVER = Late(
    rf"^(?:can we |lets |let us |we )?(?:end|stop|cancel|scrap|drop|finish|abandon|delete) "
    rf"{_ROTA}{_OF_BIN}{_REASON}|^no more (?:turns|rota|roster){_OF_BIN}$|^{_ROTA}{_OF_BIN} (?:is|"
    rf"'s) over$"
)
_MINE = r"(?:my|this|next|that)(?: coming| next)? (?:week|turn|go|days?|slot|fortnight|month)"
_SWAP = (
    Late(
        rf"^(?:can|could|would|will|is|does|do) (?:anyone|anybody|someone|somebody|one of you|"
        rf"any of you|(?P<to>qmember)) (?:please |kindly |be able to |able to |willing to |"
        rf"want to |up to |"
        rf"happy to )?(?:swap|switch|trade|exchange)\b(?: {_MINE}| weeks| turns| days| places|"
        rf" with me| "
        rf"with mine| for theirs| qday| for qday| please| me| for| on| with| of| the|"
        rf" rota)*{_OF_BIN}$"
    ),
    Late(
        rf"^(?:anyone|anybody|someone|somebody|who)(?: here)?(?: is)? (?:can|could|willing to|"
        rf"want to|wants to|"
        rf"able to|up for|happy to|fancy|free to)? ?(?:swap|swapping|switch|switching|trade|"
        rf"trading)"
        rf"(?: {_MINE}| weeks| turns| with me| for qday| qday| with| me)*$"
    ),
    Late(rf"^(?:(?:can|could|may) i )?(?:swap|switch|trade) {_MINE}"
               rf"(?: with (?:(?P<with>qmember)|anyone|someone|somebody))?(?: please)?$"),
    Late(
        rf"^(?:can|could|would|will) (?:anyone|anybody|someone|somebody|one of you|"
        rf"(?P<for>qmember)) "
        rf"(?:please )?(?:cover|do|take|have) {_MINE}(?: for me| instead| qday| please)*{_OF_BIN}$"
    ),
    Late(r"^(?:i )?(?:cant|cannot|wont be able to|am not able to) (?:do|make|manage|cover) "
               r"(?:my (?:week|turn|go))(?: qday| with qbin| this time| sorry)*$"),
    Late(r"^(?:skip|pass on) my (?:turn|week|go)(?: please)?$"),
    Late(r"^(?:please )?skip me (?:this|next) (?:time|round|turn|week|month)(?: please| round)*$"),
    Late(r"^(?:can|could|may) (?:qmember and (?:i|me)|(?:i|me) and qmember) (?:please )?"
               r"(?:swap|switch|trade)(?: our)?(?: turns| weeks| places)?(?: please)?$"),
    Late(r"^(?:please |can you |could you )*(?:swap|switch) me (?:with|and|for) qmember$"),
    Late(rf"^qmember (?:can|could|would|will) you (?:please )?(?:swap|switch|trade)"
               rf"(?: {_MINE}| weeks| turns| with me| qday| for qday)*$"),
    Late(rf"^qmember (?:can|could|would|will) you (?:please )?(?:do|cover|take|have) {_MINE}"
               rf"(?: for me| instead| qday| please)*{_OF_BIN}$"),
)  # fmt: skip
_WITH = r"(?: (?:our|my|the|this|that|his|her|weeks?|turns?|days|places|with each other|then|ok))*"
_SWAP_TOLD = (
    Late(rf"^(?:(?:i am|i will|i 'll|i have|i 've|i|we) )?(?:just )?(?:swap|swapping|swapped|"
               rf"switch|switched|trade|traded){_WITH} with qmember{_WITH}$"),
    Late(rf"^(?:qmember and (?:i|me)|(?:i|me) and qmember) (?:will |have |are |just |agreed to )*"
               rf"(?:swap|swapping|swapped|switch|switched|trade){_WITH}$"),
    Late(r"^(?:i|we) (?:will |'ll |can )?(?:do|take|cover|have) qmember 's (?:week|turn|go)"
               r"(?: (?:then|and (?:he|she|they) (?:does|do|takes?|has|have) mine))?$"),
    Late(r"^(?:(?:can|could) you |please )*(?:give|pass|hand) my (?:next )?(?:turn|week|go) "
               r"(?:on )?to qmember(?: please)?$"),
)  # fmt: skip
"""Told of a member: whoever is named is asked."""
_THE_SWAP = (
    r"(?:the|that|our|my|this)(?: (?:agreed|planned))? (?:swap|trade)(?: of (?:turns|weeks|days))?"
    r"(?: (?:with|between us and) qmember)?"
)
_END = rf"(?:{_OF_BIN}| (?:after all|please|then|sorry|again|qday|now|any ?more|off|for now))*$"
_SWAP_OFF = (
    Late(
        r"^(?:(?:please|sorry|ok|can we|could we|can you|could you|lets|let us|let 's|we|i|"
        r"i want to|we want to|i would like to|we should) )*(?:call(?: off)?|called off|cancel|"
        rf"forget(?: about)?|scrap|drop|undo|withdraw|take back) {_THE_SWAP}{_END}"
    ),
    Late(rf"^(?:sorry )?{_THE_SWAP} (?:is|'s|has been) (?:off|cancelled|called off){_END}"),
    Late(
        r"^(?:sorry )?(?:(?:we|i)(?: are| am)?|qmember and (?:i|me)(?: are)?) (?:not|wont be|wont)"
        rf" swap(?:ping)?(?: (?:turns|weeks|days))?(?: with qmember)? (?:after all|any ?more){_END}"
    ),
    Late(rf"^(?:sorry )?no swap(?: with qmember)? after all{_END}"),
)


def turntaking(message: Message) -> Iterator[Found]:
    """What a message arranges about turns, if that is all it says."""
    said = list(phrases(message))
    rota = rota_set(message, said) if len(said) <= LONGEST else None
    if rota is not None:
        yield Found(0, len(message.words), rota)
    else:
        yield from first_plan(message, _plan, most=LONGEST)


def turns_set(message: Message) -> tuple[str, str] | None:
    """The rota that a message settles or changes, as a setting of the group."""
    if _WORDS.isdisjoint(message.said):
        return None
    plans = (found.plan for found in turntaking(message))
    said = message.text(0, len(message.words))
    return next((("rota", said) for plan in plans if isinstance(plan, _SETTLED)), None)


_WORDS = words_in("rota roster rotation per keepers keeping keeps")
_SETTLED = (Rota, Joining, Quitting, Rearranged, RotaOver)


_EXCUSE = Late(
    r"^(?:sorry )?(?:i|we) (?:am|are|will be|have|cant|wont be|'ll be)(?: \S+){1,8}? "
    r"(?=(?:can|could|would|will) (?:anyone|anybody|someone|somebody|one of you|any of you|qmember)"
    r" )"
)
"""Why somebody would swap, in the sentence that asks."""


def _plan(phrase: Phrase) -> Plan | None:
    text = phrase.text
    if match := _JOIN.match(text):
        return _joining(phrase, match)
    if out := _out_for(phrase):
        return out
    if match := _QUIT.match(text):
        return _quitting(phrase, match)
    if change := rearranged(phrase):
        return change
    if _OVER.match(text):
        return RotaOver(bin=phrase.bin_said, duty=duty_of(phrase))
    if _SHOW.match(text):
        return WhoseTurn(bin=phrase.bin_said)
    if match := _SHOW_IN.match(text):
        named = named_in(f"in {match['month']}", phrase.message.today)
        return WhoseTurn(bin=phrase.bin_said, on=named.first if named else None)
    if any(pattern.match(text) for pattern in _SWAP_OFF):
        return SwapOff(to=phrase.member, bin=phrase.bin_said)
    wish = text[excuse.end() :] if (excuse := _EXCUSE.match(text)) else text
    asked = any(pattern.match(wish) for pattern in _SWAP)
    told = not asked and any(pattern.match(text) for pattern in _SWAP_TOLD)
    if asked or (told and phrase.member):
        return Swap(to=phrase.member, bin=phrase.bin_said, on=_of_turn(phrase), told=told)
    return None


def _joining(phrase: Phrase, match: re.Match[str]) -> Joining | None:
    who, member = _who(phrase, match, "who", match["joiner"] or match["asker"])
    return Joining(member=member, bin=phrase.bin_said, duty=duty_of(phrase)) if who else None


def _quitting(phrase: Phrase, match: re.Match[str]) -> Quitting | None:
    who, member = _who(phrase, match, "who", match["leaver"])
    if not who:
        return None
    days = [day.future or day.past for day in phrase.days]
    on = min((day for day in days if day > phrase.message.today), default=None)
    duty = None if match["leaving"] else duty_of(phrase)  # "moving out" carries no bin
    return Quitting(
        member=member, bin=phrase.bin_said, duty=duty, on=on, after_turn=bool(match["after"])
    )


def _out_for(phrase: Phrase) -> Quitting | None:
    """ "Leave me out in April": out of the turns for some days, and then in them again."""
    match = _OUT_FOR.match(phrase.text)
    if match is None:
        return None
    behind = phrase.spans[match.group().count(" ")][1]
    stretch = stretch_in(phrase.message, behind, phrase.end)
    if stretch is None or stretch.last is None or stretch.last <= phrase.message.today:
        return None
    told = match["leaver"] or match["spared"] or match["unable"]
    who, member = _who(phrase, match, "who", told)
    on = stretch.first if stretch.first > phrase.message.today else None
    return Quitting(member=member, bin=phrase.bin_said, on=on, until=stretch.last) if who else None


def _who(
    phrase: Phrase, match: re.Match[str], group: str, told: str | None
) -> tuple[bool, str | None]:
    """Whether somebody is meant, and which member if it is not the sender."""
    who = match[group] or told
    if who == "qmember":
        return True, phrase.member
    if who in ("him", "her", "them"):  # the one member named before
        return len(phrase.members) == 1, phrase.member
    if who in ("me", "us", "i", "we"):
        return True, None
    name = phrase.said(match, group)
    return name[:1].isupper(), name


def _of_turn(phrase: Phrase) -> date | None:
    """A day of the turn in question."""
    return phrase.days[0].future if phrase.days else None
