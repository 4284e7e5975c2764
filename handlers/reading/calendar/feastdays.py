"""Days named by a feast in the words of a message, and things that are only named for one."""

from datetime import date, timedelta

from handlers.reading.calendar.dates import Dates, Day
from handlers.reading.calendar.daywords import BEHIND_A_DAY, DAY_PARTS, WEEKDAYS
from handlers.reading.calendar.feasts import feast_days

_LONGEST_FEAST = 5
"""Words in the name of a feast, at most."""
_OF_NO_DAY = frozenset({"for", "the", "happy", "merry", "till", "until"})
"""Words before a feast that dates nothing which was done on it."""


class FeastDays(Dates):
    """Reads the days that are named by a feast."""

    def feast(self, i: int) -> Day | None:
        """The day named by the feast that begins at word i, if one does and dates something."""
        for length in range(min(_LONGEST_FEAST, len(self.norms) - i), 0, -1):
            end = self.after_part(i + length)
            name = " ".join(self.norms[i : i + length])
            if (days := self.beside(i, name)) and self.dates(i, end):
                return Day(i - 2, end, *days)
            days = feast_days(name, self.today, american=self.month_first)
            if days and self.norms[end : end + 1] == ["eve"]:
                return Day(i, end + 1, days[0] - timedelta(1), days[1] - timedelta(1))
            if days and (end > i + length or self.dates(i, end)):
                return Day(i, end, *days)
            if days and not WEEKDAYS.keys().isdisjoint(self.norms[i:end]):
                # "Easter Monday leftovers" are of no other Monday
                before = self.norms[i - 1] if i else ""
                return Day(i, end, *days, aside=before not in ("till", "until"))
        return None

    def beside(self, i: int, name: str) -> tuple[date, date] | None:
        """ "The day after Christmas", "the day before Midsummer": the day beside the feast."""
        lead = self.norms[max(0, i - 2) : i]
        if lead not in (["day", "after"], ["day", "before"]):
            return None
        step = timedelta(1 if lead[1] == "after" else -1)
        days = feast_days(name, self.today - step, american=self.month_first)
        return days and (days[0] + step, days[1] + step)

    def dates(self, start: int, end: int) -> bool:
        """Whether a feast names the day, and not a thing of that day ("Christmas pudding")."""
        after = self.norms[end] if end < len(self.norms) else ""
        before = self.norms[start - 1] if start else ""
        if self.norms[max(0, start - 2) : start] == ["on", "the"]:
            before = "on"
        free = not after or not after[0].isalpha() or after in BEHIND_A_DAY
        led = self.norms[max(0, start - 2)]
        if before == "after" and led not in ("day", "until", "till"):
            return False  # "cleared up after Easter"
        return (free or before == "on") and before not in _OF_NO_DAY

    def after_part(self, end: int) -> int:
        """Index behind the part of the day ("evening") that stands at word `end`, if one does."""
        return end + 1 if end < len(self.norms) and self.norms[end] in DAY_PARTS else end
