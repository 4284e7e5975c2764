"""Refusals and the like between people, which answer nothing of ours."""

import pytest

from handlers.reading.acts import Ask, Decline, Later, Retract
from handlers.reading.doubts.asides import is_aside
from handlers.reading.message import read_message
from handlers.reading.plans import read
from tests.reading.context import acts, group


@pytest.mark.parametrize(
    "text",
    ["sorry, can't do choir", "I must decline the port", "sorry can't do the raffle",
     "remind me tomorrow, Ines, I want that cake recipe", "delete that photo",
     "cancel that booking", "what a week", "scratch that, curry for dinner",
     "scratch that, Thursday suits the band", "take that down from the gate",
     "ignore what I said about the neighbours", "wipe that grin off your face",
     "undo that bottom button", "homework done, tea next", "give us a bell after choir",
     "suhoor done, going back to bed", "shift done and dusted, night all",
     "off till Friday, woohoo", "off work until monday, thank goodness",
     "no can do, play without me",
     "no can do on the jumble stall, I'm at work", "going to have to pass on kayaking",
     "count me out for snooker", "can't take any more jokes",
     "happy to take photos at the fete", "dibs! window seat",
     "not possible for me to sing this time", "I'd rather not be in the photo, thanks",
     "could anyone take over the tombola?", "whose turn is it to phone the plumber?",
     "who's teaching in the shed this week?", "who elected Ines chief of everything",
     "how many kilos has the puppy put on this month?", "how much have we raised so far this year?",
     "what dose of syrup for a child of 14 kilos?", "how much seed for 6 square metres of bed?",
     "how many days left on the library books?", "what's wrong with the printer, it stinks",
     "scratch that, Friday suits me", "make it four coffees, Ines is coming",
     "tomorrow I bring two kilos of mango skins, today too tired",
     "can't do this jigsaw, it's all sky", "can't finish that marathon of a book", "I can't",
     "can't make this week's quiz", "deal me out this hand", "count me out this round",
     "I can take him to the vet on Friday", "I'll be her bridesmaid", "go on then, tell me who",
     "I could have the shed for my rehearsal", "take back those library books",
     "we sorted that one out with the builder", "erase the whiteboard, will you",
     "make that clown vanish", "wrong, it's a heron", "make it six pizzas, my brother's here",
     "the milk I mean, it's off", "ring me again tonight", "says who", "whose go is it, I've moved",
     "whose turn on the game console", "who died and made Ines king", "who's up for bingo",
     "who's keen for a swim", "who nicked the biscuits", "why me", "what did we do to deserve this",
     "room for two more chairs in the shed?", "can the rabbit have carrot tops?",
     "left a box of books by the shed, whoever wants them", "since when is the shed blue?",
     "how much detergent per wash?", "how deep do I dig for fence posts?",
     "is there room in the suitcase?"],
)  # fmt: skip
def test_what_is_between_people_is_no_answer(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("sorry, can't do my turn", Decline),
        ("sorry, can't do Friday", Decline),
        ("I have to decline the shed", Decline),
        ("remind me tomorrow", Later),
        ("remind me tomorrow about the 2 kg of peel", Later),
        ("ignore what I said about the 3 kg", Retract),
        ("scratch that", Retract),
        ("can't do this turn", Decline),
        ("sorry, I can't", Decline),
        ("bot, forget what I said about the turnips", Retract),
        ("no can do on the shed, sorry", Decline),
        ("whose turn is it to drain bin 3?", Ask),
        ("how many grams of bran for a child's fist of scraps?", Ask),
    ],
)
def test_what_is_ours_is_answered(text: str, kind: type) -> None:
    assert [type(act) for act in acts(text)] == [kind]


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("when do the green bins go out, Tuesday or Wednesday?", "ask due"),
        ("is it blue bin or brown bin this week", "ask due"),
        ("have the bin men been yet?", "ask due"),
        ("did they miss the grey bins again?", "ask trouble"),
        (
            "asked for a kilo of bran at the feed shop and she said what breed is your horse",
            "ask batch",
        ),
        ("how much bran do I feed the donkey", "ask dose"),
        ("who put bran in my coffee?", "ask starter"),
        ("could the tenors please remember that soup is not a bribe?", "ask allowed"),
        ("concrete: 20 kg bag into the hole with 3 litres of water", "ask trench"),
        ("how much topsoil for a 3 by 2 bed", "ask bed"),
        ("how much water for 2 cups of rice?", "ask dilution"),
        ("pub quiz at ours. Bring crisps.", "accept"),
        ("Hettie is coming Friday, I'll take her to the station", "accept"),
        ("weighed the calf. 90 kilos. Weighed my back too.", "amend"),
        ("cancel that, the match is off", "retract"),
        ("done with this weather", "done"),
        ("tell me tomorrow about the wedding", "later"),
        ("tomorrow, God willing, I may put something in Hettie", "later"),
    ],
)
def test_talk_of_lorries_beasts_and_outings_is_an_aside(text: str, kind: str) -> None:
    assert is_aside(kind, read_message(text, group(bins=("Hettie",))))


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("when does the green bin get buried?", "ask due"),
        ("when is the blue bin due?", "ask due"),
        ("which bin is ready, the green or the blue?", "ask due"),
        ("who's got the brown bin", "ask custody"),
        ("can we please put soup in or is that not allowed?", "ask allowed"),
        ("how much bran for 3 kg of chicken bones, the hens won't eat them", "ask dose"),
        ("yes, bring it round to mine", "accept"),
        ("I'll take her Friday, Hettie", "accept"),
        ("done with Hettie", "done"),
        ("tell me tomorrow about Hettie", "later"),
        ("ask me again tomorrow", "later"),
        ("scratch that, the scale was off", "retract"),
    ],
)
def test_an_answer_to_us_is_no_aside(text: str, kind: str) -> None:
    assert not is_aside(kind, read_message(text, group(bins=("Hettie",))))


