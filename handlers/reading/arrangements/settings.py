"""Settings of the group, as people ask for them: "set the units to metric"."""

import re

from handlers.reading.calendar.hours import PARTS
from handlers.reading.words.late import Late

_LEAD = (
    r"^(?:(?:please|pls|can you|could you|hey|hi|ok|lets|let 's|i 'd|we 'd|we|"
    r"from now on|,|can we|let us|i want you to|bot|now|so|our|my|the|this group 's) )*"
)
_CHANGE = r"\b(?:set|change|use|make|put|keep)\b(?: the| our)? "
_COUNTED = {"two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "ten": 10, "fourteen": 14}
_RECIPES = r"tablespoon|10 ?(?::|to) ?1|ten to one|1 ?: ?1 ?: ?100|ten pounds"
_SOME_DAYS = rf"(?:\d{{1,6}}|{'|'.join(_COUNTED)})(?: (?:weeks?|days))?"
_HOUR = r"\d{1,2}(?:[:.]\d\d)? ?(?:am|pm)?|noon"
_PART = r"(?: in the (?:morning|afternoon|evening)| at night)?"
_NEXT = r"(?=$| (?:,|and|\.) (?:remind|use|set|dose|the|our|reminders?|digest)\b)"
_NO_REMINDERS = (
    r"\b(?:dont remind us|(?:no|stop|skip)(?: more| the| any| sending)* "
    r"(?:reminders?|nagging|digests?|messages))(?: \S+)?"
)
_OURS = r"(?: (?:the|our|your|all|us|with))* "
_SETTINGS = (
    ("calendar link", Late(
        r"\b(?P<value>(?:(?:new|my|own) )*)calendar (?:link|address|feed)\b")),
    ("dilution", Late(
        _CHANGE + r"dilution(?: for (?:the )?beds)? (?:to |at |: )?"
        r"(?P<value>1 ?(?::|to|in) ?\d{2,4})\b")),
    ("pot dilution", Late(
        _CHANGE + r"(?:(?:pots?|house ?plants?) dilution|dilution for (?:the )?(?:pots|"
        r"house ?plants)) (?:to |at |: )?(?P<value>1 ?(?::|to|in) ?\d{2,4})\b")),
    ("trench depth", Late(
        _CHANGE + r"trench(?:es)?(?: depth)? (?:to |at |: )?"
        r"(?P<value>\d{1,3} ?(?:cm|in|inch|inches))\b")),
    ("nitrogen limit", Late(
        _CHANGE + r"nitrogen limit (?:to |at |: )?(?P<value>\d{2,3})\b")),
    ("recipe", Late(
        _CHANGE + rf"(?:starter |bran )?recipe (?:to |: )?(?:the )?(?P<value>{_RECIPES})$")),
    ("recipe", Late(_CHANGE + rf"(?P<value>{_RECIPES}) recipe$")),
    ("ferment days", Late(
        rf"(?:{_CHANGE}|^(?:the |our )?)ferment(?:ing|ation)? (?:days|time|period) "
        rf"(?:to |at |is |be |: ?|of )*(?P<value>{_SOME_DAYS})\b(?!\.)")),
    ("ferment days", Late(
        rf"^(?:(?:please|bot|lets|let us|we|we should|we will) )*ferment "
        rf"(?:everything |them |bins |all bins )?for (?P<value>{_SOME_DAYS} (?:weeks?|days))"
        r"(?: in (?:winter|summer|the (?:cold|warm)))?$")),
    ("ferment days", Late(
        rf"^(?:the |our |all )?(?:bins|everything) (?:to|should|will|must|shall) ferment "
        rf"(?:for )?(?P<value>{_SOME_DAYS} (?:weeks?|days))$")),
    ("planting days", Late(
        _CHANGE + r"planting (?:days|wait|time) (?:to |at |: )?(?P<value>\d{1,3}(?: weeks?)?)\b")),
    ("soil", Late(
        _CHANGE + r"soil(?: parts| ratio)? (?:to |at |: )?(?P<value>\d{1,2})(?: parts)?\b")),
    ("units", Late(
        r"\b(?:set|change|switch|use|make|put|go|back|speak|show|talk|using|want|prefer|do|like|have|give|"
        r"count|reckon|answer|write)\b"
        r"(?: (?!(?:for|against|than|not|no|never|without)\b)\S+){0,4}? "
        r"(?:to |in |is |as |over to |the )?(?P<value>metric|imperial|us|american|british|"
        r"kilos|kilograms|kg|grams|lit(?:re|er)s|pounds|lbs|ounces|oz|pints|quarts|gallons)"
        r"(?: and [a-z]+)?"
        r"(?: units| measures| gallons| system|(?: ,)? (?:not|rather than|instead of) |$)")),
    ("units", Late(
        r"^(?P<value>metric|imperial|kilos|kilograms|kg|pounds|lbs)(?: and [a-z]+)? only$")),
    ("units", Late(r"\bunits? ?(?::|=|to|are|is|should be) ?(?P<value>metric|imperial|"
                         r"us)\b")),
    ("units", Late(
        r"^units? (?:to be )?in (?P<value>kilos|kilograms|kg|grams|lit(?:re|er)s|pounds|lbs|ounces|"
        r"pints|quarts|gallons)(?: and [a-z]+)?(?: please| from now on)?$")),
    ("zone", Late(
        r"\b(?:time ?zone|zone|clock) ?(?:to|is|:|=|should be|as)? ?(?P<value>[a-z]+ ?/ "
        r"?[a-z_]+(?: ?/ ?[a-z_]+)?)")),
    ("quiet hours", Late(
        r"\b(?:quiet|silent|quiet time|night)(?: hours| time)? (?:to |are |is |from |between |: |"
        r"= |should be )*"
        r"(?P<value>\d{1,2}(?::\d\d)? ?(?:am|pm)? ?(?:to|-|until|till|and) ?\d{1,2}(?::\d\d)? "
        r"?(?:am|pm)?)(?!\d)(?! ?(?:on|in|at) (?:the|a)\b(?! (?:group|room|chat)))")),
    ("quiet hours", Late(
        r"^(?:please )?(?:set )?(?:the |our )?quiet hours (?:to |from |are |at )?"
        r"(?P<value>\d{1,2}(?:[:.]\d\d)? ?(?:am|pm)?)$")),
    ("quiet hours", Late(
        r"^(?:(?:please|bot|turn|switch|set|put|make|the|our|we want) )*(?:quiet|silent) hours "
        rf"(?:to |: )?(?P<value>off|none){_NEXT}")),
    ("quiet hours", Late(
        r"^(?:(?:please|bot|we want|we need) )*(?:(?:turn|switch) (?P<value>off)|"
        r"no(?: more)?|drop|stop|remove|cancel|end)(?: the| our| any)? (?:quiet|silent) hours"
        rf"{_NEXT}")),
    ("reminders", Late(
        r"\b(?:turn|switch|set|put) (?:the )?(?:reminders?|nagging) (?P<value>off|on)\b"
        r"(?! (?:for|of|about|on)\b)")),
    ("reminders", Late(
        r"^(?:(?:please|bot|ok|the|our|all) )*reminders? (?:back )?(?P<value>off|on)$")),
    ("reminders", Late(
        rf"{_LEAD}(?:(?:you|we|can|could|may) )*(?P<value>start|restart|resume|unpause|"
        rf"continue)(?: sending| giving)?{_OURS}"
        r"(?:reminders?|digests?|reminding(?: us)?|nagging(?: us)?)$")),
    ("reminders", Late(
        r"\b(?:turn|switch) (?P<value>off|on) (?:the |your )?reminders?\b"
        r"(?! (?:for|of|about|on)\b)")),
    ("reminders", Late(
        r"^(?:(?:please|bot|ok|can you|could you) )*(?:turn|switch) them back (?P<value>on)$")),
    ("reminder time", Late(
        r"\b(?:set|change|move|send|make|put|do)\b(?: \S+){0,3}? reminders?(?: time)? (?:to |at |"
        r"for |by |from |out at )+"
        rf"(?P<value>(?:\d{{1,2}}(?::\d\d)? ?(?:am|pm)?|noon|midday|midnight){_PART})(?=$| )")),
    ("reminder time", Late(
        r"\b(?:set|change|move|send|make|put|do|give|have|want)\b(?: \S+){0,3}? "
        r"(?:reminders?|digest)(?: (?:to|out|only|over|time|for|it))* (?:in the|every|each|at) "
        r"(?P<value>morning|lunchtime|afternoon|evening)s?\b")),
    ("reminder time", Late(
        r"^(?:please )?remind us (?:only )?(?:in the|every|each) "
        r"(?P<value>morning|lunchtime|afternoon|evening)s?(?: please| instead| from now on)*$")),
    ("quiet before", Late(
        rf"{_NO_REMINDERS} (?:before|earlier than) (?P<value>{_HOUR}{_PART})(?=$| )")),
    ("quiet after", Late(
        rf"{_NO_REMINDERS} (?:after|later than|past) "
        rf"(?P<value>{_HOUR}{_PART})(?=$| )")),
    ("reminder time", Late(
        r"^(?:please )?remind us (?:every day |daily )?at (?P<value>\d{1,2}(?::\d\d)? ?(?:am|"
        r"pm)?|noon|midnight)$")),
    ("habit", Late(
        r"^(?:(?:please|bot|lets|let 's|we) )*(?:dose|measure|weigh)(?: the)?(?: bran| starter)? "
        r"by (?:the )?(?P<value>spoons?|weight)$")),
    ("habit", Late(
        r"^(?:the )?(?P<value>spoon|weight) habit(?: for (?:the )?(?:bran|dosing|doses|"
        r"starter))?$")),
    ("habit", Late(
        r"\b(?:go|dose|use|work|measure)\b(?: \S+){0,3}? (?:by )?(?P<value>spoons?|weights?)"
        r"(?: for (?:the )?(?:bran|dose|doses|starter))\b")),
    ("habit", Late(
        r"\b(?:use|set|switch|change|go|follow)\b(?: \S+){0,4}? (?P<value>spoon|weight|spoons|"
        r"weights)"
        r"(?: habit| rule| dose| doses| method| based)")),
    ("habit", Late(
        r"\b(?:set|change|switch)\b(?: the| our)? (?:dos(?:e|es|ing|age)(?: habit| rule)?|habit) "
        r"(?:to|by) (?:the )?(?P<value>spoons?|weight)")),
)  # fmt: skip
_SPELLED = {"american": "us", "british": "imperial", "quarts": "us",
            **dict.fromkeys(("kilos", "kilograms", "kg", "grams", "litres", "liters"), "metric"),
            **dict.fromkeys(("lbs", "ounces", "oz", "pints", "gallons"), "pounds"),
            "spoons": "spoon", "weights": "weight"}  # fmt: skip
_LATE = Late(r" ?(?:in the (?:afternoon|evening)|at night)$")
_EVENING = Late(r"(?<=\d)$")
"""Behind an hour without its half, after which nothing is to be said: one of the evening."""
_TAIL = Late(
    r"(?: ,)?(?: (?:from (?:now|here|today)(?: on| out)?|please|pls|thanks|in future|henceforth|"
    r"now|again|instead|for (?:us|everything|(?:this|the|our) group|all bins)))+$"
)
_ORDER = Late(
    _LEAD
    + r"(?:set|change|switch|use|turn|make|move|put|remind|send|units?|time ?zone|zone|quiet|go|"
    r"follow|speak|show|no|new|my|own|calendar|back|stop|skip|give|have|do|like|want|i want|"
    r"dont|dose|measure|weight|spoon|bins|everything|count|answer|write|metric|imperial|kilos|"
    r"reminders?|drop|remove|cancel|end|start|restart|resume|unpause|continue|you|kilograms|kg|pounds|lbs|ferment|fermenting|fermentation|we)\b"
)


_UNITS_NAMED = Late(r"\b(?:units?|metric|imperial)\b")


_THEM = Late(r"\b(?:turn|switch) them back\b")
"""To a neighbour that may be lights."""


def setting_of(text: str, *, to_bot: bool) -> tuple[str, str] | None:
    """What is to be set and to which value, or None; `text` is plain words, one space between."""
    text = _TAIL.sub("", text)
    if _ORDER.search(text) is None:
        return None
    for what, pattern in _SETTINGS:
        match = pattern.search(text)
        vague = what == "units" and not to_bot and _UNITS_NAMED.search(text) is None
        vague = vague or (not to_bot and _THEM.search(text) is not None)
        if match is None or vague:
            continue
        value = match["value"]
        return what, "off" if value is None else _value(what, value.strip())
    return None


def _value(what: str, value: str) -> str:
    if what.endswith("days"):
        number, _, unit = value.partition(" ")
        return str(int(_COUNTED.get(number, number)) * (7 if unit.startswith("week") else 1))
    if what == "reminders":
        return value if value == "off" else "on"
    if value in PARTS:
        return f"{PARTS[value]:%H:%M}"
    if what in ("reminder time", "quiet before"):
        return _clock(_halved(value))
    if what == "quiet after":
        return _clock(_EVENING.sub(" pm", _halved(value)))
    if what == "calendar link":
        return value.replace("my", "mine").replace("own", "mine")
    if what == "quiet hours":
        return _quiet_hours(value)
    if what == "zone":
        parts = [p.strip() for p in value.split("/")]
        return "/".join("_".join(w.capitalize() for w in p.split("_")) for p in parts)
    return _SPELLED.get(value, value)


def _halved(value: str) -> str:
    """ "7 in the evening" as "7 pm"."""
    return _LATE.sub(" pm", value).replace(" in the morning", " am")


def _quiet_hours(value: str) -> str:
    """ "10 to 7" as 22:00-07:00, for nobody keeps quiet from breakfast on; one hour alone as it is.

    Hours said with a half of the day, or with a nought before them, are taken as they are.
    """
    if value in ("off", "none"):
        return "off"
    first, *rest = re.split(r" ?(?:to|-|until|till|and) ?", value, maxsplit=1)
    if not rest:
        return first
    start, end = _clock(first), _clock(rest[0])
    plain = re.fullmatch(r"[1-9]\d?(?::\d\d)?", first) and "m" not in rest[0]
    if plain and start < "12:00" and end <= start:
        start = _clock(f"{first} pm")
    return f"{start}-{end}"


def _clock(value: str) -> str:
    """ "7 pm" as 19:00; what is no hour ("25:00", "25 am") as it was said."""
    if value in ("noon", "midday"):
        return "12:00"
    if value == "midnight":
        return "00:00"
    digits, _, half = value.replace("am", " am").replace("pm", " pm").partition(" ")
    hour, _, minute = digits.partition(":")
    number = int(hour) if hour != "24" else 0
    if number > 23 or int(minute or 0) > 59 or (half.strip() == "am" and number > 12):
        return value
    if half.strip() == "pm" and number < 12:
        number += 12
    if half.strip() == "am" and number == 12:
        number = 0
    return f"{number:02d}:{int(minute or 0):02d}"
