"""Answers that cannot both be meant: who offers a bin does not refuse it in the same breath."""

from collections.abc import Sequence
from typing import TypeGuard

from handlers.reading.acts import (
    Accept,
    Act,
    Amend,
    Ask,
    Bury,
    Decline,
    Done,
    Drain,
    Later,
    Layer,
    Observe,
    Offer,
    Open,
    Retract,
    Seal,
    Stock,
    Unsure,
)
from handlers.reading.arrangements.passing import BY_NAME
from handlers.reading.corrections.anew import CUES as STRIKING
from handlers.reading.deeds.flatly import FLATLY
from handlers.reading.doubts.rightornew import right_or_new
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.questions.doses import ON_THAT
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_DONE = Late(
    r"(?:^|[.,!;:] )(?:(?:yep|yes|ok|okay|i|we|have|just|now|already|all|that is|that 's|it is|"
    r"it 's|consider it|so|,) )*(?:done|did (?:it|her|him|that|them)|dealt|seen to|sorted|settled|"
    r"finish|finished|ticked|as asked)\b|\boff (?:your|the|my) list\b|"
    r"\bgot (?:er|it|her|him|that|them|the job) done\b"
)
"""A reminder's task is called done in words of its own, beside what was done."""
_OWN_WORDS = frozenset({BY_NAME, FLATLY})


def without_rivals(found: Sequence[Act], message: Message) -> list[Act]:
    """The acts found, without an answer that another of them rules out."""
    if len(found) < 2:
        return list(found)
    out = list(found)
    if any(isinstance(act, Offer) for act in out):
        out = [act for act in out if not _is_weak(act, Accept, Decline)]
    out = [act for act in out if not _is_weak(act, Ask) or not _is_beside_itself(act, out, message)]
    if any(isinstance(act, Open | Seal) for act in out) and not message.has(_PASSING):
        out = [act for act in out if not _is_weak(act, Offer)]
    begun = {act.member for act in out if isinstance(act, Open)} - {None}
    out = [a for a in out if not (isinstance(a, Offer) and a.to in begun and _is_weak(a, Offer))]
    if message.bot and any(isinstance(act, Later) for act in out):
        out = [act for act in out if not _is_weak(act, Accept, Decline)]
    if len(message.sentences) == 1 and any(_is_of_keeping(act) for act in out):
        out = [act for act in out if not (isinstance(act, Ask) and act.topic == "due")]
    if any(isinstance(act, Ask) and act.topic == "allowed" for act in out):
        out = [act for act in out if not _is_bare_dilution(act)]
    out = [act for act in out if not _is_ruled_out(act, out, message)]
    if len(message.sentences) == 1 and any(_asks_of(act, "bran") for act in out):
        out = [act for act in out if not _asks_of(act, "batch", "dose", "starter")]
    if len(message.sentences) == 1 and any(ON_THAT in act.rules for act in out):
        out = [act for act in out if not _asks_of(act, "starter")]
    out = [act for act in out if not _is_of_trench(act, out, message)]
    deeds = any(isinstance(act, Seal | Drain | Bury | Open) for act in out)
    if (
        deeds
        and any(isinstance(act, Done) for act in out)
        and not _DONE.search(plain_text(message))
    ):
        out = [act for act in out if not _is_weak(act, Done)]
    left = [
        act
        for act in out
        if not (_is_said_by_another(act, out, message) or _is_put_right(act, out, message))
    ]
    return right_or_new(left, message)


def _is_ruled_out(act: Act, acts: Sequence[Act], message: Message) -> bool:
    """Whether another act in the same words leaves no room for it."""
    match act:
        case Ask(topic="starter"):
            made = any(_asks_of(other, "batch") for other in acts)
            if made and message.norms[0] == "how" and message.has(_MAKING):
                return not message.has(_HOW_MUCH)
            return made and message.has(_INGREDIENTS) and not message.has(_LEFT)
        case Ask(topic="dose") if message.norms.count("how") == 1:
            left = any(_asks_of(other, "starter") for other in acts)
            return left and _IS_LEFT.search(plain_text(message)) is not None
        case Later() if _is_weak(act, Later):
            kept = any(isinstance(other, Accept) for other in acts)
            return kept and not message.has(_REMINDED)
        case Done() if _is_weak(act, Done) and message.has(_DID):
            put = any(isinstance(other, Layer) for other in acts)
            return put and _DONE_WITH_BIN.search(plain_text(message)) is not None
        case Amend() if _is_weak(act, Amend) and message.has(_NOT_OURS):
            struck = any(isinstance(other, Retract) for other in acts)
            return struck and _OF_ANOTHER.search(plain_text(message)) is not None
    return False


