"""The name and the size of a new bin, wherever the message says them, and bins in a list."""

import pytest

from handlers.reading.actjson import as_json
from handlers.reading.acts import Amend, Bury, Drain, Layer, Open, Retract, Seal, Set
from handlers.reading.plans import read
from tests.reading.context import WEDNESDAY, acts, group


@pytest.mark.parametrize(
    "text",
    [
        "started a new bin, 30 litres, blue. We call him Hector. It is for everybody.",
        "new bucket by the back step, 15 litres, going by Hector",
        "a bin has been begun in the vestry, 15 litres, to be known as Hector",
        "new bin under the stairs, 60 litres, for the whole street. name's Hector",
        "Hector's started, 15 L, same shelf",
        "I started a new one yesterday, it lives under the sink and they voted to call it Hector, "
        "15 L",
        "new year new bin! small one of 8 litres, name Hector",
        "We started a brand new bin, I am calling it Hector since it is so big. It holds 60 L.",
        "opened a new bin, 30 L, name will be Hector",
        "opened a 15 L tub and baptised it Hector",
        "new bin, 8 litres, nickname Hector",
        "New bin! 30 litres. Meet Hector.",
        "Fresh bucket by the door. Name of Hector. 30 litres",
        "adding a bin, 60 litres. Name's Hector",
        "Hector is new, 30 L",
        "new tub on the go, 15 L, painted Hector on the side",
        "set up a 30 litre by the bike racks, name on the lid is Hector",
        "we named the new one Hector since it growls, 15 litres",
        "opened a new pail for the jumble sale, 15 litres, lives in the crypt, my aunt calls it "
        "Hector",
        "New bin alert: the tall one by the pump = Hector. 30 litres",
        "Had the new drum christened before tea. 60 litres, name of Hector",
    ],
)
def test_a_new_bin_has_the_name_it_is_given(text: str) -> None:
    opened = [act for act in acts(text) if isinstance(act, Open)]
    assert [act.bin for act in opened] == ["Hector"]
    assert opened[0].capacity_l in (8, 15, 30, 60)


@pytest.mark.parametrize(
    ("text", "shared"),
    [
        ("New bin, 20 L, called Hector. Anyone may use it.", True),
        ("New bin, 20 L, called Hector, for the night staff to share", True),
        ("New bin, 20 L, called Hector. It is for all the plots.", True),
        ("New bin, 20 L, called Hector, community property", True),
        ("new 20 L drum, name: Hector. everybody's welcome", True),
        ("started a 20 L bin called Hector, para todos", True),
        ("new 20 l tub. name Hector. communal", True),
        ("started a 20 L bin called Hector. Everyone else has their own", None),
        ("started a 20 L bin called Hector, mine alone", None),
    ],
)
def test_a_new_bin_may_be_for_all(text: str, shared: bool | None) -> None:
    assert [act.shared for act in acts(text) if isinstance(act, Open)] == [shared]


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("new pail on the dock, calling er Lil Whiffer, 20 l", "Lil Whiffer"),
        ("started a new 20 l bin, callin it Wee Jimmy", "Wee Jimmy"),
        ("opened a new one, named it Rot-n-Roll. 20 l", "Rot-n-Roll"),
        ("new bin started, 20 l, we called her Ivan the Terrible", "Ivan the Terrible"),
        ("new bin, 20 l, Bea's old brew tub. Calling it Hector", "Hector"),
    ],
)
def test_a_name_is_kept_as_it_is_written(text: str, name: str) -> None:
    assert [act.bin for act in acts(text) if isinstance(act, Open)] == [name]


def test_a_new_bin_is_told_apart_from_one_of_its_name() -> None:
    opened = acts("new 15 l bucket for the landing, we call it small grace", bins=("grace",))
    assert [act.bin for act in opened if isinstance(act, Open)] == ["small grace"]


