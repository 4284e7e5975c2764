"""Bins never named before and not called bins: "to Portable B", "added 1 kg to zebra"."""

from collections.abc import Collection, Iterator, Sequence

from handlers.reading.bins.longnames import before_owner
from handlers.reading.bins.names import KIN, is_part
from handlers.reading.bins.newbins import DIGITS
from handlers.reading.bins.writtenbins import written
from handlers.reading.words.binwords import GENERIC, PLACE_NAMES, TOLD_BY, BinRef
from handlers.reading.words.spans import indexes
from handlers.reading.words.titles import end_of_titled
from handlers.reading.words.vocabulary import vocabulary, words_in
from handlers.reading.words.words import Word, joined


def target_bins(
    words: Sequence[Word],
    norms: Sequence[str],
    taken: frozenset[int],
    *,
    no_names: bool,
    by_one_word: bool,
) -> tuple[BinRef, ...]:
    """Bins never named before and not called bins: "to Portable B", "in the shed".

    A place counts only in a group that has no names yet (`no_names`); a single word ("to Dot") only
    with `by_one_word`.
    """
    out = list(_of_somebody(words, norms, taken))
    taken |= indexes(out)
    for i in [i for i, norm in enumerate(norms[:-1]) if norm in _TO]:
        if i in taken or _leads_elsewhere(norms, i, taken):
            continue
        at = i + 2 if norms[i + 1] in ("the", "our") else i + 1
        end = at
        while (
            end < min(len(words), at + 3) and end not in taken and _is_title(words[end], end > at)
        ):
            end += 1
        if end - at >= (1 if by_one_word and _is_new_word(words, norms, at, end) else 2):
            out.append(BinRef(at, end, written(words, at, end)))
        elif by_one_word and i - 1 in taken and _is_new_word(words, norms, at, at + 1):
            out.append(BinRef(at, at + 1, words[at].text))  # "added 1 kg to zebra"
        elif by_one_word and at not in taken and _is_put_in(words, norms, i, at):
            out.append(BinRef(at, at + 1, words[at].text, place=True))  # "added 1 kg to the shed"
        elif by_one_word and i - 1 in taken and at not in taken and _is_glued(words, at):
            out.append(BinRef(at, at + 2, written(words, at, at + 2)))  # "added 1 kg to plot7"
        elif no_names and at < len(words) and at not in taken and norms[at] in PLACE_NAMES:
            after = norms[at + 1] if at + 1 < len(norms) else ""
            if not is_part(norms[at - 1], after, True, True):
                out.append(BinRef(at, at + 1, words[at].text, place=True))
    return tuple(out)


def _is_given_away(norms: Sequence[str], i: int) -> bool:
    """ "Gave 2 kg of plums to Mei": a person whom nobody here knows; but "to Portable B"."""
    if norms[i] != "to" or "".join(norms[i + 2 : i + 3]) in _LETTERS:
        return False
    round_to = norms[i - 1 : i] in _ROUND and "dropped" in norms[:i]
    return round_to or not _GAVE.isdisjoint(norms[:i])


_LETTERS = frozenset("abcdefghijklmnopqrstuvwxyz")
_GAVE = words_in("gave give giving given lent sent sold passed handed donated")
_ROUND = (["round"], ["over"], ["off"])


def _of_somebody(
    words: Sequence[Word], norms: Sequence[str], taken: frozenset[int]
) -> Iterator[BinRef]:
    """ "To Tina's", "into the Hendersons'": a bin that is called so, or the house."""
    if _APOSTROPHES.isdisjoint(norms) or not _BROUGHT.isdisjoint(norms):
        return
    first = min(taken, default=len(norms))  # not "I'm in the dentist's, and 2 kg went in"
    for i in [i for i, norm in enumerate(norms[:-1]) if norm in _PUT and i > first]:
        at = i + 1 + (norms[i + 1] in _ARTICLES)
        if end := _end_of_whose(words, norms, at, taken):
            yield BinRef(at, end, written(words, at, end), place=True)


_APOSTROPHES = words_in("'s '")


def _end_of_whose(
    words: Sequence[Word], norms: Sequence[str], at: int, taken: frozenset[int]
) -> int:
    """Index behind an owner named at word `at` of whom nothing else follows; 0 if none is."""
    end = max(at, end_of_titled(words, norms, at) - 1)
    while end < min(len(words), at + _NAMES) and _is_title(words[end], False):
        end += 1
    end += end == at < len(words) and _is_new(words[at])  # "to tina's"
    if end == at or end in taken or _APOSTROPHES.isdisjoint(norms[end : end + 1]):
        return 0
    if not _ends(words, norms, end + 1) and norms[end + 1] not in _BEHIND_OWNER:
        return 0
    several = norms[end] == "'" and before_owner(words, norms, end + 1)
    return end + 1 if several or norms[end] == "'s" else 0


