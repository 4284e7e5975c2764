"""Questions of a few words, in the same breath as a record."""

import pytest

from handlers.reading.acts import Ask, Batch, Drain, Layer, Observe, Seal, Topic
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "record", "topic"),
    [
        ("the shed smells of rotten eggs, any advice", Observe, "trouble"),
        ("there are maggots in bin 3, kindly advise", Observe, "trouble"),
        ("bin 3 has black mould on the lid and I'm at a loss", Observe, "trouble"),
        ("1 kg of mackerel in the shed, and now I fret, will it draw rats?", Layer, "trouble"),
        ("mixed 3 kg of bran today, how soon may we use it?", Batch, "due"),
        ("sealed the shed, not sure what day I may open it", Seal, "due"),
        ("put 2 kg of peel in bin 3, no idea what number of scoops that wants", Layer, "dose"),
        ("1 kg of peel in the shed, so what am I on now?", Layer, "totals"),
        ("another 2 kg of peel to bin 3, full yet?", Layer, "bin"),
        ("1 kg of mussels in bin 3. shells too?", Layer, "allowed"),
        ("drained bin 3, 250 ml, can I pour it on the beans?", Drain, "dilution"),
        ("hello\n2 kg of peel in bin 3\nand how much water for 90 ml?\nbye", Layer, "dilution"),
    ],
)
def test_a_record_says_what_the_few_words_beside_it_ask(
    text: str, record: type, topic: Topic
) -> None:
    told = acts(text)
    assert [type(act) for act in told] == [record, Ask]
    assert isinstance(told[1], Ask)
    assert told[1].topic == topic


@pytest.mark.parametrize(
    ("text", "record"),
    [
        ("bin 3 smells rotten again and there are flies. Why do I even bother", Observe),
        ("drained 300 ml from bin 3, how time flies", Drain),
        ("sealed the shed, the earliest of us all this month", Seal),
        ("1 kg of mussels in bin 3, shells too", Layer),
    ],
)
def test_a_sigh_beside_a_record_asks_nothing(text: str, record: type) -> None:
    assert [type(act) for act in acts(text)] == [record]


@pytest.mark.parametrize("lead", ["", "also ", "and ", "oh, "])
def test_how_much_water_is_of_its_own_sentence(lead: str) -> None:
    _, asked = acts(
        f"put 3 L of tea leaves in bin 3\n{lead}how much water for 90 ml?\nsee you friday"
    )
    assert isinstance(asked, Ask)
    assert (asked.liquid_l, asked.use, asked.bin) == (0.09, None, None)


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("drained a litre from bin 3, is that too much?", True),
        ("drained 200 ml from bin 3, is that normal?", True),
        ("drained half a litre from bin 3. Isn't that a lot?", True),
        ("got 2 litres of liquid out of bin 3, too much?", True),
        ("drained a litre from bin 3, that is a lot", False),
        ("drained a litre from bin 3, is it raining too?", False),
    ],
)
def test_whether_so_much_liquid_is_usual(text: str, asked: bool) -> None:
    told = acts(text, in_room=True)
    assert [type(act) for act in told] == [Drain, *([Ask] if asked else [])]
    assert all(act.topic == "liquid" for act in told if isinstance(act, Ask))
