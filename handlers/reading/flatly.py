"""Answers in so many words that they hold whatever their score: "it will be my pleasure".

Each is held against the whole of a sentence from its beginning, behind greetings and names, so
that the same words inside a tale of other things are none.
"""

from typing import NamedTuple

from handlers.reading.acts import Accept, Act, Decline, Done, Later, Retract
from handlers.reading.amending import SHORT, is_quoted, plain_text, with_people, word_count
from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.passing import coming
from handlers.reading.vocabulary import words_in
from handlers.reading.wording import Patterns, first_in

FLATLY = "an answer in so many words"

_OPEN = (
    r"(?:^|[.!;] )(?:(?:oh|och|ach|ah|aye|ay|ok|okay|k|yes|yeah|yep|no|nah|na|naw|nope|sorry|right|"
    r"well|so|hi|hey|but|and|then|fine|sure|alas|dear|love|mate|all right|alright|roger that|"
    r"all g|all good|no worries|no problem|thanks|abeg|please|pls|kindly|hello|listen|wait|"
    r"hang on|ey|eish|cho|lah|qmember|bot|,) )*"
)
_TO = r"(?: (?:qmember|dear|love|mate|sir|madam|miss \w+|mr \w+|mrs \w+|auntie|aunty|uncle|bot))?"
_STOP = rf"{_TO}(?=$| [^\w\s'])"
_ONE = r"(?:the |that |our |old )?(?:qbin|her|him|it)"
_NAMED = r"(?:the |that |our |old )?qbin(?: one)?"
_KEEP = r"(?:take|have|keep|host|house|mind|hold|store|foster|look after|care for)"
_KEEPING = (
    r"(?:taking|having|keeping|hosting|housing|minding|holding|storing|fostering|looking after)"
)
_ROUND = r"(?:week|wk|month|round|turn|time|fortnight|weekend|wknd|cycle|rotation|go)"
_KIN = (
    r"(?:sister|brother|mum|mam|mom|mother|dad|father|wife|husband|son|daughter|cousin|auntie|"
    r"aunty|aunt|uncle|gran|nan|flatmate|housemate|roommate|neighbour|neighbor|boss|friend|"
    r"partner|family|work)"
)


def _patterns(*sources: str) -> Patterns:
    return [Late(source) for source in sources]