@pytest.mark.parametrize(
    ("text", "name"), [("opened attic, 20 litres", "attic"), ("opened the green, 12 L", "green")]
)
def test_a_room_or_a_colour_may_be_its_name(text: str, name: str) -> None:
    (opened,) = acts(text)
    assert isinstance(opened, Open)
    assert opened.bin == name


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("Two sealed today: bin 3 and the shed", Seal),
        ("sealed bin 3 and the shed", Seal),
        ("drained bin 3 and the shed", Drain),
    ],
)
def test_each_bin_of_a_list_has_its_record(text: str, kind: type) -> None:
    told = [act for act in acts(text) if isinstance(act, kind)]
    assert sorted(str(as_json(act)["bin"]) for act in told) == ["bin 3", "shed"]


def test_the_bin_that_was_meant() -> None:
    (act,) = acts("I said the shed and I meant big blue, they look alike")
    assert isinstance(act, Amend)
    assert act.bin == "big blue"


@pytest.mark.parametrize(
    ("text", "kg"),
    [("typo! 12 ounces, I dont own 12 pounds of anything", 0.340), ("2,3 kg, not 3,2", 2.3)],
)
def test_what_is_denied_is_no_correction(text: str, kg: float) -> None:
    (act,) = acts(text)
    assert isinstance(act, Amend)
    assert act.mass_kg == pytest.approx(kg, rel=0.01)


def test_weeks_of_fermenting_are_set_in_days() -> None:
    (act,) = acts("bot, set the fermenting time to 3 weeks")
    assert isinstance(act, Set)
    assert (act.what, act.value) == ("ferment days", "21")


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("added 2 kg to the 🦄 bin", "🦄"),
        ("added 2 kg to the 🐙🐙 bin", "🐙🐙"),
        ("added 2 kg to the 🐙 bin", "🐙"),
        ("added 2 kg to the !!! bin", "!!!"),
        ('added 2 kg to the "big one" bin', "big one"),
        ("added 2 kg to the evil. com bin", "evil. com"),
        ("added 2 kg to the B2 bin", "B2"),
        ("put 2 kg of peels in the chook bin", "chook"),
        ("put 2 kg of chicken in the chicken bin", "chicken"),
        ("added 2 kg to the coffee bin", "coffee"),
        ("added 2 kg to the zanzibar bin", "zanzibar"),
    ],
)
@pytest.mark.parametrize("bins", [(), ("shed", "🐙", "🦔")])
def test_an_odd_name_is_no_other_bin(text: str, name: str, bins: tuple[str, ...]) -> None:
    (layer,) = acts(text, bins=bins, in_room=True)
    assert isinstance(layer, Layer)
    assert (layer.mass_kg, layer.bin) == (2, name)


def test_a_picture_behind_a_name_is_no_bin() -> None:
    bins = ("shed", "🐙")
    (layer,) = acts("added 2 kg to the shed 🐙", bins=bins, in_room=True)
    assert isinstance(layer, Layer)
    assert layer.bin == "shed"
    (layer,) = acts("added 2 kg to 🐙", bins=bins, in_room=True)
    assert isinstance(layer, Layer)
    assert layer.bin == "🐙"


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("opened a bin called 🦄, 20 L", "🦄"),
        ("opened the 🦄 bin, 20 L", "🦄"),
        ("opened a bin called <script>alert(1)</script>, 20 L", "script"),
        ("opened a bin called Dot 🎉, 20 L", "Dot"),
        ("opened the tall one, 20 L", "tall"),
        ("started my small one today, 20 L", "small"),
    ],
)
def test_an_odd_name_is_given(text: str, name: str) -> None:
    (opened,) = acts(text, in_room=True)
    assert isinstance(opened, Open)
    assert (opened.bin, opened.capacity_l) == (name, 20)


@pytest.mark.parametrize(
    ("text", "bin", "litres", "kg"),
    [
        ("the shed is 30 L and I added 12 kg to the shed bin", "shed", 30, 12),
        ("added 2 kg to the blue bin, blue bin is 30 L", "blue", 30, 2),
        ("bin 3 holds 18 litres, added 3 kg of peel", "bin 3", 18, 3),
        ("the shed bin is 30 L", "shed", 30, None),
    ],
)
def test_a_size_is_told_beside_a_record(
    text: str, bin: str, litres: float, kg: float | None
) -> None:
    opened, *layers = read(text, group(in_room=True))
    assert isinstance(opened, Open)
    assert (opened.bin, opened.capacity_l) == (bin, litres)
    assert [(a.bin, a.mass_kg) for a in layers if isinstance(a, Layer)] == (
        [(bin, kg)] if kg else []
    )
    assert len(layers) == bool(kg)


