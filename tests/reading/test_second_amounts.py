"""A second amount in the same breath, told of another bin, another day or another's doing."""

import pytest

from handlers.reading.acts import Drain, Layer, Seal
from tests.reading.context import acts

BINS = ("shed", "green", "hall")


@pytest.mark.parametrize(
    ("text", "drained"),
    [
        ("400 ml out of the shed, 200 out of green", {"shed": 0.4, "green": 0.2}),
        ("250 ml from the shed, 120 hall", {"shed": 0.25, "hall": 0.12}),
        ("tea: green 350, hall 80", {"green": 0.35, "hall": 0.08}),
        ("leachate today: shed 300 ml, green 150", {"shed": 0.3, "green": 0.15}),
        ("drained green (220) and hall (90)", {"green": 0.22, "hall": 0.09}),
        ("drained hall, three cups, then green, just one cup", {"hall": 0.75, "green": 0.25}),
    ],
)
def test_each_bin_is_drained_of_its_own(text: str, drained: dict[str, float]) -> None:
    told = [act for act in acts(text, bins=BINS) if isinstance(act, Drain)]
    assert {act.bin: act.volume_l for act in told} == pytest.approx(drained)


@pytest.mark.parametrize(
    "text",
    [
        "took 500 ml off green on Monday, and again this morning 300",
        "drained half a litre from green on Monday, 300 ml again today",
        "500 ml off green on Monday and only 300 today",
    ],
)
def test_drained_again_on_another_day(text: str) -> None:
    told = [act for act in acts(text, bins=BINS) if isinstance(act, Drain)]
    assert [act.bin for act in told] == ["green", "green"]
    assert [act.volume_l for act in told] == pytest.approx([0.5, 0.3])
    assert [act.on and act.on.day for act in told] == [15, 17]


@pytest.mark.parametrize(
    ("text", "layers"),
    [
        ("quinces in shed: 3 kg. leek tops in hall: 2", {"shed": 3.0, "hall": 2.0}),
        ("got 1 kg for the shed and 2 for green", {"shed": 1.0, "green": 2.0}),
        ("rinds in hall: four kilos. Crusts in green: two.", {"hall": 4.0, "green": 2.0}),
        ("2 kg for shed, 1 for the dog", {"shed": 2.0}),
    ],
)
def test_each_bin_is_fed_its_own(text: str, layers: dict[str, float]) -> None:
    told = [act for act in acts(text, bins=BINS) if isinstance(act, Layer)]
    assert {act.bin: act.mass_kg for act in told} == pytest.approx(layers)


def test_another_puts_in_besides() -> None:
    told = [
        act
        for act in acts("ruth put a kilo in and I put two, the shed, all crusts", bins=BINS)
        if isinstance(act, Layer)
    ]
    assert [(act.member, act.mass_kg, act.bin) for act in told] == [
        ("ruth", 1.0, "shed"),
        (None, 2.0, "shed"),
    ]


@pytest.mark.parametrize(
    ("text", "who"),
    [
        ("ines put 3 kg of crusts in the shed and ruth did the same", ["ines", "ruth"]),
        ("I put 3 kg of crusts in the shed, ines did too.", [None, "ines"]),
        ("ruth put 3 kg of crusts in the shed & I did likewise", ["ruth", None]),
        ("ruth put 3 kg of crusts in the shed and it smells the same", ["ruth"]),
    ],
)
def test_another_puts_in_as_much(text: str, who: list[str | None]) -> None:
    told = [act for act in acts(text, bins=BINS) if isinstance(act, Layer)]
    assert [act.member for act in told] == who
    assert all(act.mass_kg == 3.0 and act.bin == "shed" for act in told)


@pytest.mark.parametrize(
    "text",
    [
        "can someone tell the bot I put 2 kg of crusts in green?",
        "could you log 2 kg of crusts in green, my hands are wet",
        "can you put down 2 kg of crusts for green",
    ],
)
def test_asked_to_write_it_down(text: str) -> None:
    [layer] = acts(text, bins=BINS)
    assert isinstance(layer, Layer)
    assert (layer.mass_kg, layer.bin) == (2.0, "green")


@pytest.mark.parametrize(
    "text",
    [
        "300 ml off the shed, 150 people came to the fair",
        "300 ml off the shed, 20 green tomatoes on the sill",
    ],
)
def test_a_count_of_something_else_is_no_second_amount(text: str) -> None:
    told = [act for act in acts(text, bins=BINS) if isinstance(act, Drain)]
    assert [act.bin for act in told] == ["shed"]
    assert told[0].volume_l == pytest.approx(0.3)


@pytest.mark.parametrize(
    "text",
    ["1 kg of crusts into green and shut for good", "drained 1 L off green, then closed it up"],
)
def test_sealed_in_the_same_breath(text: str) -> None:
    told = acts(text, bins=BINS)
    assert [type(act) for act in told[1:]] == [Seal]
    assert {getattr(act, "bin", None) for act in told} == {"green"}
