"""Amounts, days and names as people say them, in the group's units."""

from collections.abc import Mapping, Sequence
from datetime import date, time

from handlers.practice.dose import LAYER_DEPTH
from handlers.practice.figure import number, ranging, spoons
from handlers.practice.kinds import Kind
from handlers.practice.tablespoons import SPOON_ML, Spoon
from handlers.practice.units import KILOGRAMS, LITRES, METRES, SQUARE_METRES
from storage.rows import Units

_EIGHTHS = {1: "⅛", 2: "¼", 3: "⅜", 4: "½", 5: "⅝", 6: "¾", 7: "⅞"}

MEASURES: Mapping[str, Sequence[tuple[str, str]]] = {
    "us": (("us_gallon", "gallon"), ("us_quart", "quart"), ("us_cup", "cup")),
    "imperial": (("imperial_gallon", "gallon"), ("imperial_pint", "pint")),
}
"""The measures of kitchens that do not measure in litres, the largest first."""

MOST_BY_PINTS = 10
"""Gallons up to which they are said to the pint: a quarter is much of a few."""

OUNCE_OFF = 0.2
"""How far whole ounces of liquid may be from the amount; less than two are said in millilitres."""

DONE = "✅"
"""The mark on a message that was written down and needs no words."""


def mass(kg: float, units: Units) -> str:
    """A mass: "800 g", "2.3 kg"; in pounds and ounces for groups that weigh so."""
    if units == "metric":
        return _grams(kg * 1000)
    ounces = round(kg / KILOGRAMS["ounce"])
    if ounces < 2:
        return _grams(kg * 1000)
    if ounces < 16:
        return f"{ounces} oz"
    pounds, rest = divmod(ounces, 16)
    return f"{pounds} lb {rest} oz" if rest else f"{pounds} lb"


def _grams(grams: float) -> str:
    if grams < 1000:
        return f"{max(round(grams / 5) * 5 if grams > 100 else round(grams), 1)} g"
    return f"{number(grams / 1000)} kg"


def rough_mass(kg: float, units: Units) -> str:
    """A mass to two digits of kilograms or pounds, as nobody weighs a bin more exactly."""
    pound = KILOGRAMS["pound"]
    if units == "metric":
        return mass(float(number(kg, 2)), units)
    return mass(float(number(kg / pound, 2)) * pound if kg >= pound else kg, units)


def volume(litres: float, units: Units) -> str:
    """A volume of liquid or scraps, in the measures of the group's kitchens."""
    if units == "metric":
        return f"{round(litres * 1000)} mL" if litres < 1 else f"{number(litres)} L"
    for name, word in MEASURES[units]:
        count = litres / LITRES[name]
        if count >= 0.99:
            by_pints = word == "gallon" and count < MOST_BY_PINTS
            return _plural(count, word, 8 if by_pints else 4)
    ounces = litres / LITRES["us_fluid_ounce" if units == "us" else "imperial_fluid_ounce"]
    whole = round(ounces)
    if abs(whole - ounces) > ounces * OUNCE_OFF:
        return f"{number(litres * 1000, 2)} mL"
    return f"{whole} fl oz"


MOST_SPOONS = 16
"""Tablespoons from which on nobody counts them any more."""


ONE_SPOON = 1.125
"""Tablespoons up to which they are said as one."""


def spoon(units: Units) -> Spoon:
    """The tablespoon of the group's kitchens: British ones hold 15 mL, as metric ones do."""
    return "us" if units == "us" else "metric"


def starter(tablespoons: float, grams: float, units: Units, *, in_cups: bool = False) -> str:
    """Starter as it is measured and by weight: "3½ tablespoons (about 13 g)", "1¼ cups (…)".

    Cups are what much of it is measured in, and less if they are asked for.
    """
    if in_cups or tablespoons >= MOST_SPOONS:
        cup = LITRES["us_cup" if units == "us" else "metric_cup"] * 1000
        count = tablespoons * SPOON_ML[spoon(units)] / cup
        cups = _plural(max(count, 1 / 8), "cup", 8 if count < 1 else 4)
        return f"{cups} (about {mass(grams / 1000, units)})"
    plural = "s" if tablespoons > ONE_SPOON else ""
    return f"{spoons(tablespoons)} tablespoon{plural} (about {mass(grams / 1000, units)})"


def length(metres: float, units: Units) -> str:
    """A length in the garden: centimetres and metres, or inches and feet."""
    if units == "metric":
        centimetres = round(metres * 100)
        return f"{centimetres} cm" if centimetres < 100 else f"{number(metres)} m"
    inches = metres / METRES["inch"]
    return f"{round(inches)} in" if inches < 36 else f"{fraction(inches / 12, 2)} ft"


def layer_depth(units: Units) -> str:
    """How deep a layer is as it is taught: "5 to 7.5 cm"."""
    if units == "metric":
        return f"{ranging(LAYER_DEPTH)} cm"
    deep = LAYER_DEPTH.low or 0.0, LAYER_DEPTH.high or 0.0
    inches = (number(cm / 100 / METRES["inch"], 1) for cm in deep)
    return f"{' to '.join(inches)} in"


def temperature(celsius: float, units: Units) -> str:
    """A temperature: in °F for kitchens of the United States."""
    return f"{celsius * 1.8 + 32:.0f} °F" if units == "us" else f"{number(round(celsius, 1))} °C"


def area(square_metres: float, units: Units) -> str:
    """The area of a bed."""
    if units == "metric":
        return f"{number(square_metres)} m²"
    feet = number(square_metres / SQUARE_METRES["square_foot"])
    return f"{feet} square {'foot' if feet == '1' else 'feet'}"


