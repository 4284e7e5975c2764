"""Words that lean on a record by their form and are of something else: "it was 3 kg, the baby",
"Wednesday was bin day", "scrap that idea".
"""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Amend, Ask, Later, Layer, Retract, meant
from handlers.reading.arrangements.putoff import (
    FORGOTTEN,
    NOTHING_NAMED,
    is_plan_of_else,
    names_nothing,
)
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_LONGEST_NAME = 2
"""Words of what is named behind "it"."""
_POINTING = words_in("it that this them one he she they 's is was")
_OWNING = words_in("the my our your his her their")
_OURS = words_in(
    "lot whole mistake bad fault apologies one ones first last other way total sum entry record "
    "layer bin bins bucket buckets caddy weight amount number figure rest same thing scale scales "
    "phone keyboard autocorrect glasses typo thumb thumbs eyes display battery half both liquid "
    "juice tea leachate drain draining sealing burial bran starter scraps contents lid tap stuff "
    "day time wrong right"
)
"""What is ours, or tells how a slip came about."""
_MEANT = ("i mean", "i meant")


def without_of_else(acts: Sequence[Act], message: Message) -> tuple[Act, ...]:
    """The acts without those that the message tells of something else."""
    if not acts or message.bot:
        return tuple(acts)
    if is_named_behind(message):
        return tuple(act for act in acts if isinstance(act, Ask))
    kept = [act for act in acts if not _is_of_else(meant(act), message)]
    return tuple([_put_off(act, message) if isinstance(act, Later) else act for act in kept])


def _put_off(act: Later, message: Message) -> Later:
    """The same, with the rule that nothing is named where that is so."""
    bare = names_nothing(message)
    return replace(act, rules=(*act.rules, NOTHING_NAMED)) if bare else act


def is_not_the_bin(message: Message) -> bool:
    """ "No, that was the soup, not the bin": what is put right is no record."""
    norms = message.norms[-3:] if message.norms[-1].isalpha() else message.norms[-4:-1]
    return norms[:1] == ["not"] and norms[1:2] in (["the"], ["a"]) and norms[-1] in BIN_WORDS


def is_named_behind(message: Message) -> bool:
    """ "It's 30 litres, the rucksack": what "it" was is told last, and is none of ours."""
    norms = message.norms
    if "," not in norms:
        return False
    at = len(norms) - 1 - norms[::-1].index(",")
    end = len(norms)
    while end > at and not norms[end - 1].isalpha():
        end -= 1
    if " ".join(norms[end - 2 : end]) in _MEANT:
        end -= 2
    name = norms[at + 2 : end]
    if norms[at + 1 : at + 2] == [] or norms[at + 1] not in _OWNING:
        return False
    if not 0 < len(name) <= _LONGEST_NAME or _POINTING.isdisjoint(norms[:at]):
        return False
    if any(clause.verb is not None and clause.verb.start > at for clause in message.clauses):
        return False  # "buried it, the ground gave way"
    held = indexes(message.bins, message.named, message.items, message.amounts, message.days,
                   message.members, message.signs)  # fmt: skip
    return held.isdisjoint(range(at + 1, end)) and _OURS.isdisjoint(name)


def _is_of_else(act: Act, message: Message) -> bool:
    match act:
        case Amend():
            return _RIGHT_OF_ELSE.search(plain_text(message, days=True)) is not None
        case Retract():
            return _STRUCK_ELSE.search(plain_text(message)) is not None
        case Later():
            return FORGOTTEN not in act.rules and is_plan_of_else(message)
        case Layer():
            ahead = bool(act.same) and _SAME_AHEAD.search(plain_text(message)) is not None
            return ahead or _is_ordered(message)
    return False


def _is_ordered(message: Message) -> bool:
    """ "Half a litre of milk please": said over a counter, or to whoever goes to the shop."""
    asked = message.body.casefold().rstrip(" .!").endswith(_PLEASE)
    if not asked or message.context.to_bot or message.bins:
        return False
    scraps = any(item.scrap or item.generic for item in message.items)
    return not scraps and all(clause.verb is None for clause in message.clauses)


_PLEASE = ("please", "pls", "plz")


_RIGHT_OF_ELSE = Late(
    # "Wednesday was bin day"
    r"^(?:(?:and|but|so|well|oh|,) )*(?:on )?qday (?:actually |really |also )*(?:is|was) "
    r"(?!(?:qday|it|when|right|correct|the (?:day|right|one|correct)|that|not|wrong|meant|what|i|"
    r"we|qbin|my mistake|just|only|about)\b)[a-z]|"
    # "it was Wednesday, wasn't it?"
    r"\bqday ,? (?:wasnt|isnt) it$|"
    # "half and half": a mixture, or shares
    r"^half (?:and|n|&) half\b|"
    # "it was the blue one that got away"
    r"\bqbin(?: one)? (?:that|which|who) (?!(?:i|we|was|is|had|has|got (?:it|the)|took|qmember)\b)"
)
_STRUCK_ELSE = Late(
    r"\b(?:scrap|scratch|cancel|forget|delete|ignore|drop|bin|undo) (?:that|this|the|my) "
    r"(?:\w+ )?(?:idea|plan|plans|thought|thoughts|notion|suggestion|theory|invite|invitation|date|"
    r"visit|picnic|errand|search|question)\b|"
    r"\b(?:scratch|cross|strike|tick) (?:that|this|it)(?: one)? off (?:the|my|your|our) list\b|"
    r"^(?:(?:oh|ok|no|and|,) )*(?:cancel|scrap|scratch|forget|ignore) that ,? (?:[a-z]+ ){0,4}"
    r"(?:found|fixed|got|borrowed|bought) (?:it|him|her|them|one)(?: (?:now|already|thanks))*$"
)
_SAME_AHEAD = Late(
    r"\b(?:same|again)\b.*\b(?:next (?:week|month|year|time|\w+day)|tomorrow|qday) ?\??$"
)
