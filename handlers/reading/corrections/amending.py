"""Corrections: what puts an earlier record right, or strikes it out."""

from collections.abc import Sequence

from handlers.practice.dilution_words import USE_WORDS
from handlers.reading.acts import Act, Amend, Batch, Drain, Layer, Open, Retract, Stock
from handlers.reading.bins.meantbins import tells_of
from handlers.reading.corrections.amended import ANOTHER_AMOUNT, NOT_ANOTHER, amend_from
from handlers.reading.deeds.spoons import is_of_spoons
from handlers.reading.doubts.jests import is_only_a_jest
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.plaintext import SHORT, is_asking, plain_text, with_people, word_count
from handlers.reading.words.late import Late
from handlers.reading.words.sentences import Clause
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.wording import (
    ANOTHER_DOER,
    NO_ROOM,
    PUTTING_RIGHT,
    RETRACTING,
    first_in,
)

SORRY = words_in(
    "sorry oops whoops correction correcting typo soz perdon woops ooops oop apologies mistake "
    "misread pardon actually wait ups upps uups oups oopsie oopsies whoopsie whoopsies woopsie "
    "hoppla"
)


BARE_AMOUNT = "the amount that was asked for"
UNDONE = "undo what was done last"
"""The rule of a striking out before which the correction goes that made the record what it is."""


_TAKE_BACK = Late(r"\b(?:can|could|will|would) (?:you|qmember|somebody) take (?:it|him|her) back\b")


def retract(message: Message, text: str) -> Retract | None:
    """The last record is to be struck out, if the message says so."""
    if message.context.last is not None and is_only_a_jest(text):
        return Retract(rules=("it was a jest",))
    if word_count(message) > 2 * SHORT or first_in(RETRACTING, text) is None:
        return None
    if message.context.in_room and _TAKE_BACK.search(text):
        return None  # a bin, asked of somebody
    return None if is_quoted(message.clauses) else Retract(rules=("strike it out",))


def is_quoted(clauses: Sequence[Clause]) -> bool:
    """ "Ana said: scratch that": another's words behind a colon."""
    return any(clause.sense == "said" and clause.joint == ":" for clause in clauses)


def amend(message: Message, text: str) -> Amend | None:
    """The corrected fields of the last record, if the message puts one right."""
    if word_count(message) > 2 * SHORT or _tells_more(message, text):
        return None
    if first_in(NO_ROOM, text) is not None or is_of_spoons(message) or _asks_back(message):
        return None
    if isinstance(message.context.last, Drain) and any(not i.generic for i in message.items):
        return None  # "and it was 2 cups of rice" is no liquid
    rule = _correction(message)
    if rule is None or _tells_who(message) or _means_a_thing(message):
        return None
    act = amend_from(message, rule)
    return None if act == Amend() and rule != NOT_ANOTHER else act


def _means_a_thing(message: Message) -> bool:
    """ "The blue one leaks, I mean the tent": a thing of which no record tells."""
    norms = message.norms
    at = next((i for i in range(2, len(norms)) if norms[i - 1 : i + 1] in _I_MEAN), None)
    if at is None or norms[at + 1 : at + 2] == [] or norms[at + 1] not in _ARTICLES:
        return False
    told = indexes(message.bins, message.amounts, message.items, message.days, message.members)
    return max(told, default=0) < at and norms[-1] not in _OF_RECORDS


_I_MEAN = (["i", "mean"], ["i", "meant"])
_ARTICLES = words_in("the my our a an his her")
_OF_RECORDS = words_in(
    "one other ones latter former first second last third lot half whole day week amount number "
    "weight size bucket bin juice liquid leachate bran starter"
)


def _asks_back(message: Message) -> bool:
    """ "Sorry, 3 kg of what?": an amount is said again only to ask of it."""
    asked = bool(message.sentences) and message.sentences[-1].asked
    return asked and any(
        message.norms[a.end : a.end + 2] in (["of", "what"], ["of", "which"])
        for a in message.amounts
    )


def _tells_who(message: Message) -> bool:
    """ "It was Ruth who ate the cake": a deed that is in no book."""
    if "who" not in message.said:
        return False
    recorded = frozenset({"layer", "drain", "seal", "bury", "open", "batch"})
    verb = message.clauses[-1].verb
    return verb is None or verb.verb.plain == "eat" or verb.verb.classes.isdisjoint(recorded)


