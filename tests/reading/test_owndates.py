"""Reminders that members set, the rules of their days, and the questions about the calendar."""

from dataclasses import replace
from datetime import UTC, date, datetime, time
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from handlers.reading.acts import Ask
from handlers.reading.arranged import (
    Away,
    CallOff,
    KeepUp,
    Moved,
    NoSuchDay,
    OwnDate,
    OwnDates,
    Pausing,
    Show,
    Skip,
    Untimed,
)
from handlers.reading.calendar.recurrence import first_on, monthly, occurrences, spoken
from handlers.reading.context import Context
from handlers.reading.plans import plans
from handlers.reading.read import read

THURSDAY = Context(
    at=datetime(2026, 3, 5, 10, tzinfo=UTC),
    zone=ZoneInfo("Europe/Lisbon"),
    bins=("shed", "blue"),
    members=("Bram", "Ines"),
    sender="Ines",
)


def own(words: str, day: int, month: int = 3, **more: Any) -> OwnDate:
    return OwnDate(words=words, first=date(2026, month, day), **more)


SUNDAYS = "FREQ=WEEKLY;INTERVAL=2;BYDAY=SU"


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        (
            "remind us to empty the shed caddy on Friday at 6",
            own("empty the shed caddy", 6, hour=time(18)),
        ),
        (
            "Remind us to clean the caddy every second Sunday",
            own("clean the caddy", 8, rule=SUNDAYS),
        ),
        (
            "every other Sunday remind us to clean the caddy",
            own("clean the caddy", 8, rule=SUNDAYS),
        ),
        (
            "remind us every evening at 8 to lift the lid",
            own("lift the lid", 5, rule="FREQ=DAILY", hour=time(20)),
        ),
        (
            "remind us at half past one every night to check the tap",
            own("check the tap", 5, rule="FREQ=DAILY", hour=time(1, 30)),
        ),
        (
            "remind us to buy bran every first Saturday at 9",
            own("buy bran", 7, rule="FREQ=MONTHLY;BYDAY=1SA", hour=time(9)),
        ),
        (
            "remind us every Monday at 19:00 to put the bins out",
            own("put the bins out", 9, rule="FREQ=WEEKLY;BYDAY=MO", hour=time(19)),
        ),
        (
            "Pailkeeper, remind me tomorrow to bring a spade",
            own("bring a spade", 6, for_whom="Ines"),
        ),
        (
            "remind Bram to bring the bran on Saturday morning",
            own("bring the bran", 7, hour=time(9), for_whom="Bram"),
        ),
        (
            "can you remind us on the first Saturday of the month at 10:30 about the work party?",
            own("the work party", 7, rule="FREQ=MONTHLY;BYDAY=1SA", hour=time(10, 30)),
        ),
        (
            "remind us on the 15th of every month to pay the hall",
            own("pay the hall", 15, rule="FREQ=MONTHLY;BYMONTHDAY=15"),
        ),
        (
            "remind us to check the traps every 3 days until 31 May",
            own("check the traps", 5, rule="FREQ=DAILY;INTERVAL=3", until=date(2026, 5, 31)),
        ),
        ("remind us to order bran in two weeks", own("order bran", 19)),
        (
            "remind us tomorrow in the evening at 8 to lock the gate",
            own("lock the gate", 6, hour=time(20)),
        ),
        (
            "on Friday at half past six remind us to bring cups",
            own("bring cups", 6, hour=time(18, 30)),
        ),
        (
            "set a reminder for Friday at 7pm to turn the heap",
            own("turn the heap", 6, hour=time(19)),
        ),
        ("remind us to weigh the bins at the end of the month", own("weigh the bins", 31)),
        ("remind us about the plot meeting at the end of April", own("the plot meeting", 30, 4)),
        (
            "remind us at the end of every month to count the bran",
            own("count the bran", 31, rule=monthly(31)),
        ),
        ("reminder: check the lids on Monday", own("check the lids", 9)),
        ("don't forget to remind us about the lids on Monday", own("the lids", 9)),
        ("put the open day in the calendar for 12 April", own("the open day", 12, 4)),
        (
            'add "seed swap" to the calendar on Saturday at 14:00',
            own("seed swap", 7, hour=time(14)),
        ),
        (
            "remind us to weigh bin 3 on Mondays and Thursdays",
            own("weigh bin 3", 5, rule="FREQ=WEEKLY;BYDAY=MO,TH"),
        ),
        (
            "remind us on 9.3. at 19.30 to bring gloves",
            own("bring gloves", 9, hour=time(19, 30)),
        ),
        (
            "remind us on 09-03-2026 at 6:30 in the evening to bring gloves",
            own("bring gloves", 9, hour=time(18, 30)),
        ),
        ("remind us on sunday 18.30 to bring gloves", own("bring gloves", 8, hour=time(18, 30))),
        ("remind us sunday, 6.30pm to bring gloves", own("bring gloves", 8, hour=time(18, 30))),
        ("remind us tomorrow to bring 2 kg of rice", own("bring 2 kg of rice", 6)),
        ("remind us on monday fortnight to fetch bran", own("fetch bran", 23)),
        ("bot, remind us to empty the caddy", OwnDate(words="empty the caddy", first=None)),
        ("cancel the reminder to empty the shed caddy", CallOff(words="empty the shed caddy")),
        ("cancel the caddy reminder", CallOff(words="caddy")),
        ("stop reminding us about the caddy", CallOff(words="the caddy")),
        ("stop the reminder to rinse the caddy", CallOff(words="rinse the caddy")),
        ("stop the bran reminder", CallOff(words="bran", if_set=True)),
        ("no more bran reminders please", CallOff(words="bran", if_set=True)),
        ("bot, turn off the bran reminder", CallOff(words="bran")),
        ("remind us to empty the caddy", OwnDate(words="empty the caddy", first=None)),
        ("remind everyone of the meeting", OwnDate(words="the meeting", first=None)),
        (
            "remind us the Sunday the clocks change to check the timer",
            OwnDate(words="check the timer", first=None),
        ),
        (
            "remind me on bank holiday Monday to fetch the bin",
            OwnDate(words="fetch the bin", first=None),
        ),
        ("remind us at 11 to bring gloves", own("bring gloves", 5, hour=time(11))),
        ("remind us two days before Easter to buy bran", own("buy bran", 3, 4)),
        ("remind us a week before 20 March to dig", own("dig", 13)),
        (
            "remind us the evening before Good Friday to lock the gate",
            own("lock the gate", 2, 4, hour=time(18)),
        ),
        ("remind us the weekend after next to dig the trench", own("dig the trench", 21)),
        (
            "remind us at noon on the last day of the month to weigh",
            own("weigh", 31, hour=time(12)),
        ),
        (
            "remind us on the first of every month to weigh the bins",
            own("weigh the bins", 1, 4, rule=monthly(1)),
        ),
        (
            "remind Bram and Ines on Saturday that the key is here",
            own("Bram and Ines: the key is here", 7),
        ),
        ("remind us the evening before", Untimed(days=1, hour=time(18))),
        (
            "tell us two days before the bran check",
            Untimed(words="the bran check", days=2),
        ),
        ("remind us the evening before at 8", Untimed(days=1, hour=time(20))),
        ("no reminders until after Easter", Pausing(until=date(2026, 4, 6))),
        (
            "pause reminders from 10 to 18 March",
            Pausing(first=date(2026, 3, 10), until=date(2026, 3, 19)),
        ),
        ("remind everyone a day ahead of each burial", Untimed(words="each burial", days=1)),
        ("remind us half an hour earlier", Untimed(instead=True)),
        ("remind me when it's thawed", Untimed(once=True)),
        ("remind us once the soil is warm", Untimed(once=True)),
        (
            "schedule the burial of the shed bin for the 4th of April",
            own("the burial of the shed bin", 4, 4),
        ),
        ('add "collect sawdust" on Friday at 6', own("collect sawdust", 6, hour=time(18))),
        ("cancel the reminder on Friday", CallOff(words="", on=date(2026, 3, 6))),
        ("book Saturday the 28th for digging", own("digging", 28)),
        ("block the 28th for burying", own("burying", 28)),
        ("note for Saturday: bring spades", own("bring spades", 7)),
        ("mark the 21st: work party at 10", own("work party", 21, hour=time(10))),
        ("pencil in the 21st for the work party", own("the work party", 21)),
        ("save the date: work party on 21 March", own("work party", 21)),
        ("for the calendar: meeting on the 21st at 10", own("meeting", 21, hour=time(10))),
        ("put it in the calendar: digging on Saturday", own("digging", 7)),
        ("add that to the calendar please", OwnDate(words="", first=None)),
        ("what reminders do we have?", OwnDates()),
        ("list our reminders", OwnDates()),
        ("show the calendar", Show()),
        ("Pailkeeper, post the calendar file please", Show(as_file=True)),
        ("can you send the ics?", Show(as_file=True)),
        ("pin the calendar", KeepUp(wanted=True)),
        ("unpin the calendar", KeepUp(wanted=False)),
        ("what's due this week?", Ask(topic="due", on=date(2026, 3, 8))),
        ("anything due by Friday?", Ask(topic="due", on=date(2026, 3, 6))),
        ("who's late?", Ask(topic="due", what="late")),
        ("what's due for Bram?", Ask(topic="due", member="Bram")),
        ("what does Bram have to do?", Ask(topic="due", member="Bram")),
        ("what do Bram and Ines have to do?", Ask(topic="due", members=("Bram", "Ines"))),
        ("what's due for me and Bram?", Ask(topic="due", members=("Bram", "Ines"))),
        ("what's due except draining?", Ask(topic="due", what="all but drain")),
        ("why did you remind us today?", Ask(topic="why", what="digest")),
        ("bot, why are you nagging us again?", Ask(topic="why", what="digest")),
        ("bot, what's planned?", Ask(topic="due")),
        ("has Bram sealed his yet?", Ask(topic="due", member="Bram", what="seal")),
        ("did Bram drain his?", Ask(topic="due", member="Bram", what="drain")),
        (
            "what's on the first weekend of April?",
            Ask(topic="due", first=date(2026, 4, 4), on=date(2026, 4, 5)),
        ),
        (
            "anything on the last weekend of May?",
            Ask(topic="due", first=date(2026, 5, 30), on=date(2026, 5, 31)),
        ),
        (
            "what's happening with the shed bin this month?",
            Ask(topic="due", bin="shed", on=date(2026, 3, 31)),
        ),
        ("which bin is next?", Ask(topic="due", what="next")),
        ("when's the next thing due?", Ask(topic="due", what="next")),
        ("which bins are fermenting?", Ask(topic="bin", what="sealed")),
        ("what can be planted?", Ask(topic="due", what="plant")),
        ("what's mine?", Ask(topic="due", member="Ines")),
        ("bot, what do I have to do?", Ask(topic="due", member="Ines")),
        ("when can the blue one be buried?", Ask(topic="due", bin="blue", what="bury")),
        ("when should I drain the shed bin?", Ask(topic="due", bin="shed", what="drain")),
    ],
)
def test_what_is_arranged_is_read(said: str, meant: object) -> None:
    found, rest = plans(said, THURSDAY)
    assert found == (meant,)
    assert read(rest, THURSDAY) == ()


