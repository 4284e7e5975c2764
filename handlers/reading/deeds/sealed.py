"""A bin was closed to ferment."""

import re
from collections.abc import Sequence

from handlers.reading.acts import Seal
from handlers.reading.deeds.peeks import is_shut_again
from handlers.reading.deeds.told import bin_of
from handlers.reading.deeds.toldday import day_of, is_ahead, said_day
from handlers.reading.deeds.unnamed import is_of_unnamed_bin
from handlers.reading.groups import Group, sentence_text
from handlers.reading.message import Message
from handlers.reading.people.doers import member_of
from handlers.reading.plaintext import is_asking, plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

_SURELY = frozenset({"seal", "seel", "seal up", "sellar"})
_SEALING = _SURELY | {
    "close", "shut", "close up", "close off", "shut up", "cap", "lid", "tape", "tape up", "lock",
    "clamp", "button up", "snap shut", "sellar", "cerrar", "fechar", "schliessen",
}  # fmt: skip
_MEANT = frozenset({"it", "them", "this", "that", "both", "her", "him"})
_TAP = words_in("tap taps spigot valve spout")
_OTHER_THINGS = _TAP | words_in(
    "deal windows window door doors lips fate envelope letter gate shop office bath shower "
    "grout curtains road roads library pool school schools account tab eyes mouth victory win "
    "pump pumps gasket radiator pipe pipes "
    "jar jars deck driveway worktop floor floors meeting laptop book books case driveways pub "
    "cafe vents gap gaps leak roofing parcel kiss envelopes bag "
    "fridge car shutters"
)
_FOR_GOOD = (
    r"for good|two weeks|2 weeks|fortnight|a fortnight|14 days|ten days|taped|tape|sealed|done|"
    r"shut|"
    r"full|closed|last time|starts now|start now|clock|tight|clamped|counting|ferment|"
    r"officially|until|till|see you"
)
# The bin is `qbin`; every gap is bounded.
_LID_ON = Late(
    r"(?<!with the )(?<!with its )(?<!with her )"
    r"\blids? (?:is |'s |are |now |firmly |finally |well )*(?:on|down|shut|closed|sealed|taped)\b"
    rf"(?: (?:on|for|of) (?:the )?qbin\b| .{{0,40}}\b(?:{_FOR_GOOD})\b|$)"
)
_LID_PUT_ON = Late(
    rf"\b(?:put|got|stuck|popped|snapped|pressed|clipped|clicked|clamped|jammed|screwed|"
    rf"fastened|latched|hammered|pushed|banged) (?:the |its |his |her |their )?lid "
    rf"(?:down |firmly |back )?(?:on|down|shut)\b.{{0,60}}\b(?:{_FOR_GOOD})\b"
)
_BIN_IS = Late(
    r"\bqbin (?:is |'s |was |has been |now |officially |finally |all |got |full and |full so )*"
    r"(?:closed|shut|sealed|locked|lidded|taped|put to bed|closed for business)\b"
)


_FERMENTING = words_in("ferment fermenting fermentation fortnight weeks rest")
_CLOSED = _FERMENTING | words_in("lid closed shut sealed locked lidded taped bed")
"""Words without one of which no other verb than one of sealing tells of it."""
_GONE_TO_FERMENT = Late(
    r"\bqbin (?:is |'s |has |have |now |all |gone |been |officially |finally )*"
    r"(?:off|gone|put away|left|set aside|tucked up|tucked away|away) (?:now )?(?:to|for) "
    r"(?:its |her |his |the )?(?:ferment|fermenting|fermentation|fortnight|two weeks|2 weeks|"
    r"rest)\b"
)


def seal_of(groups: Sequence[Group], k: int) -> Seal | None:
    """The sealing that the k-th group tells of, if it does."""
    group = groups[k]
    sealing = group.verb is not None and group.verb.verb.plain in _SEALING
    if not sealing and not group.message.has(_CLOSED):
        return None
    rule = _by_lid(groups, k) or _by_verb(groups, k)
    if rule is None or is_shut_again(group.message):
        return None
    others = _OTHER_THINGS.intersection(group.free)
    if (is_ahead(group) and "from" not in group.norms) or (
        others and not _is_beside(others, group)
    ):
        return None
    return seal_from(groups, k, rule)


def _is_beside(others: frozenset[str], group: Group) -> bool:
    """ "Sealed the shed, and its tap is leaking": no tap was sealed."""
    norms = group.message.norms
    said = [i for i in range(group.start, group.end) if norms[i] in others]
    return others <= _TAP and all(
        norms[i - 2 : i] in (["and", "its"], ["and", "the"], ["but", "its"], ["but", "the"])
        for i in said
    )


