"""Bins begun with their sizes, several in one message; packs, and what each of them holds."""

import pytest

from handlers.reading.acts import Drain, Layer, Open
from handlers.reading.plans import read
from tests.reading.context import acts, group


@pytest.mark.parametrize(
    ("text", "sizes"),
    [
        ("opened the larder bin, 15 litres, and the gate bin, 25 litres", (15, 25)),
        ("started larder (15 l) and gate (25 l)", (15, 25)),
        ("new bins: larder 15 L, gate 25 L", (15, 25)),
        ("hello all, two bins at ours: larder 15 L, gate 25 L", (15, 25)),
        ("our bins are the larder one (15 l) and the gate one (25 l)", (15, 25)),
        ("we keep two pails, larder is 15 L and gate is 25 L", (15, 25)),
    ],
)
def test_each_bin_is_opened_with_its_size(text: str, sizes: tuple[int, int]) -> None:
    told = acts(text, bins=())
    assert all(isinstance(act, Open) for act in told)
    assert [(act.bin, act.capacity_l) for act in told if isinstance(act, Open)] == [
        ("larder", sizes[0]),
        ("gate", sizes[1]),
    ]


def test_a_fruit_that_is_called_a_bin_is_one() -> None:
    told = acts("we have these bins: gate is 20 L, the pear one is 25 L, hall is 8 L", bins=())
    sizes = {act.bin: act.capacity_l for act in told if isinstance(act, Open)}
    assert sizes == {"gate": 20, "pear": 25, "hall": 8}


def test_known_bins_of_one_size_are_each_opened() -> None:
    told = acts("opened larder and gate this morning, both 20 L", bins=("larder", "gate"))
    assert {(a.bin, a.capacity_l) for a in told if isinstance(a, Open)} == {
        ("larder", 20),
        ("gate", 20),
    }


@pytest.mark.parametrize(
    "text",
    [
        "Opened two ten-litre pails tonight, Larch and Rowan.",
        "Opened Larch and Rowan, 10 L each",
        "two new bins opened, Larch and Rowan, both 10 L",
    ],
)
def test_bins_named_in_a_row_are_of_one_size(text: str) -> None:
    told = acts(text, bins=())
    assert [(a.bin, a.capacity_l) for a in told if isinstance(a, Open)] == [
        ("Larch", 10),
        ("Rowan", 10),
    ]


@pytest.mark.parametrize(
    "text",
    ["Opened Larch and Ruth brought cake, 10 L", "Opened Larch, 10 L, and Sunday we sing"],
)
def test_who_else_is_named_is_no_bin(text: str) -> None:
    assert [a.bin for a in acts(text, bins=()) if isinstance(a, Open)] == ["Larch"]


def test_what_is_asked_about_is_no_size() -> None:
    told = acts("new pail by the door, its a 20 L one, how much bran for the first 4 L?", bins=())
    assert [(a.bin, a.capacity_l) for a in told if isinstance(a, Open)] == [(None, 20)]


def test_whose_each_bin_is_stands_behind_its_size() -> None:
    told = acts("opened the larder bin, 25 L, mine, and the gate bin, 30 L, shared", bins=())
    assert [(a.bin, a.shared) for a in told if isinstance(a, Open)] == [
        ("larder", False),
        ("gate", True),
    ]


@pytest.mark.parametrize(
    "text",
    [
        "the council bins are 240 L for waste and 140 L for paper",
        "my tubs: cherry 2 l, vanilla 2 l",
        "planters, 20 L and 12 L, are by the gate",
    ],
)
def test_other_volumes_open_nothing(text: str) -> None:
    assert not any(isinstance(act, Open) and act.capacity_l for act in acts(text, bins=()))


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("started gate over, 1 kg", 1),
        ("started the gate bin over: 500 g bread", 0.5),
        ("started gate again with 1 kg", 1),
        ("started gate, 1 kg in so far", 1),
        ("opened gate again, 1 kg in", 1),
        ("we started the gate bin afresh today, 1 kg of rice and 500 g of peel", 1.5),
    ],
)
def test_a_bin_begun_anew_has_its_first_layer(text: str, kg: float) -> None:
    opened, layer = acts(text, bins=("larder", "gate"), in_room=True)
    assert isinstance(opened, Open)
    assert isinstance(layer, Layer)
    assert (opened.bin, layer.bin, layer.mass_kg) == ("gate", "gate", kg)