@pytest.mark.parametrize(
    "text",
    [
        "moved everything from bin 3 to the new green bin 30 L",
        "tipped it all from the shed into a new green bin, 30 L",
    ],
)
def test_the_new_bin_is_the_one_that_is_moved_into(text: str) -> None:
    opened = [(act.bin, act.capacity_l) for act in acts(text) if isinstance(act, Open)]
    assert opened == [("green", 30)]
    assert not any(isinstance(act, Drain) for act in acts(text))


@pytest.mark.parametrize(
    ("text", "bin"),
    [
        ("added 1 kg to badger", "badger"),
        ("tipped 2 kg into pantry", "pantry"),
        ("added 1 kg to it", None),
        ("added 2 kg to mine", None),
    ],
)
def test_a_lone_word_behind_an_amount_may_be_a_new_bin(text: str, bin: str | None) -> None:
    (layer,) = acts(text, in_room=True)
    assert isinstance(layer, Layer)
    assert layer.bin == bin


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("opened the plot7 bin", "plot7"),
        ("sealed the flat 12 bin", "flat 12"),
        ("added 2 kg to the c4 bin", "c4"),
        ("added 2 kg to stair9", "stair9"),
        ("sealed the number 5 bin", "bin 5"),
        ("added 2 kg to the 20 L bin", None),
    ],
)
def test_a_new_bin_is_called_by_a_word_and_a_number(text: str, name: str | None) -> None:
    (act,) = read(text, group(in_room=True))
    assert isinstance(act, Layer | Open | Seal)
    assert act.bin == name


@pytest.mark.parametrize("text", ["added 2 kg to plot7", "2 kg of peel into plot 7", "put 2 kg in "
                                  "the plot7 bin"])  # fmt: skip
def test_a_number_in_a_bins_name_is_no_slip(text: str) -> None:
    (act,) = read(text, group(in_room=True, bins=("plot7", "plot70", "shed")))
    assert isinstance(act, Layer)
    assert (act.bin, act.mass_kg) == ("plot7", 2)


@pytest.mark.parametrize("text", ["sealed the orange one", "added 2 kg to our orange one"])
def test_a_colour_alone_names_a_bin_in_a_room(text: str) -> None:
    (act,) = read(text, group(in_room=True))
    assert isinstance(act, Layer | Seal)
    assert act.bin == "orange"


@pytest.mark.parametrize("text", ["I like the orange one", "buy the orange one", "the orange one?"])
def test_another_orange_one_is_talk(text: str) -> None:
    assert read(text, group(in_room=True)) == ()


@pytest.mark.parametrize("letter", ["A", "B", "f"])
@pytest.mark.parametrize(
    "text",
    [
        "put 1.5 kg of leek tops in bin {}",
        "put 1.5 kg of leek tops in {}",
        "1.5 kg of leek tops went into {} today",
    ],
)
def test_bins_told_apart_by_a_letter(text: str, letter: str) -> None:
    bins = ("bin A", "bin B", "bin F", "shed")
    (act,) = acts(text.format(letter), bins=bins, in_room=True)
    assert isinstance(act, Layer)
    assert act.bin == f"bin {letter.upper()}"


@pytest.mark.parametrize(
    ("text", "name"),
    [("opened bin A, 20 litres", "bin A"), ("started bin d today, 15 litres", "bin D")],
)
def test_a_first_bin_may_be_called_by_a_letter(text: str, name: str) -> None:
    (opened,) = acts(text, bins=())
    assert isinstance(opened, Open)
    assert opened.bin == name


def test_the_bin_in_which_something_is_to_be_struck_out() -> None:
    told = acts("scratch that last marrow in the shed bin", in_room=True)
    assert Retract(bin="shed", materials={"vegetable": 1.0}) in told


