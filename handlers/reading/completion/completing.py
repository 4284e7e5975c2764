"""What the whole message adds to its acts: the bin and day it names, amounts of other sentences."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from handlers.reading.acts import (
    Act,
    Amend,
    Batch,
    Bury,
    Drain,
    Layer,
    Observe,
    Open,
    Retract,
    Seal,
    Unsure,
)
from handlers.reading.arrangements.finished import without_drained
from handlers.reading.arrangements.handedon import handed_on
from handlers.reading.arrangements.moresettings import with_further_settings
from handlers.reading.bins.givennames import given_name, vessel_as_name
from handlers.reading.bins.lonebins import asked_of_bin, lone_bin
from handlers.reading.completion.allotted import allotted, halved
from handlers.reading.completion.apart import drained_apart, told_apart
from handlers.reading.completion.begun import in_opened, unsized
from handlers.reading.completion.binlists import (
    LISTED,
    of_each_bin,
    on_several,
    shared_out,
    with_the_rest,
)
from handlers.reading.completion.described import described
from handlers.reading.completion.drawnoff import (
    drained_only,
    drained_volume,
    volume_left,
    without_false_drains,
)
from handlers.reading.completion.eachday import on_each_day
from handlers.reading.completion.elsewhere import measured_elsewhere
from handlers.reading.completion.enumerated import enumerated
from handlers.reading.completion.figures import drawn_from
from handlers.reading.completion.lastword import settled_at_last
from handlers.reading.completion.placedlater import placed_later
from handlers.reading.completion.portions import portioned
from handlers.reading.completion.undivided import asked_to_divide
from handlers.reading.completion.unlike import parted
from handlers.reading.completion.wholelayer import one_each, whole_layer
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.corrections.splitright import split_right
from handlers.reading.deeds.measuredapart import measured_apart
from handlers.reading.deeds.openings import all_opened
from handlers.reading.deeds.told import deeds
from handlers.reading.measures.retold import is_repair
from handlers.reading.message import Message
from handlers.reading.people.carried import put_in_by_us
from handlers.reading.questions.severally import each_asked
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.vocabulary import words_in


def completed(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, each in the bin that the message names and with what is told elsewhere in it."""
    if len(acts) == 1 and isinstance(acts[0], Unsure):  # what a "yes" would write down
        return [replace(acts[0], guess=tuple(completed(acts[0].guess, message)))]
    acts = drained_only(unsized(_with_amounts(acts, message)), message)
    acts = _put_right(without_false_drains(acts, message), message)
    acts = described(measured_elsewhere(_without_echoes(acts, message), message), message)
    acts = measured_apart(acts, message)
    acts = [_lying_since(act, message) for act in _on_one_day(acts, message)]
    acts = [_not_by_bin(act, message) for act in put_in_by_us(acts, message)]
    layers = [act for act in acts if isinstance(act, Layer)]
    drains = sum(isinstance(act, Drain) for act in acts)
    weighed = len(layers) == drains == 1 and layers[0].mass_kg is not None
    if len(layers) + drains == 1 or weighed:
        alone = not weighed
        acts = [
            settled_at_last(act, message) if alone or isinstance(act, Drain) else act
            for act in acts
        ]
    acts = asked_to_divide(with_further_settings(acts, message), message)
    if not message.context.in_room:
        return acts
    acts = on_each_day(acts, message)
    acts = handed_on(each_asked(split_right(without_drained(acts), message), message), message)
    acts = [_as_before(_struck_in(act, message), message) for act in acts]
    acts = with_the_rest(acts, message)
    return [_in_it(on_several(act, message), message) for act in acts]


def _as_before(act: Act, message: Message) -> Act:
    """ "Same again", "same as Monday": as much as the sender's last layer, or as that of the day,
    where nothing else is told of it."""
    if "same" not in message.said or message.items or not isinstance(act, Layer):
        return act
    if act.mass_kg or act.volume_l or act.member:
        return act
    like = [d.past for d in message.days if message.norms[d.start - 1 : d.start] == ["as"]]
    if len(like) == 1 and like[0] != act.on:
        return replace(act, same=True, like=like[0])
    leans = message.norms[:2] in (["same", "again"], ["same", "amount"])
    return replace(act, same=True) if leans else act


