"""Words about a bin that passes on: "I've got it now", "not me", "I'll keep it", "lid cracked"."""

from collections.abc import Iterator
from dataclasses import replace

from handlers.reading.arranged import Plan
from handlers.reading.arrangements.bincondition import condition_told, is_answer, noted
from handlers.reading.arrangements.communal import (
    Condition,
    Handing,
    Refusing,
    Rehanded,
    Taking,
    Withdrawing,
)
from handlers.reading.arrangements.handedon import lent
from handlers.reading.arrangements.handedover import CUES as HANDED_CUES
from handlers.reading.arrangements.handedover import handed_over, volunteered
from handlers.reading.calendar.stretches import coming
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = (
    *("got the ", "have the ", "got it", "has it", "with me", "at mine", "at ours", "picked up"),
    *(
        "collected",
        "accepted",
        "taken over",
        "took over",
        "keeping",
        " keep ",
        "offer",
        "up for grabs",
    ),
    *("passing", "handing", "giving", "pass ", "hand ", "give ", "leaving", "leave ", "take"),
    *("handed", "passed", "gave", "given", "dropped", "brought", "fetched"),
    *HANDED_CUES,
    *("hang on to", "hold on to", "stays", "condition", "found", "hand-over", "handover"),
)
"""Without one of these, and with nothing on offer or just taken, nothing is found."""