_BROUGHT = words_in("brought took dropped delivered gave carried lent sent left went going off")
"""With "to Tina's": to the house."""
_BEHIND_OWNER = words_in(
    "before after tonight again please for from but so then too earlier like as because cos when "
    "while"
)
_NAMES = 3
"""Words of what a person is called at most, without a title that has its stop."""


def _leads_elsewhere(norms: Sequence[str], i: int, taken: frozenset[int]) -> bool:
    """Whether scraps come "from" there, or are given "to" somebody, or somebody only went there."""
    if norms[i] in _OFF and _DRAWN_OFF.isdisjoint(norms):
        return not _WEIGHED.isdisjoint(norms)
    on_the_way = norms[max(0, i - 1)] in _ON_THE_WAY and all(k > i for k in taken)
    return on_the_way or _is_given_away(norms, i)


_ON_THE_WAY = words_in(
    "drove drive driving went go going flew flying came travelled traveled cycled walked trip way "
    "back off commute bus train welcome"
)
"""Words before "to" of somebody who goes to a place: "drove to Dallas with 2 kg of pecans"."""
_OFF = frozenset({"off", "from"})
_TO = frozenset({"in", "into", "to"}) | _OFF
_DRAWN_OFF = words_in(
    "drained drain draining tapped tap drew drawn ran liquid leachate juice runoff emptied moved "
    "ml litre litres l"
)
_WEIGHED = words_in("kg kgs kilo kilos g gm gms gram grams lb lbs pound pounds oz ounce ounces")
"""By which scraps are told, which come "from" a feast, a cafe or a person, and from no bin."""


def more_bins(
    words: Sequence[Word],
    norms: Sequence[str],
    known: Sequence[BinRef],
    taken: frozenset[int],
    *,
    by_one_word: bool,
) -> list[BinRef]:
    """Bins told by a colour that no bin has: "added 1 kg to blue", "sealed green", "red and pink".

    Beside a bin that is named already a colour or a place counts where it goes on with its list,
    or where more is told of it ("and 1 kg to green"); so does a new word with `by_one_word`.
    """
    ends = {ref.end for ref in known if ref.name is not None}
    out: list[BinRef] = []
    for i, lead in _behind_leads(norms):
        if i in taken:
            continue
        norm = norms[i]
        measured = norms[lead] in _DRAWN and i + 1 in taken  # "drained blue half a litre"
        placed = norms[lead] == "buried" and not _PLACED.isdisjoint(norms[i + 1 : i + 2])
        if not (measured or placed or _ends(words, norms, i + 1)):
            continue
        new = by_one_word and _is_new(words[i])
        called = _is_called_so(words, norms, i)
        called = called or (norm in PLACE_NAMES and norms[i - 1] in SHUT_OR_DRAWN)
        if not (norm in TOLD_BY or called or (ends and (new or norm in PLACE_NAMES))):
            continue
        if ends:
            listed = norms[lead] in _AND or (norms[lead] == "," and norms[i + 1 : i + 2] == ["and"])
            led = listed and lead in ends and _is_done_to(norms, (*known, *out), lead)
            led = led and not (new and words[i].text.islower())  # "to red and phew"
            led = led or (norm in TOLD_BY and norms[i - 1] in _DONE)
            led = led or _is_put_besides(norms, i, lead, _before(ends, i), taken, new=new)
        else:
            led = norms[i - 1] in _TO | _DONE and norms[i - 2 : i - 1] != ["from"]
            led = led and TOLD_BY.isdisjoint(norms[max(0, i - 3) : i])
            led = led or called
        if led:
            out.append(BinRef(i, i + 1, words[i].text, plain=True))
            ends.add(i + 1)
    return out


def _behind_leads(norms: Sequence[str]) -> Iterator[tuple[int, int]]:
    """Each word behind a lead, and the one behind an article there, with its lead."""
    for lead in [k for k, norm in enumerate(norms[:-1]) if norm in _LEADS]:
        yield lead + 1, lead
        if norms[lead + 1] in _ARTICLES and lead + 2 < len(norms):
            yield lead + 2, lead


