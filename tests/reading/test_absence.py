"""Who says to be away, and when."""

from dataclasses import replace
from datetime import UTC, date, datetime
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from handlers.reading.arranged import (
    Away,
    AwayAgain,
    AwayChanged,
    Back,
    NoSuchDay,
    Plan,
    Staying,
    WhoIsAway,
)
from handlers.reading.context import Context
from handlers.reading.plans import plans

THURSDAY = Context(
    at=datetime(2026, 3, 5, 10, tzinfo=UTC),
    zone=ZoneInfo("Europe/Lisbon"),
    bins=("shed", "blue"),
    members=("Bram", "Ines"),
    sender="Ines",
)


def march(first: int, last: int | None, member: str | None = None) -> Away:
    until = date(2026, 3, last) if last else None
    return Away(first=date(2026, 3, first), last=until, member=member)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("I'm away till Monday", march(5, 8)),
        ("I'm off till Monday", march(5, 8)),
        ("we're off from Saturday until 12 March", march(7, 11)),
        ("off until Monday folks", march(5, 8)),
        ("Bram is off for two weeks", march(5, 18, "Bram")),
        ("I'm away from the 3rd to the 10th", march(3, 10)),
        ("Pailkeeper, I am away until 12 March please", march(5, 11)),
        ("away 13-20 March", march(13, 20)),
        ("I'm away from Saturday to next Sunday", march(7, 15)),
        ("I'm away Friday to next Wednesday", march(6, 11)),
        ("I'm away from Tuesday until next Tuesday", march(10, 16)),
        ("I'm away next Monday to next Friday", march(9, 13)),
        ("I'm out until Monday", march(5, 8)),
        ("I'm out Friday through next Tuesday", march(6, 10)),
        ("I'm away from Monday till Sunday", march(9, 14)),
        ("I'm away from Monday to Sunday", march(9, 15)),
        ("I'm away from Sunday to Sunday", march(8, 15)),
        ("I'm away Wednesday to Friday", march(11, 13)),
        ("I'm away Thursday to Sunday", march(5, 8)),
        ("I'm away from Monday till Tuesday", march(9, 9)),
        ("I'm away since Monday till Sunday", march(2, 7)),
        ("I'm away next week till the end of the month", march(9, 31)),
        ("I'm away from Saturday till the end of next week", march(7, 15)),
        ("we're away the week after next", march(16, 22)),
        ("I'm away until the week after next", march(5, 15)),
        ("I'm away next week and the week after", march(9, 22)),
        ("I'm away the last week of March", march(25, 31)),
        ("I'm away tomorrow and the day after", march(6, 7)),
        ("I'm away on Friday and the following day", march(6, 7)),
        ("I'm away tomorrow and the next two days", march(6, 8)),
        ("I'm away tomorrow and the day after tomorrow", march(6, 7)),
        ("I'm away this weekend and next week", march(7, 15)),
        ("I'm away the weekend after next", march(21, 22)),
        ("I'm away over the weekend", march(7, 8)),
        ("I'm away tomorrow and the day after the party we dig", march(6, 6)),
        ("I'm away this weekend and next is the burial", march(7, 8)),
        ("I'm away tomorrow and next in line is Bram", march(6, 6)),
        ("I'm only away till Monday", march(5, 8)),
        ("Bram is away in the second week of the month", march(8, 14, "Bram")),
        ("I'm away the week of 18 March", march(16, 22)),
        ("I'm away on 11 and 12 March", march(11, 12)),
        ("I'm away between 11 and 14 March", march(11, 14)),
        ("I'm away from the 29th to the 31st of March", march(29, 31)),
        ("I'm not here on 10 March", march(10, 10)),
        ("I'm off on 10 March too", march(10, 10)),
        ("from the 10th to the 14th I'm away", march(10, 14)),
        ("next week we're away", march(9, 15)),
        ("on Saturday I'm away for a week", march(7, 13)),
        ("I'm away at half term, 16 to 20 March", march(16, 20)),
        (
            "I'm away from Saturday, Bram has my bin till the 20th",
            Away(first=date(2026, 3, 7), last=date(2026, 3, 19), stand_in="Bram"),
        ),
        ("I'm away on Tuesdays", AwayAgain()),
        ("I'm away every other weekend", AwayAgain()),
        ("I'm away from Saturday until 12 March", march(7, 11)),
        ("I'm away from 1 March to 12 March", march(1, 12)),
        ("I'm away 2026-03-13 to 2026-03-20", march(13, 20)),
        ("we're on holiday from 13 March to 20 March", march(13, 20)),
        ("gone for two weeks from Saturday", march(7, 20)),
        ("I'm going away on Friday for a week", march(6, 12)),
        ("I'm away next week", march(9, 15)),
        ("Away next week, sorry", march(9, 15)),
        ("I'm away mon-thu", march(9, 12)),
        ("I'm away this weekend", march(7, 8)),
        ("I'm away for the weekend with mum, lovely", march(7, 8)),
        ("away tomorrow", march(6, 6)),
        ("I'm away, back on the 10th", march(5, 9)),
        ("I'm out of town until the end of the month", march(5, 31)),
        ("Bram is away until Friday", march(5, 5, "Bram")),
        ("bram's away next week", march(9, 15, "Bram")),
        (
            "I'm away till Monday, Bram looks after my bin",
            Away(first=date(2026, 3, 5), last=date(2026, 3, 8), stand_in="Bram"),
        ),
        (
            "I'm away till Monday, Bram does my things",
            Away(first=date(2026, 3, 5), last=date(2026, 3, 8), stand_in="Bram"),
        ),
        (
            "I'm away till Monday, Zora Lind minds my bin",
            Away(first=date(2026, 3, 5), last=date(2026, 3, 8), stand_in="Zora Lind"),
        ),
        ("I'm away till Monday. Somebody looks after it", march(5, 8)),
        (
            "I'm away next week. Bram will stand in for me",
            Away(first=date(2026, 3, 9), last=date(2026, 3, 15), stand_in="Bram"),
        ),
        (
            "I am going out of station till 10th, Bram will look after my bin",
            Away(first=date(2026, 3, 5), last=date(2026, 3, 9), stand_in="Bram"),
        ),
        (
            "I'm off up north from 6/3 to 9/3, Bram will keep an eye on my bin",
            Away(first=date(2026, 3, 6), last=date(2026, 3, 9), stand_in="Bram"),
        ),
        (
            "I on leave from 6 Mar to 8 Mar, Bram cover me",
            Away(first=date(2026, 3, 6), last=date(2026, 3, 8), stand_in="Bram"),
        ),
        (
            "I'm awa til Monday, Bram'll see tae the shed bin",
            Away(first=date(2026, 3, 5), last=date(2026, 3, 8), stand_in="Bram"),
        ),
        ("I'm overseas till 20 March", march(5, 19)),
        ("I won't be here from Friday to Sunday", march(6, 8)),
        ("who's away on Saturday", WhoIsAway(first=date(2026, 3, 7), last=date(2026, 3, 7))),
        ("whos away", WhoIsAway(first=date(2026, 3, 5), last=date(2026, 3, 5))),
        ("Who is not here next week?", WhoIsAway(first=date(2026, 3, 9), last=date(2026, 3, 15))),
        (
            "I'm away next week, Bram can you do mine?",
            Away(first=date(2026, 3, 9), last=date(2026, 3, 15), asked="Bram"),
        ),
        (
            "I'm away till Monday. Can Bram look after my bin?",
            Away(first=date(2026, 3, 5), last=date(2026, 3, 8), asked="Bram"),
        ),
        (
            "I'm away next week, could you mind my bin please, Bram?",
            Away(first=date(2026, 3, 9), last=date(2026, 3, 15), asked="Bram"),
        ),
        ("I'm away next week, Bram can you bring the cake?", march(9, 15)),
        ("I'm on holiday over the weekend, 6th to 9th of March", march(6, 9)),
        ("I'm away next week, 10th to 12th", march(10, 12)),
        ("I'm away", march(5, None)),
        ("I'm away from Friday", march(6, None)),
        ("I'm back", Back(on=date(2026, 3, 5))),
        ("back from holiday!", Back(on=date(2026, 3, 5))),
        ("back early!", Back(on=date(2026, 3, 5))),
        ("back a day early", Back(on=date(2026, 3, 5))),
        ("actually back tonight!", Back(on=date(2026, 3, 5))),
        ("home!", Back(on=date(2026, 3, 5), by_the_way=True)),
        ("finally home", Back(on=date(2026, 3, 5), by_the_way=True)),
        ("home early", Back(on=date(2026, 3, 5), by_the_way=True)),
        ("I'm home again", Back(on=date(2026, 3, 5), by_the_way=True)),
        ("we're home two days earlier", Back(on=date(2026, 3, 5), by_the_way=True)),
        ("coming home early, back tomorrow", Back(on=date(2026, 3, 6), by_the_way=True)),
        (
            "Bram's coming home on Saturday",
            Back(on=date(2026, 3, 7), member="Bram", weekday=True, by_the_way=True),
        ),
        ("I'm back on Sunday", Back(on=date(2026, 3, 8), weekday=True)),
        ("Bram is back", Back(on=date(2026, 3, 5), member="Bram")),
        ("I'm not away after all", Staying()),
        ("not going away after all", Staying()),
        ("Who's away next week?", WhoIsAway(first=date(2026, 3, 9), last=date(2026, 3, 15))),
        ("who's away in April?", WhoIsAway(first=date(2026, 4, 1), last=date(2026, 4, 30))),
        ("who's away this month?", WhoIsAway(first=date(2026, 3, 5), last=date(2026, 3, 31))),
        (
            "who's away at the end of the month?",
            WhoIsAway(first=date(2026, 3, 25), last=date(2026, 3, 31)),
        ),
        ("I'm away in March", march(5, 31)),
        ("is anyone away on Friday?", WhoIsAway(first=date(2026, 3, 6), last=date(2026, 3, 6))),
    ],
)
def test_an_absence_is_read(said: str, meant: Plan) -> None:
    found, _ = plans(said, THURSDAY)
    assert found == (meant,)


