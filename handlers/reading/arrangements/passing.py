"""A bin's name as the thing kept, refused or passed on: "Stan's coming to us", "keg's going spare".

Such words hold whatever their score: with a bin's name in that place they can mean little else.
"""

import re
from datetime import date, timedelta

from handlers.reading.acts import Accept, Act, Ask, Decline, Offer
from handlers.reading.calendar.days import Day
from handlers.reading.calendar.otherdays import is_of_absence
from handlers.reading.calendar.stretches import coming as coming_day
from handlers.reading.calendar.weeks import named_in
from handlers.reading.message import Message
from handlers.reading.people.doers import is_sender
from handlers.reading.people.members import MemberRef
from handlers.reading.plaintext import SHORT, plain_text, with_people
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.wording import Patterns, first_in, patterns

BY_NAME = "the bin's name is what is kept or passed on"

RIVALS = frozenset({"accept", "decline", "offer", "ask custody"})
"""Where one of these is told by a bin's name, the others are not supplied beside it, unless they
are all but certain."""


def _patterns(*sources: str) -> Patterns:
    return patterns(*map(_written_out, sources))


def _written_out(source: str) -> str:
    for short, long in _SHORT.items():
        source = source.replace(short, long)
    return source


_SHORT = {
    "BIN": (
        r"(?:the |that |our |old |poor |dear )?qbin(?=$| (?:[^\w\s']|for|from|till|until|on|qday|"
        r"this|next|in|at|and|so|as|if|then|please|thanks|ta|over|through|after|while|during|"
        r"because|since|too|past|any|again|off|when|before|once|with|without|now|qmember|who|i|"
        r"we|but|by|next)(?: |$))"
    ),
    "ANY": r"(?:the |that |our |old |poor |dear )?qbin",
    "KEEP": (
        r"(?:take|have|host|house|mind|keep|hold|manage|store|lodge|adopt|foster|look after|"
        r"put up|take on|take over|carry)"
    ),
    "TAKING": r"(?:taking|having|hosting|housing|minding|handling|fostering|looking after)",
    "US": r"(?:us|me|ours|mine|our place|my place|our house|my house|our flat|my flat)",
    "SOMEONE": (
        r"(?:someone|somebody|anyone|anybody|whoever|one of (?:you|us|the)|some one|any of you)"
    ),
    "NOT": r"(?:cant|cannot|couldnt|shant|wont|not able to|unable to|wont be able to|can no "
    "longer)",
}

_TAKEN = _patterns(
    r"\bANY (?:is |'s |will be )?(?:coming|comes|moving in|moves in|(?:can|may|could|will) "
    r"(?:come|move in|stay|holiday|live|stop|lodge|winter))(?: and stay| over)? "
    r"(?:to|with|by|at|in with) US\b(?! (?:for|at|on) (?:tea|lunch|dinner|supper|breakfast|qday|"
    r"christmas|easter|a))",
    r"\bqbin ,? ?(?:she|he|it) (?:is |'s )(?:coming|moving in) (?:to|with) US\b",
    r"\bANY (?:is |'s |sounds |suits )(?:just |quite |all |absolutely )?(?:grand|fine|good|great|"
    r"ok|okay|lovely|perfect|dandy|no (?:bother|trouble|problem|hassle)) (?:for|by|with) "
    r"(?:me|us|him|her)\b(?! to)",
    r"\bANY (?:is |'s )no (?:bother|trouble|problem|hassle)\b",
    r"^(?:(?:right|so|then|,|qmember) )*BIN (?:is |'s )(?:mine|ours) (?:qday|then|from|till|until|"
    r"for|now)\b",
    r"(?<!no )\byes (?:please )?to BIN",
    r"\b(?:put (?:me|us) down|put my name down|count (?:me|us) in|my hand (?:is |'s )up)"
    r" (?:for|as (?:the )?keeper of) BIN",
    r"\b(?:i|we) 'd love BIN(?! to\b)",
    r"^(?:will|shall|can|could) (?:take|have|mind|host) (?:the )?qbin (?:ex|from|for|till|until|"
    r"qday)\b",
    r"\b(?:i|we) (?:have )?agreed? to KEEP BIN",
    r"\bqmember (?:has |'s |have )?agree[ds] to (?:KEEP )?BIN",
    r"\bqmember (?:is |'s )happy (?:with|to KEEP) (?:the )?qbin (?:from|for|till|until|qday|over|"
    r"through)\b",
    r"^(?:(?:so|right|yes|,) )*i am TAKING (?:the )?qbin (?:from|for|till|until|qday)\b",
    r"^from qday i am TAKING (?:the )?qbin$",
    r"^(?:(?:yes|right|so|,) )*i will (?:take|have|mind|host|house|foster) (?:the )?qbin (?:qday|"
    r"from|for|till|until)\b(?! (?:a|the) (?:wash|clean|rinse|swim|walk|spin))",
    r"\bANY (?:is |'s )(?:under|beneath) (?:my|our) (?:wing|roof)\b",
    r"\bqday (?:works|suits)(?: for)?(?: me| us)? for BIN",
)

