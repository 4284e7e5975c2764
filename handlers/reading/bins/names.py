"""The group's own bins in the words: where one is meant, and not a thing of the same name."""

from collections.abc import Sequence

from handlers.reading.bins.bincalls import (
    are_called_briefly,
    by_initial,
    by_letter,
    by_number,
    pictured,
)
from handlers.reading.bins.binforms import book_of, is_floor, loose_book_of
from handlers.reading.bins.longnames import before_owner
from handlers.reading.bins.shortnames import is_of_another
from handlers.reading.measures.unitwords import unit_starts
from handlers.reading.words.binwords import (
    AFTER_NOT_OURS,
    BIN_WORDS,
    COLOURS,
    INTO,
    PLACE_NAMES,
    PLAIN_FOLLOWERS,
    SIDES,
    BinRef,
)
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import verb_words, vocabulary, words_in
from handlers.reading.words.words import Word

_ONE = frozenset({"one"})


def find_bot(norms: list[str], bots: tuple[str, ...]) -> tuple[int, ...]:
    """Indexes of the words that call the bot."""
    return tuple([m.start for m in book_of((), bots).find(norms)])


def known_bins(
    words: Sequence[Word], norms: list[str], bins: tuple[str, ...]
) -> tuple[BinRef, ...]:
    """The group's own bins that are meant in the words, in order."""
    out: list[BinRef] = []
    for mark in book_of(bins, ()).find(norms):
        if out and mark.start < out[-1].end:
            continue  # "the shed bin 3 kg": the word for bin is spoken for
        if norms[mark.start - 1 : mark.start] == ["'"] and before_owner(words, norms, mark.start):
            continue  # "the kids' garden bin" beside a bin called garden
        if mark.tag == "short" and is_of_another(norms, mark.start):
            continue
        ref = _known(norms, mark.start, mark.end, mark.value)
        if ref is not None:
            out.append(ref)
    out = [ref for ref in out if not _is_food_put(norms, ref, out)]
    if are_called_briefly(bins):
        out += by_letter(words, norms, bins)
        short = list(by_initial(words, norms, bins))
        out += [ref for ref in short if ref.start not in indexes(out)]
        out += () if out else by_number(words, norms, bins)
    return tuple(sorted((*out, *pictured(words, norms, bins))) if "☺" in norms else sorted(out))


def _is_food_put(norms: Sequence[str], ref: BinRef, refs: Sequence[BinRef]) -> bool:
    """ "1 kg of fish in the red bin" beside a bin called fish: what went in, and no bin."""
    if ref.end - ref.start > 1 or ref.start == 0 or not _is_food(norms[ref.start]):
        return False
    before = norms[ref.start - 1]
    measured = before.isdecimal() or before in unit_starts("metric") or before in _BEFORE_FOOD
    return before == "of" or (measured and any(other.plain for other in refs if other != ref))


_BEFORE_FOOD = words_in("and & n with some put added chucked tipped threw leftover old cooked raw")


def _is_food(word: str) -> bool:
    return any(mark.tag == "food" for mark in vocabulary().find([word]))


def mentions(norms: list[str], bins: tuple[str, ...], taken: frozenset[int]) -> tuple[BinRef, ...]:
    """Every other place where a bin's name stands, or a word that only one name has ("Reg", "Big
    Reg").

    It may well be a room, a colour or a fruit there: whether a bin is meant, the scores say.
    """
    marks = loose_book_of(bins).find(norms)
    return tuple(
        [
            BinRef(m.start, m.end, m.value, known=True)
            for m in marks
            if taken.isdisjoint(range(m.start, m.end))
            and not _is_no_side(norms, m.start, _word_behind(norms, m.end))
        ]
    )