def _is_of_trench(act: Act, acts: Sequence[Act], message: Message) -> bool:
    """Whether a question beside that about a trench only asks for it again: its sides are no bed,
    and how long it is to be is no time.
    """
    if not any(isinstance(other, Ask) and other.topic == "trench" for other in acts):
        return False
    topic = act.topic if isinstance(act, Ask) else None
    timed = topic == "due" and len(message.sentences) == 1 and not message.has(_WHEN)
    return timed or (topic == "bed" and not message.has(_BEDS))


_IS_LEFT = Late(r"\bhow (?:much|many) (?:[a-z']+ ){1,5}left\b")
"""What is asked of the starter on hand asks for no dose of the layer beside it."""
_DID = words_in("done did")
_DONE_WITH_BIN = Late(r"\b(?:done|did) (?:(?:the|our|my) )?qbin\b(?! (?:is|was|'s)\b)")
""" "Done the shed, 2 kg": what was done to it is told, and no reminder answered."""
_NOT_OURS = words_in("not wasnt isnt wrong")
_OF_ANOTHER = Late(
    r"\b(?:not|wasnt|isnt|not even) (?:ours|mine|our (?:bin|bucket|scraps)|my (?:bin|bucket|"
    r"scraps)|for "
    r"(?:us|the bin|here)|(?:any )?of our (?:bins|buckets)|the bin)\b"
)
"""What was struck out was of no bin of ours, and is put right by nothing."""
_INGREDIENTS = words_in("molasses treacle sugar jaggery gur honey syrup whey yeast culture")
_MAKING = words_in("make made mix mixed brew brewed")
_HOW_MUCH = words_in("much many long often soon")
_LEFT = words_in("left enough more last lasts run running ran out have")
_REMINDED = words_in("remind reminder nag ask ping nudge later bot")
"""Words beside which a day "till" which somebody keeps a bin is not all that is said."""
_WHEN = words_in("when ready due")


_BEDS = words_in("bed beds border plot ground garden area m2 sqm square")


def _is_said_by_another(act: Act, acts: Sequence[Act], message: Message) -> bool:
    """Whether what an act tells is all in another one: what is asked, corrected or drained."""
    others = [other for other in acts if other is not act]
    match act:
        case Unsure(guess=(guessed,)):
            return _is_said_by_another(guessed, others, message)
        case Stock(mass_kg=mass) if mass is not None and _is_asked_only(message):
            made = [other for other in others if _asks_of(other, "batch", "bran")]
            return any(other.mass_kg == mass for other in made)
        case Observe(signs=(), celsius=celsius, ph=ph):
            return (celsius is not None or ph is not None) and any(
                isinstance(other, Amend)
                and (other.celsius, other.ph) == (celsius, ph)
                and other.mass_kg is other.volume_l is None
                for other in others
            )
        case Observe(signs=("no_liquid",), bin=name) if _is_gainsaid(message):
            return any(isinstance(other, Drain) and other.bin == name for other in others)
        case Observe(signs=("wet",)) if message.has(_SLUDGE):
            drawn = any(isinstance(other, Drain) and other.volume_l for other in others)
            return drawn and _OF_SLUDGE.search(plain_text(message)) is not None
        case Ask(topic="dose"):
            of_bran = any(_asks_of(other, "batch") and other.mass_kg for other in others)
            return of_bran and act.mass_kg is None and not message.has(_ON)
        case Ask(topic="totals"):
            return _is_no_sum(others, message)
        case Ask(topic="trouble"):
            return _is_no_trouble(act, others)
        case Layer() | Drain():
            struck = any(isinstance(other, Retract) for other in others)
            said = struck and message.has(_SAID) and _I_SAID.search(plain_text(message)) is not None
            return said or _is_what_was_drained(act, others, message)
    return False


def _is_what_was_drained(act: Act, others: Sequence[Act], message: Message) -> bool:
    """ "The shed had a litre of juice in it, I drained it": no layer of juice besides."""
    if not isinstance(act, Layer) or act.mass_kg or act.volume_l or not message.items:
        return False
    of_liquid = all(item.food.shares[0][0] == "liquid" for item in message.items)
    return of_liquid and any(isinstance(other, Drain) and other.bin == act.bin for other in others)


def _is_no_trouble(act: Ask, others: Sequence[Act]) -> bool:
    """ "pH 3.8, is that good?": what is told of it is answered; a creature may itself be food."""
    if act.signs:
        creatures = _CREATURES.issuperset(act.signs)
        return creatures and any(_asks_of(o, "allowed") and not o.materials for o in others)
    measured = any(isinstance(other, Observe) and other.ph is not None for other in others)
    return measured or any(_asks_of(other, "liquid") for other in others)


