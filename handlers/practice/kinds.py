"""The kinds of scraps, and which of them are rich (rot easily and want more starter)."""

from collections.abc import Mapping
from typing import Literal, get_args

Kind = Literal[
    "vegetable",
    "fruit",
    "grain",
    "pulse",
    "meat",
    "fish",
    "dairy",
    "egg",
    "oil",
    "bone",
    "cooked",
    "coffee",
    "garden",
    "paper",
    "liquid",
    "mixed",
]
"""What scraps can be: bread, rice and cake are `grain`; tea leaves are `coffee`; leftovers of no
stated kind are `cooked`; scraps of no stated kind are `mixed`."""

KINDS: tuple[Kind, ...] = get_args(Kind)

RICH: frozenset[Kind] = frozenset({"meat", "fish", "dairy", "egg", "bone", "oil"})

Shares = Mapping[Kind, float]
"""Kind to share of the whole; the shares add up to 1."""


def rich_share(materials: Shares) -> float:
    """Share of the scraps (0 to 1) that is meat, fish, dairy, egg, bone or oil."""
    return sum(share for kind, share in materials.items() if kind in RICH)