def whole_days(count: int) -> str:
    """A stretch of whole days: "1 day", "12 days"."""
    return "1 day" if count == 1 else f"{count} days"


def _plural(amount: float, word: str, parts: int) -> str:
    words = fraction(amount, parts)
    return f"{words} {word}" if round(amount * parts) <= parts else f"{words} {word}s"


def fraction(amount: float, parts: int) -> str:
    """A number to the nearest 1/parts, with the sign for the fraction: "2½"."""
    whole, rest = divmod(round(amount * parts), parts)
    sign = _EIGHTHS[rest * 8 // parts] if rest else ""
    return f"{whole}{sign}" if whole or not sign else sign


def percent(share: float) -> str:
    """A share as people estimate it: to the nearest five in a hundred."""
    return f"{round(share * 20) * 5} %"


def how_full(share: float) -> str:
    """How full a bin is: "about 40 % full", or "hardly filled" where that would be none."""
    return f"about {percent(share)} full" if share >= 0.025 else "hardly filled"


def day(on: date, today: date) -> str:
    """A day near today by its name, any other as "Tuesday 3 March"."""
    match (on - today).days:
        case 0:
            return "today"
        case 1:
            return "tomorrow"
        case -1:
            return "yesterday"
    words = f"{on:%A} {on.day} {on:%B}"
    return words if abs((on - today).days) < 300 else f"{words} {on.year}"


NEARLY_A_YEAR = 275
"""Days ago of a date without its year that may be meant of the weeks ahead."""


def too_long_ago(on: date, today: date) -> str:
    """What is said to a record of a day so far back that it must be a slip."""
    is_near = NEARLY_A_YEAR <= (today - on).days < 365
    also = f", and that of {on.year + 1} is still to come" if is_near else ""
    return (
        f"{capital(day(on, today))} is too long ago for me to write it down now{also}. "
        "Say it again with the right day."
    )


def still_to_come(on: date, today: date) -> str:
    """What is said to a record of a day ahead: a plan told as done, or a slip."""
    return (
        f"{capital(day(on, today))} is still to come, so nothing is written down. Tell me once it "
        "is done, or say it again with the right day."
    )


def clock(hour: time) -> str:
    """An hour of the day: "18:00"."""
    return f"{hour:%H:%M}"


def span(start: date, end: date, today: date, *, two: str = "or") -> str:
    """A stretch of days: "Friday 13 to Tuesday 17 March", "today or tomorrow"; `two`: how two days
    are joined.
    """
    if start == end:
        return day(start, today)
    joint = two if (end - start).days == 1 else "to"
    near = abs((start - today).days) <= 1
    first = day(start, today) if near or start.month != end.month else f"{start:%A} {start.day}"
    return f"{first} {joint} {day(end, today)}"


def when(start: date, end: date, today: date) -> str:
    """When it is to be done, as a line of the calendar begins."""
    if end < today:
        late = (today - end).days
        return f"Late by {late} day{'s' if late > 1 else ''}"
    return capital(span(start, max(start, end), today))


def does(who: str, verb: str) -> str:
    """ "Bram keeps", and "You keep" of the person at the prompt, who is called so."""
    return f"{capital(who)} {agreeing(verb, who)}"


def agreeing(verb: str, who: str) -> str:
    """ "Keeps", and "keep" of the person at the prompt."""
    return verb if who.casefold() == "you" else f"{verb}s"


def whose(who: str | None, sender: str) -> str:
    """To the sender: "ines's", and "your" of what is the sender's own."""
    return "your" if who in (sender, "you") else f"{who}'s"


def capital(words: str) -> str:
    """The words as they begin a sentence."""
    return words[:1].upper() + words[1:]


def the(bin: str) -> str:
    """A bin as said in a sentence: "the shed bin", "bin 3", "bin B", "the wee bin"."""
    words = bin.split()
    if any(word.isdigit() for word in words) or bin.casefold().startswith("the "):
        return bin
    if len(words) > 1 and len(words[-1]) == 1 and words[0].casefold() in VESSELS:
        return bin
    if words and words[-1].casefold() in VESSELS:
        return f"the {bin}"
    return bin if bin[:1].isupper() else f"the {bin} bin"


VESSELS = frozenset({"bin", "bucket", "pail", "caddy", "tub", "barrel", "crate", "box"})


_KINDS: Mapping[Kind, str] = {
    "vegetable": "vegetables", "fruit": "fruit", "grain": "bread, rice or pasta",
    "pulse": "pulses", "meat": "meat", "fish": "fish", "dairy": "dairy", "egg": "eggs",
    "oil": "fat and oil", "bone": "bones", "cooked": "cooked food", "coffee": "coffee and tea",
    "garden": "garden cuttings", "paper": "paper", "liquid": "liquids", "mixed": "of all sorts",
}  # fmt: skip
_LEAST_SHARE = 0.05
_MOST_KINDS = 4


def made_of(shares: Mapping[Kind, float]) -> str:
    """What something is made of, most of it first: "60 % vegetables, 25 % meat"; "" where nothing
    more is known than that it was scraps.
    """
    told = sorted(shares.items(), key=lambda part: -part[1])
    if [kind for kind, _ in told] == ["mixed"]:
        return ""
    shown = [(kind, share) for kind, share in told if share >= _LEAST_SHARE][:_MOST_KINDS]
    return ", ".join(f"{round(100 * share)} % {_KINDS[kind]}" for kind, share in shown)