def _in_it(act: Act, message: Message) -> Act:
    """ "Put 2 kg in it": into the bin just spoken of, which may be another than the last fed."""
    if not isinstance(act, Layer) or act.bin is not None or message.bins:
        return act
    led = any(a in _INTO and b in _IT for a, b in pairwise(message.norms))
    return replace(act, in_it=True) if led else act


_INTO = words_in("in into to")
_IT = words_in("it there her him")


def _struck_in(act: Act, message: Message) -> Act:
    """ "Scratch that last one in the shed": the bin whose record is to be struck out."""
    if not isinstance(act, Retract):
        return act
    end = message.sentences[0].end if message.sentences else 0
    led = {r for r in message.bins if 0 < r.start < end and message.norms[r.start - 1] in _IN}
    named = {ref.name for ref in message.bins if ref.known and (ref.plain or ref in led)}
    return replace(act, bin=named.pop()) if len(named) == 1 else act


_IN = words_in("in into from of off for")


def _on_one_day(acts: list[Act], message: Message) -> list[Act]:
    """ "Tom sealed the shed, I sealed the hall, both yesterday": the day of every report."""
    if not message.days:
        return acts
    norms = message.norms
    told = [d for d in message.days if d.start and not d.aside]
    said = [d for d in told if norms[d.start - 1] in ("both", "all")]
    if len(said) != 1 or said[0].past > message.today:
        return acts
    return [
        replace(act, on=said[0].past)
        if isinstance(act, Layer | Drain | Seal) and act.on == message.today
        else act
        for act in acts
    ]


def _not_by_bin(act: Act, message: Message) -> Act:
    """ "Earl got 1 kg of peel": the bin that is called as a member is, and nobody's deed."""
    if not isinstance(act, Layer) or act.member is None or act.bin is None:
        return act
    same = act.member.casefold() == act.bin.casefold()
    return replace(act, member=None) if same and _called_once(act.bin, message) else act


def _called_once(name: str, message: Message) -> bool:
    return message.norms.count(name.casefold()) == 1


def _lying_since(act: Act, message: Message) -> Act:
    """ "The carcass is in the shed since last night": the day on which it went in."""
    if not isinstance(act, Layer) or act.on != message.today or "since" not in message.said:
        return act
    ends = {b.end for b in message.bins}
    since = [d for d in message.days if message.norms[d.start - 1 : d.start] == ["since"]]
    days = [d.past for d in since if d.start - 1 in ends or _lies_there(message, d.start - 2)]
    return replace(act, on=days[0]) if len(days) == 1 and days[0] <= message.today else act


def _lies_there(message: Message, i: int) -> bool:
    return message.norms[max(0, i - 1) : i + 1] == ["in", "there"]


def _put_right(acts: list[Act], message: Message) -> list[Act]:
    """ "The shed was actually buried yesterday": the deed that the talk is on, no second one."""
    last = spoken_of(message)
    if not isinstance(last, Seal | Bury) or not any(isinstance(act, Amend) for act in acts):
        return acts
    return [act for act in acts if type(act) is not type(last) or act.bin != last.bin]


def _without_echoes(acts: list[Act], message: Message) -> list[Act]:
    """ "It was Kofi who sealed the roof", "2 kg to the shed, not the hall": a report that says all
    that it seems to correct.
    """
    amends = [a for a in acts if isinstance(a, Amend)]
    if not amends:
        return acts
    told = [a for a in acts if isinstance(a, Layer | Drain | Seal | Open | Bury | Batch)]
    alone = len(message.sentences) == 1
    last = spoken_of(message)
    refused = {
        one.name
        for one, other in pairwise(message.bins)
        if is_repair(message.norms[one.end : other.start])
    }
    echoed = [
        a
        for a in amends
        if any(_echoes(a, b, last, alone=alone) for b in told)
        or (told and a.bin and a.bin in refused)
    ]
    return [a for a in acts if a not in echoed]


