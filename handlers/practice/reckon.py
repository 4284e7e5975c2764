"""One door to the craft's arithmetic: a topic and named values in words, an answer with units."""

from collections.abc import Mapping
from dataclasses import dataclass

from handlers.practice.cautions import caution
from handlers.practice.choices import OURS, WHY, Choices
from handlers.practice.figure import Refused, listed, quoted
from handlers.practice.kinds import NAMES
from handlers.practice.topics import TOPICS
from handlers.practice.units import SYSTEMS, System
from handlers.practice.value_names import canonical
from handlers.practice.values import Values


@dataclass(frozen=True, slots=True)
class Reckoned:
    """An answer: figures by name with their unit in it, plain lines, and the working."""

    topic: str
    answer: Mapping[str, object]
    lines: tuple[str, ...]
    why: tuple[str, ...]


def reckon(
    topic: str, values: Mapping[str, str], *, units: System = "metric", choices: Choices = OURS
) -> Reckoned:
    """The answer to a topic's question; Refused, in one sentence, if it cannot be had.

    What a value says comes before the group's choices and units.
    """
    name = topic.strip().lower().replace("_", "-")
    known = TOPICS.get(name)
    if known is None:
        raise Refused(f"I cannot reckon {quoted(topic)}: ask for {listed(TOPICS, 'or')}.")
    given = canonical(values, (*known.names, *(NAMES if known.kinds else ()), "units"))
    for each in given:
        if each not in known.names and each != "units" and not (known.kinds and each in NAMES):
            takes = listed((*known.names, *(("shares of kinds",) if known.kinds else ())))
            raise Refused(f"{name} does not take {quoted(each)}: it takes {takes}.")
    asked = Values(given, units)
    asked.units = asked.choice("units", {system: system for system in SYSTEMS}, units)
    found = known.reckon(asked, choices)
    open_ones = [each for each in found.chosen if each not in given]
    chosen = tuple(f"our choice where sources differ: {WHY[each]}" for each in open_ones)
    care = (caution(found.caution),) if found.caution else ()
    return Reckoned(name, found.results(), (*found.lines, *care), (*found.why(), *chosen))
