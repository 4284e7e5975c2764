"""A bin's name, its label, its end, and who may decide on them."""

import re
from collections.abc import Iterator

from handlers.reading.acts import Open
from handlers.reading.arranged import Plan
from handlers.reading.arrangements.communal import (
    POWERS,
    Bar,
    LabelWanted,
    Power,
    Rename,
    Reserve,
    Retire,
    WhoMay,
)
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, first_plan
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import one_slip

CUES = (
    *(
        "rename",
        "re-name",
        "sorry",
        "oops",
        "meant",
        "mean",
        "should be",
        "there",
        "have",
        "call",
        "name",
        "retire",
        "decommission",
        "out of use",
        "out of service",
        "delete",
        "remove",
        "take",
        "off the",
        "get rid of",
        "threw",
        "thrown",
        " gone",
    ),
    *("label", "may", "takes", "accepts", "no ", "can ", "allowed", "use"),
)

_ASKING = (
    r"(?:(?:can|could|shall|should) (?:we|you|i) |lets |let us |we |i would like to |i want to )?"
)
_RENAME = Late(
    rf"^{_ASKING}(?:rename|re name|renaming|(?:i |we )?renamed) (?:the )?(?P<bin>qbin)"
    r"(?: (?:to|as|into))?"
    r"(?: (?P<name>\S.{0,60}))?$"
)
_SWAP = Late(
    rf"^{_ASKING}(?:swap|switch|exchange) (?:round |around )?(?:the )?names (?:of |for |on )?"
    r"(?:the )?qbin (?:and|with) (?:the )?qbin|"
    rf"^{_ASKING}(?:swap|switch|exchange) (?:the )?qbin and (?:the )?qbin 's names"
)
_BARE = Late(rf"^{_ASKING}rename (?:the )?(?P<bare>\S+) (?:to|as|into) (?P<name>\S.{{0,60}})$")
_CALL = Late(
    rf"^{_ASKING}(?:call|calling) (?:the )?(?P<bin>qbin) (?P<name>\S.{{0,60}}?) "
    r"(?:from now on|from now|now on|in future)$|"
    r"^(?:from now on )(?:we )?call (?:the )?(?P<bin2>qbin) (?P<name2>\S.{0,60})$|"
    r"^(?:the )?(?P<bin3>qbin) is (?:now|from now on) (?:called|named) (?P<name3>\S.{0,60})$|"
    rf"^(?:from|as of|since|starting) qday (?:the )?(?P<bin4>qbin) (?:is|shall be|will be) "
    r"(?:now )?(?:called|named) (?P<name4>\S.{0,60})$|"
    rf"^{_ASKING}(?:change|set) (?:the )?(?:name of (?:the )?(?P<bin5>qbin)|(?P<bin6>qbin) "
    r"'s name) (?:to|into) (?P<name5>\S.{0,60})$"
)
_CALL_IT = Late(
    rf"^(?:let 's |{_ASKING})(?:call|name) (?:the )?(?P<bin>qbin) (?P<name>\S+(?: \S+){{0,3}})$"
)
"""Told to the bot, or with a name that is written as one."""
_ONE = r"(?:the|our)(?: shared| new| old)? (?:bin|bucket|pail|drum|barrel|tub)"
_ONLY_CALLED = Late(
    r"^(?:(?:so|and|oh|ok|hey|by the way|btw|also|,) )*(?:"
    rf"{_ONE}(?: now)? (?:is|was|has been|shall be|will be)(?: now)? (?:called|named|christened)|"
    rf"(?:i|we|the kids|they) (?:have |just )*(?:named|called|christened) {_ONE}|"
    rf"{_ONE}(?: now| finally)? has(?: got)? a (?:new )?name(?: now| finally)*(?: by the way)?|"
    rf"{_ONE} 's (?:new )?name is(?: now)?)(?: now)?(?: [,:—-])? \"?(?P<name>[^\",:.]{{1,40}}?)\"?"
    r"(?: (?:now|from now on|by the way|btw|!|\.))*$"
)
"""The group's only bin, called by no name and told its own."""
_WORN = (
    r"(?:a |now |all |badly |very )*(?:cracked|broken|split|leaking|worn out|rusty|too old|gone)"
)
_RETIRE = Late(
    rf"^{_ASKING}(?:retire|retiring|decommission) (?:the )?qbin"
    rf"(?: (?:because |since )?(?:it is|it 's|its) {_WORN})?$|"
    rf"^(?:the )?qbin (?:is|'s|has) {_WORN} (?:so )?(?:please )?retire it$|"
    rf"^(?:the )?qbin is (?:now )?(?:retired|out of (?:use|service))(?: now| for good)?$|"
    rf"^{_ASKING}take (?:the )?qbin out of (?:use|service)(?: for good)?$|"
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
_SPELLED = Late(
    r"^(?:(?:sorry|no|oops|i mean|i meant|it is|it 's|should be|it should be|typo|the) )*"
    r"(?P<name>\S{3,40}?)(?: bin)?(?: (?:sorry|i mean|i meant|oops|of course))*$"
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
_BIN_WORD = Late(r"^(?:the )?(?P<name>.+?)(?: bin)?$", re.IGNORECASE)


def upkeep(message: Message) -> Iterator[Found]:
    """What a message says of a bin's name, label or end, if that is all it says."""
    return first_plan(message, _plan, most=2)


def _plan(phrase: Phrase) -> Plan | None:
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
    if spelled := _spelled_right(phrase) or _of_each_other(phrase):
        return spelled
    if not phrase.bins:
        renamed = _rename_bare(phrase) or _rename_it(phrase) or _of_strange(phrase)
        return renamed or _of_only(phrase)
    if bar := _barred(phrase):
        return bar
    return _ended(phrase) or _rename(phrase)


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


def _rename(phrase: Phrase) -> Rename | None:
    match = _RENAME.match(phrase.text) or _CALL.match(phrase.text) or _called(phrase)
    bin = phrase.bin or phrase.strange_bin
    if match is None or bin is None:
        return None
    groups = [
        name for name in ("name", "name2", "name3", "name4", "name5") if match.groupdict().get(name)
    ]
    if not groups:
        return Rename(bin=bin, name="")  # "rename the red bin to"
    named = _BIN_WORD.match(phrase.said(match, groups[0]).strip(" .!\"'“”"))
    return Rename(bin=bin, name=named["name"]) if named else None


def _of_only(phrase: Phrase) -> Rename | None:
    """ "The bin is called Boris now", where the group has one bin alone."""
    message = phrase.message
    if len(message.context.bins) != 1 or phrase.asked:
        return None
    match = _ONLY_CALLED.match(phrase.message_text)
    if match is None:
        return None
    at = phrase.start + match.string[: match.start("name")].count(" ")
    said = message.text(at, at + match["name"].count(" ") + 1).strip(" .!\"'“”")
    named = _BIN_WORD.match(said) if said[:1].isupper() else None
    return Rename(bin=message.context.bins[0], name=named["name"]) if named else None


def _of_each_other(phrase: Phrase) -> Rename | None:
    """ "Swap the names of yard and shed": two bins, called by places or not."""
    if not _SWAP.match(phrase.text):
        return None
    refs = [r for r in phrase.message.bins if phrase.start <= r.start < phrase.end and r.known]
    names = [ref.name for ref in refs if ref.name]
    return Rename(bin=names[0], name="", other=names[1]) if len(names) > 1 else None


def _called(phrase: Phrase) -> re.Match[str] | None:
    """ "Call the blue bin Rosie", but not "call the blue bin men"."""
    match = _CALL_IT.match(phrase.text)
    named = match is not None and phrase.said(match, "name")[:1].isupper()
    return match if (named or phrase.to_bot) and not phrase.asked else None


def _of_strange(phrase: Phrase) -> Rename | Retire | None:
    """ "Rename the mauve bin to Moss", "retire the mauve bin", where the group has no such bin."""
    if phrase.strange_bin is None or phrase.asked:
        return None
    if _RETIRE.match(phrase.text) and phrase.tokens[0] in ("retire", "decommission"):
        return Retire(bin=phrase.strange_bin)
    return _rename(phrase) if phrase.tokens[0] == "rename" else None


def _rename_bare(phrase: Phrase) -> Rename | None:
    """ "Rename C to Kitchen", where C may be a degree, a letter or a room in other talk."""
    match = _BARE.match(phrase.text)
    bare = phrase.said(match, "bare").casefold() if match else ""
    bins = phrase.message.context.bins
    bin = next((name for name in bins if name.casefold() in (bare, f"bin {bare}")), None)
    if match is None or bin is None:
        return None
    named = _BIN_WORD.match(phrase.said(match, "name").strip(" .!\"'“”"))
    return Rename(bin=bin, name=named["name"]) if named else None


def _rename_it(phrase: Phrase) -> Rename | None:
    """ "Call it Greenie", behind the record of a bin."""
    bin: str | None = getattr(phrase.message.context.last, "bin", None)
    match = None if bin is None or phrase.days else _IT.match(phrase.text)
    if bin is None or match is None or (phrase.asked and match["other"] is None):
        return None
    said = "name" if match["other"] is None else "other"
    span = phrase.words(match, said)
    behind = range(span[0] + 1, span[1]) if span else ()
    if any(amount.start in behind for amount in phrase.message.amounts):
        return None  # "it's called Oscar, 20 L" tells more than a name
    name = phrase.said(match, said).strip(" .!?\"'“”")
    plainly = "rename" in phrase.tokens or name[:1].isupper()  # "call it a day" names nothing
    return Rename(bin=bin, name=name) if plainly and name.casefold() != bin.casefold() else None


def _spelled_right(phrase: Phrase) -> Rename | None:
    """ "Green sorry", behind "opened the grene bin": a slip in the name of a bin just begun."""
    last = phrase.message.context.last
    match = _SPELLED.match(phrase.text) if isinstance(last, Open) and last.bin else None
    if match is None or phrase.asked or not isinstance(last, Open) or last.bin is None:
        return None
    span = phrase.words(match, "name")
    name = phrase.message.words[span[0]].norm if span else ""
    known = [bin.casefold() for bin in phrase.message.context.bins]
    slipped = name not in known and one_slip(name, last.bin.casefold())
    return Rename(bin=last.bin, name=name) if slipped else None


_IT = Late(
    rf"^(?:no |actually |oh |and |let 's )*{_ASKING}(?:(?:call|name|rename|calling) "
    r"(?:it|him|her|this one|that one)|(?:it|he|she) (?:is |'s )?(?:called|named)|its name is)"
    r"(?: (?:to|as))? (?P<name>\S+(?: \S+){0,2})$|"
    rf"^(?:no |actually |oh |and |let 's )*{_ASKING}change (?:its|his|her|the) name (?:to|into) "
    r"(?P<other>\S+(?: \S+){0,2})$"
)


def _reserve(what: str, *, for_everybody: bool) -> Reserve | None:
    if _ANYTHING.match(what):
        return Reserve(what=POWERS, for_everybody=for_everybody)
    found = tuple(power for power, pattern in _DEEDS if pattern.search(what))
    about = re.search(r"\b(?:bins?|settings?|qbin)\b", what)
    return Reserve(what=found, for_everybody=for_everybody) if found and about else None