def seal_from(groups: Sequence[Group], k: int, rule: str) -> Seal:
    """The sealing with what the k-th group and its neighbours say of it."""
    day = day_of(groups, k, since=True)
    if not _is_dated(groups[k]):
        day = min(day, groups[k].message.today)  # ahead is when it is ready
    return Seal(bin=bin_of(groups, k), member=member_of(groups, k), on=day, rules=(rule,))


def _is_dated(group: Group) -> bool:
    """Whether a day stands straight behind the sealing and its bin: "sealed the shed tomorrow"."""
    day, verb = said_day(group), group.verb
    if day is None or verb is None or day.start < verb.end:
        return False
    held = indexes(group.bins)
    between = {*unheld(group.message.norms, held, verb.end, day.start)}
    return between <= {"it", "the", "on", "up"}


def _by_lid(groups: Sequence[Group], k: int) -> str | None:
    """ "Lid's on the shed for good", "put the lid on and taped it up"."""
    group = groups[k]
    if group.sense not in ("did", "none") or not _any_bin(groups, k):
        return None
    if "back" in group.norms:
        return None
    if "lid" in group.norms and (
        _LID_ON.search(group.text()) or _LID_PUT_ON.search(sentence_text(groups, k))
    ):
        return "the lid is on"
    if group.message.has(_FERMENTING) and _GONE_TO_FERMENT.search(sentence_text(groups, k)):
        return "a bin has gone to ferment"
    closed = _BIN_IS.search(group.text()) if group.verb is None else None
    if closed and ("sealed" in closed.group() or not _is_room(group) or _is_for_good(group)):
        return "a bin is closed"
    return None


def is_of_tap(message: Message) -> bool:
    """ "1 kg in the shed, tap closed", "closed the shed's tap": all that was shut is a tap."""
    norms = message.norms
    if not message.has(_TAP):
        return False
    named = indexes(message.bins)
    shut = [i for i, norm in enumerate(norms) if norm in _SHUT]
    return bool(shut) and all(
        not _TAP.isdisjoint(norms[max(0, i - 2) : i]) or _first_behind(norms, i, named) in _TAP
        for i in shut
    )


def _first_behind(norms: Sequence[str], i: int, named: frozenset[int]) -> str:
    """The first word behind word i that is neither a bin's name nor an article."""
    behind = range(i + 1, len(norms))
    return next((norms[j] for j in behind if j not in named and norms[j] not in _BEFORE_TAP), "")


_BEFORE_TAP = words_in("the its my our 's s ' off up bin little drain")
_SHUT = words_in("closed shut sealed seal close locked lidded lid lids taped")
_LIDS = words_in("lid lids")
_LID_STATE = Late(
    r"\blids?(?: (?:on|of|for) (?:the |our |my )?qbin)? (?:is|'s|are|was|has|looks?|feels?|keeps?) "
    r"(?P<state>[^.,;:!?]+)"
)
_LID_WANTED = Late(
    r"\b(?:needs?|wants?|without|lost|lacks?|no|broke|cracked|missing) "
    r"(?:(?:its|her|his|the|a|our|my|new|another) )*lid\b"
)
_FAST = _SHUT | words_in(
    "on down tight taped tape clamped snapped pressed clipped clicked screwed fastened latched "
    "tighter cinched moved touched secure secured weighted strapped bolted nailed glued firm firmly"
)


def is_lid_open(message: Message) -> bool:
    """ "Rosie's lid is broken", "green needs its lid on": that shuts none."""
    if not message.has(_LIDS) or message.has(_SHUT - _LIDS):
        return False
    text = plain_text(message)
    states = [found["state"].split() for found in _LID_STATE.finditer(text)]
    if states:
        return all(_FAST.isdisjoint(state) for state in states)
    return _LID_WANTED.search(text) is not None