_REFUSED = _patterns(
    r"\b(?:hard|firm|big|flat) (?:no|pass) (?:on|to|from me on) BIN(?! ,? only)",
    r"(?:^|[,.;] |\bit 's |\ba |\bsays? |\bsaid )no to BIN",
    r"\bqmember (?:(?:passes|is passing|'s passing) on|begs off|is begging off) BIN",
    r"^(?:(?:so|sorry|no|lol|,|\S+) ){0,8}not (?:me|us) (?:for|and|on) BIN(?!.*\bis it$)",
    r"^(?:no ,? )+(?:not|never) (?:that|the) qbin\b",
    r"\bqbin ,? no (?:, )?(?:sorry|thanks|thank you|not|never)\b",
    r"(?<!if )\b(?:qmember|he|she|i am|we are|they are)(?: is| 's)? not up (?:for|to) BIN",
    r"\bqmember (?:is |'s )out for BIN",
    r"\b(?:leave|count|rub|cross) (?:me|us|him|her|them|qmember) (?:off|out of|out for|out on)"
    r"(?: the (?:list|rota) for)? BIN",
    r"\bfind (?:some other|another|someone else|somebody else|a different)(?: \w+)? for BIN",
    r"\b(?:look|try) elsewhere for BIN",
    r"\bdont (?:land|dump|foist|palm|wish) (?:the )?qbin (?:on|off on|on to) (?:me|us)\b",
    r"\bdont (?:look at|saddle) (?:me|us) (?:for|with) (?:the )?qbin\b",
    r"\b(?:must|have to|will have to) (?:refuse|decline|turn down|say no to|pass on) BIN",
    r"\b(?:done|did|had|served) my (?:stint|bit|share|stretch|time|turn) with BIN",
    r"\bmy qbin (?:days|duty) (?:is|are) (?:over|behind me|done)\b",
    r"\bqbin duty is (?:impossible|not possible|out)\b",
    r"\bANY had better go to (?:someone|somebody) else\b",
    r"\b(?:i|we) (?:'d|would) (?:prefer to|rather|sooner) leave BIN",
    r"\btry qmember for BIN",
    r"\b(?:i|we) (?:am |are )?(?:not able to|unable to) KEEP BIN",
)

