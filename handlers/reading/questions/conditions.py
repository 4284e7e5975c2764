"""What is asked of a growth by its colour alone, of a pH, of the usual dose, and of the days that a
warmth or a cold makes.

"Pink mould?", "green fuzz, what now?"; "is a pH of 5 ok?"; "the usual dose?"; "how long at 10 °C?",
"if the garage is at 50 °F, how long should the shed bin sit?", "how long in soil of 3 °C?".
"""

from collections.abc import Iterator

from handlers.practice.days import COLDEST, HOTTEST
from handlers.reading.acts import Ask
from handlers.reading.arranged import Taught
from handlers.reading.food.makeups import makeup
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.questions.soils import SOIL
from handlers.reading.words.late import Late

CUES = ("mould", "mold", "fuzz", "fluff", "fungus", "how long", "how many days", "how many weeks",
        "ph", "sour enough", "what does", "dose", "bran", "starter")  # fmt: skip

_GROWTH = Late(
    r"(?:what about |and |is |help )?(?:a bit of |some |the |this )?[a-z]+ (?:moulds?|molds?|fuzz|"
    r"fluff|fungus)(?: (?:in there|inside|on top|on it|in (?:the )?(?:qbin|bin|bucket|pail)|what "
    r"(?:now|then|do i do|does that mean)|now what|is that|normal|ok|okay|bad|good|dangerous|"
    r"a problem))*"
)
_HOW_LONG = r"how (?:long|many (?:days|weeks))"
_WARMTH = r"(?:about |around |only )?[\d.,]+ ?(?:° ?)?(?:c|f|celsius|fahrenheit|degrees)(?: [cf])?"
_FERMENTS = (
    r"(?:ferment|sit|stand|stay|be sealed|be left|be kept|take|need|wait|fermenting|left|sealed)"
)
_AT = Late(
    rf"(?:and |so |then )?{_HOW_LONG}(?: .{{0,30}}\b{_FERMENTS}(?: \S+){{0,2}})?"
    rf"(?: (?:at|in|if it is|when it is|if it 's|with))* {_WARMTH}|"
    rf"(?:if )?(?:the |my |our )?\w+ (?:is|'s|stays|gets)(?: at)? {_WARMTH} {_HOW_LONG} .{{0,30}}"
    rf"\b{_FERMENTS}\b.{{0,20}}"
)


_PH = r"\d{1,2}(?:[.,]\d{1,2})?"
_A_PH = rf"(?:(?:a|the|our|my) )?ph (?:of |at |is |'s |reads |says |was )?{_PH}"
_SOUR = (
    r"(?:ok|okay|good|fine|right|normal|bad|safe|low|high|sour|acid|acidic|enough|ready|done|"
    r"all right|alright)(?: enough)?|too (?:high|low|sour|acid|acidic)"
)
_IN_IT = r"(?: (?:for|in) (?:(?:the|a|our|my) )?(?:it|qbin|bin|bucket|bokashi|ferment|fermenting))?"
_ASKED_PH = Late(
    r"(?:and |but |or )?(?:"
    rf"(?:is|would|will|does) {_A_PH} (?:(?:be|is|mean|really|still|a|any|it is|it 's) )*"
    rf"(?:{_SOUR})(?: (?:sign|thing|value|result))?|is {_A_PH}|"
    rf"is {_PH} (?:(?:a|an|the) )?(?:{_SOUR}) ph|"
    rf"is {_PH} (?:sour|acid|acidic) enough|"
    rf"what (?:does|would|do) {_A_PH} (?:mean|say|tell)(?: (?:me|us))?|"
    rf"what (?:(?:do|should) (?:i|we) do |to do |does it mean |happens |now )?(?:if|about|with) "
    rf"{_A_PH}|{_A_PH} (?:what (?:now|does (?:that|it) mean|(?:should|do|must) (?:i|we) do))"
    rf"){_IN_IT}(?: (?:now|then|though))?"
)
_A_FIGURE = Late(r"(?:and |so )?what does \d\.\d{1,2} mean")
"""Said to the bot, the figure of a strip or a meter."""

_GROUND = r"(?:(?:the|our|my|cold|cool|warm|winter|wet) )*(?:soil|ground|earth)"
_BREAKS_DOWN = (
    r"(?:take|takes|last|need|needs|be|wait|rot|vanish|disappear|break down|decompose|turn to "
    r"soil|become soil|compost|plant|sow|bury it|burying|after burying|buried|for)"
)
_IN_SOIL = Late(
    rf"(?:and |so |then )?{_HOW_LONG}(?: .{{0,40}}\b{_BREAKS_DOWN})?(?: (?:it|them|this|the stuff|"
    rf"there|to|break down|decompose|rot))* (?:in|under|if|when|with|once) {_GROUND}"
    rf"(?: (?:at|of|is|'s|is at|is only|that is|with))* {_WARMTH}"
)


