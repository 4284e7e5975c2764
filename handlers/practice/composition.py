"""What scraps are made of: water, nitrogen and carbon, by kind, and of a blend.

Foods are rows of the USDA National Nutrient Database, SR28, in g per 100 g as eaten. Nitrogen is
protein / 6.25; carbon is 44.4 % of carbohydrate, 53 % of protein and 77 % of fat (starch, average
protein, triolein). Grass and leaves are those of Cornell's worked examples. A kind is the mean of
its foods; shares are taken as shares of the mass.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from math import inf

from handlers.practice.density import shares
from handlers.practice.figure import Figure, Standing
from handlers.practice.kinds import NAMES, Kind, Shares

PROTEIN_PER_NITROGEN = Figure(
    "protein to one part of nitrogen",
    6.25,
    "g/g",
    "general factor; USDA's own run from 5.70 to 6.38",
    "published",
    5.70,
    6.38,
)
CARBON_OF_CARBOHYDRATE = Figure("carbon in starch", 0.444, "g/g", "C6H10O5", "derived")
CARBON_OF_PROTEIN = Figure(
    "carbon in protein",
    0.53,
    "g/g",
    "the average residue C4.94 H7.76 N1.36 O1.48 S0.04 (Senko et al. 1995)",
    "derived",
    0.50,
    0.55,
)
CARBON_OF_FAT = Figure("carbon in fat", 0.77, "g/g", "triolein, C57H104O6", "derived")
NITROGEN_MIXED = Figure(
    "nitrogen in mixed scraps",
    0.7,
    "% of wet mass",
    "foods of USDA SR28 in the shares that kitchens throw away (6 % meat and fish, WRAP)",
    "derived",
    0.5,
    1.0,
)


@dataclass(frozen=True, slots=True)
class Content:
    """Water, nitrogen and carbon in % of the wet mass, and where that is from."""

    water: float
    nitrogen: float
    carbon: float
    source: str
    standing: Standing


def _food(ndb: str, water: float, protein: float, fat: float, carbohydrate: float) -> Content:
    carbon = CARBON_OF_CARBOHYDRATE.value * carbohydrate
    carbon += CARBON_OF_PROTEIN.value * protein + CARBON_OF_FAT.value * fat
    nitrogen = protein / PROTEIN_PER_NITROGEN.value
    return Content(water, nitrogen, carbon, f"USDA SR28 {ndb}", "published")


def _garden(*, water: float, nitrogen: float, carbon: float) -> Content:
    """From percent of the dry mass."""
    dry = 1 - water / 100
    return Content(water, nitrogen * dry, carbon * dry, "Cornell Composting, examples", "published")


FOODS: Mapping[str, Content] = {
    "potato": _food("11352", 79.25, 2.05, 0.09, 17.49),
    "potato peel": _food("11362", 83.29, 2.57, 0.10, 12.44),
    "carrot": _food("11124", 88.29, 0.93, 0.24, 9.58),
    "cabbage": _food("11109", 92.18, 1.28, 0.10, 5.80),
    "lettuce": _food("11252", 95.64, 0.90, 0.14, 2.97),
    "onion": _food("11282", 89.11, 1.10, 0.10, 9.34),
    "tomato": _food("11529", 94.52, 0.88, 0.20, 3.89),
    "celery": _food("11143", 95.43, 0.69, 0.17, 2.97),
    "banana": _food("09040", 74.91, 1.09, 0.33, 22.84),
    "apple": _food("09003", 85.56, 0.26, 0.17, 13.81),
    "orange peel": _food("09216", 72.50, 1.50, 0.20, 25.00),
    "watermelon": _food("09326", 91.45, 0.61, 0.15, 7.55),
    "rice": _food("20045", 68.44, 2.69, 0.28, 28.17),
    "pasta": _food("20121", 62.13, 5.80, 0.93, 30.86),
    "bread": _food("18069", 36.42, 8.85, 3.33, 49.42),
    "kidney beans": _food("16033", 66.94, 8.67, 0.50, 22.80),
    "chicken": _food("05064", 65.26, 31.02, 3.57, 0),
    "beef": _food("23573", 55.99, 25.75, 17.78, 0),
    "pork": _food("10093", 62.53, 27.51, 9.21, 0),
    "salmon": _food("15209", 59.62, 25.44, 8.13, 0),
    "egg": _food("01129", 74.62, 12.58, 10.61, 1.12),
    "cheddar": _food("01009", 37.02, 22.87, 33.31, 3.09),
    "mozzarella": _food("01026", 50.01, 22.17, 22.35, 2.19),
    "milk": _food("01077", 88.13, 3.15, 3.25, 4.80),
    "yogurt": _food("01116", 87.90, 3.47, 3.25, 4.66),
    "butter": _food("01001", 15.87, 0.85, 81.11, 0.06),
    "olive oil": _food("04053", 0, 0, 100, 0),
    "beef stock": _food("06170", 95.89, 1.97, 0.09, 1.20),
    "wheat bran": _food("20077", 9.89, 15.55, 4.25, 64.51),
    "molasses": _food("19304", 21.87, 0, 0.10, 74.73),
    "grass": _garden(water=77, nitrogen=2.4, carbon=45),
    "grass clippings": _garden(water=77, nitrogen=2.4, carbon=45),
    "leaves": _garden(water=35, nitrogen=0.75, carbon=50),
}
"""Foods by name."""


def _mean(*names: str) -> Content:
    parts = [FOODS[name] for name in names]
    count = len(parts)
    return Content(
        sum(part.water for part in parts) / count,
        sum(part.nitrogen for part in parts) / count,
        sum(part.carbon for part in parts) / count,
        "USDA SR28",
        "derived",
    )


CONTENT: Mapping[Kind, Content] = {
    "vegetable": _mean("potato peel", "carrot", "cabbage", "lettuce", "onion", "tomato", "celery"),
    "fruit": _mean("banana", "apple", "orange peel", "watermelon"),
    "grain": _mean("rice", "pasta", "bread"),
    "pulse": _mean("kidney beans"),
    "meat": _mean("chicken", "beef", "pork"),
    "fish": _mean("salmon"),
    "dairy": _mean("cheddar", "mozzarella", "yogurt"),
    "egg": _mean("egg"),
    "oil": _mean("olive oil", "butter"),
    "bone": Content(35, 3.0, 15.0, "bones come out of a bin nearly as they went in", "from memory"),
    "cooked": _mean("rice", "pasta", "potato", "carrot", "chicken"),
    "coffee": Content(
        60,
        0.86,
        18.9,
        "Oregon State University Extension: N about 2 % of dry mass; C:N 20 to 24, 60 % water",
        "derived",
    ),
    "garden": FOODS["grass"],
    "paper": Content(5.5, 0.09, 59.1, "Cornell Composting, newsprint", "published"),
    "liquid": _mean("beef stock", "milk"),
    "mixed": Content(
        70,
        NITROGEN_MIXED.value,
        10.5,
        "food waste of San Francisco: 70 to 74 % water (Zhang et al. 2007); C:N 15 in tables",
        "derived",
    ),
}
"""Content by kind."""


def blend_of(parts: Iterable[tuple[float, Content]]) -> Content:
    """Content of a blend, from (mass or share, content) pairs."""
    known = list(parts)
    if len(known) == 1:
        return known[0][1]
    whole = sum(mass for mass, _ in known)
    return Content(
        sum(mass * part.water for mass, part in known) / whole,
        sum(mass * part.nitrogen for mass, part in known) / whole,
        sum(mass * part.carbon for mass, part in known) / whole,
        "; ".join(dict.fromkeys(part.source for _, part in known)),
        "derived",
    )


def content(materials: Shares | None) -> Content:
    """Content of scraps of that make-up."""
    return blend_of((share, CONTENT[kind]) for kind, share in shares(materials).items())


def content_named(name: str) -> Content | None:
    """Content of a food or a kind by its name; None if it is neither."""
    food = FOODS.get(name.replace("_", " "))
    if food is not None:
        return food
    kind = NAMES.get(name)
    return CONTENT[kind] if kind else None


def water_in(made: Content) -> Figure:
    """The water in some scraps, as a figure with its source."""
    return Figure("water in these scraps", made.water, "%", made.source, made.standing)


def ratio(part: Content) -> float:
    """C:N; without end where there is no nitrogen."""
    return part.carbon / part.nitrogen if part.nitrogen else inf
