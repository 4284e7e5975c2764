"""A bin's name as the thing taken, refused, passed on or asked for, and its false twins."""

from datetime import date

import pytest

from handlers.reading.acts import Accept, Act, Ask, Decline, Offer
from tests.reading.context import acts


def told(text: str) -> tuple[Act, ...]:
    return acts(text, bins=("shed", "Agnes", "bin 3", "plum"), members=("ruth", "kofi"))


@pytest.mark.parametrize(
    ("text", "act"),
    [
        ("Agnes is coming to us, we've cleared the porch", Accept(bin="Agnes")),
        ("Plum can winter with us", Accept(bin="plum")),
        ("put my name down for bin 3", Accept(bin="bin 3")),
        ("the shed is no bother, there's space by the boiler", Accept(bin="shed")),
        ("yes to plum, no to any of the lids", Accept(bin="plum")),
        ("Ruth's agreed to bin 3", Accept(bin="bin 3")),
        ("plum's under our roof now", Accept(bin="plum")),
        ("hard pass on Agnes, I've a newborn", Decline(bin="Agnes")),
        ("Ruth's not up for plum, she's on lates", Decline(bin="plum")),
        ("leave her off bin 3 for now, Ruth says", Decline(bin="bin 3")),
        ("find another mug for plum", Decline(bin="plum")),
        ("I've done my stint with the shed", Decline(bin="shed")),
        ("please don't palm Agnes off on me", Decline(bin="Agnes")),
        ("Yes, Ruth, bring me Agnes on Sunday", Accept(bin="Agnes")),
        ("looking for a new home for Agnes", Offer(bin="Agnes")),
        ("need somebody to take bin 3 on", Offer(bin="bin 3")),
        ("Agnes is going begging", Offer(bin="Agnes")),
        ("bin 3's going begging", Offer(bin="bin 3")),
        ("plum's up for grabs", Offer(bin="plum")),
        ("the job's moved me north so Agnes needs somewhere to live", Offer(bin="Agnes")),
        ("we've no more room for plum, any takers?", Offer(bin="plum")),
        ("can't keep Agnes past the spring, who'd like her?", Offer(bin="Agnes")),
        ("who fancies bin 3?", Offer(bin="bin 3")),
        ("Agnes is Ruth's from Monday", Offer(bin="Agnes")),
        ("Ruth, you're up for plum", Offer(bin="plum")),
        ("handing Ruth bin 3 tonight", Offer(bin="bin 3")),
        ("passing him bin 3", Offer(bin="bin 3")),
        ("is Agnes spoken for next month?", Ask(topic="custody", bin="Agnes")),
        ("is plum already promised?", Ask(topic="custody", bin="plum")),
        ("has anyone got dibs on plum for July?", Ask(topic="custody", bin="plum")),
        ("is bin 3 free from the 2nd", Ask(topic="custody", bin="bin 3")),
        ("whither goes Agnes next", Ask(topic="custody", bin="Agnes")),
        ("when will I get bin 3", Ask(topic="custody", bin="bin 3")),
        ("when does Ruth inherit plum?", Ask(topic="custody", bin="plum")),
        ("is anyone meant to be collecting Agnes", Ask(topic="custody", bin="Agnes")),
        ("who amongst you is custodian of plum", Ask(topic="custody", bin="plum")),
        ("in whose cellar is plum now?", Ask(topic="custody", bin="plum")),
        ("has bin 3 been picked up?", Ask(topic="custody", bin="bin 3")),
    ],
)
def test_a_bin_is_taken_refused_or_offered_by_its_name(text: str, act: Act) -> None:
    (found,) = told(text)
    assert type(found) is type(act)
    assert getattr(found, "bin", None) == getattr(act, "bin", None)


@pytest.mark.parametrize(
    ("text", "to"),
    [
        ("dropped bin 3 at Ruth's", "ruth"),
        ("brought Agnes over to Ruth's just now", "ruth"),
        ("took plum round to Ruth this morning", "ruth"),
    ],
)
def test_to_whom_a_bin_was_brought_is_read(text: str, to: str) -> None:
    (found,) = told(text)
    assert isinstance(found, Offer)
    assert found.to == to


@pytest.mark.parametrize(
    "text", ["took bin 3 to Ruth's garden", "left the lid of plum at Ruth's", "brought Ruth a plum"]
)
def test_what_else_is_brought_is_no_offer(text: str) -> None:
    assert not any(isinstance(act, Offer) for act in told(text))


@pytest.mark.parametrize(
    ("text", "on"),
    [
        ("I'd like somebody else to keep bin 3 from July", date(2026, 7, 1)),
        ("plum's up for grabs from next month", date(2026, 7, 1)),
        ("can anyone take plum as of August?", date(2026, 8, 1)),
    ],
)
def test_the_month_from_which_a_bin_is_offered_is_read(text: str, on: date) -> None:
    (found,) = told(text)
    assert isinstance(found, Offer)
    assert found.on == on


def test_the_one_whose_it_is_to_be_is_read() -> None:
    (found,) = told("Agnes is Ruth's from Monday")
    assert isinstance(found, Offer)
    assert (found.to, found.on) == ("ruth", date(2026, 6, 22))