@pytest.mark.parametrize("text", ["opened a new bin, no name yet, 15 litres", "new bin, name tbc"])
def test_a_name_that_is_yet_to_come_is_none(text: str) -> None:
    assert [act.bin for act in acts(text) if isinstance(act, Open)] == [None]


@pytest.mark.parametrize(
    "text",
    [
        "Started the new one. Shed. 15 litre drum off the market",
        "Shed is idle no longer. Started it this morning. 15 litres",
        "Opened shed by the bike racks as a second one. 15 litres",
    ],
)
def test_a_known_bin_by_itself_is_the_one_begun(text: str) -> None:
    assert [act.bin for act in acts(text) if isinstance(act, Open)] == ["shed"]


def test_the_next_in_a_row_of_bins_is_begun_by_its_number() -> None:
    (opened,) = acts("started another one. bay 4. 15 litres", bins=("bay 2", "bay 3"))
    assert isinstance(opened, Open)
    assert opened.bin == "bay 4"


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("sealed bin 3 today. starting a fresh one in the linen closet, 15 litres", "linen closet"),
        ("new bin in the tool yard, 15 litres, name of Moss", "Moss"),
    ],
)
def test_where_it_stands_names_a_new_bin_that_has_no_other_name(text: str, name: str) -> None:
    assert [act.bin for act in acts(text) if isinstance(act, Open)] == [name]


@pytest.mark.parametrize(
    ("text", "kind", "bins"),
    [
        ("added 2 kg to blue", Layer, ["blue"]),
        ("added 2 kg to red, 1 kg to blue", Layer, ["red", "blue"]),
        ("2 kg of bread into yellow", Layer, ["yellow"]),
        ("sealed blue", Seal, ["blue"]),
        ("drained green half a litre", Drain, ["green"]),
        ("started green today", Open, ["green"]),
        ("buried red under the pear tree", Bury, ["red"]),
    ],
)
def test_a_first_bin_may_be_called_by_a_colour(text: str, kind: type, bins: list[str]) -> None:
    told = read(text, group(in_room=True, bins=()))
    assert all(isinstance(act, kind) for act in told)
    assert [getattr(act, "bin", None) for act in told] == bins


