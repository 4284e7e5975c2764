"""Deeds that are waited for, doubted or given up: "shout when it's sealed", "all but buried"."""

from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in(
    "tell text shout ping ring message msg whistle holler yell call warn nudge bell buzz nod know "
    "till until unless provided providing assuming long day minute moment second believe but sure "
    "asked asks asking wondered wanted wants almost nearly practically good pretend up forgot "
    "back home yet once when after before soon if gets getting being mean cant cannot wont"
)
"""Words without one of which no deed is taken for undone."""
_DEED = r"(?:sealed|closed|shut|buried|drained|dug in|lidded|locked|emptied)"
_WHEN = r"(?:when|once|as soon as|soon as|the minute|the moment|if|after)"
_AWAITED = Late(
    rf"\b(?:(?:tell|text|shout|ping|ring|message|msg|whistle|holler|yell|call|warn|nudge)"
    rf"(?: \w+){{0,3}}|give \w+ a (?:bell|shout|ring|call|buzz|nod|wave)|let \w+ know) {_WHEN}\b"
    rf"[^.,:;]{{0,40}}\b{_DEED}|"
    rf"\b(?:till|until|unless|provided|providing|assuming|(?:so|as) long as)(?: that| the)? "
    rf"(?:\w+ )?(?:is |'s |are |was |has |gets |has been |'s been |been )?{_DEED}|"
    rf"^(?:(?:so|and|well|ok|,) )*(?:once|when|after|before|as soon as|if) (?:the )?qbin "
    rf"(?:is|'s|has been|gets) (?:\w+ )?{_DEED}\b|"
    rf"\bmake sure (?:that )?[^.]{{0,30}}{_DEED}|"
    rf"\b(?:asked|asks|asking|wondered|wanted to know|wants to know)(?: \w+){{0,2}} "
    rf"(?:when|if|whether)\b[^.]{{0,30}}{_DEED}|"
    rf"\bthe (?:day|minute|moment|second) (?:\w+ ){{1,2}}(?:gets|is|'s) {_DEED}|"
    rf"\bbelieve [^.]{{0,30}}\b{_DEED} when\b|\bpretend (?:i|we|you|that|it)\b[^.]*{_DEED}|"
    rf"\b(?:not|isnt|arent|never|hasnt been|havent been)(?: (?:been|properly|quite|even|"
    rf"all))* {_DEED}"
    rf"(?: up| off| down)? yet\b|"
    r"(?<!was )(?<!were )(?<!while )\b(?:sealing|closing|shutting|draining|burying|emptying) "
    r"(?:it|(?:the )?qbin)(?: up| off)? "
    r"(?:when|once|as soon as|if)\b|"
    rf"\bqbin (?:gets|is getting|is being|is to be) {_DEED} (?:on )?(?:next )?qday\b|"
    rf"\b{_DEED} (?:it|(?:the )?qbin)\b[^;]{{0,30}}"
    r"\bi mean i (?:will|shall|plan|want|am going to)\b|"
    r"\b(?:sealed|stuck|jammed|wedged) shut\b[^.;]{0,20}\b(?:cant|cannot|wont|couldnt|no way)\b|"
    rf"\b(?:all but|almost|nearly|as good as|practically) {_DEED}(?! the wrong)"
)
_GIVEN_UP = Late(
    r"\b(?:dug a hole|digging|started to dig|to bury)\b.*"
    r"\b(?:gave up(?! (?:\d|an?\b|half|its|nearly|about))|gave it up|forgot the|"
    r"took it (?:back )?home|filled (?:it|the hole) (?:back )?in)\b"
)
_TOLD = Late(rf"\b(?:{_DEED}|put the lid|it is under|job done)\b")


def is_awaited(message: Message) -> bool:
    """Whether the one deed that the words name has not been done."""
    if not message.has(CUES):
        return False
    text = plain_text(message, days=True)
    found = _AWAITED.search(text) or _GIVEN_UP.search(text)
    if found is None:
        return False
    return _TOLD.search(f"{text[: found.start()]} {text[found.end() :]}") is None
