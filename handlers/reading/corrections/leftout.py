"""What did not go in after all, of a layer that the talk is on: "leave the tuna out", "the tuna
didn't go in", "ignore the ham, the cat had it".
"""

from collections.abc import Mapping

from handlers.practice.kinds import Kind, Shares
from handlers.reading.acts import Layer, Retract
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.food.makeups import makeup
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_RULE = "it did not go in after all"
_LEAVING = words_in("take taking leave leaving pull fish didnt never wasnt not")
_PASSING_OVER = words_in("ignore forget disregard skip scratch strike drop minus nvm count nix")
_ELSEWHERE = words_in(
    "trash rubbish garbage landfill council dustbin dumpster dog dogs dog's cat cats cat's hens "
    "chickens goat goats pig pigs worms freezer fridge soup stock binned work heap compost caddy"
)
CUES = _LEAVING | _ELSEWHERE
"""Words without one of which nothing is left out."""

_LED = r"(?:(?:no|oh|ok|actually|sorry|wait|oops|but|and|bot|please|nah|btw|,|[.]) )*"
_THE = r"(?:the|that|my|our|those)"
_BEASTS = r"(?:dogs?|cats?|hens|chickens|goats?|pigs?|worms|foxes|fox|kids)"
_LEFT_OUT = Late(
    rf"^(?P<led>{_LED})"
    r"(?:(?:i (?:am |'m )?)?(?:take|taking|leave|leaving|pull|fish) "
    rf"(?:out {_THE} qitem|{_THE} qitem (?:back )?(?:out|off))"
    r"(?: (?:again|of (?:it|that|there)|though|after all))*|"
    rf"{_THE} qitem (?:(?:did not|didnt|never)(?: actually| even| really)? (?:go|went) in|"
    r"(?:was not|wasnt|was never) (?:in|part of|for) (?:it|there|that)|was not in)"
    r"(?: (?:there|it|that|after all|at all|actually|though|in the end|,))*)"
    r"(?: (?:please|sorry|[.!]))*$"
)
_WENT = (
    r"(?:(?:i |we )?(?:went|goes|ended up|is|are|was|were|got (?:put|thrown|chucked)|landed|gone|"
    r"put (?:it|that|them)|threw (?:it|that|them)|chucked (?:it|that|them)|gave (?:it|that|them)) )"
    r"(?:straight |all )?(?:in|into|on|to|out with|for) "
    r"(?:(?:the|my|our) )?(?:own |normal |general |house |kitchen |black |council |food )?"
    r"(?:trash|rubbish|garbage|landfill|dustbin|dumpster|council (?:bin|caddy)|bin at work|"
    rf"heap|compost(?: heap)?|freezer|fridge|soup|stock|{_BEASTS})(?: can| bin| bag| waste| heap)?"
    r"(?: ,)?(?: (?:and )?not (?:this one|ours|in (?:here|there|this one|ours)))?"
)
_HAD_IT = (
    rf"(?:(?:the|my|our|her|his|next door ?'s) )?{_BEASTS} "
    r"(?:got|had|ate|has|have|took|nicked|stole|pinched|snaffled)"
    r"(?: (?:it|that|them|those|the lot|most of (?:it|them)))?|"
    r"(?:(?:i|we) )?(?:binned|trashed|froze|ate) (?:it|that|them)"
)
_BETWEEN = r"(?: (?:,|[.]|-|—|that|it|they|those|which|as|cos|because|since|actually|all|just))*"
_CLOSE = (
    r"(?: (?:in the end|actually|instead|after all|though|sorry|lol|first|before|already|[.!,]))*$"
)
_PASSED_OVER = Late(
    rf"^{_LED}(?:(?:just |you can |can you )?(?:ignore|forget|disregard|skip|scratch|strike|drop|"
    r"nvm|nix|minus|leave out|dont count|do not count|never mind|not)(?: about)? "
    rf"(?:{_THE} )?qitem|(?:leave|take) {_THE} qitem (?:back )?out|"
    r"no qitem(?: in (?:it|there|that))?(?: after all)?)"
    rf"{_BETWEEN} (?:{_WENT}|{_HAD_IT}){_CLOSE}"
)
_ENDED_UP = Late(rf"^{_LED}{_THE} qitem (?:actually )?{_WENT}{_CLOSE}")
_ALL_OF_IT = Late(
    rf"^(?P<led>{_LED})(?:that|it|this|those|they|all of (?:it|that)|the lot)(?: one| lot)? "
    rf"(?:actually |all )?{_WENT}{_CLOSE}"
)
_MOST_WORDS = 20
_AKIN: Mapping[Kind, tuple[Kind, ...]] = {"meat": ("oil", "bone"), "fish": ("oil", "bone")}
"""What is also called by the beast that it is of: "the ham" for its fat or its bone."""


def left_out(message: Message) -> Retract | None:
    """What of the layer that the talk is on is to be struck out, where it did not go in."""
    last, norms = spoken_of(message), message.norms
    if len(norms) > _MOST_WORDS or not isinstance(last, Layer) or message.has(_QUESTION):
        return None
    if whole := _all_of_it(last, message):
        return whole
    items = [i for i in message.items if not i.generic and norms[i.start] not in _LEAVING]
    if not items:
        return None
    item, made = items[0], makeup([items[0]._replace(absent=False)])
    text = " ".join([*norms[: item.start], "qitem", *norms[item.end :]])
    alone = _LEFT_OUT.search(text) if len(items) == 1 else None
    if made is None:
        return None
    held = _held(made.shares, last)
    if alone is not None and (held or alone["led"]):
        return Retract(materials=held or made.shares, rules=(_RULE,))
    elsewhere = _PASSED_OVER.search(text) or _ENDED_UP.search(text)
    return Retract(materials=held, rules=(_RULE,)) if held and elsewhere else None


_QUESTION = frozenset("?")


def _all_of_it(last: Layer, message: Message) -> Retract | None:
    """ "Sorry, that went in the council bin", right behind one's own layer: none of it is there."""
    own = message.context.last is not None and last.member in (None, message.context.sender)
    told = own and not message.bins and _ALL_OF_IT.search(" ".join(message.norms))
    return Retract(rules=(_RULE,)) if told else None


def _held(called: Shares, last: Layer) -> Shares | None:
    """Those of the kinds in a layer that are called so."""
    kinds = last.materials or {}
    if not kinds.keys().isdisjoint(called):
        return called
    akin = {kind for name in called for kind in _AKIN.get(name, ()) if kind in kinds}
    return {kind: kinds[kind] for kind in akin} or None