@pytest.mark.parametrize(
    "said",
    [
        "remind us at 8 am",
        "remind me to never do that again",
        "remind me to tell you a story",
        "can someone remind me to bring gloves?",
        "Bram, can you remind me to bring gloves?",
        "remind me the way to the shop",
        "remind me when I'm home",
        "she told us the day before the party",
        "book the hall for Friday",
        "block Friday for the dentist",
        "note for Saturday: bring cake",
        "keep the spade for the bed on Friday",
        "note: the bin lorry is here on Friday",
        "plan for Saturday: beach",
        "save the date: our wedding on 21 March",
        "the train schedule for Friday is mad",
        'add "the usual" to the pot on Friday',
        "make it a day earlier",
        "we skip breakfast on Sunday",
        "not this Friday",
        "no caddy on Good Friday",
        "skip my turn next week",
        "my phone will remind me to empty it on Friday",
        "she reminded us to empty the caddy on Friday",
        "remind me how much bran",
        "that reminds me, the film starts on Friday at 6",
        "who is late for dinner?",
        "what's next on the agenda?",
        "what's next?",
        "which shops are shut?",
        "what's on?",
        "did Bram seal the deal?",
        "has Bram drained the pasta?",
        "what's Bram got on?",
        "what's happening with the car this month?",
        "why did you remind her of that?",
        "why did Bram remind us?",
        "what do I have to do?",
        "when will the train be ready?",
        "the calendar on my wall is lovely",
        "my boss reminds us to be there on Friday at 6",
        "anything for me?",
        "mine",
    ],
)
def test_talk_with_the_same_words_arranges_nothing(said: str) -> None:
    assert plans(said, THURSDAY) == ((), said)


