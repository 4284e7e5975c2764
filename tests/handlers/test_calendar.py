"""What is due, when it is said, and what is answered to it."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta

import pytest

from handlers.planning.calendar import calendar
from handlers.planning.care import care_of
from handlers.planning.digest import called, digest
from handlers.planning.dues import is_named_on, is_news, is_shown_on
from handlers.planning.sheet import sheet
from handlers.reading.acts import (
    Accept,
    Ask,
    Batch,
    Decline,
    Done,
    Later,
    Layer,
    Offer,
    Open,
    Retract,
    Seal,
    Stock,
)
from storage import dues as kept
from storage import rooms
from storage.book import Book
from storage.rows import Bin, Due
from tests.group import BEGIN, Group


async def told(book: Book, dues: Sequence[Due], today: date) -> str:
    """The words of a day's digest."""
    return "\n".join(line.words for line in digest(dues, today, await care_of(book, dues, today)))


async def concerned(book: Book, dues: Sequence[Due], today: date) -> tuple[str, ...]:
    return await called(book, dues, await care_of(book, dues, today))


SHED = Bin(id=1, name="shed")


def due(what: str, first: int, last: int, put_off: int | None = None) -> Due:
    return Due(
        bin=SHED,
        what=what,
        from_day=date(2026, 3, first),
        to_day=date(2026, 3, last),
        put_off_until=date(2026, 3, put_off) if put_off else None,
    )


@pytest.mark.parametrize(
    ("asked", "named"),
    [
        (due("bury", 10, 14), [10, 14, 16, 19, 23, 28]),
        (due("drain", 4, 5), [4, 7, 10, 14, 19, 26]),
        (due("plant", 4, 11), [4]),
        (due("drain", 4, 5, put_off=8), [8, 10, 14, 19, 26]),
    ],
    ids=["bury", "drain", "plant", "put off"],
)
def test_a_due_is_named_ever_more_rarely(asked: Due, named: list[int]) -> None:
    month = [date(2026, 3, 1) + timedelta(days=n) for n in range(28)]
    assert [day.day for day in month if is_named_on(asked, day)] == named


async def test_nothing_is_due_at_first_and_then_by_the_groups_own_days(group: Group) -> None:
    usual, own = "buried 10 to 14 days after that.", "buried 21 days after that."
    assert (await group.says(Ask(topic="due"))).say.endswith(usual)
    group.book.room = replace(group.book.room, choices={"ferment_days": 21.0})
    assert (await group.says(Ask(topic="due"))).say.endswith(own)


async def test_what_is_due_is_told_soonest_first_with_the_keeper(group: Group) -> None:
    await group.says(Open(bin="shed", capacity_l=20.0), who="bram")
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Open(bin="yard", capacity_l=20.0))
    await group.says(Layer(mass_kg=2.0, bin="yard"), days=-8)
    await group.says(Seal(bin="yard"), days=-6)
    said = (await group.says(Ask(topic="due"))).say.splitlines()
    assert said[0].startswith("Late by")
    assert said[1] == "Wednesday 4 or Thursday 5 March: drain the shed bin (bram)"
    assert said[2] == "Friday 6 to Tuesday 10 March: bury the yard bin (ines)"


async def test_one_bin_can_be_asked_about(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Layer(mass_kg=2.0, bin="yard"))
    said = (await group.says(Ask(topic="due", bin="yard"))).say
    assert "yard" in said
    assert "shed" not in said
    unknown = (await group.says(Ask(topic="due", bin="attic"))).say
    assert unknown == "I know no bin called “attic”. There is the shed bin and the yard bin."