_TAKEN = _patterns(
    rf"{_OPEN}(?:it|that|'twill|'twould) ?(?:will be|would be|'d be|be)? (?:my|our|an|a|the) "
    rf"(?:\w+ )?(?:pleasure|honour|honor|privilege)(?: to {_KEEP} {_ONE})?(?: qday)?{_STOP}",
    rf"\b(?:i|we) (?:have|see|raise|got) no (?:objections?|quarrel|problem|issues?|difficulty) "
    rf"(?:to|with|in|about) {_KEEPING} {_NAMED}(?! back)",
    rf"{_OPEN}(?:i|we) (?:could|can|might|would) (?:just )?manage (?:her|him|{_NAMED}) (?:from|"
    r"till|until|for|over|this|next|qday)\b",
    rf"{_OPEN}(?:i|we|me|mi) (?:will|can|could) {_KEEP} (?:it|her|him|{_NAMED})(?: ,)? (?:but )?"
    r"(?:only )?from (?:the )?qday (?:not before|no sooner|not sooner|not earlier|onwards?)\b",
    rf"{_OPEN}(?:i|we) (?:will |shall |can |would )?(?:gracefully |gratefully |gladly |humbly |"
    rf"happily |duly )*receive (?:{_ONE}|the (?:bin|bucket|pail|tub))\b",
    rf"{_OPEN}(?:ill|(?:i|we) (?:will|can|could)) be (?:its|her|his|qbin 's) (?:new |foster |"
    r"step)?(?:dad|daddy|mum|mam|mom|mummy|mother|father|keeper|carer|minder|guardian|parents?|host|nan|"
    r"nanny|godmother|godfather|babysitter) (?:till|until|til|for|from|qday|this|next|over)\b",
    rf"{_OPEN}(?:ill|(?:i|we) (?:will|can|could)) (?:grab|get|take|have|pick up|collect|"
    rf"fetch|relieve you of) {_NAMED} (?:off|off of|from|of) (?:you|ya|yer|youse|u|"
    r"thee|your hands|qmember)\b",
    rf"{_OPEN}(?:let me|lemme) {_KEEP} {_NAMED} (?:this|next|for|qday|till|until|from)\b(?! a "
    r"(?:moment|minute|second|bit))",
    rf"{_OPEN}(?:give|hand|pass|send) (?:her|him|{_NAMED}) (?:here|over|to me|to us|my way|our way)"
    rf"{_STOP}",
    r"^(?:(?:all right|alright|ok|okay|fine|aye|yes|go on|right|,|then|qmember) )+(?:give|hand|"
    rf"pass) it (?:here|over|to me){_STOP}",
    r"^(?:(?:oh|ow|ah|och|ok|okay|right|well|aw|,|[.!]|\w+ous) )*(?:go|goo|gan) on then"
    r"(?: qmember| , qmember| love| mate)?$|^(?:ok |oh |, )*gwan then$",
    r"^(?:(?:ok|okay|k+|haha\w*|yes|right|fine|oh|aye|lol|,) )+mine$",
)
_REFUSED = _patterns(
    rf"{_OPEN}(?:i |we )?(?:cant|cannot|wont)(?: do| manage| make it| be able)? (?:this|next) "
    rf"{_ROUND}\b(?! (?:end|out))",
    r"^(?:(?:oh|och|ach|ah|aye|sorry|no|nah|na|naw|nope|alas|qmember|,) )*(?:(?:och|ach|ah|sorry|"
    r"oh) \w+ )?(?:i |we )?(?:cant|cannot)"
    r"(?: qmember| im afraid| i am afraid| sorry)?(?=$| [,.;-] )(?!.{0,14}\b(?:even|lol|wait)\b)",
    rf"\b(?:stand|count|leave|rule|deal) me (?:down|out)(?: for| of| on| from)? (?:this|next|that)"
    rf" (?:{_ROUND}|one)\b",
    rf"{_OPEN}(?:please )?(?:put|mark|write|set) (?:me|us) (?:down )?(?:as|for|down) (?:a|an) "
    r"(?:\w+ )?(?:no|pass|refusal|nope)(?= (?:for|on|from|to|this|next)|$| [,.])",
    rf"{_OPEN}(?:it is |it 's |that is |that 's )?not my (?:turn|go|week|round)\b(?! to\b)"
    r"(?!.*\bis it\b)",
    rf"{_OPEN}(?:i )?(?:would |'d )?(?:rather|sooner|prefer) not{_TO}(?: \w+)?(?=$| [,.])",
    r"\bi (?:must |shall |have to |will |would |should )?(?:\w+ly )?decline (?:with (?:many |much )"
    r"?(?:thanks|regrets?|gratitude|apologies)|the (?:turn|bin|honour|honor|offer of qbin))\b",
    r"^(?:(?:no|nah|sorry|cant|nope|alas|\w+ chance|no way|thanks|,|[.!]|qmember|i|\w+) ){1,6}?"
    r"(?:i |we )?(?:have |'ve |got |have got )?already (?:have |got |mind |keep )?(?:two|three|"
    r"four|2|3|4|enough) (?:bins|buckets|tubs|pails)\b",
    rf"\b(?:said|promised|agreed) (?:i |we |that i |that we )?(?:'d|would|to|will|could) {_KEEP} "
    rf"{_NAMED}(?: ,)? but (?:it )?(?:turns out|i (?:am|cant|cannot|have)|we (?:are|cant|cannot|"
    r"have)|now|something)\b",
)
_STRUCK = _patterns(
    r"\b(?:that|it|dat|this|those|they) (?:was|were|is|are) (?:meant|intended|supposed to be|"
    rf"supposed) for (?:(?:my|me|our|mi|the) )?{_KIN}\b.{{0,12}}(?:$|\b(?:take|strike|delete|"
    r"scratch|undo|cross|wipe|remove|ignore|sorry|oops|wrong)\b)",
    r"\b(?:that|it|dat|this) (?:was|were) (?:meant )?for (?:\w+ ){1,6}, (?:so )?(?:just |please )?"
    r"(?:take|cross|strike|knock|scratch|rub) it (?:off|out)$",
    rf"{_OPEN}(?:delete|erase|cancel|undo|remove|scratch|strike) (?:dat|am|dis|um|yon)(?: one)?"
    r"(?=$| [,.;!]| (?:mi|i|no|na|please|abeg|off|out)\b)",
    rf"{_OPEN}(?:tek|tak|take) back (?:dat|that|it)(?: (?:one|entry|record|bot|please))?(?=$| [.!]|"
    r" , (?:i|it|that|a|mi)\b)",
    r"\b(?:request|ask|please|kindly|wish|should|could|may|can|like|want|must|let)\b.{0,30}\b"
    r"(?:entry|record|report|layer|figure|log)\b.{0,30}\b(?:be|to be|get) (?:\w+ly )?(?:expunged|"
    r"struck|stricken|deleted|removed|withdrawn|annulled|rescinded|voided|erased|cancelled)\b",
)
_STRUCK_BY_BOT = _patterns(
    r"^(?:(?:abeg|please|pls|kindly|ok|no|oops|sorry|wait|,|hey|can you|could you) )*(?:undo|"
    r"delete that|delete it|unlog it|unlog that)(?=$| [,.;!])",
    r"^(?:(?:please|pls|kindly|ok|no|oops|sorry|wait|,|hey) )*(?:forget|ignore|disregard|scrap) "
    r"what i (?:said|told you|wrote|sent)\b(?!.{0,40}\b(?:he|she|they|him)\b)",
)
_PUT_OFF = _patterns(
    r"\bheard you\b.{0,30}\bgive (?:me|us) (?:till|until|a (?:week|day|few days))\b",
)
_PUT_OFF_TO_BOT = _patterns(
    r"\b(?:give|gie|gi) (?:me|us) (?:till|until|til|a (?:week|day|fortnight|month|few days|couple)|"
    r"(?:one|two|three|another) (?:more )?(?:days?|weeks?))\b",
    r"\b(?:could|can|couldnt|cant|could not)(?: really| just)? be (?:stuffed|bothered|arsed|fagged|"
    r"fussed) (?:qday|2 day|now|right now|tonight|yet)\b",
    r"^(?:(?:stop|quit|enough) (?:asking|nagging|pestering|bugging)(?: me)?(?: ,)? )?i (?:have )?"
    r"said (?:qday|later|next week)\b",
)
_DONE = _patterns(
    rf"{_OPEN}(?:i |we )?(?:took care of|saw to|have seen to|dealt with|attended to) (?:it|that|"
    r"that one)(?: (?:qday|already|myself|earlier))*(?: last \w+)?(?: ,| [.])? (?:so )?(?:please )?"
    r"(?:go on and |go ahead and |you (?:can|may) )?(?:cross|tick|strike|take|check|mark) "
    r"(?:it|that) (?:off|out|done)\b",
    r"\b(?:reminder|nudge|message|prompt) (?:acknowledged|received|noted|heeded|obeyed|answered)\b"
    r".{0,20}\b(?:done|sorted|seen to|carried out|accomplished)\b",
)
_DONE_TO_BOT = _patterns(
    r"^(?:(?:ok|yes|yep|aye|right|i|we|have|,|all|already|just) )*(?:sorted|did|done|handled|"
    r"finished|fixed) that one(?: my)?(?=$| [,.!])",
)


