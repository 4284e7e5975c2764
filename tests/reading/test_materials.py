import pytest

from handlers.reading.acts import Layer
from handlers.reading.food.makeups import Makeup, makeup
from handlers.reading.food.materials import find_items
from handlers.reading.words.vocabulary import is_slip_of_food, plurals, vocabulary
from handlers.reading.words.words import cleaned, words_of
from tests.reading.context import acts


def made(text: str) -> Makeup | None:
    norms = [word.norm for word in words_of(cleaned(text))]
    return makeup(find_items(norms, vocabulary().find(norms)))


@pytest.mark.parametrize(
    ("text", "shares"),
    [
        ("veg peels", {"vegetable": 1}),
        ("coffee grounds", {"coffee": 1}),
        ("scraps, mostly meat", {"meat": 0.7, "mixed": 0.3}),
        ("half of it chicken bones", {"bone": 0.5, "mixed": 0.5}),
        ("salad and bread", {"vegetable": 0.5, "grain": 0.5}),
        ("veg with a bit of cheese", {"vegetable": 0.9, "dairy": 0.1}),
        ("bread without the crusts", {"grain": 1}),
        ("prawn shells", {"bone": 1}),
        ("bean tops", {"vegetable": 1}),
        ("bacon grease", {"oil": 1}),
        ("chicken curry", {"meat": 0.6, "cooked": 0.4}),
        ("turkey soup", {"meat": 0.3, "liquid": 0.7}),
        ("lasagne", {"cooked": 1}),
        ("peels of mango", {"fruit": 1}),
        ("brinjal and bhindi", {"vegetable": 1}),
        ("bones from the stock", {"bone": 1}),
        ("scraps", {"mixed": 1}),
        ("jollof, bar the bones", {"grain": 0.7, "cooked": 0.3}),
        ("a bit of suet, a bit of dripping", {"oil": 1}),
        ("pasta and cheese, but 70% pasta", {"grain": 0.7, "dairy": 0.3}),
        ("prawn heads, a whole load from sunday lunch", {"fish": 1}),
        ("pork fat crust", {"oil": 1}),
        ("a chocolate rabbit", {"cooked": 1}),
        ("three quarters veg rest chicken", {"vegetable": 0.75, "meat": 0.25}),
        ("three parts veg one part meat", {"vegetable": 0.75, "meat": 0.25}),
        ("15 egg shells and rice", {"bone": 0.1, "grain": 0.9}),
        ("everything but the meat", None),
        ("rice, the prawns had all gone", {"grain": 1}),
        ("butter chicken minus the chicken", {"cooked": 1}),
        ("wings with the bones", {"meat": 0.7, "bone": 0.3}),
        ("pho broth bones", {"bone": 1}),
        ("jack-o'-lanterns", {"vegetable": 1}),
        ("braeburns and coxes", {"fruit": 1}),
        ("two sacks of carrots from the rice man", {"vegetable": 1}),
        ("gingerbread men", {"grain": 1}),
        ("the couscous people left", {"grain": 1}),
        ("a cake tin of lard", {"oil": 1}),
        ("an egg tray of tea leaves", {"coffee": 1}),
        ("bird-shaped biscuits", {"grain": 1}),
        ("a lamb roast", {"meat": 1}),
        ("lamb roast dinner", {"meat": 0.5, "cooked": 0.5}),
        ("pear tree prunings", {"garden": 1}),
        ("stew bones", {"bone": 1}),
        ("bones of duck", {"bone": 1}),
        ("from Sunday lunch stayed some turkey bones", {"bone": 1}),
        ("crusts, and 3 half bananas", {"grain": 0.5, "fruit": 0.5}),
        ("bacon, and orange peel a little bit", {"meat": 0.9, "fruit": 0.1}),
        ("trimmings and bones", {"meat": 0.5, "bone": 0.5}),
        ("coconut husk and shells", {"fruit": 1}),
        ("eggs and shells", {"egg": 0.5, "bone": 0.5}),
        ("heads n tails", {"fish": 1}),
        (
            "bbq leftovers, I'd say about a good bucket of it: rib bones and fat",
            {"bone": 0.5, "oil": 0.5},
        ),
        ("allsorts including herring", {"fish": 0.3, "mixed": 0.7}),
        ("he hardly touched the omelette", {"egg": 1}),
        ("a likkle ham and rice", {"meat": 0.1, "grain": 0.9}),
        ("kale, and a duck watching", {"vegetable": 1}),
        ("a tub of dates", {"fruit": 1}),
        ("kerststol", {"grain": 1}),
        ("left from the wake: vol au vents", {"meat": 0.5, "grain": 0.5}),
        ("a shrimp boil: heads and shells", {"bone": 1}),
        ("goat bones from the roast dinner", {"bone": 1}),
        ("the rice of the paella", {"grain": 1}),
        ("biryani, the rice only", {"grain": 1}),
        ("rice, and some chicken bones", {"grain": 0.7, "bone": 0.3}),
        ("stew and the bones", {"cooked": 0.5, "bone": 0.5}),
        ("pig liver and the trimmings", {"meat": 1}),
        ("carrots and the trimmings", {"vegetable": 1}),
        ("doughnut oil", {"oil": 1}),
        ("muffins with the butter still on", {"grain": 0.9, "dairy": 0.1}),
        ("toast with a smear of butter", {"grain": 0.9, "dairy": 0.1}),
        ("noodles with prawns a little", {"grain": 0.9, "fish": 0.1}),
        ("pasta, the meat was gone already", {"grain": 1}),
        ("drumstick and okra", {"vegetable": 1}),
        ("drumsticks and chips", {"meat": 0.5, "vegetable": 0.5}),
        ("carrots on the meat scale", {"vegetable": 1}),
        ("plums in a bread bag", {"fruit": 1}),
        ("drop one bowl of rice with fish", {"grain": 0.5, "fish": 0.5}),
        ("mifupa ya mbuzi", {"bone": 1}),
        ("kheema", {"meat": 1}),
        ("half a gateau", {"grain": 0.7, "dairy": 0.3}),
        ("mostly rice thoda chicken", {"grain": 0.875, "meat": 0.125}),
        ("fried rice, prawns also inside", {"grain": 0.7, "fish": 0.3}),
        ("peel and a half loaf of sliced pan", {"vegetable": 0.5, "grain": 0.5}),
        ("chawal daal diya", {"grain": 1}),
        ("kettle corn", {"grain": 1}),
        ("spent brewing grain", {"grain": 1}),
        ("grilled fish skin", {"fish": 1}),
        ("turkey burgoo", {"meat": 0.5, "cooked": 0.5}),
        ("banana trunk and brinjal", {"vegetable": 1}),
        ("party jollof", {"grain": 0.7, "cooked": 0.3}),
        ("cobs", {"vegetable": 1}),
        ("three butter tubs of peel", {"vegetable": 1}),
        ("two ice cream cartons", {"dairy": 1}),
        ("prawn heads frae our christmas dinner", {"fish": 1}),
        ("buffet food, half of it rice, half beef", {"grain": 0.5, "meat": 0.5}),
        ("toast, with the dregs of the cream", {"grain": 0.9, "dairy": 0.1}),
        ("apple pie and the custard with it", {"fruit": 0.45, "grain": 0.45, "dairy": 0.1}),
        ("rice and the chicken with it", {"grain": 0.5, "meat": 0.5}),
        ("coffee dregs", {"coffee": 1}),
        ("yam with fish small", {"vegetable": 0.9, "fish": 0.1}),
        ("yam with small fish", {"vegetable": 0.5, "fish": 0.5}),
        ("burnt the rice, so toast it is", {"grain": 1}),
        ("scorched the porridge, pizza it is then", {"grain": 1}),
        ("sieved the millet, and the chaff", {"grain": 1}),
        ("roasted coffee chaff", {"coffee": 1}),
        ("beef, both ends", {"meat": 1}),
    ],
)
def test_shares_by_the_words_of_proportion(text: str, shares: dict[str, float] | None) -> None:
    found = made(text)
    assert (found and found.shares) == (shares and pytest.approx(shares))