def _is_put_right(act: Act, acts: Sequence[Act], message: Message) -> bool:
    """ "The last entry is wrong, it was 2 kg": what is put right is not struck out besides."""
    if not isinstance(act, Retract) or not any(isinstance(other, Amend) for other in acts):
        return False
    return not message.has(STRIKING) and _CALLED_WRONG.search(plain_text(message)) is not None


_CALLED_WRONG = Late(
    r"^(?:(?:sorry|oops|no|bot|oh|ah|wait|,) )*(?:that|the|my|this) (?:last|previous|latest) "
    r"(?:one|entry|message|record|log|layer)?(?: is| 's| was)? "
    r"(?:wrong|a mistake|not right|rubbish|an error|incorrect)\b"
)


def _is_no_sum(others: Sequence[Act], message: Message) -> bool:
    """ "How much bran have we used", "1:100 for 7 litres in total": no sum of scraps is asked."""
    if any(_asks_of(other, "dilution") and other.total_l for other in others):
        return True
    one = len(message.sentences) == 1 and "and" not in message.said
    of_bran = one and message.bran(0, len(message.norms))
    return of_bran and any(_asks_of(other, "starter") for other in others)


_SLUDGE = words_in("sludge slurry soup slop slops mush")
_OF_SLUDGE = Late(
    r"\b(?:l|litres?|liters?|ml|pints?|cups?|gallons?|half|jug|bottle) of (?:\w+ ){0,2}"
    r"(?:sludge|slurry|soup|slops?|mush)\b"
)
"""What came out, and no bin, was thick."""


def _is_asked_only(message: Message) -> bool:
    """ "How does one mix 2 kg of it": the one amount stands in the question."""
    measured = message.measured()
    return len(measured) == 1 and any(
        clause.sense == "ask" and clause.start <= measured[0].start < clause.end
        for clause in message.clauses
    )


def _is_gainsaid(message: Message) -> bool:
    """ "Not one drop my foot, 250 ml": in one breath no liquid, and behind it how much."""
    dry = [seen.start for seen in message.signs if seen.sign == "no_liquid"]
    drawn = [a.start for a in message.amounts if a.quantity == "volume" and a.value > 0]
    return len(message.sentences) == 1 and bool(dry and drawn) and max(dry) < min(drawn)


def _asks_of(act: Act, *topics: str) -> TypeGuard[Ask]:
    return isinstance(act, Ask) and act.topic in topics


_ON = words_in("layer layers scraps per on")
"""Beside one of them starter is asked for by itself, and not what it is made of."""
_CREATURES = frozenset({"insects", "rodents"})
"""What may itself be asked of: "can dead flies go in"."""
_SAID = words_in("said wrote typed logged entered reported claimed recorded put")
_I_SAID = Late(
    r"\b(?:i|that|who|me|fool|one) (?:have |had |just )?(?:said|wrote|typed|logged|entered|"
    r"reported|"
    r"claimed|recorded|put (?:it |that |this )?down)\b"
)
"""Words that tell what was written down, and not what was done."""


_PASSING = words_in(
    "have keep keeps mind minds host hosts turn next yours urs pass passes passing hand hands "
    "handing handed over home collect pick fetch want wants fancy goes going give giving given "
    "coming place house offer offers whoever who anyone anybody someone somebody up ready yours "
    "ask swap after"
)
"""Words without one of which nothing that is shut or begun is offered to anybody."""
_HELPING = words_in(
    "help helps ayuda menu command commands type ask say options manual guide instructions use "
    "work works explain write log record"
)
"""Words without one of which it is only called by its name: "Hej bot."."""
_IN_THE_GROUND = frozenset({"bed", "trench"})


def _is_beside_itself(act: Act, found: Sequence[Act], message: Message) -> bool:
    """ "Can bin 3 go in a bed of 3 m2": what may go into the ground is no scraps; and who asks
    something else asks for no help."""
    if not isinstance(act, Ask):
        return False
    topics = {other.topic for other in found if isinstance(other, Ask)}
    if act.topic == "help":
        called = "asks about help" in act.rules and not message.has(_HELPING)
        return called and len(topics) > 1
    return act.topic == "allowed" and not act.materials and not topics.isdisjoint(_IN_THE_GROUND)


def _is_bare_dilution(act: Act) -> bool:
    """Whether it asks for a dilution, neither how much nor what for: "add liquids like soup"."""
    if not isinstance(act, Ask) or act.topic != "dilution":
        return False
    return not any((act.water_l, act.liquid_l, act.parts, act.use))


def _is_of_keeping(act: Act) -> bool:
    """Whether it asks who has a bin in words that ask nothing else: "when do I get bin 3"."""
    return isinstance(act, Ask) and act.topic == "custody" and BY_NAME in act.rules


def _is_weak(act: Act, *kinds: type[Act]) -> bool:
    return isinstance(act, kinds) and _OWN_WORDS.isdisjoint(act.rules)