class _Flat(NamedTuple):
    act: type[Accept | Decline | Retract | Done | Later]
    cues: frozenset[str]
    """Words without one of which it is not told so."""
    patterns: Patterns
    to_bot: bool = False
    """It counts only where the bot is called by name."""


_FLAT = (
    _Flat(
        Retract,
        words_in(
            "meant intended supposed cross strike knock scratch rub delete erase cancel undo "
            "remove tek tak take expunged struck stricken deleted removed withdrawn annulled "
            "rescinded voided erased cancelled"
        ),
        _STRUCK,
    ),
    _Flat(
        Retract,
        words_in("undo delete unlog forget ignore disregard scrap"),
        _STRUCK_BY_BOT,
        to_bot=True,
    ),
    _Flat(
        Done,
        words_in(
            "cross tick strike take check mark acknowledged received noted heeded obeyed answered"
        ),
        _DONE,
    ),
    _Flat(Done, words_in("sorted did done handled finished fixed"), _DONE_TO_BOT, to_bot=True),
    _Flat(Later, words_in("heard"), _PUT_OFF),
    _Flat(
        Later,
        words_in("give gie gi stuffed bothered arsed fagged fussed said"),
        _PUT_OFF_TO_BOT,
        to_bot=True,
    ),
    _Flat(
        Decline,
        words_in(
            "cant cannot wont stand count leave rule deal no pass refusal nope not decline already "
            "turns"
        ),
        _REFUSED,
    ),
    _Flat(
        Accept,
        words_in(
            "pleasure honour honor privilege objection objections quarrel problem difficulty issue "
            "issues manage from receive dad daddy mum mam mom mummy mother father keeper carer "
            "minder guardian parent parents host nan nanny godmother godfather babysitter you ya "
            "yer youse u thee hands off let lemme give hand pass send then gwan mine"
        ),
        _TAKEN,
    ),
)
CUES = frozenset[str]().union(*(each.cues for each in _FLAT))
"""Words without one of which none is found."""


def flat_answer(message: Message) -> Act | None:
    """The answer that a short message gives in so many words, whatever its score."""
    if word_count(message) > 2 * SHORT or not message.sentences or is_quoted(message.clauses):
        return None
    text = ""
    for each in _FLAT:
        if (each.to_bot and not message.bot) or not message.has(each.cues):
            continue
        if each.act in (Accept, Decline) and message.sentences[0].asked:
            continue
        text = text or with_people(message, plain_text(message, days=True))
        if first_in(each.patterns, text) is not None:
            return _told(each.act, message)
    return None


def _told(act: type[Accept | Decline | Retract | Done | Later], message: Message) -> Act:
    bin = next((b.name for b in message.bins if b.name is not None), None)
    if act is Retract:
        return Retract(rules=(FLATLY,))
    if act is Done:
        return Done(bin=bin, rules=(FLATLY,))
    if act is Later:
        return Later(bin=bin, days=put_off_by(message), rules=(FLATLY,))
    kind = Decline if act is Decline else Accept
    return kind(bin=bin, on=coming(message), rules=(FLATLY,))


def put_off_by(message: Message) -> float | None:
    """Days until the reminder is wanted again, where they are said."""
    for day in message.days:
        if day.past > message.today or day.future > message.today:
            ahead = day.past if day.past > message.today else day.future
            if not (day.loose or day.past == day.future == message.today):
                return float((ahead - message.today).days)
    for amount in message.amounts:
        if amount.quantity == "days":
            return amount.value
    return None