@pytest.mark.parametrize(
    ("text", "rich"),
    [
        ("scraps", None),
        ("lasagne", 0.4),
        ("fish skins", 1.0),
        ("peel", 0.0),
        ("leftovers", 0.25),
        ("pizza, no meat", 0.1),
        ("jollof, bar the bones", 0.15),
        ("sandwiches", 0.28),
        ("sandwiches, a quarter of it ham", 0.325),
    ],
)
def test_the_rich_share(text: str, rich: float | None) -> None:
    found = made(text)
    assert found is not None
    assert found.rich == (None if rich is None else pytest.approx(rich))


@pytest.mark.parametrize(
    ("text", "shares"),
    [
        ("2/3 pork, 1/3 slaw", {"meat": 2 / 3, "vegetable": 1 / 3}),
        ("⅔ pork, ⅓ slaw", {"meat": 2 / 3, "vegetable": 1 / 3}),
        ("three quarters veg, a quarter cheese", {"vegetable": 0.75, "dairy": 0.25}),
        ("two fifths rice and the rest chicken", {"grain": 0.4, "meat": 0.6}),
        ("40% meat, the rest veg", {"meat": 0.4, "vegetable": 0.6}),
        ("meat 40%, veg 60%", {"meat": 0.4, "vegetable": 0.6}),
        ("veg (70%) and fish (30%)", {"vegetable": 0.7, "fish": 0.3}),
        ("40% of it was meat", {"meat": 0.4, "mixed": 0.6}),
        ("about 30 percent meat", {"meat": 0.3, "mixed": 0.7}),
        ("60/40 veg and meat", {"vegetable": 0.6, "meat": 0.4}),
        ("half meat half veg", {"meat": 0.5, "vegetable": 0.5}),
        ("mostly veg, some meat", {"vegetable": 0.7, "meat": 0.3}),
        ("hardly any meat", {"meat": 0.1, "mixed": 0.9}),
        ("veg, not much meat", {"vegetable": 0.9, "meat": 0.1}),
        ("some meat", {"meat": 1}),
        ("veg, no meat in it", {"vegetable": 1}),
        ("veg, no meat, fish or dairy", {"vegetable": 1}),
        ("no meat or fish, just rice", {"grain": 1}),
        ("meat-free scraps", {"mixed": 1}),
        ("fish with the skin on", {"fish": 1}),
        ("eggs, free range", {"egg": 1}),
        ("eggs free range", {"egg": 1}),
    ],
)
def test_shares_in_figures_and_denials(text: str, shares: dict[str, float]) -> None:
    found = made(text)
    assert found is not None
    assert found.shares == pytest.approx(shares)