@pytest.mark.parametrize(
    "text",
    [
        "started gate over",
        "started gate over, 1 kg to go",
        "started gate over with 1 kg of starter",
        "started gate and sealed larder, 1 kg",
        "did you start gate over with 1 kg?",
        "opened gate, it is 1 kg heavy",
    ],
)
def test_what_else_is_weighed_is_no_first_layer(text: str) -> None:
    told = acts(text, bins=("larder", "gate"), in_room=True)
    assert not any(isinstance(act, Layer) for act in told)


def test_what_was_drawn_from_another_bin_is_not_its_size() -> None:
    told = acts("opened the larder bin 20 L, drained gate 2 L", bins=("gate",))
    assert [(a.bin, a.capacity_l) for a in told if isinstance(a, Open)] == [("larder", 20)]
    assert [(a.bin, a.volume_l) for a in told if isinstance(a, Drain)] == [("gate", 2)]


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("3 sacks of peel, 2 kg apiece, went into the gate bin", 6),
        ("put 2 tubs of rice in the gate bin, each 500 g", 1),
        ("2 buckets of grass and peel, 5 kg each, into the gate bin", 10),
        ("two caddies of peelings and tea bags in the gate bin, 3 kg each", 6),
        ("4 loaves, 800 g each, into the gate bin", 3.2),
        ("added 500 g each of leeks and rice to the gate bin", 1),
        ("2 buckets of crusts, 5 kg in all, into the gate bin", 5),
    ],
)
def test_what_each_holds_is_counted_once(text: str, kg: float) -> None:
    assert [a.mass_kg for a in acts(text, bins=("gate",)) if isinstance(a, Layer)] == [
        pytest.approx(kg)
    ]


@pytest.mark.parametrize(
    "text",
    ["the shed bin is actually 25 litres", "the shed bin is 25 L not 20", "shed bin is 25 L"],
)
def test_a_size_put_right_is_that_bins(text: str) -> None:
    [told] = read(text, group(in_room=True))
    assert isinstance(told, Open)
    assert (told.bin, told.capacity_l) == ("shed", 25)


@pytest.mark.parametrize(
    ("text", "shared"),
    [
        ("blue bin is 20 litres, shared. balcony bin is 12 L", [True, None]),
        ("blue bin is 20 litres. balcony bin is 12 L, shared", [None, True]),
        ("blue bin is 20 litres. shared meals are on Friday", [None]),
        ("blue bin is 20 litres, mine", [False]),
    ],
)
def test_whose_a_bin_is_stands_behind_its_size(text: str, shared: list[bool | None]) -> None:
    found = read(text, group(in_room=True, bins=()))
    assert [act.shared for act in found if isinstance(act, Open)] == shared


@pytest.mark.parametrize(
    ("text", "bins"),
    [
        ("mine's the blue one, 15 L", ("blue", "green")),
        ("ours is the blue one, about 15 L", ("blue", "green")),
        ("mine is the blue bin, 15 litres", ("blue", "green")),
        ("mine is the blue bin, 15 litres", ()),
        ("my bin is the blue 15 L one", ("blue", "green")),
        ("my bin is the blue 15 L one", ()),
        ("Our bucket is the blue one (15 L)", ()),
    ],
)
def test_a_bin_told_to_be_somebodys_has_its_size(text: str, bins: tuple[str, ...]) -> None:
    told = acts(text, bins=bins)
    assert [(type(a), getattr(a, "bin", None)) for a in told] == [(Open, "blue")]
    assert [a.capacity_l for a in told if isinstance(a, Open)] == [15]


@pytest.mark.parametrize(
    "text",
    [
        "is mine the blue one, 15 L?",
        "my bin is the blue one, 15 L of peelings",
        "mine is the blue one, added 15 L",
        "mine is the blue car, 15 L of petrol",
        "mine is the blue one with 15 L in it",
        "mine is the blue one, 15 L in it",
        "mine is the blue or the green one, 15 L",
        "my bin is blue, drained 2 L",
    ],
)
def test_what_else_is_told_of_somebodys_bin_is_no_size(text: str) -> None:
    assert not any(isinstance(act, Open) for act in acts(text, bins=("blue", "green")))


@pytest.mark.parametrize(
    "text",
    [
        "our bins: larder 15 L, gate 25 L",
        "the buckets are larder 15 L and gate 25 L",
        "our bins: larder (15 L), gate (25 L)",
    ],
)
def test_known_bins_are_listed_with_their_sizes(text: str) -> None:
    told = acts(text, bins=("larder", "gate"))
    assert [(a.bin, a.capacity_l) for a in told if isinstance(a, Open)] == [
        ("larder", 15),
        ("gate", 25),
    ]
    assert len(told) == 2


