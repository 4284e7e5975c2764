"""What is due, when it is said, and what is answered to it."""

from datetime import date, timedelta

import pytest

from handlers.calendar import NOTHING
from handlers.dues import is_named_on
from handlers.reading.acts import Ask, Done, Later, Layer, Open, Seal
from storage.rows import Bin, Due
from tests.group import Group

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


async def test_nothing_is_due_at_first(group: Group) -> None:
    assert (await group.says(Ask(topic="due"))).say == NOTHING


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