def _known(norms: Sequence[str], start: int, end: int, name: str) -> BinRef | None:
    after = _word_behind(norms, end)
    beyond = norms[end + 1] if end + 1 < len(norms) else ""
    if after in BIN_WORDS or (after in _ONE and not _goes_on(norms, end + 1)):
        return None if beyond in AFTER_NOT_OURS else BinRef(start, end + 1, name, True, True)
    if end - start > 1:
        return _of_words(norms, start, end, name)
    before = norms[start - 1] if start else ""
    if before in KIN and start > 1 and (norms[start - 2] in _WHOSE or norms[start - 2] == "'s"):
        return None  # "my grandson Hank" beside a bin called Hank
    said = norms[start] if norms[start] in COLOURS else name  # "blue", of the blue tub
    if _is_epithet(norms, start, end, said.lower()) or _is_no_side(norms, start, after):
        return None
    if before in ("the", "our") and start > 1 and norms[start - 2] in INTO:
        into = True
    else:
        into = before in INTO
    place = name.lower() in PLACE_NAMES or (said.islower() and said not in COLOURS)
    vessel = norms[start] in BIN_WORDS
    if (place and before in _OTHER_OWNERS) or (vessel and before in _OTHER_CONTENTS):
        return None
    if (
        not place
        and said.lower() not in COLOURS
        and ((after.endswith(("ing", "s")) and after in verb_words()) or _is_smell(after))
    ):
        return BinRef(start, end, name, True, into, place)
    if after in _PEELS and norms[start] in vocabulary():
        return None  # "na pawpaw skin" beside a bin called Pawpaw
    if is_part(before, after, into, place, name.lower() in PLACE_NAMES):
        return None
    plain = after in _BIN_PARTS or (not place and into)
    return BinRef(start, end, name, True, plain, place and not (vessel and " " in name))


def _is_no_side(norms: Sequence[str], start: int, after: str) -> bool:
    """ "Put it back in the fridge", "in front of the door", "I'm back": no bin that is called so,
    as in "drained the back" and "2 kg in front".
    """
    if norms[start] not in SIDES:
        return False
    before = norms[start - 1] if start else ""
    if after == "of" or before not in {"the", "our", "", ",", ":"} | INTO | _DONE_TO:
        return True
    return before not in ("the", "our") and after in INTO | _BACK_AGAIN


_DONE_TO = words_in("drained sealed buried emptied opened filled fed")
_BACK_AGAIN = words_in("again home now today tomorrow soon on !")


def _word_behind(norms: Sequence[str], end: int) -> str:
    """The word behind a name; "in Bertha dinner time" tells when, and of no dinner."""
    after = norms[end] if end < len(norms) else ""
    return "today" if after in _MEALS and norms[end + 1 : end + 2] == ["time"] else after


def _of_words(norms: Sequence[str], start: int, end: int, name: str) -> BinRef | None:
    """The bin whose name of several words stands there."""
    if is_floor(" ".join(norms[start:end])):
        return _floor(norms, start, end, name)
    room = _is_room(name, norms[start:end])
    part = norms[end : end + 1] != [] and norms[end] in _BIN_PARTS
    if name in COLOURS and end - start == 2:  # "in den grünen", in another tongue
        into = not INTO.isdisjoint(norms[max(0, start - 1) : start + 1]) or norms[start] in _INTO
        return BinRef(start, end, name, True, into or part)
    return BinRef(start, end, name, True, not room or part, room)


def _floor(norms: Sequence[str], start: int, end: int, name: str) -> BinRef | None:
    """ "In the 4th", "the 9th is full": a floor's bin; "on the 9th" is a day of the month."""
    if norms[start - 1 : start] != ["the"]:
        return None
    into = norms[start - 2 : start - 1] in (["in"], ["into"], ["to"])
    said = norms[end : end + 1] != [] and norms[end] in _OF_A_FLOOR
    return BinRef(start - 1, end, name, True, into, not into) if into or said else None


_INTO = words_in("do w we ins im nel nella al")
_OF_A_FLOOR = words_in("is 's has smells stinks reeks looks needs got one")


def _goes_on(norms: Sequence[str], i: int) -> bool:
    """Whether a "one" before word i is a number: "one litre", "one and half kilo"."""
    if norms[i : i + 1] == ["point"]:
        return True
    and_a_half = norms[i : i + 1] in (["and"], ["n"], ["&"]) and "half" in norms[i + 1 : i + 3]
    return and_a_half or (i < len(norms) and norms[i] in unit_starts("metric"))


def by_known_name(ref: BinRef, bins: tuple[str, ...]) -> BinRef:
    """A bin that was said in words ("bin ten"), under the group's own name for it if it has one."""
    said = (ref.name or "").lower()
    known = next((name for name in bins if name.lower() == said), None) if said else None
    return ref if known is None else ref._replace(name=known, known=True)


def _is_smell(word: str) -> bool:
    """ "Gertie pongs": a word of the list of signs, said of the bin."""
    return word.endswith("s") and word in _SIGN_VERBS


_SIGN_VERBS = words_in("pongs hums reeks stinks mings honks hisses bulges")


