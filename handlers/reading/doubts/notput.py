"""Foods that are named and are not to go into a bin: what grows, what is eaten, what is dug up.

"Is it good for the tomatoes?" asks about the liquid or the soil; a Yes about tomatoes as scraps
would be no answer to it. So it is where trouble is read and nothing of trouble is named.
"""

from collections.abc import Sequence

from handlers.reading.acts import Act, Ask
from handlers.reading.message import Message
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_IT = r"(?:it|this|that|bokashi|ferment|they|these)"
_GIVEN_TO = Late(
    rf"\b(?:is|are|was|would) {_IT} (?:be )?(?:too |very |so )*(?:good|bad|ok|okay|fine|safe|rich|"
    r"strong|sour|acid|acidic|harmful|right) (?:for|on|around|near|under) \S|"
    rf"\b(?:put|use|pour|bury|dig|spread) {_IT} (?:in )?(?:under|round|around|near|beside|next to|"
    r"between|among) \S"
)
_OTHERWISE = words_in(
    "grown grow grows growing plant planting planted sow mist harvest carrier instead attract"
)
"""Said of what grows, of the ground or of starter."""
_IN_PLACE = Late(
    r"\bin place of\b|\bhow long (?:do|does|can|will)\b|\b(?:squash|mash) (?:it|them|down)\b|"
    r"\b(?:add|use|need|want) (?:some |garden )?lime(?! \w)|\bnon ?-? ?veg\b|\bthe plants? \?|"
    r"\bkills? (?:\w+ ){1,2}?seeds?\b|\bdigs? up\b|\b(?:legal|law|rules?) (?:about|on|to bury)\b|"
    r"\borange (?:stuff|growth|fuzz|fur|spots|dust|mould|patches)\b"
)
_IN_GROUND = Late(r"\bin (?:the |our |my |heavy |wet |sandy )*(?:clay|sand|gravel)\b")
_INTO = Late(
    r"\b(?:go|goes|going|went|put|chuck|throw|add) (?:\S+ ){0,5}?(?:in|into)\b(?! (?:place|the "
    r"ground|soil|my garden|the garden))"
)
_SO_FAR = Late(
    r"^ (?:(?:and|so|ok|hey|still|,) )*(?:no|any|(?:is|was) there (?:any|no)) "
    r"\S+(?: (?:and|or) \S+)?(?: (?:scraps|bones|bits|gone|in|it|there|inside|here))* "
    r"(?:yet|so far|already|till now)(?: (?:then|guys|folks|people))? (?:\? )*$"
)
""" "No fish yet?": the others are asked what they have put in."""
_CUES = _OTHERWISE | words_in(
    "yet far already till clay sand gravel for on around near under round beside next between "
    "among place long squash mash lime non non-veg put plants orange kill kills dig digs legal law "
    "rule rules"
)
_WRONG = words_in(
    "wrong bad smell smells smelly stink stinks stinky reek reeks stench trouble problem problems "
    "issue issues off odd weird strange funny matter ok okay normal fine right worry worried panic "
    "concerned help dead fail failed spoiled spoilt ruined save saving rescue fix cure gone sick "
    "happening happened stuck supposed look looks looking slime slimy sludge dust gross alright "
    "safe dangerous working good healthy cause causes mean means going up do does lid tap spigot "
    "bin bucket pail open top edges inside white green blue blueish black pink orange red yellow "
    "grey gray brown bowing bulging"
)
"""Words without one of which nobody asks about trouble that has no sign."""


def without_not_put(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts without the questions that are asked of something else."""
    if message.bot or not any(isinstance(act, Ask) for act in acts):
        return list(acts)
    return [act for act in acts if not (isinstance(act, Ask) and _is_of_else(act, message))]


def _is_of_else(act: Ask, message: Message) -> bool:
    return any(of_else(act, message) for of_else in (_is_not_put, _is_no_trouble, _is_no_amount))


def _is_not_put(act: Ask, message: Message) -> bool:
    """Whether what may go in is not what is asked, though a food is named."""
    if act.topic != "allowed" or not message.has(_CUES) or any(b.plain for b in message.bins):
        return False
    text = f" {' '.join(message.norms)} "
    if _IN_PLACE.search(text) or _IN_GROUND.search(text):
        return True
    if message.context.in_room and not message.context.to_bot and _SO_FAR.search(text):
        return True
    if _INTO.search(text):
        return False
    return message.has(_OTHERWISE) or _GIVEN_TO.search(text) is not None


def _is_no_trouble(act: Ask, message: Message) -> bool:
    """Whether trouble is asked about, and neither a sign nor a bin nor a word of trouble stands."""
    if act.topic != "trouble" or act.signs or act.bin or any(b.known for b in message.bins):
        return False
    return not message.has(_WRONG)


_NO_MIX = Late(
    r"\bhow often\b|\bhow (?:do|can|could) (?:i|we|you) (?:change|set)\b|\bwater (?:it|them|that) "
    r"in\b|\b(?:allowed|legal|permitted) to (?:give|sell|use)\b"
)
_NOT_MIXED = words_in("often change set in allowed legal permitted")
_THINNED = words_in(
    "water watering liquid juice leachate tea runoff mix thin thinned part parts ratio strength "
    "strong weak plants drain drained"
)


def _is_of_a_bins_size(act: Ask, message: Message) -> bool:
    """ "How many people can use a 20 L bin?": litres of a vessel, and nothing to be thinned."""
    if act.use or act.parts or act.liquid_l or not message.has(BIN_WORDS):
        return False
    if message.has(_THINNED) or any(norm.startswith("dilut") for norm in message.norms):
        return False
    volumes = [a for a in message.amounts if a.quantity == "volume"]
    return bool(volumes) and all(
        a.size or not BIN_WORDS.isdisjoint(message.norms[a.end : a.end + 2]) for a in volumes
    )


_UNIT = r"(?:kg|kgs|kilos?|kilograms?|litres?|liters?|l|lbs?|pounds?|gallons?|grams?|g)"
_CONVERTED = Late(
    rf"\bhow (?:many|much) {_UNIT} (?:is|are|does|do|make|makes|in|weigh)\b|"
    rf"\bhow (?:many|much) (?:is|are) .{{1,30}} in {_UNIT}\b"
)
"""What a measure is in another, with no starter named."""
_WEIGHED = Late(r"\bhow (?:much|heavy) (?:does|do|is|are|would)\b.*\b(?:weigh|heavy)\b")
_WEIGHING = words_in("weigh heavy")


def _is_no_amount(act: Ask, message: Message) -> bool:
    """Whether no mix and no dose is asked: how often, how to set it, what scraps weigh."""
    bran = message.bran(0, len(message.norms))
    if act.topic == "dilution" and _is_of_a_bins_size(act, message):
        return True
    if act.topic == "dilution":
        return message.has(_NOT_MIXED) and _NO_MIX.search(" ".join(message.norms)) is not None
    if act.topic == "dose" and not bran and _CONVERTED.search(" ".join(message.norms)):
        return True
    if act.topic != "dose" or not message.has(_WEIGHING) or bran:
        return False
    return _WEIGHED.search(" ".join(message.norms)) is not None
