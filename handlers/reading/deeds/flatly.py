"""Answers in so many words that they hold whatever their score: "it will be my pleasure".

Each is held against the whole of a sentence from its beginning, behind greetings and names, so
that the same words inside a tale of other things are none.
"""

from typing import NamedTuple

from handlers.reading.acts import Accept, Act, Decline, Done, Later, Retract
from handlers.reading.arrangements.finished import CUES as OF_DONE
from handlers.reading.arrangements.finished import finished, finished_with_much
from handlers.reading.arrangements.passing import coming
from handlers.reading.arrangements.putoff import put_off_by
from handlers.reading.corrections.amending import is_quoted
from handlers.reading.message import Message
from handlers.reading.plaintext import SHORT, plain_text, with_people, word_count
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.wording import Patterns, first_in, patterns

FLATLY = "an answer in so many words"

_OPEN = (
    r"(?:^|[.!;] )(?:(?:oh|och|ach|ah|aye|ay|ok|okay|k|yes|yeah|yep|no|nah|na|naw|nope|sorry|right|"
    r"well|so|hi|hey|but|and|then|fine|sure|alas|dear|love|mate|all right|alright|roger that|"
    r"all g|all good|no worries|no problem|thanks|abeg|please|pls|kindly|hello|listen|wait|"
    r"hang on|ey|eish|cho|lah|qmember|bot|,) )*"
)
"""Greetings and names before the answer."""
_TO = r"(?: (?:qmember|dear|love|mate|sir|madam|miss \w+|mr \w+|mrs \w+|auntie|aunty|uncle|bot))?"
_STOP = rf"{_TO}(?=$| [^\w\s'])"
"""Nothing follows in the sentence but the name of whom it is said to."""
_WE = r"(?:i|we)"
_SHALL = r"(?:ill|(?:i|we) (?:will|can|could))"
_NAMED = r"(?:the |that |our |old )?qbin(?: one)?"
_ONE = rf"(?:{_NAMED}|her|him|it)"
_KEEP = r"(?:take|have|keep|host|house|mind|hold|store|foster|look after|care for)"
_KEEPING = (
    r"(?:taking|having|keeping|hosting|housing|minding|holding|storing|fostering|looking after)"
)
_ROUND = r"(?:week|wk|month|fortnight|weekend|wknd|turn|cycle|rotation)"
"""What a rota counts by; a round, a game or a time may be one of anything."""
_FROM = r"(?:till|until|til|for|from|qday|this|next|over)"
_WHY = (
    r"(?:$| [.;!]| (?:sorry|thanks|mate|love|qmember|either|im afraid)\b|"
    r"(?: [,-])? (?:(?:sorry|im afraid|because|cos|as|since|,) )*(?:(?:im|i am|we are|i will be) "
    r"(?:away|in|at|on|off|out|abroad|busy|working|full|going|moving|still|already|no able|"
    r"travelling)|"
    r"(?:i have|we have|i 've|we 've) (?:got )?(?:no (?:room|space)|guests|a newborn|visitors)|"
    r"no (?:room|space)|away|busy|working|full|travelling|out of town)\b)"
)
"""A refusal ends here, or goes on with a reason that is one for a bin."""
_STRIKE = r"(?:strike|cross|rub|knock|scratch|wipe|delete|remove|undo)"