@pytest.mark.parametrize(
    "text",
    [
        "we have a blue bin (15 L) and a green bin (25 L)",
        "we've got the blue bin, 15 L, and the green one, 25 L",
        "we keep a blue bucket of 15 L and a green bucket of 25 L",
        "I have the blue bin at 15 L and green at 25 L",
    ],
)
def test_bins_that_we_have_are_told_with_their_sizes(text: str) -> None:
    told = acts(text, bins=("blue", "green"), in_room=True)
    assert [(a.bin, a.capacity_l) for a in told if isinstance(a, Open)] == [
        ("blue", 15),
        ("green", 25),
    ]
    assert len(told) == 2


@pytest.mark.parametrize(
    "text",
    [
        "we got blue 3 L and green 2 L",
        "we have 3 L in blue and 2 L in green",
        "we have drained blue 3 L and green 2 L",
        "we have the blue bin, 15 L full, and green bin, 10 L",
        "do we have a blue bin (15 L) and a green bin (25 L)?",
    ],
)
def test_what_we_have_of_the_bins_is_no_size(text: str) -> None:
    told = acts(text, bins=("blue", "green"), in_room=True)
    assert not any(isinstance(act, Open) for act in told)


@pytest.mark.parametrize(
    ("text", "names", "litres"),
    [
        ("two buckets, the green one and the one on the porch, both 5 L", {"green", "porch"}, 5),
        ("we've got 2 tubs: a grey and a black one, 12 L each", {"grey", "black"}, 12),
        ("two bins: kitchen and garage, 15 L each", {"kitchen", "garage"}, 15),
        (
            "we have three buckets: red, white and the hall one, all 15 L",
            {"red", "white", "hall"},
            15,
        ),
        ("two bins, Dot and Rex, both 20 L", {"Dot", "Rex"}, 20),
    ],
)
def test_bins_of_one_size_are_listed_before_it(text: str, names: set[str], litres: float) -> None:
    told = acts(text, bins=(), in_room=True)
    found = {(a.bin, a.capacity_l) for a in told if isinstance(a, Open)}
    assert found == {(name, litres) for name in names}
    assert len(told) == len(names)


@pytest.mark.parametrize(
    "text",
    [
        "two tubs, cherry and vanilla, 2 L each",
        "two buckets, one for me and one for Ruth, both 20 L",
        "two buckets of scraps, the green one and the blue one, both 5 L",
        "put in two buckets, rice and beans, 5 L each",
        "two pots, red and blue, 5 L each",
        "three buckets, red and blue, 5 L each",
    ],
)
def test_what_else_is_listed_before_a_size_is_no_bin(text: str) -> None:
    told = acts(text, bins=(), in_room=True)
    assert not any(isinstance(act, Open) and act.bin for act in told)


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("third one, the white one, 20 L", "white"),
        ("third bin: white, 20 L", "white"),
        ("we've got a third one, the white one, 20 L", "white"),
        ("and a second one, white, 20 L", "white"),
        ("the second one is the porch bin, 20 L", "porch"),
        ("second bin is Dot, 20 L", "Dot"),
    ],
)
@pytest.mark.parametrize("bins", [(), ("blue", "green"), ("blue", "white")])
def test_one_bin_more_has_its_name_and_size(text: str, name: str, bins: tuple[str, ...]) -> None:
    told = acts(text, bins=bins, in_room=True)
    assert [(type(a), getattr(a, "bin", None)) for a in told] == [(Open, name)]
    assert [a.capacity_l for a in told if isinstance(a, Open)] == [20]


@pytest.mark.parametrize(
    "text",
    [
        "second one is full, 20 L",
        "second one is rice, 20 L",
        "second one is Ruth, 20 L",
        "the second one, peelings, 20 L",
        "second one is white, 20 L?",
        "second one is white, 2 kg",
    ],
)
def test_what_else_a_second_one_is_names_no_bin(text: str) -> None:
    told = acts(text, bins=("blue",), in_room=True)
    assert not any(isinstance(act, Open) and act.bin for act in told)


@pytest.mark.parametrize(
    "text",
    [
        "our bins: larder drained 3 L, gate 2 L",
        "our bins gave 3 L from larder and 2 L from gate",
        "our bins: larder 3 L of peelings, gate 2 L of bread",
        "our bins: larder 15 L, gate 25 L?",
    ],
)
def test_what_went_in_or_out_of_listed_bins_is_no_size(text: str) -> None:
    assert not any(isinstance(act, Open) for act in acts(text, bins=("larder", "gate")))
