"""The table behind `allowed`: what goes into a bin, and what the trade says of it."""

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
    care: str = ""
    """The caution that goes with it, by its name; empty if none."""


BOOK = "Footer, Bokashi Composting, 2013"


def row(
    name: str, words: str, verdict: Verdict, why: str, source: str = "", *, care: str = ""
) -> Row:
    """A row; without a source it is common practice."""
    standing: Standing = "published" if source else "common practice"
    return Row(name, tuple(words.split(", ")), verdict, why, source, standing, care)


GOES_IN: tuple[Row, ...] = (
    row(
        "big bones",
        "big bone, large bone, beef bone, ham bone, marrow bone, lamb bone, pork bone, soup bone, "
        "knuckle, carcass, carcase, rib, spare rib, skull, shank, hoof, antler, turkey carcass, "
        "t bone, horn",
        "with care",
        "they come out whole: leave them out if you can, or bury them deep for good",
    ),
    row(
        "small bones",
        "bone, chicken bone, fish bone, wing, drumstick, chicken wing, chicken carcass, wishbone, "
        "fish head, fish skeleton",
        "with care",
        "small ones go in and come out soft but whole",
    ),
    row(
        "shells",
        "shell, eggshell, egg shell, seashell, oyster, mussel, clam, crab, lobster, prawn shell, "
        "shrimp shell, crab shell, mussel shell, oyster shell, clam shell, snail shell, crayfish, "
        "cockle, shellfish, barnacle",
        "with care",
        "they do no harm and do not ferment: crush them, they stay whole in the soil",
    ),
    row(
        "fruit stones, cobs and nutshells",
        "pit, stone, cherry stone, peach stone, plum stone, date stone, olive stone, olive pit, "
        "avocado stone, avocado pit, mango stone, mango pit, corn cob, cob, corncob, nutshell, nut "
        "shell, walnut shell, pistachio shell, peanut shell, coconut, coconut shell, coconut husk, "
        "pineapple top, corn husk, artichoke leaf",
        "with care",
        "too hard to break down: they do no harm, cut or leave out the big ones",
    ),
    row(
        "liquids",
        "liquid, soup, broth, stock, juice, orange juice, milk, sour milk, gravy, wine, beer, "
        "sauce, water, smoothie, tea, coffee, yoghurt drink, brine, soda, cola, lemonade, syrup, "
        "cooking water, pasta water, rice water, kefir, buttermilk, whey, cider, spirit, vodka, "
        "whisky, alcohol, drink, soy sauce, fish sauce, stew liquid, ramen broth, bone broth, "
        "oat milk, soy milk, almond milk, coconut milk, baby milk",
        "with care",
        "free liquid drowns the ferment: strain it off, or soak a little up with bread or paper",
    ),
    row(
        "oil and fat",
        "oil, fat, grease, lard, butter, margarine, dripping, mayonnaise, mayo, frying oil, "
        "cooking oil, olive oil, coconut oil, vegetable oil, ghee, suet, tallow, bacon fat, "
        "chicken fat, shortening, deep fryer oil, used oil",
        "with care",
        "a spoonful on food is fine, with more starter; cups of it keep the ferment out",
    ),
    row(
        "citrus",
        "citrus, citrus peel, lemon, lime, orange, orange peel, lemon peel, lime peel, grapefruit, "
        "mandarin, satsuma, clementine, tangerine, pomelo, yuzu, kumquat, zest",
        "yes",
        "peel too: cut it up, since thick peel is slow",
    ),
    row(
        "onion and garlic",
        "onion, onion skin, onion peel, garlic, garlic skin, leek, shallot, spring onion, "
        "scallion, "
        "chive, spicy food, chilli, chili, chile, hot pepper, jalapeno, ginger, horseradish, "
        "wasabi",
        "yes",
        "they do the ferment no harm",
    ),
    row(
        "meat and fish",
        "meat, raw meat, cooked meat, fish, raw fish, cooked fish, chicken, raw chicken, chicken "
        "skin, poultry, duck, goose, beef, pork, lamb, mutton, goat, veal, venison, rabbit, bacon, "
        "sausage, salami, chorizo, ham, hot dog, turkey, skin, fish skin, fish gut, gut, gizzard, "
        "offal, giblet, kidney, heart, tongue, tripe, blood, liver, pate, prawn, shrimp, shrimp "
        "head, salmon, tuna, sardine, anchovy, cod, herring, mackerel, squid, octopus, calamari, "
        "scallop, sushi, steak, mince, minced meat, ground beef, ground meat, meatball, burger, "
        "hamburger, patty, kebab, jerky, gristle, meat scrap, fish scrap, dog food, cat food, pet "
        "food, snail, cricket",
        "yes",
        "cut up, fresh, with more starter",
        f"{BOOK}, ch. 6",
        care="meat",
    ),
    row(
        "dairy and eggs",
        "dairy, cheese, blue cheese, cream cheese, cottage cheese, cheddar, mozzarella, parmesan, "
        "feta, brie, ricotta, paneer, halloumi, cheese rind, yoghurt, yogurt, yoghourt, cream, "
        "sour "
        "cream, egg, raw egg, boiled egg, egg white, yolk, omelette, quark, curd, skyr, ice cream, "
        "custard, pudding, milk powder, cheesecake, quiche",
        "yes",
        "with more starter",
        f"{BOOK}, ch. 6",
    ),
    row(
        "bread, rice and pasta",
        "bread, stale bread, bread crust, crust, toast, bun, bagel, croissant, rice, cooked rice, "
        "pasta, cooked pasta, spaghetti, macaroni, lasagne, lasagna, noodle, ramen, cereal, "
        "cornflake, muesli, granola, porridge, oat, oatmeal, polenta, grits, quinoa, bulgur, "
        "barley, buckwheat, millet, semolina, cake, muffin, brownie, biscuit, cookie, cracker, "
        "pretzel, waffle, pancake, crepe, pie, pizza, dough, sourdough, sourdough starter, flour, "
        "pastry, doughnut, donut, tortilla, taco, wrap, roti, chapati, naan, pita, injera, dosa, "
        "idli, dumpling, gnocchi, congee, risotto, fufu, ugali, couscous, chip, fry, crisp, "
        "popcorn, starch, grain, bran, wheat, yeast",
        "yes",
        "broken up; dry ones soak up liquid",
    ),
    row(
        "sweet things",
        "sugar, honey, jam, marmalade, chocolate, candy, sweet, toffee, jelly, molasses, dessert, "
        "peanut butter, nutella, spread, marshmallow",
        "yes",
        "unwrapped, and a little at a time: sugar feeds the yeasts",
    ),
    row(
        "cooked food",
        "cooked, cooked vegetable, leftover, left over, cooked food, plate scraping, table scrap, "
        "stew, curry, dinner, lunch, takeaway, takeout, salad, dressing, salad dressing, hummus, "
        "dip, guacamole, salsa, ready meal, casserole, stir fry, fried food, fried rice, sandwich, "
        "baby food, burrito, paella, dal, dhal, chili con carne, gratin, mashed potato, pesto, "
        "ketchup, mustard, spice, tomato sauce, pasta sauce, expired food, processed food, frozen "
        "food, freezer burnt food, canned food, tinned food, meal, spring roll, falafel",
        "yes",
        "drain off the sauce first",
        f"{BOOK}, ch. 6",
    ),
    row(
        "fruit and vegetables",
        "fruit, vegetable, veg, veggie, peel, peeling, core, apple, apple core, banana, banana "
        "skin, banana peel, carrot, carrot top, cabbage, lettuce, tomato, pepper, bell pepper, "
        "melon, melon rind, watermelon rind, rind, pumpkin, squash, berry, blueberry, raspberry, "
        "blackberry, cranberry, gooseberry, currant, grape, raisin, mango, pineapple, papaya, "
        "guava, lychee, passion fruit, dragon fruit, pomegranate, fig, date, apricot, nectarine, "
        "peach, plum, prune, cherry, pear, quince, persimmon, kiwi, strawberry, watermelon, "
        "cantaloupe, plantain, broccoli, broccoli stalk, cauliflower, sprout, brussels sprout, "
        "bean, "
        "green bean, baked bean, lentil, chickpea, pea, pea pod, soybean, edamame, tempeh, natto, "
        "miso, potato, potato peel, sweet potato, yam, cassava, taro, tofu, mushroom, truffle, "
        "seaweed, nori, kelp, herb, basil, parsley, mint, rosemary, thyme, coriander, cilantro, "
        "dill, lemongrass, avocado, avocado skin, cucumber, courgette, zucchini, aubergine, "
        "eggplant, okra, celery, celeriac, fennel, beet, beetroot, turnip, swede, rutabaga, "
        "parsnip, radish, daikon, corn, sweetcorn, spinach, kale, chard, rocket, arugula, cress, "
        "bok choy, pak choi, endive, chicory, asparagus, artichoke, rhubarb, olive, "
        "caper, tomatillo, jackfruit, durian, bamboo shoot, bean sprout, stalk, stem, pulp, "
        "pomace, "
        "juicing pulp, okara, food scrap, kitchen scrap, kitchen waste, food waste, scrap, food, "
        "peapod, husk, tamarind, turmeric, windfall, food rubbish, kitchen rubbish, kitchen trash, "
        "kitchen garbage, food garbage",
        "yes",
        "cut to the size of a thumb",
        "a US community programme: chop to 0.5 to 1 in",
    ),
    row(
        "rhubarb leaves",
        "rhubarb leaf, rhubarb leave",
        "yes",
        "poisonous to eat, but their acid breaks down; keep children and animals off them",
        "Chicago Botanic Garden, on composting them",
    ),
    row(
        "nuts and seeds",
        "nut, seed, peanut, almond, walnut, cashew, hazelnut, pecan, pistachio, chestnut, sesame, "
        "sunflower seed, pumpkin seed, tahini, birdseed, bird seed",
        "yes",
        "shelled; crush them if you can",
    ),
    row(
        "coffee grounds and tea leaves",
        "coffee ground, used coffee, espresso puck, tea leaf, tea leave, loose tea, herbal tea "
        "leaf, coffee filter, paper filter, filter, chaff, matcha",
        "yes",
        "drained, and not the whole layer",
    ),
    row(
        "tea bags",
        "tea bag, teabag",
        "with care",
        "many hold plastic: tear them and put in the leaves",
    ),
    row(
        "paper and cardboard",
        "paper, cardboard, newspaper, newsprint, kitchen roll, kitchen paper, paper towel, paper "
        "bag, paper plate, paper napkin, napkin, serviette, kitchen towel, tissue, tissue paper, "
        "facial tissue, "
        "kleenex, egg box, egg carton, toilet roll, toilet roll tube, pizza box, cupcake case, "
        "paper straw, shredded paper, envelope, carton, cork",
        "with care",
        "a little torn plain paper soaks up liquid; printed or greasy board stays out",
        "a supplier's guide",
    ),
    row(
        "flowers and garden cuttings",
        "flower, cut flower, bouquet, petal, garden, garden waste, yard waste, grass, grass "
        "clipping, grass cutting, lawn clipping, leaf, leave, dead leaf, autumn leaf, weed, hedge, "
        "hedge clipping, prunings, plant, houseplant, house plant, dead plant, straw, hay, moss, "
        "pine needle, twig, branch, bark, wood, wood chip, sawdust, stick, skewer, toothpick, "
        "chopstick, ice cream stick, lolly stick, root, bulb, christmas tree, ivy, thorn",
        "with care",
        "wilted flowers and soft leaves in small amounts; the rest is better on a heap",
    ),
    row(
        "vinegar and pickles",
        "vinegar, pickle, pickled onion, gherkin, kimchi, sauerkraut, chutney, salt, salty food, "
        "salted fish, olive brine, relish, kombucha scoby, scoby",
        "with care",
        "drained and in small amounts: much vinegar or salt holds the ferment back",
    ),
)
"""What goes in, some of it with care."""

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
