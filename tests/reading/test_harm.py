"""Harm told or asked about: it is heard from anybody, and from nobody who talks of other things."""

import pytest

from handlers.reading.acts import Ask, Drain
from handlers.reading.arranged import Harm
from handlers.reading.plans import plans, read
from tests.reading.context import group

TOLD = [
    ("liquid got in my eye", "in the eye"),
    ("some got in my eye", "in the eye"),
    ("my eye burns, I was draining just now", "in the eye"),
    ("the juice squirted right into Ruth's eye!", "in the eye"),
    ("splashed leachate in my mouth", "swallowed"),
    ("the child drank the juice", "swallowed"),
    ("she had jam on her hands and drank the juice from the bucket", "swallowed"),
    ("drank the juice by mistake, I thought it was brine", "swallowed"),
    ("my toddler swallowed some leachate", "swallowed"),
    ("my son tasted the bin juice", "swallowed"),
    ("the dog drank the juice", "swallowed by an animal"),
    ("help, our cat has been at the ferment", "swallowed by an animal"),
    ("I breathed in mould", "breathed in"),
    ("I inhaled a lot of bran dust", "breathed in"),
    ("spilled the juice all over my hands", "on the skin"),
    ("cut my finger on the lid of the shed bin", "in a wound"),
    ("bitten by a rat at the bin", "bitten"),
    ("feeling sick since burying the bin", "ill after"),
    ("I poured bleach into the shed bin", "chlorine"),
    ("mixed the leachate with bleach", "chlorine"),
    ("washed the bin with bleach", "bleach"),
    ("hit a pipe digging the trench", "pipe or cable"),
    ("the cat licked the drip tray of the shed bin", "swallowed by an animal"),
    ("my dog dug up the bin and ate it", "swallowed by an animal"),
    ("I think I swallowed a bit", "swallowed"),
    ("my eyes are burning after opening the bin", "in the eye"),
    ("my chest is tight after emptying the bin", "breathed in"),
    ("stabbed my hand with the fork digging in the bin", "in a wound"),
    ("my hands itch after emptying the bin", "on the skin"),
    ("broken glass in the bin!", "sharp things"),
    ("the bottle of juice exploded", "burst"),
    ("the jug of juice has blown up", "burst"),
    ("smoke coming out of the bin", "fire"),
    ("hurt my back lifting the bin", "back"),
    ("poured the juice into the pond", "into water"),
    ("my daughter put her hand in the leachate", "on the skin"),
    ("a child touched the juice", "on the skin"),
    ("the boy sucked his thumb after playing at the bin", "swallowed"),
    ("granny mixed the juice into her squash and drank it", "swallowed"),
    ("somebody drank from the tap of the shed bin", "swallowed"),
    ("she mistook the liquid for cider and had a glass", "swallowed"),
    ("the goat got into the bran", "swallowed by an animal"),
    ("my dog dug in the bed and ate the lot", "swallowed by an animal"),
    ("our cat is eating the scraps I buried", "swallowed by an animal"),
    ("a visitor drank a glass of it by mistake", "swallowed"),
    ("my aunt had a sip of the bin juice", "swallowed"),
    ("our flatmate ate some of the bran", "swallowed"),
    ("the girl put her fingers in the bin and licked them", "swallowed"),
    ("he drank the bin juice, he took it for apple juice, mistook it", "swallowed"),
    ("the puppy ate from the bin", "swallowed by an animal"),
    ("a hen ate fish heads out of the bucket", "swallowed by an animal"),
    ("the kitten licked up the leachate", "swallowed by an animal"),
    ("I have asthma and the bran makes dust", "who should not"),
    ("my child drank the tea", "swallowed"),
    ("the baby drank some bin tea", "swallowed"),
    ("grandad drank the tea, he thought it was cider", "swallowed"),
    ("someone drank the tea from the tap", "swallowed"),
    ("got tea in my eye", "in the eye"),
    ("some of the tea splashed into Ruth's eyes", "in the eye"),
    ("the tea got on my cut", "in a wound"),
    ("the cat licked the tea", "swallowed by an animal"),
    ("our puppy lapped up some tea", "swallowed by an animal"),
    ("tipped bleach into the tea", "chlorine"),
    ("I mixed it with bleach", "chlorine"),
    ("we accidentally mixed it with some bleach", "chlorine"),
    ("bleach and the liquid got mixed", "chlorine"),
    ("I've got a fever after turning the compost", "ill after"),
    ("my lad is ill since he stirred the bin", "ill after"),
    ("he's ill after opening the bin", "ill after"),
]
ASKED = [
    ("can I drink the juice", "to drink"),
    ("is the leachate poisonous?", "to drink"),
    ("is it safe to taste the juice?", "to drink"),
    ("can I feed the ferment to the chickens?", "to feed"),
    ("can the dog drink the bin juice?", "to feed"),
    ("can bleach go in the bin", "bleach"),
    ("can I clean the bin with bleach?", "bleach"),
    ("is the gas dangerous", "gas"),
    ("will the bin explode?", "gas"),
    ("is the green mould dangerous?", "mould"),
    ("I'm pregnant, can I do the bin?", "who should not"),
    ("my aunt is on chemo, can she drain the bin", "who should not"),
    ("is the bin safe for the kids?", "who should not"),
    ("do I need gloves for the bin?", "hands"),
    ("can I eat the stuff", "to drink"),
    ("can I drink the tea?", "to drink"),
    ("is the tea poisonous?", "to drink"),
    ("can the dog drink the tea?", "to feed"),
    ("can you feed the hens with the shed bin?", "to feed"),
    ("can I feed the shed bin to the pigs?", "to feed"),
    ("are the fumes bad?", "gas"),
    ("can it catch fire", "gas"),
    ("is it dangerous?", "who should not"),
    ("can the liquid burn my skin?", "on the skin"),
    ("can I pour it in the river", "into water"),
    ("is there botulism in the bin?", "germs"),
    ("can the kids get ill from the liquid?", "germs"),
    ("can we get sick from bokashi?", "germs"),
    ("can you get salmonella from the juice?", "germs"),
    ("is it safe to handle when pregnant?", "who should not"),
]
NO_HARM = [
    "keep an eye on the shed bin",
    "shed bin is fed, can someone feed the cat on Thursday?",
    "could you please feed my hens and then close the shed bin?",
    "if the shed bin smells ill wash it down from the tap",
    "ill prob get some from the shop for the shed bin",
    "nobody drank the juice",
    "don't get the juice in your eyes",
    "who drank my juice",
    "the kids drank all the orange juice",
    "the roses drank the liquid",
    "got soap in my eye",
    "the cat is pregnant",
    "is the gas bill in yet?",
    "I put the label on the bin by hand",
    "Reef was all bleached out, so sad",
    "cut my finger on the bread knife",
    "is the film safe for kids?",
    "my eyes are tired",
    "kids ate all the leftovers",
    "the cat drank my milk",
    "got sunburn on my face",
    "had a sip of tea and ate cake",
    "my cousin drank the juice, orange I mean",
    "the dog ate from my plate",
    "our guests ate the lot",
    "the cat seems fine, should I still come?",
    "cut my finger chopping onions",
    "I drank the juice of the gherkins",
    "I made plum jam once. It never set. We drained it and drank the juice",
    "he ate the peaches and drank the juice",
    "my child drank her tea",
    "he drank a cup of tea",
    "mum drank the tea and left",
    "we drank the tea Ruth made",
    "the kids drank the tea with milk and cake",
    "the kids drank all the tea at the party",
    "the cat knocked over my tea",
    "I mixed it with bleach to get the stain out of the shirt",
]


