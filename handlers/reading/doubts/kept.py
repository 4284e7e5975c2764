"""Food that is kept, served or offered in a room whose name is also a bin's: "hams in the shed"."""

from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in(
    "yourself yourselves yourselfs yaself yaselves yerself yersel yersels yoursels take have "
    "want wants fancy like "
    "hungry peckish brave interested whoever eat served bring come collect own yours toast reheat "
    "nobody waste use kept dished doled handed microwave touch touching let alone going spare "
    "begging straw sand sawdust newspaper ripen ripening winter tray trays hung hanging hangs "
    "strung chitting defrosting thawing brining marinating cured curing keepers tuck dig left "
    "spread hide maturing proving soaking drying stacked stashed stored laid by up lugged ice "
    "muslin net ready till until sulk fridge freezer sink cupboard counter oven esky cooler table "
    "icebox box coolbox chiller larder shelf worktop wedding party hangi funeral wake stall fete "
    "feast shift dinner lunch tea barbie braai cookout potluck "
    "supper barbecue bbq picnic raffle meeting neighbour neighbours neighbor neighbors guest "
    "crumble pie pies jam chutney soup stew cider marmalade baking cake cakes smoothie smoothies "
    "juicing breakfast salad curry foodbank bank langar shelter appeal hamper hampers jumble "
    "keeping saving freezing holding "
    "guests foil cloth water aside side"
)
"""Words without one of which nothing is taken for kept."""
_OFFER = Late(
    r"\bhelp (?:your|ya|yer)sel(?:f|ves|fs|s)?\b|\bfirst come\b|\b(?:tuck|dig) in$|"
    r"\bleft (?:you|ye) (?:an?|some|\d)|\bhide it\b|"
    r"\bwho (?:wants|fancies) (?:them|some|one|a few)\b|"
    r"\bcollect (?:by|from|before|at)\b|"
    r"\btake (?:one|some|a few|what (?:you|u|ye) (?:like|want|need|fancy)|your pick|them all)\b|"
    r"\bhave some$|\byours to (?:raid|take|eat)\b|\bgoing (?:free|spare|begging)\b|"
    r"\bif (?:you|u|ye|yous|any ?one|any ?body|some ?one|some ?body|the \w+)"
    r"(?: (?:are|is|'s))? (?:want|wants|fancy|fancies|would like|like|likes|hungry|peckish|brave|"
    r"interested)\b(?! (?:her|him|it|qbin)\b)|"
    r"\bfor whoever\b(?! wants (?:her|him|it)\b)|"
    r"\b(?:somebody|someone|anyone|please|pls)(?: please)? eat\b|\bplease (?:help|take some)\b|"
    r"\bbring (?:a|your|your own|own) ?(?:bowl|mug|bag|plate|spoon|container|box|own)s?\b|"
    r"\bbring (?:bowls|mugs|bags|plates|spoons)\b|"
    r"\bcome (?:and |n |& )?(?:pick|get|help|grab|fetch)\b(?! (?:him|her|it|qbin|\d))|"
    r"\b(?:pick|bag|cut|grab|serve) your own\b|\btoast '? ?(?:em|them)\b|\breheat\b|"
    r"\bnobody bin it\b|\bgo to waste\b|"
    r"\buse (?:it |them )?(?:before|by) (?:\w*day|evening|night)\b|\bkept [^.]{0,30}\bfor you\b|"
    r"\b(?:dished|doled|handed) out\b.*\bto\b|"
    r"\bmicrowave (?:it|them)\b|\bhands off$|"
    r"\bdo not let \w+ near\b|\bleave (?:it|them) alone\b"
)
"""What is said of food that others may have, or must leave be."""
_FEASTS = (
    "wedding|party|hangi|funeral|wake|stall|fete|feast|shift|dinner|lunch|tea|supper|barbecue|bbq|"
    "barbie|braai|cookout|potluck|picnic|raffle|meeting|neighbours?|neighbors?|guests?"
)
_ALMS = (
    r"\bfor the (?:food ?bank|langar|shelter|appeal|hampers?)\b"
    r"(?!.*\b(?:went|goes|gone|put|rejected|refused)\b)"
)
_SAVED = (
    r"\b(?:am|are|'m|'re|im|been|still) (?:keeping|saving|freezing|holding)\b.{1,80}"
    r"\bfor (?:the |our )?qbin\b"
)
_KEPT = Late(
    rf"{_ALMS}|{_SAVED}|"
    r"\b(?:left|leaving|dropped|put)\b.{0,60}\bfor (?:\w+ 's|the|my|your|our|her|his) (?:\w+ )?"
    r"(?:crumble|pies?|jam|chutney|soup|stew|cider|marmalade|baking|cakes?|smoothies?|juicing|"
    r"breakfast|"
    r"salad|curry)$|"
    r"\b(?:in|of) (?:straw|sand|sawdust|newspaper|salt water)\b|\bto ripen\b|\bripening\b|"
    r"\bfor (?:the )?winter\b|\bon (?:\w+ )?trays\b|\b(?:on|with|kg|kilos|bags) (?:of )?ice\b|"
    r"\b(?:put|set|left|keeping|kept|saved|saving) (?:\S+ ){0,12}(?:aside|to one side)\b|"
    r"\b(?:hung|hanging|strung|chitting|defrosting|thawing|brining|marinating|curing|cured|"
    r"maturing|proving|soaking|drying|"
    r"stacked|stashed|stored|laid out|put by|put up|lugged|spread out)\b|"
    r"\b(?:do not|dont|no|nobody) (?:touch|touching)\b(?! (?:it|her|him|the|qbin|anything)\b)|"
    r"\bunder (?:muslin|a net|a cloth|foil)\b|\bready at\b|\bto sulk\b|\bkeepers\b|"
    r"\b(?:till|until) (?:christmas|easter|boxing|new year|the \w+ opens|distribution)\b|"
    rf"\bfor (?:the|a|an|our|my|your|\w+ 's) (?:\w+ )?(?:{_FEASTS})\b|"
    r"\b(?:in|into) (?:the|a|my|our) (?:big |old |small |chest |deep |mini |beer |blue )*(?:cooler|"
    r"fridge|freezer|icebox|ice box|cool box|coolbox|esky|chiller|larder|pantry cupboard) (?:in|at|"
    r"out in|over in|down in) (?:the |our )?qbin\b"
)
"""How food lies that is still food; waste may be told in the same words."""
_SPENT = words_in(
    "rotted rotten mouldy moldy mould mold slimy fur furry stale past off sour weevils moth eaten "
    "maggots untouched unlabelled failed fell dropped died broke turned ignored burnt burned "
    "noone old ancient sat forgotten too"
)
"""Words of food that is no longer food."""
_THROWN = words_in(
    "tipped binned slung dumped threw thrown throwed scraped scooped emptied shoved flung layered "
    "fed added topped crammed lobbed squashed poured clearout cleared"
)