@pytest.mark.parametrize(
    "text",
    [
        "anyone watch the match?? 2-1!!",
        "when do you fly?",
        "what goes with lamb?",
        "looks green to me lol",
        "whose turn is it to host book club?",
        "which one?",
        "so which bin?",
    ],
)
@pytest.mark.parametrize("after_bot", [False, True])
def test_talk_in_the_words_of_the_craft(text: str, after_bot: bool) -> None:
    assert read(text, group(bins=("green", "shed"), in_room=True, after_bot=after_bot)) == ()


@pytest.mark.parametrize(
    ("text", "kept"),
    [
        *((text, False) for text in (
            "I'm always big blue", "me if I can be big blue", "I'll take the bags to the shed",
            "I'll drop them in the shed, you can pick them up from there",
            "I'll have the shed one, the other chair wobbles", "nice to hear I'd be missed",
        )),
        *((text, True) for text in (
            "I'll take the shed", "I can take big blue to mine", "put me down for big blue",
            "I'll pick up the shed on Friday", "I'll take the shed one",
        )),
    ],
)  # fmt: skip
def test_a_bin_is_taken_and_nothing_else_beside_it(text: str, kept: bool) -> None:
    found = acts(text, in_room=True, bins=("shed", "big blue", "pear"))
    assert any(act.act == "accept" for act in found) == kept


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("on the radio: a woman in Leeds put 2 kg of shed scraps in the post", []),
        ("added 2 kg of shed scraps to bin 3", ["layer bin 3"]),
        ("my heap is steaming. turned it yesterday and it's 60 degrees", []),
        ("since we speak of slugs, I put 700 g of lettuce in bin 3", ["layer bin 3"]),
        ("my flies are open, ha. 500 g of peel in bin 3", ["layer bin 3"]),
        ("flies in bin 3", ["observe bin 3"]),
        ("is it 2 or 3 eggs for the batter?", []),
        ("does anyone know when the council picks up the brown bins?", []),
        ("what do you need?", []),
        ("whose turn is it to host", []),
        ("they were sealed", []),
        ("they opened with a ten minute drum solo", []),
        ("they're all sealed", ["seal None"]),
    ],
)
def test_other_things_in_words_of_the_craft(text: str, told: list[str]) -> None:
    found = [f"{act.act} {getattr(act, 'bin', None)}" for act in acts(text, in_room=True)]
    assert found == told


@pytest.mark.parametrize(
    "text",
    [
        "I'm so full, that pudding was something",
        "we are all full, thanks for the cake",
        "I cannot bear any more of this wind",
        "can't take another winter",
        "I couldn't take my aunt to the station",
        "I've no room for a wardrobe",
        "no space for more bikes on the landing",
        "wish we had a garden. I've a balcony and a fern",
        "hands are full, I cannot take anyone to the airport",
    ],
)
def test_a_full_stomach_and_a_full_house_refuse_nothing(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("I've no room for a bucket", {}),
        ("no room for the shed bin, sorry", {}),
        ("can't take it, my hands are full", {}),
        ("I'm full up this week, sorry", {}),
        ("not me this time, my hands are full with the twins", {}),
        ("wish I could, but I'm in a bedsit", {}),
        ("I've no room for it", {}),
        ("I can't do this weekend, sorry", {"on_offer": True}),
    ],
)
def test_a_refusal_in_near_words_is_one(text: str, asked: dict[str, bool]) -> None:
    assert [type(act) for act in acts(text, **asked)] == [Decline]


@pytest.mark.parametrize(
    ("text", "topic"),
    [
        ("white fuzz on my orchid, is it fungus or scale", None),
        ("green mould on the bathroom tiles, what can I do", None),
        ("mould on the jam, can I still eat it", None),
        ("is ham allowed on the train", None),
        ("are eggs ok in hand luggage?", None),
        ("white fluff on the scraps, is it fine", "trouble"),
        ("green mould on top, what do I do", "trouble"),
        ("is ham allowed in the bin", "allowed"),
        ("is ham allowed", "allowed"),
    ],
)
def test_what_is_asked_of_plants_walls_and_journeys(text: str, topic: str | None) -> None:
    asked = [act.topic for act in acts(text) if isinstance(act, Ask)]
    assert asked == ([] if topic is None else [topic])