# Read off a printed calendar of 2026 and 2027: 1 March 2026 is a Sunday.
@pytest.mark.parametrize(
    ("rule", "begin", "days"),
    [
        (SUNDAYS, date(2026, 3, 8), ["2026-03-08", "2026-03-22", "2026-04-05", "2026-04-19"]),
        ("FREQ=MONTHLY;BYDAY=1SA", date(2026, 3, 1), ["2026-03-07", "2026-04-04", "2026-05-02"]),
        ("FREQ=MONTHLY;BYDAY=-1FR", date(2026, 3, 1), ["2026-03-27", "2026-04-24", "2026-05-29"]),
        (monthly(31), date(2026, 1, 31), ["2026-01-31", "2026-02-28", "2026-03-31", "2026-04-30"]),
        (monthly(30), date(2026, 1, 1), ["2026-01-30", "2026-02-28", "2026-03-30"]),
        ("FREQ=DAILY;INTERVAL=3", date(2026, 2, 26), ["2026-02-26", "2026-03-01", "2026-03-04"]),
        ("FREQ=WEEKLY;BYDAY=MO,TH", date(2026, 3, 3), ["2026-03-05", "2026-03-09", "2026-03-12"]),
    ],
)
def test_days_come_again_as_the_rule_says(rule: str, begin: date, days: list[str]) -> None:
    found = occurrences(rule, begin, begin, date(2026, 12, 31))
    assert [day.isoformat() for day in found[: len(days)]] == days


