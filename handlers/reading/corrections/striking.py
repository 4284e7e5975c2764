"""A record struck out, by itself or called by what went in."""

from dataclasses import replace

from handlers.reading.acts import Layer, Retract
from handlers.reading.corrections.amending import UNDONE, retract
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.corrections.rightwrong import BY_FORM
from handlers.reading.food.makeups import makeup
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


def struck_out(message: Message) -> Retract | None:
    """ "Scratch that", "delete the bread"; "undo that change" takes back the last correction."""
    act = retract(message, plain_text(message))
    if act is not None and message.has(_CHANGES) and not (message.items or message.bins):
        return replace(act, rules=(UNDONE,))
    return None if act is None else of_scraps(act, message)


_MINE_OFF = Late(
    r"\b(?:already|twice|too|as well|before me)\b.{0,30}\b(?:take|strike|cross|wipe|scrub|knock) "
    r"mine (?:off|out|away)(?: (?:please|pls|plz|bot|then|again|sorry|[,.!]))*$"
)
MINE = words_in("mine")


def mine_struck_out(message: Message) -> Retract | None:
    """ "She has put it on already, take mine off": of what was written twice the sender's goes."""
    match = _MINE_OFF.search(plain_text(message))
    return None if match is None else Retract(rules=(BY_FORM,))


def food_forgotten(message: Message) -> Retract | None:
    """ "Forget about the bread", right behind a layer with bread in it."""
    norms, items = message.norms, message.items
    if norms[0] not in FORGETTING or len(items) != 1 or not message.context.in_room:
        return None
    said = {*norms[1 : items[0].start], *norms[items[0].end :]}
    return of_scraps(Retract(rules=(BY_FORM,)), message) if said <= _LEADS | {".", "!"} else None


def called_off(message: Message) -> Retract | None:
    """ "Cancel Thursday's", right behind a reminder that one has set: one of a day."""
    days, norms = message.days, message.norms
    if norms[0] not in CALLING_OFF or len(days) != 1 or not message.context.on_reminder:
        return None
    rest = {*norms[1 : days[0].start], *norms[days[0].end :]}
    return Retract(rules=(BY_FORM,)) if rest <= _OF_A_DAY else None


CALLING_OFF = words_in("cancel scrap drop")
_OF_A_DAY = words_in("the my 's one reminder please . !")


_CHANGES = words_in("undo correction change edit")


def of_scraps(act: Retract, message: Message) -> Retract | None:
    """ "Scratch the bread": the record is called by what went in with it; None for "forget the
    fish" where the talk is on no fish, which is said of a supper too.
    """
    if not message.context.in_room:
        return act
    called = _called_by_scraps(act, message)
    if FORGETTING.isdisjoint(message.said) or message.bot:
        return called
    last = spoken_of(message)
    held = (last.materials or {}) if isinstance(last, Layer) else {}
    if called.materials:
        return called if not called.materials.keys().isdisjoint(held) else None
    return called if isinstance(last, Layer) or not message.items else None


def _called_by_scraps(act: Retract, message: Message) -> Retract:
    for item in message.items:
        led = item.start
        while led and message.norms[led - 1] in _LEADS:
            led -= 1
        made = makeup([item]) if 0 < led < item.start and not item.generic else None
        if made is not None and message.norms[led - 1] in _STRIKING:
            return replace(act, materials=made.shares)
    return act


_STRIKING = words_in(
    "scratch strike delete remove cancel erase drop undo scrap out unlog take leave pull cross rub "
    "knock forget ignore disregard"
)
FORGETTING = words_in("forget ignore disregard")
_LEADS = words_in("the that my last layer of record entry about")


OF_STRIKING = words_in(
    "scratch strike delete undo remove cancel disregard erase scrub withdraw void retract "
    "unlog discard nix borra drop ignore scrap forget bin take cross rub knock wipe chuck "
    "throw logged posted sent entered said counted reported wrote duplicate wrong mistake "
    "error notice wiped deleted removed cancelled struck double rubbish happened chat "
    "group "
    "room thread meant"
)
