"""Named values of one question ("mass=2kg meat=0.7"), each read as what its topic expects."""

import re
from collections.abc import Mapping
from datetime import date
from typing import TypeVar

from handlers.practice import quantity
from handlers.practice.figure import Refused, listed, quoted
from handlers.practice.kinds import NAMES, Kind, Shares
from handlers.practice.units import System
from handlers.practice.value_names import WETNESS
from handlers.practice.written_day import day

_Choice = TypeVar("_Choice", bound=str)

_YES = frozenset({"yes", "y", "true", "1", "on"})
_NO = frozenset({"no", "n", "false", "0", "off"})


class Values:
    """The values that were given, by name; a name that was not given reads as None."""

    def __init__(self, given: Mapping[str, str], units: System) -> None:
        self._given = given
        self.units = units

    def text(self, name: str) -> str | None:
        """The value as it was written, without blanks around it."""
        value = self._given.get(name)
        return None if value is None else value.strip()

    def volume_l(self, name: str) -> float | None:
        """A volume in L."""
        text = self.text(name)
        return None if text is None else quantity.litres(text, self.units)

    def mass_kg(self, name: str) -> float | None:
        """A mass in kg."""
        text = self.text(name)
        return None if text is None else quantity.kilograms(text, self.units)

    def length_m(self, name: str) -> float | None:
        """A length in m."""
        text = self.text(name)
        return None if text is None else quantity.metres(text, self.units)

    def area_m2(self, name: str) -> float | None:
        """An area in m²."""
        text = self.text(name)
        return None if text is None else quantity.square_metres(text, self.units)

    def number(self, name: str) -> float | None:
        """A plain number."""
        text = self.text(name)
        return None if text is None else quantity.plain_number(text)

    def days(self, name: str) -> float | None:
        """A count of days: "10", "10 d", "2 weeks"."""
        text = self.text(name)
        if text is None:
            return None
        found = re.fullmatch(r"(.*?)\s*(d|days?|w|weeks?)?", text.lower())
        digits, unit = found.groups() if found else (text, None)
        return quantity.plain_number(digits) * (7 if (unit or "d").startswith("w") else 1)

    def whole_days(self, name: str, default: int) -> int:
        """A count of whole days."""
        days = self.days(name)
        if days is None:
            return default
        if days != int(days):
            raise Refused(f"{name} is a count of whole days, such as 14.")
        return int(days)

    def mass_or_volume(self, name: str) -> tuple[float | None, float | None]:
        """A mass in kg or a volume in L, whichever it is."""
        text = self.text(name)
        return (None, None) if text is None else quantity.mass_or_volume(text, self.units)

    def volume_if_unit(self, name: str) -> float | None:
        """A volume in L, or None where it is a bare yes or no."""
        text = self.text(name)
        return quantity.litres(text, self.units) if text and re.match(r"\D*\d+\D+", text) else None

    def weekly_kg(self, name: str, kg_l: float) -> float | None:
        """kg a week: "6kg", "1 kg a day", "20 L a week" at the density given."""
        text = self.text(name)
        if text is None:
            return None
        amount, a_day = re.subn(r"\s*(?:a|per|/|each)\s*d(?:ay)?$", "", text.lower())
        amount = re.sub(r"\s*(?:a|per|/|each)\s*(?:w|wk|week)$", "", amount)
        mass, volume = quantity.mass_or_volume(amount, self.units)
        kg = (volume or 0.0) * kg_l if mass is None else mass
        return kg * 7 if a_day else kg

    def share(self, name: str) -> float | None:
        """A share from 0 to 1."""
        text = self.text(name)
        return None if text is None else quantity.share(text)

    def wetness(self, name: str) -> float:
        """How wet scraps are, in a word or as a share from 0 to 1; not given is ordinary."""
        said = (self.text(name) or "ordinary").lower()
        if said not in WETNESS and not re.search(r"\d", said):
            raise Refused(f"{name} is dry, ordinary, wet or soaking, or a share from 0 to 1.")
        return WETNESS[said] if said in WETNESS else quantity.share(said)

    def layers(self, name: str, kg_l: float) -> list[tuple[date, float]]:
        """Days with kg: "2026-03-02:2kg, 2026-03-04:5 L"; a volume at the density given."""
        layers = []
        for part in filter(None, re.split(r"[,;\s]+(?=\d{4}-)", self.text(name) or "")):
            on, sign, amount = re.sub(r"^(\S{8,10}?)[:=\s]+", r"\1:", part).partition(":")
            if not sign:
                raise Refused(f"{quoted(part)} is not a layer I can read: write 2026-03-02:2kg.")
            mass, volume = quantity.mass_or_volume(amount, self.units)
            layers.append((day(on), (volume or 0.0) * kg_l if mass is None else mass))
        return layers

    def celsius(self, name: str) -> float | None:
        """A temperature in °C."""
        text = self.text(name)
        return None if text is None else quantity.degrees_celsius(text)

    def day(self, name: str) -> date | None:
        """A calendar day."""
        text = self.text(name)
        return None if text is None else day(text)

    def yes(self, name: str) -> bool:
        """Yes or no; not given is no."""
        text = (self.text(name) or "no").lower()
        if text not in _YES | _NO:
            raise Refused(f"{name} is yes or no, not {quoted(text)}.")
        return text in _YES

    def choice(self, name: str, choices: Mapping[str, _Choice], default: _Choice) -> _Choice:
        """One of the words that a topic knows."""
        text = self.text(name)
        if text is None:
            return default
        word = re.sub(r"[\s_]+", "-", text.lower())
        if word not in choices:
            raise Refused(
                f"{name} is {listed(dict.fromkeys(choices.values()), 'or')}, not {quoted(text)}."
            )
        return choices[word]

    def mass_of_scraps_kg(self) -> float | None:
        """Mass of the scraps in kg: as given, or the sum of the kinds given by weight."""
        stated = self.mass_kg("mass")
        return stated if stated is not None else sum(self._kilograms().values()) or None

    def materials(self) -> Shares | None:
        """The make-up, from a share or a weight for each kind; what is left unstated is mixed."""
        shares: dict[Kind, float] = {}
        for name, share in self.parts().items():
            kind = NAMES.get(name, "mixed")
            shares[kind] = shares.get(kind, 0.0) + share
        return shares or None

    def parts(self) -> dict[str, float]:
        """Share of each kind by the name it was given; what is left of the whole as "mixed"."""
        weights, shares = self._kilograms(), self._shares()
        if weights and shares:
            raise Refused("Give the kinds all as shares or all as weights, not some of each.")
        if weights:
            whole = self.mass_of_scraps_kg()
            if not whole:
                raise Refused("The scraps have to weigh something: check their weights.")
            shares = {name: kg / whole for name, kg in weights.items()}
        if not shares:
            return {}
        rest = 1 - sum(shares.values())
        if rest < -0.005:
            raise Refused("The shares of the kinds add up to more than the whole: check them.")
        if rest > 0.005:
            shares["mixed"] = shares.get("mixed", 0.0) + rest
        return shares

    def _shares(self) -> dict[str, float]:
        said = {name: text for name, text in self._given.items() if name in NAMES}
        return {name: quantity.share(text) for name, text in said.items() if not _weighs(text)}

    def _kilograms(self) -> dict[str, float]:
        said = {name: text for name, text in self._given.items() if name in NAMES}
        return {
            name: quantity.kilograms(text, self.units)
            for name, text in said.items()
            if _weighs(text)
        }


def _weighs(text: str) -> bool:
    return re.search(r"\d\s*(?!per)[a-z]", text.lower()) is not None