def is_kept(message: Message) -> bool:
    """Whether the words speak of food that waits for a mouth, and of none that went into a bin."""
    if not message.has(CUES):
        return False
    text = plain_text(message)
    if _OFFER.search(text):
        return not message.has(_SPENT - _STILL_EATEN) and not _is_of_waste(message, text)
    if not (_KEPT.search(text) or _is_in_larder(message)) or message.has(_SPENT | _THROWN):
        return False
    return not _is_in_bin(message, text) and not _names_waste(message)


_SURELY = Late(
    rf"{_ALMS}|{_SAVED}|"
    r"\b(?:hung|hanging|put by|stashed|defrosting|(?:on|with|kg|kilos|bags) ice)\b"
)


def _is_in_bin(message: Message, text: str) -> bool:
    """Whether a bin is named that could be no room; a number alone may be a room's."""
    if not any(b.plain for b in message.bins):
        return False
    return message.has(BIN_WORDS) or _SURELY.search(text) is None


def _names_waste(message: Message) -> bool:
    return any(i.scrap and i.food.name != "food" for i in message.items)


_FURNITURE = words_in(
    "fridge freezer sink cupboard counter worktop oven esky cooler table shelf larder"
)
_OUT = words_in("from out of off")


def _is_in_larder(message: Message) -> bool:
    """Whether the one place named is a room with its fridge or table ("in the shed freezer")."""
    norms = message.norms
    places = (*message.bins, *message.named)
    return len(places) == 1 and any(
        not _FURNITURE.isdisjoint(norms[p.end : p.end + 1])
        and _OUT.isdisjoint(norms[max(0, p.start - 2) : p.start])
        for p in places
    )


_STILL_EATEN = words_in("old off too past stale")
_LEFT = Late(r"\b(?:leftover|left (?:over|in|by|for|a|some)|eat|take|bring|stale|own|waste)\b")


def _is_of_waste(message: Message, text: str) -> bool:
    """Whether peelings and the like are told, and not as what others may eat."""
    return _names_waste(message) and _LEFT.search(text) is None
