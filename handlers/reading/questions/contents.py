"""What still fits into a bin, how heavy it is when full, when it is full at a rate that is said,
and what is in what it holds.

Told only in a room, like what else `further` reads: "how many kg still fit?", "if I add 1 kg a day,
when is it full?", "how much nitrogen is in the blue bin?".
"""

from handlers.reading.acts import Ask
from handlers.reading.questions.doses import of_scraps, weighs_scraps
from handlers.reading.questions.howmany import weekly_kg
from handlers.reading.questions.question import CRAFT, Question
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in("fit fits room space full nitrogen salt sugar hold holds heavy go goes put take")
_UNIT = r"(?:kgs?|kilos?|kilograms?|grams?|lbs?|pounds?|l|lit(?:re|er)s?|gallons?|quarts?|scraps)"
_ROOM = Late(
    rf"\bhow (?:much|many) (?:more )?(?:{_UNIT} )?(?:more )?(?:of scraps )?(?:can |will |"
    rf"would |do |does )?(?:still |yet |more )*fits?\b|"
    r"\bhow much (?:more )?(?:room|space) (?:is|'s|do we have|have we|has|is there)\b|"
    r"\bhow much (?:more )?(?:room|space) (?:is )?(?:there )?(?:still )?left\b"
)
_MEASURED = Late(rf"\bhow many (?:more )?{_UNIT}\b")
_WHEN_FULL = Late(r"\b(?:when|how (?:long|soon|many days)|by when)\b.{0,60}\bfull\b")
_SHARE = Late(
    r"\bhow much (?P<what>nitrogen|salt|sugar) (?:is|'s|does|do|has|have|did)\b.{0,20}\b"
    r"(?:in|contain|hold|got)\b"
)
_HEAVY = Late(
    r"\bhow (?:heavy|much) (?:is|are|does|do|will|would|can|could|might)\b.{0,40}\bfull\b|"
    r"\bwhat (?:does|do|will|would|can|could|might)\b.{0,20}\bfull\b.{0,40}\bweighs?\b"
)
_WEIGH = words_in("heavy weigh weighs weight")
_HOLDS = Late(
    r"^ (?:(?:and|so|ok|bot|,) )*how (?:heavy (?:is|are)|(?:many (?:kilos?|kgs?|kilograms?|pounds?|"
    r"lbs?)|much(?: (?:food|scraps|weight|waste))?) (?:can |will |do |does )?(?:go(?:es)?|fits?|i "
    r"put|we put)?(?: in| into)?) ?(?:a |an |the |one |of )*[\d.,]+ ?(?:l|litres?|liters?|gallons?|"
    r"gal)(?: (?:bin|bucket|pail|tub|drum|caddy|one))?"
    r"(?: (?:hold|holds|take|takes|weigh|carry|fit))?(?: when full| full)?(?: \?)? $"
)
"""What fits into a vessel of a size, by weight."""
_FED = words_in("add put feed throw chuck give collect get make bring")
_ELSEWHERE = words_in("fridge freezer car boot bag oven soil bread bed soup sauce dish trench hole")


def asks_contents(q: Question) -> Ask | None:
    """The question with the bin that it is about, if it is one of these."""
    if not q.has(CUES) or (q.has(_ELSEWHERE) and not weighs_scraps(q)):
        return None
    name = next((ref.name for ref in q.bins() if ref.name is not None), None)
    ours = name is not None or q.to_bot or q.message.context.after_bot or q.has(CRAFT)
    it = "it" in q.words and not q.items()
    sizes = q.amounts("volume")
    heavy = q.has(_WEIGH) and _HEAVY.search(q.text) and (ours or "it" in q.words)
    if heavy or (sizes and _HOLDS.search(q.text)):
        return Ask(
            topic="full",
            what="weight",
            capacity_l=sizes[0] if sizes else None,
            bin=name,
            rules=("asks how heavy it is when full",),
        )
    if _ROOM.search(q.text) and (ours or _MEASURED.search(q.text)):
        return Ask(topic="full", what="room", bin=name, rules=("asks what still fits",))
    if _WHEN_FULL.search(q.text) and (ours or (it and q.has(_FED))):
        week_kg = weekly_kg(q)
        if week_kg:
            return Ask(topic="full", week_kg=week_kg, bin=name, rules=("asks when it is full",))
    share = _SHARE.search(q.text)
    if share and (ours or it or (share["what"] == "nitrogen" and weighs_scraps(q))):
        act = Ask(topic="carbon", what=share["what"], bin=name, rules=("asks what it holds",))
        return act if name or it else of_scraps(act, q)
    return None
