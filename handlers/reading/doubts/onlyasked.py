"""Deeds that are only asked about: "did 2 kg go in the shed?", "we sealed the blue bin?".

What a question turns round ("did", "is it true that") or asks of another ("you drained it?") is
told by nobody; a statement with a question mark right behind it may be told, and is asked
about first.
"""

from collections.abc import Sequence
from enum import Enum, auto

from handlers.reading.acts import Act, Ask, Batch, Bury, Drain, Layer, Open, Seal, Unsure, meant
from handlers.reading.message import Message
from handlers.reading.words.asking import head_of
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.sentences import Clause, Sentence
from handlers.reading.words.vocabulary import verb_words, words_in

_DEEDS = Layer | Drain | Seal | Bury | Open | Batch
_CUES = words_in("? did didnt")
_DID = words_in("did didnt has hasnt have havent had was wasnt were werent")
_IS = words_in("is isnt are arent am do does")
_DOING = words_in("go end get come land put add make")
"""Verbs behind an unmarked "did" and the thing it asks of; "did the bran, did the lid" has none."""
_BELIEVED = frozenset(
    tuple(turn.split())
    for turn in (
        "is it true", "is it right", "is it so", "is that true", "are you sure", "are we sure",
        "am i right", "am i correct", "do you think", "do we know", "do you know",
        "do you remember",
    )
)  # fmt: skip
_TAGS = frozenset(
    tuple(tag.split())
    for tag in (
        "ok", "okay", "alright", "all right", "fine", "good", "cool", "right", "yes", "yeah",
        "yep", "no", "correct", "true", "innit", "eh", "huh", "or not",
        "is that right", "is that so", "is that true", "am i right", "didnt we", "didnt you",
        "didnt they", "didnt he", "didnt she", "isnt it", "wasnt it", "hasnt it", "or what",
    )
)  # fmt: skip
_LONGEST_TAG = max(map(len, _TAGS))
_SOFT = words_in(", ( ) - ' \" ! .")
_TELLERS = words_in("i ive")
_ASKED_ONES = words_in("you u ye ya youse yous y'all")


class _Asked(Enum):
    """How a sentence asks about a deed."""

    TURNED = auto()
    """As a question alone: nothing is told."""
    MARKED = auto()
    """As a statement with a question mark: it may be told."""


def without_only_asked(acts: Sequence[Act], message: Message) -> tuple[Act, ...]:
    """The acts without the deeds that are only asked about, and with those in doubt to be asked."""
    if not message.has(_CUES) or not any(isinstance(meant(act), _DEEDS) for act in acts):
        return tuple(acts)
    questions = any(isinstance(act, Ask) for act in acts)
    kinds = frozenset(meant(act).act for act in acts if isinstance(meant(act), _DEEDS))
    asked = {
        sentence: how
        for sentence in message.sentences
        if (how := _asked(sentence, message, kinds, beside=questions)) is not None
    }
    if not asked:
        return tuple(acts)
    out: list[Act] = []
    for act in acts:
        telling = _telling(act, message) if isinstance(meant(act), _DEEDS) else []
        only = bool(telling) and all(sentence in asked for sentence in telling)
        if not only or _told_behind(act, telling[-1].end, message):
            out.append(act)
        elif any(asked[sentence] is _Asked.MARKED for sentence in telling):
            first = act if isinstance(act, Unsure) else Unsure(guess=(act,), rules=("asked",))
            out.append(first)
    return tuple(out)


def _telling(act: Act, message: Message) -> list[Sentence]:
    """The sentences that may tell of a deed, by its verb or an amount, where its bin is named."""
    kinds = frozenset({meant(act).act})
    may = [
        s
        for s in message.sentences
        if any(_is_deed(clause, kinds) for clause in _clauses(s, message))
        or any(s.start <= a.start < s.end for a in message.measured())
    ]
    there = [ref.start for ref in _refs(act, message)]
    return (
        [s for s in may if any(s.start <= at < s.end for at in there)] or may or message.sentences
    )


def _refs(act: Act, message: Message) -> list[BinRef]:
    bin = getattr(meant(act), "bin", None)
    return [ref for ref in message.bins if bin is not None and ref.name == bin]


def _told_behind(act: Act, end: int, message: Message) -> bool:
    """ "Who fed the shed? I did", "2 loaves gone green?? it's in bin 3 now, 1.6 kg": whether words
    behind the question answer it, or tell the deed's amount, its day or its bin.
    """
    behind = message.norms[end:]
    if behind[1:2] == ["or"]:
        return True  # "2 kg in blue? or was it the shed": the bin alone is in doubt
    for who, so, no in zip(behind, behind[1:], [*behind[2:], ""], strict=False):
        if who in _WHO and so in _SO and no not in _NOT:
            return True
    at = end + head_of(behind, frozenset({"?"}))
    if any(ref.start == at for ref in message.members):
        return True
    measured = [amount for amount in message.measured() if amount.start >= end]
    if any(amount.value in _amounts(meant(act)) for amount in measured):
        return True
    on = getattr(meant(act), "on", None)
    if any(day.start >= end and on in (day.past, day.future) for day in message.days):
        return True
    refs = _refs(act, message)
    answered = not _ANSWERS.isdisjoint(behind[:2]) and any(ref.start >= end for ref in refs)
    return answered or (bool(refs) and all(ref.start >= end for ref in refs))


