"""Questions whose words can ask about nothing but the craft, and talk that sounds like them."""

from typing import Any

import pytest

from handlers.reading.acts import Ask, Drain, Topic
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "topic"),
    [
        ("could we have the steps for the starter, my class wants to try", "batch"),
        ("how many cups of water go into 4 kg of bran", "batch"),
        ("is oat bran fine in place of wheat when I mix the starter", "batch"),
        ("less bran in winter or more?", "dose"),
        ("can you overdo the starter?", "dose"),
        ("what is the usual dose?", "dose"),
        ("what's the normal dose again", "dose"),
        ("remind me what the usual dose is", "dose"),
        ("one handful per layer, is that about right?", "dose"),
        ("are we supposed to be draining anything tonight?", "due"),
        ("how many nights till the shed can be opened?", "due"),
        ("will bin 3 want seeing to while I'm in Wales?", "due"),
        ("do I line the pit with anything?", "trench"),
        ("does bin 3 fit in a hole 1 m by 40 cm?", "trench"),
        ("can bin 3 go on the raspberries?", "bed"),
        ("could the shed be put under the plum patch too?", "bed"),
        ("may I put bin 3 on the raspberries?", "bed"),
        ("may I put raspberries in bin 3?", "allowed"),
        ("can raspberries go in bin 3?", "allowed"),
        ("would that be too much for my bed?", "bed"),
        ("how big a bed for 9 kg?", "bed"),
        ("what width of ditch does one bin want?", "trench"),
        ("how packed is bin 3?", "bin"),
        ("which one is almost full? I'm here with a bag of peelings", "bin"),
        ("which of ours is emptiest", "bin"),
        ("how long until we can sow in it", "due"),
        ("how many weeks till I can plant on top", "due"),
        ("bot, what do we need to see to before the 24th", "due"),
        ("bot what's to do this week?", "due"),
        ("and what should we do about those, bot", "trouble"),
        ("what bran's left? how much bran is left, the tub looks low", "starter"),
        ("has bin 3 got space for a couple kg of melon rinds", "bin"),
        ("how many more layers will our bran do?", "starter"),
        ("someone tell me what's due this week, the sheet got wet", "due"),
        ("has the shed got room for a bag of windfalls?", "bin"),
        ("stats for bin 3 please", "totals"),
        ("is cling film a strict no?", "allowed"),
        ("the runnings on my ferns, neat or thinned?", "dilution"),
        ("so what's overdue then", "due"),
        ("does stale naan get a guernsey in these things", "allowed"),
        ("is it kosher to lob a ham bone in bin 3", "allowed"),
        ("Lemon rinds. Four pounds. Into bin 3 or no?", "allowed"),
        ("wots in bin 3", "bin"),
        ("does bin 3 hold more than 20 litres", "bin"),
        ("is bin 3 supposed to smell of vinegar", "trouble"),
        ("after Ruth, who is it?", "custody"),
        ("what do I type once I've drained one?", "help"),
        ("How many kgs till date?", "totals"),
        ("From 1st till date how many kgs from my side?", "totals"),
        ("how much have we put in up to now", "totals"),
        ("what to do when the lid goes up like balloon", "trouble"),
    ],
)
def test_a_question_in_the_crafts_own_words_is_asked(text: str, topic: Topic) -> None:
    assert [act.topic for act in acts(text) if isinstance(act, Ask)] == [topic]
    assert all(isinstance(act, Ask) for act in acts(text))


@pytest.mark.parametrize(
    "text",
    [
        "what is the usual dose for the cat?",
        "what is the usual dose of vitamin D?",
        "put in the usual dose",
        "the usual dose.",
        "the steps to the bran mill are shut",
        "less sugar in summer or more?",
        "is football a strict no at your place then",
        "has the shed got room for a few more guests?",
        "what's overdue at the library then",
        "will my trainers rot in this",
        "can the dog eat mouldy bread",
        "wots in the post",
        "does the hall hold more than 80 people",
        "the dog smells rotten, should I be worried",
        "how do you make bran muffins",
        "after Ruth who gets the shower",
        "what do I type in the crossword, seven letters",
        "how many kgs did you lose till date?",
        "how much is the rent till now",
        "rate of onion is 45 per kg here, what is it there",
        "the rate of tomato has gone up, 30 per kg",
        "which one is full of beans, you or Ines",
        "how long til I can plant tomatoes outside",
        "what do we need to do before the wedding",
    ],
)
def test_talk_that_sounds_like_one_asks_nothing(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    "text",
    [
        "could I use that on my roses?",
        "can it go on the lawn?",
        "and is it ok for house plants?",
        "could it be used on the tomatoes?",
    ],
)
@pytest.mark.parametrize(
    "before",
    [{"last": Drain(volume_l=0.2)}, {"asked": (Ask(topic="dilution"),)}],
    ids=["drained", "asked"],
)
def test_what_the_liquid_may_go_on_is_asked_next(text: str, before: dict[str, Any]) -> None:
    (asked,) = acts(text, **before, in_room=True)
    assert isinstance(asked, Ask)
    assert asked.topic == "dilution"
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize(
    "text",
    [
        "What's on the schedule for this week, bot?",
        "bot what is on the agenda for next week",
        "What's scheduled for this week?",
    ],
)
@pytest.mark.parametrize("in_room", [True, False])
def test_what_is_scheduled_is_what_is_due(text: str, in_room: bool) -> None:
    assert [act.topic for act in acts(text, in_room=in_room) if isinstance(act, Ask)] == ["due"]


@pytest.mark.parametrize(
    "text",
    [
        "what's on the bus schedule this week?",
        "what's on telly this week?",
        "what's on the school calendar this week",
    ],
)
@pytest.mark.parametrize("in_room", [True, False])
def test_other_schedules_are_not_ours(text: str, in_room: bool) -> None:
    assert acts(text, in_room=in_room) == ()


@pytest.mark.parametrize(
    "text",
    [
        "somebody has to tell me why there's black mould in bin 3",
        "someone explain why bin 3 has green fur",
        "I'd love to know why there are maggots in bin 3",
        "I wonder why bin 3 smells of ammonia",
    ],
)
def test_who_asks_why_asks_about_trouble(text: str) -> None:
    asked = [act for act in acts(text) if isinstance(act, Ask)]
    assert [(act.topic, act.bin) for act in asked] == [("trouble", "bin 3")]


@pytest.mark.parametrize(
    "text",
    [
        "I know why there's black mould in bin 3, the lid was off",
        "Ruth told me why there's black mould in bin 3",
    ],
)
def test_who_knows_why_asks_nothing(text: str) -> None:
    assert not [act for act in acts(text) if isinstance(act, Ask)]


def test_how_deep_it_was_covered_is_told_and_not_asked() -> None:
    [buried] = acts("Emptied bin 3 into the trench by the leeks. Soil cover 25 cm.")
    assert buried.act == "bury"
    assert [act.act for act in acts("Emptied bin 3 into the trench. How much soil cover?")] == [
        "bury",
        "ask",
    ]


@pytest.mark.parametrize(
    "text",
    [
        "2 kg of peel in bin 3. How much bran's left? I'm scraping",
        "2 kg of peel in bin 3, how much starter have we left?",
    ],
)
def test_what_is_left_of_the_starter_is_no_dose_of_the_layer_beside_it(text: str) -> None:
    told = acts(text)
    assert [act.topic for act in told if isinstance(act, Ask)] == ["starter"]