@pytest.mark.parametrize(
    "said",
    [
        "I'm away to bed, see you on Friday",
        "if I'm away on Friday will it be ok?",
        "put the bin away on Friday",
        "I'm giving away the old bin on Friday",
        "I was away last week",
        "I've been away, lovely weather until Monday",
        "do you want the blue bin when I go away?",
        "can anyone take the shed bin while we're away?",
        "I'm back to normal",
        "I'm out of bran until Friday",
        "I'm back at work on Monday",
        "my back hurts",
        "coming home late again",
        "I'm home alone with the cats",
        "home grown tomatoes are the best",
        "the smell is gone since Monday",
        "it goes away on Friday",
        "she said she's away till Monday",
        "Bram is not here, he is in the bath",
        "added 2 kg to the blue bin, right away",
        "the train stood outside the station till ten",
        "I was up north last week",
        "who's away gets no cake",
        "I won't be here to bury it",
        "who's going overseas is none of my business",
    ],
)
def test_talk_with_the_same_words_is_no_absence(said: str) -> None:
    assert plans(said, THURSDAY) == ((), said)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("I'm away 11th to 13th of March and 17th to 19th of March", [(11, 13), (17, 19)]),
        ("I'm away on the 12th and on the 20th", [(12, 12), (20, 20)]),
        ("I'm away 9 to 11 March, 16 to 18 March and on the 25th", [(9, 11), (16, 18), (25, 25)]),
        ("I'm away on 11 and 14 March", [(11, 11), (14, 14)]),
        ("I'm away this weekend and next", [(7, 8), (14, 15)]),
        ("I'm away this weekend and the one after, sorry", [(7, 8), (14, 15)]),
        ("I'm away this weekend and next weekend", [(7, 8), (14, 15)]),
        ("I'm away next weekend and the weekend after that", [(14, 15), (21, 22)]),
        ("I'm away this Saturday and the next", [(7, 7), (14, 14)]),
    ],
)
def test_several_absences_are_told_in_one_breath(said: str, meant: list[tuple[int, int]]) -> None:
    assert list(plans(said, THURSDAY)[0]) == [march(first, last) for first, last in meant]


