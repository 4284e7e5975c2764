"""Several bins, days and doers in one message: each lot has its own bin, day and doer."""

import pytest

from handlers.reading.acts import Act, Ask, Bury, Drain, Layer, Unsure
from tests.reading.context import acts

BINS = ("cellar", "porch", "red", "green")


def _words(act: Act) -> str:
    """What was done where, how much of what, when and by whom, if not by the sender today."""
    if isinstance(act, Ask):
        return f"asks {act.topic}"
    assert isinstance(act, Layer | Drain | Bury)
    mass = act.mass_kg if isinstance(act, Layer) else None
    volume = act.volume_l if isinstance(act, Layer | Drain) else None
    made = act.materials if isinstance(act, Layer) and mass else None
    kinds = [kind for kind in made or {} if kind != "mixed"]
    said = [
        "" if isinstance(act, Layer) else act.act,
        act.bin,
        f"{round(mass, 3):g} kg" if mass else "",
        f"{round(volume, 3):g} L" if volume else "",
        *kinds,
        act.place if isinstance(act, Bury) else "",
        f"{act.on:%a}" if act.on and f"{act.on:%a}" != "Wed" else "",
        act.member,
    ]
    return " ".join(filter(None, said))


def told(text: str) -> list[str]:
    """The records of a message, said on a Wednesday."""
    read = acts(text, in_room=True, bins=BINS, members=("ines", "kofi", "ruth"), sender="kofi")
    guessed = [one for act in read for one in (act.guess if isinstance(act, Unsure) else (act,))]
    return [_words(act) for act in guessed]


@pytest.mark.parametrize(
    ("text", "records"),
    [
        (
            "2 kg cellar 1 kg porch yesterday, 500 g red today",
            ["cellar 2 kg Tue", "porch 1 kg Tue", "red 0.5 kg"],
        ),
        (
            "put 2 kg of peel in cellar and 1 kg of bread in porch on Monday, 500 g in red today",
            ["cellar 2 kg vegetable Mon", "porch 1 kg grain Mon", "red 0.5 kg"],
        ),
        (
            "500 g red today, 2 kg cellar and 1 kg porch yesterday",
            ["red 0.5 kg", "cellar 2 kg Tue", "porch 1 kg Tue"],
        ),
        (
            "1 kg porch. Yesterday 2 kg cellar, 500 g red on Monday",
            ["porch 1 kg", "cellar 2 kg Tue", "red 0.5 kg Mon"],
        ),
        (
            "Ines put 2 kg in cellar and 1 kg in porch yesterday",
            ["cellar 2 kg Tue ines", "porch 1 kg Tue ines"],
        ),
    ],
)
def test_a_day_holds_for_the_bins_told_since_the_day_before_it(
    text: str, records: list[str]
) -> None:
    assert told(text) == records


@pytest.mark.parametrize(
    ("text", "records"),
    [
        ("2 kg in cellar, Ines 1 in red", ["cellar 2 kg", "red 1 kg ines"]),
        ("Ines 2 kg in cellar, me 1 in red", ["cellar 2 kg ines", "red 1 kg"]),
        ("2 kg in cellar and Ruth 3 in the porch", ["cellar 2 kg", "porch 3 kg ruth"]),
        ("2 kg in cellar, Ines 3 in the office", ["cellar 2 kg"]),
        ("2 kg in cellar, table 4 in red", ["cellar 2 kg"]),
        ("2 kg in cellar, Ines 40 in red", ["cellar 2 kg"]),
    ],
)
def test_a_figure_behind_a_name_shares_the_unit(text: str, records: list[str]) -> None:
    assert told(text) == records


