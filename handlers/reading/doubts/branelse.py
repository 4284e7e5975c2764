"""Bran that is eaten, and starters that begin a meal or an engine."""

from handlers.reading.doubts.elsewords import Else
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

BRAN_ELSE = Late(
    r"\bbran (?:muffins?|loaf|loaves|bread|flakes|cereal|mash|cakes?|biscuits|cookies|pancakes|"
    r"crackers|sticks|scones)\b|\braisin bran\b|"
    r"\bbran (?:(?:left|kept|saved|and \w+|or \w+|with \w+) )?(?:for|to) "
    r"(?:the |my |our |her |his |a )?(?:horses?|pony|ponies|donkeys?|rabbits?|hens|"
    r"chickens|chooks|pigs?|goats?|cows?|baking|breakfast|bread|muffins|porridge|smoothies)\b"
    r"(?! (?:meat|stew|curry|bones?|heads?|feet|trotters?|offal|liver|fat|skins?|scraps|peel|"
    r"crusts|"
    r"trimmings|waste|leftovers|ends|mess|shit|manure|droppings|\d))|"
    r"\bbran\b[^.]{0,40}\b(?:plain|ordinary|feed)(?: (?:one|stuff|kind|sort|type|bran))? for "
    r"(?:the |my |our |her |his )?(?:horses?|pony|ponies|donkeys?|rabbits?|hens?|chickens?|chooks|"
    r"pigs?|goats?|cows?)\b|"
    r"\b(?:muffins?|brownies|scones|cookies|flapjacks?) (?:\w+ ){0,2}with bran\b|"
    r"\bbran (?:do|does|should|can) (?:you|i|we|a|the|my) (?:\w+ )?(?:give |feed )?(?:\w+ "
    r")?(?:horse|"
    r"pony|rabbit|pig|goat|hen)s?\b"
)
"""Bran that is eaten, by people or beasts."""
_COURSE = (
    r"\b(?:for|as) (?:a |the |my |our )?starters?\b(?: ,| :)? (?:i|we|they|she|he|there|qmember) "
    r"(?:had|have|did|made|ate|got|ordered)\b|"
    r"\bstarters? (?:\w+ ){0,6}(?:was|were|is|are|will be) (?:\w+ ){0,3}(?:soup|prawns?|salad|"
    r"tomato|tomatoes|pepper|peppers|onion|onions|bruschetta|pate|melon|mushrooms?|calamari|samosas?|"
    r"pakoras?|dumplings|garlic bread|olives|scallops|oysters|salmon|chaat|hummus)\b|"
    r"\b(?:courses|dishes|plates|menu|dessert|pudding)\b.{0,40}\bthe starter\b|"
    r"\bstarters? ,? (?:and )?mains?\b|\b(?:mains?|puddings?|desserts?) and starters?\b|"
    r"\b(?:prawn|soup|salad|cold|hot|veg|vegetarian) starters?\b|"
    r"\bstarter (?:motor|home|pistol|course|plug|cable)s?\b|"
    r"\b(?:fire|jump|kefir|yoghurt|yogurt|cheese|kombucha|dosa|idli) starters?\b"
)
"""Starters that are eaten first, or start something else."""
OF_BRAN = Else(
    words_in("bran dough loaves levain starter starters"),
    Late(rf"{BRAN_ELSE.source}|\b(?:dough|loaves|levain)\b|{_COURSE}"),
    Late(r"\b(?:bran|bokashi|inoculated|culture|molasses|bins?|qbin)\b"),
)