def test_who_is_away_as_well_is_away_on_the_same_days() -> None:
    found, _ = plans("I'm away next week as well, and so is Bram", THURSDAY)
    assert found == (march(9, 15), march(9, 15, "Bram"))


def test_the_rest_of_a_message_is_left_to_the_record() -> None:
    found, rest = plans("added 2 kg to the shed, I'm away till Monday", THURSDAY)
    assert found == (march(5, 8),)
    assert rest.strip() == "added 2 kg to the shed,"


def test_a_clause_that_leans_on_an_absence_keeps_it() -> None:
    said = "While I'm away next week, can someone take the shed bin?"
    assert plans(said, THURSDAY) == ((march(9, 15),), said)


@pytest.mark.parametrize(
    "said",
    [
        "I'm away from 30 February to 3 March",
        "away till 31 April",
        "I'm away until 29 February 2027",
    ],
)
def test_an_absence_on_a_day_that_no_calendar_has_is_asked_about(said: str) -> None:
    assert plans(said, THURSDAY)[0] == (NoSuchDay(),)


BY_WEEK: Any = {"is_back": True, "no_earlier": True, "weekday": True}


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("we're staying on till the 25th", AwayChanged(last=date(2026, 3, 24))),
        ("staying till the 20th after all", AwayChanged(last=date(2026, 3, 19))),
        ("stuck in Spain, not home before the 24th", AwayChanged(last=date(2026, 3, 23))),
        ("we won't be back until Friday", AwayChanged(last=date(2026, 3, 5), **BY_WEEK)),
        (
            "Bram's not back before Monday",
            AwayChanged(last=date(2026, 3, 8), member="Bram", **BY_WEEK),
        ),
        ("we've extended our stay until Sunday", AwayChanged(last=date(2026, 3, 7), **BY_WEEK)),
        ("staying another week", AwayChanged(more=7)),
        ("we're staying in Wales two days longer", AwayChanged(more=2)),
        ("Bram's staying another night", AwayChanged(more=1, member="Bram")),
        ("I'm not coming home before Saturday", AwayChanged(last=date(2026, 3, 6), **BY_WEEK)),
        ("trip's off, I'm staying", Staying()),
        ("sorry, our holiday is cancelled", Staying()),
    ],
)
def test_an_absence_is_prolonged_or_called_off(said: str, meant: Plan) -> None:
    assert plans(said, THURSDAY)[0] == (meant,)


