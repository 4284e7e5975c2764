"""What stays out of a bin: asked about by any name, and never taken for scraps."""

import pytest

from handlers.reading.acts import Ask, Layer
from handlers.reading.arranged import Unfit
from handlers.reading.plans import read
from tests.reading.context import group


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("can I put dog poo in the bin", "dog poo"),
        ("can nappies go in", "nappies"),
        ("can plastic go in the shed bin?", "plastic"),
        ("can old medicines go in", "old medicines"),
        ("is it ok to add wood ash to the bin?", "wood ash"),
        ("can I add mouldy bread", "mouldy bread"),
        ("dead rat in the bin ok?", "dead rat"),
        ("what about cat litter in the bin?", "cat litter"),
        ("is mouldy bread ok", "mouldy bread"),
    ],
)
def test_what_stays_out_is_asked_about(text: str, what: str) -> None:
    [act] = read(text, group(in_room=True))
    assert isinstance(act, Ask)
    assert (act.topic, act.what) == ("allowed", what)


def test_a_sign_that_is_asked_about_goes_into_no_bin() -> None:
    [act] = read("how about the grubs in the bin?", group(in_room=True))
    assert isinstance(act, Ask)
    assert (act.topic, act.signs) == ("trouble", ("insects",))


@pytest.mark.parametrize("text", ["what about glass?", "clingfilm?", "and ash?"])
def test_a_bare_thing_is_asked_about_only_behind_the_bots_words(text: str) -> None:
    assert read(text, group(in_room=True)) == ()
    [act] = read(text, group(in_room=True, after_bot=True))
    assert isinstance(act, Ask)
    assert act.topic == "allowed"


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("threw 3 kg of rubbish in the bin", "rubbish"),
        ("put dog poo in the bin 1 kg", "dog poo"),
        ("added 2 kg of cat litter to the shed bin", "cat litter"),
        ("dropped a nappy in the bin by accident", "nappy"),
    ],
)
def test_what_stays_out_is_no_layer(text: str, what: str) -> None:
    [plan] = read(text, group(in_room=True))
    assert isinstance(plan, Unfit)
    assert plan.what == what
    assert plan.ours
    assert not plan.beside_food


@pytest.mark.parametrize(
    "text",
    [
        "put 2 kg of peelings and some plastic in the shed bin",
        "tipped 3 kg of spoiled tomatoes into the shed bin",
        "tipped 3 litres of used oil into the shed bin",
        "added 1.5 kg of mouldy rolls to the shed",
        "800 g moldy cheese into bin 3",
        "put 2 kg of mouldy naan in the shed bin",
        "tipped 1 kg mouldy oranges in",
        "added 2 kg to shed with a battery in it",
        "1 kg went in with some foil stuck to it",
        "put 2 kg of peelings in the shed bin with some cling film in there",
    ],
)
def test_food_beside_it_is_a_layer_all_the_same(text: str) -> None:
    warned, layer = read(text, group(in_room=True))
    assert isinstance(warned, Unfit)
    assert warned.beside_food
    assert isinstance(layer, Layer)


@pytest.mark.parametrize(
    "text",
    [
        "can I put the glass out for recycling",
        "can I put soil in the pots?",
        "put the bins out please, 3 bags",
        "did you put the label on the shed bin?",
        "put the plastic chairs in the hall",
        "threw 2 kg of old magazines out",
        "chucked 3 kg of plastic away at last",
        "has put one paint bucket (4 litres) of mixed scraps in the shed bin",
        "was the match today?",
    ],
)
def test_other_things_elsewhere_are_left_alone(text: str) -> None:
    said = read(text, group(in_room=True))
    assert not [one for one in said if isinstance(one, Unfit)]
    assert not [one for one in said if isinstance(one, Ask) and one.topic == "allowed"]


def test_the_rubbish_of_the_house_is_no_layer() -> None:
    [plan] = read("I put the rubbish in the bin", group(in_room=True))
    assert isinstance(plan, Unfit)
    assert not plan.ours


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("a plastic bag went in with it", "plastic bag"),
        ("the kids' dog poo went in the shed bin", "dog poo"),
        ("some glass fell into the shed bin, sorry", "glass"),
        ("put a fork in the shed bin by accident", "fork"),
        ("someone put a crisp packet in the shed bin", "crisp packet"),
        ("there's cling film in the shed", "cling film"),
        ("found two elastic bands in the shed bin", "elastic bands"),
    ],
)
def test_what_got_in_by_itself_is_no_layer(text: str, what: str) -> None:
    [plan] = read(text, group(in_room=True))
    assert isinstance(plan, Unfit)
    assert plan.what.endswith(what)


@pytest.mark.parametrize(
    "text",
    [
        "plastic bags went in the recycling bin",
        "sand got into the house",
        "the battery came in the post",
        "the dog got in",
        "saw a plastic bag in the woods",
        "there's a spoon in the sink",
        "there are flies in the shed bin",
    ],
)
def test_what_got_in_elsewhere_is_no_news(text: str) -> None:
    assert not any(isinstance(act, Unfit) for act in read(text, group(in_room=True)))


@pytest.mark.parametrize("text", ["cat litter?", "dog poo?", "mouldy crusts?", "tea towels?"])
def test_a_bare_waste_is_asked_about_wherever_it_is_said(text: str) -> None:
    found = read(text, group(in_room=True))
    assert [act.what for act in found if isinstance(act, Ask)] == (
        [] if "towels" in text else [text.removesuffix("?")]
    )


@pytest.mark.parametrize(
    "text",
    ["the bread went mouldy", "we had mouldy bread all week", "is it mouldy, 2 kg?"],
)
def test_talk_of_mould_has_none(text: str) -> None:
    assert not any(isinstance(act, Unfit) for act in read(text, group(in_room=True)))
