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

_WORDS: Mapping[Kind, str] = {
    "vegetable": "vegetables veg veggie veggies greens peelings salad potato potatoes potato_peel "
    "carrot carrots cabbage lettuce onion onions tomato tomatoes celery",
    "fruit": "fruits apple apples banana bananas orange oranges orange_peel citrus melon "
    "watermelon",
    "grain": "grains bread rice pasta noodles cereal cake flour",
    "pulse": "pulses bean beans kidney_beans lentils tofu legumes",
    "meat": "meats chicken poultry beef pork lamb",
    "fish": "seafood salmon",
    "dairy": "cheese cheddar mozzarella yogurt yoghurt",
    "egg": "eggs",
    "oil": "oils fat fats grease butter olive_oil",
    "bone": "bones shell shells eggshells",
    "cooked": "leftover leftovers cooked_food",
    "coffee": "coffee_grounds grounds tea tea_leaves",
    "garden": "garden_waste yard grass grass_clippings leaves flowers",
    "paper": "newspaper cardboard",
    "liquid": "liquids soup juice milk broth beef_stock",
    "mixed": "scraps mixed_scraps other rest",
}
NAMES: Mapping[str, Kind] = {kind: kind for kind in KINDS} | {
    word: kind for kind, words in _WORDS.items() for word in words.split()
}
"""Kinds by the names that people give them in a list of figures."""

RICH: frozenset[Kind] = frozenset({"meat", "fish", "dairy", "egg", "bone", "oil"})

Shares = Mapping[Kind, float]
"""Kind to share of the whole; the shares add up to 1."""


def rich_share(materials: Shares) -> float:
    """Share of the scraps (0 to 1) that is meat, fish, dairy, egg, bone or oil."""
    return sum(share for kind, share in materials.items() if kind in RICH)
