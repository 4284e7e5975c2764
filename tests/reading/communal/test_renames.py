"""A bin is told to have another name: where the name ends, and what is no name."""

from dataclasses import replace

import pytest

from handlers.reading.acts import Layer, Open
from handlers.reading.arrangements.communal import Rename
from handlers.reading.plans import plans, read
from tests.reading.communal.said_in import THURSDAY


def _renamed(said: str) -> list[tuple[str, str]]:
    return [(one.bin, one.name) for one in plans(said, THURSDAY)[0] if isinstance(one, Rename)]


@pytest.mark.parametrize(
    ("said", "bin", "name"),
    [
        ("Gertie is now called Rosie and we start again", "Gertie", "Rosie"),
        ("Gertie is called Rosie from now on, starting fresh", "Gertie", "Rosie"),
        ("rename Gertie to Rosie but keep the records", "Gertie", "Rosie"),
        ("rename bin 3 to kitchen so we can tell them apart", "bin 3", "kitchen"),
        ("rename bin 3 to kitchen because it's there now", "bin 3", "kitchen"),
        ("call the shed bin Rosie and tell Bram", "shed", "Rosie"),
        ("Gertie is now called Rosie, it's 20 L", "Gertie", "Rosie"),
        ("rename Gertie to Salt and Pepper", "Gertie", "Salt and Pepper"),
        ("rename bin 3 to salt and pepper", "bin 3", "salt and pepper"),
        ("we call bin 3 Fill and Forget", "bin 3", "Fill and Forget"),
        ("rename Gertie to Queen of the Bins", "Gertie", "Queen of the Bins"),
        ("the kids named the shed bin Stinky", "shed", "Stinky"),
        ("Bram christened the shed bin Sir Rot-a-lot", "shed", "Sir Rot-a-lot"),
        ("everyone calls bin 3 Bob", "bin 3", "Bob"),
        ("bin 3 has a new name: Bob", "bin 3", "Bob"),
        ("bin 3 goes by Bob now", "bin 3", "Bob"),
        ("bin 3 has been renamed Bob", "bin 3", "Bob"),
        ("from now on the shed bin is known as Bob", "shed", "Bob"),
    ],
)
def test_the_name_alone_is_the_name(said: str, bin: str, name: str) -> None:
    assert _renamed(said) == [(bin, name)]


def test_what_is_told_behind_it_is_read_by_itself() -> None:
    named, layer = read("rename the shed bin to Rosie, added 2 kg of peel", THURSDAY)
    assert (named, type(layer)) == (Rename(bin="shed", name="Rosie"), Layer)


@pytest.mark.parametrize(
    "said",
    [
        "we call the shed the den",
        "they called the shed bin disgusting",
        "everyone calls the shed a mess",
        "the shed bin was named after my gran",
        "we called the shed but nobody answered",
        "is bin 3 called Bob?",
        "the shed has a name for being smelly",
    ],
)
def test_what_a_bin_is_only_called_is_no_name(said: str) -> None:
    assert _renamed(said) == []


@pytest.mark.parametrize("said", ["*kitchen", "kitchen*", "kitchen, sorry"])
def test_a_slip_in_the_name_of_a_bin_just_begun_is_put_right(said: str) -> None:
    begun = replace(THURSDAY, bins=("kitchin",), last=Open(bin="kitchin"))
    told = [one for one in plans(said, begun)[0] if isinstance(one, Rename)]
    assert told == [Rename(bin="kitchin", name="kitchen")]