def _tells_more(message: Message, text: str) -> bool:
    """Whether the message tells of a new deed with its own words."""
    if first_in(ANOTHER_DOER, with_people(message, text)) is not None:
        return False
    corrects = not {"meant", "mean", "said", "typo", "should"}.isdisjoint(message.said)
    return (
        not corrects
        and any(
            c.sense == "did"
            and c.verb is not None
            and c.verb.verb.plain in ("add", "drain", "seal", "bury", "chuck")
            for c in message.clauses
        )
        and "actually" not in message.said
        and "sorry" not in message.norms[:3]
    )


def _correction(message: Message) -> str | None:
    if first_in(PUTTING_RIGHT, with_people(message, plain_text(message, days=True))) is not None:
        return "putting it right"
    norms = message.norms
    if _refuses_with_amount(message):
        return ANOTHER_AMOUNT
    short = word_count(message) <= SHORT
    if message.context.after_bot and is_bare_amount(message):
        return BARE_AMOUNT
    if norms[:1] == ["*"] and short and (message.amounts or message.bins):
        return "a starred correction"
    if not short:
        return None
    if _amount_not_another(message):
        return NOT_ANOTHER
    sorry = any(w in SORRY for w in norms[:3])
    if sorry and "not" in norms and (message.bins or message.amounts or _ends_with_a_day(message)):
        return "putting it right"
    refused = norms[:1] in (["no"], ["nope"], ["nah"]) and bool(message.amounts)
    if refused and not message.bins and not message.items and word_count(message) <= 5:
        return "no, and the right amount"
    fragment = all(c.verb is None for c in message.clauses) and not is_asking(message)
    alone = not message.items and not (message.amounts and message.bins)
    if (
        sorry
        and alone
        and (message.amounts or message.bins)
        and word_count(message) <= 8
        and fragment
        and not any(tells_of(norms, ref.end) for ref in message.bins)
    ):
        return "putting it right"
    return None


def _ends_with_a_day(message: Message) -> bool:
    """ "Sorry, Friday not Saturday": behind it no more is said of what was on that day."""
    return any(day.end >= len(message.norms) - 2 for day in message.days)


def _refuses_with_amount(message: Message) -> bool:
    """ "No, 3 kg": a first sentence that is a refusal and an amount; its reason may follow."""
    first = message.sentences[0] if message.sentences else None
    if first is None or message.norms[first.start] not in _REFUSALS:
        return False
    amounts = [
        a for a in message.amounts if a.quantity in ("mass", "volume") and a.end <= first.end
    ]
    words = sum(1 for w in message.words[first.start : first.end] if w.kind != "sign")
    return len(amounts) == 1 and words - (amounts[0].end - amounts[0].start) <= 3


_REFUSALS = frozenset({"no", "nope", "nah", "wait", "correction", "actually", "sorry", "oops"})


def is_of_another_thing(message: Message) -> bool:
    """ "Dose for 4 kg", "1:500, 2 pints of water", "a 5 L can": what is measured is only asked
    about, and is no amount of the record that the talk is on."""
    last = message.context.last
    norms = message.norms
    if message.has(_ASKED_OF) or any(map(_RATIO.match, norms)):
        return True
    if message.has(_FOR) and _is_for(message):
        return True
    if message.has(_CANS) and _has_amount(last):
        return True
    if message.has(_OF_BRAN) and not isinstance(last, Batch | Stock):
        return True
    return message.has(_WATER) and isinstance(last, Layer | Drain | Open)


def _is_for(message: Message) -> bool:
    """ "Starter for 3 kg", "250 ml for seedlings"; but "3 kg for the lot" tells how much it was."""
    norms = message.norms
    if any("for" in norms[max(0, a.start - 2) : a.start] for a in message.measured()):
        return True
    at = norms.index("for")
    return any(norm in USE_WORDS for norm in norms[at + 1 : at + 4])


def _has_amount(act: Act | None) -> bool:
    """Whether a layer's or a draining's amount is known, so that the size of a vessel is none."""
    match act:
        case Layer() | Batch() | Stock():
            return (act.mass_kg or act.volume_l) is not None
        case Drain():
            return act.volume_l is not None
    return False


