"""Zones of the IANA database by what people call their time: "Irish time", "we live in Vienna"."""

from collections.abc import Callable, Iterator, Sequence
from functools import cache
from importlib.resources import files
from itertools import pairwise

from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import lines_of, words_in

_CLOCK = words_in("time zone timezone clock clocks")
_AREAS = words_in("Africa America Asia Atlantic Australia Europe Indian Pacific")
_NO_PLACES = words_in("act center christmas easter factory north oral south wake west")
"""Last parts of zones that mean something else in talk."""
_LONGEST = 3
"""Words of a place's name."""
_FEW = 2
"""Sentences of a message that says where the group is."""
_NEAR = 2
"""Words between a place and its clock: "British summer time", "the clock of Paris"."""
_BETWEEN = words_in("to of in for is as : be should standard summer daylight winter local the it")
_AT = words_in("in on at to")
_WE = words_in("we 're we're were group town us all")
_LIVING = words_in("are live living based moved 're were here")
_WRITTEN = Late(
    r"\b(?:africa|america|asia|atlantic|australia|europe|indian|pacific)(?: / [a-z]+){1,2}"
)


@cache
def _zones() -> dict[tuple[str, ...], str]:
    """Zones by the words that name them: the city that each is called after, and our list."""
    found: dict[tuple[str, ...], str] = {}
    for key in files("tzdata").joinpath("zones").read_text(encoding="utf-8").split():
        area, city = key.partition("/")[0], key.rpartition("/")[2]
        if area in _AREAS and city.casefold() not in _NO_PLACES:
            found[tuple(city.casefold().split("_"))] = key
    for line in lines_of("zones.txt"):
        key, _, names = line.partition(":")
        found |= {tuple(name.split()): key for name in names.split(",")}
    return found


def zone_named(message: Message) -> tuple[str, str] | None:
    """The zone that is named where a time zone is spoken of: "we live in Vienna"."""
    norms = message.norms
    spoken = "timezone" in norms or ("time", "zone") in pairwise(norms)
    if not spoken or len(message.sentences) > _FEW:
        return None
    zone = _written(norms) or _only(norms, _is_home)
    return ("zone", zone) if zone else None


def zone_wanted(said: Sequence[str]) -> tuple[str, str] | None:
    """ "Irish time", "the clock of Paris", "we're in Cardiff"; "a lovely time in Paris" is none."""
    if _CLOCK.isdisjoint(said):
        return None
    zone = _written(said) or _only(said, _is_of_clock) or _only(said, _is_home)
    if zone is None and not (_SETTING | _ZONE).isdisjoint(said):
        zone = _only(said, lambda *_: True)
    if zone is None and not _ZONE.isdisjoint(said):
        zone = ""
    return None if zone is None else ("zone", zone)


_ZONE = words_in("zone timezone")


def _written(norms: Sequence[str]) -> str | None:
    """A zone as the database has it, in whatever case."""
    match = _WRITTEN.search(" ".join([norm for norm in norms if norm.isalpha() or norm == "/"]))
    if match is None:
        return None
    area, *_, city = match.group().split(" / ")
    for words in range(_LONGEST, 0, -1):
        key = _zones().get(tuple(f"{city}{match.string[match.end() :]}".split()[:words]))
        if key and key.casefold().startswith(area):
            return key
    return match.group().title().replace(" ", "")


def _only(norms: Sequence[str], is_meant: Callable[[Sequence[str], int, int], bool]) -> str | None:
    """The one zone that is named where it is meant."""
    found = {zone for start, end, zone in _places(norms) if is_meant(norms, start, end)}
    return found.pop() if len(found) == 1 else None


def _places(norms: Sequence[str]) -> Iterator[tuple[int, int, str]]:
    """The zones that are named: norms[start:end], the longest name at each word."""
    for start in range(len(norms)):
        for end in range(min(start + _LONGEST, len(norms)), start, -1):
            zone = _zones().get(tuple(norms[start:end]))
            if zone is not None:
                yield start, end, zone
                break


def _is_of_clock(norms: Sequence[str], start: int, end: int) -> bool:
    """Whether a place stands before its clock, or behind a word that leads from the clock to it."""
    for i in range(end, min(end + _NEAR + 1, len(norms))):
        if norms[i] in _CLOCK:
            return True
        if norms[i] not in _BETWEEN:
            break
    for i in range(start - 1, -1, -1):
        if norms[i] in _CLOCK:
            return start - 1 > i and norms[start - 1] != "in"
        if norms[i] not in _BETWEEN:
            break
    return False


def _is_home(norms: Sequence[str], start: int, _: int) -> bool:
    """ "We live in Vienna", "put us on Lagos", "the zone is set to Perth"."""
    if start < _NEAR or norms[start - 1] not in _AT:
        return False
    lead = norms[max(0, start - 1 - _NEAR) : start - 1]
    return norms[start - 2] in _LIVING | _ZONE | _WE or any(norm in _SETTING for norm in lead)


def zone_of_home(message: Message) -> str | None:
    """The zone of the place where the group says that it lives, and nothing more of it: "we're in
    London", "four flats in Leeds", "a WG in Berlin"; a day is of a journey.
    """
    norms = message.norms
    if not message.has(_IN) or message.days or message.amounts or len(norms) > _LONGEST_HOME:
        return None
    if message.asked or len(message.sentences) > _FEW:
        return None
    return _only(norms, _is_where_we_live)


def _is_where_we_live(norms: Sequence[str], start: int, end: int) -> bool:
    lead = norms[max(0, start - 2 - _NEAR) : start - 1]
    ends = end == len(norms) or norms[end] in _ENDS
    told = lead[-1:] != [] and lead[-1] in _LIVING_THERE
    return norms[start - 1 : start] == ["in"] and ends and told and not _AWAY.intersection(lead)


US_ZONES = frozenset(
    f"America/{city}"
    for city in ("New_York", "Chicago", "Denver", "Los_Angeles", "Phoenix", "Detroit", "Boise")
)
"""Where people measure in US units."""
_IN = words_in("in")
_ENDS = words_in(", . ; ! and by here so ) \n")
_LIVING_THERE = words_in(
    "are 're live living based flats households families neighbours neighbors house street block "
    "school wg flatshare building community collective"
)
_AWAY = words_in("they he she was were used parents mum friends grew holiday trip")
_LONGEST_HOME = 20
_SETTING = words_in("set put switch change move town")
