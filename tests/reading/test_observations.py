import pytest

from handlers.practice.signs import Sign
from handlers.reading.acts import Layer, Observe
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        ("white fluff on bin 3", ["white_mould"]),
        ("bin 3 has blue-green mould", ["green_mould"]),
        ("bin 3 smells like pickles", ["sour"]),
        ("bin 3 reeks", ["rotten"]),
        ("bin 3: a faint cider on the nose", ["alcohol"]),
        ("bin 3 is a bit on the nose", ["rotten"]),
        ("bin 3: no smell bar the vinegar", ["sour"]),
        ("bin 3 has green spots and white fuzz", ["green_mould", "white_mould"]),
        ("bin 3: white mould but got a bit green also", ["green_mould", "white_mould"]),
        ("white fuzz in bin 3 and some green carrots", ["white_mould"]),
        ("the inside of bin 3 is dotted with green", ["green_mould"]),
        ("bin 3 is running out the bottom", ["much_liquid"]),
        ("nothing at all out of bin 3 when I opened the tap", ["no_liquid"]),
        ("bin 3 smells of ammonia", ["ammonia"]),
        ("bin 3 smells like a brewery", ["alcohol"]),
        ("nothing came out of bin 3", ["no_liquid"]),
        ("maggots in bin 3", ["insects"]),
        ("rats have been at bin 3", ["rodents"]),
        ("bin 3 is bulging", ["gas"]),
        ("bin 3 is bone dry", ["dry"]),
        ("bin 3: white mould, no flies, good sour smell", ["white_mould", "sour"]),
        ("bin 3: cotton wool growing on top", ["white_mould"]),
        ("dusting of snow in bin 3", ["white_mould"]),
        ("green velvet on top of bin 3", ["green_mould"]),
        ("the mould in bin 3 is white with a bit of black", ["black_mould", "white_mould"]),
        ("bin 3 has mould: white, and a touch of green", ["green_mould", "white_mould"]),
        ("bin 3 has white mould, and the lid is black", ["white_mould"]),
        ("the smell of bin 3! It's like a dead rat", ["rotten"]),
        ("bin 3 smells like a mouse died in it", ["rotten"]),
        ("found a dead rat in bin 3", ["rodents"]),
        ("nothing whatever coming out of the tap on bin 3", ["no_liquid"]),
        ("bin 3 smells like beer and is warm at the side", ["alcohol", "warm"]),
        ("turquoise mould in bin 3", ["green_mould"]),
        ("moho verde en bin 3", ["green_mould"]),
        ("black spots in bin 3", ["black_mould"]),
        ("bin 3 smells like pickled onions", ["sour"]),
        ("bin 3 huele a vinagre", ["sour"]),
        ("bin 3 smells like a dead mouse", ["rotten"]),
        ("bin 3 smells of rotten cabbage", ["rotten"]),
        ("bin 3 smells like bad eggs", ["rotten"]),
        ("bin 3 stinks to high heaven", ["rotten"]),
        ("mabaho ang bin 3", ["rotten"]),
        ("bin 3 smells like a litter tray", ["ammonia"]),
        ("bin 3 smells of nail varnish remover", ["alcohol"]),
        ("bin 3 smells like a pub carpet", ["alcohol"]),
        ("bin 3 is a slurry inside", ["wet"]),
        ("bin 3's tap is bone dry", ["no_liquid"]),
        ("nothing at the tap of bin 3", ["no_liquid"]),
        ("not a dribble from bin 3", ["no_liquid"]),
        ("overflowing tap on bin 3", ["much_liquid"]),
        ("fungus gnats round bin 3", ["insects"]),
        ("asticots dans bin 3", ["insects"]),
        ("mouse droppings round bin 3", ["rodents"]),
        ("something gnawed a hole in bin 3", ["rodents"]),
        ("bin 3 is tight as a drum", ["gas"]),
        ("bin 3's lid popped off", ["gas"]),
        ("bin 3 is steaming", ["warm"]),
        ("bin 3 is frozen solid", ["cold"]),
        ("bin 3 has gone to slop", ["wet"]),
        ("it's like gruel inside bin 3, pure slop", ["wet"]),
        ("bin 3 is a proper quagmire", ["wet"]),
        ("condensation all down the inside of bin 3", ["wet"]),
        ("bin 3 has sprung a leak", ["much_liquid"]),
        ("three fingers of broth in the bottom of bin 3", ["much_liquid"]),
        ("liquid in bin 3 is up to the grid", ["much_liquid"]),
        ("bin 3 has puffed up like a toad", ["gas"]),
        ("the lid of bin 3 has gone convex", ["gas"]),
        ("bin 3's lid shot off in the night", ["gas"]),
        ("bin 3 went psssht when I cracked it", ["gas"]),
        ("bin 3 let out a long whistle", ["gas"]),
        ("bin 3 smells of last week's fish", ["rotten"]),
        ("bin 3: reeks like bad prawns", ["rotten"]),
        ("bin 3: smell like stale mince, and too wet inside", ["rotten", "wet"]),
        ("bin 3 smells like a cider barrel", ["alcohol"]),
        ("the green something on the top of bin 3", ["green_mould"]),
        ("the lid on bin 3 won't lie flat", ["gas"]),
        ("bin 3 is risen like a loaf", ["gas"]),
        ("bin 3 smells like a dead badger", ["rotten"]),
        ("bin 3 is on the turn", ["rotten"]),
        ("bin 3 is a bit niffy", ["rotten"]),
        ("bin 3 is eggy", ["rotten"]),
        ("had to pinch my nose over bin 3", ["rotten"]),
        ("bin 3 is giving off eggs", ["rotten"]),
        ("bin 3 smells of dill", ["sour"]),
        ("a mild vinegar type smell off bin 3", ["sour"]),
        ("bin 3 smells like chutney", ["sour"]),
        ("bin 3 smells like a vineyard", ["alcohol"]),
        ("bin 3 smells of sherry", ["alcohol"]),
        ("bin 3 smells like a hairdresser's", ["ammonia"]),
        ("bin 3 clears the sinuses", ["ammonia"]),
        ("bin 3 is flyblown", ["insects"]),
        ("slugs on the rim of bin 3", ["insects"]),
        ("something wriggled in bin 3", ["insects"]),
        ("moths inside bin 3", ["insects"]),
        ("something has bitten a hole in bin 3", ["rodents"]),
        ("a skin of white on bin 3", ["white_mould"]),
        ("bin 3 has a white wig on", ["white_mould"]),
        ("bin 3 is white all over", ["white_mould"]),
        ("a green moustache on bin 3", ["green_mould"]),
        ("there's blue on the crusts in bin 3", ["green_mould"]),
        ("bin 3 has turned black round the rim", ["black_mould"]),
        ("black specks in bin 3", ["black_mould"]),
        ("bin 3 has gone pink on top", ["other_mould"]),
        ("orange blotches in bin 3", ["other_mould"]),
        ("a bloom on bin 3, white, all over", ["white_mould"]),
        ("the tap on bin 3 is dead", ["no_liquid"]),
        ("bin 3 isn't making any juice", ["no_liquid"]),
        ("bin 3 hasn't given a drop", ["no_liquid"]),
        ("couldn't get a drip out of bin 3", ["no_liquid"]),
        ("bin 3 gave nothing at all", ["no_liquid"]),
        ("bin 3 is like a desert inside", ["dry"]),
        ("bin 3 is like a furnace", ["warm"]),
        ("bin 3 is a block of ice", ["cold"]),
        ("bin 3: liquid zero, tap is fine", ["no_liquid"]),
        ("bin 3 has not made a drop in eight days", ["no_liquid"]),
        ("bin 3 hasn't made a drop in 8 days and smells of rotten eggs", ["no_liquid", "rotten"]),
        ("bin 3 sloshes when I lift it", ["much_liquid"]),
        ("there is a puddle of brown juice in bin 3", ["much_liquid"]),
        ("grand smell off bin 3 this morning, just like our gran's pickled eggs", ["sour"]),
        ("bin 3 is stinky in a good way, like pickled radish", ["sour"]),
        ("bin 3 smells like lime achaar", ["sour"]),
        ("bin 3 smells like hospital, a sharp one that gets in the eyes", ["ammonia"]),
        ("bin 3 has a skin on top, soft and white", ["white_mould"]),
        ("bin 3 has white cotton on top", ["white_mould"]),
        ("lid of bin 3 is up like balloon", ["gas"]),
        ("lid of bin 3 is like football", ["gas"]),
        ("water is coming too much in bin 3", ["much_liquid"]),
        ("the liquid coming is too much in bin 3", ["much_liquid"]),
        ("um, bin 3 has fruit flies again", ["insects"]),
        ("a nice picklely smell off bin 3", ["sour"]),
        ("may puting amag sa bin 3", ["white_mould"]),
        ("may amag na itim sa bin 3", ["black_mould"]),
        ("the tap on bin 3 ran dry", ["no_liquid"]),
        ("a raccoon got into bin 3 overnight", ["rodents"]),
        ("something has died in bin 3", ["rotten"]),
        ("bin 3 wheezed when I pressed the lid", ["gas"]),
    ],
)
def test_what_was_seen_or_smelt(text: str, signs: list[Sign]) -> None:
    (seen,) = acts(text)
    assert isinstance(seen, Observe)
    assert (seen.bin, list(seen.signs)) == ("bin 3", signs)


