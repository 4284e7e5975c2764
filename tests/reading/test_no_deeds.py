"""Verbs of the craft that tell no record: a bin dug up again, weighed, its tap shut, a denial."""

import pytest

from handlers.reading.acts import Bury, Seal, Unsure
from tests.reading.context import acts


def _kinds(text: str) -> list[str]:
    return [act.act for act in acts(text, in_room=True)]


@pytest.mark.parametrize(
    "text",
    [
        "dug up the shed bin",
        "dug bin 3 out again",
        "dug out the shed bin",
        "weighed the shed bin: 12 kg",
        "we weighed bin 3 today, it was 9 kg",
        "closed the tap of the shed bin",
        "closed bin 3's tap",
        "put 1 kg in the shed? nope",
        "added 2 kg to the shed? no, that was Ruth",
        "added 2 kg to the shed haha not really",
        "took 1 kg out of the shed bin",
        "the shed is 0 L",
    ],
)
def test_no_record_is_told(text: str) -> None:
    assert _kinds(text) == []


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("dug the shed bin in", "bury"),
        ("dug the shed bin out into the rose bed", "bury"),
        ("dug out a trench and buried the shed bin", "bury"),
        ("weighed 2 kg of peel into the shed bin", "layer"),
        ("closed the shed bin, the tap is shut too", "seal"),
        ("tap closed on bin 3, sealed it", "seal"),
        ("added 2 kg to the shed, anything else? no", "layer"),
        ("took half a litre out of the shed bin", "drain"),
        ("poured half a litre into the shed bin", "layer"),
        ("poured half a litre off the shed bin", "drain"),
    ],
)
def test_the_same_verbs_tell_a_record(text: str, kind: str) -> None:
    assert _kinds(text)[:1] == [kind]


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("buried half of the shed bin", True),
        ("buried half the shed bin under the plum", True),
        ("buried 1 kg from bin 3", True),
        ("buried most of bin 3 in the rose bed", True),
        ("buried the other half of the shed bin", None),
        ("buried the rest of the shed bin", None),
        ("buried the shed bin in part of the bed", None),
    ],
)
def test_a_part_of_a_bin_is_not_the_whole(text: str, part: bool | None) -> None:
    [act] = acts(text, in_room=True)
    assert isinstance(act, Bury)
    assert act.part is part


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("closed the shed", Unsure),
        ("shed is locked", Unsure),
        ("closed the shed bin", Seal),
        ("closed the shed, it's full", Seal),
        ("closed the shed for two weeks", Seal),
        ("sealed the shed", Seal),
    ],
)
def test_a_room_that_is_shut_is_asked_about(text: str, told: type[Seal | Unsure]) -> None:
    assert [type(act) for act in acts(text, in_room=True)] == [told]


@pytest.mark.parametrize(
    "text", ["half a litre of milk please", "2 kg of rice, please", "1 kg of cheese pls"]
)
def test_what_is_ordered_goes_into_no_bin(text: str) -> None:
    assert _kinds(text) == []


@pytest.mark.parametrize("text", ["2 kg of peelings please", "1 kg of rice in the shed please"])
def test_a_layer_may_be_told_politely(text: str) -> None:
    assert _kinds(text) == ["layer"]
