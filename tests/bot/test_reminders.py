"""Each due is told once, at the group's hour, whatever the clocks do and however often we die."""

import re
from collections import Counter
from collections.abc import Iterable
from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from bot.log import Line
from bot.playback import Playback, Spoken
from bot.reminders import tell
from handlers.answer import Turn
from handlers.reading.acts import Bury, Layer, Open, Seal, Set
from handlers.recording import keeping
from handlers.righting import corrections
from storage import rooms, session
from storage.book import Book
from storage.database import Database
from storage.moments import local_day
from tests.group import BEGIN, Group
from tests.year import RESTART, WISHES, Told, Year

# Changes of the clocks within the stretch: tz database 2025b (Lisbon and New York: northern
# spring; Adelaide and Chatham: southern spring; Sao Paulo: the last summer time, begun at midnight
# on 4 November 2018; Kolkata: none).
STRETCHES = [
    ("Europe/Lisbon", date(2026, 3, 10)),
    ("America/New_York", date(2026, 2, 20)),
    ("Australia/Adelaide", date(2026, 9, 15)),
    ("Asia/Kolkata", date(2026, 5, 1)),
    ("America/Sao_Paulo", date(2018, 10, 15)),
    ("Pacific/Chatham", date(2026, 9, 10)),
]


def is_told_exactly_once(year: Year, told: Iterable[Told]) -> None:
    """Each due on the first digest hour at which it is to be done; ever more rarely after that."""
    digests = {digest.at.date(): digest for digest in told if digest.kind == "digest"}
    for (bin, what, _), days in year.asked.items():
        named = [day for day in days if (bin, what) in digest_of(digests, day)]
        assert named, (bin, what, days)
        assert named[0] == days[0], (bin, what, days, named)
        gaps = [(later - sooner).days for sooner, later in pairwise(named)]
        assert all(gap >= 2 for gap in gaps), (bin, what, named)
        assert len(named) <= 4, (bin, what, named)
    asked = {(day, bin, what) for (bin, what, _), days in year.asked.items() for day in days}
    for day, digest in digests.items():
        assert max(Counter(digest.named).values(), default=1) == 1, digest
        assert all((day, *pair) in asked for pair in digest.named), digest


def digest_of(digests: dict[date, Told], day: date) -> list[tuple[str, str]]:
    return digests[day].named if day in digests else []


def is_at_the_hour(year: Year, told: Iterable[Told]) -> None:
    """At most one a day, each at the group's hour."""
    told = [said for said in told if said.kind == "digest"]
    assert len({digest.at.date() for digest in told}) == len(told)
    assert {digest.at.time() for digest in told} == {year.digest_at}


def reads_well_aloud(year: Year, told: Iterable[Told]) -> None:
    """What is due that day is in the first line; plain sentences, no signs, none of them long."""
    for digest in told:
        lines = digest.body.splitlines()
        assert all(re.fullmatch(r"[A-Z][\w ,;:'()?]+\.", line) for line in lines), digest
        assert len({line.split(":")[0] for line in lines}) == len(lines), digest
        if digest.kind == "digest" and (pressing := year.pressing.get(digest.at.date())):
            assert lines[0].startswith("Today: "), digest
            assert pressing <= set(digest.named_in(lines[0])), (pressing, digest)


def is_said_as_wished(year: Year, told: Iterable[Told]) -> None:
    """What members set themselves is said on each of its days, once, at its hour."""
    told = list(told)
    end = year.begin + timedelta(days=year.days - 1)
    for wish in WISHES:
        days = [day for day in wish.days(year.begin, end) if day <= end]
        said = [said.at for said in told if wish.words in said.body.lower()]
        assert [at.date() for at in said] == days, wish
        assert all(at.time() == (wish.hour or year.digest_at) for at in said), wish


def calls_nobody_who_is_away(year: Year, told: Iterable[Told]) -> int:
    """How often somebody would have been called who was away; a stand-in was, or nobody."""
    spared = 0
    for digest in told:
        for name, stretches in year.away.items():
            if any(first <= digest.at.date() <= last for first, last in stretches):
                assert f"@{name}:" not in digest.mentions, (digest, name)
                spared += f" for {name})" in digest.body or f"({name} is away" in digest.body
    return spared


def is_the_same(told: list[Told], again: list[Told]) -> bool:
    """Whether two groups were told the same at the same hour, give or take a restart."""
    return [(one.kind, one.body, one.mentions) for one in told] == [
        (one.kind, one.body, one.mentions) for one in again
    ] and all(
        timedelta(0) <= late.at - one.at <= RESTART for one, late in zip(told, again, strict=True)
    )