@pytest.mark.parametrize(
    "text",
    ["the potting shed has fruit flies now", "there's maggots in the potting shed, loads"],
)
def test_what_lives_in_a_bin_that_is_called_after_its_place(text: str) -> None:
    (seen,) = acts(text, bins=("potting shed", "green"))
    assert isinstance(seen, Observe)
    assert (seen.bin, seen.signs) == ("potting shed", ("insects",))


@pytest.mark.parametrize(
    ("text", "celsius", "ph"),
    [
        ("bin 3 is at 24C", 24, None),
        ("pH of bin 3 is 3.7", None, 3.7),
        ("pH of bin 3 is 4.2 according to our daughter's little strips", None, 4.2),
        ("tested bin 3, 4.2 ph", None, 4.2),
        ("the thermometer in bin 3 says 18.5", 18.5, None),
        ("probe in bin 3 reads thirty-one", 31, None),
        ("pH paper in bin 3 says four", None, 4),
        ("the meter came out at 3.6 in bin 3, nice and acid", None, 3.6),
    ],
)
def test_what_was_measured(text: str, celsius: float | None, ph: float | None) -> None:
    (seen,) = acts(text)
    assert isinstance(seen, Observe)
    assert (seen.celsius, seen.ph, seen.signs) == (celsius, ph, ())