_TAKEN = patterns(
    # "It will be my pleasure", "that would be an honour to mind her"
    rf"{_OPEN}(?:it|that|'twill|'twould) ?(?:will be|would be|'d be|be) (?:my|our|an|a|the) "
    rf"(?:\w+ )?(?:pleasure|honour|honor|privilege)(?: to {_KEEP} {_ONE})?(?: qday)?{_STOP}",
    # "I have no objection to housing Agnes"
    rf"\b{_WE} (?:have|see|raise|got) no (?:objections?|quarrel|problem|issues?|difficulty) "
    rf"(?:to|with|in|about) {_KEEPING} {_NAMED}(?! (?:back|'s|keys?|sale|party)\b)",
    # "We could manage Agnes until May"
    rf"{_OPEN}{_WE} (?:could|can|might|would) (?:just )?manage {_NAMED} {_FROM}\b",
    # "I can take her, but only from Friday, not before"
    rf"{_OPEN}{_WE} (?:will|can|could) {_KEEP} {_ONE}(?: ,)? (?:but )?(?:only )?from (?:the )?qday "
    r"(?:not before|no sooner|not sooner|not earlier|onwards?)\b",
    # "I shall gladly receive Agnes"
    rf"{_OPEN}{_WE} (?:will|shall|can|would) (?:\w+ly )?receive {_NAMED}(?! 's)",
    # "I'll be Agnes's keeper till spring", "I could be its foster mum for the winter"
    rf"\b{_SHALL} be (?:(?:its|qbin 's) (?:new )?(?:foster )?|(?:her|his) foster )"
    r"(?:dad|daddy|mum|mam|mom|mummy|mother|father|keeper|carer|minder|guardian|parents?|host) "
    rf"{_FROM}\b",
    # "I'll take the turn instead of Ruth"
    rf"{_OPEN}{_WE} (?:will|shall|can|could) (?:gladly |happily )?(?:take|do|cover|have) (?:the|"
    rf"that|"
    r"his|her|their|this) (?:turn|week|go|slot|stint|shift) (?:instead of|in place of|rather than|"
    r"for) (?:qmember|you|him|her|them)\b",
    # "I'll mind it till Sunday then"
    rf"{_OPEN}{_WE} (?:will|shall|can) (?:(?:mind|look after|take care of) it|(?:mind|keep|look "
    rf"after|have) (?:her|him|"
    r"that one)) (?:till|until|til) (?:qday|(?:you|he|she|they) (?:are|is|'re|get|gets|come|comes)|"
    r"qmember)\b",
    # "I'll get Agnes off you"
    rf"{_OPEN}{_SHALL} (?:grab|get|take|have|pick up|collect|fetch|relieve you of) {_NAMED} "
    r"(?:off|off of|from|of) (?:you|ya|yer|youse|u|thee|your hands|qmember)\b(?! 's)",
    # "Let me have Agnes next", "lemme keep the shed till May"
    rf"{_OPEN}(?:let me|lemme) {_KEEP} {_NAMED} (?:(?:this|next)(?: {_ROUND}|{_STOP})|qday|till|"
    rf"until|from|for (?:a|the|one|two|three|this|next|another) (?:\w+ )?{_ROUND}s?)\b",
    # "Send Agnes my way"
    rf"{_OPEN}(?:give|hand|pass|send) {_NAMED} (?:here|over|to me|to us|my way|our way){_STOP}",
    # "Oh go on then", "gwan then"
    r"^(?:(?:oh|ow|ah|och|ok|okay|right|well|aw|,|[.!]) )*(?:go|goo|gan) on then"
    r"(?: qmember| , qmember| love| mate)?$|^(?:ok |oh |, )*gwan then$",
)
_REFUSED = patterns(
    # "Can't manage this week", "we won't make it next month, we're away"
    rf"{_OPEN}(?:{_WE} )?(?:cant|cannot|wont)(?: do| manage| make it| be able)? (?:this|next) "
    rf"{_ROUND}(?={_WHY})",
    # "Sorry, can't"; "I can't, I'm away"; a bare "I can't" may be a laugh
    r"^(?=.*(?:sorry|no|nah|na|naw|nope|alas|afraid|away|room|space|busy|full|working|abroad)\b)"
    r"(?:(?:oh|och|ach|ah|aye|sorry|no|nah|na|naw|nope|alas|qmember|,) )*"
    rf"(?:{_WE} )?(?:cant|cannot)(?: qmember)?(?: i am afraid)?(?={_WHY})"
    r"(?!.*\b(?:even|lol|wait|talk|tonight)\b)",
    # "Someone else will have to take my week on the shed"
    rf"{_OPEN}(?:some(?:one|body) else|another|qmember) (?:will|would|'ll|must|may|might|should|"
    rf"needs "
    r"to|has to|has got to) (?:(?:have|need) to )?(?:do|take|cover|have|cover for|fill) (?:my|our) "
    r"(?:turn|week|go|slot|stint|shift|month|fortnight)\b",
    # "Stand me down this month", "count us out next week"
    rf"\b(?:stand|count|leave|rule) (?:me|us) (?:down|out)(?: for| of| on| from)? (?:this|next|"
    rf"that) {_ROUND}(?! 's)",
    # "Put me down as a no", "mark us as a firm pass for the shed"
    rf"{_OPEN}(?:please )?(?:put|mark|write|set) (?:me|us) (?:down )?as (?:a|an) (?:\w+ )?"
    rf"(?:no|pass|refusal|nope)(?:$| [,.;!]| (?:for|on) (?:{_NAMED}|(?:this|next) {_ROUND}|it)"
    r"(?=$| [^\w\s']))",
    # "It's not my turn"
    rf"{_OPEN}(?:it is |it 's |that is |that 's )?not my turn(?: yet| (?:till|until) \w+)?{_STOP}"
    r"(?!.*\bis it\b)",
    # "I'd rather not"
    rf"{_OPEN}(?:i )?(?:would |'d )?(?:rather|sooner|prefer) not{_TO}(?={_WHY})",
    # "I must regretfully decline with many thanks", "I decline the turn"
    r"\bi (?:must |shall |have to |will |would |should )?(?:\w+ly )?decline (?:with (?:many |much )"
    r"?(?:thanks|regrets?|gratitude|apologies)|the (?:turn|bin|offer of qbin|honour|honor))"
    r"(?=$| [^\w\s'])",
    # "No thanks, already got two bins"
    rf"^(?:(?:no|nah|sorry|cant|nope|alas|thanks|no way|no chance|,|[.!]|qmember) )+(?:{_WE} )?"
    r"(?:have |'ve |got |have got )?already (?:have |got |mind |keep )?(?:two|three|four|2|3|4|"
    rf"enough) (?:bins|buckets|tubs|pails){_STOP}",
    # "I can't, give somebody else a go", "no use for bin 3, pass it to another"
    rf"\b(?:(?:cant|cannot)(?: {_KEEP} {_ONE})?(?: lah| this \w+| next \w+)?|(?:no|a) use for "
    rf"{_NAMED}|no (?:room|space)(?: here| for {_ONE})?) [,.;] .{{0,30}}\b(?:give|pass|"
    r"offer|send|find|ask|try|let) (?:it |her |him |that )?(?:to |on to )?(?:(?:some|any)(?:body|"
    r"one) else|other people|another(?: person)?|the next(?: person| one)?)(?: have it| take it|"
    r" go)?(?: first| instead| please| this time| a go)?(?=$| [^\w\s']| qmember$)",
    # "I said I'd take Agnes but it turns out I can't"
    rf"\bsaid (?:i |we |that i |that we )?(?:'d|would|to|will|could) {_KEEP} "
    rf"{_NAMED}(?: ,)? but (?:it )?(?:turns out|i (?:am|cant|cannot|have)|we (?:are|cant|cannot|"
    r"have)|now|something)\b",
)
_STRUCK = patterns(
    # "That was meant for my brother, take it off"
    rf"\b(?:that|it|dat|this|those|they) (?:one )?(?:was|were) (?:meant |intended )?for "
    rf"(?:\w+ ){{1,6}}, (?:so )?(?:just |please )?(?:(?:{_STRIKE}|take) (?:it|that|them) "
    r"(?:off|out)(?: the (?:list|record|book|log))?|(?:strike|delete|remove|undo) (?:it|that))"
    r"(?: please)?$",
    # "Delete am, abeg", "scratch dat one"
    rf"{_OPEN}(?:erase|cancel|{_STRIKE}) (?:dat|am|dis|um|yon)(?: one)?"
    r"(?=$| [,.;!]| (?:mi|i|no|na|please|abeg|off|out)\b)",
    # "Tek back dat", "take back that entry"
    rf"{_OPEN}(?:tek|tak) back (?:dat|that)(?: (?:one|entry|record))?(?=$| [.!]| , (?:i|it|that|a|"
    r"mi)\b)|"
    rf"{_OPEN}take back that (?:entry|record)(?=$| [,.!])",
    # "I request that the last entry be expunged"
    r"\b(?:request|ask|please|kindly|wish|should|could|may|can|like|want|must|let)\b.{0,30}\b"
    r"(?:the|my|that|this) (?:last |latest |previous |above |first |second |earlier )?(?:entry|"
    r"record|layer|figure) (?:\w+ ){0,4}?(?:be|to be|get) (?:\w+ly )?(?:expunged|struck|stricken|"
    r"deleted|removed|withdrawn|annulled|rescinded|voided|erased|cancelled)\b",
)
_STRUCK_BY_BOT = patterns(
    # "Bot, undo", "unlog that, bot"
    r"^(?:(?:abeg|please|pls|kindly|ok|no|oops|sorry|wait|,|hey|can you|could you) )*(?:undo|"
    r"delete that|delete it|unlog it|unlog that)(?=$| [,.;!])",
    # "Bot, forget what I said about the onions"
    r"^(?:(?:please|pls|kindly|ok|no|oops|sorry|wait|,|hey) )*(?:forget|ignore|disregard|scrap) "
    r"what i (?:said|told you|wrote|sent)\b(?!.{0,40}\b(?:he|she|they|him)\b)",
)
_PUT_OFF = patterns(
    # "Can't get to it before Tuesday"
    r"\b(?:cant|cannot|wont|will not|not going to) (?:be able to )?(?:get (?:to|round to)|see to) "
    r"(?:it|that|mine|this|the qbin|qbin) (?:before|until|till|til) qday\b",
    # "I'll get round to it on Sunday"
    rf"{_OPEN}(?:ill|{_WE} will) get (?:(?:round |around )?to (?:it|that)|round to {_NAMED}) "
    rf"(?:on |by )?qday{_STOP}",
    # "I heard you the first time, give me till Friday"
    r"\bheard you\b.{0,30}\bgive (?:me|us) (?:till|until|a (?:week|day|few days))\b",
)
_PUT_OFF_TO_BOT = patterns(
    # "Bot, in a bit", "not right now, bot"
    r"^(?:(?:yes|ok|okay|sorry|,|hey|oi|[.!]) )*(?:in a (?:bit|while|minute|mo|moment|jiffy)|"
    r"not right now|not just now|when i (?:can|get home|am home))(?:$| [,.!]$)",
    # "Give us a week, bot"
    r"\b(?:give|gie|gi) (?:me|us) (?:till|until|til|a (?:week|day|fortnight|month|few days|couple)|"
    r"(?:one|two|three|another) (?:more )?(?:days?|weeks?))\b",
    # "Can't be bothered tonight, bot"
    r"\b(?:could|can|couldnt|cant|could not)(?: really| just)? be (?:stuffed|bothered|arsed|fagged|"
    r"fussed) (?:qday|2 day|now|right now|tonight|yet)\b",
    # "Stop nagging, bot, I said tomorrow"
    r"^(?:(?:stop|quit|enough) (?:asking|nagging|pestering|bugging)(?: me)?(?: ,)? )?i (?:have )?"
    r"said (?:qday|later|next week)\b",
)
_DONE = patterns(
    # "Bin 3 done this morning, tell the machine"
    r"\bqbin (?:is |'s |was )?(?:all )?(?:done|sorted|seen to)(?: qday)?(?: [,.])? (?:so )?"
    r"(?:please )?(?:tell|inform|let) the (?:machine|bot|computer|robot|contraption)\b",
    # "Saw to it last night, you can cross it off"
    rf"{_OPEN}(?:{_WE} )?(?:took care of|saw to|have seen to|dealt with|attended to) (?:it|that|"
    r"that one)(?: (?:qday|already|myself|earlier))*(?: last \w+)?(?: ,| [.])? (?:so )?(?:please )?"
    r"(?:go on and |go ahead and |you (?:can|may) )?(?:cross|tick|strike|take|check|mark) "
    r"(?:it|that) (?:off|out|done)\b",
    # "Reminder received and carried out"
    r"\b(?:reminder|nudge|prompt) (?:acknowledged|received|noted|heeded|obeyed|answered)\b"
    r".{0,20}\b(?:done|sorted|seen to|carried out|accomplished)\b",
)
_DONE_TO_BOT = patterns(
    # "Yes bot, did that one"
    r"^(?:(?:ok|yes|yep|aye|right|i|we|have|,|all|already|just) )*(?:sorted|did|done|handled|"
    r"finished|fixed) that one(?: my)?(?=$| [,.!])",
)