@pytest.mark.parametrize(("zone", "begin"), STRETCHES, ids=[zone for zone, _ in STRETCHES])
async def test_weeks_around_a_change_of_the_clocks(tmp_path: Path, zone: str, begin: date) -> None:
    calm = Year(tmp_path / "calm.db", zone, begin, days=30, members=3)
    told = await calm.live()
    is_at_the_hour(calm, told)
    is_told_exactly_once(calm, told)
    is_said_as_wished(calm, told)
    reads_well_aloud(calm, told)
    calls_nobody_who_is_away(calm, told)
    assert len(told) > 12
    killed = Year(tmp_path / "killed.db", zone, begin, days=30, members=3, kills=20)
    assert is_the_same(told, await killed.live())


async def tells(db: Database, *moments: datetime) -> list[str]:
    """What is said when the bot looks at the calendar at these moments."""
    before = len(await db.rows("SELECT id FROM outbox WHERE kind = 'digest'"))
    for moment in moments:
        await tell(db, moment)
    rows = await db.rows("SELECT body FROM outbox WHERE kind = 'digest' ORDER BY id")
    return [row["body"] for row in rows[before:]]


def at(day: int, hour: int, minute: int = 0) -> datetime:
    """A moment in March 2026; Lisbon keeps UTC until the 29th."""
    return datetime(2026, 3, day, hour, minute, tzinfo=UTC)


async def test_an_outage_ends_in_one_digest_of_all_that_was_missed(
    group: Group, db: Database
) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))  # Monday 2 March: drain on the 4th or 5th
    await group.says(Layer(mass_kg=2.0, bin="yard"), days=3)  # drain on the 7th or 8th
    said = await tells(db, at(3, 9), at(10, 14), at(10, 14, 10), at(10, 20))
    assert said == [
        "Late, since Sunday 8 March: drain the yard bin (ines).\n"
        "Late, since Thursday 5 March: drain the shed bin (ines)."
    ]


async def test_what_becomes_known_after_its_day_is_told_in_the_next_digest(
    group: Group, db: Database
) -> None:
    await tells(db, at(2, 9))
    await group.says(Seal(bin="shed", on=date(2026, 2, 10)))
    assert await tells(db, at(2, 20)) == []
    said = await tells(db, at(3, 9))
    assert said == ["Late, since Tuesday 24 February: bury the shed bin (ines).\n"
                    "Late, since Friday 13 February: drain the shed bin (ines)."]  # fmt: skip


@pytest.mark.parametrize("hour", [21, 23, 0, 3, 6])
async def test_nothing_is_said_in_quiet_hours(group: Group, db: Database, hour: int) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    assert await tells(db, at(4 if hour > 12 else 5, hour)) == []
    assert len(await tells(db, at(5, 9))) == 1


async def test_a_digest_missed_until_quiet_hours_waits_for_the_morning(
    group: Group, db: Database
) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    assert await tells(db, at(4, 22), at(5, 8, 59)) == []
    assert await tells(db, at(5, 9)) == ["Today: drain the shed bin (ines)."]


async def test_what_is_done_is_not_told_and_what_comes_back_is_not_told_again(
    group: Group, db: Database
) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    assert len(await tells(db, at(4, 9))) == 1
    dues = await group.book.dues()
    await group.says(Bury(bin="shed"), days=2, event="$buried")
    assert {due.what for due in await group.book.dues()} == {"plant", "cover"}
    book = group.book
    turn = Turn(
        book=book,
        event="$buried",
        cause="$taken-back",
        sender="ines",
        at=at(4, 19),
        now=at(4, 19),
        today=date(2026, 3, 4),
    )
    async with db.transaction():
        await keeping.carry_out(turn, await corrections.undo("$buried", turn))
    assert [due.what for due in await book.dues()] == [due.what for due in dues]
    assert await tells(db, at(5, 9)) == []


async def test_only_those_concerned_are_mentioned(group: Group, db: Database) -> None:
    await group.says(Open(bin="shed"), who="bram")
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await tells(db, at(4, 9))
    [row] = await db.rows("SELECT mentions FROM outbox WHERE kind = 'digest'")
    assert row["mentions"] == '["@bram:test"]'


