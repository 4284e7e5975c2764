"""Growths and their colours: "white fuzz", "a skin of white", "mouldy"."""

from collections.abc import Collection, Sequence

from handlers.practice.signs import Sign
from handlers.reading.measures.unitwords import unit_starts
from handlers.reading.signs.mouldcolours import COLOURS
from handlers.reading.signs.seen import Seen, denied
from handlers.reading.words.marks import Mark
from handlers.reading.words.vocabulary import one_slip, vocabulary, words_in

_MOULD = words_in(
    "mould mold moulds molds moldy mouldy fungus fungi fuzz fuzzy fluff fluffy fur furry "
    "mycelium mildew moho schimmel moisissure amag mold's growth spores whiskers cobweb "
    "cobwebby threads moule moisissures moisi moisie moisis muffa plesn bolor hongo hongos "
    "mycelia kulat phaphoond"
)
_MOULD_WEAK = words_in(
    "growth fur furry fluff fluffy fuzzy spores threads whiskers cobweb patches spots stuff "
    "film coat coating blanket bloom beard whiskers duvet jumper snow layer dots patch bits "
    "speckles specks speckle speckling fleck blobs hair hairy cotton velvet "
    "velvety floss flecks dusting "
    "powdery frosting webbing tufts tuft mossy pelt "
    "spot speck"
)
_MOULD_OF_BIN = words_in(
    "down wig doona rug moustache mustache afro crust crusts skin dust powder rind carpet "
    "cape lace silk felt scum slime lurgy blotches blotch blotchy specks speck webs web thing "
    "mat frost crud icing nap wool woolly lint flaum bart barbe barba barbetta pelito pelusa "
    "balbas islands colonies colony circles "
    "something thingy whatsit "
    "rings freckles pimples pom poms pile shag tufty lawn moss quilt shawl veil scarf toupee hairs"
)
"""What a growth is likened to where a bin is named and a colour said."""
_BY_THEMSELVES = _MOULD | _MOULD_WEAK
_ALONE = _MOULD - _MOULD_WEAK
"""Words that tell of a mould without its colour."""
_DOTTED = words_in("dotted speckled spotted flecked freckled peppered")
_ANY = _BY_THEMSELVES | _MOULD_OF_BIN | _DOTTED


def _keeps_out_mould(mark: Mark) -> bool:
    """ "Mouldy bread" and "fungus gnats" tell of no mould in the bin; "mouldy stuff" does."""
    if mark.tag == "food":
        return mark.value.name not in ("stuff", "speck")
    return mark.tag == "sign-plain" and mark.value.sign == "insects"


def moulds_in(
    norms: Sequence[str], marks: Sequence[Mark], in_bins: Collection[int], *, of_bin: bool
) -> list[Seen]:
    """The growths in the words; with `of_bin` also what they are only likened to."""
    words = _ANY if of_bin else _BY_THEMSELVES
    if words.isdisjoint(norms):
        return []
    others = [m for m in marks if _keeps_out_mould(m)]
    out: list[Seen] = []
    for i in [i for i, norm in enumerate(norms) if norm in words and i not in in_bins]:
        if out and out[-1].end > i:
            continue
        if any(m.start <= i < m.end or (m.start == i + 1 and m.tag == "food") for m in others):
            continue
        if norms[i] in _WORN and norms[i - 1 : i] in (["my"], ["your"]):
            continue
        free = max(i - _reach(norms[i]), out[-1].end if out else 0)  # "green spots and white fuzz"
        colours = [
            (at, sign)
            for at, sign in _colours(norms, i, in_bins)
            if at not in in_bins
            and at >= free
            and (at < i or norms[i] != "down")
            and not _is_fruit(norms, at)
        ]
        if not (colours or norms[i] in _ALONE) or _is_soil(norms, i):
            continue
        start = min([i, *(at for at, _ in colours)])
        absent = denied(norms, start)
        for _, sign in colours or [(i, "other_mould")]:
            out.append(Seen(start, i + 1, sign, norms[i] in _BY_THEMSELVES, absent))
    return _one_growth(out)


_WORN = words_in("beard hair hairs whiskers moustache mustache afro wig jumper coat fur wool scarf")
"""What people grow or wear themselves: "my beard is purple"."""


def _is_fruit(norms: Sequence[str], at: int) -> bool:
    """ "Orange rind", "600 g of orange skin": the fruit, and no colour."""
    if norms[at] != "orange":
        return False
    before = at - 1 - (norms[max(0, at - 1)] == "of")
    weighed = before >= 0 and norms[before] in unit_starts("metric")
    return norms[at + 1] in _OF_FRUIT or (weighed and norms[at + 1] == "skin")


_OF_FRUIT = words_in("rind rinds zest pith")


_REACH = 4
"""Words before a growth that may be its colours."""


def _reach(norm: str) -> int:
    """How many words before it a growth may have its colour."""
    if norm in _BY_THEMSELVES:
        return _REACH
    return 1 if norm == "down" else 2


def _is_soil(norms: Sequence[str], i: int) -> bool:
    """ "Brown stuff", "dark bits": what ferments looks so."""
    return norms[i] in ("stuff", "bits") and norms[i - 1] in _OF_FOOD


_OF_FOOD = words_in("brown dark red yellow orange")