@pytest.mark.parametrize(
    ("text", "records"),
    [
        (
            "2 kg veg, 1 kg meat: cellar and porch respectively",
            ["cellar 2 kg vegetable", "porch 1 kg meat"],
        ),
        (
            "1 kg rice, 500 g bones and 2 kg peel into cellar, porch and red, respectively",
            ["cellar 1 kg grain", "porch 0.5 kg bone", "red 2 kg vegetable"],
        ),
        ("2 kg of veg and 1 kg of meat in cellar", ["cellar 3 kg vegetable meat"]),
        ("drained cellar and porch, 300 and 550 ml", ["drain cellar 0.3 L", "drain porch 0.55 L"]),
    ],
)
def test_different_things_go_into_bins_in_turn(text: str, records: list[str]) -> None:
    assert told(text) == records


@pytest.mark.parametrize(
    ("text", "records"),
    [
        ("a kilo and a half in cellar, less 200 g I kept", ["cellar 1.3 kg"]),
        ("2 kg in cellar minus 300 g for the bucket", ["cellar 1.7 kg"]),
        ("3 kg in cellar, less about 400 g the hens had", ["cellar 2.6 kg"]),
        ("2 kg in cellar, no less than 500 g of it bread", ["cellar 2 kg grain"]),
        ("2 kg in cellar, more or less 500 g of that bread", ["cellar 2 kg grain"]),
        ("two trays of peel in cellar, I'd say three kilos each", ["cellar 6 kg vegetable"]),
        ("2 boxes of pears in cellar, call it 3 kg apiece", ["cellar 6 kg fruit"]),
        (
            "we had 5 kg of peel, 3 went to cellar and 2 to red",
            ["cellar 3 kg vegetable", "red 2 kg"],
        ),
        ("5 of us, 3 went to the porch", []),
    ],
)
def test_what_a_lot_weighs(text: str, records: list[str]) -> None:
    assert told(text) == records


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("1 kg in red every day since Friday except Sunday", "Fri Sat Mon Tue Wed"),
        ("1 kg in red daily since Saturday, but not on Monday", "Sat Sun Tue Wed"),
        ("1 kg in red each day from Friday to Monday, apart from Sunday", "Fri Sat Mon"),
        ("1 kg in red every day last week bar Tuesday and Friday", "Mon Wed Thu Sat Sun"),
        ("1 kg in red every day since Sunday", "Sun Mon Tue Wed"),
        ("1 kg in red at 10, and again at 4", "Wed Wed"),
        ("1 kg in red before work and again after", "Wed Wed"),
        ("1 kg in red yesterday at noon and again in the evening", "Tue Tue"),
        ("1 kg in red and again the lid was off", "Wed"),
        ("1 kg in red and again tonight it smells", "Wed"),
    ],
)
def test_so_often_the_same(text: str, days: str) -> None:
    read = acts(text, in_room=True, bins=BINS)
    layers = [a for act in read for a in (act.guess if isinstance(act, Unsure) else (act,))]
    assert [f"{a.on:%a}" for a in layers if isinstance(a, Layer) and a.on] == days.split()


@pytest.mark.parametrize(
    ("text", "records"),
    [
        ("buried red in the new beds, then 2 kg in porch", ["bury red new beds", "porch 2 kg"]),
        ("red went into the new beds today, then 2 kg into the porch",
         ["bury red new beds", "porch 2 kg"]),
        ("red bin is in the ground now, and 1 kg in green", ["bury red ground", "green 1 kg"]),
        ("Red went into the rose bed, then put 2 kg in the porch",
         ["bury red rose bed", "porch 2 kg"]),
        ("1.2 kg in red, and can orange peel go in?", ["red 1.2 kg", "asks allowed"]),
        ("Can orange peel go in? 1.2 kg of it is in red", ["red 1.2 kg fruit", "asks allowed"]),
        ("we emptied the green on Monday, about half a litre of juice", ["drain green 0.5 L Mon"]),
        ("emptied a carton of juice, half a litre, into green", ["green 0.5 L"]),
    ],
)  # fmt: skip
def test_what_is_told_beside_it_is_of_its_own_bin(text: str, records: list[str]) -> None:
    assert sorted(told(text)) == sorted(records)