_ANSWERS = words_in("no yes yep yeah nope aye")
_WHO = words_in("i we he she they it that this")
_SO = words_in("did has have was is were 's")
_NOT = words_in("not nt never")


def _amounts(deed: Act) -> tuple[float, ...]:
    measured = (getattr(deed, field, None) for field in ("mass_kg", "volume_l", "capacity_l"))
    return tuple(value for value in measured if value is not None)


def _clauses(sentence: Sentence, message: Message) -> list[Clause]:
    return [c for c in message.clauses if sentence.start <= c.start < sentence.end]


def _is_deed(clause: Clause, kinds: frozenset[str]) -> bool:
    return clause.verb is not None and not kinds.isdisjoint(clause.verb.verb.classes)


def _asked(
    sentence: Sentence, message: Message, kinds: frozenset[str], *, beside: bool
) -> _Asked | None:
    """How a sentence asks about deeds of those kinds, if it does; `beside` a question found."""
    norms = message.norms[sentence.start : sentence.end]
    names = frozenset(message.norms[m.start] for m in message.members)
    names |= {message.norms[i] for i in message.bot}
    k = head_of(norms, names)
    if k >= len(norms):
        return None
    marked = message.norms[sentence.end : sentence.end + 1] == ["?"]  # its own, and no other's
    if tuple(norms[k : k + 3]) in _BELIEVED and marked:
        return _Asked.TURNED
    if not marked:
        return _Asked.TURNED if _asks_unmarked(norms[k:]) else None
    after = norms[k + 1] if k + 1 < len(norms) else ""
    turned = norms[k] in _DID or (norms[k] in _IS and not beside)
    if turned and after and after not in verb_words():
        return _Asked.TURNED
    return None if beside else _marked(sentence, message, kinds)


def _asks_unmarked(norms: Sequence[str]) -> bool:
    """ "Did a kilo of peelings end up in the blue bin": asked without a sign."""
    if norms[0] not in ("did", "didnt"):
        return False
    stop = next(
        (i for i, norm in enumerate(norms) if norm in _SOFT or norm in _JOINING), len(norms)
    )
    return any(
        norm in _DOING and norms[i - 1] not in ("to", "the", "a", "did", "not")
        for i, norm in enumerate(norms[:stop])
        if i > 1
    )


_JOINING = words_in("and & then but so because : ; —")


def _marked(sentence: Sentence, message: Message, kinds: frozenset[str]) -> _Asked | None:
    """How a statement that ends with a question mark asks, if its deed stands right before it."""
    end, tagged = _without_tag(sentence, message)
    clauses = [c for c in _clauses(sentence, message) if c.start < end]
    if not clauses or not _holds_all(clauses[-1], sentence, message):
        return None
    last = clauses[-1]
    lead = message.norms[last.start : last.verb.start if last.verb else last.start]
    if not _is_deed(last, kinds):
        bare = last.verb is None and not tagged and bool(message.measured())
        return _Asked.MARKED if bare and not _exclaims(sentence, message) else None
    if not _ASKED_ONES.isdisjoint(lead):
        return _Asked.TURNED
    told = not lead or not _TELLERS.isdisjoint(lead)
    return None if tagged and told else _Asked.MARKED


def _holds_all(clause: Clause, sentence: Sentence, message: Message) -> bool:
    """Whether the last clause of a sentence, that the mark is of, tells the bin or the amount."""
    named = [ref.start for ref in message.bins if sentence.start <= ref.start < sentence.end]
    measured = [a.start for a in message.measured() if sentence.start <= a.start < sentence.end]
    if clause.verb is None:
        return any(at >= clause.start for at in named) and min(measured, default=0) >= clause.start
    return all(at >= clause.start for at in named or measured)


def _exclaims(sentence: Sentence, message: Message) -> bool:
    """ "1.2 L out of the shed?!": wonder at what was found."""
    return message.norms[sentence.end + 1 : sentence.end + 2] in (["?"], ["!"])


def _without_tag(sentence: Sentence, message: Message) -> tuple[int, bool]:
    """Where a sentence ends without the "right?" behind it, and whether there is one."""
    norms = message.norms
    if norms[sentence.end - 1] == ",":  # "..., ok?": a courtesy that was left out
        return sentence.end - 1, True
    for length in range(_LONGEST_TAG, 0, -1):
        at = sentence.end - length
        if at > sentence.start and tuple(norms[at : sentence.end]) in _TAGS:
            while at > sentence.start and norms[at - 1] in _SOFT:
                at -= 1
            return at, True
    return sentence.end, False
