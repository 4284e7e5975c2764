"""How people write units: one table from spelling to unit; a spelling not in it is no unit."""

from collections.abc import Mapping
from functools import cache
from typing import Literal, NamedTuple

from handlers.practice.household import VESSELS
from handlers.practice.units import BARE, KILOGRAMS, LITRES, METRES, SQUARE_METRES
from handlers.reading.acts import Units

Quantity = Literal[
    "mass", "volume", "celsius", "fahrenheit", "degrees", "length", "area", "days", "hours",
    "money", "percent", "ph", "difference",
]  # fmt: skip


class Unit(NamedTuple):
    """What one of a unit is in our own units, and whether it is a vessel of loose size."""

    quantity: Quantity
    factor: float
    """To kg, litres, metres, square metres, days or hours."""
    vessel: bool = False
    liquid: float | None = None
    """Litres, for an ounce that may be one of liquid."""


_MASS = {
    "kilogram": "k kg kgs kgg kkg kay_gee kay_gees kilo kilos kilogram kilograms "
    "kilogramme kilogrammes kilogramo "
    "kilogramos keelos kgm kgms kq kgz kilso klio kilogramms kilogrammen "
    "kilogramm kilogrammes chilo chili chilogrammo chilogrammi quilo quilos",
    "gram": "g gr grs gm gms grm grms gramms gram grams gramme grammes gramos gramo gs "
    "gramm grammi grammo gramas gramow gramy",
    "milligram": "mg mgs milligram milligrams milligramme milligrammes",
    "hectogram": "etto etti",
    "decagram": "dkg dkgs dag dags deka dekas dekagram dekagrams dekagramm decagram decagrams "
    "decagramme decagrammes",
    "metric_pound": "pfund",
    "pound": "lb lbs pound pounds pund punds pun libra libras livre livres #",
    "stone": "stone stones",
    "tonne": "tonne tonnes metric_ton metric_tons",
}
_VOLUME = {
    "litre": "l lt lts ltr ltrs litre litres liter liters litro litros litr lit litri litry litrow",
    "hectolitre": "hl hectolitre hectolitres hectoliter hectoliters",
    "decilitre": "dl decilitre decilitres deciliter deciliters",
    "centilitre": "cl centilitre centilitres centiliter centiliters",
    "millilitre": "ml mls mll mml mil mils millilitre millilitres milliliter milliliters "
    "mililitres mililiters mililitros cc",
    "cubic_metre": "cubic_metre cubic_metres cubic_meter cubic_meters",
    "cubic_inch": "cubic_inch cubic_inches cu_in",
    "us_bushel": "bushel bushels",
    "dessertspoon": "dessertspoon dessertspoons dessert_spoon dessert_spoons dsp",
    "cubic_foot": "cubic_feet cubic_foot cu_ft cuft",
    "japanese_cup": "japanese_cup japanese_cups",
    "us_gallon": "us_gallon us_gallons us_gal",
    "us_cup": "us_cup us_cups",
    "us_pint": "us_pint us_pints",
    "us_quart": "us_quart us_quarts",
    "imperial_gallon": "imperial_gallon imperial_gallons uk_gallon uk_gallons imp_gallon",
    "imperial_pint": "imperial_pint imperial_pints uk_pint uk_pints",
    "metric_cup": "metric_cup metric_cups",
    "australian_tablespoon": "australian_tablespoon australian_tablespoons",
}
# Bare units mean what the group has chosen.
_BARE = {
    "gallon": "gallon gallons gal gals galon galones gallo",
    "quart": "quart quarts qt qts",
    "pint": "pint pints pt pts",
    "gill": "gill gills",
    "cup": "cup cups cupful cupfuls cupsful taza tazas",
    "fluid_ounce": "fl_oz floz fluid_ounce fluid_ounces fl_ounces fluid_oz fl_ozs liquid_ounces "
    "fl_._oz",
    "tablespoon": "tbsp tbsps tbs tblsp tblsps tablespoon tablespoons tablespoonful tablespoonfuls "
    "table_spoon table_spoons table_spoonful table_spoonfuls "
    "cucharada cucharadas",
    "teaspoon": "tsp tsps teaspoon teaspoons teaspoonful teaspoonfuls tea_spoon tea_spoons",
}
_HUNDREDWEIGHT = "hundredweight hundredweights cwt"
_OUNCE = "oz ozs ounce ounces onza onzas"
_LENGTH = {
    "metre": "m metre metres meter meters",
    "centimetre": "cm cms centimetre centimetres centimeter centimeters",
    "millimetre": "mm mms millimetre millimetres",
    "inch": "inch inches",
    "foot": "ft foot feet",
    "yard": "yard yards yd yds",
}
_AREA = {
    "square_metre": "m2 sqm sq_m square_metre square_metres square_meter square_meters sq_metres "
    "sq_meters metres_square sq_mtr sq_mtrs",
    "square_foot": "sqft sq_ft square_foot square_feet ft2 sq_feet",
    "square_yard": "square_yard square_yards sq_yd sq_yds",
}
_TIME = {
    1: "day days night nights",
    7: "week weeks wk wks",
    14: "fortnight fortnights",
    30: "month months",
    365: "year years yr yrs",
}
_HOURS = {1.0: "hour hours hr hrs", 1 / 60: "min mins minute minutes", 1 / 3600: "secs seconds"}
_MONEY = (
    "shillings shilling bob naira rand cedis kwacha ksh "
    "quid pounds_sterling dollars dollar bucks euro euros rs rupees yen pesos pence cents"
)

