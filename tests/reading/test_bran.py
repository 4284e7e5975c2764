import pytest

from handlers.reading.acts import Ask, Batch, Layer, Stock, Unsure
from handlers.reading.plans import read as read_in_room
from tests.reading.context import acts, group


@pytest.mark.parametrize("text", ["made 2 kg of bran", "mixed up 2 kg o bran", "bran's on: 2 kg"])
def test_a_batch_that_was_mixed(text: str) -> None:
    (batch,) = acts(text)
    assert isinstance(batch, Batch)
    assert batch.mass_kg == pytest.approx(2)


@pytest.mark.parametrize(
    "text",
    ["800 g of bran left", "bought 800 g of starter", "bran tin: 800 g", "down to 800 g of bran"],
)
def test_starter_on_hand(text: str) -> None:
    (stock,) = acts(text)
    assert isinstance(stock, Stock)
    assert stock.mass_kg == pytest.approx(0.8)


@pytest.mark.parametrize(
    "text",
    ["no starter left", "there's no bran left", "we have run out of bran", "we're out of starter"],
)
def test_no_starter_on_hand(text: str) -> None:
    (stock,) = acts(text)
    assert isinstance(stock, Stock)
    assert stock.mass_kg == 0


@pytest.mark.parametrize("text", ["is there no starter left?", "no starter left?"])
def test_starter_asked_after(text: str) -> None:
    assert [type(act) for act in acts(text)] == [Ask]


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("Starter stocktake. Jar A 1.2 kg. Jar B 300 g.", 1.5),
        ("bran on hand: 1.5 kg in the loft, 700 g in the larder", 2.2),
        ("bran: 3 kg in all, jar A 1 kg, jar B 2 kg", 3.0),
        ("starter left: 2 kg, used 300 g of bran", 2.0),
        ("2 kg of bran left, and another sack came this morning, 3 kg", 5.0),
        ("bought another 3 kg of starter, plus 2 kg still in the tin", 5.0),
        ("bought 3 kg of bran, used 1 kg, 2 kg left", 2.0),
        ("2 kg of bran left, 3 kg coming on Friday", 2.0),
        ("I bought two bags of the ready-made bran in town, a kilo each", 2.0),
        ("got three sacks of starter from the shop, 2 kg a pop", 6.0),
        ("bought another bag of the shop-made starter, 1 kg, it's with me", 1.0),
        ("bought a fresh bag of bran, 2 kilos, ten pounds they charged", 2.0),
        ("the bran tin is empty", 0.0),
    ],
)
def test_starter_kept_in_several_places_adds_up(text: str, kg: float) -> None:
    (stock,) = acts(text)
    assert isinstance(stock, Stock)
    assert stock.mass_kg == pytest.approx(kg)


def test_a_batch_and_what_is_left_of_the_old() -> None:
    assert [type(act) for act in acts("made 2 kg of bran and still have 400 g of the old")] == [
        Batch,
        Stock,
    ]


@pytest.mark.parametrize(
    "text",
    [
        "bought 2 bags of bran flakes",
        "24 bran muffins for the fete",
        "fed my sourdough starter 100 g flour",
    ],
)
def test_other_bran(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    "text",
    [
        "put 2 tbsp bran on top",
        "put two spoons of starter on it",
        "put 30 g of bran on the layer",
        "gave it 2 tablespoons of bran",
    ],
)
def test_what_is_strewn_is_neither_a_batch_nor_on_hand(text: str) -> None:
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize("text", ["recipe for 6 kg of bran", "molasses for 6 kg wheat bran please"])
def test_the_recipe_of_a_batch_is_asked_for_in_few_words(text: str) -> None:
    (act,) = read_in_room(text, group(in_room=True))
    assert isinstance(act, Ask)
    assert (act.topic, act.mass_kg) == ("batch", 6.0)


_ON_HAND = Stock(mass_kg=2.0)
_HOW_MUCH = Ask(topic="starter")


@pytest.mark.parametrize(
    ("text", "kg", "change"),
    [
        ("about 200 g left", 0.2, None),
        ("counted it, 2.4 kg", 2.4, None),
        ("weighed it again: 1.8 kg in the jar", 1.8, None),
        ("bought another kilo", 1.0, "more"),
        ("got another 500 g", 0.5, "more"),
        ("spilled 100 g", 0.1, "less"),
        ("gave Ruth 200 g", 0.2, "less"),
    ],
)
def test_an_amount_in_a_talk_of_starter_is_of_it(text: str, kg: float, change: str | None) -> None:
    for talk in ({"last": _ON_HAND}, {"just_told": _ON_HAND}, {"asked": (_HOW_MUCH,)}):
        (stock,) = acts(text, in_room=True, **talk)
        assert isinstance(stock, Stock)
        assert stock.mass_kg == pytest.approx(kg)
        assert stock.change == change
    assert not any(isinstance(act, Stock) for act in acts(text, in_room=True))


@pytest.mark.parametrize(
    "text", ["bought 2 kg of nails", "spilled 100 ml of juice", "100 g of peel", "another 2 kg"]
)
def test_what_is_of_something_else_is_no_starter(text: str) -> None:
    assert not any(isinstance(act, Stock) for act in acts(text, in_room=True, last=_ON_HAND))


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("spilled some bran, maybe 100 g, sorry", 0.1),
        ("dropped about 100 g of bran on the floor", 0.1),
        ("lost a bit of bran, 200 g or so", 0.2),
    ],
)
def test_starter_that_was_spilled(text: str, kg: float) -> None:
    (stock,) = acts(text, in_room=True)
    assert isinstance(stock, Stock)
    assert stock.mass_kg == pytest.approx(kg)
    assert stock.change == "less"


def test_starter_that_is_nearly_gone_is_not_none() -> None:
    (act,) = acts("bran's nearly gone", in_room=True)
    assert isinstance(act, Unsure)
    assert act.guess == (Stock(),)


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("2 kg in, no bran", 2.0),
        ("700 g bread in but no bran on it yet", 0.7),
        ("put in 2 kg, forgot the bran", 2.0),
        ("added 2 kg, we have no bran", 2.0),
    ],
)
def test_a_layer_without_starter_is_a_layer(text: str, kg: float) -> None:
    (layer,) = acts(text, in_room=True)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(kg)


@pytest.mark.parametrize(
    "text",
    [
        "bought 2 kg of rice, no bran",
        "I have 2 kg of flour, no bran",
        "will add 2 kg, no bran",
        "added two handfuls of bran",
        "put a cup of bran on",
        "dropped 100 g of bran on the layer",
    ],
)
def test_what_is_neither_on_hand_nor_a_layer(text: str) -> None:
    assert acts(text, in_room=True) == ()
