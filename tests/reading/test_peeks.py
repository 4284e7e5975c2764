"""A bin closed again after a look is not sealed; scraps laid under others are no burial."""

import pytest

from handlers.reading.acts import Bury, Drain, Layer, Open, Seal
from tests.reading.context import acts


@pytest.mark.parametrize(
    "text",
    [
        "opened bin 3, saw a maggot, closed it again",
        "had a peek in big blue, all white inside, shut it again",
        "lid off, 600 g of leek tops in, lid on. Big blue",
        "stopped by the shed bin with a kilo of rind, closed it after me",
        "turned the tap on bin 3, 90 ml, closed it again",
        "700 g of peelings in bin 3, lid tight",
        "500 g to big blue, pressed down, lid on firmly",
        "a kilo of leeks in bin 3, bran on, lid on",
        "600 g in the shed, closed it well",
    ],
)
def test_what_was_opened_and_shut_again_is_not_sealed(text: str) -> None:
    assert not any(isinstance(act, Seal) for act in acts(text))


@pytest.mark.parametrize(
    "text",
    [
        "opened bin 3, pressed it down, closed it for good",
        "put the last 400 g in bin 3 and closed it",
        "closed bin 3 today",
        "had a look in bin 3, it's full, so I shut it till the 4th",
        "bin 3 is full with these 2 kg of peel, lid on firmly",
        "last 600 g in bin 3, closed it well",
        "closed bin 3 well",
        "600 g in bin 3, lid taped on tight",
    ],
)
def test_what_was_closed_to_stay_closed_is_sealed(text: str) -> None:
    assert any(isinstance(act, Seal) and act.bin == "bin 3" for act in acts(text))


@pytest.mark.parametrize(
    ("text", "kind", "of"),
    [
        ("buried the cod heads deep under the rice in bin 3", Layer, "bin 3"),
        ("ines buried her sardine tails in big blue under the salad", Layer, "big blue"),
        ("buried bin 3 under the beans", Bury, "bin 3"),
        ("buried big blue in the bed by the cabbages", Bury, "big blue"),
    ],
)
def test_scraps_buried_within_a_bin_are_a_layer(text: str, kind: type, of: str) -> None:
    [act] = acts(text)
    assert isinstance(act, kind)
    assert getattr(act, "bin", None) == of


@pytest.mark.parametrize(
    ("text", "of"),
    [
        ("carrot tops, a kilo, 3", "bin 3"),
        ("2 kg, 3, cabbage", "bin 3"),
        ("3 got a kilo of bread", "bin 3"),
        ("put a kilo of peel in the shed bin, 3 of us", "shed"),
        ("put a kilo of peel in at 3, all veg", None),
    ],
)
def test_a_bin_called_by_its_number_alone(text: str, of: str | None) -> None:
    [layer] = acts(text)
    assert isinstance(layer, Layer)
    assert layer.bin == of


@pytest.mark.parametrize(
    "text",
    [
        "ines buried bin 3, I rinsed it and set it going again",
        "bin 3's been dug in, scrubbed and restarted",
        "begun bin 3 anew from empty",
        "bin 3 is washed and back in service from today",
    ],
)
def test_an_emptied_bin_is_begun_again(text: str) -> None:
    assert [act.bin for act in acts(text) if isinstance(act, Open)] == ["bin 3"]


@pytest.mark.parametrize(
    "text",
    [
        "washed bin 3 and the pong is back on duty all the same",
        "bin 3's tap is clean and the juice is running again",
        "once bin 3 is washed we'll start it again",
        "is bin 3 washed and back in use?",
        "the dishwasher in the shed was cleaned and is running again",
    ],
)
def test_what_is_no_new_beginning(text: str) -> None:
    assert not any(isinstance(act, Open) for act in acts(text))


def test_one_plain_deed_carries_the_other() -> None:
    told = acts("Ruth's drained big blue and ines has sealed bin 3 for the fortnight")
    assert [(type(act), getattr(act, "bin", None)) for act in told] == [
        (Drain, "big blue"),
        (Seal, "bin 3"),
    ]


@pytest.mark.parametrize(
    "text", ["I wouldve drained bin 3 but the tap was stuck", "somebody shouldve sealed bin 3"]
)
def test_short_forms_without_their_apostrophe(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("Tall Paul's been put to bed, taped and dated", {Seal}),
        ("sealed today's lot in with an inch of bran, bin 3, 400 g of mash", {Layer}),
        ("Tall Paul went into the potato bed this morning", {Bury}),
        ("sealed bin 3 with tape", {Seal}),
    ],
)
def test_put_to_bed_and_sealed_in_with_bran(text: str, kinds: set[type]) -> None:
    assert {type(act) for act in acts(text)} == kinds


def test_what_nobody_did_denies_no_other_deed() -> None:
    [layer] = acts("the cold pizza nobody ate, 1 kg, bin 3")
    assert isinstance(layer, Layer)
    assert (layer.mass_kg, layer.bin) == (1, "bin 3")


@pytest.mark.parametrize(
    "text",
    [
        "Tall Paul buried his uncle on Friday",
        "Tall Paul's drained his glass and gone home",
        "Tall Paul has sealed her envelope",
    ],
)
def test_a_bin_does_nothing_to_what_is_somebodys(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    "text",
    [
        "I have mended the lid of bin 3. Fresh rubber, now it is airtight.",
        "New gasket on bin 3's lid, now it's airtight",
        "the lid on big blue shuts properly now I've fitted a new ring",
        "replaced the clips on bin 3, the lid closes tight now",
        "greased the rim of big blue, its lid seals well now",
    ],
)
def test_how_a_mended_lid_shuts_seals_no_bin(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    "text",
    [
        "new lid on bin 3, and sealed it today",
        "mended the lid and sealed bin 3",
        "closed bin 3, the new lid fits well",
        "sealed bin 3, airtight now",
        "put the new lid on big blue and shut it for two weeks",
    ],
)
def test_a_bin_is_sealed_beside_its_mended_lid(text: str) -> None:
    assert [type(act) for act in acts(text)] == [Seal]
