"""Deeds that a question is about are told by nobody; those with a mark behind are asked about."""

import pytest

from handlers.reading.acts import Ask, Bury, Drain, Layer, Seal, Unsure
from tests.reading.context import acts


@pytest.mark.parametrize(
    "text",
    [
        "did 2 kg of rice go in the shed bin yesterday?",
        "did I put 2 kg of rice in the shed bin yesterday?",
        "Ines, did you put 2 kg of rice in the shed bin yesterday?",
        "so did 2 kg of rice go in the shed bin? I can't remember",
        "did Ines put 2 kg of rice in the shed bin? I put 1 kg in bin 3",
        "you put 2 kg of rice in the shed bin, right?",
        "you drained the shed bin?",
        "you said 2 kg of rice went in the shed bin?",
        "is it true that 2 kg of rice went in the shed bin?",
        "am I right that we sealed the shed bin?",
        "are you sure 2 kg of rice went in the shed?",
        "did a kilo of peelings end up in the shed bin",
        "did 2 kg of bread go in the shed today",
    ],
)
def test_what_is_asked_of_the_room_is_no_record(text: str) -> None:
    found = [act for act in acts(text, in_room=True) if not isinstance(act, Ask)]
    assert all(getattr(act, "bin", None) == "bin 3" for act in found)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("so 3 kg of fish went in the shed bin?", Layer),
        ("really? 3 kg went in the shed bin?", Layer),
        ("2 kg of rice into the shed?", Layer),
        ("I added 2 kg of rice to the shed bin?", Layer),
        ("2 kg of rice went in the shed bin?? wow", Layer),
        ("we sealed the shed bin?", Seal),
        ("the shed is sealed?", Seal),
        ("we sealed the shed bin, right?", Seal),
        ("the shed bin was buried already?", Bury),
        ("somebody drained the shed bin yesterday?", Drain),
    ],
)
def test_a_statement_with_a_question_mark_is_asked_about(text: str, kind: type) -> None:
    [act] = acts(text, in_room=True)
    assert isinstance(act, Unsure)
    assert isinstance(act.guess[0], kind)


@pytest.mark.parametrize(
    "text",
    [
        "added 2 kg of rice to the shed bin, ok?",
        "I added 2 kg of rice to the shed bin, right?",
        "added 2 kg of rice to the shed bin. how much bran?",
        "2 kg rice to the shed, how much bran?",
        "did you all see? I added 2 kg of rice to the shed",
        "did anyone smell it? 2 kg of rice to the shed",
        "who fed the shed? I did, 2 kg of rice",
        "was it me that threw 2 kg of rice in the shed yesterday? It was. Write it down.",
        "did 2 kg of rice in the shed bin",
        "did add 2 kg of rice to the shed",
        "2 kg of rice left over?? it's in the shed bin now",
        "2 kg of rice in the shed?!",
    ],
)
def test_a_report_beside_a_question_is_told(text: str) -> None:
    layer = next(act for act in acts(text, in_room=True) if isinstance(act, Layer))
    assert (layer.mass_kg, layer.bin) == (2, "shed")
