"""One thing that may be scraps, and what its food is: a dish, scraps of no stated kind, rice."""

from collections.abc import Sequence
from functools import lru_cache
from typing import NamedTuple

from handlers.practice.composition import FOODS
from handlers.practice.kinds import Kind
from handlers.reading.words.vocabulary import Food


class Item(NamedTuple):
    """One thing that words[start:end] name, with its make-up."""

    start: int
    end: int
    food: Food
    scrap: bool = False
    """The words say it is waste (peel, old, left over), not food to eat."""
    share: float | None = None
    """Its share of the whole, if said."""
    vague: bool = False
    """The share is a manner of speaking ("some", "a bit of"), and may be an amount as well."""
    absent: bool = False
    """It is said not to be among them ("without the crusts")."""
    generic: bool = False
    """Scraps or leftovers of no stated kind."""


ANIMALS: frozenset[Kind] = frozenset({"meat", "fish"})
PLANTS: frozenset[Kind] = frozenset({"vegetable", "fruit"})


@lru_cache(maxsize=1024)
def is_generic(food: Food) -> bool:
    """Whether it is scraps or leftovers of no stated kind."""
    return food.shares[0][0] == "mixed" or (food.shares == (("cooked", 1.0),) and food.rich == 0.25
                                            and food.name in _LEFTOVER_WORDS)  # fmt: skip


_LEFTOVER_WORDS = frozenset({"leftover", "left over", "leftovers", "cooked", "cooked food"})


def is_what_is_left(food: Food) -> bool:
    """ "Jollof party leftovers", "biryani pot scrapings": what was left of the dish before it."""
    named = "leftover" in food.name or "scraping" in food.name
    return is_generic(food) or (named and food.shares == (("cooked", 1.0),))


def is_dish(food: Food) -> bool:
    """Whether any of it was cooked."""
    return any(kind == "cooked" for kind, _ in food.shares)


def is_made_of(food: Food, told: Food) -> bool:
    """ "Pasta bake" is made of pasta, "jollof rice" of rice, "bacon rind" of bacon."""
    if food.name == told.name:
        return True
    first, _, second = food.name.partition(" ")
    if first == told.name and second in ("bake", "salad", "dish", "casserole"):
        return True
    return told.name in (first, second) and food.shares[0][0] == told.shares[0][0]


def is_rice(item: Item) -> bool:
    """Whether it is nothing but rice."""
    return item.food.shares == (("grain", 1.0),) and item.food.name.rpartition(" ")[2] == "rice"


def one_food(items: Sequence[Item]) -> str | None:
    """The one food that is named, where its own water and carbon are known: rice is no bread."""
    names = {item.food.name.removeprefix("cooked ") for item in items}
    return next(iter(names)) if len(names) == 1 and names <= FOODS.keys() else None