@pytest.mark.parametrize(
    ("kind", "phrases"),
    [
        ("vegetable", "neeps; tatties; tater tots; onion rings; laverbread; sukuma wiki; "
         "malunggay; pelures; épluchures; Kartoffelschalen; obierki; garden eggs; kangkong; "
         "chicken of the woods; lamb's lettuce; oyster mushrooms; rabbit food; ampalaya"),
        ("fruit", "pazham; pinya skins; mango stones; balat ng saging; casca de banana; mincemeat; "
         "jackfruit rind; rose hips; Bananenschalen; trognons de pomme; prickly pears; ackee"),
        ("grain", "hamburger buns; clootie dumpling; speculaas; challah; ugali; injera; "
         "coffee cake; prawn crackers; ice cream cones; poha; arepas; baby rice; pandesal; kasza"),
        ("pulse", "moi moi; akara; beans porridge; butter beans; kidney beans; ful medames; "
         "pigeon peas; vegan sausages; tofu skins; monkey nuts; frijoles; dal makhani"),
        ("meat", "haggis; black pudding; rashers; suya; trotters; tripe; gizzards; atay; "
         "roo mince; venison; goat; biltong; sweetbreads; head cheese; boerewors; mopane worms; "
         "chicken feet; bits of salami; viande hachée; lap cheong"),
        ("fish", "karimeen; ikan bilis; bacalhau; fish scales; fish guts; bombay duck; dagaa; "
         "crab sticks; saltfish; poisson; galunggong; stockfish; squid rings; gefilte fish"),
        ("dairy", "goat's cheese; squeaky cheese; twarog; halloumi; clotted cream; fromage; "
         "mozzarella sticks; Greek yoghurt"),
        ("egg", "deviled eggs; scrambled eggs; frittata; bhurji; duck eggs; shakshuka; "
         "egg tarts; cáscaras de huevo; salted eggs; telur"),
        ("oil", "chip pan oil; bacon grease; goose fat; cocoa butter; ham fat; smalec"),
        ("bone", "turkey carcass; lobster shells; chicken bones; karimeen bones; cockle shells; "
         "Gräten; knochen; eggshells; Eierschalen; pork chop bones"),
        ("cooked", "soup pot scrapings; plate scrapings; party food; packed lunches; picky bits; "
         "khana; avanzi"),
        ("coffee", "coffee beans; marc de café; Kaffeesatz; spent tea leaves; koffiedik"),
        ("garden", "mango leaves; banana leaves; potato plants; tomato vines; houseplants; "
         "cheese plant; sweet peas; orchids; horse chestnuts; grass clippings"),
        ("paper", "paper plates; egg boxes; muffin cases; paper straws; kitchen roll tubes"),
        ("liquid", "coconut milk; root beer; eggnog; pickle juice; hot chocolate; pasta water; "
         "bubble tea; breast milk; olive brine; palm wine"),
        ("mixed", "prep waste; kitchen scraps; fridge clear out; déchets de cuisine; geela kachra"),
    ],
)  # fmt: skip
def test_words_of_many_kitchens(kind: str, phrases: str) -> None:
    found = {phrase.strip(): made(phrase) for phrase in phrases.split(";")}
    assert {phrase: make and dict(make.shares) for phrase, make in found.items()} == {
        phrase: {kind: 1} for phrase in found
    }


