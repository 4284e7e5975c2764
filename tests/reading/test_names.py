import pytest

from handlers.reading.acts import Amend, Drain, Layer, Seal
from handlers.reading.bins.mending import slipped
from handlers.reading.message import read_message
from handlers.reading.words.vocabulary import one_slip
from tests.reading.context import WEDNESDAY, acts, group

BINS = ("shed", "kitchen", "green", "bin 3", "big blue", "Room 12", "number 1", "Gertie", "plot 4",
        "dustbin A", "dustbin B")  # fmt: skip


def named(text: str) -> list[str | None]:
    return [ref.name for ref in read_message(text, group(bins=BINS)).bins]


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("2 kg in the Shed bin", ["shed"]),
        ("BIG BLUE is full", ["big blue"]),
        ("into bin 3", ["bin 3"]),
        ("bin three", ["bin 3"]),
        ("bin 7 please", ["bin 7"]),
        ("2 kg in the shde bin", ["shed"]),
        ("the attic bin", ["attic"]),
        ("Deb's bin", ["Deb's"]),
        ("the bucket", [None]),
        ("room 12 today", ["Room 12"]),
        ("the shed's lid", ["shed"]),
        ("in no. 1", ["number 1"]),
        ("into number one", ["number 1"]),
        ("plot four", ["plot 4"]),
        ("Gerty got 2 kg", ["Gertie"]),
        ("kitchn sealed", ["kitchen"]),
        ("1 kg in shd", ["shed"]),
        ("I thk it shd b enuff", []),
        ("2 kg in A", ["dustbin A"]),
        ("2 kg of peel, B", ["dustbin B"]),
        ("B's lid is up", ["dustbin B"]),
        ("A: about 300 g of leeks, B: half a kilo", ["dustbin A", "dustbin B"]),
        ("A: yes, and B: no", []),
    ],
)
def test_bins_are_found_under_the_names_of_the_group(text: str, names: list[str | None]) -> None:
    assert named(text) == names


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("2 kg in the village bin", ["old village"]),
        ("half a kilo of leeks in the laundry bucket", ["upper laundry"]),
        ("a litre off the crock", ["brown crock"]),
        ("Sealed crock today", ["brown crock"]),
        ("Crock. Two kilos.", ["brown crock"]),
        ("2 kg in the school laundry bin", ["school laundry"]),
        ("2 kg in the blue crock", ["blue"]),
        ("2 kg in the drum", [None]),
    ],
)
def test_the_last_word_of_a_name_stands_for_it_where_one_bin_has_it(
    text: str, names: list[str | None]
) -> None:
    bins = ("old village", "upper laundry", "brown crock", "red drum", "tall drum", "shed")
    assert [ref.name for ref in read_message(text, group(bins=bins)).bins] == names


@pytest.mark.parametrize(
    "text",
    [
        "the shed roof leaks",
        "my kitchen is small",
        "kitchen table",
        "green tea",
        "Green, black, the lot",
        "recycling bin",
        "bin day is Thursday",
        "school kitchen left us food",
    ],
)
def test_a_name_within_another_thing_is_no_bin(text: str) -> None:
    assert named(text) == []


@pytest.mark.parametrize(
    ("said", "meant", "is_slip"),
    [("shde", "shed", True), ("shd", "shed", True), ("sheed", "shed", True), ("shad", "shed", True),
     ("shed", "shed", False), ("shade", "shed", False), ("barn", "shed", False)],
)  # fmt: skip
def test_one_slip_of_the_finger(said: str, meant: str, is_slip: bool) -> None:
    assert one_slip(said, meant) is is_slip


def test_a_slip_between_two_names_is_not_mended() -> None:
    assert slipped("roon", ("roof", "room")) is None


@pytest.mark.parametrize(
    "text",
    [
        "sealed bucket one",
        "sealed the first tub",
        "sealed number 1",
        "sealed bin one",
        "sealed bin 1",
    ],
)
def test_a_number_is_enough_whatever_stands_on_the_lid(text: str) -> None:
    (sealed,) = acts(text, bins=("bin 1", "tub 2"))
    assert isinstance(sealed, Seal)
    assert sealed.bin == "bin 1"