def _one_growth(seen: list[Seen]) -> list[Seen]:
    """ "Fuzzy white mould" is one sign: a bare mould beside a coloured one adds nothing."""
    coloured = [s for s in seen if s.sign != "other_mould"]
    if not coloured:
        return seen[:1]
    unique: dict[tuple[Sign, bool], Seen] = {}
    for s in coloured + [s for s in seen if s.end - s.start > 1]:
        unique.setdefault((s.sign, s.absent), s)
    return list(unique.values())


def _colours(norms: Sequence[str], i: int, in_bins: Collection[int]) -> list[tuple[int, Sign]]:
    """Colours said of the growth at word i: up to four words before it, or behind a copula."""
    found: list[tuple[int, Sign]] = []
    for k in range(i - 1, max(-1, i - _REACH - 1), -1):
        if norms[k] in (".", "!", "?", "\n", ";") or norms[k] in _MOULD:
            break
        if norms[k] in COLOURS and norms[k + 1] not in ("bin", "has", "bucket", "is", "one"):
            found.append((k, COLOURS[norms[k]]))
    if not found and i and norms[i] in _MOULD and (slip := _slipped(norms[i - 1])):
        return [(i - 1, COLOURS[slip])]
    if found:
        return [*found, *_besides(norms, i, in_bins)]
    if norms[i] in _WHATEVER:
        return []
    span = range(i + 1, min(i + 9, len(norms)))
    after = [norms[k] for k in span if k not in in_bins and not (in_bins and norms[k] == "on")][:4]
    for k, norm in enumerate(after):
        furry = k == 1 and after[0] == "and" and norms[i] in _FURRY
        furry = furry or (k == 1 and after[0] in ("with", "in") and norms[i] in _DOTTED)
        if norm in COLOURS and (k == 0 or furry or after[k - 1] in _COPULA):
            return [(i, COLOURS[norm]), *_further(norms, i, norm, in_bins)]
        if norm in _STOPS or (norm == "," and k):
            break
    return _told_after(norms, i)


_WHATEVER = words_in("something thingy whatsit")
"""A growth by the colour before it alone: "something green" may be a vegetable."""


def _slipped(norm: str) -> str | None:
    """ "Wite mould", "greem mould": the colour that a word was meant to be."""
    if len(norm) < _LEAST_SLIPPED or norm in _NO_SLIPS or norm in vocabulary().firsts:
        return None
    return next((colour for colour in _SLIPPING if one_slip(norm, colour)), None)


_SLIPPING = ("white", "green", "black")
_LEAST_SLIPPED = 4
_NO_SLIPS = words_in("while write whine greet greed greek blank slack")


def _besides(norms: Sequence[str], i: int, in_bins: Collection[int]) -> list[tuple[int, Sign]]:
    """ "White mould but got a bit green also": another colour told behind the growth."""
    for k in range(i + 2, min(i + _FURTHER, len(norms))):
        if norms[k] in _STOPS:
            break
        behind = norms[k + 1 : k + 2]
        ends = not behind or behind[0] in _AFTER_COLOUR | _TOO
        if norms[k] in COLOURS and norms[k - 1] in _A_BIT and ends and k not in in_bins:
            return [(i, COLOURS[norms[k]])]
    return []


_A_BIT = words_in("bit abit some little also turning going slightly touch partly")
_TOO = words_in("also too as here there at on round around patches spots coming starting")


def _told_after(norms: Sequence[str], i: int) -> list[tuple[int, Sign]]:
    """ "A beard. White one", "a beard? Long, white": a colour that opens the next breath."""
    stop = next(
        (k for k in range(i + 1, min(i + 7, len(norms))) if norms[k] in _BREAKS), len(norms)
    )
    for k in range(stop + 1, min(stop + 5, len(norms))):
        if norms[k] in _STOPS:
            break
        behind = norms[k + 1 : k + 2]
        if norms[k] in COLOURS and (not behind or behind[0] in _AFTER_COLOUR):
            return [(i, COLOURS[norms[k]]), *_further(norms, i, norms[k])]
    return []


def _further(
    norms: Sequence[str], i: int, first: str, in_bins: Collection[int] = ()
) -> list[tuple[int, Sign]]:
    """ "Mould, white like snow and a little bit of black": the colours told behind the first."""
    found: list[tuple[int, Sign]] = []
    start = norms.index(first, i) + 1
    for k in range(start, min(start + _FURTHER, len(norms))):
        norm, behind = norms[k], norms[k + 1 : k + 2]
        if norm in _STOPS:
            break
        told = norm in COLOURS and norms[k - 1] in _AND_SOME and k not in in_bins
        if told and not (behind and behind[0] in _COLOURED_THINGS):
            found.append((i, COLOURS[norm]))
    return found


_FURTHER = 11
"""Words behind the first colour of a growth in which others are told."""
_AND_SOME = words_in(
    "and n & with some of bit , plus also a but touch little tiny going turning slightly partly"
)
_COLOURED_THINGS = words_in(
    "bin bins lid bucket tub pail caddy one bag bags tea pepper peppers beans bread pudding "
    "grapes olives lentils rice sauce bran plate tray crate liquid juice"
)


_STOPS = frozenset({".", "!", "?", "\n"})
_BREAKS = _STOPS | {",", ":"}
_AFTER_COLOUR = _STOPS | words_in(
    "one ones tho though but and , ☺ of in thankfully luckily mostly mainly with like"
)


_FURRY = words_in("furry fuzzy fluffy hairy mouldy moldy")
_COPULA = words_in(
    "is was it its are s 's all sort kind of bit looks quite mostly a , that the in na yang"
)
