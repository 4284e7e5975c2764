"""The table behind `allowed`: what people ask about, and what the trade says of it."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from handlers.practice.figure import Standing
from handlers.practice.kinds import Kind

Verdict = Literal["yes", "with care", "no"]


@dataclass(frozen=True, slots=True)
class Row:
    """One kind of thing, the words for it, and what the trade says of it."""

    name: str
    words: tuple[str, ...]
    verdict: Verdict
    why: str
    source: str
    standing: Standing = "common practice"


_BOOK = "Footer, Bokashi Composting, 2013"
_TRADE = "habit of the trade"


def _row(name: str, words: str, verdict: Verdict, why: str, source: str = _TRADE) -> Row:
    standing: Standing = "common practice" if source == _TRADE else "published"
    return Row(name, tuple(words.split(", ")), verdict, why, source, standing)


ROWS: tuple[Row, ...] = (
    _row(
        "big bones",
        "big bone, large bone, beef bone, ham bone, marrow bone, knuckle, carcass, rib, skull",
        "with care",
        "they come out whole: leave them out if you can, or bury them deep for good",
    ),
    _row(
        "small bones",
        "bone, chicken bone, fish bone, wing, drumstick",
        "with care",
        "small ones go in and come out soft but whole",
    ),
    _row(
        "shells",
        "shell, eggshell, egg shell, seashell, oyster, mussel, clam, crab, lobster, prawn shell",
        "with care",
        "they do no harm and do not ferment: crush them, they stay whole in the soil",
    ),
    _row(
        "stones of fruit",
        "pit, stone, cherry stone, peach stone, avocado stone, avocado pit, mango stone, corn "
        "cob, cob, nutshell, nut shell, coconut",
        "with care",
        "too hard to break down: they do no harm, cut or leave out the big ones",
    ),
    _row(
        "liquids",
        "liquid, soup, broth, stock, juice, milk, gravy, wine, beer, sauce, water, smoothie, "
        "tea, coffee, yoghurt drink, brine",
        "with care",
        "free liquid drowns the ferment: strain it off, or soak a little up with bread or paper",
    ),
    _row(
        "oil and fat",
        "oil, fat, grease, lard, butter, margarine, dripping, mayonnaise, frying oil, cooking oil",
        "with care",
        "a spoonful on food is fine, with more starter; cups of it keep the ferment out",
    ),
    _row(
        "mouldy food",
        "mould, mold, mouldy food, moldy food, mouldy bread, moldy bread, mouldy, moldy, green "
        "bread",
        "no",
        "green or black growth brings the wrong microbes in: bury it apart or put it in the waste",
        f"{_BOOK}, ch. 4 and 6",
    ),
    _row(
        "rotten food",
        "rotten, spoiled, gone off, off meat, rancid, smelly meat, maggot",
        "no",
        "what is already rotting spoils the bin",
        "a South African supplier's guide",
    ),
    _row(
        "pet waste",
        "poo, poop, faeces, feces, dog waste, cat waste, pet waste, cat litter, litter, dog "
        "poo, dog mess, manure, nappy, diaper, hamster bedding, droppings",
        "no",
        "it carries parasites that fermenting does not kill: never into soil for food",
    ),
    _row(
        "plastic, glass and metal",
        "plastic, plastic bag, cling film, foil, tin, tin can, glass, metal, rubber, sticker, "
        "wrapper, styrofoam, bottle, lid, elastic band, tea bag with plastic",
        "no",
        "it never breaks down",
    ),
    _row(
        "bags called compostable",
        "compostable bag, biodegradable bag, bioplastic, compostable liner, compostable cup, pla",
        "no",
        "they need a hot heap, and come out of a bin or trench whole",
    ),
    _row(
        "citrus",
        "citrus, lemon, lime, orange, orange peel, lemon peel, grapefruit, mandarin, satsuma",
        "yes",
        "peel too: cut it up, since thick peel is slow",
    ),
    _row(
        "onion and garlic",
        "onion, garlic, leek, shallot, onion skin",
        "yes",
        "they do the ferment no harm",
    ),
    _row(
        "meat and fish",
        "meat, fish, chicken, beef, pork, lamb, bacon, sausage, ham, turkey, skin, offal, "
        "prawn, shrimp, salmon, tuna, steak, mince, liver, ground beef, ground meat, meatball",
        "yes",
        "cut up, fresh, with more starter; ask your local authority before a shared site takes it",
        f"{_BOOK}, ch. 6; Reg. (EU) 142/2011",
    ),
    _row(
        "dairy and eggs",
        "dairy, cheese, yoghurt, yogurt, cream, egg, cheese rind, quark, ice cream, custard",
        "yes",
        "with more starter",
        f"{_BOOK}, ch. 6",
    ),
    _row(
        "bread, rice and pasta",
        "bread, rice, pasta, noodle, cereal, porridge, oat, cake, biscuit, cookie, pizza, "
        "dough, flour, pastry, tortilla, couscous, chip, crisp",
        "yes",
        "broken up; dry ones soak up liquid",
    ),
    _row(
        "cooked food",
        "cooked, leftover, cooked food, plate scraping, stew, curry, dinner, takeaway, salad, "
        "dressing, ready meal, casserole",
        "yes",
        "drain off the sauce first",
        f"{_BOOK}, ch. 6",
    ),
    _row(
        "fruit and vegetables",
        "fruit, vegetable, peel, peeling, core, apple, banana, banana skin, carrot, cabbage, "
        "lettuce, tomato, pepper, melon, rind, pumpkin, squash, berry, grape, mango, pineapple, "
        "peach, plum, cherry, pear, kiwi, strawberry, watermelon, broccoli, cauliflower, bean, "
        "lentil, pea, potato, tofu, mushroom, herb, avocado, cucumber, celery, beet, corn, "
        "spinach, kale, rhubarb, veg, veggie, food scrap, kitchen scrap, scrap, food",
        "yes",
        "cut to the size of a thumb",
        "a US community programme: chop to 0.5 to 1 in",
    ),
    _row(
        "nuts and seeds",
        "nut, seed, peanut, almond, walnut",
        "yes",
        "shelled; crush them if you can",
    ),
    _row(
        "coffee grounds and tea leaves",
        "coffee ground, tea leaf, tea leave, loose tea, coffee filter, paper filter, filter",
        "yes",
        "drained, and not the whole layer",
    ),
    _row(
        "tea bags",
        "tea bag, teabag",
        "with care",
        "many hold plastic: tear them and put in the leaves",
    ),
    _row(
        "paper and cardboard",
        "paper, cardboard, newspaper, kitchen roll, paper towel, napkin, tissue, egg box, egg "
        "carton",
        "with care",
        "a little torn plain paper soaks up liquid; printed or greasy board stays out",
        "a supplier's guide",
    ),
    _row(
        "flowers and garden cuttings",
        "flower, cut flower, garden, grass, grass clipping, leaf, leave, weed, hedge, prunings, "
        "plant, straw, hay, twig, branch, wood, sawdust",
        "with care",
        "wilted flowers and soft leaves in small amounts; the rest is better on a heap",
    ),
    _row(
        "ash and charcoal",
        "ash, wood ash, cigarette, charcoal, coal",
        "no",
        "ash takes away the acid that the ferment lives on",
    ),
    _row(
        "soil and lime",
        "soil, lime powder, garden lime, compost, dirt, sand",
        "no",
        "it brings other microbes and takes away the acid: soil comes after burial",
    ),
    _row(
        "chemicals and medicine",
        "chemical, bleach, soap, detergent, medicine, pill, paint, battery, disinfectant, "
        "antibiotic",
        "no",
        "they kill the ferment and do not belong in soil",
    ),
    _row(
        "dead animals",
        "dead animal, dead mouse, dead rat, dead bird, roadkill, carcase",
        "no",
        "ask your local authority how to dispose of it",
    ),
    _row("hair and feathers", "hair, feather, fur, wool, lint, nail", "no", "far too slow here"),
    _row(
        "vinegar and pickles",
        "vinegar, pickle, kimchi, sauerkraut, chutney, salt, salty food",
        "with care",
        "drained and in small amounts: much vinegar or salt holds the ferment back",
    ),
)
"""Every kind of thing that the trade has a word on."""

OF_KIND: Mapping[Kind, str] = {
    "vegetable": "fruit and vegetables",
    "fruit": "fruit and vegetables",
    "grain": "bread, rice and pasta",
    "pulse": "fruit and vegetables",
    "meat": "meat and fish",
    "fish": "meat and fish",
    "dairy": "dairy and eggs",
    "egg": "dairy and eggs",
    "oil": "oil and fat",
    "bone": "small bones",
    "cooked": "cooked food",
    "coffee": "coffee grounds and tea leaves",
    "garden": "flowers and garden cuttings",
    "paper": "paper and cardboard",
    "liquid": "liquids",
    "mixed": "fruit and vegetables",
}
"""The row that stands for a kind, where the words themselves are in none."""
