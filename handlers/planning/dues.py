"""What is to be done to a bin, and between which days: it follows from the bin's entries."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta

from handlers.asked.filling import outlook_of
from handlers.practice import days, upkeep
from handlers.practice.starter import FERMENT_DAYS
from handlers.practice.supply import SPARE_DAYS, Supply, keeps_until
from handlers.practice.trouble import trouble
from handlers.reading.calendar.recurrence import first_after, occurrences
from handlers.state import BinState, Run
from storage.book import Book
from storage.rows import Due, Entry

NAMED_LATE = (2, 5, 9, 14, 21)
"""Days after its last day on which something overdue is named again; then at 42, 84, 168, ..."""

REST = timedelta(days=2)
"""What was named is not named again sooner than this, wherever it moves."""

DUTIES = {
    "drain": "drain {bin}",
    "seal": "seal {bin}",
    "bury": "bury {bin}",
    "check": "look into {bin} again",
    "cover": "see that nothing dug where {bin} was buried",
    "plant": "plant where {bin} was buried",
    "hand over": "hand over {bin}",
    "turn to keep": "turn to keep {bin}",
    "turn to drain": "turn to drain {bin}",
    "turn to carry": "turn to carry {bin}",
    "dry": "dry the starter, turning it every day",
    "mix": "mix a batch of starter",
    "own": "",
}
"""What a due asks to do, in words; one that members set says it in their own."""


ALL_BINS = "the bins"
"""What turns are for that are of no one bin."""

TURNS = frozenset({"turn to keep", "turn to drain", "turn to carry"})
"""Dues of a rota: they concern whoever has the turn."""

EVENTS = {
    **dict.fromkeys(TURNS, timedelta(0)),
    "plant": timedelta(days=7),
    "cover": timedelta(0),
    "hand over": timedelta(0),
    "own": timedelta(0),
}
"""Dues that come to pass of themselves, named once and never late; how long after their last day
they are still worth showing."""

OWN = frozenset({"own"})

ACTS = frozenset({"drain", "seal", "bury"})
"""Dues of a bin that end with an act of the record."""

HORIZON = timedelta(days=56)
"""How far ahead the days of what comes again are laid out; always the next one, too."""

SHOWN_BEHIND = timedelta(days=14)
"""How long days that members set are kept once they are over."""

STILL_TOLD = timedelta(days=7)
"""What members set, and an outage kept from being said, is still said so long after its day."""

ON_STARTER = frozenset({"batch", "stock", "layer"})
"""The acts from which the dues of the starter follow."""

OF_STARTER = frozenset({"dry", "mix"})


def done_to_it(what: str) -> str:
    """What a due asks to do, where its bin has just been named: "drain it"."""
    return "hand it over" if what == "hand over" else DUTIES[what].format(bin="it")


def windows(
    state: BinState, before: Run | None = None, *, explained: bool = True
) -> list[tuple[str, str, days.Window]]:
    """What is to be done to a bin: the due, its occasion, and the days with how they were reckoned.

    `before` is the run before the present one: its soil may still wait to be planted. Unless it is
    to be `explained`, forecasts come without their working.
    """
    run, found = state.run, list[tuple[str, str, days.Window]]()
    last = run if run.buried else before
    if last and last.buried:
        number = state.number if run.buried else state.number - 1
        found.append(("cover", str(number), upkeep.cover_window(last.buried)))
        found.append(("plant", str(number), last.to_plant(last.buried)))
    if not run.buried and (begun := run.first_layer or run.sealed):
        drained = max(begun, run.last_drain or begun)
        found.append(("drain", str(drained), days.drain_window(drained)))
        if run.sealed:
            found.append(("bury", str(state.number), run.to_bury(run.sealed)))
        else:
            found.append(("seal", str(state.number), _to_seal(state, begun, explained)))
        if seen := _in_trouble(run):
            found.append(("check", str(seen), upkeep.check_window(seen)))
    return found


def dues_of(state: BinState, before: Run | None, passing: Entry | None) -> list[Due]:
    """The dues of a bin's present run, when the soil of the run before can be planted, and
    when the bin changes hands (`passing`: the offer or acceptance that stands).
    """
    if state.retired:
        return []
    dues = [
        Due(bin=state.bin, what=what, occasion=on, from_day=window.start, to_day=window.end)
        for what, on, window in windows(state, before, explained=False)
    ]
    if passing and passing.on:
        taker = passing.receiver if passing.act == "offer" else passing.member
        dues.append(
            Due(
                bin=state.bin,
                what="hand over",
                occasion=str(passing.on),
                from_day=passing.on,
                to_day=passing.on,
                to_member=taker,
            )
        )
    return dues


def _in_trouble(run: Run) -> date | None:
    """The day on which something amiss was last seen in a bin, if nothing better was since."""
    if not run.signs:
        return None
    last = run.signs[-1][0]
    seen = [sign for on, sign in run.signs if on == last]
    return None if trouble(seen).verdict == "good" else last


def dues_of_starter(batch: Entry | None, count: Entry | None, lasts: Supply | None) -> list[Due]:
    """When the last batch is ripe to dry, and when the next is to be mixed for it to last.

    A batch that was counted after it was ripe is dry; one that is on its way is enough. Nobody is
    late before the day on which the starter was counted, and none is mixed before it is used up
    where it would not keep for so long.
    """
    drying = _drying(batch, count)
    if drying or lasts is None or count is None or lasts.begin_batch_by is None:
        return drying
    counted = count.on or date.min
    if lasts.starter_out_on is None or lasts.starter_out_on > keeps_until(counted):
        return []
    latest = max(lasts.begin_batch_by, counted)
    earliest = max(latest - timedelta(days=SPARE_DAYS.value), counted)
    mix = Due(bin=None, what="mix", occasion=str(count.root), from_day=earliest, to_day=latest)
    return [mix]


def _drying(batch: Entry | None, count: Entry | None) -> list[Due]:
    if batch is None or batch.on is None:
        return []
    ripe = days.after(batch.on, days.low_days(FERMENT_DAYS))
    if count and count.on and count.on >= ripe:
        return []
    latest = days.after(batch.on, days.high_days(FERMENT_DAYS))
    return [
        Due(
            bin=None,
            what="dry",
            occasion=str(batch.root),
            from_day=ripe,
            to_day=latest,
            to_member=batch.member,
        )
    ]


def root_of(due: Due) -> str:
    """The reminder that a due which a member set is a day of."""
    return due.occasion.partition("/")[0]


def is_waiting(due: Due, today: date) -> bool:
    """Whether it was put off before it was ever said, and is still to be said."""
    return bool(due.put_off_until) and due.told_on is None and is_shown_on(due, today)


def latest_of_each(dues: Sequence[Due], today: date) -> list[Due]:
    """The dues without those days of a reminder that a later day of it, put off or not, outdoes:
    a pause ends in one word for each.
    """
    own = sorted((due for due in dues if due.what in OWN), key=lambda due: due.to_day)
    latest = {root_of(due): due for due in own}
    return [due for due in dues if latest.get(root_of(due)) == due or not _is_outdone(due, today)]


def _is_outdone(due: Due, today: date) -> bool:
    return due.what in OWN and is_waiting(due, today)


def dues_of_date(entry: Entry, today: date, since: date) -> list[Due]:
    """The days of a reminder that a member set, from one on: those of the weeks to come, and the
    next one.
    """
    if entry.on is None:
        return []
    rule, latest = entry.facts.rule, entry.until or date.max
    days = occurrences(rule, entry.on, since, min(today + HORIZON, latest))
    if rule and not any(day >= today for day in days):
        following = first_after(rule, entry.on, today)
        days += [following] if following and following <= latest else []
    return [
        Due(
            bin=None,
            what="own",
            occasion=f"{entry.root}/{day}",
            from_day=day,
            to_day=day,
            to_member=entry.receiver,
            words=entry.facts.words,
            hour=entry.facts.hour,
        )
        for day in days
    ]


def _to_seal(state: BinState, begun: date, explained: bool) -> days.Window:
    """From the day it is likely full to the last likely one; two weeks of filling at most."""
    usual = days.seal_by(begun)
    latest = usual.end
    layers = state.run.layers
    full = outlook_of(state, layers[-1][0], explained=explained) if layers else None
    if full is None:
        return replace(usual, start=latest)
    start, end = min(full.full_on or latest, latest), min(full.latest or latest, latest)
    if explained and start < latest:
        usual = usual.led_by(full.steps, full.figures)
    return replace(usual, start=start, end=end)


def is_news(due: Due, today: date) -> bool:
    """Whether the digest of that day names the due: it was to be named since it last was.

    What became known too late for its day, or fell into an outage, is named in the next digest.
    """
    if today < (due.put_off_until or due.from_day) or not is_shown_on(due, today):
        return False
    if due.told_on is None:
        return today >= due.from_day and (due.hour is None or today > due.from_day)
    since = (due.told_on + timedelta(days=n + 1) for n in range((today - due.told_on).days))
    return any(is_named_on(due, day) for day in since)


def is_named_on(due: Due, today: date) -> bool:
    """Whether a due is to be named on that day: first day, last day, then ever more rarely.

    The last day of a window of two days goes unnamed, so as not to say the same twice running;
    and so does the first day of what was named before it moved.
    """
    if due.put_off_until and today < due.put_off_until:
        return False
    if today == due.put_off_until:
        return True
    if due.told_on and today - due.told_on < REST:
        return False
    if today == due.from_day and due.told_on is None:
        return True
    if due.what in EVENTS:
        return False
    has_moved = due.told_on is not None and due.told_on < due.from_day
    is_last = today == due.to_day and (has_moved or (due.to_day - due.from_day).days > 1)
    return is_last or _is_named_late((today - due.to_day).days)


def _is_named_late(late: int) -> bool:
    times, rest = divmod(late, NAMED_LATE[-1])
    is_doubled = times > 0 and rest == 0 and times & (times - 1) == 0
    return late in NAMED_LATE or is_doubled


async def shown(book: Book, today: date, until: date | None = None) -> list[Due]:
    """What the calendar shows on a day, soonest first; with `until` what begins by then."""
    return [due for due in await book.dues(until=until) if is_shown_on(due, today)]


def is_shown_on(due: Due, today: date) -> bool:
    """Whether the due still belongs in the calendar on that day."""
    if due.put_off_until == date.max:
        return False
    if due.what not in EVENTS:
        return True
    last = max(due.to_day, due.put_off_until or due.to_day)
    if due.what in OWN and due.told_on is None:
        return today <= last + STILL_TOLD
    return today <= max(due.to_day + EVENTS[due.what], last)
