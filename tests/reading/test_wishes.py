"""Settings asked for in free words."""

from zoneinfo import ZoneInfo

import pytest

from handlers.reading.acts import Set
from handlers.reading.arrangements.wishes import wish_of
from handlers.reading.message import read_message
from handlers.reading.replies import certain
from tests.reading.context import acts, group


@pytest.mark.parametrize(
    ("text", "what", "value"),
    [
        ("can the bot talk in litres and kilos, none of your gallons", "units", "metric"),
        ("units in pounds please", "units", "imperial"),
        ("pints and pounds please, my mother is no good with grams", "units", "imperial"),
        ("fahrenheit and quarts for us, would you", "units", "us"),
        ("let the daily reminder come at half past eight, not at noon", "reminder time", "08:30"),
        ("send the reminders at 9 pm, nobody is up before", "reminder time", "21:00"),
        ("stop the reminders over the holidays", "reminders", "off"),
        ("switch the nagging back on", "reminders", "on"),
        ("we moved the group to Irish time", "zone", "Europe/Dublin"),
        ("use the clock of Paris and not London", "zone", "Europe/Paris"),
        ("swap us over to Cape Town time", "zone", "Africa/Johannesburg"),
        ("the clock is an hour out, we're in Swansea", "zone", "Europe/London"),
        ("put the group on Port of Spain for the time", "zone", "America/Port_of_Spain"),
        ("could we have it in ounces from here on", "units", "imperial"),
        ("cups and pounds for this lot", "units", "us"),
        ("quit giving us litres, pints would be kinder", "units", "imperial"),
        ("can we have reminders at 7 instead", "reminder time", "07:00"),
        ("evenings for the reminders, about 7", "reminder time", "19:00"),
        ("let the morning bulletin go out at 6:30", "reminder time", "06:30"),
        ("knock off the 6am messages, begin at 8", "reminder time", "08:00"),
        ("nudge us after supper from now on", "reminder time", "19:00"),
        ("no more pings before nine", "quiet before", "09:00"),
        ("nae pings efter ten at night", "quiet after", "22:00"),
        ("could the daily reminder land at ten to eight", "reminder time", "07:50"),
        ("evenings are hopeless, remind us at breakfast", "reminder time", "08:00"),
        ("not a peep from 10 to 6", "quiet hours", "22:00-06:00"),
        ("ping us only between 9 and 8", "quiet hours", "20:00-09:00"),
        ("ferment for three weeks in winter please", "ferment days", "21"),
    ],
)
def test_a_wish_is_a_setting_and_its_value(text: str, what: str, value: str) -> None:
    assert wished(text) == (what, value)


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("write to us in Yoruba", "language"),
        ("put the day before the month, dd/mm", "dates"),
        ("remind us on Mondays", "reminder days"),
        ("weekdays only for the nagging", "reminder days"),
        ("have the nudge come the day before", "reminder days"),
        ("make the reminders every four days", "reminder days"),
        ("turn off the reminders for the shed bin", "some reminders"),
        ("remind Ines and leave me out", "some reminders"),
        ("stop the shed reminders", "some reminders"),
        ("make the rota two weeks each", "rota"),
        ("ten days per keeper", "rota"),
        ("put Ruth in charge of the shed bin", "keeper"),
    ],
)
def test_a_wish_for_what_cannot_be_set_is_told_apart(text: str, what: str) -> None:
    found = wished(text)
    assert found is not None
    assert found[0] == what


def test_each_sentence_is_read_by_itself() -> None:
    said = "650 g to bin 3. Also, could the reminders be at 8 not 6"
    assert wished(said) == ("reminder time", "08:00")


def test_what_has_no_name_is_a_wish_where_the_bot_is_asked() -> None:
    assert wished("bot, call us the Chapel Rotters") == ("other", "bot, call us the Chapel Rotters")
    assert wished("call us the Chapel Rotters") is None


@pytest.mark.parametrize(
    "text",
    [
        "remind me to lock up at 18:00",
        "bot, remind us the day after tomorrow at half past something in the evening to bring it",
        "bot, remind the whole street on the second or the third at 7 in the evening to come by",
        "we had a lovely time in Paris",
        "text me at noon rather than 8",
        "let them know at 7pm if you're coming",
        "set the boiler to 18",
        "move gym to 7 in the evening",
        "whose turn is it on the rota",
        "we used to have the reminders in kilos",
        "quiet hours at the pool are ten to eight",
    ],
)
def test_what_names_no_setting_sets_nothing(text: str) -> None:
    assert wished(text) is None