@pytest.mark.parametrize(
    ("text", "main", "rich"),
    [
        ("rendang", "meat", 0.5),
        ("nasi lemak", "grain", 0.2),
        ("egusi soup", "cooked", 0.4),
        ("corn dogs", "meat", 0.5),
        ("sloppy joes", "meat", 0.5),
        ("tourtière", "meat", 0.5),
        ("bigos", "meat", 0.5),
        ("Cullen skink", "fish", 0.6),
        ("steak and kidney pie", "meat", 0.5),
        ("rice and peas", "grain", 0),
        ("mushroom pizza", "grain", 0.2),
        ("lentil curry", "pulse", 0),
        ("meat and veg", "meat", 0.5),
        ("milk chocolate", "cooked", 0.2),
        ("ham sambos", "grain", 0.4),
        ("cheese sammiches", "grain", 0.4),
    ],
)
def test_dishes_by_what_they_usually_are(text: str, main: str, rich: float) -> None:
    found = made(text)
    assert found is not None
    assert found.shares[main] == max(found.shares.values())  # type: ignore[index]
    assert found.rich == pytest.approx(rich, abs=0.1)


@pytest.mark.parametrize(
    "text",
    [
        "later on we all ran amok in the yard",
        "Tori and Sav are back from Granada",
        "IMO the hedge by the reeds wants a trim",
        "popping round in a bit to see the new slider",
        "that was brill, what a double",
        "a brood of kids, kailan ba",
        "the window pane by the bamboo is cracked",
    ],
)
def test_words_that_are_mostly_something_else(text: str) -> None:
    assert made(text) is None


def test_nothing_to_eat_is_nothing() -> None:
    assert made("the ladder is behind the door") is None


@pytest.mark.parametrize(
    ("one", "many"),
    [("peel", "peels"), ("leaf", "leaves"), ("peach", "peaches"), ("berry", "berries")],
)
def test_plurals(one: str, many: str) -> None:
    assert many in plurals(one)


@pytest.mark.parametrize(
    ("word", "slip"),
    [("brocolli", True), ("letuce", True), ("plaster", False), ("packet", False)],
)
def test_slips_of_food(word: str, slip: bool) -> None:
    assert is_slip_of_food(word) == slip


def test_the_lists_know_eight_hundred_foods() -> None:
    foods = {
        phrase
        for phrase in vocabulary()
        if any(m.tag == "food" for m in vocabulary().find([phrase]))
    }
    assert len(foods) > 800


def test_a_percentage_is_a_share_and_no_amount() -> None:
    (layer,) = acts("2 kg in the shed, about 30 percent meat")
    assert isinstance(layer, Layer)
    assert layer.mass_kg == 2
    assert layer.rich == pytest.approx(0.3)