_I = r"(?:i|we)(?: have| am|'ve| will|'ll| can| could)?"
_NOW = r"(?: (?:now|here|at mine|at ours|at home|at my place|with me|safe|safely|already))*"
_HAS_BIN = (
    Late(rf"^{_I} (?:have |got |have got )?(?:the )?qbin(?: (?:is|are))?{_NOW}$"),
    Late(
        rf"^(?:{_I} )?(?:just )?(?:taken over|took over|picked up|collected|accepted) (?:the )?qbin"
        rf"(?: from qmember)?{_NOW}$"
    ),
    Late(r"^(?:the )?qbin (?:is |'s )(?:now )?(?:with me|at mine|at ours|at my place)(?: now)?$"),
)
_HAS_IT = Late(
    rf"^{_I} (?:got |have got |have |has |picked |collected |taken )(?:it|her|him)(?: up|"
    rf" over)?{_NOW}$"
)
_HAS_AGAIN = Late(
    r"^(?:yes |yep |and )*(?:(?:i|we) (?:have |am |are )?)?(?:just )?(?:got|fetched|collected|"
    r"picked up|taken|have|having|brought) (?:it|her|him|(?:the )?qbin)(?: up)?"
    r"(?P<back> (?:back|home|again))*(?: (?:now|today|qday|this morning|from qmember|thanks))*$"
)
_MINE_AGAIN = Late(
    r"^(?:yes |yep |and |ok |so )*(?:(?:it|she|he|(?:the )?qbin) (?:is |'s )(?:now )?(?:back )?"
    r"(?:mine|ours|with (?:me|us)|at (?:mine|ours))(?P<back> (?:again|now))*|"
    r"(?:i|we) (?:have |got |have got )(?:it|her|him) again)(?: (?:now|today|qday|this morning|"
    r"thanks))*$"
)
_GOT_IT = Late(
    r"^(?:yes |yep |ok |thanks )*(?:just |safely )*(?:got|fetched|collected|picked(?: up)?|"
    r"received) (?:it|her|him|(?:the )?qbin)"
    r"(?: (?:up|now|safely|thanks|thank you|cheers|today|qday))*$"
)
""" "Got it" means no more than yes, but to whom a bin is offered by name."""
_HERE = Late(
    r"^(?:yes |yep |yeah |aye )*(?:it|she|he|(?:the )?qbin) (?:is|'s|has|have) (?:just |now |safe |"
    r"safely |safe and sound )*(?:here|arrived|landed|in|with (?:us|me)|at (?:ours|mine)|"
    r"(?:in|on|at|under) (?:our|my|the) (?:porch|hall|kitchen|shed|garage|cellar|balcony|garden|"
    r"yard|house|flat|place|doorstep|hallway|basement|utility room))"
    r"(?: (?:now|safely|safe|thanks|already))*$"
)
_FINE = Late(
    r"^(?:yes |yep )*(?:perfect|lovely|great|brilliant|wonderful|fab|splendid|grand|deal|"
    r"sounds (?:good|great|fine)|(?:that )?(?:is |'s )?fine(?: (?:by|with) (?:me|us))?|"
    r"(?:that )?(?:suits|works)(?: (?:for )?(?:me|us))?)(?: (?:thanks|thank you|see you then|"
    r"see you|cheers))*$"
)
_CAN = Late(
    r"^(?:yes )?(?:(?:i|we) (?:can|could|will|would|am able to|am happy to|do)(?: (?:do|take|swap|"
    r"cover|have)(?: (?:it|that|this|with you|weeks|turns|your (?:week|turn|days)|the (?:week|"
    r"turn)|"
    r"them))?)?|me|me please|me me|i am in|i am free|happy to(?: (?:do|swap|take|help)"
    r"(?: (?:it|that|with you))?)?|no problem|gladly)$"
)
_NOT_ME = Late(
    r"^(?:sorry |no |oh )*(?:not me|not i|(?:i|we) (?:cant|cannot|am not able|wont be able)"
    r"(?: (?:to|either|swap|do (?:it|that)|that (?:week|day)|this time|then))*|me neither|"
    r"nor me|count me out)(?: (?:sorry|this time|either|thanks|im afraid|i am afraid))*$|"
    r"^(?:sorry |no )*not me (?:sorry|after all|this time|im|i am|i have|my|too)\b.{0,60}$"
)
_KEEPS = (
    Late(
        r"^(?:never ?mind |no need |forget it |it is ok |actually |on second thoughts |"
        r"i (?:have )?changed my mind |sorry |so |and )*"
        r"(?:i|we) (?:am |are |will |'ll |shall )?(?:keeping|keep|hang on to|hold on to|"
        r"hanging on to) "
        r"(?:it|her|him|(?:the )?qbin)(?: (?:after all|myself|ourselves|then|anyway|instead|"
        r"for now|"
        r"here|a bit longer|thanks))*$"
    ),
    Late(r"^(?:the )?qbin (?:stays|is staying) (?:here|with me|with us|"
               r"put)(?: after all)?$"),
    Late(r"^(?:i )?(?:withdraw|cancel|take back|am withdrawing|am cancelling) (?:the|my|"
               r"that) "
               r"(?:bin )?offer(?: of (?:the )?qbin)?$"),
    Late(r"^(?:the )?qbin is (?:no longer|not) (?:on offer|up for grabs)(?: any ?more)?$"),
    Late(r"^(?:i 'd|i would|we 'd|we would) (?:rather|sooner|prefer to) (?:keep|hang on to|"
               r"hold on to) (?:the )?qbin(?: (?:after all|myself|then|for now|a bit longer))*$"),
    Late(r"^(?:i am|we are) not (?:handing|passing|giving)(?: over| on)? (?:the )?qbin"
               r"(?: (?:over|on|to qmember|qday|after all|any ?more))*$"),
)  # fmt: skip
_KEEPS_TILL = Late(
    r"^(?:\S+ ){0,8}?(?:keeping|keep|hang on to|hanging on to|hold on to|holding on to) "
    r"(?:it|her|him|(?:the )?qbin)(?: (?:here|a bit longer|for now|longer))* "
    r"(?:till|until|til) (?:the )?qday(?: then)?$"
)
"""What is to pass on does so on a later day."""
_OVER = r"(?:the |that |our |my )?hand ?over(?: (?:of|with) (?:the )?qbin)?"
_CALLED_OFF = Late(
    rf"^(?:(?:please|can we|lets|let us|i have to|we have to|i want to) )*(?:cancel|call off|"
    rf"scrap|forget|drop) {_OVER}(?: (?:to qmember|on|qday|please|after all))*$|"
    rf"^{_OVER} (?:is|'s) (?:off|cancelled|called off)(?: (?:then|after all|now))*$"
)
_OTHERWISE = (
    r"(?:(?:no|oh|actually|rather|wait|better|instead|rather|not|but|qday|i mean|i meant|make it|"
    r"make that|make (?:the )?qbin|lets say|let us say|let 's say|can we (?:say|make it)|"
    r"could we (?:say|make it)|it is|that is|it should be|that should be) )"
)
_WHEN_OR_WHO = r"(?:(?:for |on |from )?qday|(?:to )?qmember)(?: (?:on |from )?qday)?"
_LAST = r"(?: (?:then|instead|please|rather|after all|actually|not qday|not qmember))"
_ANOTHER = Late(
    rf"^(?:{_OTHERWISE}+{_WHEN_OR_WHO}{_LAST}*|{_WHEN_OR_WHO}{_LAST}+|"
    r"(?:actually |sorry )*(?:(?:can|could|would|will) you|you can) (?:take|have|do|fetch|get|"
    r"collect) (?:it|her|him)(?: over)? (?:already |only )?(?:from |on |by )?(?:the )?qday(?: on)?"
    rf"(?: qmember)?{_LAST}*|"
    rf"(?:not qmember (?:but )?(?:to )?qmember)|(?:to qmember|on qday)(?: on qday)?|"
    rf"(?:great |good |lovely |perfect |yes )*(?:it is|it 's|it will be|she is|he is) "
    rf"(?:all )?yours (?:from |on |as of )?(?:the )?qday(?: on)?{_LAST}*|"
    rf"(?:great |good |lovely |perfect |yes )*(?:you can )?(?:take|have|fetch|get|collect) "
    rf"(?:it|her|him)(?: over)? (?:from |on )?(?:the )?qday(?: on)?{_LAST}*)$"
)
_TURNED_TO = Late(
    r"^(?:(?:ok|okay|fine|fair (?:enough|dos)|no (?:worries|problem|bother|matter)|never ?mind|"
    r"right|and|or|so|then|but|maybe|perhaps|(?:how|what) about|you|well|alright|all right|"
    r"understood|shame|pity|sure|yes|thanks|thank you|anyway|oh|ah|great|cool|got it) )*qmember"
    r"(?: (?:(?:what|how) about (?:you|it)|(?:can|could|would|will|might) you(?: (?:take|have|do|"
    r"mind|keep|fancy|like)(?: (?:it|her|him|(?:the )?qbin|to))?)?|(?:are you|you) (?:able|free|in|"
    r"up for it|happy to|around)|any chance|fancy it|up for it|interested|then|maybe|perhaps|"
    r"instead|please|you|possibly))*$"
)
"""Another is asked, behind a no or where nobody has answered: "fine, Colin?", "or you, Iris?"."""
_ANOTHER_NAMED = Late(
    rf"^(?:(?:please|can we|could we|lets) )*(?:move|change|shift|postpone|put off|bring forward|"
    rf"make) {_OVER} (?:(?:forward|back|to|until|till|for|on) )*qday{_LAST}*$|"
    rf"^{_OVER} (?:is|will be|should be) (?:now )?(?:on |from )?qday{_LAST}*$"
)

