"""The signs of a bin by the names of the reading contract, and other words for them."""

import re
from collections.abc import Mapping
from typing import Literal, get_args

Sign = Literal[
    "white_mould",
    "green_mould",
    "black_mould",
    "other_mould",
    "sour",
    "rotten",
    "ammonia",
    "alcohol",
    "wet",
    "dry",
    "no_liquid",
    "much_liquid",
    "insects",
    "rodents",
    "gas",
    "warm",
    "cold",
]
"""What can be seen or smelt in a bin."""

SIGNS: tuple[Sign, ...] = get_args(Sign)

MOULD_COLOURS: Mapping[Sign, str] = {
    "white_mould": "white",
    "green_mould": "green blue",
    "black_mould": "black",
    "other_mould": "grey gray pink orange red yellow",
}
"""Plain colours of each growth."""
MOULD_OF_COLOUR: Mapping[str, Sign] = {
    colour: sign for sign, colours in MOULD_COLOURS.items() for colour in colours.split()
}
"""The growth that a plain colour tells of."""

_WORDS: Mapping[str, str] = {
    "white_mould": "white white_fuzz white_growth white_fluff white_fur",
    "green_mould": "green green_fuzz green_growth blue_green_mould",
    "black_mould": "black black_growth black_spots",
    "other_mould": "mould mouldy fuzz fungus",
    "sour": "sour_smell vinegar vinegary pickled pickle pickles acid acidic yoghurt tangy",
    "rotten": "rot rotten_smell foul foul_smell putrid bad_smell stinks stench smelly sewage",
    "ammonia": "ammonia_smell urine",
    "alcohol": "beer beery yeasty wine alcohol_smell",
    "wet": "soggy soaking slimy waterlogged",
    "dry": "dried_out crumbly",
    "no_liquid": "no_juice no_leachate nothing_drains",
    "much_liquid": "lots_of_liquid too_much_liquid a_lot_of_liquid much_juice",
    "insects": "flies fly fruit_flies maggots maggot larvae gnats ants worms",
    "rodents": "rats rat mice mouse",
    "gas": "bulging bulging_lid hissing swollen pressure bloated",
    "warm": "hot too_warm too_hot",
    "cold": "too_cold frozen freezing",
}
_NAMES: Mapping[str, str] = {
    **{f"{colour}_mould": sign for colour, sign in MOULD_OF_COLOUR.items()},
    **{sign: sign for sign in SIGNS},
    **{word: sign for sign, words in _WORDS.items() for word in words.split()},
}


def signs_named(text: str) -> list[str]:
    """The signs in a list of them; words that are none stay as they were written."""
    found: list[str] = []
    for part in filter(None, map(str.strip, re.split(r"[,;+&\n]|\band\b", text.lower()))):
        named = _named(part)
        apart = [_named(word) for word in part.split()]
        found += [named] if named else [name for name in apart if name] if all(apart) else [part]
    return found


def _named(words: str) -> str | None:
    return _NAMES.get(re.sub(r"[\s-]+", "_", words).replace("mold", "mould"))
