"""Turns are fair, and nobody has one on a day away."""

from collections import Counter
from datetime import date, timedelta
from itertools import combinations

from hypothesis import given, settings
from hypothesis import strategies as st

from handlers.sharing.turns import Exchange, Gone, Stint, Turns

MONDAY = date(2026, 3, 2)
DAY = timedelta(days=1)
NAMES = ("ada", "bram", "cleo", "dov", "esi", "finn", "gita", "hugo")
YEARS = timedelta(days=730)


def march(day: int) -> date:
    return date(2026, 3, day)


def weekly(*members: str, gone: list[Gone] | None = None, **more: object) -> Turns:
    return Turns(
        start=MONDAY,
        days=7,
        members=[(name, MONDAY) for name in members],
        gone=gone or [],
        **more,  # type: ignore[arg-type]
    )


def who(stints: list[Stint]) -> list[tuple[int, int, str | None]]:
    return [(stint.start.day, stint.end.day, stint.member) for stint in stints]


def test_each_has_a_week_in_the_order_they_were_named() -> None:
    made = weekly("ada", "bram", "cleo").until(march(31))
    assert who(made) == [
        (2, 8, "ada"),
        (9, 15, "bram"),
        (16, 22, "cleo"),
        (23, 29, "ada"),
        (30, 5, "bram"),
    ]


def test_who_is_away_is_passed_over_and_has_the_next_one() -> None:
    gone = [Gone(member="ada", first=march(1), last=march(4), known=march(1))]
    made = weekly("ada", "bram", gone=gone).until(march(16))
    assert who(made) == [(2, 8, "bram"), (9, 15, "ada"), (16, 22, "bram")]


def test_a_long_absence_is_not_followed_by_a_row_of_turns() -> None:
    gone = [Gone(member="ada", first=march(1), last=date(2026, 5, 31), known=march(1))]
    made = weekly("ada", "bram", "cleo", gone=gone).until(date(2026, 6, 28))
    june = [stint.member for stint in made if stint.start >= date(2026, 6, 1)]
    assert Counter(june) == {"ada": 2, "bram": 1, "cleo": 1}


def test_who_falls_out_within_a_turn_is_stood_in_for_from_that_day() -> None:
    gone = [Gone(member="ada", first=march(4), last=march(20), known=march(4))]
    made = weekly("ada", "bram", "cleo", gone=gone).until(march(9))
    assert who(made) == [(2, 3, "ada"), (4, 8, "bram"), (9, 15, "cleo")]


def test_what_is_told_afterwards_changes_nothing() -> None:
    late = [Gone(member="ada", first=march(1), last=march(8), known=march(12))]
    assert weekly("ada", "bram", gone=late).until(march(9)) == weekly("ada", "bram").until(march(9))


def test_a_week_that_nobody_is_there_for_is_shared_or_left_open() -> None:
    gone = [
        Gone(member="ada", first=march(6), last=march(8), known=march(1)),
        Gone(member="bram", first=march(2), last=march(3), known=march(1)),
        Gone(member="bram", first=march(7), last=march(8), known=march(1)),
    ]
    made = weekly("ada", "bram", gone=gone).until(march(2))
    assert who(made) == [(2, 5, "ada"), (6, 6, "bram"), (7, 8, None)]


def test_a_newcomer_begins_where_the_others_are() -> None:
    members = [("ada", MONDAY), ("bram", MONDAY), ("cleo", march(30))]
    made = Turns(start=MONDAY, days=7, members=members).until(date(2026, 5, 31))
    assert Counter(stint.member for stint in made)["cleo"] == 3
    assert [stint.member for stint in made][4:8] == ["cleo", "ada", "bram", "cleo"]


def test_two_exchange_their_turns() -> None:
    exchange = Exchange(giver="ada", taker="cleo", on=MONDAY)
    made = weekly("ada", "bram", "cleo", exchanges=[exchange]).until(march(29))
    assert [stint.member for stint in made] == ["cleo", "bram", "ada", "ada"]


def test_a_rota_ends() -> None:
    assert who(weekly("ada", "bram", over=march(12)).until(march(31))) == [
        (2, 8, "ada"),
        (9, 11, "bram"),
    ]


@st.composite
def absences(draw: st.DrawFn) -> list[Gone]:
    """Journeys of some members, told before, during or after; some go in pairs."""
    made = []
    for _ in range(draw(st.integers(0, 30))):
        first = MONDAY + DAY * draw(st.integers(-10, 730))
        last = first + DAY * draw(st.sampled_from([0, 1, 2, 6, 13, 40]))
        known = first + DAY * draw(st.sampled_from([-30, -7, -1, 0, 1, 3, 50]))
        together = draw(st.sampled_from([("ada",), ("bram", "cleo"), ("dov", "esi"), NAMES]))
        made += [Gone(member=name, first=first, last=last, known=known) for name in together]
    return made


def is_away(member: str, day: date, gone: list[Gone]) -> bool:
    """Whether the rota could have known, on a day, that the member is away."""
    return any(g.member == member and g.begin <= day <= g.last for g in gone)


def same_absences(one: str, other: str, gone: list[Gone]) -> bool:
    def of(name: str) -> list[tuple[date, date, date]]:
        return sorted((g.first, g.last, g.known) for g in gone if g.member == name)

    return of(one) == of(other)


def check(turns: Turns, gone: list[Gone], stints: list[Stint]) -> None:
    """The laws of a rota: no gap, nobody on a day away, fair between equals at every moment."""
    names = [name for name, _ in turns.members]
    pairs = [(a, b) for a, b in combinations(names, 2) if same_absences(a, b, gone)]
    had: Counter[str] = Counter()
    day = turns.start
    for stint in stints:
        assert stint.start == day <= stint.end
        day = stint.end + DAY
        span = [stint.start + DAY * n for n in range((stint.end - stint.start).days + 1)]
        if stint.member is None:
            assert all(is_away(name, d, gone) for d in span for name in names)
        else:
            assert not any(is_away(stint.member, d, gone) for d in span)
            had[stint.owner or ""] += 1
        for a, b in pairs:
            assert abs(had[a] - had[b]) <= 1


@settings(max_examples=60, deadline=None)
@given(st.integers(2, 8), st.sampled_from([1, 3, 7, 14]), absences(), st.data())
def test_two_years_are_fair_and_nobody_has_a_turn_while_away(
    members: int, days: int, gone: list[Gone], data: st.DataObject
) -> None:
    names = NAMES[:members]
    exchanges = [
        Exchange(giver=giver, taker=taker, on=MONDAY + DAY * on)
        for giver, taker, on in data.draw(
            st.lists(
                st.tuples(st.sampled_from(names), st.sampled_from(names), st.integers(0, 700)),
                max_size=6,
            )
        )
        if giver != taker
    ]
    gone = [one for one in gone if one.member in names]
    turns = Turns(
        start=MONDAY,
        days=days,
        members=[(name, MONDAY) for name in names],
        gone=gone,
        exchanges=exchanges,
    )
    check(turns, gone, turns.until(MONDAY + YEARS))
