"""Records told in turns of phrase that need no score, and talk that sounds like them."""

import pytest

from handlers.reading.acts import Drain, Layer
from handlers.reading.deeds.bywords import told_by_word
from handlers.reading.message import read_message
from tests.reading.context import acts, group


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("lids gone on bin 3 so the clock starts", "seal"),
        ("the lid of bin 3 came down for the last time", "seal"),
        ("bin 3: closed and clamped", "seal"),
        ("bin 3 all full, stuck tape round the rim", "seal"),
        ("wound the gaffer tape around bin 3", "seal"),
        ("did the taping up on bin 3 before school", "seal"),
        ("covered bin 3 since it is full", "seal"),
        ("bin 3 now closed and not to be touched", "seal"),
        ("bin 3, done up tight", "seal"),
        ("bin 3 gone down under the plantain since Friday", "bury"),
        ("big blue has finally been laid to rest among the currants", "bury"),
        ("emptied the whole of bin 3 along the fence, three trenches and a bad back", "bury"),
        ("carted bin 3 down to the trench", "bury"),
        ("they did the burial of bin 3 this morning behind the garage", "bury"),
        ("we had the burial of bin 3 on Sunday", "bury"),
        ("gave the shed its burial under the oak", "bury"),
        ("burial of bin 3 took place yesterday", "bury"),
        ("big blue is out. Under the currant bushes", "bury"),
        ("under the pear: bin 3, all of it", "bury"),
        ("half a litre is all bin 3 parted with", "drain"),
        ("bin 3 surrendered a pint and a bit", "drain"),
        ("big blue finally coughed up 300 ml", "drain"),
        ("decanted 2 cups of liquor from bin 3", "drain"),
        ("pulled the bung on big blue, 400 ml", "drain"),
        ("opened the spigot on bin 3 and two cups came", "drain"),
        ("3 kg of bran under way in the airing cupboard", "batch"),
        ("two kilos of rice bran packed down", "batch"),
        ("picked up 2 kg of ready-made bran from the agri shop", "stock"),
        ("bought a kilo of finished starter", "stock"),
        ("we're at 38 degrees in bin 3", "observe"),
        ("big blue reads 41 celsius in the core", "observe"),
    ],
)
def test_a_turn_of_phrase_is_told(text: str, kind: str) -> None:
    assert [act.act for act in acts(text)] == [kind]


@pytest.mark.parametrize(
    "text",
    [
        "lid went on the paint at last",
        "lids went on the shed roof boxes",
        "will the lid go on bin 3 if I push",
        "lid of the piano came down for good",
        "closed and clamped the toolbox",
        "put tape around the shed for the party",
        "stuck tape round the parcel",
        "did the taping on the shed windows",
        "covered the shed because it's full of bikes",
        "bin 3 is not to be opened till I say, right?",
        "the shed went under the hammer for 400",
        "kids were put to bed among the toys in the shed",
        "carried the shed trench coat home",
        "the dog is asleep under the roses",
        "the kitchen handed over 20 litres of paint",
        "the shed parted with 3 litres of diesel",
        "pulled the plug on the shed party, 2 litres of punch wasted",
        "opened the tap on the shed barrel, two pints of cider",
        "3 kg of bran muffins cooking",
        "2 kg of bran cooking in muffins",
        "bought a kilo of ready-made bran flakes",
        "picked up the shop bran loaf",
        "he's 38 degrees and off school",
        "38 degrees outside the shed",
    ],
)
def test_the_same_words_of_other_things_are_not(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    "text",
    [
        "if bin 3 went under the roses the dog would dig it up",
        "bin 3 never went under the roses",
        "will bin 3 be shut and taped by Friday",
        "the shed let go of two pints of ale",
        "bin 3 nearly coughed up a pint",
        "tell me when the lids have gone on bin 3",
        "who did the taping on bin 3?",
        "I wish 3 kg of bran were under way",
    ],
)
def test_what_is_asked_denied_or_supposed_is_not_told_so(text: str) -> None:
    assert told_by_word(read_message(text, group())) == (None, frozenset())


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("buried it, the ground is frozen", True),
        ("buried it yesterday, it was pouring", True),
        ("buried it under the fig, and the soil is like rock", True),
        ("buried it, the poor little thing", False),
        ("haven't buried it yet, the ground is frozen", False),
        ("buried the cat, the ground is frozen", False),
    ],
)
def test_a_burial_with_a_word_on_the_ground(text: str, told: bool) -> None:
    kinds = [act.act for act in acts(text, in_room=True)]
    assert kinds == (["bury"] if told else [])
    assert not acts(text) or told


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("my first layer is in: 1 kg", [1.0]),
        ("our next layer went in, 800 g", [0.8]),
        ("our layer is in the oven: 1 kg of lasagne", []),
        ("the new layer of paint is in: 2 kg tins", []),
    ],
)
def test_a_layer_that_is_in(text: str, kg: list[float]) -> None:
    told = acts(text, bins=("shed",), in_room=True)
    assert [act.mass_kg for act in told if isinstance(act, Layer)] == pytest.approx(kg)


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("drained like 300 ml, mostly coffee lol", [0.3]),
        ("we drained the shed, 200 ml, and it was all tea", [0.2]),
        ("drained half a litre, mainly sauce by the looks of it", [0.5]),
        ("drained 300 ml of coffee", []),
        ("drained 300 ml, mostly pasta water", []),
        ("drained 2 litres of stock, mostly for the freezer", []),
    ],
)
def test_what_ran_out_may_be_what_was_poured_in(text: str, litres: list[float]) -> None:
    told = acts(text, bins=("shed",), in_room=True)
    assert [a.volume_l for a in told if isinstance(a, Drain)] == pytest.approx(litres)
    assert not any(isinstance(act, Layer) for act in told)