def leading_bin(
    words: Sequence[Word], norms: Sequence[str], called: frozenset[int]
) -> list[BinRef]:
    """ "Porch: 300 g of rice", "the porch is full and sealed", "Hector got 2 kg": a colour, a place
    or a name that no bin has, of which the whole message is told.
    """
    if fed := _fed_by_name(words, norms, called):
        return [fed]
    at = 1 if norms[:1] and norms[0] in _ARTICLES else 0
    if at == len(norms) or not (norms[at] in TOLD_BY or norms[at] in PLACE_NAMES):
        return []
    behind = norms[at + 1 : at + 2]
    listed = behind == [":"] and at + 2 < len(words) and words[at + 2].kind == "number"
    listed = listed and _AT_HAND.isdisjoint(norms)  # "kitchen: 2 kg of flour left"
    told = behind in (["is"], ["'s"]) and not _DONE_TO.isdisjoint(norms[at + 2 : at + 6])
    return [BinRef(at, at + 1, words[at].text, plain=True)] if listed or told else []


def _fed_by_name(
    words: Sequence[Word], norms: Sequence[str], called: frozenset[int]
) -> BinRef | None:
    """ "Ok, Hector got 2 kg of leeks": what is written as a name, is no member and gets an amount,
    with nothing told besides that a person would get it for.
    """
    at = next((i for i, norm in enumerate(norms) if norm not in _LED_NAME), len(norms))
    if at + 2 >= len(words) or at in called or not words[at].text[:1].isupper():
        return None
    if not _is_new(words[at]) or norms[at] in KIN | _NOBODY or norms[at + 1] not in FED_BY_NAME:
        return None
    amount = at + 2
    while amount < len(norms) - 1 and norms[amount] in _ABOUT:
        amount += 1
    if amount not in called or _FOR_A_PERSON.intersection(norms) or norms[-1] == "?":
        return None
    return BinRef(at, at + 1, words[at].text, plain=True)


FED_BY_NAME = words_in("got gets has had")
"""What a bin does with scraps that is called by a name, and people do with other things."""
_NOBODY = words_in("she he they nobody somebody everybody noone class shop there")
_LED_NAME = words_in("ok okay so and well then right also lol , !")
_ABOUT = words_in("had got about another just roughly around some approx")
_FOR_A_PERSON = words_in(
    "for from off at heavier lighter back home shop shops market sale farm job price bill weight "
    "his her their my our who which that cooking dinner lunch supper breakfast bran starter to"
)
_DONE_TO = words_in("sealed drained buried")
_AT_HAND = words_in("left remaining need needs needed buy order")


def _is_called_so(words: Sequence[Word], norms: Sequence[str], i: int) -> bool:
    """ "Sealed Austin": right behind the deed, written as a name, and no word."""
    return norms[i - 1] in SHUT_OR_DRAWN and words[i].text[:1].isupper() and _is_new(words[i])


SHUT_OR_DRAWN = words_in("sealed drained tapped")
"""What may be done to a bin that is called by a name which nobody knows."""


def _before(ends: Collection[int], i: int) -> int:
    """Where the last bin that is named before word i ends; 0 if none is."""
    return max((end for end in ends if end <= i), default=0)


def _is_put_besides(
    norms: Sequence[str], i: int, lead: int, start: int, taken: frozenset[int], *, new: bool
) -> bool:
    """Whether more goes into what word i names, told from word `start` to what leads there."""
    if norms[lead] not in _PUT or (norms[lead] == "in" and not start and norms[i] in PLACE_NAMES):
        return False  # "got 2 kg of bran in the pantry"
    return (_is_more_put if new else _is_more_told)(norms, start, lead, taken)


def _is_done_to(norms: Sequence[str], known: Sequence[BinRef], end: int) -> bool:
    """Whether the list of bins up to word `end` begins behind what is done to a bin."""
    starts = {ref.end: ref.start for ref in known}
    while end in starts:
        at = starts[end] - 1
        at -= at > 0 and norms[at] in _ARTICLES
        if at < 0 or norms[at] not in _AND | {","}:
            return at >= 0 and norms[at] in _TO | _DONE
        end = at
    return False


def _is_more_put(norms: Sequence[str], start: int, end: int, taken: frozenset[int]) -> bool:
    """ "And 1 kg to Dotty": nothing but a joint and an amount stands before what leads there."""
    held = [i for i in range(start, end) if i in taken]
    joined = {*norms[start:end]} - {norms[i] for i in held} <= _MORE
    return bool(held) and joined and norms[end] != "in"


_AND = words_in("and & + n")
_ADDED = words_in("added put tipped chucked threw fed")
_MORE = _AND | _ADDED | {",", "plus", "then", "also"}