_OFFERED = _patterns(
    r"\bANY (?:is |'s |are )?(?:now |still |soon )?(?:(?:going )?up for (?:grabs|adoption)|"
    r"going (?:spare|begging)|free to (?:a good|whoever|anyone|anybody)|"
    r"looking for (?:a |an |her |his |its )?(?:new |next |another )*(?:keeper|home|carer|host|"
    r"minder|family))",
    r"\bANY (?:is |'s )?(?:needs|needing|wants|wanting) (?:a |an )?(?:new |another |different |"
    r"foster |good )*(?:keeper|home|hoose|host|minder|family|carer|place to (?:live|stay|crash)|"
    r"somewhere to (?:live|stay|go)|SOMEONE(?= (?:to (?:KEEP)|with)|$| [^\w\s]))",
    r"\bANY (?:is |'s )(?:now |still )?on offer\b",
    r"\bANY (?:is |'s )(?:now |all |officially )*(?:yours|urs|yrs)\b(?=.*\b(?:qday|until|till|from|"
    r"while i|for (?:a|the|two|three|\d+) (?:week|weeks|month|months|fortnight|while))\b)",
    r"^(?:(?:so|ok|right|and|well|,) )*ANY (?:is|'s|are) (?:to be|going to be|due to be) "
    r"(?!(?:mine|"
    r"ours|the|next|yours)\b)\w+ 's (?:(?:from|as of|until|till) (?:the )?qday|next (?:week|month|"
    r"turn|fortnight))\b",
    r"\bANY (?:would|'d) like to move\b",
    r"\b(?:does|would|is|are|will) SOMEONE (?:want|like|care|wish|willing|able|free|happy|"
    r"available|"
    r"going) to KEEP BIN",
    r"\bANY (?:has to|must|needs to|is to|has got to) go (?:home with|to|home to) SOMEONE",
    r"\bfree to a good (?:home|keeper)(?: :| ,)?(?: one)? BIN",
    r"\bany ?takk?ers (?:for|on) BIN|^ANY (?:: |, |- )?any ?takk?ers\b",
    r"\bwho (?:fancies|'d like|would like|wants|'d have)(?: having| minding| taking| to KEEP)? BIN",
    r"\b(?:relieve|rid) me of BIN",
    r"\b(?:i|we)(?: 'd| would|d) (?:like|love|prefer|want) (?:for )?SOMEONE(?: else)? to KEEP BIN",
    r"\b(?:step forward|come forward|volunteers?) for BIN",
    r"\b(?:someone|somebody|anyone|anybody) to give ANY a home\b",
    r"\b(?:anybody|anyone|somebody|someone|who)(?: (?:has|have|got|with|is|there))*(?: an?| any)?"
    r"(?: \w+)? (?:room|corner|spot|space|place|shelf) for BIN",
    r"^(?:any )?(?:room|space|corner|spot) for (?:the )?qbin in (?:someone|somebody|anybody|"
    r"anyone)",
    r"\bwhoever\b.{0,60}\b(?:may|can) (?:take|have) BIN",
    r"^(?:(?:so|ok|right|and|well|,) )*ANY (?:is|will be|'s) qmember 's (?:(?:from|as of|over|"
    r"until|till) (?:the )?)?(?:qday|next (?:week|month|turn|fortnight))\b(?! 's)",
    r"\bqmember ,? ?you are (?:up|down|on|next) (?:for|with) BIN(?! \?)",
    r"^(?:(?:i|we|have|just|so|right|,) )*(?:dropped|brought|delivered|carried|left|took|taken)"
    r"(?: off| round| over| up| down)? (?:the |my )?qbin(?: off| round| over| up| down)? "
    r"(?:at|to|with) qmember(?: 's)?(?: (?:place|house|porch|door|doorstep|flat))?"
    r"(?= qday|$| [,.!]| (?:just )?now| this | last | earlier)",
    r"^(?:(?:so|ok|right|and|well|,|i am|am) )*(?:handing|passing) (?:him|her|them|qmember) "
    r"(?:over )?BIN",
)
_GIVEN_UP = _patterns(
    r"\bNOT (?:KEEP|be doing with|be lugging|lug|take|bring) BIN",
    r"\bANY NOT (?:stay|come)\b",
    r"\bno (?:more )?(?:room|space|time) for BIN",
    r"\b(?:got to|have to|has to|must|need to) (?:give up|give away|hand off|hand over|part with|"
    r"pass on|rehome|let go of) BIN",
    r"\bqbin (?:is empty|is free|is going|'s lid is too)\b",
)
"""A keeper who cannot keep a bin: an offer, where somebody is called to take it."""
_CALLED = Late(
    r"\bany ?takk?ers\b|\b(?:anyone|anybody)\b(?=$| \?| (?:want|would|like|fancy|able|else))|"
    r"\bwho(?: else)? (?:will|would|'d|can|could|has|wants|fancies|is in|'s in|is up|"
    r"volunteers)\b(?! (?:like |to )?(?:a|an|some|the|my|your)\b)|"
    r"\bwhoever\b|\bwant (?:it|him|her)\b|\b(?:will|could|can|would) (?:you|"
    r"anyone|anybody|somebody|someone|one of you)\b.{0,20}\b(?:have|take|want|mind|host)\b|"
    r"\bhands\b$|\b(?:come|step) (?:forward|up)\b|"
    r"\bfirst to\b|\bneeds? a home\b|\bgoing (?:spare|begging)\b|\bspeak up\b|"
    r"\bdibs\b|[.] qmember$"
)