def is_part(before: str, after: str, into: bool, place: bool, common: bool = True) -> bool:
    """Whether a one-word name belongs to another thing here ("shed roof", "my kitchen")."""
    if before in ("my", "your", "his", "her", "their", "a", "an", "new"):
        return True
    if not after or not after[0].isalpha() or after in _NO_NOUNS:
        return False
    if after in _NOUNS:
        return True
    known = after in vocabulary()
    if place and after.endswith("ing"):
        return True
    if place and (known or common):
        return known and after not in _PAST_VERBS and after not in verb_words()
    return not (into and not known) and after not in _PAST_VERBS


def _is_room(name: str, norms: Sequence[str]) -> bool:
    """Whether a name of several words may be a room's or a place's ("laundry room", "plot 9")."""
    if norms[0] in ("plot", "room") or norms[-1] in PLACE_NAMES | {"room", "hall"}:
        return True
    bin_like = BIN_WORDS | COLOURS
    return name.islower() and bin_like.isdisjoint(norms) and not any(n.isdecimal() for n in norms)


def _is_epithet(norms: Sequence[str], start: int, end: int, name: str) -> bool:
    """ "Green, black, the lot", "2 kg of kitchen scraps": what a thing is like or is from."""
    if name in COLOURS:
        return _among_colours(norms, start, end)
    of = norms[start - 1 : start] == ["of"]
    return of and name in PLACE_NAMES and not _SCRAPS.isdisjoint(norms[end : end + 1])


def _among_colours(norms: Sequence[str], start: int, end: int) -> bool:
    """ "Green, black, the lot" are colours, not bins."""
    behind = norms[end + 1 : end + 2] if norms[end : end + 1] == [","] else norms[end : end + 1]
    at = start - 2 if norms[start - 1 : start] == [","] else start - 1
    before = norms[at : at + 1] if at >= 0 else []
    return any(norm in COLOURS for norm in (*behind, *before))


_MEALS = words_in("dinner lunch tea breakfast supper bed milking break")
_WHOSE = words_in("my our your his her their")
KIN = words_in(
    "grandson granddaughter grandchild grandad grandpa grandma granny son daughter nephew niece "
    "cousin uncle aunt auntie aunty brother sister husband wife boyfriend girlfriend fiance "
    "partner friend mate pal neighbour neighbor boss landlord landlady lodger vicar teacher coach "
    "tutor doctor dentist plumber dog cat kitten puppy pony horse hamster rabbit bunny goat parrot "
    "budgie tortoise baby toddler colleague cleaner stepson stepdaughter godson goddaughter mum "
    "mom mam mummy mommy dad daddy gran nan nana mother father parents"
)
"""Whose name stands behind it is no bin."""
_PEELS = words_in("skin skins peel peels peelings seed seeds stones pits rind rinds husks")
_OTHER_OWNERS = words_in(
    "school soup village work office hotel pub canteen restaurant hospital camp club centre"
)
_OTHER_CONTENTS = words_in("rain water beer wine cider whisky oil petrol")
"""With one of these before it, a barrel is none of ours though a bin is called so."""
_BIN_PARTS = words_in(
    "lid lids tap spigot contents juice leachate liquid's scraps tray liquid handle"
)
_SCRAPS = words_in("scraps waste leftovers peelings slops compost")
_OF_WHOM = words_in("his her hers its their my our your these those them")
_PAST_VERBS = words_in(
    "fed drained sealed buried filled emptied closed topped got had ate went took received "
    "gave yielded smelt smelled stank hissed bulged opened started shut ready burped belched "
    "popped fizzed exploded leaked leaks hissed reeked ponged swallowed gobbled scoffed devoured "
    "demolished munched guzzled"
)
_NO_NOUNS = PLAIN_FOLLOWERS | _BIN_PARTS | _OF_WHOM
_NOUNS = words_in(
    "list lists cook cooks sheet scales scale crew lads extension renovation refit cleaner "
    "cleaning door's keys key lock padlock gate shelf shelves step steps swing pirates "
    "curtains paint island fan heater furniture sofa railing basket powder machine detergent "
    "duty rota staff team manager scissors association committee knife knives top tops bench "
    "oven stove fridge freezer walls windows doors sink table floor roof door window light "
    "wall counter chair garden plant cupboard drawer tea beans sale lights stairs tiles work "
    "toilet toilets corridor lockers locker gates pupils kids teacher teachers band play hours "
    "wifi code codes post posts hinge latch shutter tiles beam beams bus run trip trips fence "
    "area uniform uniforms fees fete fair concert office caretaker board boards hall alarm "
    "party terrace room drain drains pipe tap ceiling bench key"
)