def test_the_first_day_of_every_second_week_is_the_next_one() -> None:
    # The Monday of this week is over on a Thursday; the next one counts, not that in two weeks.
    rule = "FREQ=WEEKLY;INTERVAL=2;BYDAY=MO"
    assert first_on(rule, date(2026, 3, 5)) == date(2026, 3, 9)


@pytest.mark.parametrize(
    ("rule", "words"),
    [
        (SUNDAYS, "every second Sunday"),
        ("FREQ=WEEKLY;BYDAY=MO,TH", "every Monday and Thursday"),
        ("FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR", "every weekday"),
        ("FREQ=MONTHLY;BYDAY=-1FR", "on the last Friday of each month"),
        (monthly(31), "on the 31st of each month"),
        ("FREQ=DAILY;INTERVAL=3", "every third day"),
        ("FREQ=DAILY", "every day"),
        ("FREQ=YEARLY", "on 5 March every year"),
    ],
)
def test_a_rule_is_said_in_words(rule: str, words: str) -> None:
    assert spoken(rule, date(2026, 3, 5)) == words


@pytest.mark.parametrize(
    "said",
    [
        "remind us on 31 June to wash bins",
        "remind us to wash the lids on February 30th",
        "remind us on 29 February 2027 to drain",
        "remind us to water in -2 days",
        "remind us to water every -2 days",
        "remind us in minus 3 weeks to water",
        "remind us to water in 99999999 days",
        "remind us in 3000 years to water",
    ],
)
def test_a_reminder_on_a_day_that_no_calendar_has_is_asked_about(said: str) -> None:
    assert plans(said, THURSDAY)[0] == (NoSuchDay(),)