_OF_ONE_SIZE = frozenset({"pinch", "spoon", "handful", "fistful", "scoop", "ladle", "eggcup"})
"""What is small already, or as large as a hand."""
_VESSELS = {
    "pinch": "pinch pinches",
    "spoon": "spoon spoons spoonful spoonfuls",
    "handful": "handful handfuls handfull handfulls hand_full hand_fulls handsful",
    "fistful": "fistful fistfuls fist fists",
    "scoop": "scoop scoops scoopful scoopfuls scoopfull",
    "ladle": "ladle ladles ladleful ladlefuls",
    "eggcup": "eggcup eggcups egg_cup egg_cups eggcupful",
    "espresso cup": "espresso_cup espresso_cups espresso",
    "teacup": "teacup teacups tea_cup tea_cups teacupful tea_glass tea_glasses coffee_cup",
    "coffee can": "coffee_can coffee_cans coffee_tin",
    "glass": "glass glasses glassful tumbler tumblers",
    "mug": "mug mugs mugful mugfuls mugfull",
    "can of food": "tin tins tin_can",
    "jam jar": "jam_jar jam_jars jamjar jamjars mason_jar mason_jars",
    "jar": "jar jars jarful jarfuls",
    "bowl": "bowl bowls bowlful bowlfuls bowlfull cereal_bowl soup_bowl",
    "katori": "katori katoris",
    "mixing bowl": "mixing_bowl mixing_bowls",
    "plate": "plate plates plateful platefuls platefull",
    "dish": "dish dishes dishful",
    "tray": "tray trays trayful",
    "lunch box": "lunch_box lunch_boxes lunchbox lunchboxes bento tupperware tupperwares "
    "tupper tiffin tiffins dabba",
    "jug": "jug jugs jugful pitcher pitchers",
    "bottle": "bottle bottles",
    "tub": "tub tubs tubful punnet punnets",
    "yoghurt pot": "yoghurt_pot yoghurt_pots yogurt_pot yogurt_pots yogurt_cup yogurt_cups",
    "margarine tub": "margarine_tub margarine_tubs marg_tub marg_tubs butter_tub butter_tubs",
    "takeaway box": "takeaway_box takeaway_boxes takeaway_tub takeaway_tubs takeout_box "
    "takeout_boxes takeout_container takeaway_container",
    "ice-cream tub": "ice_cream_tub ice_cream_tubs ice_cream_container ice_cream_containers "
    "ice_cream_bucket ice_cream_buckets icecream_bucket "
    "icecream_tub icecream_tubs icecream_container",
    "saucepan": "saucepan saucepans pan pans panful panfuls",
    "pot": "pot pots potful potfuls",
    "cooking pot": "kaldero kalderos sufuria sufurias degchi handi wok woks kadai dutch_oven "
    "stockpot "
    "stock_pot",
    "hotel pan": "hotel_pan hotel_pans gastronorm gn_pan steam_table_pan",
    "casserole": "casserole_dish casserole_dishes",
    "sandwich bag": "sandwich_bag sandwich_bags ziplock ziplocks zip_lock ziploc ziplocs",
    "freezer bag": "freezer_bag freezer_bags produce_bag produce_bags gallon_bag gallon_bags",
    "colander": "colander colanders colanderful sieve",
    "basin": "basin basins basinful",
    "caddy": "caddy caddies caddyful caddyfull kitchen_caddy",
    "carrier bag": "carrier_bag carrier_bags shopping_bag shopping_bags grocery_bag grocery_bags "
    "plastic_bag plastic_bags tote_bag",
    "paper bag": "paper_bag paper_bags",
    "bag": "bag bags bagful bagfuls bagfull bin_bag bin_bags sack_bag",
    "box": "box boxes boxful",
    "bucket": "bucket buckets bucketful bucketfuls bucketfull bucketload bucketloads pail pails "
    "pailful pailfuls cubeta cubetas balde baldes",
    "washing-up bowl": "washing_up_bowl washing_up_bowls dishpan dishpans",
    "watering can": "watering_can watering_cans regadera",
    "crate": "crate crates",
    "sack": "sack sacks sackful",
    "wheelbarrow": "wheelbarrow wheelbarrows barrow_load barrowload wheelbarrow_load barrowloads",
}


