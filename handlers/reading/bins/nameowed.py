"""The name of a bin that was begun without one: "green, 20 litres" behind "new bin please"; one
that the neighbours settle on, "Hector it is, 20 litres"; and that of "a second one".
"""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Amend, Bury, Drain, Open, Seal, Unsure
from handlers.reading.bins.binforms import siblings
from handlers.reading.bins.rollread import stands_alone
from handlers.reading.bins.sizes import SMALLEST_BARE
from handlers.reading.message import Message
from handlers.reading.words.binwords import BIN_WORDS, PLACE_NAMES, TOLD_BY
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import vocabulary, words_in
from handlers.reading.words.words import Word

_NAMELESS = Late(r"bin \d+")
"""What a bin is called that nobody has named."""
_LED = words_in("it is 's its name called call the our we for will be in")
_BEHIND = words_in("bin bucket pail caddy tub please pls thanks ta one holds takes about and . !")
_APART = words_in(", : ; - ( ) \n")
_NO_NAME = words_in(
    "great ok okay yes yep cool lovely perfect right sure thanks hi hello about now"
)
_LONGEST = 12


def name_owed(message: Message) -> Amend | None:
    """What the bin just begun is called, with its size or not, if no more is said."""
    last = message.context.last
    if not isinstance(last, Open) or last.capacity_l or not last.bin or not message.words:
        return None
    if _NAMELESS.fullmatch(last.bin) is None or len(message.norms) > _LONGEST:
        return None
    if message.asked or message.days:
        return None
    sizes = [a for a in message.amounts if a.quantity == "volume" and a.value >= SMALLEST_BARE]
    if len(sizes) != len(message.amounts) or len(sizes) > 1:
        return None
    held = {i for a in sizes for i in range(a.start, a.end)}
    said = [i for i in range(len(message.norms)) if i not in held]
    while said and message.norms[said[0]] in _LED:
        del said[0]
    while said and message.norms[said[-1]] in _BEHIND | _APART:
        del said[-1]
    name = message.text(said[0], said[-1] + 1) if said else ""
    alone = len(said) == 1 and message.norms[said[0]] in TOLD_BY | PLACE_NAMES
    if not alone and not (sizes and _may_be_called(said, message)):
        return None
    known = [bin.casefold() for bin in message.context.bins]
    if name.casefold() in known:
        return None
    return Amend(
        bin=name,
        capacity_l=sizes[0].value if sizes else None,
        rules=("the name of a bin begun without one",),
    )


def _may_be_called(said: list[int], message: Message) -> bool:
    """Whether one or two words in a row, each a name, are all that is left beside the size."""
    if not 0 < len(said) <= 2 or said[-1] - said[0] + 1 != len(said):
        return False
    words = [message.words[i] for i in said]
    names = all(w.kind == "word" and stands_alone(w.text) for w in words)
    plain = all(w.norm not in vocabulary() or w.norm in TOLD_BY | PLACE_NAMES for w in words)
    return names and plain and _NO_NAME.isdisjoint(w.norm for w in words)


_SETTLED = Late(
    r"(?:(?:ok|okay|lol|haha|right|so|then|well|yes|yep|fine|and|ah|lets|let|'s|we|will|'ll|shall|"
    r"ill|i|,|\.|!) )*"
    r"(?:qname it is|(?:call|name|christen|baptise|dub) (?:it|him|her|(?:the|our) (?:new )?"
    r"(?:bin|bucket|pail|one)) qname|(?:his|her|its|the) name (?:is|'s) qname)"
    r"(?: (?:then|lol|haha|,|\.|!|:|;|-|he|she|it|is|'s|holds|takes|and))*"
)
_BESIDE_NAME = words_in(
    "ok okay lol haha right so then well yes yep fine and ah lets let we shall ill i he she it his "
    "her its the our call name christen baptise dub"
)
_CUES = words_in("it him her name call christen baptise dub")