def _by_verb(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    norms = group.norms
    if group.verb is None or group.sense != "did" or group.verb.verb.plain not in _SEALING:
        return None
    plain = group.verb.verb.plain
    if "lid" in norms and plain in ("close", "shut") and not group.bins:
        return None
    if is_of_tap(group.message):
        return None
    if _by_another(group) or (_is_room(group) and _with_material(group)):
        return None
    if "lid" in norms and plain not in ("close", "shut") and _any_bin(groups, k):
        return "the lid was sealed"
    if group.bins and (plain in _SURELY or not _is_place_alone(group) or _is_for_good(group)):
        return "a bin was sealed"
    if plain in _SURELY and is_of_unnamed_bin(groups, k):
        return "a bin not named was sealed"
    means_it = any(w in _MEANT for w in norms) or (len(norms) <= 3 and not group.bins)
    if means_it and _any_bin(groups, k) and plain in _SEALING - {"lock", "tape", "cap"}:
        return "it was sealed"
    return None


def _by_another(group: Group) -> bool:
    """ "Sealed up by the last owner": somebody outside the group did it."""
    assert group.verb is not None
    norms = group.message.norms
    for i in range(group.verb.end, group.end - 1):
        if norms[i] == "by":
            members = any(m.start == i + 1 for m in group.message.members)
            return not members and norms[i + 1] in ("the", "a", "my", "his", "her", "some", "last")
    return False


def _with_material(group: Group) -> bool:
    """ "Sealed the roof with 5 litres of bitumen": building work."""
    return "with" in group.norms and not _SEALANTS.isdisjoint(group.norms)


_SEALANTS = words_in("bitumen resin silicone sealant paint varnish foam cement grout mortar tar")


def _is_room(group: Group) -> bool:
    return all(b.place and not b.plain for b in group.bins)


def _is_place_alone(group: Group) -> bool:
    """ "Closed the kitchen", "the bar is closed": said of a room."""
    assert group.verb is not None
    norms, verb = group.message.norms, group.verb.start
    named = all(norms[b.start - 1 : b.start] == ["the"] or b.end <= verb for b in group.bins)
    return _is_room(group) and named


def _is_for_good(group: Group) -> bool:
    text = group.text()
    if group.verb is not None:
        done = group.message.norms[group.verb.start : group.verb.end]
        text = f" {text} ".replace(f" {' '.join(done)} ", " ", 1)
    return re.search(rf"\b(?:{_FOR_GOOD}|full)\b", text) is not None


def _any_bin(groups: Sequence[Group], k: int) -> bool:
    return any(g.bins for g in groups) or groups[k].message.context.after_bot


_HUSH = Late(
    r"(?:(?:oh|ah|ok|okay|hey|just|please|pls|now|will|would|can|could|you|qmember|,) )*"
    r"shut (?P<what>up|it)"
    r"(?: (?:,|[!.?☺]|qmember|already|now|please|pls|will|would|you|then|mate|lol|haha|lot))*"
)


def is_hush(message: Message) -> bool:
    """ "Bot, shut up", "oh shut it Gus": somebody is to be silent."""
    if not message.has(HUSHED):
        return False
    members = {i: ref for ref in message.members for i in range(ref.start, ref.end)}
    said = ["qmember" if i in members else norm for i, norm in enumerate(message.norms)]
    found = _HUSH.fullmatch(" ".join(w for i, w in enumerate(said) if i not in message.bot))
    return found is not None and (found["what"] == "up" or bool(message.members))


HUSHED = words_in("shut")


def is_sealed_before(message: Message) -> bool:
    """ "Added 500 g after it was sealed": it only says when something else was done."""
    if not message.has(BEFORE):
        return False
    text = plain_text(message)
    so_long = is_asking(message) and _SEALED_SO_LONG.search(text) is not None
    return so_long or any(p.search(text) for p in (_SEALED_BEFORE, _DAYS_SHUT))


BEFORE = words_in("after since been day days week weeks fortnight")
_DAYS_SHUT = Late(
    r"\b(?:is |'s |now )*(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|\d+) "
    r"(?:full |whole |good )?(?:days?|weeks?|fortnight) (?:closed|shut|sealed)\b"
    r"(?! (?:up )?(?:the|it|him|her|them|both|qbin)\b)(?!.*\b(?:closed|shut|sealed))"
)
""" "Shed 3 days shut, a bit of a hiss": for how long, and no deed of today."""
_SEALED_SO_LONG = Late(
    r"\bbeen (?:sealed|shut|closed)(?: up| tight| down)? (?:(?:for|near|nearly|about|over|almost|"
    r"some|nigh on|coming up|close on|getting on|pushing|going on|"
    r"now|roughly|around|just|exactly|well) )*(?:an?|one|two|three|four|five|six|ten|twelve|"
    r"fourteen|"
    r"\d+) (?:full |whole |good )?(?:days?|weeks?|fortnights?|months?)\b"
)
"""How long it is sealed by now, as it is told before a question."""
_SEALED_BEFORE = Late(
    r"\b(?:after|since) (?:the )?(?:it|qbin|he|she|that|this) (?:(?:was|is|'s|has|had|been|got|"
    r"already) )+(?:sealed|shut|closed)\b(?!.*\b(?:sealed|shut|closed))"
)
