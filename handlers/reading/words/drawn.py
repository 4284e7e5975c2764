"""Food that is told by its picture alone, beside an amount: "300 g 🐟", "🍞 half a kilo"."""

import re
from collections.abc import Collection, Sequence

_FOODS = {
    "🐟🐠": "fish",
    "🦐🍤": "prawns",
    "🦀": "crab",
    "🦞": "lobster",
    "🍗": "chicken",
    "🍖🥩": "meat",
    "🥓": "bacon",
    "🦴": "bones",
    "🧀": "cheese",
    "🥚🍳": "eggs",
    "🍞🥖🥐": "bread",
    "🍚": "rice",
    "🍝": "pasta",
    "🍰🎂": "cake",
    "🍪": "biscuits",
    "🥔": "potatoes",
    "🥕": "carrots",
    "🥦": "broccoli",
    "🥬": "cabbage",
    "🧅": "onions",
    "🧄": "garlic",
    "🌽": "corn cobs",
    "🍅": "tomatoes",
    "🥒": "cucumber",
    "🍆": "aubergine",
    "🍄": "mushrooms",
    "🎃": "pumpkin",
    "🥗": "salad",
    "🍎🍏": "apples",
    "🍌": "bananas",
    "🍊": "oranges",
    "🍋": "lemons",
    "🍐": "pears",
    "🍇": "grapes",
    "🍓": "strawberries",
    "🍑": "peaches",
    "🍒": "cherries",
    "🍍": "pineapple",
    "🥭": "mango",
    "🥝": "kiwi",
    "🍉🍈": "melon",
    "🥑": "avocado",
    "🍂🍁": "leaves",
}
_WORDS = {picture: food for pictures, food in _FOODS.items() for picture in pictures}
_ONE = f"[{''.join(_WORDS)}]\N{VARIATION SELECTOR-16}?"
_ROW = rf"(?P<row>{_ONE}(?: ?(?:[+&,] ?)?{_ONE}){{0,4}})"
_UNIT = (
    r"(?:g|gr|grams?|kg|kgs|kilos?|lbs?|pounds?|oz|ounces?|ml|l|lit(?:re|er)s?|cups?|handfuls?|"
    r"bowls?|buckets?|caddy|tubs?|pints?)"
)
_BESIDE = re.compile(
    rf"(?P<much>(?:\d|\ba|\bhalf a) ?{_UNIT}(?: of)?) ?{_ROW}"
    r"(?! *(?:bin|bucket|pail|caddy|tub|box)s?\b)|"
    rf"^(?P<front>){_ROW.replace('row', 'first')} ?(?=(?:\d|half a|a ) ?\S)",
    re.IGNORECASE | re.MULTILINE,
)


def with_foods_named(text: str, bins: Sequence[str]) -> str:
    """The text with the words for such pictures, but for those in the bins' own names."""
    if _PICTURES.isdisjoint(text):
        return text
    of_bins = _PICTURES.intersection("".join(bins))
    return _BESIDE.sub(lambda found: _named(found, of_bins), text)


_PICTURES = frozenset(_WORDS)


def _named(found: re.Match[str], of_bins: Collection[str]) -> str:
    row = found["row"] or found["first"]
    if any(sign in of_bins for sign in row):
        return found[0]
    foods = " and ".join(dict.fromkeys(_WORDS[sign] for sign in row if sign in _WORDS))
    return f"{found['much']} {foods}" if found["much"] else f"{foods} "