def _echoes(amend: Amend, act: Act, last: Act | None, *, alone: bool) -> bool:
    """Whether a report says all that an amendment does: its day, too, if it is of another kind
    than the record in talk.
    """
    said = ("mass_kg", "volume_l", "materials", "bin", "member", "on")
    given = {name: getattr(amend, name) for name in said if getattr(amend, name) is not None}
    of_else = last is not None and last.act != act.act and amend.on is not None
    whole = alone and bool(amend.bin and (amend.mass_kg or amend.volume_l or of_else))
    return (whole or amend.member is not None) and all(
        getattr(act, name, None) == value for name, value in given.items()
    )


def _with_amounts(acts: Sequence[Act], message: Message) -> list[Act]:
    acts = asked_of_bin(acts, message)
    acts = [_in_bin(act, message) if isinstance(act, Open) else act for act in acts]
    acts = enumerated([_in_bin(act, message) for act in in_opened(acts, message)], message)
    acts = all_opened(acts, message)
    if len(acts) > 1 and deeds(message) < 2:
        acts = one_each(acts)
    if any(isinstance(act, LISTED) for act in acts):
        acts = of_each_bin(acts, message)
    shared = _allotted(acts, message)
    if shared:
        return shared
    kinds = [act.act for act in acts]
    layers, drains = kinds.count("layer"), kinds.count("drain")
    out: list[Act] = []
    for act in acts:
        if isinstance(act, Layer) and layers == 1:
            whole = whole_layer(act, acts, message)
            apart = shared_out(whole, message) or ([] if drains else told_apart(whole, message))
            halves = halved(whole, message)
            out += apart or ([halves] if drains else parted(halves, message))
        elif (
            isinstance(act, Drain)
            and drains == 1
            and (each := [] if layers else drained_apart(act, message))
        ):
            out += each
        elif isinstance(act, Drain) and drains == 1 and act.volume_l is None:
            volume = volume_left(message, acts) if layers else drained_volume(message)
            out.append(replace(act, volume_l=volume, bin=drawn_from(message) or act.bin))
        else:
            out.append(act)
    return out


def _allotted(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts with the layers as one lot was shared out; none where nothing was."""
    layers = [act for act in acts if isinstance(act, Layer)]
    parts = placed_later(layers, message) if layers else []
    parts = parts or ((portioned(layers, message) or allotted(layers, message)) if layers else [])
    if not parts or {(p.bin, p.mass_kg) for p in parts} == {(a.bin, a.mass_kg) for a in layers}:
        return []
    return [*parts, *(act for act in acts if not isinstance(act, Layer))]


def _in_bin(act: Act, message: Message) -> Act:
    """An act without a bin is of the one whose name stands somewhere in the message."""
    if getattr(act, "bin", "") is not None:  # starter is in no bin
        return act
    if isinstance(act, Open):
        given = given_name(message) or vessel_as_name(message) or lone_bin(message)
        if given is not None:
            own = (name for name in message.context.bins if name.casefold() == given.casefold())
            return replace(act, bin=next(own, given))
    names = {ref.name for ref in message.named}
    if isinstance(act, Layer | Drain | Seal | Observe):
        names |= {ref.name for ref in message.bins if ref.name is not None}
    if isinstance(act, Open) and (_is_anew(message) or _is_begun_now(message)):
        names |= {ref.name for ref in message.bins if ref.known and ref.name is not None}
    return replace(act, bin=names.pop()) if len(names) == 1 else act  # type: ignore[arg-type]


def _is_anew(message: Message) -> bool:
    """ "Shed started afresh", but not "sealed bin 5, started a fresh one"."""
    pairs = list(pairwise(message.norms))
    if any(a in _BEGAN and b == "over" for a, b in pairs):
        return True
    if not message.has(_ANEW):
        return False
    return not any(a == "fresh" and (b == "one" or b in BIN_WORDS) for a, b in pairs)


def _is_begun_now(message: Message) -> bool:
    """ "Doris is idle no longer. Started it today", "opened spare as well": a bin known before."""
    norms = message.norms
    if "it" in norms and any(a in _BEGAN and b == "it" for a, b in pairwise(norms)):
        return True
    return any(b.known and b.start and norms[b.start - 1] in _BEGAN for b in message.bins)


_BEGAN = words_in("started start starts opened began begun")
_ANEW = words_in("fresh afresh restarted restart reopened again relaunched")