_SHIFTED = Late(
    r"^(?:(?:actually|sorry|no|but|,) )*(?:(?:can|could|shall|should) (?:we|you|i) )?"
    rf"(?:make|do|move|have|take) (?:it|that|{_OVER})(?: (?:by|to|on))? "
    r"(?P<number>a|one|two|three|\d) (?P<unit>day|week)s? (?P<way>earlier|sooner|later)"
    r"(?: instead| please| (?:, )?\w+$)*$"
)
_NUMBERS = {"a": 1, "one": 1, "two": 2, "three": 3}
_WHEN = r"(?: (?:(?:on|from|for|until) )?(?:qday|next week|this week|now|today|then|please))*"
_HANDS = Late(
    r"^(?:(?:i|we)(?: am| are| will| 'll| will be| would like to| want to)? )?(?:passing|handing|"
    r"giving|pass|hand|give|leaving|leave)(?: over| on)? (?:the |my )?qbin(?: on| over| along)? "
    rf"(?:to|with) (?P<to>[a-z]\w+){_WHEN}$"
)
_ASKS = Late(
    r"^(?:can|could|would|will) (?P<to>[a-z]\w+) (?:please )?(?:take|have|keep|mind|look after|"
    rf"host)(?: on| over)? (?:the )?qbin{_WHEN}$"
)


def handing(message: Message) -> Iterator[Found]:
    """What a message says about a bin that passes on, if that is all it says."""
    said = list(phrases(message))
    found = condition_told(message, said)
    if found is None and len(said) <= 2:
        for phrase in said:
            plan: Plan | None = _to_stranger(phrase) or handed_over(phrase) or volunteered(phrase)
            plan = plan or (_otherwise if phrase.asked else _plan)(phrase)
            if plan is not None:
                found = _found(plan, message, phrase)
                break
    if found is not None:
        yield found