def test_two_of_one_number_are_told_apart() -> None:
    (sealed,) = acts("sealed bucket one", bins=("bin 1", "bucket 1"))
    assert isinstance(sealed, Seal)
    assert sealed.bin == "bucket 1"


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("2 kg of peel into the boat house", "boathouse"),
        ("drained northgate, 300 ml", "north gate"),
        ("sealed the wood shed bin", "woodshed"),
    ],
)
def test_a_name_joined_or_parted(text: str, name: str) -> None:
    [act] = acts(text, bins=("boathouse", "north gate", "woodshed"))
    assert act.bin == name  # type: ignore[union-attr]


@pytest.mark.parametrize("name", ["gård", "hallå", "Élodie"])
def test_a_name_with_an_accent_is_no_slip_of_itself(name: str) -> None:
    (layer,) = acts(f"2 kg of bread in {name}", bins=(name, "bridge"))
    assert isinstance(layer, Layer)
    assert layer.bin == name


def test_a_bin_alone_behind_an_aside_is_where_it_went() -> None:
    layer, *_ = acts("bones again, 4 kg, boiled so long they crumble. shed. where is Tall Paul?")
    assert isinstance(layer, Layer)
    assert layer.bin == "shed"


@pytest.mark.parametrize(
    ("text", "bin"),
    [
        ("what do I do about black fuzz? shed one", "shed"),
        ("is blue mould bad. asking for bin 3", "bin 3"),
        ("500 g of peel b3", "bin 3"),
        ("B3 got 2 kg of carrots", "bin 3"),
        ("nobody touched the second crock, beans, 4 kilos, into the shed", "shed"),
        ("15 oz of celery from the Purple Parrot bar, the shed had it", "shed"),
        ("two pounds of leek tops, minus bucket, went into the shed", "shed"),
        ("2 kg of peel for Tall Paul went inside bin 3", "bin 3"),
        ("I fed the shed its breakfast, two pounds of melon halves", "shed"),
        ("2 kg of peel from the hotel, Tall Paul gobbled it", "Tall Paul"),
    ],
)
def test_the_bin_that_is_meant_among_other_words(text: str, bin: str) -> None:
    assert [getattr(act, "bin", None) for act in acts(text)] == [bin]


def test_the_bin_that_was_got_at_is_of_what_is_seen() -> None:
    told = acts("what do we do about mice? they've been at Tall Paul")
    assert [(act.act, getattr(act, "bin", None)) for act in told] == [
        ("observe", "Tall Paul"),
        ("ask", None),
    ]


def test_a_letter_and_a_number_apart_are_no_bin() -> None:
    assert [act.bin for act in acts("drained 1 l 3 days ago, the shed", bins=("shed", "level 3"))
            if isinstance(act, Drain)] == ["shed"]  # fmt: skip


@pytest.mark.parametrize(
    ("said", "name"),
    [
        ("lvl 3", "level 3"),
        ("lvl3", "level 3"),
        ("rm 9", "room 9"),
        ("blk C", "block c"),
        ("bkt 5", "bucket 5"),
        ("3rd flr", "third floor"),
        ("wash hse", "wash house"),
    ],
)
def test_a_name_is_abbreviated(said: str, name: str) -> None:
    bins = ("level 3", "room 9", "block c", "bucket 5", "third floor", "wash house")
    (layer,) = acts(f"added 2 kg of peel to {said}", bins=bins)
    assert isinstance(layer, Layer)
    assert layer.bin == name


@pytest.mark.parametrize(
    ("said", "name"),
    [
        ("St. Mary's", "St. Mary's"),
        ("st mary's", "St. Mary's"),
        ("the st. marys bin", "St. Mary's"),
        ("St Marys", "St. Mary's"),
        ("the Hendersons' bin", "Hendersons'"),
        ("the Hendersons'", "Hendersons'"),
        ("hendersons", "Hendersons'"),
        ("tinas", "Tina's"),
    ],
)
def test_a_name_without_its_stops_and_apostrophes(said: str, name: str) -> None:
    (act,) = acts(f"added 1 kg to {said}", bins=_WITH_STOPS, in_room=True)
    assert getattr(act, "bin", None) == name


_WITH_STOPS = ("St. Mary's", "Hendersons'", "Tina's", "Pea's", "blue")


def test_food_is_no_name_without_its_stops() -> None:
    assert acts("added 1 kg to the peas", bins=_WITH_STOPS, in_room=True) == ()