@pytest.mark.parametrize(
    "text",
    ["it's freezing in the shed", "flies in the shed again", "saw a fox behind the shed",
     "the badger is at the lawn behind the shed", "the shed stinks of paint",
     "20 degrees in the shed",
     "mould on the bathroom ceiling", "my kefir smells sour", "mouldy bread again",
     "my yoghurt smells sour", "the tap in the bathroom is dripping",
     "something smells fishy about that invoice", "popping round to the shed later",
    "no flies on bin 3", "nothing leaking in bin 3",
    "Tall Paul's puffed up since the wasp sting", "the roof is leaking over the shed",
    "took Tall Paul's temperature, 39, he's off school", "Tall Paul has a cold",
    "I dreamed bin 3 was full of maggots", "Tall Paul has gone green on the ferry",
    "the tyre is puffed up behind the shed", "Tall Paul was wallowing in the swimming baths"],
)  # fmt: skip
def test_what_is_said_of_other_things(text: str) -> None:
    assert acts(text) == ()


def test_a_sign_behind_a_record_is_seen_too() -> None:
    layer, seen = acts("emptied 900 g of peel into bin 3. Bone dry in there")
    assert isinstance(layer, Layer)
    assert isinstance(seen, Observe)
    assert (seen.bin, seen.signs) == ("bin 3", ("dry",))


def test_degrees_fahrenheit_where_the_group_measures_so() -> None:
    (seen,) = acts("thermometer stuck in bin 3 reads 95", units="us")
    assert isinstance(seen, Observe)
    assert seen.celsius == pytest.approx(35)


@pytest.mark.parametrize(
    "text",
    ["1.2 kg of windfalls into bin 3, wasps and all", "spuds gone green, 2 kg, into bin 3",
     "500 g slug-bitten lettuce in bin 3"],
)  # fmt: skip
def test_what_is_said_of_the_scraps_is_no_sign(text: str) -> None:
    (layer,) = acts(text)
    assert isinstance(layer, Layer)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("shed is at 21 degrees and bin 3 at 26", [("shed", 21, None), ("bin 3", 26, None)]),
        ("shed: 21 °C. bin 3: 26 °C.", [("shed", 21, None), ("bin 3", 26, None)]),
        ("shed pH 4.1, bin 3 pH 3.6", [("shed", None, 4.1), ("bin 3", None, 3.6)]),
        ("bin 3 pH is between 3.5 and 4", [("bin 3", None, 3.75)]),
        ("bin 3's thermometer says -4 in the middle", [("bin 3", -4, None)]),
        ("-4 outside and the probe in bin 3 reads 9", [("bin 3", 9, None)]),
    ],
)
def test_what_was_measured_in_each_bin(
    text: str, told: list[tuple[str, float | None, float | None]]
) -> None:
    found = [(a.bin, a.celsius, a.ph) for a in acts(text) if isinstance(a, Observe)]
    assert found == told


def test_a_smell_of_both_is_of_each_that_was_measured() -> None:
    found = acts("shed 21 degrees, bin 3 26, both smell sour")
    assert [a.signs for a in found if isinstance(a, Observe)] == [("sour",), ("sour",)]


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        ("shed is warm. 41 degrees by the probe", ("warm",)),
        ("check on shed: pH 3.9, dry on top, 0 insects", ("dry",)),
    ],
)
def test_what_is_felt_beside_a_measure_is_of_the_bin(text: str, signs: tuple[Sign, ...]) -> None:
    (seen,) = acts(text)
    assert isinstance(seen, Observe)
    assert (seen.bin, seen.signs) == ("shed", signs)