@pytest.mark.parametrize(
    "said",
    [
        "the soil is staying wet till Friday",
        "my sister is staying till Friday",
        "the council's van is not back until Monday",
        "the trip was lovely",
        "the party's off",
        "staying home till my cold is gone",
        "are you staying till Friday?",
        "we're staying in a hotel for two days",
        "let the bran stay two more days",
        "how was your holiday?",
    ],
)
def test_what_else_stays_or_is_off_is_no_absence(said: str) -> None:
    assert plans(said, THURSDAY) == ((), said)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("sorry, 9th to 15th", AwayChanged(first=date(2026, 3, 9), last=date(2026, 3, 15))),
        ("no, I mean 10 to 12 March", AwayChanged(first=date(2026, 3, 10), last=date(2026, 3, 12))),
        ("actually till the 15th", AwayChanged(last=date(2026, 3, 14))),
        ("sorry, the 15th", AwayChanged(either=date(2026, 3, 15))),
        ("make that Sunday", AwayChanged(either=date(2026, 3, 8), weekday=True)),
        ("make it Monday to Friday", AwayChanged(first=date(2026, 3, 9), last=date(2026, 3, 13))),
    ],
)
def test_the_days_just_told_are_put_right(said: str, meant: Plan) -> None:
    assert plans(said, replace(THURSDAY, on_absence=True))[0] == (meant,)
    assert plans(said, THURSDAY)[0] == ()


@pytest.mark.parametrize(
    "said",
    [
        "that was yesterday actually",
        "9th to 15th is half term",
        "sorry, 2 kg from the 3rd to the 5th",
    ],
)
def test_other_days_behind_an_absence_change_nothing(said: str) -> None:
    assert plans(said, replace(THURSDAY, on_absence=True))[0] == ()