@pytest.mark.parametrize(
    ("zone", "hour", "day", "told_at"),
    [
        # 02:30 does not exist in New York on 8 March 2026 (tz database): said an hour later.
        ("America/New_York", time(2, 30), date(2026, 3, 8), "2026-03-08T03:30:00-04:00"),
        # 01:30 comes twice on 1 November 2026: said the first time.
        ("America/New_York", time(1, 30), date(2026, 11, 1), "2026-11-01T01:30:00-04:00"),
        # Midnight does not exist in Sao Paulo on 4 November 2018.
        ("America/Sao_Paulo", time(0, 0), date(2018, 11, 4), "2018-11-04T01:00:00-02:00"),
        # 02:45 does not exist on the Chatham Islands on 27 September 2026.
        ("Pacific/Chatham", time(2, 45), date(2026, 9, 27), "2026-09-27T03:45:00+13:45"),
    ],
)
async def test_an_hour_that_is_missing_or_comes_twice(
    db: Database, zone: str, hour: time, day: date, told_at: str
) -> None:
    begin = datetime.combine(day - timedelta(days=2), time(18), ZoneInfo(zone)).astimezone(UTC)
    async with db.transaction():
        room = await rooms.join(db, "!z:test", begin, zone=zone, units="metric")
        await rooms.set_digest_at(db, room, hour)
        await rooms.set_quiet(db, room, time(12), time(12))
    room = (await rooms.every(db))[0]
    group = Group(Book(db, room))
    fed = day - timedelta(days=2) - local_day(BEGIN, zone)
    await group.says(Layer(mass_kg=2.0, bin="shed"), days=fed.days)
    wake: datetime | None = begin
    while wake and wake < begin + timedelta(days=3):
        wake = await tell(db, wake)
    made = await db.rows("SELECT made_at FROM outbox WHERE kind = 'digest'")
    local = [datetime.fromtimestamp(row["made_at"] / 1000, ZoneInfo(zone)) for row in made]
    assert [moment.isoformat() for moment in local] == [told_at]


async def test_a_clock_that_was_wrong_silences_nothing(group: Group, db: Database) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    assert len(await tells(db, datetime(2027, 3, 4, 9, tzinfo=UTC))) == 1
    await group.says(Layer(mass_kg=2.0, bin="yard"))
    assert await tells(db, at(4, 9)) == ["Today or tomorrow: drain the yard bin (ines)."]


async def test_the_group_sets_its_hour_and_its_quiet_hours(group: Group, db: Database) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    said = await group.says(Set(what="quiet hours", value="22:00-06:30"))
    assert said.say == "I keep quiet from 22:00 to 06:30 from now on."
    assert "quiet hours" in (await group.says(Set(what="reminder time", value="06:00"))).say
    assert (await group.says(Set(what="digest", value="6:45"))).settings
    assert "would then be quiet" in (await group.says(Set(what="quiet", value="22-7"))).say
    assert await tells(db, at(4, 6, 44)) == []
    assert len(await tells(db, at(4, 6, 45))) == 1


async def test_reminders_can_be_switched_off_and_on(group: Group, db: Database) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Set(what="reminders", value="off"))
    assert await tells(db, at(4, 9), at(5, 9)) == []
    await group.says(Set(what="reminders", value="on"))
    assert len(await tells(db, at(6, 9))) == 1


@pytest.mark.parametrize("value", ["", "25:00", "soon", "9:75", "-1", "0:00-24:00", "8-8"])
async def test_no_hour_is_guessed(group: Group, value: str) -> None:
    assert not (await group.says(Set(what="digest", value=value))).settings
    assert not (await group.says(Set(what="quiet", value=value))).settings


async def test_a_log_played_in_pieces_gives_the_same_reminders(tmp_path: Path) -> None:
    lines = [line(number) for number in range(40)]
    whole = await played(tmp_path / "whole.db", [lines])
    pieces = await played(tmp_path / "pieces.db", [lines[:7], lines[7:8], lines[8:29], lines[29:]])
    assert [said for said in whole if "drain" in said[1]]
    assert whole == pieces
    assert await played(tmp_path / "whole.db", [lines]) == []


def line(number: int) -> Line:
    """A day on which somebody feeds a bin."""
    moment = BEGIN + timedelta(days=number, minutes=7 * number)
    content = {"msgtype": "m.text", "body": f"added 1 kg scraps to bin {number % 5 + 1}"}
    raw = {
        "type": "m.room.message",
        "event_id": f"$e{number}",
        "sender": "@ines:test",
        "origin_server_ts": int(moment.timestamp() * 1000),
        "content": content,
    }
    return Line(number, moment, raw)


async def played(path: Path, pieces: Iterable[Iterable[Line]]) -> list[tuple[datetime, str]]:
    """The digests of a log that is played piece by piece, the bot started anew for each."""
    said = []
    for piece in pieces:
        db = await Database.open(path)
        try:
            playback = Playback(db, zone="Europe/Lisbon", units="metric", own="")
            heard = list(piece)
            async for item in playback.play(heard):
                if isinstance(item, Spoken) and item.message.kind == "digest":
                    said.append((item.at, item.message.body))
            await session.set_played_until(db, heard[-1].at)
        finally:
            await db.close()
    return said