def _found(plan: Plan, message: Message, phrase: Phrase) -> Found:
    """A plan that is all that a message says; a bin that was taken may stand beside a record, or
    beside what it was found to be like: "it's here. Lid was loose".
    """
    whole = Found(0, len(message.words), plan)
    behind = [one for one in phrases(message) if one.start >= phrase.end]
    if not isinstance(plan, Taking) or not behind:
        return whole
    start = behind[0].start
    is_record = any(item.start >= start for item in message.items) or any(
        clause.verb and clause.start >= start for clause in message.clauses
    )
    found = noted(message, start, plan.bin).plan
    if is_record or not is_answer(message, behind) or not isinstance(found, Condition):
        return whole._replace(end=phrase.sentence[1])
    return whole._replace(plan=replace(plan, found=found))


def _plan(phrase: Phrase) -> Plan | None:
    text, context = phrase.text, phrase.message.context
    if _CALLED_OFF.match(text):
        return Withdrawing(bin=phrase.bin)
    if any(pattern.match(text) for pattern in _KEEPS) and (phrase.bin or context.on_offer):
        return Withdrawing(bin=phrase.bin)
    if change := _otherwise(phrase):
        return change
    return _taken(phrase) if phrase.bin or context.on_offer or context.taken else None


_AGAIN = words_in("again back")
"""One of these says that it was the sender's before."""


def _taken(phrase: Phrase) -> Taking | Refusing | None:
    """What the sender has by now, or says to what is on offer."""
    text, context = phrase.text, phrase.message.context
    again = _HAS_AGAIN.match(text)
    if again and (again["back"] or "fetched" in text):
        return Taking(bin=phrase.bin, again=True)
    if _MINE_AGAIN.match(text) and not _AGAIN.isdisjoint(text.split()):
        return Taking(bin=phrase.bin, again=True)
    if phrase.bin and any(pattern.match(text) for pattern in _HAS_BIN):
        return Taking(bin=phrase.bin)
    if _HERE.match(text):
        return Taking(bin=phrase.bin, here=True)
    if not context.on_offer:
        return None
    can = context.after_bot and not context.on_handover and _CAN.match(text)
    if can or _HAS_IT.match(text):
        return Taking()
    if context.after_bot and _GOT_IT.match(text):
        return Taking(by_name=True)
    if context.after_bot and _FINE.match(text):
        return Taking(by_name=True)
    if _NOT_ME.match(text) and (context.after_bot or "not me" in text):
        return Refusing()
    return None


def _otherwise(phrase: Phrase) -> Rehanded | None:
    """ "Actually on Saturday", "no, to Cleo": said of a hand-over of the sender's own."""
    context = phrase.message.context
    shifted = _SHIFTED.match(phrase.message_text) if context.on_handover else None
    if shifted:
        number = int(_NUMBERS.get(shifted["number"], shifted["number"]))
        by = number * (7 if shifted["unit"] == "week" else 1)
        return Rehanded(bin=phrase.bin, days=by if shifted["way"] == "later" else -by)
    turns = phrase.asked and context.on_handover and not phrase.message.bins
    if turns and phrase.member and _TURNED_TO.match(phrase.text):
        return Rehanded(to=phrase.member, turned_to=True)
    follows = (context.on_handover and _ANOTHER.match(phrase.text)) or (
        (context.on_offer or phrase.bin) and not phrase.asked and _KEEPS_TILL.match(phrase.text)
    )
    if not (follows or _ANOTHER_NAMED.match(phrase.text)):
        return None
    days = [day for day in phrase.days if _lead_of(phrase, day.start) != "not"]
    day = days[-1] if days else None
    on = coming(day.past, day.future, phrase.message.today) if day else None
    named = [] if _KEEPS_TILL.match(phrase.text) else phrase.members
    to = named[-1].name if named else None
    return Rehanded(bin=phrase.bin, to=to, on=on) if on or to else None


def _lead_of(phrase: Phrase, at: int) -> str:
    return phrase.message.norms[at - 1] if at else ""


def _to_stranger(phrase: Phrase) -> Handing | None:
    """ "Handing the yard bin to Nives on Friday", where nobody of that name has spoken here."""
    match = _HANDS.match(phrase.text) or (_ASKS.match(phrase.text) if phrase.asked else None)
    span = phrase.words(match, "to") if match else None
    if match is None or span is None or phrase.bin is None:
        return None
    word = phrase.message.words[span[0]]
    if not (word.kind == "word" and word.text[:1].isupper() and word.text[1:2].islower()):
        return None
    day = phrase.days[0] if phrase.days else None
    today = phrase.message.today
    on = None if day is None else day.past if day.past >= today else day.future
    return lent(Handing(bin=phrase.bin, to=word.text, on=on), phrase.message)