EIGHTH, FRIDAY = date(2026, 3, 8), date(2026, 3, 6)
MONDAY, NEXT_SUNDAY = date(2026, 3, 9), date(2026, 3, 15)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("skip the bran check on the 8th", Skip(words="bran check", first=EIGHTH, last=EIGHTH)),
        ("skip the next bran check", Skip(words="bran check")),
        ("skip Friday's caddy", Skip(words="caddy", first=FRIDAY, last=FRIDAY)),
        ("please leave out the caddy this Friday", Skip(words="caddy", first=FRIDAY, last=FRIDAY)),
        ("skip next week's caddy", Skip(words="caddy", first=MONDAY, last=NEXT_SUNDAY)),
        ("cancel the caddy this Friday", Skip(words="caddy", first=FRIDAY, last=FRIDAY)),
        ("not this Friday", Skip(words="", first=FRIDAY, last=FRIDAY)),
        ("skip it on Friday", Skip(words="", first=FRIDAY, last=FRIDAY)),
        ("no caddy on Friday please", Skip(words="caddy", first=FRIDAY, last=FRIDAY)),
        ("cancel the lid one", CallOff(words="lid", if_set=True)),
        ("call off the gate thing", CallOff(words="gate", if_set=True)),
        ("forget the one about the lids", CallOff(words="the lids", if_set=True)),
        ("never mind the lids", CallOff(words="lids", if_set=True)),
        ("we don't need the lids reminder any more", CallOff(words="lids", if_set=True)),
        ("make it a day earlier please", Untimed(days=1, instead=True)),
        ("make it 7", Moved(words="", first=None, hour=time(7), same_half=True)),
        ("no, half past six", Moved(words="", first=None, hour=time(18, 30))),
        ("same every week", Moved(words="", first=date(2026, 3, 5), rule="FREQ=WEEKLY")),
        ("I mean the evening before", Untimed(days=1, hour=time(18))),
    ],
)
def test_right_behind_a_reminder_it_is_left_out_called_off_or_said_sooner(
    said: str, meant: object
) -> None:
    assert plans(said, replace(THURSDAY, on_reminder=True))[0] == (meant,)


def test_why_something_is_left_out_says_when_one_is_away() -> None:
    found, _ = plans("skip the bran check next week, I'm away", THURSDAY)
    skipped = Skip(words="bran check", first=MONDAY, last=NEXT_SUNDAY)
    assert found == (skipped, Away(first=MONDAY, last=NEXT_SUNDAY))


@pytest.mark.parametrize(
    ("said", "first", "last"),
    [
        ("show me next week", MONDAY, NEXT_SUNDAY),
        ("show me tomorrow", FRIDAY, FRIDAY),
        ("show me the next two weeks", None, date(2026, 3, 19)),
        ("list this weekend", date(2026, 3, 7), EIGHTH),
    ],
)
def test_days_are_shown_behind_words_of_ours(said: str, first: date | None, last: date) -> None:
    asked = Ask(topic="due", first=first, on=last)
    assert plans(said, replace(THURSDAY, after_bot=True))[0] == (asked,)
    assert plans(said, THURSDAY)[0] == ()