_KEPT_WHERE = _patterns(
    r"\b(?:in|on|at|under) (?:whose|which) (?:\w+ )?(?:house|cellar|garage|shed|shelf|flat|floor|"
    r"kitchen|balcony|porch|garden|place|hall|basement|hands|home|yard|stairs|roof) (?:is|stands|"
    r"lives|sits|does|are|'s) (?:ANY|she|he|it)\b",
    r"\bwho took (?:the )?qbin(?: on)? in the end\b",
    r"\bwhich (?:one )?of (?:us|you) (?:is|has|keeps|minds)(?: looking after| keeping| minding| "
    r"hosting| down to KEEP| to KEEP)? BIN",
    r"\bwho it is that has BIN",
    r"\b(?:qmember|[a-z]+) (?:has|'s|gets|takes|keeps|is having|is taking|is minding) (?:got )?"
    r"(?:the )?qbin\b[^.!?]{0,40} ,? ?(?:(?:is|isnt|aint) that (?:no |not )?(?:right|so|correct|"
    r"it)|"
    r"(?:am i |is that |that 's )?(?:right|correct))(?=$| \?| [^\w])",
    r"\bhas ANY (?:changed hands|been (?:collected|picked up|handed over))\b",
    r"\bdid ANY (?:go|come) back to (?:qmember|\w+)\b",
    r"\bqbin , (?:in|on|at|under) whose \w+ is (?:she|he|it)\b",
    r"\b(?:is|'s) ANY (?:already |still )?(?:spoken for|promised|claimed|bespoken)\b",
    r"\b(?:has|have|does) (?:SOMEONE|qmember) (?:got |have |put )?(?:first )?(?:dibs|a claim) "
    r"on BIN",
    r"^(?:(?:so|and|hi|hey|but|,) )*is (?:the )?qbin free (?:from|after) (?:the )?qday"
    r"(?: on| onwards)?(?: ,? please)?$",
    r"^(?:(?:so|and|pray|but|,) )*whither (?:goes |go |now |is )?BIN",
    r"^(?:(?:so|and|hi|hey|but|bot|,) )*when (?:do|will|would|shall|does) (?:i|we|qmember) (?:get|"
    r"have|take|receive|inherit|be getting) (?:the )?qbin"
    r"(?=$| \?| (?:qday|next|this|then|from)\b)",
    r"\bSOMEONE (?:supposed|meant|due|going) to (?:be )?(?:KEEP|TAKING|keeping|collect|collecting|"
    r"fetch|fetching) (?:the )?qbin\b",
    r"\bwho\b.{0,20}\b(?:custodian|guardian|minder|keeper) of BIN",
)