async def test_done_is_written_down_as_the_act_it_was(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    answer = await group.says(Done(), days=2)
    assert [entry.act for entry in answer.entries] == ["drain"]
    assert (await group.dues())["shed", "drain"][0] == date(2026, 3, 6)


async def test_done_asks_which_when_it_could_be_several(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Layer(mass_kg=2.0, bin="yard"))
    answer = await group.says(Done(), days=2)
    assert not answer.entries
    assert "Which was it: drain the shed bin or drain the yard bin?" in answer.say


async def test_later_puts_it_off(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    answer = await group.says(Later(days=3), days=2)
    assert answer.say == "I will say again Saturday 7 March: drain the shed bin."
    [drain] = await group.book.dues(until=date(2026, 3, 4))
    assert not is_named_on(drain, date(2026, 3, 4))
    assert is_named_on(drain, date(2026, 3, 7))


@pytest.fixture
async def two_keepers(group: Group) -> Group:
    """Bram's shed bin is to be drained on the 4th or 5th; Ines is late with the yard bin."""
    await group.says(Open(bin="shed", capacity_l=20.0), who="bram")
    await group.says(Layer(mass_kg=2.0, bin="shed"), who="bram")
    await group.says(Seal(bin="yard"), days=-20)
    return group


@pytest.mark.parametrize(
    ("asked", "said"),
    [
        (Ask(topic="due", member="Bram"), ["Wednesday 4 or", "Monday 16"]),
        (Ask(topic="due", member="bram", on=date(2026, 3, 4)), ["Wednesday 4 or"]),
        (
            Ask(topic="due", what="late"),
            ["Late by 17 days: drain the yard", "Late by 6 days: bury"],
        ),
        (Ask(topic="due", what="late", member="bram"), ["Nobody is late."]),
        (Ask(topic="due", member="dov"), ["Nothing is due for dov."]),
        (Ask(topic="due", members=("dov", "mei")), ["Nothing is due for dov and mei."]),
        (
            Ask(topic="due", members=("bram", "ines")),
            ["Late by 17", "Late by 6", "Wednesday 4 or", "Monday 16"],
        ),
        (Ask(topic="due", what="seal", member="ines"), ["Ines has nothing to seal just now."]),
        (Ask(topic="due", what="drain", member="bram"), ["Wednesday 4 or"]),
        (Ask(topic="due", what="next", member="bram"), ["Wednesday 4 or"]),
        (Ask(topic="due", what="next", member="ines"), ["Late by 17", "Late by 6"]),
        (Ask(topic="due", what="all but drain"), ["Late by 6", "Monday 16"]),
        (Ask(topic="due", what="plant"), ["No ground where a bin was buried"]),
        (
            Ask(topic="due", bin="shed", on=date(2026, 3, 3)),
            ["Nothing is due with the shed bin by tomorrow."],
        ),
    ],
)
async def test_what_is_due_for_whom_by_when(
    two_keepers: Group, asked: Ask, said: list[str]
) -> None:
    lines = (await two_keepers.says(asked)).say.splitlines()
    assert len(lines) == len(said)
    assert all(line.startswith(words) for line, words in zip(lines, said, strict=True)), lines


async def test_done_is_about_what_the_speaker_keeps(two_keepers: Group) -> None:
    answer = await two_keepers.says(Done(), who="bram", days=2)
    assert [(entry.act, entry.bin) for entry in answer.entries] == [("drain", "shed")]


async def test_later_leaves_what_others_keep(two_keepers: Group) -> None:
    answer = await two_keepers.says(Later(), who="bram", days=2)
    assert answer.say == "I will say again tomorrow: drain the shed bin."


async def test_a_digest_names_first_what_is_for_today(two_keepers: Group) -> None:
    dues = await two_keepers.book.dues(until=date(2026, 3, 5))
    said = await told(two_keepers.book, dues, date(2026, 3, 5))
    assert said.splitlines() == [
        "Today: drain the shed bin (bram).",
        "Late, since Tuesday 24 February: bury the yard bin (ines).",
        "Late, since Friday 13 February: drain the yard bin (ines).",
    ]


async def test_a_bin_that_is_to_change_hands_is_in_the_calendar(group: Group) -> None:
    await group.says(Open(bin="shed"), who="bram")
    await group.says(Layer(mass_kg=2.0, bin="shed"), who="bram")
    await group.says(Offer(bin="shed", to="ines", on=date(2026, 3, 6)), who="bram")
    assert (await group.dues())["shed", "hand over"] == (date(2026, 3, 6), date(2026, 3, 6))
    await group.says(Accept(bin="shed"), who="ines")
    [passing] = [due for due in await group.book.dues() if due.what == "hand over"]
    assert await told(group.book, [passing], date(2026, 3, 6)) == (
        "Today: hand over the shed bin to ines (bram)."
    )
    state = await group.says(Ask(topic="bin", bin="shed"))
    assert state.say is not None
    assert "Friday 6 March: hand it over." in state.say
    assert await concerned(group.book, [passing], date(2026, 3, 6)) == ("@bram:test", "@ines:test")
    assert not is_shown_on(passing, date(2026, 3, 7))


async def test_a_bin_that_is_not_taken_leaves_the_calendar(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"), who="bram")
    await group.says(Offer(bin="shed", to="ines", on=date(2026, 3, 6)), who="bram")
    await group.says(Decline(bin="shed"), who="ines")
    assert ("shed", "hand over") not in await group.dues()


async def test_something_long_overdue_is_named_ever_more_rarely() -> None:
    year = [date(2026, 3, 1) + timedelta(days=n) for n in range(365)]
    late = [(day - date(2026, 3, 5)).days for day in year if is_named_on(due("seal", 5, 5), day)]
    assert late == [0, 2, 5, 9, 14, 21, 42, 84, 168, 336]


def test_what_moves_a_day_after_it_was_named_is_not_named_twice() -> None:
    moved = replace(due("bury", 11, 16), told_on=date(2026, 3, 10))
    named = [day for day in range(11, 20) if is_named_on(moved, date(2026, 3, day))]
    assert named == [16, 18]


def test_what_was_named_late_is_not_named_again_the_next_day() -> None:
    late = replace(due("bury", 11, 16), told_on=date(2026, 3, 15))
    named = [day for day in range(16, 24) if is_named_on(late, date(2026, 3, day))]
    assert named == [18, 21]


async def test_a_batch_is_to_be_dried_when_it_is_ripe(group: Group) -> None:
    # Two weeks airtight at least: common practice of those who make starter.
    await group.says(Batch(mass_kg=2.0), who="dov")
    [dry] = await group.book.dues()
    assert (dry.from_day, dry.to_member) == (date(2026, 3, 16), "dov")
    assert await told(group.book, [dry], dry.from_day) == (
        "Today, or by Wednesday 1 April: dry the starter, turning it every day (dov)."
    )
    assert await concerned(group.book, [dry], dry.from_day) == ("@dov:test",)
    await group.says(Stock(mass_kg=1.0), days=3)
    assert await group.book.dues() == [dry]
    await group.says(Stock(mass_kg=3.0), days=18)
    assert await group.book.dues() == []


async def test_a_batch_is_dried_when_somebody_says_so(group: Group) -> None:
    await group.says(Batch(mass_kg=2.0), who="dov")
    await group.says(Done(), who="dov", days=15)
    assert not is_shown_on((await group.book.dues())[0], date(2026, 3, 17))


async def test_a_batch_that_is_struck_out_leaves_the_calendar(group: Group) -> None:
    await group.says(Batch(mass_kg=2.0), who="dov")
    await group.says(Retract(), who="dov")
    assert await group.book.dues() == []


async def test_the_starter_of_another_group_is_left_alone(group: Group, book: Book) -> None:
    async with book.db.transaction():
        room = await rooms.join(book.db, "!b:test", BEGIN, zone="Europe/Lisbon", units="metric")
    other = Group(Book(book.db, room))
    await group.says(Batch(mass_kg=2.0), event="$a")
    await other.says(Batch(mass_kg=2.0), event="$b")
    await other.says(Done(), days=15, event="$c")
    await other.says(Retract(), days=15, refers_to="$b", event="$d")
    assert await other.book.dues() == []
    [dry] = await group.book.dues()
    assert is_shown_on(dry, date(2026, 3, 17))


async def test_a_digest_says_each_thing_once(group: Group) -> None:
    for bin in ("shed", "yard", "blue"):
        await group.says(Layer(mass_kg=2.0, bin=bin), days=-14)
    dues = [due for due in await group.book.dues() if due.what != "plant"]
    assert (await told(group.book, dues, date(2026, 3, 2))).splitlines() == [
        "Today: seal the blue bin (ines), the shed bin (ines) and the yard bin (ines).",
        "Late, since Thursday 19 February: drain the blue bin (ines), the shed bin (ines) and "
        "the yard bin (ines).",
    ]


async def test_a_hand_over_that_is_put_off_is_said_again(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"), who="bram", days=3)
    await group.says(Offer(bin="shed", to="ines", on=date(2026, 3, 6)), who="bram", days=3)
    await group.says(Accept(bin="shed"), who="ines", days=3)
    answer = await group.says(Later(days=2), who="ines", days=4)
    assert answer.say == "I will say again Sunday 8 March: hand over the shed bin to ines."
    [passing] = [due for due in await group.book.dues() if due.what == "hand over"]
    days = [date(2026, 3, n) for n in range(5, 12)]
    assert [day.day for day in days if is_news(passing, day)] == [8]


async def test_later_of_one_who_has_nothing_to_do_puts_nothing_off(two_keepers: Group) -> None:
    answer = await two_keepers.says(Later(), who="cy", days=2)
    assert not answer.put_off
    assert not answer.say


async def test_a_day_that_has_passed_is_said_to_be_past(group: Group) -> None:
    plant = due("plant", 4, 11)
    assert await calendar(group.book, [plant], date(2026, 3, 15)) == [
        "Wednesday 11 March, past: plant where the shed bin was buried"
    ]


async def test_who_has_the_turn_is_named_behind_it_in_the_picture(group: Group) -> None:
    await group.says(Open(bin="shed", capacity_l=20.0), who="bram")
    [shed] = await group.book.bins()
    turn = replace(due("turn to drain", 4, 11), bin=shed, to_member="kev")
    await kept.put(group.book.db, group.book.room, shed, [turn], BEGIN)
    [block] = (await sheet(group.book, BEGIN.date())).blocks
    assert [row.words for row in block.rows] == ["turn to drain (kev), Wed 4 to Wed 11 Mar"]


async def test_whether_a_bin_is_ready_says_no_and_when(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    today = BEGIN.date()
    asked = Ask(topic="due", bin="shed", what="seal", first=today, on=today)
    assert (await group.says(asked)).say.startswith("Not yet.\nMonday 16 March: seal the shed bin")
    unsealed = Ask(topic="due", bin="shed", what="bury", first=today, on=today)
    assert (await group.says(unsealed)).say.startswith("The shed bin is not sealed yet.")
