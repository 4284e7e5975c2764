"""The first list of bins: all of them opened, with size, keeper and for whom each is."""

import pytest

from handlers.reading.acts import Drain, Layer, Open, Seal, Unsure
from tests.reading.context import acts


def _opened(text: str, **changes: object) -> list[tuple[str | None, float | None]]:
    changes = {"bins": (), "in_room": True, **changes}
    return [(a.bin, a.capacity_l) for a in acts(text, **changes) if isinstance(a, Open)]


@pytest.mark.parametrize(
    ("text", "bins"),
    [
        (
            "We have four bins: the big blue one is 25 litres, two small grey ones of 10 litres "
            "each, and a red caddy that stands in the tea room.",
            [("blue", 25), ("grey 1", 10), ("grey 2", 10), ("red", None)],
        ),
        (
            "we have six bins, numbered 1 to 6, 10 liters each",
            [(f"bin {number}", 10) for number in range(1, 7)],
        ),
        ("we have bins 1, 2 and 3, 10 L each", [("bin 1", 10), ("bin 2", 10), ("bin 3", 10)]),
        ("we've got 2 buckets, 1 to 2, 15 L each", [("bucket 1", 15), ("bucket 2", 15)]),
        ("bins 1 and 2 are 10 L, bin 3 is 20 L", [("bin 1", 10), ("bin 2", 10), ("bin 3", 20)]),
        (
            "we share three buckets, the hall one, the yard one and a blue one. hall and yard 15 "
            "litres, blue 60",
            [("hall", 15), ("yard", 15), ("blue", 60)],
        ),
        (
            "we have two bins, the hall one, 15 L, and a barrel, 60 L",
            [("hall", 15), ("barrel", 60)],
        ),
        ("bins: hall 15 L, barrel 60", [("hall", 15), ("barrel", 60)]),
        ("bins: drum 1 60 L, drum 2 30 L", [("drum 1", 60), ("drum 2", 30)]),
        ("bins: hall 15 L, drum 60 L", [("hall", 15), ("drum", 60)]),
        ("we have two bins: hall and yard. hall and yard 12 L", [("hall", 12), ("yard", 12)]),
        (
            "we have three bins: hall, yard and blue. hall, yard and blue are 20 L",
            [("hall", 20), ("yard", 20), ("blue", 20)],
        ),
        (
            "we have four bins: hall, yard, red and blue. hall, yard and red 20 L, blue 60 L",
            [("hall", 20), ("yard", 20), ("red", 20), ("blue", 60)],
        ),
        ("our bins: hall and yard 15 L, blue 60 L", [("hall", 15), ("yard", 15), ("blue", 60)]),
        ("bins: hall 10 L, yard and blue 60 L", [("hall", 10), ("yard", 60), ("blue", 60)]),
        ("opened the yard bin btw, 20 L", [("yard", 20)]),
        (
            "three bins: West, East and the Old One (12 l). West and East are 18 l",
            [("West", 18), ("East", 18), ("Old One", 12)],
        ),
        (
            "three bins: blue, grey and red. grey and red are 20 l, blue is 12",
            [("blue", 12), ("grey", 20), ("red", 20)],
        ),
        ("opened the yard bin finally, 20 L, for all", [("yard", 20)]),
        (
            "we've got 3 pails: Larch, Old Rowan and Shed. They're all 15 L except Old Rowan, "
            "he's 30",
            [("Larch", 15), ("Old Rowan", 30), ("Shed", 15)],
        ),
        (
            "our bins are called Larch, Old Rowan and Miss Elm, 15 litres each",
            [("Larch", 15), ("Old Rowan", 15), ("Miss Elm", 15)],
        ),
        ("opened the grey bin by the gate, 10 L", [("grey", 10)]),
        ("set up Miss Elm (15 L) and The Baron (20 L)", [("Miss Elm", 15), ("The Baron", 20)]),
        (
            "there are two bins, the blue one holds 25 litres and the grey one 10",
            [("blue", 25), ("grey", 10)],
        ),
        ("opened two grey bins, 10 L each", [("grey 1", 10), ("grey 2", 10)]),
        ("we've got two bins, blue and grey", [("blue", None), ("grey", None)]),
        ("two bins: blue (25) and grey (10)", [("blue", 25), ("grey", 10)]),
        (
            "we have two bins, one on the 3rd floor landing (20 litres) and one on the 7th floor, "
            "also 20",
            [("3rd floor", 20), ("7th floor", 20)],
        ),
        ("opened the 3rd floor bin, 20 L", [("3rd floor", 20)]),
        ("opened flat 2's bin, 20 L", [("flat 2", 20)]),
        ('add bin "grey" 12L', [("grey", 12)]),
        ("one bin for every floor: red and Larch, both 12 L", [("red", 12), ("Larch", 12)]),
        ("ines = bin 1, ruth = bin 2, all 20 L", [("bin 1", 20), ("bin 2", 20)]),
        ("our third bin is grey and takes 25 litres", [("grey", 25)]),
        ("one more, purple, 8 litres", [("purple", 8)]),
        ("drei Eimer: blue 15 L, grey 10 L, und balcony 20 L",
         [("blue", 15), ("grey", 10), ("balcony", 20)]),
        ("we have a big blue bin, 30 L, and a small blue bin, 12 L",
         [("big blue", 30), ("small blue", 12)]),
        ("we've a blue bin (25 L), a grey bin (10 L) and a red caddy, no idea how big",
         [("blue", 25), ("grey", 10), ("red", None)]),
        ("here is our gear: bin A 20 L, bin B 15 L", [("bin A", 20), ("bin B", 15)]),
        ("opened a new one w ruth 2.0 my flatmate, it's called teal, 4 gal pail",
         [("teal", pytest.approx(18.2, abs=0.1))]),
    ],
)  # fmt: skip
def test_every_bin_of_a_list_is_opened(text: str, bins: list[tuple[str, float | None]]) -> None:
    assert _opened(text) == bins


