"""A bin's label, its rules, its end, and who may decide on them; its name: see `renames`."""

import re
from collections.abc import Iterator

from handlers.reading.arranged import Plan
from handlers.reading.arrangements.communal import (
    POWERS,
    Bar,
    LabelWanted,
    Power,
    Reserve,
    Retire,
    WhoMay,
)
from handlers.reading.arrangements.renames import ASKING, renamed
from handlers.reading.arrangements.renames import CUES as RENAME_CUES
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, first_plan
from handlers.reading.words.late import Late

CUES = (
    *RENAME_CUES,
    *("there", "have", "retire", "decommission", "out of use", "out of service", "delete"),
    *("remove", "take", "off the", "get rid of", "threw", "thrown", " gone"),
    *("label", "may", "takes", "accepts", "no ", "can ", "allowed", "use"),
)

_WORN = (
    r"(?:a |now |all |badly |very )*(?:cracked|broken|split|leaking|worn out|rusty|too old|gone)"
)
_RETIRE = Late(
    rf"^{ASKING}(?:retire|retiring|decommission) (?:the )?qbin"
    rf"(?: (?:because |since )?(?:it is|it 's|its) {_WORN})?$|"
    rf"^(?:the )?qbin (?:is|'s|has) {_WORN} (?:so )?(?:please )?retire it$|"
    rf"^(?:the )?qbin is (?:now )?(?:retired|out of (?:use|service))(?: now| for good)?$|"
    rf"^{ASKING}take (?:the )?qbin out of (?:use|service)(?: for good)?$|"
    rf"^(?:we )?(?:no longer use|dont use|do not use) (?:the )?qbin(?: any ?more)?$|"
    rf"^(?:the )?qbin (?:is|'s|has) {_WORN} (?:and |so )?(?:we |i )?(?:no longer use|dont use|"
    r"do not use|wont use) it(?: any ?more| again)*$|"
    r"^(?:i |we )?(?:have |had to )?(?:threw|thrown|throw) (?:the )?qbin away$"
)
_OFF_LIST = Late(
    r"^(?:(?:can|could) (?:you|we) )?(?:please )?(?:take|strike|remove|drop|delete) (?:the )?qbin "
    r"(?:off|from) (?:the|our|your) (?:list|book|books|calendar|board|record|records)"
    r"(?: (?:please|now|of bins))*$"
)
_REMOVE = Late(
    r"^(?:(?:can|could) you )?(?:please )?(?:remove|drop|take out|take away) (?:the )?qbin"
    r"(?: (?:please|now))*(?: (?:qmember|we|i|they|he|she|it) .{0,80})?$"
)
_IS_NONE = Late(
    r"^(?:there (?:is|'s|was)|we (?:have|have got|'ve got)) (?:actually )?(?:no|not any) qbin"
    r"(?: (?:here|any ?more|at all|yet|actually))*$|"
    r"^(?:there is not|there isnt|we (?:dont|do not) have) (?:a |any )?qbin"
    r"(?: (?:here|any ?more|at all|yet|actually))*$"
)
_GONE = Late(r"^(?:the )?qbin (?:is|'s|has) gone(?: now| for good)?$")
_DELETE = Late(r"^(?:(?:can|could) you )?(?P<deed>delete|remove|get rid of) (?:the )?qbin$")
_LABEL = Late(
    r"^(?:(?:can|could|may) (?:i|we|you) (?:have|get|make|print|post|send)(?: me| us)? |print |"
    r"make |"
    r"post |send |i need |we need |give (?:me|us) |i want |we want )?(?:me |us )?"
    r"(?:a |the |another |new )*(?:printable )?labels?"
    r"(?: (?:for|of|to) (?:(?:the )?(?P<bin>qbin)|(?P<all>(?:(?:all|each|every) )?(?:of )?"
    r"(?:the |our |my )?(?:bins?|buckets?|pails?)|all(?: of them| three| four)?|each(?: of them)?|"
    r"them(?: all)?)))?(?: please)?$"
)
_TAKES_NO = Late(
    r"^(?:from now on )?(?:the )?qbin (?:takes|accepts|is to have|"
    r"is to get) no (?P<what>\S.{0,60}?)"
    r"(?: from now on| any ?more| please)*$"
)
_TAKES_ALL = Late(
    r"^(?:from now on )?(?:the )?qbin (?:takes|accepts) (?:everything|anything|all kinds|all)"
    r"(?: again| now| from now on)*$"
)
_NO = Late(
    r"^(?:from now on )?no (?P<what>\S.{0,60}?) (?:in|into|for) (?:the )?qbin"
    r"(?: from now on| any ?more| please)*$"
)
_FROM_NOW = "from now on"
_ONLY = Late(
    r"^(?:from now on )?only (?:the )?(?:moderators?|mods?|admins?|administrators?|"
    r"those with power|"
    r"people with power|leaders?|those in charge)(?: (?:in|of) (?:the|this) room)? "
    r"(?:can|may|should|are (?:allowed|able) to) (?:be able to )?(?P<what>\S.{0,80})$"
)
_ALL = Late(
    r"^(?:from now on )?(?:everyone|everybody|anyone|anybody)(?: here)? (?:can|may|is allowed to) "
    r"(?P<what>\S.{0,80})$"
)
_WHO_MAY = Late(
    r"^who (?:can|may|is allowed to) (?:rename|retire|change (?:the )?settings|take a bin)\b"
)
_DEEDS: tuple[tuple[Power, Late], ...] = (
    ("rename", Late(r"\brename\b(?:.{0,30}\bbins?\b)?")),
    ("retire", Late(r"\bretire\b(?:.{0,30}\bbins?\b)?")),
    ("take", Late(r"\btake (?:a |the |over )*bins?\b|\btake bins\b")),
    (
        "settings",
        Late(r"\b(?:change|decide|set) (?:the |our |its |your |bot )*settings?\b(?! of)"),
    ),
)
_ANYTHING = Late(r"^(?:change|decide|do) (?:anything|everything|all of (?:it|that|this))$")