def test_whose_hands_it_goes_into_is_read() -> None:
    (found,) = acts("bin 3 will go to Ruth's hands from Monday")
    assert isinstance(found, Offer)
    assert (found.bin, found.to) == ("bin 3", "ruth")


def test_the_day_it_is_taken_from_is_read() -> None:
    (found,) = told("yes to plum, from Friday")
    assert isinstance(found, Accept)
    assert found.on == date(2026, 6, 19)


@pytest.mark.parametrize(
    "text",
    [
        "Agnes is coming to us for lunch on Sunday",
        "a bag of coats in the shed going spare",
        "the post at the shed is going begging",
        "who fancies a pint after?",
        "free to a good home: one plum sofa",
        "yes to plum jam",
        "Agnes is Ruth's aunt",
        "is Agnes free from the 2nd",
        "is the shed free on the 9th for a ceilidh",
        "the shed is Ruth's next project",
        "the shed is Ruth's from Monday's delivery",
        "is the shed free on Friday for a rehearsal",
        "has anyone got dibs on the last slice",
        "is the last cake spoken for?",
        "passing him the plum jam",
        "handing Ruth the keys to the shed",
        "whither the summer, I ask you",
        "when do I get my ladder back",
        "is anyone meant to be collecting the kids",
        "Ruth is custodian of the museum",
        "Ruth are you around Thursday for a hand with the shed bin? I'll bring the spade",
        "Ruth are you free Saturday to help me with bin 3?",
        "Ines, could you lend me a hand burying bin 3 on Thursday?",
        "Ruth will you be home Saturday? I'd love to see bin 3",
        "Ines would you have a minute tomorrow for the lid of bin 3",
        "Ruth can you look at bin 3 on Saturday?",
        "Ruth would you mind emptying the tap on bin 3 Saturday",
        "Ines can you drain bin 3 on Friday?",
        "Ruth could you take a look at bin 3 on Saturday",
    ],
)
def test_other_things_taken_and_offered_are_no_bins(text: str) -> None:
    assert told(text) == ()


@pytest.mark.parametrize(
    "text",
    [
        "Ruth can you help me out by taking bin 3 on Saturday?",
        "Ruth would you mind bin 3 from Saturday",
        "Ruth are you free to have bin 3 from Saturday?",
        "Ruth could you look after bin 3 next week",
        "Ruth would you check on bin 3 from Saturday while we're away",
        "Ruth will you be around to have bin 3 from Saturday?",
    ],
)
def test_help_that_takes_a_bin_over_is_an_offer(text: str) -> None:
    assert [(type(act), act.to) for act in told(text) if isinstance(act, Offer)] == [
        (Offer, "ruth")
    ]


@pytest.mark.parametrize(
    ("text", "bin"),
    [
        ("sealed bin 3 this afternoon and handed the shed to Ruth", "shed"),
        ("sealed bin 3 and handed the shed over to Ruth", "shed"),
        ("handed the shed to Ruth, bin 3 stays with me", "shed"),
    ],
)
def test_the_bin_passed_on_is_the_one_behind_the_word(text: str, bin: str) -> None:
    assert [act.bin for act in acts(text, in_room=True) if isinstance(act, Offer)] == [bin]


@pytest.mark.parametrize(
    ("text", "on"),
    [
        ("I'll take Agnes, starting the 25th suits", date(2026, 6, 25)),
        ("handing Agnes to Ruth on the 25th unless somebody minds", date(2026, 6, 25)),
        ("Ruth, could you have Agnes from the thirtieth?", date(2026, 6, 30)),
        ("now that I am off, Agnes is all yours from the first of July", date(2026, 7, 1)),
        ("not on Sunday, but I can take Agnes on Monday", date(2026, 6, 22)),
        ("I can't take Agnes on Sunday, ask Ruth about Monday", date(2026, 6, 21)),
        ("Monday I lost my cast. Can somebody take Agnes from Sunday?", date(2026, 6, 21)),
        ("can somebody take Agnes next week?", date(2026, 6, 22)),
        ("can somebody take Agnes next week Thursday?", date(2026, 6, 25)),
    ],
)
def test_the_day_on_which_it_is_to_pass(text: str, on: date) -> None:
    (act,) = told(text)
    assert isinstance(act, Accept | Decline | Offer)
    assert act.on == on


@pytest.mark.parametrize(
    ("text", "on"),
    [
        ("I'm away from the 20th to the 27th, so I'm handing Agnes to Kofi on Friday", 19),
        ("I go on holiday on the 24th, handing Agnes to Kofi on Friday", 19),
        ("I am away from the 20th, Kofi can have Agnes from Friday", 19),
        ("I'm handing Agnes to Kofi on Friday, I'm away from the 20th", 19),
        ("I'm away from the 20th to the 27th so I'm handing Agnes to Kofi", 20),
    ],
)
def test_the_day_of_handing_over_beats_those_of_being_away(text: str, on: int) -> None:
    offers = [
        act
        for act in acts(text, bins=("Agnes",), members=("ruth", "kofi"), sender="ruth")
        if isinstance(act, Offer)
    ]
    assert [(act.bin, act.to, act.on) for act in offers] == [("Agnes", "kofi", date(2026, 6, on))]