_LED = (
    r"^(?:(?:no|nah|naw|sorry|thanks|thank you|yes|ok|okay|well|ah|abeg|boss|oga|chief|maam|ma'am|"
    r"madam|sir|mate|love|my dear|qmember|,|[.!]) )*"
)
_TAKEN_IF_OFFERED = patterns(
    # "Thanks. Accepted.", "offer gladly accepted"
    rf"{_LED}(?:(?:offer|gladly|gratefully|happily) )*accepted"
    r"(?: with (?:thanks|pleasure|gratitude))?(?: [.!])*$",
)
_REFUSED_IF_OFFERED = patterns(
    # "Oga I no fit, work too much"
    rf"{_LED}(?:i|we) no (?:go )?fit(?: (?:take|carry|collect|keep) (?:am|it|her|him))?"
    r"(?=$| [,.;!]| (?:abeg|o|now|this \w+)\b)",
    # "No sir, we have three of them already, pass it to Ruth"
    rf"(?=no|nah|naw|sorry|thanks){_LED}(?:i|we) (?:have |'ve |got |have got )+(?:got )?"
    r"(?:two|three|four|2|3|4|enough)(?: of (?:them|those))? already"
    r"(?=$| [,.;!]| (?:give|pass|offer|try|ask|send)\b)",
)
"""Where something is offered; among neighbours these are said of anything."""


