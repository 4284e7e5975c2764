"""A week told day by day is written down day by day, or not at all."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from handlers.reading.acts import Drain, Layer, Unsure
from tests.reading.context import acts

WEEK_BEFORE = ("Mon 23", "Tue 24", "Wed 25", "Thu 26", "Fri 27", "Sat 28", "Sun 1")
SUNDAY = datetime(2026, 3, 8, 18, tzinfo=ZoneInfo("UTC"))


def told(text: str, bins: tuple[str, ...] = ("green", "red")) -> list[str]:
    """Weekday, day of the month, kilos, bin, kind and doer of each layer."""
    read = acts(
        text, in_room=True, at=SUNDAY, bins=bins, members=("ines", "bram", "zoe"), sender="ines"
    )
    layers = [act for act in read if isinstance(act, Layer)]
    return [_words(layer) for layer in layers]


def _words(layer: Layer) -> str:
    kinds = "+".join(layer.materials or {})
    said = [f"{layer.on:%a %-d}", f"{layer.mass_kg or layer.volume_l:g}", layer.bin, kinds]
    return " ".join(filter(None, [*said, layer.member]))


@pytest.mark.parametrize(
    ("text", "layers"),
    [
        (
            "GREEN\nMon 500g veg\nTue 700g bread\nRED\nWed 300g meat\nFri 900g rice",
            [
                "Mon 2 0.5 green vegetable",
                "Tue 3 0.7 green grain",
                "Wed 4 0.3 red meat",
                "Fri 6 0.9 red grain",
            ],
        ),
        (
            "Green: Mon 500 g, Tue 700 g; red: Wed 300 g",
            ["Mon 2 0.5 green mixed", "Tue 3 0.7 green mixed", "Wed 4 0.3 red mixed"],
        ),
        (
            "Monday\n1 kg green\n500 g red\nTuesday\nnothing\nWednesday\n2 kg green",
            ["Mon 2 1 green mixed", "Mon 2 0.5 red mixed", "Wed 4 2 green mixed"],
        ),
        (
            "copying from the sheet on the fridge:\n2/3 Bram 1.1 kg green\n3/3 Zoe 400 g red\n"
            "5/3 me 750 g green",
            ["Mon 2 1.1 green mixed bram", "Tue 3 0.4 red mixed zoe", "Thu 5 0.75 green mixed"],
        ),
        (
            "Mon 2/3: 1kg G, Tue 3/3: 0, Wed 4/3: 500g R",
            ["Mon 2 1 green mixed", "Wed 4 0.5 red mixed"],
        ),
        (  # said on a Sunday, and going on from the one before
            "catching up: Sunday 500 g bread in red, Monday nothing, Tuesday 1.2 kg peelings in "
            "green and today 300 g coffee in red",
            ["Sun 1 0.5 red grain", "Tue 3 1.2 green vegetable", "Sun 8 0.3 red coffee"],
        ),
        (
            "Sunday 1 kg green, Saturday 500 g red, Friday nothing",
            ["Sun 8 1 green mixed", "Sat 7 0.5 red mixed"],
        ),
        (
            "nothing from me Monday to Thursday, Friday 700 g peel into red",
            ["Fri 6 0.7 red vegetable"],
        ),
        ("Monday and Tuesday nothing, Wednesday 1 kg green", ["Wed 4 1 green mixed"]),
        ("nothing on Monday and Tuesday, Wednesday 1 kg green", ["Wed 4 1 green mixed"]),
        (
            "put in 1 kg on Monday, 800 g on Wednesday and 500 g on Friday, all in green",
            ["Mon 2 1 green mixed", "Wed 4 0.8 green mixed", "Fri 6 0.5 green mixed"],
        ),
        (
            "so monday I put in 2 kg of peelings then tuesday I forgot wednesday was about a kilo "
            "of rice all of it in green oh and friday 500 grams of fish heads in red",
            ["Mon 2 2 green vegetable", "Wed 4 1 green grain", "Fri 6 0.5 red fish"],
        ),
        (
            "yesterday 1 kg, day before 600 g, both in red",
            ["Sat 7 1 red mixed", "Fri 6 0.6 red mixed"],
        ),
        (
            "Mon - half a caddy of peel in green; Tue: 2 handfuls of bread in red. Wed: nothing",
            ["Mon 2 2.5 green vegetable", "Tue 3 0.3 red grain"],
        ),
        (
            "Mon 1 kg green and 500 g bread red, Tue 2 kg green by Zoe",
            ["Mon 2 1 green mixed", "Mon 2 0.5 red grain", "Tue 3 2 green mixed zoe"],
        ),
        (
            "Mon 1 kg green, Tue same, Wed nothing, Thu 500 g bread red, Fri same as Mon",
            [
                "Mon 2 1 green mixed",
                "Tue 3 1 green mixed",
                "Thu 5 0.5 red grain",
                "Fri 6 1 green mixed",
            ],
        ),
        (
            "Mon 1 kg bread green, 500 g red, Wed ditto",
            [
                "Mon 2 1 green grain",
                "Mon 2 0.5 red mixed",
                "Wed 4 1 green grain",
                "Wed 4 0.5 red mixed",
            ],
        ),
        (
            "here's mine for the week Monday a kilo of bread in green Tuesday 2 kg of peels in "
            "green and then today about half a kilo of lard also green",
            ["Mon 2 1 green grain", "Tue 3 2 green vegetable", "Sun 8 0.5 green oil"],
        ),
        (
            "Mon 300, 200 and a kilo in green, Tue 500 g red",
            ["Mon 2 1.5 green mixed", "Tue 3 0.5 red mixed"],
        ),
    ],
)
def test_each_amount_has_its_own_day(text: str, layers: list[str]) -> None:
    assert told(text) == layers


@pytest.mark.parametrize(
    "text",
    [
        "next week: Mon 1 kg green, Tue 2 kg red",
        "Mon 10 kg flour delivery, Tue 5 kg sugar",
        "Monday 1 kg tomatoes sold, Tuesday 2 kg",
        "Monday 1 kg, Tuesday 2 kg, Wednesday none left",
        "can we put in 1 kg green Monday, 2 kg red Tuesday?",
    ],
)
def test_nothing_is_written_of_other_things(text: str) -> None:
    assert told(text) == []


def test_a_list_that_names_neither_bin_nor_deed_is_asked_about() -> None:
    text = "Mon 800 g, Tue 600 g, Wed nil, Thu 1 kg"
    [act] = acts(text, in_room=True, at=SUNDAY, bins=("green",))
    assert isinstance(act, Unsure)
    assert [_words(one) for one in act.guess if isinstance(one, Layer)] == [
        "Mon 2 0.8 mixed",
        "Tue 3 0.6 mixed",
        "Thu 5 1 mixed",
    ]
    assert acts("Mon 80 kg, Tue 79 kg, Wed 79 kg", in_room=True, at=SUNDAY, bins=("green",)) == ()
    assert acts("yesterday 500 g, today 1 kg", in_room=True, at=SUNDAY, bins=("green",)) == ()


@pytest.mark.parametrize(
    ("text", "days", "each"),
    [
        (
            "every day this week half a kilo of coffee grounds in red",
            "Mon Tue Wed Thu Fri Sat Sun",
            0.5,
        ),
        ("500 g every day since Thursday, in green", "Thu Fri Sat Sun", 0.5),
        ("half a kilo a day from Thursday in red", "Thu Fri Sat Sun", 0.5),
        ("the past 3 days I put in 500 g a day, green", "Fri Sat Sun", 0.5),
        ("put 300 g in red every morning since Friday", "Fri Sat Sun", 0.3),
        ("three days running 500 g in red", "Fri Sat Sun", 0.5),
        ("drained 100 ml from green daily since Friday", "Fri Sat Sun", 0.1),
    ],
)
def test_so_much_on_each_day_up_to_now_is_asked(text: str, days: str, each: float) -> None:
    [act] = acts(text, in_room=True, at=SUNDAY, bins=("green", "red"))
    assert isinstance(act, Unsure)
    told = [one for one in act.guess if isinstance(one, Layer | Drain)]
    assert [f"{one.on:%a}" for one in told] == days.split()
    assert {getattr(one, "mass_kg", None) or one.volume_l for one in told} == {each}


@pytest.mark.parametrize(
    "text",
    [
        "last three days: 300, 200 and a kilo, green",
        "last 3 days in green: 300 g, 200 g, 1 kg",
        "past three days 300 g, 200 g and 1 kg in green",
    ],
)
def test_as_many_amounts_as_days_are_asked_day_by_day(text: str) -> None:
    [act] = acts(text, in_room=True, at=SUNDAY, bins=("green", "red"))
    assert isinstance(act, Unsure)
    assert [_words(one) for one in act.guess if isinstance(one, Layer)] == [
        "Fri 6 0.3 green mixed",
        "Sat 7 0.2 green mixed",
        "Sun 8 1 green mixed",
    ]


@pytest.mark.parametrize(
    ("text", "layers"),
    [
        (
            "every day from Monday to Wednesday 1 kg in green",
            ["Mon 2 1 green mixed", "Tue 3 1 green mixed", "Wed 4 1 green mixed"],
        ),
        (
            "put half a kilo in green every day last week",
            [f"{day} 0.5 green mixed" for day in WEEK_BEFORE],
        ),
        ("2 kg in green over the last three days", ["Sun 8 2 green mixed"]),
        ("put 1 kg in green, it has been smelling every day this week", ["Sun 8 1 green mixed"]),
        ("added 1 kg to red, we drain it every day since Monday", ["Sun 8 1 red mixed"]),
        ("green gets half a kilo a day", []),
        ("every day this week I meant to add 500 g to green", []),
    ],
)
def test_what_is_of_each_day_and_what_is_not(text: str, layers: list[str]) -> None:
    assert told(text) == layers


def test_outside_of_a_room_days_without_stops_are_told_apart_too() -> None:
    text = "Monday a kilo of bread in green Tuesday 2 kg of peels in green and today 1 kg also red"
    read = acts(text, at=SUNDAY, bins=("green", "red"))
    assert [_words(act) for act in read if isinstance(act, Layer)] == [
        "Mon 2 1 green grain",
        "Tue 3 2 green vegetable",
        "Sun 8 1 red mixed",
    ]


def test_the_same_with_its_own_amount_is_the_same_thing() -> None:
    text = "Red today: leeks 2 kg. Red yesterday: same, 1 kg."
    read = acts(text, at=SUNDAY, bins=("green", "red"))
    assert [_words(act) for act in read if isinstance(act, Layer)] == [
        "Sun 8 2 red vegetable",
        "Sat 7 1 red vegetable",
    ]