def test_warm_weather_is_no_sign() -> None:
    text = "it was dry and 30 degrees so I watered the beds, shed is sealed"
    assert not any(isinstance(act, Observe) for act in acts(text))


def test_what_a_food_is_said_to_be_is_no_sign() -> None:
    found = acts("Tall Paul swallowed 800 g of bean cake wey sour, plus 1 kg of orange peel")
    assert not any(isinstance(act, Observe) for act in found)


@pytest.mark.parametrize(
    "text",
    ["the worms got 500 g and bin 3 got 1 kg", "worms got half and bin 3 got 1 kg",
     "the worms had the rest, bin 3 got 1 kg"],
)  # fmt: skip
def test_creatures_that_are_fed_are_none_that_were_seen(text: str) -> None:
    assert not [act for act in acts(text) if isinstance(act, Observe)]


@pytest.mark.parametrize("text", ["the maggots got into bin 3", "bin 3 has got worms"])
def test_creatures_that_got_in_were_seen(text: str) -> None:
    [seen] = acts(text)
    assert isinstance(seen, Observe)
    assert seen.signs == ("insects",)


@pytest.mark.parametrize(
    "text",
    [
        "Ines smells like vinegar today",
        "a customer told me, miss you smell of vinegar. It's alcohol hand gel",
        "I stink of ammonia",
        "Kofi reeks of vinegar",
    ],
)
@pytest.mark.parametrize("in_room", [True, False])
def test_somebody_who_smells_is_no_bin(text: str, in_room: bool) -> None:
    assert acts(text, in_room=in_room) == ()


@pytest.mark.parametrize(
    "text",
    [
        "Ines says bin 3 smells like vinegar",
        "Ines smelled vinegar in bin 3",
        "bin 3 smells like vinegar",
        "opened bin 3 with Kofi, smells of vinegar",
    ],
)
def test_what_somebody_smelt_is_told_of_the_bin(text: str) -> None:
    [seen] = acts(text)
    assert isinstance(seen, Observe)
    assert (seen.bin, seen.signs) == ("bin 3", ("sour",))


def test_food_that_went_sour_is_no_bin_that_did() -> None:
    [layer] = acts("bin 3 was given its breakfast, 400 g of idli batter gone sour")
    assert isinstance(layer, Layer)


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        ("dug bin 3 in along the wall, and the middle of it was rotten as an old boot", "rotten"),
        ("buried bin 3 under the plums. Smelled like a decent pickle barrel.", "sour"),
        ("Ruth drained bin 3. It smelled strongly of vinegar.", "sour"),
        ("bin 3 received 700 g of beans from me. It is becoming very wet inside.", "wet"),
        ("sealed bin 3, it has a white mould", "white_mould"),
    ],
)
def test_what_it_is_like_behind_what_was_done(text: str, signs: Sign) -> None:
    [seen] = [act for act in acts(text) if isinstance(act, Observe)]
    assert (seen.bin, seen.signs) == ("bin 3", (signs,))


@pytest.mark.parametrize(
    "text",
    ["sealed bin 3. It's foul weather out", "buried bin 3. It was a rotten job",
     "sealed bin 3. Smelled like roses", "fed bin 3 300 g of peel. It was raining and wet outside",
     "bin 3 smells like fresh bread", "found something white for Ruth's party",
     "the same white fluff as my beret lol"],
)  # fmt: skip
def test_what_is_like_something_else_is_no_sign(text: str) -> None:
    assert not [act for act in acts(text) if isinstance(act, Observe)]


def test_the_rind_of_an_orange_is_no_mould() -> None:
    layer, seen = acts("bin 3 got 300 g of orange rind, and it smells sour in the proper way")
    assert isinstance(layer, Layer)
    assert isinstance(seen, Observe)
    assert (layer.materials, seen.signs) == ({"fruit": 1.0}, ("sour",))


def test_maggots_beside_a_mould_are_in_the_bin_too() -> None:
    [seen] = acts("Lid wasn't clipped. Maggots in it, and grey fuzz down one side.")
    assert isinstance(seen, Observe)
    assert set(seen.signs) == {"insects", "other_mould"}


def test_what_all_the_bins_of_a_list_have_is_seen_in_each() -> None:
    found = acts("Shed, bin 3 and Tall Paul all have white fluff on top. Good.")
    assert [a.bin for a in found if isinstance(a, Observe)] == ["shed", "bin 3", "Tall Paul"]


def test_a_bin_named_for_a_smell_smells_of_nothing() -> None:
    found = acts("Took 350 ml off bin 3 and another 200 off Stinky.", bins=("bin 3", "Stinky"))
    assert [(a.act, getattr(a, "bin", None)) for a in found] == [
        ("drain", "bin 3"),
        ("drain", "Stinky"),
    ]