def wished(text: str) -> tuple[str, str] | None:
    found = wish_of(read_message(text, group()))
    return None if found is None else (found.what, found.value)


@pytest.mark.parametrize(
    ("text", "what", "value"),
    [
        ("let's do metric from now on", "units", "metric"),
        ("bot, use pounds not kilos", "units", "imperial"),
        ("bot, I'd like it in ounces", "units", "imperial"),
        ("bot, kilograms only henceforth", "units", "metric"),
        ("bot, pounds and US gallons from now on, use pounds", "units", "us"),
        ("bot, give your answers in Vietnamese please", "language", "Vietnamese"),
        ("weight habit for the dosing please", "habit", "weight"),
        ("fermentation time: 18 days", "ferment days", "18"),
        ("make the fermenting time three weeks now it's winter", "ferment days", "21"),
        ("we ferment for two weeks from now on", "ferment days", "14"),
        ("dose by weight from now on please", "habit", "weight"),
        ("set our habit to spoons", "habit", "spoon"),
        ("reminders back on please", "reminders", "on"),
    ],
)
def test_plain_orders_need_no_score(text: str, what: str, value: str) -> None:
    assert certain(read_message(text, group())) == (Set(what=what, value=value),)


@pytest.mark.parametrize(
    "text",
    [
        "mine fermented for three weeks last winter",
        "I train by weight from now on",
        "bot, show April against May for kilos",
        "set the oven to 180",
        "bot, how do you say bran in French?",
        "the reminders from the dentist come at 6:45 am",
        "the phone's language has gone to Finnish",
        "units at the trading estate are going for a song",
    ],
)
def test_orders_of_other_things_set_nothing(text: str) -> None:
    assert not any(isinstance(act, Set) for act in acts(text))


def test_whose_pounds_they_are_goes_by_the_clock() -> None:
    boston = group(zone=ZoneInfo("America/New_York"))
    assert certain(read_message("bot, use pounds", boston)) == (Set(what="units", value="us"),)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        (
            "bot, kilos please, and the digest at eight in the evening",
            {"units": "metric", "reminder time": "20:00"},
        ),
        (
            "set the zone to Europe/Rome and the reminders at 7:30",
            {"zone": "Europe/Rome", "reminder time": "07:30"},
        ),
        (
            "use the weight habit. Fermentation for four weeks, and quiet hours from 9 to 7",
            {"habit": "weight", "ferment days": "28", "quiet hours": "21:00-07:00"},
        ),
        ("quiet hours between 11 and 6", {"quiet hours": "23:00-06:00"}),
        ("set the units to metric, thanks and bye", {"units": "metric"}),
        ("set the units to metric. I'm in Rome and the flat is 7 by 9", {"units": "metric"}),
    ],
)
def test_every_setting_of_a_message_is_told(text: str, told: dict[str, str]) -> None:
    assert {act.what: act.value for act in acts(text) if isinstance(act, Set)} == told


def test_reminders_are_turned_back_on() -> None:
    for text in ("bot, reminders back on", "bot turn them back on please"):
        [told] = acts(text, in_room=True, to_bot=True)
        assert isinstance(told, Set)
        assert (told.what, told.value) == ("reminders", "on")
    assert acts("turn them back on", in_room=True) == ()


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("Cool. Bot, use US units", "us"),
        ("ok great. bot, use US units please", "us"),
        ("Lovely, thank you! Bot, switch to metric", "metric"),
        ("right bot use imperial units", "imperial"),
    ],
)
def test_the_bot_is_called_behind_a_few_words_to_others(text: str, value: str) -> None:
    found = certain(read_message(text, group(in_room=True)))
    assert Set(what="units", value=value, rules=("a setting",)) in found


@pytest.mark.parametrize(
    "text",
    [
        "Does the bot use US units",
        "Bram made the bot use US units",
        "the scales that my aunt gave me last year came with a card: bot, use US units",
    ],
)
def test_who_speaks_of_the_bot_calls_it_to_nothing(text: str) -> None:
    found = certain(read_message(text, group(in_room=True)))
    assert not [act for act in found if isinstance(act, Set)]