class _Flat(NamedTuple):
    act: type[Accept | Decline | Retract | Done | Later]
    cues: frozenset[str]
    """Words without one of which it is not told so."""
    patterns: Patterns
    to_bot: bool = False
    """It counts only where the bot is called by name."""
    offered: bool = False
    """In a room it counts only while something is on offer, or behind an answer of ours."""


_FLAT = (
    _Flat(
        Retract,
        words_in(
            "cross strike knock scratch rub wipe delete erase cancel undo remove tek tak take "
            "expunged struck stricken deleted removed withdrawn annulled rescinded voided erased "
            "cancelled"
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
            "cross tick strike take check mark tell inform let acknowledged received noted heeded "
            "obeyed answered"
        ),
        _DONE,
    ),
    _Flat(Done, words_in("sorted did done handled finished fixed"), _DONE_TO_BOT, to_bot=True),
    _Flat(Later, words_in("heard ill will cant cannot wont not"), _PUT_OFF),
    _Flat(
        Later,
        words_in("give gie gi stuffed bothered arsed fagged fussed said in not when"),
        _PUT_OFF_TO_BOT,
        to_bot=True,
    ),
    _Flat(
        Decline,
        words_in(
            "cant cannot wont stand count leave rule no pass refusal nope not decline already but "
            "else my our"
        ),
        _REFUSED,
    ),
    _Flat(Decline, words_in("fit already"), _REFUSED_IF_OFFERED, offered=True),
    _Flat(Accept, words_in("accepted"), _TAKEN_IF_OFFERED, offered=True),
    _Flat(
        Accept,
        words_in(
            "pleasure honour honor privilege objection objections quarrel problem difficulty issue "
            "issues manage from receive dad daddy mum mam mom mummy mother father keeper carer "
            "minder guardian parent parents host off of let lemme give hand pass send then "
            "instead place rather turn week till until til"
        ),
        _TAKEN,
    ),
)
CUES = frozenset[str]().union(OF_DONE, *(each.cues for each in _FLAT))
"""Words without one of which none is found."""


