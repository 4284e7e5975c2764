"""Settings asked for in free words: "put us back in kilos", "nothing before 9 in the morning".

Only looked for where the scores say that a setting was told: the words alone are those of talk.
"""

import re
from collections.abc import Collection, Sequence
from itertools import pairwise

from handlers.reading.acts import Set
from handlers.reading.hours import hour_at
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in

_METRIC = words_in("metric kilo kilos kg kgs kilograms grams litre litres liter liters celsius")
_POUNDS = words_in("pound pounds lb lbs ounce ounces oz pint pints gallon gallons quart quarts")
_AMERICAN = words_in("american quart quarts fahrenheit")
_REMINDING = words_in(
    "remind reminds reminder reminders reminding notice notices notification notifications nudge "
    "nudges nag nagging digest alerts rappel rappels recordatorio recordatorios erinnerung "
    "erinnerungen promemoria"
)
_OFF = words_in("off stop pause mute silence cancel enough")
_ON = words_in("start resume unmute")
_SWITCHED = words_in("turn switch put turned switched")
_INSTEAD = words_in("not no none never without instead rather nicht pas nada")
_ENDS = frozenset({".", ",", "!", "?", ";", "\n", "—", "(", ")"})
_CLOCK = words_in("time zone timezone clock")
_ZONES = {
    zone: words_in(names)
    for zone, names in (
        ("Europe/London", "british uk london english scottish welsh"), ("Europe/Dublin",
         "irish dublin"), ("Europe/Paris", "french paris"), ("Europe/Berlin", "german berlin"),
        ("Europe/Madrid", "spanish madrid"), ("Europe/Rome", "italian rome"),
        ("Europe/Lisbon", "portuguese lisbon"), ("Europe/Amsterdam", "dutch amsterdam"),
        ("Europe/Warsaw", "polish warsaw"), ("America/New_York", "eastern"),
        ("America/Chicago", "chicago"), ("America/Denver", "mountain denver"),
        ("America/Los_Angeles", "pacific"), ("Australia/Sydney", "sydney"),
        ("Pacific/Auckland", "auckland"), ("Asia/Kolkata", "indian"), ("Asia/Manila", "manila"),
        ("Asia/Singapore", "singapore"), ("Africa/Lagos", "lagos"),
        ("Europe/Vienna", "vienna austrian"), ("Europe/Brussels", "brussels belgian"),
        ("Europe/Stockholm", "stockholm swedish"), ("Europe/Copenhagen", "copenhagen danish"),
        ("Europe/Oslo", "oslo norwegian"), ("Europe/Athens", "athens greek"),
        ("Europe/Prague", "prague czech"), ("Europe/Zurich", "zurich swiss"),
        ("Australia/Brisbane", "brisbane"), ("Australia/Perth", "perth"),
        ("America/Toronto", "toronto"), ("America/Vancouver", "vancouver"),
        ("Africa/Nairobi", "nairobi"), ("Africa/Johannesburg", "johannesburg"),
    )
}  # fmt: skip
"""Zones of the IANA database by what people call their time."""


def wish_of(message: Message) -> Set | None:
    """The setting that a message asks for in its own words, if it can be told which and to what."""
    said = _wanted(message)
    found = _zone(said) or _of_reminders(message, said) or _units(message, said)
    return None if found is None else Set(what=found[0], value=found[1], rules=("a wish",))


def _wanted(message: Message) -> list[str]:
    """The words, those left out that say what is no longer wanted ("and not in pounds")."""
    out: list[str] = []
    refused = False
    for norm in message.norms:
        refused = (refused and norm not in _ENDS) or norm in _INSTEAD
        out.append("" if refused else norm)
    return out


def zone_named(message: Message) -> tuple[str, str] | None:
    """The zone that is named where a time zone is spoken of: "we live in Vienna"."""
    norms = message.norms
    spoken = "timezone" in norms or ("time", "zone") in pairwise(norms)
    if not spoken or len(message.sentences) > _FEW:
        return None
    text = " ".join([norm for norm in norms if norm.isalpha() or norm == "/"])
    written = [zone for zone in _ZONES if _as_said(zone) in text]
    if written:
        return "zone", written[0]
    if match := _WRITTEN_ZONE.search(text):
        return "zone", match.group().title().replace(" ", "")
    ours = {c for a, b, c in zip(norms, norms[1:], norms[2:], strict=False) if (a, b) in _AT_HOME}
    found = [zone for zone, names in _ZONES.items() if not names.isdisjoint(ours)]
    return ("zone", found[0]) if len(found) == 1 else None


def _as_said(zone: str) -> str:
    """ "America/New_York" as the words of a message have it."""
    return zone.lower().replace("/", " / ").replace("_", " ")


_AT_HOME = frozenset({("are", "in"), ("live", "in"), ("based", "in"), ("living", "in")})
_FEW = 2
_WRITTEN_ZONE = re.compile(
    r"\b(?:africa|america|asia|atlantic|australia|europe|indian|pacific)"
    r"(?: / [a-z]+){1,2}"
)


def _zone(said: Sequence[str]) -> tuple[str, str] | None:
    """ "Irish time", "the clock of Paris"; "a lovely time in Paris" is none."""
    near = {
        word
        for i, norm in enumerate(said)
        if norm in _CLOCK
        for word in (*said[max(0, i - 1) : i], *_behind(said[i + 1 : i + 3]))
    }
    found = [zone for zone, names in _ZONES.items() if not names.isdisjoint(near)]
    return ("zone", found[0]) if len(found) == 1 else None


def _behind(words: Sequence[str]) -> Sequence[str]:
    return words if words[:1] and words[0] in _LEADS else ()


_LEADS = words_in("to of is as :")


def _of_reminders(message: Message, said: list[str]) -> tuple[str, str] | None:
    """The hour of the reminders, or whether there are any."""
    if _REMINDING.isdisjoint(message.norms) or _reminds_of_something(message.norms):
        return None
    for i, norm in enumerate(said):
        hour = hour_at(list(message.words), message.norms, i) if norm else None
        if hour is not None and not hour.vague:
            return "reminder time", hour.at.strftime("%H:%M")
    if not _OFF.isdisjoint(said):
        return "reminders", "off"
    switched_on = "on" in said and not _SWITCHED.isdisjoint(said)
    return ("reminders", "on") if switched_on or not _ON.isdisjoint(said) else None


def _reminds_of_something(norms: Sequence[str]) -> bool:
    """ "Remind us to empty the caddy at 6" arranges one reminder and sets nothing."""
    return any(
        norm == "remind"
        and (
            not {"about", "that"}.isdisjoint(norms[i + 1 : i + 4])
            or any(a == "to" and b.isalpha() for a, b in pairwise(norms[i + 1 : i + _FAR]))
        )
        for i, norm in enumerate(norms)
    )


_FAR = 12
"""Words behind "remind" among which the deed is named that is not to be forgotten."""


def _units(message: Message, said: Collection[str]) -> tuple[str, str] | None:
    if not _REMINDING.isdisjoint(message.norms):
        return None
    if not _METRIC.isdisjoint(said):
        return "units", "metric"
    if "imperial" in said:
        return "units", "imperial"
    if _POUNDS.isdisjoint(said) and _AMERICAN.isdisjoint(said):
        return None
    over_there = message.context.zone.key.startswith("America/")
    return "units", "us" if over_there or not _AMERICAN.isdisjoint(said) else "imperial"
