"""What is asked of bran by its amount, told only in a room: what it weighs, how long it lasts, how
much was used, what a batch comes to, and for how much there is enough molasses or culture.
"""

from dataclasses import replace

from handlers.practice.recipes import MOLASSES_DENSITY
from handlers.reading.acts import Ask, Batch
from handlers.reading.food.ofwhat import called_behind
from handlers.reading.measures.amounts import Amount
from handlers.reading.questions.question import Question
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_BRAN = r"(?:bran|starter|inoculant)"
_MEASURES = (
    r"(?:cups?|mugs?|(?:table|tea)?spoons?|(?:table|tea)?spoonfuls?|tbsps?|tsps?|scoops?|handfuls?|"
    r"g|grams?|kgs?|kilos?|kilograms?|oz|ounces?|lbs?|pounds?|mls?|millilitres?|l|lit(?:re|er)s?)"
)
_WEIGHT = Late(
    r"\bweighs?\b|\bhow heavy (?:is|are)\b|"
    rf"\bhow many {_MEASURES}(?: of (?:\w+ )?{_BRAN})? (?:is|are|in|makes?|does)\b"
)
_LASTS = Late(r"\bhow (?:long|far|many (?:days|weeks|months))\b.{0,50}\b(?:lasts?|go|stretch)\b")
_USED = Late(
    rf"\bhow much {_BRAN} (?:(?:did|have|has) (?:we|i|us|everyone|everybody|the group|all of us)"
    r"(?: all| already| actually)?|has been|was) (?:use|used|go through|gone through|get through|"
    r"got through)\b"
)
_YIELD = Late(
    r"\bhow much\b.{0,20}\b(?:will|would|does|is|should) (?:that|it|this) (?:be|make|give|yield|"
    rf"come to|turn into)\b|\bhow much {_BRAN} is (?:that|it|this)\b(?! for)"
)
_MADE_OF = {
    **dict.fromkeys(("molasses", "treacle", "jaggery"), "molasses"),
    **dict.fromkeys(("culture", "cultures", "microbes"), "culture"),
}
_PRICED = words_in("cost costs price prices pricey expensive cheap")
_OF = words_in("of the a our my black blackstrap liquid")
CUES = words_in("weigh weighs heavy") | _MADE_OF.keys()
_ABOUT = CUES | words_in("many long far much")


def asks_of_bran(q: Question) -> Ask | None:
    """The question with the amount of bran, or of what starter is made of; None if it is none."""
    if not (q.has(_ABOUT) and q.bran()) or q.has(_PRICED):
        return None
    measured = [a for a in q.message.measured() if q.start <= a.start < q.end and _is_told(q, a)]
    made_of = {a: what for a in measured if (what := _made_of(q, a)) is not None}
    of_bran = [a for a in measured if a not in made_of and called_behind(q.message, a) == "bran"]
    if made_of:
        at_hand = {what: _litres(amount) for amount, what in made_of.items()}
        return _ask("enough", of_bran[0] if of_bran else None, at_hand)
    last = q.message.context.last
    if not measured and _USED.search(q.text):
        return _ask("used")
    if not measured and isinstance(last, Batch) and _YIELD.search(q.text):
        return replace(_ask("yield"), mass_kg=last.mass_kg, volume_l=last.volume_l)
    if len(measured) != 1 or q.items():
        return None
    (amount,) = measured
    if of_bran and _LASTS.search(q.text) and _asked_first(q, amount):
        return _ask("lasts", amount)
    if (of_bran or q.message.bran(q.start, amount.start)) and _WEIGHT.search(q.text):
        return _ask("weight", amount)
    return None


def _is_told(q: Question, amount: Amount) -> bool:
    """Whether it is an amount; no vessel's size, and not asked for itself ("how many bags")."""
    return not amount.size and q.message.norms[amount.start - 1 : amount.start] != ["many"]


def _ask(what: str, amount: Amount | None = None, at_hand: dict[str, float] | None = None) -> Ask:
    weighed = amount is not None and amount.quantity == "mass"
    return Ask(
        topic="bran",
        what=what,
        mass_kg=amount.value if amount and weighed else None,
        volume_l=amount.value if amount and not weighed else None,
        at_hand=at_hand,
        rules=(f"asks of bran: {what}",),
    )


def _asked_first(q: Question, amount: Amount) -> bool:
    """Whether the amount stands behind "how long", and is not told before it as what is there."""
    return "how" in q.message.norms[q.start : amount.start]


def _made_of(q: Question, amount: Amount) -> str | None:
    """What starter is made of, where the amount is of that."""
    norms, at = q.message.norms, amount.end
    while norms[at : at + 1] and norms[at] in _OF:
        at += 1
    return _MADE_OF.get(norms[at]) if at < len(norms) else None


def _litres(amount: Amount) -> float:
    return amount.value / MOLASSES_DENSITY.value if amount.quantity == "mass" else amount.value