@pytest.mark.parametrize(
    "text",
    [
        "added 5 L to blue and 6 L to grey",
        "5 L in the blue bin, 6 L in the grey bin",
        "blue bin 5 L in, grey bin 4 L in",
        "got 4 L blue and 5 L grey",
        "opened blue and grey",
        "blue and grey are both full",
        "we have two bins to drain",
        "our bins are blue and grey",
        "drained bins 1, 2 and 3",
        "bins 1, 2 and 3 got 2 kg each",
        "the blue bin and the grey bin are both mine",
        "are there two bins, blue 20 L and grey 10 L?",
        "we have grey, white and blue bins at school",
    ],
)
def test_what_else_is_said_of_known_bins_opens_none(text: str) -> None:
    assert _opened(text, bins=("blue", "grey")) == []


@pytest.mark.parametrize(
    "text",
    [
        "set up chairs in the hall and the yard",
        "Cousin Ada in Kent opened a new bin, sixty litres, called it Larch",
        "two buckets of rice, Larch and Rowan",
    ],
)
def test_what_is_no_list_of_ours_opens_none(text: str) -> None:
    assert _opened(text) == []


@pytest.mark.parametrize(
    ("text", "keepers"),
    [
        ("opened the blue bin, 20 L, Ines looks after it", ["ines"]),
        ("opened the blue bin, 20 L. Keeper: Ines", ["ines"]),
        ("the yard bin is 15 L and belongs to Ines", ["ines"]),
        ("opened the blue bin, 9 L, for Ines", ["ines"]),
        ("the blue bin, 12 L (Ines's)", ["ines"]),
        ("register the blue bin (15 L) under Ines's name", ["ines"]),
        ("bins: blue 20 L Ines, grey 12 L Ruth", ["ines", "ruth"]),
        ("our bins: blue (Ines, 12 L), grey (Ruth, 15 L)", ["ines", "ruth"]),
        ("Ines has two bins, blue and grey, 12 L each", ["ines", "ines"]),
        ("one more bin, purple, 8 litres, Zora has it", ["Zora"]),
        ("We have a 20 litre bin each: flat 1 is me, flat 2 is Ines, flat 3 Ruth",
         [None, "ines", "ruth"]),
        ("opened the blue bin, 20 L, and the grey bin, 12 L", [None, None]),
        ("one bin per stair: ines + kofi = crock A, ruth = crock B, 12 L each", ["ines", "ruth"]),
        ("Kofi & Ines: blue bin 12 L, Ruth: grey bin 20 L", ["kofi", "ruth"]),
        ("two pails: Ruth and Ines have the blue one, Kofi the grey one, all 9 L",
         ["ruth", "kofi"]),
        ("bin A = ines + kofi, bin B = ruth, 15 L each", ["ines", "ruth"]),
    ],
)  # fmt: skip
def test_who_keeps_each_is_told_with_it(text: str, keepers: list[str | None]) -> None:
    told = acts(text, bins=(), in_room=True)
    assert [act.member for act in told if isinstance(act, Open)] == keepers