_ASKING = words_in(
    "whose which who changed collected picked handed back spoken promised taken claimed bespoken "
    "dibs claim free whither when supposed meant due going right correct so"
)
_OFFERING = words_in(
    "grabs adoption spare begging offer free looking needs needing wants wanting move someone "
    "somebody anyone anybody takers takkers who rid relieve forward volunteer volunteers home room "
    "corner spot space place shelf whoever yours urs yrs one is 's will handing passing up down "
    "on next dropped brought delivered carried left took taken"
)
_GIVING_UP = words_in(
    "cant cannot couldnt shant wont unable longer no not give hand part pass rehome let empty "
    "free going "
    "lid"
)
_REFUSING = words_in(
    "no not never pass passes passing begs begging leave count rub cross out find elsewhere dont "
    "refuse decline down stint bit share stretch time turn days duty better prefer rather sooner "
    "try unable"
)
_TAKING = words_in(
    "coming comes moving moves move come stay holiday live stop lodge winter grand fine good great "
    "ok okay lovely perfect dandy bother trouble problem hassle mine ours yes count down hand love "
    "agree agreed agrees happy taking having hosting housing minding handling fostering looking "
    "will shall can could wing roof works suits"
)
_BROUGHT = _patterns(
    r"^(?:(?:yes|yep|yeah|aye|sure|certainly|please|then|do|just|ok|qmember|,|[.!]) )*"
    r"(?:yes|yep|yeah|aye|sure|certainly)(?: (?:please|then|do|just|ok|qmember|,|[.!]))* "
    r"(?:bring|fetch|drop|send) (?:me |us )?BIN",
)
""" "Yes, Ruth, bring me the shed on Sunday"."""
_BRINGING = words_in("bring fetch drop send")
_SOUGHT = _patterns(
    r"\b(?:looking|seeking|searching|hunting)(?: for)? (?:a |an |another )?(?:new |next |good |"
    r"foster )*(?:keeper|home|carer|host|minder|family) for BIN",
    r"\b(?:need|want|wanted) SOMEONE to KEEP BIN",
)
""" "Looking for a new home for the shed"."""
_SEEKING = words_in("looking seeking searching hunting need want wanted")
CUES = _ASKING | _OFFERING | _GIVING_UP | _REFUSING | _TAKING | _BRINGING | _SEEKING
"""Without one of these nothing is found."""


def passed_on(message: Message) -> Act | None:
    """What is told of a bin by its name alone: it is taken, refused, offered, or asked for."""
    if not any(b.known or b.plain for b in message.bins):
        return None
    words = message.said
    text = with_people(message, plain_text(message, days=True))
    if text.count(" ") > 2 * SHORT:
        return None
    asked = None if words.isdisjoint(_ASKING) else first_in(_KEPT_WHERE, text)
    if asked is not None:
        return Ask(topic="custody", bin=_bin_at(message, text, asked), rules=(BY_NAME,))
    return _offered(message, text, words) or _answered(message, text, words)


def _offered(message: Message, text: str, words: frozenset[str]) -> Offer | None:
    match = None if words.isdisjoint(_OFFERING) else first_in(_OFFERED, text)
    if match is not None and _is_a_place(text, match):
        return None
    if match is None and not words.isdisjoint(_SEEKING):
        match = first_in(_SOUGHT, text)
    if match is None and not words.isdisjoint(_GIVING_UP) and _CALLED.search(text):
        match = first_in(_GIVEN_UP, text)
    if match is None:
        return None
    bin_ = _bin_at(message, text, match)
    to = taker(message) or (_owner(message) if "qmember 's" in match[0] else None)
    return Offer(bin=bin_, to=to, on=coming(message), rules=(BY_NAME,))


def _owner(message: Message) -> str | None:
    """ "Bin 3 is Ruth's from Monday": whose it is to be."""
    return next((m.name for m in message.members if m.owner), None)


_ANSWERS = (
    (_REFUSED, _REFUSING, Decline),
    (_TAKEN, _TAKING, Accept),
    (_BROUGHT, _BRINGING, Accept),
)


