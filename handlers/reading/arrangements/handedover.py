"""A bin handed over without its name, while it is on its way or was just told of: "here you go
Bram", "it's all yours now @bram", "Bram's got it now".
"""

from handlers.reading.arrangements.communal import HandedOver, Volunteered
from handlers.reading.people.doers import is_sender
from handlers.reading.phrases import Phrase
from handlers.reading.words.late import Late

CUES = ("yours", "has it", "got it", "gave it", "handed", "passed", "you go")
_IT = r"(?:it|her|him|she|he|that one)"
_NOW = r"(?: (?:now|then|today|qday|already|all|officially|enjoy|good luck|thanks))*"
_LEAD = r"^(?:(?:ok|okay|so|right|all|done|there|and|now|from now on|qday) )*"
_YOURS = (
    Late(rf"{_LEAD}(?:{_IT} (?:is|'s) )?(?:all |now |officially )*yours{_NOW} qmember{_NOW}$"),
    Late(rf"{_LEAD}qmember {_IT} (?:is|'s) (?:all |now |officially )*yours{_NOW}$"),
    Late(
        rf"{_LEAD}(?:(?:i|we) )?(?:(?:have|'ve|just) )*(?:gave|given|handed|passed|brought|dropped|"
        rf"took) {_IT} (?:(?:over|on|round|off) )*(?:to|at|with) qmember(?: 's)?{_NOW}$"
    ),
)
_ON_ITS_WAY = (
    Late(
        rf"{_LEAD}(?:here you (?:go|are)|here {_IT} (?:is|'s)|over to you|take (?:good )?care of "
        rf"{_IT}){_NOW} qmember{_NOW}$"
    ),
    Late(rf"{_LEAD}qmember (?:here you (?:go|are)|here {_IT} (?:is|'s)|over to you){_NOW}$"),
    Late(
        rf"{_LEAD}qmember (?:has|'s|is|have|took|picked|fetched|collected)(?: (?:got|taken|picked|"
        rf"collected|fetched|having|keeping))* {_IT}(?: (?:up|home|over|at home|with (?:him|her|"
        rf"them)))*{_NOW}$"
    ),
)
"""Said of anything: of a bin only where its sender has just offered it."""


_SAYS = r"(?:says?|said|told me|tells me|reckons|thinks|mentioned)(?: that)?"
_WOULD = (
    r"(?:will|would|can|could|'ll|'d|might|is|are|be|happy|glad|willing|able|to|gladly|love|like|"
    r"also)"
)
_VOLUNTEERED = Late(
    r"^(?:(?:i (?:think|believe|hear|am sure|am told)|maybe|perhaps|yes|and|so|but|well|apparently|"
    rf"ok|oh|good news) )*qmember (?:(?:(?P<says>{_SAYS}) (?:he |she |they )?)?"
    rf"(?:{_WOULD} )+(?:have|take|do|mind|keep|look after|host)(?: over| on)? "
    r"(?:it|her|him|that|(?:the )?qbin)|"
    rf"{_SAYS} (?:yes|ok|okay|(?:he|she|they)(?: {_WOULD})+))"
    r"(?: (?:then|for you|for now|too|please|could not you|couldnt you|qday|from|on|next week|this "
    r"week|qmember))*$"
)
"""By another's word: "Tom says he'll have it"."""


def volunteered(phrase: Phrase) -> Volunteered | None:
    """Who is said to take what is on offer."""
    if not phrase.message.context.on_offer or not phrase.members:
        return None
    match, bins = _VOLUNTEERED.match(phrase.text), phrase.known_bins
    if match is None or (bins and not match["says"]):
        return None  # "Tom can have the shed from Monday" offers it anew
    return Volunteered(to=phrase.members[0].name, bin=bins[0].name if bins else None)


def handed_over(phrase: Phrase) -> HandedOver | None:
    """To whom the bin in talk was given, where it is called by no name."""
    context = phrase.message.context
    told = getattr(context.last, "bin", None)
    if phrase.asked or phrase.bins or not (context.on_handover or told):
        return None
    forms = (*_YOURS, *_ON_ITS_WAY) if context.on_handover else _YOURS
    names = {ref.name for ref in phrase.members}
    if len(names) != 1 or not any(form.match(phrase.text) for form in forms):
        return None
    to = names.pop()
    return None if is_sender(phrase.message, to) else HandedOver(to=to, bin=told)
