"""What was drawn off and what went in, told apart where one message may tell of both."""

from collections.abc import Sequence

from handlers.reading.acts import Act, Drain, Layer, Observe
from handlers.reading.completion.figures import bare_volume
from handlers.reading.deeds.liquid import drawn, litres
from handlers.reading.food.ofwhat import of_what
from handlers.reading.grouping import whole_of
from handlers.reading.message import Message
from handlers.reading.supplied import SURE
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


def drained_only(acts: list[Act], message: Message) -> list[Act]:
    """ "Navy had a dribble for me, 30 ml": one volume of nothing named is no layer besides."""
    drained = any(isinstance(act, Drain) for act in acts)
    if not drained and not message.items and message.has(_DRIBBLES):
        acts = [_as_drain(act) if isinstance(act, Layer) and act.volume_l else act for act in acts]
    out = {(a.bin, a.volume_l) for a in acts if isinstance(a, Drain) and a.volume_l}
    if not out or any(item.food.shares[0][0] != "liquid" for item in message.items):
        return acts
    bins = {name for name, _ in out}
    loose = {a.value for a in message.amounts if a.vessel}
    kept = [a for a in acts if not (isinstance(a, Layer) and (a.bin, a.volume_l) in out)]
    return [
        _as_drain(a)
        if isinstance(a, Layer) and a.volume_l and a.volume_l not in loose and a.bin in bins
        else a
        for a in kept
    ]


_DRIBBLES = words_in("dribble dribbles trickle drips drip squirt drizzle")


def _as_drain(layer: Layer) -> Drain:
    return Drain(
        volume_l=layer.volume_l,
        bin=layer.bin,
        member=layer.member,
        on=layer.on,
        rules=layer.rules,
    )


def without_false_drains(acts: list[Act], message: Message) -> list[Act]:
    """ "Fryer oil, a quart and a half, bucket 1": what went in did not come out besides, unless
    something is said of draining."""
    layers = [act for act in acts if isinstance(act, Layer)]
    if layers and message.has(_REST) and _is_poured_off_food(message):
        acts = [act for act in acts if not isinstance(act, Drain) or act.volume_l]
    seen = any(isinstance(act, Observe) for act in acts)
    if message.has(_DRAINING) or message.liquid() or not (seen or (layers and message.items)):
        return acts
    went_in = {None, *(layer.volume_l for layer in layers)}
    if seen:  # "black spots, I took them out with a spoon"
        went_in |= {a.value for a in message.amounts if a.vessel}
    return [
        act
        for act in acts
        if not (isinstance(act, Drain) and act.rules == (SURE,) and act.volume_l in went_in)
    ]


def _is_poured_off_food(message: Message) -> bool:
    """ "Poured off the liquid first and put the rest in blue": no bin stands before the rest."""
    rest = next(i for i, norm in enumerate(message.norms) if norm in _REST)
    text = " ".join(message.norms)
    return all(b.start > rest for b in message.bins) and _REST_PUT_IN.search(text) is not None


_REST = words_in("rest solids")
_REST_PUT_IN = Late(
    r"\b(?:poured|drained|strained|tipped|squeezed|let) (?:off |out |away )?(?:the |its |all the )?"
    r"(?:liquid|juice|sauce|water|soup|brine|gravy|broth|oil|it|milk|fat|wet)\b.{0,40}"
    r"\b(?:the )?(?:rest|solids) (?:of it |went |goes |is |are )?(?:straight )?(?:in|into|to)\b|"
    r"\b(?:put|added|threw|tipped) (?:in )?(?:the |only the |just the )?(?:rest|solids)\b"
)
_DRAINING = words_in(
    "drain drains drained draining drainings drian drianed drew drawn draw tap taps tapped tapping "
    "spigot bled siphoned decanted"
)


def drained_volume(message: Message) -> float | None:
    """Litres that the whole message tells of a draining: all of them, or the only one."""
    whole = whole_of(message)
    told = None if whole is None or whole.solids() else litres(drawn(whole))
    if told is not None:
        return told
    exact = [a for a in message.amounts if a.quantity == "volume" and not a.vessel and not a.size]
    told_of = len(exact) == 1 and not _is_supposed(message, exact[0].start)
    return exact[0].value if told_of else bare_volume(message)


def _is_supposed(message: Message, i: int) -> bool:
    """Whether what the clause of word i tells did not happen: an order to drain is none such."""
    clause = message.clause_at(i)
    if clause is None or clause.sense not in SUPPOSED:
        return False
    words = message.norms[clause.start : clause.end]
    return clause.sense == "if" or not _AHEAD.isdisjoint(words)


_AHEAD = words_in("will 'll gonna going shall could would should can might may must need to want")
SUPPOSED = frozenset({"if", "will", "habit"})
"""Senses of a clause whose deed may never have been done."""


def volume_left(message: Message, acts: Sequence[Act]) -> float | None:
    """The one volume that no layer of the message has, in a clause that tells what was."""
    layers = [act for act in acts if isinstance(act, Layer)]
    if any(layer.mass_kg is None for layer in layers):
        return None
    exact = [a for a in message.amounts if a.quantity == "volume" and not a.vessel and not a.size]
    if not exact:
        return bare_volume(message)
    told = len(exact) == 1 and message.sense_at(exact[0].start) in ("did", "none")
    return exact[0].value if told and of_what(message, exact[0]) in ("", "liquid") else None