def conditions(message: Message) -> Iterator[Found]:
    """The questions of a message about a growth, or about the days at some temperature."""
    for phrase in phrases(message):
        asked = _growth(phrase) or _acidity(phrase) or _usual_dose(phrase) or _more_bran(phrase)
        plan = asked or _days_at(phrase)
        if plan is not None:
            yield Found(*phrase.sentence, plan)


def _growth(phrase: Phrase) -> Ask | None:
    if not phrase.asked or _GROWTH.fullmatch(phrase.text) is None:
        return None
    seen = [s for s in phrase.message.signs if phrase.start <= s.start < phrase.end]
    signs = tuple(dict.fromkeys(s.sign for s in seen if s.sign.endswith("_mould")))
    return Ask(topic="trouble", signs=signs, bin=phrase.bin) if signs else None


def _acidity(phrase: Phrase) -> Ask | None:
    """What a pH means that is asked about and not told of a bin."""
    to_us = phrase.to_bot or phrase.message.context.after_bot
    if _ASKED_PH.fullmatch(phrase.text) is None and not (
        to_us and _A_FIGURE.fullmatch(phrase.text)
    ):
        return None
    figure = _FIGURE.search(phrase.text)
    ph = float(figure[0].replace(",", ".")) if figure else None
    return Ask(topic="trouble", ph=ph, bin=phrase.bin)


_FIGURE = Late(rf"\b{_PH}")


_DOSE = Late(
    r"(?:and |so )?(?:what (?:is|'s|was) )?(?:the |our |your |a )?"
    r"(?P<usual>(?:usual|normal|standard|typical|recommended|right|correct|ordinary) )?dose"
    r"(?: of (?:bran|starter))?(?: (?:again|for|per|on|to) (?:a |each |every |one )?"
    r"(?:layer|kilo|kg|pound|lb))?(?: again)?|"
    r"what dose (?:do you recommend|is (?:usual|normal|right|recommended))"
)


def _usual_dose(phrase: Phrase) -> Ask | None:
    """ "What's the usual dose?", with no bran named; only "the dose" where we are asked for it."""
    said = _DOSE.fullmatch(phrase.text) if phrase.asked or phrase.to_bot else None
    to_us = phrase.to_bot or phrase.message.context.after_bot
    if said is None or not (said["usual"] or to_us):
        return None
    return Ask(topic="dose")


_MORE_BRAN = Late(
    r"(?:and |so |but )?(?:(?:do|should|must) (?:i|we|you) (?:need|use|add|put|give|have to use)|"
    r"does (?:it|that|this|qbin|\w+) (?:need|want|take)|(?:it )?needs?|is there a need for)(?: it)?"
    r"(?: (?:any|some|a bit|a little|much|even))* (?:more|extra|less|double(?: the)?|twice the|"
    r"twice as much) (?:bran|starter)(?P<of>(?: (?:for|on|with|if|when|in|than) .{1,40})|"
    r"(?: (?:now|then|on it|on that|for it|for that))*)"
)


def _more_bran(phrase: Phrase) -> Ask | None:
    """ "Do we need more bran for meat?", "when it's cold?": the dose, and not what is in store."""
    said = _MORE_BRAN.fullmatch(phrase.text)
    if said is None or phrase.text.endswith("for a batch"):
        return None
    if not said["of"] and not phrase.text.removeprefix("it ").startswith(("needs", "does")):
        return None  # "do we need more bran?" is of the store
    items = [item for item in phrase.message.items if phrase.start <= item.start < phrase.end]
    made = makeup([item._replace(absent=False) for item in items])
    masses = [a.value for a in phrase.message.measured() if a.quantity == "mass"]
    return Ask(
        topic="dose",
        mass_kg=masses[0] if len(masses) == 1 else None,
        materials=made.shares if made else None,
        rich=made.rich if made else None,
        bin=phrase.bin,
    )


def _days_at(phrase: Phrase) -> Taught | None:
    warm = [a.value for a in phrase.message.amounts if a.quantity == "celsius"]
    if len(warm) != 1 or not COLDEST <= warm[0] <= HOTTEST:
        return None
    if _IN_SOIL.fullmatch(phrase.text):
        return Taught(lesson="when to plant", celsius=warm[0])
    if _AT.fullmatch(phrase.text) is None or not SOIL.isdisjoint(phrase.tokens):
        return None
    return Taught(lesson="when to bury", celsius=warm[0])
