"""Named values of one question ("mass=2kg meat=0.7"), each read as what its topic expects."""

import re
from collections.abc import Mapping
from datetime import date
from typing import TypeVar

from handlers.practice import quantity
from handlers.practice.figure import Refused, listed
from handlers.practice.kinds import KINDS, Kind, Shares
from handlers.practice.units import System

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

    def share(self, name: str) -> float | None:
        """A share from 0 to 1."""
        text = self.text(name)
        return None if text is None else quantity.share(text)

    def celsius(self, name: str) -> float | None:
        """A temperature in °C."""
        text = self.text(name)
        return None if text is None else quantity.degrees_celsius(text)

    def day(self, name: str) -> date | None:
        """A calendar day."""
        text = self.text(name)
        return None if text is None else quantity.day(text)

    def yes(self, name: str) -> bool:
        """Yes or no; not given is no."""
        text = (self.text(name) or "no").lower()
        if text not in _YES | _NO:
            raise Refused(f"{name} is yes or no, not “{text[:40]}”.")
        return text in _YES

    def choice(self, name: str, choices: Mapping[str, _Choice], default: _Choice) -> _Choice:
        """One of the words that a topic knows."""
        text = self.text(name)
        if text is None:
            return default
        if text.lower() not in choices:
            raise Refused(f"{name} is {listed(choices, 'or')}, not “{text[:40]}”.")
        return choices[text.lower()]

    def materials(self) -> Shares | None:
        """The make-up from a share for each kind; what is left unstated is mixed scraps."""
        shares: dict[Kind, float] = {}
        for kind in KINDS:
            if (share := self.share(kind)) is not None:
                shares[kind] = share
        if not shares:
            return None
        rest = 1 - sum(shares.values())
        if rest < -0.005:
            raise Refused("The shares of the kinds add up to more than the whole: check them.")
        if rest > 1e-9:
            shares["mixed"] = shares.get("mixed", 0.0) + rest
        return shares
