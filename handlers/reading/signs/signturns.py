"""Turns of phrase that tell a sign of a bin: "the lid flew off by itself", "green on the crusts".

The word lists hold what stands together; here is what has other words between. All of them count
only in a message that names a bin.
"""

from collections.abc import Collection, Iterator, Mapping, Sequence
from typing import NamedTuple

from handlers.practice.signs import MOULD_COLOURS, Sign
from handlers.reading.signs.mouldcolours import SHADES
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


class Turn(NamedTuple):
    """A sign told by words[start:end]."""

    start: int
    end: int
    sign: Sign
    first: int
    """Index of the first word that the turn needs."""
    of_growth: bool
    """A colour alone, which some food may have."""


_GAP = r"(?: [^ .!?\n]+){0,%d}?"
_NOT_DOING = (
    r"(?:(?:is|was|has|have|had|does|did|will|are) (?:not|never)|isnt|wasnt|aint|hasnt|havent|hadnt"
    r"|doesnt|didnt|dont|never|wont|wouldnt|refuses to|refusing to|stopped)"
)
_YIELDING = (
    r"(?:make|makes|making|made|give|gives|giving|given|gave|yield|yields|yielded|yielding|produce"
    r"|produces|produced|producing|release|released|drip|drips|dripped|leave|left)"
)
_LIQUID = r"(?:liquid|juice|water|liquor|leachate|soup|broth|gravy|tea|stuff|brew)"
_PLATE = r"(?:grid|grate|grating|plate|strainer|mesh|tap|spigot|sieve|basket|brim|rim|top)"
_TAP = r"\b(?:tap|taps|spigot|spout|valve)\b"
_LID = r"\b(?:lid|lids|cover)\b"
_MUSHES = "soup slop slops mush pulp porridge sludge gruel slurry swamp bog quagmire pond marsh"
_MUSH = f"(?:{_MUSHES.replace(' ', '|')})"
_ANIMALS = (
    "raccoon raccoons racoon racoons possum possums opossum opossums skunk skunks fox foxes badger "
    "badgers bear bears monkey monkeys mongoose stoat weasel polecat"
)
"""What opens a bin from outside, and is kept out as rats are."""
_BY_TWO_WORDS: Mapping[Sign, tuple[str, ...]] = {
    "white_mould": ("snow white", "pure white"),
    "green_mould": ("blue green",),
    "black_mould": ("jet black",),
}
_COLOURS: Mapping[Sign, str] = {
    sign: "|".join((*plain.split(), *SHADES[sign].split(), *_BY_TWO_WORDS.get(sign, ())))
    for sign, plain in MOULD_COLOURS.items()
}
_SPREAD = (
    r"(?:all over|all through|all on top|all round|all around|through and through|over the top"
    r"|on (?:the )?(?:top|crusts?|bread|peel|surface|rim|lid|sides?|scraps|skins|rice|edges?"
    r"|inside)"
    r"|(?:a)?round the (?:rim|edges?|top|sides?|lid|tap)|at the (?:rim|edges?)|under the lid"
    r"|up the sides?|down the sides?)"
)
_GROWN = (
    r"(?:gone|turned|turning|going|goes|went|growing|grown|grew|sprouted|something|things?)"
    r"(?: (?:all|a|bit|slightly|completely|quite|very|right|proper|bright|dark|pale|nice|and|furry"
    r"|fluffy|fuzzy|hairy))*"
)


def _words(alternatives: str) -> str:
    return alternatives.replace("|", " ")