def test_what_is_for_all_is_told_of_both() -> None:
    told = acts("opened the blue bin, 15 L, and the grey bin, 12 L, both shared", bins=())
    assert [act.shared for act in told if isinstance(act, Open)] == [True, True]


def test_what_is_for_all_may_be_one_of_them() -> None:
    told = acts("opened the blue bin, 25 L, for all, and the grey bin, 12 L", bins=())
    assert [act.shared for act in told if isinstance(act, Open)] == [True, None]


def test_one_more_of_a_colour_has_a_number() -> None:
    assert _opened("opened another blue bin, 12 L", bins=("blue",)) == [("blue 2", 12)]


def test_the_sizes_of_known_bins_share_a_unit() -> None:
    bins = ("blue", "grey")
    assert _opened("blue's 20 litres and grey's 12", bins=bins) == [("blue", 20), ("grey", 12)]


@pytest.mark.parametrize(
    "text",
    [
        "opened the blue bin, 16 L, on 1 June, 5 kg in it so far",
        "my bin is blue, 16 litres, started on 1 June, 5 kg in it so far",
    ],
)
def test_what_is_in_a_bin_by_now_is_its_first_layer(text: str) -> None:
    opened, layer = acts(text, bins=("bin 1",), in_room=True)
    assert isinstance(opened, Open)
    assert isinstance(layer, Layer)
    assert (opened.bin, layer.bin, layer.mass_kg) == ("blue", "blue", 5)


@pytest.mark.parametrize(
    "text",
    [
        "opened the blue bin, 20 L, half full already",
        "we've a blue bin, 20 L, three quarters full",
        "joining in as of today! I've brought a bin, the blue one, 20 L, a third full, mostly veg",
    ],
)
def test_how_much_is_in_a_part_full_bin_is_asked(text: str) -> None:
    opened, asked = acts(text, bins=(), in_room=True)
    assert isinstance(opened, Open)
    assert isinstance(asked, Unsure)
    assert opened.capacity_l == 20
    assert [act.bin for act in asked.guess if isinstance(act, Layer)] == ["blue"]


@pytest.mark.parametrize(
    ("text", "bin", "keeper"),
    [
        ("my neighbour Zora is joining, she's got her own bucket, 15 L, named Otis", "Otis",
         "Zora"),
        ("Hi all, I've just moved in to flat 31. I've my own bin, it's blue, 16 litres", "blue 2",
         None),
        ("I've my own bin, it's grey, 16 litres", "grey", None),
    ],
)  # fmt: skip
def test_a_newcomers_bin_is_their_own(text: str, bin: str, keeper: str | None) -> None:
    told = acts(text, bins=("blue",), in_room=True)
    assert [(a.bin, a.member) for a in told if isinstance(a, Open)] == [(bin, keeper)]


def test_half_full_is_no_half_litre() -> None:
    told = acts("our blue bin is 20 L and half full", bins=("blue",), in_room=True)
    assert not any(isinstance(act, Drain) for act in told)


def test_a_bin_may_be_sealed_before_it_is_told() -> None:
    opened, sealed = acts(
        "we already have a sealed bin, the blue one, 20 L, sealed on 8 June", bins=(), in_room=True
    )
    assert isinstance(opened, Open)
    assert isinstance(sealed, Seal)
    assert (sealed.bin, sealed.on) == ("blue", opened.on)


@pytest.mark.parametrize(
    "text",
    [
        "our bins are Beech, Alder and the village hall, all 25 l",
        "bins here: Beech 25 l, Alder 25 l, village hall 25 l",
    ],
)
def test_a_place_of_two_words_is_a_name_in_a_list(text: str) -> None:
    opened = acts(text, bins=(), in_room=True)
    assert [act.bin for act in opened if isinstance(act, Open)] == [
        "Beech",
        "Alder",
        "village hall",
    ]


@pytest.mark.parametrize(
    ("text", "count", "caught"),
    [
        ("we've three bins, Larch, Rowan and Elm. Larch's 12 L, the other two 20", 3, ["Larch"]),
        ("we have three pails, a 20 L blue bin under the stairs, and two odd things", 3, ["blue"]),
    ],
)
def test_bins_that_were_counted_and_not_caught_are_asked_for(
    text: str, count: int, caught: list[str]
) -> None:
    [asked] = acts(text, bins=(), in_room=True)
    assert isinstance(asked, Unsure)
    assert asked.count == count
    assert [act.bin for act in asked.guess if isinstance(act, Open)] == caught


