"""What was long ago, on a screen or far away, and the same words beside a bin of ours."""

import pytest

from handlers.reading.acts import Layer
from handlers.reading.doubts.memories import is_long_ago, is_of_others, is_on_screen
from handlers.reading.message import read_message
from tests.reading.context import acts, group

_BINS = ("shed", "kitchen", "bin 3")


@pytest.mark.parametrize(
    "text",
    [
        "In 1984 my dad buried a whole bath of kitchen waste under the rhubarb",
        "When I was a boy my uncle salted a barrel of herring, 60 litres",
        "in the old country my mother put 30 kilos of peppers in jars every September",
        "growing up we had a slop pail by the door, two kilos a night to the pig",
        "the winter of the strike we put 5 kg of peel a day on the fire",
        "in my day we fed the scraps to the pigs, 10 kilos a week",
        "back in Leeds we filled a drum with leaves every autumn",
        "in our village grandmother keeps cabbage in a barrel, forty kilos",
        "my grandfather would bury fish heads under every tomato, five pounds a row",
        "thirty years ago we sealed a bin and forgot it for a winter",
    ],
)
def test_a_memory_is_no_record(text: str) -> None:
    assert is_long_ago(read_message(text, group(bins=_BINS)))
    assert acts(text, bins=_BINS) == ()


@pytest.mark.parametrize(
    "text",
    [
        "on the telly last night a bloke put 4 kg of fish guts in a bin and sealed it",
        "a documentary said white mould on cheese is fine and black mould kills",
        "I read that a pub in Kent puts 200 kg of scraps a week into tubs",
        "watched a programme where they drained 40 litres out of a bog",
        "in the film they bury the bin in the woods and it starts to smell rotten",
    ],
)
def test_what_was_on_a_screen_or_in_print_is_no_record(text: str) -> None:
    assert is_on_screen(read_message(text, group(bins=_BINS)))
    assert acts(text, bins=_BINS) == ()


@pytest.mark.parametrize(
    "text",
    [
        "my sister in Cork put 4 kg in hers last week",
        "Cousin Ama in Accra opened a new bin yesterday, sixty litres, called it Beyonce",
        "my mum in Leeds has just sealed her first bin",
        "next door's bin has maggots again",
        "their bucket is bulging, it shows from the road",
    ],
)
def test_a_bin_of_others_is_none_of_ours(text: str) -> None:
    assert is_of_others(read_message(text, group(bins=_BINS)))
    assert acts(text, bins=_BINS) == ()


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        (
            "When I was little we called this nonsense. Anyway, 2 kg peel into the shed today",
            "layer",
        ),
        ("in my country we say waste is sin. 2 kg of peel in the shed", "layer"),
        ("in my village bin I put 3 kg of cabbage", "layer"),
        ("my grandmother used to say feed it well: 4 kg of rice into the kitchen", "layer"),
        ("back in the shed: 2 kg of peel", "layer"),
        ("back in Leeds now, drained the shed, 300 ml", "drain"),
        ("ten years ago I would have binned it; today 2 kg of carcass went into the shed", "layer"),
        ("in the year of our lord 2026 I finally drained the shed, 200 ml", "drain"),
        ("watched a film and put 2 kg of peel in the bucket", "layer"),
        ("I read somewhere to press it down, so I added 2 kg of peel and pressed hard", "layer"),
        ("the book says a week is enough so I drained 300 ml from the shed", "drain"),
        ("on the radio they said frost. Buried bin 3 under the apple tree before it came", "bury"),
        ("news says snow so I sealed the kitchen", "seal"),
        ("my sister in law put 2 kg in the shed", "layer"),
        ("my cousin in number 4 put 2 kg of peel in the bucket", "layer"),
        ("my friend in flat 6 opened a new bin, 20 l, called Minty", "open"),
        ("the neighbours' bin got 2 kg of peel from us", "layer"),
        ("Dad from next door brought 2 kg of bread for bin 3", "layer"),
    ],
)
def test_a_record_beside_such_words_stands(text: str, kind: str) -> None:
    assert [act.act for act in acts(text, bins=_BINS)] == [kind]


@pytest.mark.parametrize(
    "text",
    [
        "my cousin put 5 kg in her bokashi bin and it went rotten",
        "the riverside lot sealed their shed one and it exploded",
        "at work we have a kitchen bin, full of maggots",
        "at the office they had a kitchen bin, it stank",
        "last year we put 10 kg of windfalls in the shed bin",
        "two years ago somebody put 3 kg of prawns in bin 3",
    ],
)
def test_bins_of_others_and_seasons_that_are_over(text: str) -> None:
    assert acts(text, bins=_BINS, in_room=True) == ()


@pytest.mark.parametrize(
    "text", ["my cousin put 5 kg in the shed bin", "at work I put 5 kg in the kitchen bin"]
)
def test_others_who_fed_a_bin_of_ours(text: str) -> None:
    [layer] = acts(text, bins=_BINS, in_room=True)
    assert isinstance(layer, Layer)