_TURNS: tuple[tuple[Sign, str, str], ...] = (
    (
        "no_liquid",
        "nothing nowt nothin nuffin nuthin zilch naught",
        r"\b(?:drew|drained|tapped) (?:off )?(?P<s>nothing|nowt|nothin|nuffin|nuthin|zilch|naught)"
        r"\b(?! (?:but|like|compared|to do|else))",
    ),
    (
        "no_liquid",
        "juice liquid leachate liquor",
        r"\b(?P<s>(?:juice|liquid|leachate|liquor)(?: is| was| 's|:|-)? (?:zero|nil|none|nothing"
        r"|nowt|nada|zilch))\b(?! left to)",
    ),
    (
        "no_liquid",
        "nothing nowt nothin nuffin nuthin nada",
        rf"{_TAP}{_GAP % 6} (?P<s>nuffin|nuthin|nothin|nada)\b|"
        rf"\b(?P<s2>nuffin|nuthin|nothing?|nada|nowt)(?: at all| whatever| whatsoever)? "
        r"(?:from|at|in|out of|off) (?:the|(?:[a-z0-9]+ ){1,2}'s) (?:[a-z0-9]+ ){0,2}?"
        r"(?:tap|spigot|spout)\b",
    ),
    (
        "no_liquid",
        "opened turned tried",
        r"\b(?P<s>nothing|nowt)(?: at all)? (?:from|out of|off) (?:[a-z0-9]+ ){1,3}?when (?:i|we) "
        r"(?:opened|turned|tried) the (?:tap|spigot|spout)\b",
    ),
    (
        "much_liquid",
        "sloshes sloshing slosh sloshed slick puddle film layer pool lake sea",
        r"\b(?P<s>slosh(?:es|ing|ed)?)\b(?! (?:of|in|some|a bit|it|them))|"
        r"\b(?P<s2>(?:slick|puddle|pool|lake) of (?:[a-z]+ )?(?:liquid|juice|water|leachate))\b",
    ),
    (
        "much_liquid",
        "hear liquid juice",
        r"\b(?P<s>(?:can|could) hear (?:it|the (?:liquid|juice)|liquid|juice) (?:slosh\w*|swill\w*"
        r"|glug\w*|moving|swish\w*))\b",
    ),
    (
        "sour",
        "pickle pickles pickled vinegar kimchi achaar achar gherkin gherkins kraut sauerkraut",
        r"\b(?P<s>(?:pickles?|pickled \w+|vinegar|kimchi|achaa?r|gherkins?|kraut|sauerkraut) "
        r"(?:on|in) the (?:breeze|air|wind|nose))\b",
    ),
    (
        "white_mould",
        "skin film layer cotton",
        r"\b(?P<s>(?:skin|film|layer) on top)\b(?: [^.!?\n]+?)? white\b|"
        r"\bwhite (?P<s2>cotton|cottons|skin|film|layer|coat|coating)\b",
    ),
    (
        "ammonia",
        "enters eye eyes catches nose throat",
        r"\b(?P<s>(?:enters?|catch(?:es)?|hits?|gets? (?:in|into)|pierces?|bites?) "
        r"(?:the|your|my|one 's|you in the) (?:eyes?|throat))\b",
    ),
    (
        "gas",
        "lid lids cover",
        _LID + _GAP % 4 + r" (?P<s>flew|flown|flies off|shot (?:off|up)|jumped|leapt|hopped|risen"
        r"|rises|rising|convex|domed?|domes|curved|gone round|(?:a )?hump|swells?|belly|taut"
        r"|(?:standing|stood) up|up (?:by|on|like|a|half)"
        r"|(?:keeps|kept) (?:lifting|popping|rising|coming|moving)"
        r"|lift(?:s|ed|ing) (?:itself|by|on)|has lifted|pop(?:s|ped)? (?:up|off)"
        r"|(?:wont|wouldnt|doesnt|will not|refuses to) (?:sit|lie|stay|go|shut|close|keep)"
        r"|goes up|pushed up|being pushed|(?:is|'s) (?:popping|coming|poofin|poofing) up)\b",
    ),
    (
        "gas",
        "",
        r"(?<!\S)(?P<s>p?s{3,}h*t*|p+s+t{2,}|p*f{3,}t*|p+s+h+t*|p?fi{3,}|hi?s{4,}|p{2,}s+t*|t+s{2,})"
        r"(?!\S)",
    ),
    (
        "rodents",
        _ANIMALS,
        rf"\b(?P<s>{_ANIMALS.replace(' ', '|')})\b(?: [^ .!?\n]+){{0,4}}? "
        r"(?:into|inside|at|lid|lids|open)\b",
    ),
    (
        "gas",
        "wheezes wheezed wheezing fizzy champagne prosecco",
        r"\b(?P<s>wheez(?:es|ed|ing)|(?:sounds?|sounded|fizz(?:es|ed)|went off|goes off) like "
        r"(?:a |an )?(?:fizzy|champagne|prosecco))\b",
    ),
    (
        "gas",
        "sigh hiss whistle pop puff belch burp wheeze gasp fizz whoosh bang",
        r"\b(?P<s>(?:let out|gave|gives?|giving|heaved|makes?|made)(?: me)? (?:a|an|such a)"
        r"(?: [^ .!?\n]+){0,3} (?:sigh|hiss|whistle|pop|puff|belch|burp|wheeze|gasp|fizz"
        r"|whoosh|bang))\b",
    ),
    (
        "no_liquid",
        "tap taps spigot spout valve",
        _TAP + _GAP % 8 + r" (?P<s>dead|nothing|nowt|zip|nada|zilch|squat|naught|nil|not so much as"
        r"|not a (?:drop|drip|dribble|trickle|bead|thing|spot)|never drips?)\b(?! wrong| to do)",
    ),
    (
        "no_liquid",
        "juice liquid leachate drop drops drip drips dribble trickle thing liquor",
        rf"\b(?P<s>{_NOT_DOING} (?:been |even |yet |once |really |actually )*{_YIELDING}"
        r"(?: us| me| out)?(?: any| much| a| one| no| the| single| bit of| drop of| more)* "
        r"(?:juice|liquid|leachate|drop|drops|drip|drips|dribble|trickle|thing|liquor))\b"
        r"(?! in (?:years|months|ages))",
    ),
    (
        "no_liquid",
        "drop drip dribble juice liquid leachate",
        r"\b(?P<s>(?:cant|couldnt|can not) (?:get|coax|wring|squeeze) (?:a|one|any|so much as a)"
        r"(?: single)? (?:drop|drip|dribble|juice|liquid|leachate))\b",
    ),
    (
        "no_liquid",
        "none zero nothing zip nada nil squat nowt naught zilch",
        r"\b(?P<s>(?:gave|gives|giving|yielded|yields|produced) (?:us |me )?(?:none|zero|nothing"
        r"|zip|nada|nil|squat|nowt|naught|zilch)(?: at all)?)\b(?! (?:away|up|back|to))",
    ),
    (
        "no_liquid",
        "drop drip dribble drap dreep trickle bead",
        r"\b(?P<s>(?:not|nary|naw|no|nae|nor) (?:even )?a (?:[a-z]+ ){0,2}?"
        r"(?:drop|drip|dribble|drap|dreep|trickle|bead))\b(?! of (?!juice|liquid|leachate))",
    ),
    (
        "no_liquid",
        "nothing nowt nothin",
        r"\b(?P<s>(?:nothing|nowt|nothin)(?: at all| whatsoever| whatever| much| yet| still)? "
        r"(?:coming|comes|came|dripping|running) (?:out|from|through|off))\b",
    ),
    (
        "much_liquid",
        "inch inches finger fingers cm centimetre centimetres centimeter centimeters",
        r"\b(?P<s>(?:inch|inches|fingers?|cm|centimetres?|centimeters?) of)"
        r"(?: [^ .!?\n]+){0,3} " + _LIQUID,
    ),
    (
        "much_liquid",
        "liquid juice water liquor leachate soup broth gravy tea stuff brew",
        rf"\b{_LIQUID}(?: [^ .!?\n]+){{0,3}}? (?P<s>(?:sat|sitting|lying|standing|pooled|pooling"
        rf"|collecting|up to|up past|above|over|past|covers|covering|is at))"
        rf"(?: (?:in|at|on|under|round|above) )?(?: ?(?:the|its|his|her) (?:[a-z]+ )?"
        rf"(?:{_PLATE}|bottom|base|foot|pan|tray|bin|bucket))\b",
    ),
    (
        "much_liquid",
        "much",
        rf"\b(?P<s>{_LIQUID} (?:(?:that|which|is|'s|are|was|keeps|still|always) )*"
        r"(?:coming|dripping|running|draining|leaking|flowing|collecting)(?: out| off)?"
        r"(?: (?:is|'s|was))? (?:too|so|very|way too|far too) much)\b",
    ),
    (
        "much_liquid",
        "bottom base",
        rf"\bthere (?:is|'s|are)(?! (?:no|not|hardly|barely|only|just|a little|a bit|a drop)\b)"
        rf"(?: [^ .!?\n]+){{0,3}}? (?P<s>{_LIQUID})(?: [^ .!?\n]+)? (?:in|at|on) (?:the|its) "
        r"(?:bottom|base)\b",
    ),
    (
        "much_liquid",
        "floor bench shelf carpet lino tiles seam everywhere worktop",
        r"\b(?P<s>(?:leaking|dripping|drips|pouring|dribbling|running|weeing|peeing|seeping|gone))"
        r"(?: [^ .!?\n]+){0,4} (?:floor|bench|shelf|carpet|lino|tiles|seam|everywhere|worktop)\b",
    ),
    (
        "wet",
        "soup porridge slop slops mush sludge slurry swamp bog",
        r"(?<!\S)(?P<s>(?:'s|is|like) (?:soup|porridge)|slops?|mush|sludge|slurry|swamp|bog)"
        r" (?:in there|inside)\b",
    ),
    (
        "wet",
        _MUSHES,
        rf"\b(?:gone|turned|turning|going) (?:all |right |completely |to |into |like |pure |a )*"
        rf"(?P<s>{_MUSH})\b",
    ),
    (
        "wet",
        _MUSHES,
        rf"\b(?:'s|is|was|are) (?:just |all |only |pure |a |an |more like |pretty much |like "
        rf"|one big |nothing but |basically |proper |right )+(?P<s>{_MUSH})\b",
    ),
    ("wet", "pulp", r"\b(?:newspaper|cardboard|paper|contents)(?: is| was| 's) (?P<s>pulp)\b"),
    (
        "wet",
        "swim paddle pour sail float row",
        r"\b(?P<s>(?:could|can) (?:swim|paddle|pour|sail|float|row)) (?:in|a|it|her|him|across)\b",
    ),
    (
        "cold",
        "nothing nowt",
        r"\b(?P<s>nothing|nowt) (?:is |'s )?(?:moving|movin|working) in there\b",
    ),
    (
        "ammonia",
        "sinuses nose eyes eyebrows",
        r"\b(?P<s>(?:clears?|burns?|stings?|singe[sd]?|stung|burnt) (?:the|my|your|our)"
        r" (?:sinuses|nose|nostrils|eyes|eyebrows))\b",
    ),
    (
        "ammonia",
        "hair watering streaming stinging crying onions",
        r"\b(?P<s>hair out of (?:your|my) (?:nose|nostrils)|eyes? (?:is |are |was |were )?"
        r"(?:watering|streaming|stinging)|eye watering|without crying|peeling (?:\w+ )?onions)\b",
    ),
    *(
        (sign, _words(colours), rf"\b(?P<s>(?:{colours})(?: as [a-z]+(?: [a-z]+)?)?) {_SPREAD}\b")
        for sign, colours in _COLOURS.items()
    ),
    *(
        (
            sign,
            _words(colours),
            rf"\b{_GROWN} (?P<s>{colours})\b(?! (?:with|pepper|bean|lentil|tea|bin|one|wine|lid))",
        )
        for sign, colours in _COLOURS.items()
    ),
)
"""Sign, the words without one of which it is not looked for (none: a hiss is), and the turn."""
_COMPILED = tuple((sign, Late(pattern)) for sign, _, pattern in _TURNS)
_FIRST_OF_COLOUR = len(_TURNS) - 2 * len(_COLOURS)
_CUES = tuple(words_in(cues) for _, cues, _ in _TURNS)