def test_a_bit_of_the_amount_is_no_share() -> None:
    (layer,) = acts("2 kilos and a bit of rice with potatoes into bin 3")
    assert isinstance(layer, Layer)
    assert layer.materials == {"grain": 0.5, "vegetable": 0.5}


@pytest.mark.parametrize(
    ("text", "kg", "rich"),
    [
        ("4 kg shed, kilo of prawn heads", 5, 0.2),
        ("3 kg in the shed and 1 kg of fish", 4, 0.25),
        ("4 kg in the shed, a kilo of it prawn heads", 4, 0.25),
        ("2 kg peelings in the shed, 2 kg prawn heads", 4, 0.5),
    ],
)
def test_what_no_kind_is_told_of_is_mixed(text: str, kg: float, rich: float) -> None:
    [layer] = acts(text)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(kg)
    assert layer.rich == pytest.approx(rich)


@pytest.mark.parametrize(
    ("text", "shares"),
    [
        ("1 kg of peelings from the soup in bin 3", {"vegetable": 1.0}),
        ("800 g of carrot tops from yesterday's stew in bin 3", {"vegetable": 1.0}),
        ("500 g of skins from the chicken in bin 3", {"meat": 1.0}),
        ("the shells of nine eggs in bin 3", {"bone": 1.0}),
        ("bones of two ducks in bin 3", {"bone": 1.0}),
        ("nine eggs and their shells in bin 3", {"egg": 0.5, "bone": 0.5}),
        (
            "in bin 3: the shells of nine eggs, 100 g, and 900 g of lettuce",
            {"bone": 0.1, "vegetable": 0.9},
        ),
        ("we had the fish fry, and 2 kg of coleslaw went in bin 3", {"vegetable": 1.0}),
        ("hosted our big Sunday roast and 1 kg of bones went in bin 3", {"bone": 1.0}),
        (
            "1 kg of fish fry and 1 kg of coleslaw went in bin 3",
            {"fish": 0.3, "cooked": 0.2, "vegetable": 0.5},
        ),
    ],
)
def test_the_dish_that_peelings_are_left_of(text: str, shares: dict[str, float]) -> None:
    [layer] = acts(text)
    assert isinstance(layer, Layer)
    assert layer.materials == shares


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("Roast dinner leftovers: 2 kg of potatoes and carrots in the shed", {"vegetable"}),
        ("BBQ leftovers: 1 kg of bread rolls in the shed", {"grain"}),
        ("1 kg of carrots in the shed, off to the cheese club", {"vegetable"}),
        ("1 kg of potato peel in the shed, my hands are orange now", {"vegetable"}),
        ("lasagne: 1 kg in the shed", {"cooked"}),
        ("1 kg of orange skin in the shed", {"fruit"}),
        ("3 kg from the barbecue in the shed. corn and ribs", {"vegetable", "bone"}),
        ("We ate nine sausages, the stubs and the bread went in the shed, 1 lb", {"meat", "grain"}),
        (
            "The rice was too much, I put the rest in the shed with a bit of fish, 1 kg",
            {"grain", "fish"},
        ),
        ("coffee and carrot tops for the shed, 2 lb on the fish scale", {"coffee", "vegetable"}),
        ("rice: 2 kg, peel: 1 kg, in the shed", {"grain", "vegetable"}),
    ],
)
def test_a_feast_a_club_and_a_colour_are_no_scraps(text: str, kinds: set[str]) -> None:
    [layer] = acts(text)
    assert isinstance(layer, Layer)
    assert set(layer.materials or ()) == kinds


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("big blue got 2 L of leaves", [2.0]),
        ("just under half a bucket of leaves in the shed bin", [5.0]),
        ("raked 3 bags of leaves", []),
        ("2 bags of leaves left by the gate", []),
    ],
)
def test_leaves_by_the_bucket_are_scraps_where_a_bin_is_named(
    text: str, litres: list[float]
) -> None:
    told = [act for act in acts(text, in_room=True) if isinstance(act, Layer)]
    assert [layer.volume_l for layer in told] == pytest.approx(litres)
    assert all(layer.materials == {"garden": 1.0} for layer in told)