@pytest.mark.parametrize(
    "text", ["we have two bins to drain", "opened two buckets of paint, 5 L each"]
)
def test_other_bins_that_are_counted_are_not_asked_for(text: str) -> None:
    assert not any(isinstance(act, Unsure) for act in acts(text, bins=(), in_room=True))


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("opened another blue bin in the yard, 15 L", "yard blue"),
        ("a second blue bin by the stairs, 15 L", "stairs blue"),
        ("another blue bin, 15 L", "blue 2"),
    ],
)
def test_another_of_one_colour_is_told_by_where_it_stands(text: str, name: str) -> None:
    last = Layer(mass_kg=2.0, bin="blue", materials={"mixed": 1.0})
    for after_bot in (False, True):
        assert _opened(text, bins=("blue",), last=last, after_bot=after_bot) == [(name, 15)]


@pytest.mark.parametrize(
    ("bins", "text", "meant"),
    [
        (("stairs", "yard"), "put 500 g of peel in the blue bin in the yard", ["yard"]),
        (("stairs", "yard"), "500 g in the blue one by the stairs", ["stairs"]),
        (("stairs", "yard"), "drained the blue bin in the yard", ["yard"]),
        (("blue", "yard blue"), "put 500 g of peel in the blue bin in the yard", ["yard blue"]),
        (("blue", "yard blue"), "put 500 g of peel in the blue bin", ["blue"]),
        (("blue", "yard"), "drained the blue bin in the yard", ["blue"]),
        (("blue", "yard"), "500 g in the blue bin, in the yard 300 g", ["blue", "yard"]),
        (("blue", "yard"), "drained the blue bin and the yard bin", ["blue", "yard"]),
        (("blue", "yard"), "500 g in the blue bin by the yard bin", ["blue"]),
    ],
)
def test_a_place_behind_a_bin_tells_which_it_is(
    bins: tuple[str, ...], text: str, meant: list[str]
) -> None:
    told = [a for a in acts(text, bins=bins, in_room=True) if isinstance(a, Layer | Drain)]
    assert [one.bin for one in told] == meant


@pytest.mark.parametrize(
    ("text", "bins"),
    [
        ("we have two bins, A1 and A2, 20 L each", [("A1", 20), ("A2", 20)]),
        ("our bins are A and B", [("bin A", None), ("bin B", None)]),
        ("we've two bins called B and C", [("bin B", None), ("bin C", None)]),
        ("three buckets labelled A, B, C, 12 L each", [(f"bucket {x}", 12) for x in "ABC"]),
        ("bins A and B are ours, 20 L each", [("bin A", 20), ("bin B", 20)]),
        ("ours is the green one, 18 L, mine's the black one, 12", [("green", 18), ("black", 12)]),
        ("ground floor 15 L, top floor 20 L", [("ground floor", 15), ("top floor", 20)]),
        ("the hall one is 10 litres and the attic one 20", [("hall", 10), ("attic", 20)]),
        ("I've got a front bin and a back bin", [("front", None), ("back", None)]),
        ("right, we have two bins: left and right, 15 L each", [("left", 15), ("right", 15)]),
    ],
)
def test_bins_are_told_apart_by_letters_and_by_where_they_stand(
    text: str, bins: list[tuple[str, float | None]]
) -> None:
    assert _opened(text) == bins


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("I have one bucket only", None),
        ("I have one bucket only, 15 L", 15),
        ("only one bin so far, 20 L", 20),
        ("just one 15 litre bucket", 15),
        ("got one bucket, about 18 litres", 18),
        ("we've just the one caddy so far, it's 8 L", 8),
    ],
)
def test_the_only_bin_needs_no_name(text: str, litres: float | None) -> None:
    assert _opened(text) == [(None, litres)]


@pytest.mark.parametrize(
    "text",
    [
        "I have one bucket of paint",
        "got one bucket of paint, 5 L",
        "only one bucket of scraps, 15 L",
        "our bins are red and blue",
        "our bins are collected Monday and Thursday",
        "we have bins in the yard and the shed",
        "the front bin and the back bin are full",
        "have you got a front bin and a back bin?",
        "the blue one is 2 litres and the red one is 5",
        "the other one was 15 L",
    ],
)
def test_what_only_sounds_like_bins_that_are_had_opens_none(text: str) -> None:
    assert _opened(text) == []