def _spelled(table: Mapping[str, str]) -> dict[str, str]:
    return {word: name for name, words in table.items() for word in words.split()}


def _fixed() -> dict[str, Unit]:
    table = {w: Unit("mass", KILOGRAMS[n]) for w, n in _spelled(_MASS).items()}
    table |= {w: Unit("volume", LITRES[n]) for w, n in _spelled(_VOLUME).items()}
    table |= {w: Unit("length", METRES[n]) for w, n in _spelled(_LENGTH).items()}
    table |= {w: Unit("area", SQUARE_METRES[n]) for w, n in _spelled(_AREA).items()}
    table |= {w: Unit("days", n) for n, words in _TIME.items() for w in words.split()}
    table |= {w: Unit("hours", n) for n, words in _HOURS.items() for w in words.split()}
    table |= {w: Unit("money", 1) for w in _MONEY.split()}
    vessels = _spelled(_VESSELS)
    table |= {w: Unit("volume", VESSELS[n].usual, True) for w, n in vessels.items()}
    table |= {
        f"{small}_{w}": Unit("volume", VESSELS[n].low, True)
        for w, n in vessels.items()
        if n not in _OF_ONE_SIZE
        for small in ("small", "wee")
    }
    table |= {w: Unit("percent", 0.01) for w in ("%", "percent", "per_cent", "pct")}
    table |= {w: Unit("celsius", 1) for w in ("°_c", "celsius", "degrees_c", "deg_c", "c")}
    table |= {
        w: Unit("celsius", 1) for w in ("degrees_celsius", "centigrade", "degrees_centigrade")
    }
    table |= {w: Unit("celsius", 1) for w in ("grados", "gradi", "graus", "graden", "stopni")}
    table |= {w: Unit("fahrenheit", 1) for w in ("°_f", "fahrenheit", "degrees_f", "f", "deg_f")}
    table |= {w: Unit("fahrenheit", 1) for w in ("degrees_fahrenheit",)}
    table |= {w: Unit("degrees", 1) for w in ("°", "degrees", "degree", "deg", "degs")}
    return table


@cache
def unit_table(units: Units) -> Mapping[str, Unit]:
    """Spelling (words joined by `_`) to unit, for a group that measures in `units`."""
    table = _fixed()
    for spelling, name in _spelled(_BARE).items():
        table[spelling] = Unit("volume", LITRES[BARE[units][name]])
    for spelling in _HUNDREDWEIGHT.split():
        table[spelling] = Unit("mass", KILOGRAMS[BARE[units]["hundredweight"]])
    fluid = LITRES[BARE[units]["fluid_ounce"]]
    for spelling in _OUNCE.split():
        table[spelling] = Unit("mass", KILOGRAMS["ounce"], liquid=fluid)
    return table


@cache
def unit_starts(units: Units) -> Mapping[str, int]:
    """The first words of all spellings of units, with the words in the longest that begins so."""
    found: dict[str, int] = {}
    for spelling in unit_table(units):
        first, *rest = spelling.split("_")
        found[first] = max(found.get(first, 0), 1 + len(rest))
    return found


VESSEL_WORDS = frozenset(
    [
        "bucket",
        "buckets",
        "pail",
        "pails",
        "bin",
        "bins",
        "tub",
        "tubs",
        "can",
        "cans",
        "caddy",
        "caddies",
        "container",
        "containers",
        "box",
        "boxes",
        "bag",
        "bags",
        "barrel",
        "barrels",
        "drum",
        "drums",
        "keg",
        "kegs",
        "crock",
        "jar",
        "jars",
        "jug",
        "jugs",
        "bottle",
        "bottles",
        "cubeta",
        "balde",
        "pot",
        "pots",
        "sack",
        "sacks",
        "bowl",
        "bowls",
        "tote",
        "totes",
    ]
)
"""What may follow a volume and then has it as its size ("a 20 L bucket")."""