@pytest.mark.parametrize(
    ("text", "bin"),
    [
        ("1 kg of bread in the 4th", "4th floor"),
        ("1 kg of bread 4th floor, sorry the 9th is full", "4th floor"),
        ("1 kg of bread in the 9th floor one", "9th floor"),
        ("1 kg of bread in the ninth floor bin", "9th floor"),
    ],
)
def test_a_floor_is_called_by_its_number(text: str, bin: str) -> None:
    told = acts(text, bins=("4th floor", "9th floor"), in_room=True)
    assert [act.bin for act in told if isinstance(act, Layer)] == [bin]
    assert [act.on for act in told if isinstance(act, Layer)] == [WEDNESDAY.date()]


def test_a_day_of_the_month_is_no_floor() -> None:
    told = acts("drained the 4th floor bin on the 9th, 200 ml", bins=("4th floor", "9th floor"))
    assert [(a.bin, a.on.day) for a in told if isinstance(a, Drain) and a.on] == [("4th floor", 9)]


@pytest.mark.parametrize(
    "text", ["the second white bin", "white bin 2", "white 2", "the 2nd white one"]
)
def test_one_of_several_alike_is_called_by_its_place(text: str) -> None:
    told = acts(f"put 700 g of bread in {text}", bins=("white 1", "white 2"), in_room=True)
    assert [act.bin for act in told if isinstance(act, Layer)] == ["white 2"]


@pytest.mark.parametrize(
    ("text", "bin"),
    [
        ("1 kg of bread in larder, sorry gate is full", "larder"),
        ("1 kg of bread larder, sorry the gate one is full", "larder"),
        ("1 kg of bread in larder, sorry in gate", "gate"),
        ("1 kg of bread in larder, no wait, gate", "gate"),
    ],
)
def test_what_is_told_of_another_bin_takes_no_layer(text: str, bin: str) -> None:
    told = acts(text, bins=("larder", "gate"), in_room=True)
    assert [act.bin for act in told if isinstance(act, Layer)] == [bin]


@pytest.mark.parametrize("text", ["sorry the gate bin is full", "sorry, the gate bin stinks"])
def test_what_is_told_of_another_bin_corrects_nothing(text: str) -> None:
    last = Layer(mass_kg=1, materials={"grain": 1}, bin="larder")
    told = acts(text, bins=("larder", "gate"), in_room=True, last=last)
    assert not any(isinstance(act, Amend) for act in told)


@pytest.mark.parametrize(
    ("text", "bin"),
    [("the little blue one", "small blue"), ("the large blue bin", "big blue"),
     ("the big blue one", "big blue"), ("the wee blue bin", "small blue")],
)  # fmt: skip
def test_a_bin_told_by_its_size_has_other_words_for_it(text: str, bin: str) -> None:
    told = acts(f"put 700 g of bread in {text}", bins=("big blue", "small blue"), in_room=True)
    assert [act.bin for act in told if isinstance(act, Layer)] == [bin]


@pytest.mark.parametrize(
    ("text", "bin", "kg"),
    [
        ("🔵 2kg 🥕", "🔵", 2),
        ("🔵 2 kg of carrots", "🔵", 2),
        ("added 2 kg 🐟 to 🔵", "🔵", 2),
        ("2️⃣ kg of carrots into shed", "shed", 2),
    ],
)
def test_a_picture_before_an_amount_names_its_bin(text: str, bin: str, kg: float) -> None:
    [layer] = acts(text, bins=("🔵", "shed"), in_room=True)
    assert isinstance(layer, Layer)
    assert (layer.bin, layer.mass_kg) == (bin, kg)


@pytest.mark.parametrize(
    ("text", "bin"),
    [
        ("2 kg in the back one", "back"),
        ("2 kg of peel in back", "back"),
        ("drained the back", "back"),
        ("sealed the front bin", "front"),
        ("fed the front 2 kg of peel", "front"),
    ],
)
def test_a_bin_is_called_by_its_side(text: str, bin: str) -> None:
    told = acts(text, bins=("front", "back"), in_room=True)
    assert [getattr(act, "bin", None) for act in told] == [bin]


@pytest.mark.parametrize(
    "text",
    [
        "put 2 kg of rice back in the fridge",
        "2 kg of peel in front of the door",
        "we're back from the market with 2 kg of apples",
        "the dog's at the back of the garden, 2 kg heavier",
    ],
)
def test_a_side_is_said_of_much_else(text: str) -> None:
    told = acts(text, bins=("front", "back"), in_room=True)
    assert [act for act in told if getattr(act, "bin", None)] == []
