"""What is said of other things is nothing of ours, and near words that are ours."""

import pytest

from tests.reading.context import acts

_BINS = ("shed", "kitchen", "bin 3", "gen house", "plot 22")


@pytest.mark.parametrize(
    "text",
    [
        "who has the kids on friday",
        "whose turn is it to drive to football",
        "who's got the spare key to the hall",
        "who is on tea duty at the match",
        "cannot make choir tonight sorry",
        "i'll have the last slice if nobody minds",
        "no thanks i've eaten",
        "will do the ironing later",
        "done the shopping",
        "finished my homework",
        "remind me about the dentist tomorrow",
        "make that two pints",
        "make it three teas please tom",
        "how much sugar for the jam",
        "how much paint for the gen house",
        "how many tiles do we need for the kitchen",
        "is the shop open today",
        "when is the bus due",
        "when are the library books due",
        "how full is the car park",
        "what's in the sandwiches",
        "can i put metal in the microwave",
        "how deep should i plant tulips",
        "how do i make bran muffins",
        "got a recipe for bran flakes cake",
        "bought 2 kg of bran for the horses",
        "mixed 5 kg of bran mash for the pony",
        "made a batch of muffins with bran, 2 dozen",
        "how much bran do you give a horse",
        "who ate my yoghurt",
        "who'll take the dog on sunday",
        "take my shift at the pub someone",
        "anyone want my old sofa",
        "handing over the choir to bram next week",
        "happy to take the kids swimming",
        "i'm out of the quiz on thursday",
        "later gators",
        "done and dusted, exam over",
        "knock knock. who's there. bin. bin who. bin a long time",
        "what did the bin say to the dustman",
        "why did the bucket go to the doctor, he looked a little pail",
        "my husband says he has bin there done that",
        "bin 3 walks into a bar",
        "why does the shed never win at poker? it always folds",
        "new stove lit in the gen house, lovely",
        "opened the stove door and ash went everywhere",
        "started the engine at last",
        "started a new book in the shed",
        "started a new diet today, 2 kg to lose",
        "opened a tin of beans in the kitchen",
        "opened the shed, key is back under the pot",
        "opened a savings account for plot 22",
        "opened the windows in the gen house",
        "started a fire in the kitchen range",
        "bran flakes for breakfast, 40 g",
        "how do you make bran loaf, has anyone a recipe",
        "how do i make bran muffins without eggs",
        "horse had 2 kg of bran mash",
        "bought 3 kg bran for the rabbits",
        "got a 5 kg bag of bran for baking",
        "raisin bran is on offer, 2 for 3 quid",
        "made 12 bran muffins for the gen house",
        "shut the stove down for the night",
    ],
)
def test_what_is_said_of_other_things_is_nothing_of_ours(text: str) -> None:
    assert acts(text, bins=_BINS) == ()


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("got 80 ml off the shed in a mug, how much water for roses", ["ask", "drain"]),
        ("got 60 ml in a jar here, how much water do i add", ["ask"]),
        ("how do i make bran", ["ask"]),
        ("bought 5 kg of bran from the horse shop", ["stock"]),
        ("made 3 kg of bran for the bins", ["batch"]),
        ("started bin 9 behind the stove, 20 litres", ["open"]),
        ("i'll take bin 3, the sofa can move", ["accept"]),
        ("who has bin 3", ["ask"]),
        ("4 kg of dough that never rose, into bin 3", ["layer"]),
        ("pancake batter, 800 g, milk eggs and flour, into bin 3", ["layer"]),
        ("5 kg of bran left next to the dough", ["stock"]),
        ("500 g flour, 200 g sugar in the shed", ["layer"]),
    ],
)
def test_near_words_stand(text: str, kinds: list[str]) -> None:
    assert sorted(act.act for act in acts(text, bins=_BINS)) == kinds