_WATER = words_in("water")
_OF_ALL = words_in("each both apiece")
_AT_HOME = words_in("wir haben tenemos tengo mam mamy avons abbiamo temos hain paas")
"""What somebody has, in the tongues that are mixed in ("wir haben 2 kg Mehl")."""
_ASKED_OF = words_in(
    "dose dosage dilution dilute ratio soil molasses treacle winter summer what how sprayer"
)
_OF_BRAN = words_in("bran starter inoculant")
_OF_LIQUID = words_in("liquid juice leachate")
_FOR, _CANS = words_in("for"), words_in("can cans")
_RATIO = Late(r"1:\d{2,4}$")


def is_bare_amount(message: Message) -> bool:
    """ "About 2 kg": hardly more than an amount, and no deed or plan of its own."""
    if message.bins or message.items or any(c.verb is not None for c in message.clauses):
        return False
    if message.has(_OF_ALL) or message.has(_AT_HOME):
        return False  # "1 kg in each" is no other amount of the last one
    measured = message.measured()
    last = message.context.last
    if _has_amount(last) and not _BESIDE_AMOUNT.issuperset(_beside(message, measured)):
        return False
    sized = any(a.size for a in measured) and _has_amount(last)
    liquid = message.has(_OF_LIQUID) and isinstance(last, Layer | Open)
    if sized or liquid or is_of_another_thing(message) or is_within(message):
        return False
    return (
        len(measured) == 1
        and not _goes_elsewhere(message.norms[measured[0].end :])
        and word_count(message) - (measured[0].end - measured[0].start) <= 4
        and not is_asking(message)
    )


def _beside(message: Message, measured: Sequence[Amount]) -> list[str]:
    """The words beside the amounts, without the signs and the bot's name."""
    held = indexes(measured) | frozenset(message.bot)
    return [norm for norm in unheld(message.norms, held) if norm.isalpha()]


_BESIDE_AMOUNT = words_in(
    "about roughly around approx approximately nearly almost some only maybe perhaps "
    "probably or so more like less rather i im say id reckon think guess would in total all "
    "altogether of it that this the a was is its it's thats not really sorry just actually "
    "now today there here then ok okay yes no nope nah well ah oh hm hmm um er for lot "
    "exactly precisely give take with by at most least max tops scale scales weighed says "
    "said reads make made call mean meant should be correction oops whoops wait s and but to "
    "my our me please pls bot mate thanks ta cheers yesterday morning evening tonight "
    "afternoon ish plus minus minimum maximum half another other again too also still even "
    "quite very much bit over under between"
)
"""What may stand beside another amount of a record; with other words it is of something else."""


def is_within(message: Message) -> bool:
    """ "And in a bucket?", "in 20 litres": what something is asked for in, and no amount of it."""
    starts = [a.start for a in message.measured()]
    return any(at and message.norms[at - 1] in _WITHIN for at in starts)


_WITHIN = words_in("in for with")


def _goes_elsewhere(behind: Sequence[str]) -> bool:
    """ "700 g in hers", "3 kg in the other one", "5 kg in": it tells where more went, and of no
    record; nor does "2 kg down since January".
    """
    if behind[:1] in (["down"], ["up"], ["heavier"], ["lighter"]):
        return True
    if behind in (["in"], ["in", "."], ["in", "!"]):
        return True
    return behind[:1] in (["in"], ["into"], ["to"]) and not _THERE.issuperset(behind[1:])


_THERE = words_in("it there that all total the end today now , . !")


def _amount_not_another(message: Message) -> bool:
    """ "600 g not 900", "not 3 kg but 2", "2 lbs, not 3"."""
    norms = message.norms
    for i, norm in enumerate(norms):
        if norm != "not" or i + 1 >= len(norms):
            continue
        number = message.words[i + 1].kind == "number"
        if number and i and message.words[i - 1].kind == "number" and i <= 3:
            return not _counts_things(message, i + 2)
        before = any(
            a.quantity in ("mass", "volume") and i - 3 <= a.end <= i for a in message.amounts
        )
        if number and (before or any(a.start > i + 2 for a in message.amounts)):
            return True
    return False


def _counts_things(message: Message, i: int) -> bool:
    """ "2 not 3 pizzas": the number is one of things."""
    held = {k for a in message.amounts for k in range(a.start, a.end)}
    word = message.words[i] if i < len(message.words) else None
    return word is not None and word.kind == "word" and i not in held and word.norm not in SORRY