def test_an_hour_of_tomorrow_morning_is_one_before_noon() -> None:
    ((plan,), _) = plans("remind us at 2:30 tomorrow morning to stir", THURSDAY)
    assert plan == own("stir", 6, hour=time(2, 30))


@pytest.mark.parametrize(
    ("said", "first", "last"),
    [
        ("what's due on Monday?", date(2026, 3, 9), date(2026, 3, 9)),
        ("what's due by Monday?", None, date(2026, 3, 9)),
        ("what's due tomorrow?", date(2026, 3, 6), date(2026, 3, 6)),
        ("what's due next week?", date(2026, 3, 9), date(2026, 3, 15)),
        ("what's on today?", None, date(2026, 3, 5)),
        ("what's on next week?", date(2026, 3, 9), date(2026, 3, 15)),
        ("anything to do tomorrow?", date(2026, 3, 6), date(2026, 3, 6)),
        ("what's coming up for the bins this week?", None, date(2026, 3, 8)),
        ("what's due the week after next?", date(2026, 3, 16), date(2026, 3, 22)),
        ("anything due at the weekend?", date(2026, 3, 7), date(2026, 3, 8)),
        ("what's due in April?", date(2026, 4, 1), date(2026, 4, 30)),
        ("what's due next month?", date(2026, 4, 1), date(2026, 4, 30)),
        ("what's due this month?", None, date(2026, 3, 31)),
        ("what's due on the 25th?", date(2026, 3, 25), date(2026, 3, 25)),
        ("what's due between the 14th and the 20th?", date(2026, 3, 14), date(2026, 3, 20)),
        ("what's due on the weekend of the 14th?", date(2026, 3, 14), date(2026, 3, 15)),
        ("what's due in the first week of April?", date(2026, 4, 1), date(2026, 4, 7)),
        ("what's due in the last week of April?", date(2026, 4, 24), date(2026, 4, 30)),
        ("what's due at the end of the month?", date(2026, 3, 25), date(2026, 3, 31)),
        ("anything on Easter Monday?", date(2026, 4, 6), date(2026, 4, 6)),
        ("what do we need to do this weekend?", date(2026, 3, 7), date(2026, 3, 8)),
        ("what's left to do today?", None, date(2026, 3, 5)),
        ("what's happening with the bins next week?", date(2026, 3, 9), date(2026, 3, 15)),
    ],
)
def test_the_days_that_a_question_of_dues_is_about(
    said: str, first: date | None, last: date
) -> None:
    assert plans(said, THURSDAY)[0] == (Ask(topic="due", first=first, on=last),)


@pytest.mark.parametrize(
    ("said", "what"),
    [
        ("what needs draining?", "drain"),
        ("who still has to drain?", "drain"),
        ("has everybody drained?", "drain"),
        ("what needs sealing?", "seal"),
        ("next burial?", "bury"),
        ("when are we burying?", "bury"),
    ],
)
def test_what_is_due_by_the_deed_alone(said: str, what: str) -> None:
    assert plans(said, THURSDAY)[0] == (Ask(topic="due", what=what),)


@pytest.mark.parametrize(
    ("said", "what"),
    [("when does my bin need sealing?", "seal"), ("when do I drain next?", "drain")],
)
def test_what_is_due_of_ones_own(said: str, what: str) -> None:
    [asked] = plans(said, THURSDAY)[0]
    assert isinstance(asked, Ask)
    assert (asked.what, asked.member is not None) == (what, True)


@pytest.mark.parametrize(
    "said",
    [
        "what's the plan for tonight then?",
        "what's happening?",
        "who needs feeding?",
        "burying the hatchet?",
        "sealing?",
        "anything urgent?",
    ],
)
def test_what_neighbours_ask_each_other_is_not_asked_of_the_calendar(said: str) -> None:
    assert plans(said, THURSDAY)[0] == ()