@pytest.mark.parametrize(
    "text",
    [
        "added 2 kg of red cabbage",
        "painted it blue",
        "sealed the blue envelope",
        "added 2 kg to green waste",
        "feeling blue today",
        "2 kg of green",
    ],
)
def test_a_colour_of_anything_else_is_no_first_bin(text: str) -> None:
    told = read(text, group(in_room=True, bins=()))
    assert not [act for act in told if getattr(act, "bin", None)]


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("opened the kids' garden bin, 19 L", "kids' garden"),
        ("added 2 kg to the kids' garden bin", "kids' garden"),
        ("opened the St. Mary's bin, 15 L", "St. Mary's"),
        ("2 kg of rice in the St. Mary's bin", "St. Mary's"),
        ("opened a bin called St. Mary's", "St. Mary's"),
        ("opened a bin called St. Mary's, 20 L. It is on the porch", "St. Mary's"),
        ("new bin, call it Dr. Rot, 15 L", "Dr. Rot"),
        ("new bin: Mr. Stinky, 15 L", "Mr. Stinky"),
        ("opened Dr. Bell's bin", "Dr. Bell's"),
        ("added 2 kg to Mrs Hill's bin", "Mrs Hill's"),
        ("opened the Hendersons' bin", "Hendersons'"),
        ("opened a bin called No. 12", "bin 12"),
        ("opened a bin called Dot. Mary's in charge", "Dot"),
        ("we are on Oak St. Opened a bin, 20 L", None),
        ("opened the No. 7 bin, 12 L", "bin 7"),
        ("opened the flat 3b bin, 12 L", "flat 3b"),
        ("sealed the flat 4b bin", "flat 4b"),
        ("drained the 3b bin", "3b"),
        ("opened the school yard north bin, 20 L", "school yard north"),
        ("opened the Seau de la cour bin, 12 L", "Seau de la cour"),
        ("opened the old garden bin, 12 L", "garden"),
        ("opened the new shared 20 L garden bin", "garden"),
        ("put 2 kg from the kids' lunch boxes in the garden bin", "garden"),
        ("put 2 kg in the 20l bin", None),
    ],
)
@pytest.mark.parametrize("bins", [("shed",), ("shed", "garden")])
def test_a_name_is_not_shortened(text: str, name: str | None, bins: tuple[str, ...]) -> None:
    (act,) = read(text, group(in_room=True, bins=bins))
    assert isinstance(act, Layer | Open | Seal | Drain)
    assert act.bin == name


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("opened the tote, 15 L", "tote"),
        ("started the crock today", "crock"),
        ("opened a tote, 15 L", None),
        ("opened the bucket, 15 L", None),
        ("opened the blue tote, 15 L", "blue"),
    ],
)
def test_the_first_vessel_of_its_sort_is_called_by_it(text: str, name: str | None) -> None:
    (act,) = acts(text, bins=(), in_room=True)
    assert isinstance(act, Open)
    assert act.bin == name


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Got the 60 litre blue barrel from the school as a shared bin. We'll call it Hector.",
         "Hector"),
        ("Started a 30 litre red tub today. We will call him Hector.", "Hector"),
        ("Opened a 30 litre green tub for the street. My wife says we should call it Hector.",
         "Hector"),
        ("Opened a 30 litre green tub. We'll call you all when it's full.", "green"),
        ("opened the red bin today, 30 litres. We call the old one Hector.", "red"),
        ("Started a 30 litre red tub today. We'll call it a day now.", "red"),
    ],
)  # fmt: skip
def test_the_name_given_in_the_next_sentence_beats_the_colour(text: str, name: str) -> None:
    assert [act.bin for act in acts(text) if isinstance(act, Open)] == [name]


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("opened hector, 20 litres", "hector"),
        ("opened the annexe, 20 litres", "annexe"),
        ("started hector 15 L", "hector"),
        ("opened hector, 20 litres, shared", "hector"),
        ("opened a 20 litre tin", None),
        ("opened sauerkraut, 5 litres", None),
        ("opened up, 20 litres", None),
    ],
)
def test_a_name_is_written_small_on_a_phone(text: str, name: str | None) -> None:
    assert [act.bin for act in acts(text) if isinstance(act, Open)] == [name]


@pytest.mark.parametrize(
    ("text", "name", "litres"),
    [
        ("green, 20 litres", "green", 20),
        ("it's green, 20 L", "green", 20),
        ("call it green", "green", None),
        ("Dolly, 20 L please", "Dolly", 20),
        ("the shed", "shed", None),
        ("red bin (20 L)", "red", 20),
    ],
)
def test_a_bin_begun_without_a_name_is_called_so(
    text: str, name: str, litres: float | None
) -> None:
    last = Open(bin="bin 1", on=WEDNESDAY.date())
    for after_bot in (False, True):
        found = acts(text, bins=("bin 1",), last=last, after_bot=after_bot, in_room=True)
        assert [(a.bin, a.capacity_l) for a in found if isinstance(a, Amend)] == [(name, litres)]


@pytest.mark.parametrize(
    ("text", "last"),
    [
        ("Great, 20 L", Open(bin="bin 1")),
        ("green, 20 litres", Open(bin="Dolly")),
        ("green, 20 litres", Open(bin="bin 1", capacity_l=20)),
        ("green?", Open(bin="bin 1")),
        ("green beans, 20 L", Open(bin="bin 1")),
        ("20 L", Open(bin="bin 1")),
    ],
)
def test_what_names_no_bin_that_was_begun(text: str, last: Open) -> None:
    found = acts(text, bins=("bin 1", "Dolly"), last=last, after_bot=True, in_room=True)
    assert not any(isinstance(act, Amend) and act.bin == "green" for act in found)
    assert not any(isinstance(act, Amend) and act.bin == "Great" for act in found)


def test_a_new_name_that_is_a_food_is_none() -> None:
    told = acts(
        "started a third one for the porch, 10 litres, its called pickle, and pickle already ate "
        "1 kg of crusts"
    )
    [layer] = [act for act in told if isinstance(act, Layer)]
    assert layer.materials == {"grain": 1.0}