def _is_more_told(norms: Sequence[str], start: int, end: int, taken: frozenset[int]) -> bool:
    """Whether an amount or a share stands between the last bin named and what leads to another."""
    between = norms[start:end]
    if not _STOPS.isdisjoint(between):
        return False
    return not taken.isdisjoint(range(start, end)) or not _SHARES.isdisjoint(between)


_ARTICLES = frozenset({"the", "our"})
_PUT = frozenset({"in", "into", "to"})
_STOPS = frozenset(".!?;\n")
_SHARES = words_in("half quarter quarters third thirds rest remainder most")
_DONE = words_in("sealed closed drained buried tapped started")
"""What is done to a bin that stands right behind it."""
_PLACED = words_in("under in by beside near behind at")
"""Before the place where a bin was buried."""
_LEADS = _AND | _TO | _PUT | _DONE | {","}
"""Before a bin that is told by a colour, a place or a new word, or before its article."""


def _is_glued(words: Sequence[Word], at: int) -> bool:
    """Whether a word and a number stand there as one ("plot7")."""
    if at + 1 >= len(words) or words[at].kind != "word" or words[at + 1].kind != "number":
        return False
    return joined(words, at + 1) and len(words[at + 1].text) <= DIGITS


def _is_new_word(words: Sequence[Word], norms: Sequence[str], at: int, end: int) -> bool:
    """Whether "to Dot" ends there, with a word that is known for nothing else."""
    if at >= len(words) or at >= end or words[at].kind != "word":
        return False
    new = _is_new(words[at]) or norms[at] in PLACE_NAMES
    drawn = norms[at - 1] in ("from", "off") and not _DRAWN.isdisjoint(norms[:at])
    led = drawn or norms[at - 1] in ("to", "into")
    return led and new and _ends(words, norms, end)


def _is_new(word: Word) -> bool:
    """Whether a word is known for nothing, so that it can be a name."""
    known = word.norm in vocabulary() or word.norm in GENERIC or word.norm in _NO_NAMES
    return word.kind == "word" and not known


def _is_put_in(words: Sequence[Word], norms: Sequence[str], i: int, at: int) -> bool:
    """ "Added 1 kg to the shed", "2 kg in Austin": a place, or what is written as a name."""
    return _is_put_in_place(words, norms, i, at) or _is_in_new(words, norms, i, at)


def _is_in_new(words: Sequence[Word], norms: Sequence[str], i: int, at: int) -> bool:
    """ "2 kg of peel in Austin": behind an amount, in what is written as a name and is no word."""
    if norms[i] != "in" or at != i + 1 or at >= len(words) or not words[at].text[:1].isupper():
        return False
    weighed = not _WEIGHED.isdisjoint(norms[:i]) or not _ADDED.isdisjoint(norms[:i])
    new = _is_new(words[at]) or norms[at] in PLACE_NAMES
    return weighed and new and norms[at] not in _OUTDOORS and _ends(words, norms, at + 1)


def _is_put_in_place(words: Sequence[Word], norms: Sequence[str], i: int, at: int) -> bool:
    """Whether scraps went "to the garage", "in balcony": not carried there, and no other thing of
    the garage.
    """
    led = norms[i] in ("to", "into") if at == i + 2 else norms[i] in ("in", "into")
    if not led or norms[at : at + 1] == [] or (norms[i] == "in" and norms[at] in _OUTDOORS):
        return False
    placed = norms[at] in PLACE_NAMES and _ends(words, norms, at + 1)
    return placed and not _ADDED.isdisjoint(norms[:i])


_OUTDOORS = words_in("garden garten backyard yard allotment greenhouse playground pantry")
"""Where scraps are put that go into no bin: "put 2 kg in garden"."""
_DRAWN = words_in("drained tapped")


def _ends(words: Sequence[Word], norms: Sequence[str], end: int) -> bool:
    """Whether a name may end before word `end`."""
    return end >= len(words) or words[end].kind == "sign" or norms[end] in _BEHIND_NAME


_NO_NAMES = words_in(
    "mine ours yours theirs hers him them everything everyone somebody someone anything something "
    "soak rot begin ferment top bottom bed make share eat waste work school town church myself law"
)
_BEHIND_NAME = words_in("today yesterday just now this last at and with mostly")


def _is_title(word: Word, further: bool) -> bool:
    """Whether a word may be of a name: a capital; further on also a number or a letter."""
    if word.kind == "number":
        return further and len(word.text) <= 2
    titled = word.kind == "word" and word.text[:1].isupper()
    return titled and word.norm not in _WEEK and word.norm not in _TO


_WEEK = words_in(
    "monday tuesday wednesday thursday friday saturday sunday january february march april "
    "may june july august september october november december i christmas easter"
)