def _by_cue(rows: range) -> dict[str, frozenset[int]]:
    cues = frozenset[str]().union(*(_CUES[k] for k in rows))
    return {cue: frozenset(k for k in rows if cue in _CUES[k]) for cue in cues}


_BY_CUE = _by_cue(range(_FIRST_OF_COLOUR))
_BY_COLOUR = _by_cue(range(_FIRST_OF_COLOUR, len(_TURNS)))
_HISSED = frozenset(k for k, cues in enumerate(_CUES) if not cues)
_HISSES = ("sss", "stt", "fff", "psh", "ssh", "iii", "pps")
"""Letters without any of which no word is a hiss."""


def turns_in(norms: Sequence[str], in_bins: Collection[int]) -> Iterator[Turn]:
    """The turns of phrase in the words, kind by kind; a colour that names a bin tells none."""
    text = " ".join(norms)
    rows = _HISSED if any(map(text.__contains__, _HISSES)) else frozenset()
    for cue in _BY_CUE.keys() & norms:
        rows |= _BY_CUE[cue]
    for colour in _BY_COLOUR.keys() & norms:
        if any(norm == colour and i not in in_bins for i, norm in enumerate(norms)):
            rows |= _BY_COLOUR[colour]
    for k in sorted(rows):
        sign, pattern = _COMPILED[k]
        for match in pattern.finditer(text):
            named = "s" if "s2" not in match.groupdict() or match["s"] else "s2"
            start = text.count(" ", 0, match.start(named))
            end = start + 1 + match[named].strip().count(" ")
            first = text.count(" ", 0, match.start())
            yield Turn(start, end, sign, first, k >= _FIRST_OF_COLOUR)
