"""A record put right by its bin alone: "no, into the blue bin", "nope, the shed"."""

from handlers.reading.acts import Amend, Bury, Drain, Layer, Observe, Seal, Unsure
from handlers.reading.corrections.rightwrong import BY_FORM
from handlers.reading.food.makeups import makeup
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

REFUSALS = words_in("no nope nah")
_ON_A_BIN = Layer | Drain | Seal | Bury | Observe
_INTO = words_in("to into in from off")
_BESIDE = _INTO | words_in("the our it that was went goes is bin one sorry , . ! -")


def in_another_bin(message: Message) -> Amend | None:
    """The bin of the record that the talk is on, where a refusal names another and no more.

    Without a word that leads into it, it may as well refuse a bin on offer.
    """
    last, norms = message.context.last, message.norms
    if len(message.bins) != 1 or norms[0] not in REFUSALS or not isinstance(last, _ON_A_BIN):
        return None
    [ref] = message.bins
    rest = {*norms[1 : ref.start], *norms[ref.end :]}
    if ref.name in (None, last.bin) or not rest <= _BESIDE:
        return None
    if _INTO.isdisjoint(rest) and message.context.on_offer:
        return None
    return Amend(bin=ref.name, rules=(BY_FORM,))


_FOR_BIN = Late(
    r"^(?P<led>(?:(?:oh|ah|ach|och|ay|eh|eek|argh|agh|ugh|damn|dang|drat|bugger|blast|shoot|crap|"
    r"hmm|dear|god|man|hang on|my bad|ups|upps|uups|oups|oops|oopsie|whoops|whoopsie|woopsie|sorry|"
    r"wait|no|and|!|,|[.]) )*)(?:it|that|this)(?: one| lot| layer)? (?:was|is|'s)(?: meant)? for "
    r"(?:the )?qbin(?: bin| one)?(?: (?:of course|sorry|actually|obviously|i think|[!.,]))*$"
)
FOR_BIN = words_in("for")


def meant_for(message: Message) -> Amend | None:
    """ "Ups, this was for green": the bin that the last record is of; without a sigh, where the
    talk is on a record of another bin.
    """
    if len(message.bins) != 1 or not message.bins[0].known or message.sentences[0].asked:
        return None
    found = _FOR_BIN.search(plain_text(message))
    last = message.context.earlier or message.context.last
    name = message.bins[0].name
    if found is None or not (found["led"] or (isinstance(last, _ON_A_BIN) and last.bin != name)):
        return None
    return Amend(bin=name, rules=(BY_FORM,))


def perhaps_another_bin(message: Message) -> Unsure | None:
    """ "Into green", "the blue one", right behind the answer to one's own record of another bin:
    it is asked whether that one was meant.
    """
    context = message.context
    found = _than_of_own(message) if context.after_bot and not context.on_offer else None
    if found is None or not isinstance(context.last, Layer | Drain) or not found[1] <= _ALONE:
        return None
    return Unsure(guess=(Amend(bin=found[0]),), rules=(BY_FORM,))


_ALONE = _INTO | words_in("the our bin one . !")


def _than_of_own(message: Message) -> tuple[str, set[str]] | None:
    """The one bin that is named, if it is another than that of the sender's own record, on which
    the talk is; and the words beside it.
    """
    last, norms = message.context.last, message.norms
    if len(message.bins) != 1 or not isinstance(last, _ON_A_BIN) or last.bin is None:
        return None
    [ref] = message.bins
    own = last.member in (None, message.context.sender)
    if not own or not ref.known or ref.name is None or ref.name == last.bin:
        return None
    return ref.name, {*norms[: ref.start], *norms[ref.end :]}


def in_this_bin(message: Message) -> Amend | None:
    """ "In red", "I mean the red one" right behind one's own record: the bin that was left out."""
    found = _than_of_own(message)
    leads = _OUT_OF if isinstance(message.context.last, Drain) else _INSIDE
    if found is None or leads.isdisjoint(found[1]) or not found[1] <= _SAID_OF_BIN | leads:
        return None
    return Amend(bin=found[0], rules=(BY_FORM,))


_INSIDE = words_in("in into mean meant")
_OUT_OF = words_in("from mean meant")
_SAID_OF_BIN = words_in(
    "and also so but all the our that it was is 's went bin one i put sorry oops btw actually , . !"
)

_OH = r"^(?:(?:ehn|ah|oh|o|abeg|sorry|no vex|oga|wait|,|[.]) )*"
_DID = r"(?: (?:wey )?i (?:don )?[a-z]+(?: am)?)?"
_END = r"(?: (?:o|oh|abeg|sorry|sha|[.!]))*$"
_NA = Late(
    rf"{_OH}na (?P<this>qbin){_DID}(?: [,.])? (?:e )?(?:no|nor|not) be qbin{_DID}{_END}|"
    rf"{_OH}(?:e )?(?:no|nor|not) be qbin{_DID}(?: [,.])?(?: but)? na qbin{_DID}{_END}"
)


def it_be(message: Message) -> Amend | None:
    """ "Na green I close, no be bin 2": the bin that is said to be it, not the one that is not."""
    if len(message.bins) != 2 or not all(ref.known for ref in message.bins):
        return None
    found = _NA.search(plain_text(message)) if message.has(NA) else None
    if found is None or (message.context.in_room and message.context.last is None):
        return None
    return Amend(bin=message.bins[0 if found["this"] else 1].name, rules=(BY_FORM,))


NA = words_in("na")
_IN = r"(?:(?:in|into|to) )?(?:the )?qbin(?: bin)?"
_WENT = Late(
    r"^(?:(?:no|nope|sorry|oops|wait|actually|but|,) )*(?:my|our|mine|that|the|those|it) "
    r"(?:\w+ ){0,3}?(?:(?:from |on )?qday )?(?:went|was|were|is|are|goes|should have gone) "
    rf"{_IN}(?: ,| and)? not {_IN}$"
)


def went_elsewhere(message: Message) -> Amend | None:
    """ "My bread went in the kitchen, not bin 2": told before of the bin that is refused."""
    if len(message.bins) != 2 or not all(ref.known for ref in message.bins) or message.amounts:
        return None
    if len(message.days) > 1 or _WENT.search(plain_text(message, days=True)) is None:
        return None
    items = [item for item in message.items if not item.generic]
    made = makeup(items) if items else None
    return Amend(
        bin=message.bins[0].name,
        materials=made.shares if made else None,
        rich=made.rich if made else None,
        was=message.days[0].past if message.days else None,
        rules=(BY_FORM,),
    )