@pytest.mark.parametrize(("text", "hazard"), TOLD + ASKED)
def test_what_can_hurt_is_heard(text: str, hazard: str) -> None:
    found, _ = plans(text, group(in_room=True))
    assert found == (Harm(hazard=hazard),)  # type: ignore[arg-type]


@pytest.mark.parametrize("text", NO_HARM)
def test_other_talk_is_left_alone(text: str) -> None:
    assert not [one for one in plans(text, group(in_room=True))[0] if isinstance(one, Harm)]


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("she seems fine, do I have to do anything?", True),
        ("he's ok now, should we still call a doctor?", True),
        ("should I take him to the hospital?", True),
        ("my son seems ok. What now?", True),
        ("is that dangerous?", True),
        ("how much is too much?", True),
        ("she threw up", True),
        ("the dog is drowsy now", True),
        ("the weather seems fine, do we go?", False),
        ("the dishes are fine?", False),
        ("should we make tea?", False),
        ("how much is the bus?", False),
    ],
)
def test_what_is_said_next_of_whoever_swallowed_of_it(text: str, said: bool) -> None:
    following = Harm(hazard="swallowed, what next")
    assert (following in plans(text, group(in_room=True, harmed=True))[0]) == said
    assert following not in plans(text, group(in_room=True))[0]


def test_a_lone_member_means_the_liquid() -> None:
    for text, hazard in (("can I drink it?", "to drink"), ("a guest drank it", "swallowed")):
        assert plans(text, group(in_room=True, to_bot=True))[0] == (Harm(hazard=hazard),)  # type: ignore[arg-type]
        assert not plans(text, group(in_room=True))[0]


def test_a_splash_loses_no_record() -> None:
    text = "drained 300 ml from the shed bin and some got in my eye"
    told, drain = read(text, group(in_room=True))
    assert told == Harm(hazard="in the eye")
    assert isinstance(drain, Drain)
    assert (drain.volume_l, drain.bin) == (0.3, "shed")


@pytest.mark.parametrize(
    ("text", "use", "parts"),
    [
        ("can I put the juice on lettuce neat", "lettuce", 0.0),
        ("can I use the liquid undiluted on roses?", "roses", 0.0),
        ("can I pour the juice on my tomatoes?", "tomatoes", None),
        ("can I put it down the drain", "drain", None),
        ("can I use it on houseplants?", "houseplants", None),
        ("is the juice ok for lettuce?", "lettuce", None),
        ("can I pour the juice over my herbs?", "herbs", None),
        ("can I water the radishes with the juice?", "radishes", None),
        ("would 1 to 200 be safe on strawberries", "strawberries", 200.0),
        ("is 1:50 too strong for roses?", "roses", 50.0),
        ("is it ok to tip the leachate down the sink?", "drain", None),
    ],
)
def test_where_the_liquid_may_go(text: str, use: str, parts: float | None) -> None:
    assert read(text, group(in_room=True)) == (Ask(topic="dilution", use=use, parts=parts),)