def upkeep(message: Message) -> Iterator[Found]:
    """What a message says of a bin's name, label or end, if that is all it says."""
    return first_plan(message, _plan, most=2)


def _plan(phrase: Phrase) -> Plan | Found | None:
    text = phrase.text
    if _WHO_MAY.match(text):
        return WhoMay()
    if match := _ONLY.match(text):
        return _reserve(match["what"], for_everybody=False)
    if (match := _ALL.match(text)) and phrase.to_bot:
        return _reserve(match["what"], for_everybody=True)
    if match := _LABEL.match(text):
        named = phrase.bin or phrase.strange_bin
        return LabelWanted(bin=named) if named or match["all"] or phrase.to_bot else None
    if not phrase.bins:
        return renamed(phrase) or _strange_ended(phrase)
    return _barred(phrase) or _ended(phrase) or renamed(phrase)


def _ended(phrase: Phrase) -> Retire | None:
    """ "Retire the blue bin", "threw the blue bin away", "bot, delete the blue bin"."""
    if _RETIRE.match(phrase.text):
        return Retire(bin=phrase.bin)
    if phrase.asked:
        return None
    if _OFF_LIST.match(phrase.text):
        return Retire(bin=phrase.bin, deleted=True)
    if _IS_NONE.match(phrase.text):
        return Retire(bin=phrase.bin, deleted=True, maybe=True)
    if _GONE.match(phrase.text) or (_REMOVE.match(phrase.text) and not phrase.to_bot):
        return Retire(bin=phrase.bin, maybe=True)
    match = _DELETE.match(phrase.text)
    to_us = match is not None and (phrase.to_bot or match["deed"] == "delete")
    return Retire(bin=phrase.bin, deleted=True) if to_us else None


def _strange_ended(phrase: Phrase) -> Retire | None:
    """ "Retire the mauve bin", where the group has no such bin."""
    if phrase.strange_bin is None or phrase.asked or not _RETIRE.match(phrase.text):
        return None
    told = phrase.tokens[0] in ("retire", "decommission")
    return Retire(bin=phrase.strange_bin) if told else None


def _barred(phrase: Phrase) -> Bar | None:
    """ "The courtyard bin takes no meat", "bot, no meat or fish in the courtyard bin"."""
    text = phrase.text
    if phrase.bin is None or phrase.asked:
        return None
    if _TAKES_ALL.match(text):
        return Bar(bin=phrase.bin)
    match = _TAKES_NO.match(text) or (
        _NO.match(text) if phrase.to_bot or _FROM_NOW in text else None
    )
    span = phrase.words(match, "what") if match else None
    if span is None:
        return None
    items = [item for item in phrase.message.items if span[0] <= item.start < span[1]]
    kinds = dict.fromkeys(kind for item in items for kind, share in item.food.shares if share)
    return Bar(bin=phrase.bin, kinds=tuple(kinds)) if kinds else None


def _reserve(what: str, *, for_everybody: bool) -> Reserve | None:
    if _ANYTHING.match(what):
        return Reserve(what=POWERS, for_everybody=for_everybody)
    found = tuple(power for power, pattern in _DEEDS if pattern.search(what))
    about = re.search(r"\b(?:bins?|settings?|qbin)\b", what)
    return Reserve(what=found, for_everybody=for_everybody) if found and about else None
