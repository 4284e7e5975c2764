"""What did not go in or come out, though it has its amount and its bin: "Zoe didn't put 2 kg of
bread in the shed bin", "I won't be adding 800 g".
"""

from collections.abc import Sequence

from handlers.reading.acts import Act, Drain, Layer, meant
from handlers.reading.food.quantities import amount_sum
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.sentences import Clause
from handlers.reading.words.vocabulary import words_in

_DENYING = words_in(
    "not never didnt dont doesnt havent hasnt hadnt wont cant cannot couldnt wouldnt shouldnt shant"
)
_BEFORE_VERB = Late(
    r"(?:^| )(?:" + "|".join(sorted(_DENYING)) + r")"
    r"(?: (?:be|been|yet|even|actually|really|ever|to|going|gonna|i|we))*$"
)
"""The denial of a verb, up to it: "don't forget I added" denies another one."""
_NO_DEEDS = words_in("be have get")
_HOW_MUCH = words_in("only just more quite much many less whole all exactly nearly")
"""Where these are denied, it was another amount."""


def without_denied(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts without the layers and drainings that did not happen."""
    if not message.has(_DENYING):
        return list(acts)
    return [act for act in acts if not _is_denied(act, message)]


def _is_denied(act: Act, message: Message) -> bool:
    told = meant(act)
    if not isinstance(told, Layer | Drain):
        return False
    deeds = [c for c in message.clauses if c.verb and told.act in c.verb.verb.classes]
    denied = [clause for clause in deeds if _denies(clause, message)]
    of_these = [one for one in message.measured() if _is_in(one, denied)]
    if not of_these:
        return False
    others = [one for one in message.measured() if one not in of_these]
    if not others:
        return len(denied) == len(deeds)
    mass = told.mass_kg if isinstance(told, Layer) else None
    much = (mass, told.volume_l)
    return _is_among(much, of_these) and not _is_among(much, others)


def _denies(clause: Clause, message: Message) -> bool:
    if clause.sense != "not" or clause.verb is None or clause.verb.verb.plain in _NO_DEEDS:
        return False  # "it can't have been under 2 kg"
    if message.has_in(_HOW_MUCH, clause.start, clause.end):
        return False
    led = " ".join(message.norms[clause.start : clause.verb.start])
    return _BEFORE_VERB.search(led) is not None


def _is_in(amount: Amount, clauses: Sequence[Clause]) -> bool:
    return any(clause.start <= amount.start < clause.end for clause in clauses)


def _is_among(much: tuple[float | None, float | None], amounts: Sequence[Amount]) -> bool:
    return any(amount_sum([one]) == much for one in amounts)