def flat_answer(message: Message) -> Act | None:
    """The answer that a short message gives in so many words, whatever its score."""
    if word_count(message) > 2 * SHORT or not message.sentences or is_quoted(message.clauses):
        return None
    if message.has(OF_DONE) and (done := finished_with_much(message, FLATLY)):
        return done
    for each in _FLAT:
        if (each.to_bot and not message.bot) or not message.has(each.cues):
            continue
        if each.offered and not _may_be_offered(message):
            continue
        if each.act in (Accept, Decline) and message.sentences[0].asked:
            continue
        text = with_people(message, plain_text(message, days=each.act is not Decline))
        if first_in(each.patterns, text) is not None:
            return _told(each.act, message)
    return None


def _may_be_offered(message: Message) -> bool:
    context = message.context
    return not context.in_room or context.on_offer or context.after_bot or context.on_handover


def _told(act: type[Accept | Decline | Retract | Done | Later], message: Message) -> Act:
    bin = next((b.name for b in message.bins if b.name is not None), None)
    if act is Retract:
        return Retract(rules=(FLATLY,))
    if act is Done:
        return finished(message, FLATLY)
    if act is Later:
        return Later(bin=bin, days=put_off_by(message), rules=(FLATLY,))
    kind = Decline if act is Decline else Accept
    return kind(bin=bin, on=coming(message, refused=kind is Decline), rules=(FLATLY,))
