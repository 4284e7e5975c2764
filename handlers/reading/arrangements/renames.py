"""A bin gets another name: "rename red to Rosie", "the kids call the red bin Stinky"."""

import re

from handlers.reading.acts import Open
from handlers.reading.arrangements.communal import Rename
from handlers.reading.bins.namefrom import is_capital
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import one_slip, verb_words, words_in

CUES = (
    "rename", "re-name", "sorry", "oops", "meant", "mean", "should be", "call", "name", "goes by",
    "known as", "christened", "dubbed", "bapti", "*",
)  # fmt: skip

ASKING = (
    r"(?:(?:can|could|shall|should) (?:we|you|i) |lets |let us |we |i would like to |i want to )?"
)
_RENAME = Late(
    rf"^{ASKING}(?:rename|re name|renaming|(?:i |we )?renamed) (?:the )?(?P<bin>qbin)"
    r"(?: (?:to|as|into))?"
    r"(?: (?P<name>\S.{0,60}))?$"
)
_SWAP = Late(
    rf"^{ASKING}(?:swap|switch|exchange) (?:round |around )?(?:the )?names (?:of |for |on )?"
    r"(?:the )?qbin (?:and|with) (?:the )?qbin|"
    rf"^{ASKING}(?:swap|switch|exchange) (?:the )?qbin and (?:the )?qbin 's names"
)
_BARE = Late(rf"^{ASKING}rename (?:the )?(?P<bare>\S+) (?:to|as|into) (?P<name>\S.{{0,60}})$")
_WHO = (
    r"(?:i|we|they|everyone|everybody|qmember|"
    r"(?:the|my|our) (?:kids|children|class|boys|girls|twins))"
)
_CALL = Late(
    rf"^{ASKING}(?:call|calling) (?:the )?(?P<bin>qbin) (?P<name>\S.{{0,60}}?) "
    r"(?:from now on|from now|now on|in future)$|"
    r"^(?:from now on )(?:we )?call (?:the )?(?P<bin2>qbin) (?P<name2>\S.{0,60})$|"
    r"^(?:from now on )?(?:the )?(?P<bin3>qbin) (?:is|has been|was|has|got) "
    r"(?:(?:now|just|from now on) )*(?:called|named|known as|christened|dubbed|renamed(?: to| as)?|"
    r"a (?:new )?name) (?P<name3>\S.{0,60})$|"
    r"^(?:the )?(?P<bin7>qbin) goes by (?:the name of )?(?P<name6>\S.{0,60})$|"
    rf"^{_WHO} (?:have |'ve |has |just |now )*(?:named|called|call|calls|calling|christened|dubbed"
    r"|nicknamed|baptised|baptized) (?:the )?(?P<bin8>qbin) (?P<name7>\S.{0,60})$|"
    rf"^(?:from|as of|since|starting) qday (?:the )?(?P<bin4>qbin) (?:is|shall be|will be) "
    r"(?:now )?(?:called|named) (?P<name4>\S.{0,60})$|"
    rf"^{ASKING}(?:change|set) (?:the )?(?:name of (?:the )?(?P<bin5>qbin)|(?P<bin6>qbin) "
    r"'s name) (?:to|into) (?P<name5>\S.{0,60})$"
)
_CALL_IT = Late(
    rf"^(?:let 's |{ASKING})(?:call|name) (?:the )?(?P<bin>qbin) (?P<name>\S+(?: \S+){{0,3}})$"
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
_SPELLED = Late(
    r"^(?:(?:sorry|no|oops|i mean|i meant|it is|it 's|should be|it should be|typo|the|\*) )*"
    r"(?P<name>\S{3,40}?)(?: bin)?(?: (?:sorry|i mean|i meant|oops|of course|\*))*$"
)
_BIN_WORD = Late(r"^(?:the )?(?P<name>.+?)(?: bin)?$", re.IGNORECASE)


def renamed(phrase: Phrase) -> Rename | Found | None:
    """The new name that a bin is told to have, or to get."""
    if spelled := _spelled_right(phrase) or _of_each_other(phrase):
        return spelled
    if phrase.bins:
        return _rename(phrase)
    bare = _rename_bare(phrase) or _rename_it(phrase)
    return bare or _of_strange(phrase) or _of_only(phrase)


def _rename(phrase: Phrase) -> Rename | Found | None:
    match = _RENAME.match(phrase.text) or _CALL.match(phrase.text) or _called(phrase)
    bin = phrase.bin or phrase.strange_bin
    if match is None or bin is None:
        return None
    groups = [name for name, said in match.groupdict().items() if said and name[:4] == "name"]
    if not groups:
        return Rename(bin=bin, name="")  # "rename the red bin to"
    start, said = phrase.words(match, groups[0]) or (0, 0)
    end = _end_of_name(phrase.message, start, said)
    if groups[0] in _ONLY_TOLD and not _is_named(phrase, start):
        return None
    named = _BIN_WORD.match(phrase.message.hyphened(start, end).strip(" .!\"'“”"))
    plan = Rename(bin=bin, name=named["name"]) if named else None
    leans = not _TELLERS.isdisjoint(phrase.message.norms[end : end + 2])  # "…, it's 20 L"
    return Found(phrase.sentence[0], end, plan) if plan and end < said and not leans else plan


_ONLY_TOLD = frozenset({"name3", "name6", "name7"})
"""What a bin is told to be called may be no name: "we call the yard the jungle"."""


def _is_named(phrase: Phrase, start: int) -> bool:
    """Whether that is told as a bin's new name: it is written as one, or is "now"."""
    renamed = not _NOW.isdisjoint(phrase.tokens)
    return not phrase.asked and (renamed or is_capital(phrase.message, start))


_NOW = words_in("now renamed")


def _end_of_name(message: Message, start: int, end: int) -> int:
    """Where another thing is told: "called blue, and we start again", "to blue so we can tell them
    apart"; "Salt and Pepper" is a name.
    """
    for i in range(start + 1, end):
        norm, behind = message.norms[i], message.norms[i + 1 : i + 2]
        small = message.words[i].text.islower()
        if norm in _STOPS or (small and norm in _GIVING_WHY):
            return i
        if norm == "from" and behind == ["now"]:
            return i
        joined = norm in _JOINTS and behind and message.words[i + 1].text.islower()
        told = joined and (behind[0] in _TELLERS or behind[0] in verb_words())
        if told or (joined and behind[0] not in _OF_NAMES and is_capital(message, start)):
            return i
    return end


_STOPS = words_in(", ; ( :")
_GIVING_WHY = words_in("because since so but while until as when now")
_JOINTS = words_in("and & then")
_OF_NAMES = words_in("the a his her our my")
_TELLERS = words_in("i we it it 's he she they you that this there then")


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


def _of_strange(phrase: Phrase) -> Rename | Found | None:
    """ "Rename the mauve bin to Moss", where the group has no such bin."""
    told = phrase.strange_bin is not None and phrase.tokens[0] == "rename"
    return _rename(phrase) if told and not phrase.asked else None


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
    rf"^(?:no |actually |oh |and |let 's )*{ASKING}(?:(?:call|name|rename|calling) "
    r"(?:it|him|her|this one|that one)|(?:it|he|she) (?:is |'s )?(?:called|named)|its name is)"
    r"(?: (?:to|as))? (?P<name>\S+(?: \S+){0,2})$|"
    rf"^(?:no |actually |oh |and |let 's )*{ASKING}change (?:its|his|her|the) name (?:to|into) "
    r"(?P<other>\S+(?: \S+){0,2})$"
)