def name_settled(message: Message) -> Act | None:
    """The new bin of which the name is agreed with its size and no more is said: asked about where
    nothing else tells that it is one.
    """
    if not message.has(_CUES) or len(message.norms) > _LONGEST + 8:
        return None
    sizes = [a for a in message.amounts if a.quantity == "volume" and a.value >= SMALLEST_BARE]
    if len(sizes) != 1 or len(message.amounts) > 1 or message.members or message.days:
        return None
    held = range(sizes[0].start, sizes[0].end)
    names = [i for i, word in enumerate(message.words) if _is_name(word) and i not in held]
    if not names or names[-1] - names[0] >= len(names):
        return None
    first, end = names[0], names[-1] + 1
    norms = [norm for i, norm in enumerate(message.norms) if i not in held and i not in names[1:]]
    norms[first - sum(i < first for i in held)] = "qname"
    if _SETTLED.fullmatch(" ".join(norms)) is None:
        return None
    found = Open(
        bin=message.text(first, end),
        capacity_l=sizes[0].value,
        on=message.today,
        rules=("the name of a new bin was agreed",),
    )
    sure = message.context.of_bins or message.has(BIN_WORDS)
    return found if sure else Unsure(guess=(found,), rules=found.rules)


def _is_name(word: Word) -> bool:
    """Whether it is written as a name and known for nothing else."""
    plain = word.norm in vocabulary() and word.norm not in TOLD_BY
    plain = plain or word.norm in _BESIDE_NAME
    return word.kind == "word" and word.text[:1].isupper() and not plain and len(word.text) > 1


_FURTHER = Late(
    r"\b(?P<which>second|third|fourth|2 nd|3 rd)(?: new)? "
    rf"(?:one|{'|'.join(sorted(BIN_WORDS))})\b(?! in\b)"
)


def named_beside(acts: Sequence[Act], message: Message) -> tuple[Act, ...]:
    """The acts, with a name for "a second one" that is begun beside the only bin: its own, with
    the number behind it.
    """
    if all(_begun(act) is None for act in acts):
        return tuple(acts)
    context = message.context
    active = [bin for bin in context.bins if bin not in context.retired]
    found = _FURTHER.search(" ".join(message.norms))
    bases = [bin for bin in active if bin not in siblings(tuple(active)).values()]
    if found is None or len(bases) != 1 or any(ref.name for ref in message.bins):
        return tuple(acts)
    [base] = bases
    lead, _, last = base.rpartition(" ")
    stem = lead if lead.casefold() in BIN_WORDS and last.isdecimal() else base
    return tuple(_called(act, f"{stem} {_NUMBERS[found['which']]}") for act in acts)


_NUMBERS = {"second": 2, "2 nd": 2, "third": 3, "3 rd": 3, "fourth": 4}


def without_begun_behind(acts: Sequence[Act], message: Message) -> tuple[Act, ...]:
    """The acts; what was done before a new bin is begun in the same breath was not done to that
    one: "sealed it, started yard 2".
    """
    if not any(isinstance(act, Open) for act in acts):
        return tuple(acts)
    verbs = [c.verb for c in message.clauses if c.verb is not None and c.sense == "did"]
    opening = next((verb.start for verb in verbs if "open" in verb.verb.classes), 0)
    before = {kind for verb in verbs if verb.end <= opening for kind in verb.verb.classes}
    begun = {act.bin for act in acts if isinstance(act, Open)}
    begun &= {ref.name for ref in message.bins if ref.start > opening and not ref.known}
    return tuple(
        replace(act, bin=None)
        if isinstance(act, Seal | Drain | Bury) and act.act in before and act.bin in begun
        else act
        for act in acts
    )


def _begun(act: Act) -> Open | None:
    """The opening of a bin without a name that an act tells, or asks about."""
    guess = act.guess[0] if isinstance(act, Unsure) and len(act.guess) == 1 else act
    return guess if isinstance(guess, Open) and guess.bin is None else None


def _called(act: Act, name: str) -> Act:
    begun = _begun(act)
    if begun is None:
        return act
    named = replace(begun, bin=name)
    return replace(act, guess=(named,)) if isinstance(act, Unsure) else named
