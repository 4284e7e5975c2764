"""What can be the matter with a bin: each cause, how often each sign goes with it, the remedy.

The remedies are the trade's. How often a sign goes with a cause is our own judgement, and good
for putting causes in order only.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from handlers.practice.figure import Standing


@dataclass(frozen=True, slots=True)
class Cause:
    """One thing that can be the matter, how often each sign goes with it, and the remedy."""

    cause: str
    weight: float
    """Before any sign is known, relative to the others; then its share of the likelihood."""
    do: str
    source: str
    standing: Standing


NOTHING = "nothing is wrong"
_BOOK = "Footer, Bokashi Composting, 2013"

CAUSES: tuple[tuple[Cause, Mapping[str, float]], ...] = (
    (
        Cause(
            NOTHING,
            1.0,
            "White growth and a pickled smell are the ferment at work: carry on.",
            f"{_BOOK}, ch. 4; booklets",
            "published",
        ),
        {"white_mould": 0.6, "sour": 0.9, "alcohol": 0.4, "no_liquid": 0.3, "much_liquid": 0.15},
    ),
    (
        Cause(
            "too little starter",
            0.8,
            "Drain it, strew half as much again on the top, press and seal; do so on the next "
            "layers too.",
            f"{_BOOK}, ch. 6",
            "published",
        ),
        {"rotten": 0.6, "ammonia": 0.4, "green_mould": 0.3, "other_mould": 0.3, "insects": 0.1},
    ),
    (
        Cause(
            "air gets in",
            0.8,
            "Press the scraps, strew starter on top and lay a plate on them; check the lid, and "
            "open it once a day at most.",
            f"{_BOOK}, ch. 4 and 6",
            "published",
        ),
        {
            "green_mould": 0.7,
            "black_mould": 0.6,
            "other_mould": 0.6,
            "rotten": 0.35,
            "insects": 0.3,
            "white_mould": 0.3,
        },
    ),
    (
        Cause(
            "too wet, or not drained",
            0.7,
            "Drain every two to three days, add torn paper or dry bran, and hold back soup and "
            "juice.",
            "",
            "common practice",
        ),
        {
            "wet": 0.8,
            "much_liquid": 0.8,
            "rotten": 0.4,
            "black_mould": 0.3,
            "green_mould": 0.2,
            "insects": 0.1,
        },
    ),
    (
        Cause(
            "too much meat, fish or dairy for its starter",
            0.4,
            "Add starter and something dry and starchy (bread, rice), and drain it.",
            "",
            "common practice",
        ),
        {"ammonia": 0.8, "rotten": 0.4, "insects": 0.1},
    ),
    (
        Cause(
            "scraps were already off when they went in",
            0.4,
            "Put scraps in fresh, or freeze them until you do; cover these well with starter.",
            "a South African supplier",
            "published",
        ),
        {"rotten": 0.5, "black_mould": 0.3, "green_mould": 0.3, "insects": 0.3},
    ),
    (
        Cause(
            "flies laid eggs on the scraps",
            0.3,
            "Tighten the lid, strew starter thickly, and freeze scraps for two days before they "
            "go in.",
            "",
            "common practice",
        ),
        {"insects": 0.95, "rotten": 0.35},
    ),
    (
        Cause(
            "animals can get at it",
            0.2,
            "Move the bin to where nothing gnaws, weigh the lid down, and clear up spills.",
            "",
            "common practice",
        ),
        {"rodents": 0.95},
    ),
    (
        Cause(
            "yeasts make gas",
            0.4,
            "Let the gas out daily, face turned away, and keep the bin cooler.",
            "",
            "common practice",
        ),
        {"gas": 0.9, "alcohol": 0.6, "warm": 0.3, "sour": 0.3},
    ),
    (
        Cause(
            "too warm",
            0.3,
            "Move it out of the sun to a place of 15 to 25 °C.",
            "",
            "common practice",
        ),
        {"warm": 0.9, "gas": 0.4, "alcohol": 0.4, "rotten": 0.2, "much_liquid": 0.2},
    ),
    (
        Cause(
            "too cold, so it is slow",
            0.3,
            "Bring it indoors, and leave it sealed for one to four weeks longer.",
            "growth of lactic acid bacteria by temperature (Wijtzes et al. 1995)",
            "derived",
        ),
        {"cold": 0.9, "no_liquid": 0.3, "dry": 0.1},
    ),
    (
        Cause(
            "too dry",
            0.3,
            "Mix in juicy scraps, or sprinkle a little water; no liquid at all is no fault.",
            "",
            "common practice",
        ),
        {"dry": 0.9, "no_liquid": 0.5, "white_mould": 0.2},
    ),
    (
        Cause(
            "the starter is dead or mouldy",
            0.25,
            "Smell it: sweet and sour is alive. If it is not, use a fresh batch and a double dose.",
            f"{_BOOK}, ch. 4; recipes",
            "published",
        ),
        {
            "rotten": 0.4,
            "green_mould": 0.35,
            "black_mould": 0.2,
            "ammonia": 0.2,
            "other_mould": 0.3,
        },
    ),
)
"""Every cause, and how often each sign goes with it."""
