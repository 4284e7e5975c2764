"""Questions that name no bin and no liquid: "what ratio for seedlings?", "is it ready?".

They count only where no word of them speaks of another thing.
"""

from handlers.reading.deeds.unnamed import is_only_of_bin
from handlers.reading.questions.question import Question
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

PLANTS = words_in(
    "roses rose tomatoes tomatos tomato houseplants houseplant seedlings seedling lawn drains "
    "drain plants plant beds pots vegetables veg veggies flowers trees tree orchids herbs garden "
    "balcony soil compost peppers chillies chilli basil lettuce shrubs hedge cucumbers beans "
    "fern ferns cactus succulents succulent citrus strawberries courgettes aubergines kale "
    "spinach salad salads lettuces squash pumpkins "
    "potted pot ficus monstera bonsai dahlias marigolds lemons okra"
)
"""What the thinned liquid is given to."""
_ON_PLANTS = (
    r"(?: (?:straight|neat|as it is|now|directly))* (?:on|onto|over|to|for|round|around) "
    r"(?:(?:my|the|our|her|his|their|some) )?(?:\w+ )?"
    rf"(?:{'|'.join(sorted(PLANTS - words_in('drains drain soil compost potted')))})\b"
)
POURED_ON = Late(
    r"\b(?:put|pour|use|give|spray|sprinkle|tip|feed|water)(?: (?:some|any) of)? "
    rf"(?:it|that|this){_ON_PLANTS}"
)
"""Said of the liquid: nothing else that comes out of a bin is poured on what grows."""
MAY_GO_ON = Late(
    r"^(?:(?:and|so|ok|but|,) )*(?:can|could|may|is) (?:it|that|this) "
    rf"(?:go|be (?:used|put|poured)|ok|okay|fine|safe|good|all ?right){_ON_PLANTS}"
)
"""The same, where the talk is of the liquid."""
_DILUTING = words_in(
    "how much many strong weak thin what what's is 's the ratio mix strength dilution rate water "
    "for of to in with my our a an do does i we need use want put should it be them add per and "
    "on some young small baby indoor outdoor potted tree trees bushes ? , . ! please liquid "
    "juice again good right best feed feeding watering can if have go give"
)
_AMOUNTS = words_in("mix strength ratio dilution strong weak thin much")
_TO_DO = Late(
    r"^ (?:(?:so|ok|and|hey|hi|now|bot|right|please|then|,|it is sealed|it 's sealed) )*what "
    r"(?:do|should|must|shall|can|have) (?:i|we) (?:to |got to |have to |need to )?do "
    r"(?:next|after this|after that|with it next)"
    r"(?: (?:then|please|bot|with it|about it|[?.!]))* $"
    r"|^ (?:(?:so|ok|and|bot|now) )*what (?:is|'s|are) (?:the )?next (?:step|steps|thing to do)"
    r"(?: (?:then|please|bot|now|[?.!]))* $"
    r"|^ (?:(?:so|ok|and|bot|now|,) )*(?:what next|now what|what now)(?: [?.!])* $"
)
_IS_IT_READY = Late(
    r"^ (?:(?:so|ok|and|hey|hi|bot|right|please|,|but) )*"
    r"(?:is|'s|are|was|has|when (?:is|'s|are|will|can|do|does|should)|how (?:long|soon|many days)"
    r"(?: (?:is|till|until|before|to|more|still|left|now|does|do|will|must|should|left))*|can|"
    r"should|do|is it time to|time to) ?"
    r"(?:it|they|this|that|i|we|this one|that one|mine|ours|the next one)?"
    r"(?: (?:is|'s|be|are|take|takes|finish|to|wait|need|needs|still|going|have|has|been))* ?"
    r"(?:ready|due|done|finished|fermented|ripe|cooked|cooked through|to be (?:drained|buried|"
    r"sealed)|(?:bury|drain|seal|open|empty|dig in) (?:it|this|them|mine)|be (?:drained|buried|"
    r"opened|ready|sealed))"
    r"(?: (?:yet|now|then|soon|to bury|to be buried|to drain|to open|to empty|to go in the ground|"
    r"for burying|please|today|bot|already|do you think|in|the|ground|[?.!]))* $"
)


def asks_dilution(q: Question) -> bool:
    """ "How much water for 250 mL?", "how strong for tomatoes"."""
    if q.bran() or q.amounts("mass") or q.words.isdisjoint(_AMOUNTS):
        return False
    held = _measured(q)
    said = {q.message.norms[i] for i in range(q.start, q.end) if i not in held}
    if not said <= _DILUTING | PLANTS:
        return False
    if q.amounts("volume"):
        return "water" in said
    return not said.isdisjoint(PLANTS) and not said.isdisjoint(_AMOUNTS - {"much"})


def asks_due(q: Question) -> bool:
    """ "What do I do next?", "is it ready?" with nothing named."""
    if any(b.name for b in q.message.bins) or q.items():
        return False
    own = q.own_text
    if _TO_DO.match(own):
        return True
    return _IS_IT_READY.match(own) is not None and q.is_alone


def asks_trouble(q: Question) -> bool:
    """ "Why does it smell of ammonia?" with nothing else named."""
    start, end = q.own
    norms = q.message.norms
    inside = [i for i in range(start, end) if norms[i] not in _ASKED and norms[i] != "?"]
    return bool(q.signs()) and all(is_only_of_bin(q.message, i, i + 1) for i in inside)


_ASKED = words_in(
    "that why does do what should i we is it normal ok bad wrong mean means about can"
)


def asks_dose(q: Question) -> bool:
    """ "What's the dose for cooked food", with no bran named."""
    if q.words.isdisjoint({"dose", "dosage"}) or not q.items():
        return False
    return q.words.isdisjoint(_MEDICINE)


_MEDICINE = words_in(
    "paracetamol ibuprofen syrup tablet tablets pill pills medicine child baby fever vaccine "
    "vitamin antibiotics doctor cat dog ml"
)


def _measured(q: Question) -> set[int]:
    return {
        i
        for a in q.message.amounts
        if a.quantity == "volume" and q.start <= a.start < q.end
        for i in range(a.start, a.end)
    }