def _answered(message: Message, text: str, words: frozenset[str]) -> Accept | Decline | None:
    """What is said to an offer; nothing where the first sentence asks."""
    if message.sentences[0].asked:
        return None
    for forms, cues, kind in _ANSWERS:
        match = None if words.isdisjoint(cues) else first_in(forms, text)
        if match is not None:
            on = coming(message, refused=kind is Decline)
            return kind(bin=_bin_at(message, text, match), on=on, rules=(BY_NAME,))
    return None


def _is_a_place(text: str, match: re.Match[str]) -> bool:
    """ "The job at the mews is going begging": it is not the bin that is offered."""
    return not _WHERE.isdisjoint(text[: match.start()].split(" ")[-2:-1])


_WHERE = words_in("in at of on by to from near behind outside under")


def coming(message: Message, *, refused: bool = False) -> date | None:
    """The day that lies ahead, where one is said; "now" only where no other is, and one that is
    denied only where it is `refused`.
    """
    said = [d for d in message.days if not d.aside or message.norms[d.start - 1] == "from"]
    if len(said) > 1 and not refused:
        said = [d for d in said if message.norms[d.start] != "now"] or said
        said = [d for d in said if not _cannot(message, d)] or said
        said = [d for d in said if not is_of_absence(message, d)] or said
        said = [d for d in said if message.norms[d.start - 1] == "from"] or said
    if not said or said[0].loose:
        named = _from_named(message)
        if named or not said:
            return named
    day = said[0]
    if message.norms[day.start : day.end] == ["next", "week"]:  # a turn begins with the week
        return message.today + timedelta(days=7 - message.today.weekday())
    return coming_day(day.past, day.future, message.today)


def _from_named(message: Message) -> date | None:
    """ "From April", "as of next month": the first day of what is called by name."""
    for i, norm in enumerate(message.norms[:-1]):
        if norm in _FROM:
            words = message.norms[i + 1 : i + _NAME_WORDS]
            said = words[1:] if words[0] in ("of", "in") else words
            named = named_in(f"in {' '.join(said)}", message.today)
            first = named.first if named and named.start <= 1 else None
            return first if first and first > message.today else None
    return None


_FROM = words_in("from starting as beginning")
_NAME_WORDS = 7


def _cannot(message: Message, day: Day) -> bool:
    """ "Not on Sunday, but on Monday I'll take it": a day that is refused for another."""
    clause = message.clause_at(day.start)
    return clause is not None and message.has_in(_NOT, clause.start, clause.end)


_NOT = words_in("not no cant cannot wont dont cannae isnt nope unable except")


def taker(message: Message) -> str | None:
    """The member, other than the sender, whom an offer names."""
    others = [m for m in message.members if not is_sender(message, m.name)]
    free = [m for m in others if not m.owner or _is_in_his_hands(message, m)]
    return free[0].name if free else None


def _is_in_his_hands(message: Message, ref: MemberRef) -> bool:
    """ "Into Kofi's care", "to Ruth's hands": with whom a bin is to be."""
    at = ref.end + (message.norms[ref.end : ref.end + 1] == ["'s"])
    led = message.norms[ref.start - 1 : ref.start] in (["to"], ["into"], ["in"])
    return led and not _CARE.isdisjoint(message.norms[at : at + 2])


_CARE = words_in("hands care keeping custody charge safekeeping possession")


def _bin_at(message: Message, text: str, match: re.Match[str]) -> str | None:
    """The bin that the match names; else the first of the message."""
    apart: list[BinRef] = []
    for ref in sorted(message.bins):
        if not apart or ref.start >= apart[-1].end:
            apart.append(ref)
    at = text[: match.end()].count("qbin") - 1
    name = apart[at].name if 0 <= at < len(apart) else None
    return name or next((b.name for b in apart if b.name is not None), None)
