"""What looks like a record and is none: nobody's deed, another's words, no amount, no such day."""

import pytest

from handlers.reading.acts import (
    Act,
    Amend,
    Ask,
    Drain,
    Layer,
    Observe,
    Open,
    Seal,
    Stock,
    Unsure,
)
from tests.reading.context import WEDNESDAY, acts


@pytest.mark.parametrize(
    "text",
    [
        "nobody added 2 kg to the shed",
        "a plate of pasta and salad for me",
        "none of us put 2 kg in the shed bin",
        "no one has put anything in",
        "ain't fed the shed ain't drained it neither",
        "I think nobody added 2 kg to the shed bin",
        "> added 2 kg to the shed bin",
        "> added 2 kg to the shed bin\n\nnice one, thanks",
        "  > sealed the shed\n> buried bin 3\ngood to know",
        "```\nadded 2 kg to the shed\n```",
        "look what I wrote:\n~~~ text\nadded 2 kg to the shed\n",
    ],
)
def test_nobodys_deed_and_anothers_words(text: str) -> None:
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize(
    "text",
    [
        "nobody else added anything so I added 2 kg to the shed",
        "> who fed the shed?\nadded 2 kg to the shed",
        "```\nnotes\n```\nadded 2 kg to the shed",
        ">2 kg of peel to the shed bin",
    ],
)
def test_ones_own_words_beside_them(text: str) -> None:
    [layer] = acts(text, in_room=True)
    assert isinstance(layer, Layer)
    assert (layer.mass_kg, layer.bin) == (2, "shed")


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("added -2 kg to the shed bin", Layer),
        ("added 0 kg to the shed bin", Layer),
        ("no, -5 kg", Amend),
        ("we have -5 kg of starter left", Stock),
        ("added NaN kg to the shed bin", Layer),
        ("drained -1 L from the shed bin", Drain),
        ("added 2 kg scraps to the shed bin on 31 February", Layer),
        ("added 2 kg scraps to the shed bin 99999999999999999999 days ago", Layer),
        ("added 2 kg scraps to the shed bin 900 years ago", Layer),
        ("added 2 kg scraps to the shed bin on Feb 30", Layer),
        ("drained 1 L from the shed bin on 30/02/2026", Drain),
        ("sealed the shed bin on the 31st of April", Seal),
        ("sealed the shed bin on 2026-06-31", Seal),
    ],
)
def test_no_amount_and_no_day_are_asked_about_in_a_room(text: str, kind: type[Act]) -> None:
    [unsure] = acts(text, in_room=True)
    assert isinstance(unsure, Unsure)
    [guess] = unsure.guess
    assert isinstance(guess, kind)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("put ate hundred grams of bread in the shed bin", Layer),
        ("added for and a half kilos to the shed bin", Layer),
        ("drained tree hundred ml from the shed bin", Drain),
        ("we have about too kilos of bran left", Stock),
    ],
)
def test_a_number_that_was_misheard_is_asked_about(text: str, kind: type[Act]) -> None:
    [unsure] = acts(text, in_room=True)
    assert isinstance(unsure, Unsure)
    [guess] = unsure.guess
    assert isinstance(guess, kind)
    assert getattr(guess, "mass_kg", None) is None


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("put hundred grams of bread in the shed bin", 0.1),
        ("put about a hundred grams of bread in the shed bin", 0.1),
        ("we ate hundred grams of it and put 2 kg in the shed bin", 2),
        ("put one and a half kilos in the shed bin", 1.5),
    ],
)
def test_a_number_that_was_heard_is_none_of_these(text: str, kg: float) -> None:
    [layer] = acts(text, in_room=True)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == kg


@pytest.mark.parametrize("text", ["put 3 kilo in balcony", "put 2 kg rice in kitchen yesterday"])
def test_scraps_in_a_place_without_a_bin_are_asked_about(text: str) -> None:
    [unsure] = acts(text, in_room=True, bins=("big blue",))
    assert isinstance(unsure, Unsure)
    [layer] = unsure.guess
    assert isinstance(layer, Layer)
    assert layer.bin in ("balcony", "kitchen")


@pytest.mark.parametrize("text", ["put 2 kg in garden", "put the 2 kg of mince in pantry"])
def test_scraps_outdoors_or_stored_are_in_no_new_bin(text: str) -> None:
    assert acts(text, in_room=True, bins=("big blue",)) == ()


def test_a_size_and_an_area_are_not_below_nought() -> None:
    [opened] = acts("opened the pink bin, -20 L", in_room=True)
    assert isinstance(opened, Open)
    assert opened.capacity_l is None
    [asked] = acts("plum bed, -3 m2", in_room=True)
    assert isinstance(asked, Ask)
    assert asked.area_m2 is None


def test_an_acidity_that_no_strip_shows_is_answered_in_a_room() -> None:
    [seen] = acts("ph of the shed is 22", in_room=True)
    assert isinstance(seen, Observe)
    assert seen.ph == 22
    assert acts("ph of the shed is 22") == ()
    assert acts("bought 100 ph strips for the shed", in_room=True) == ()


@pytest.mark.parametrize(
    "text", ["sealed the shed bin on 31 May", "sealed the shed bin on Feb 12", "drained 0 L off it"]
)
def test_days_and_amounts_that_there_are(text: str) -> None:
    assert not any(isinstance(act, Unsure) for act in acts(text, in_room=True))


@pytest.mark.parametrize(
    "text",
    [
        "~~added 2 kg to the shed bin~~",
        "`added 2 kg to the shed bin`",
    ],
)
def test_what_is_struck_through_or_quoted_is_not_told(text: str) -> None:
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize("text", ["bye all, remove me", "remove us please, we moved away"])
def test_who_wants_to_be_taken_off_strikes_no_record(text: str) -> None:
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize(
    "text",
    [
        "added 2 kg to the shed bin next Friday",
        "drained the shed bin next Monday",
        "sealed the shed bin tomorrow",
    ],
)
def test_what_is_dated_ahead_is_not_of_a_day_gone_by(text: str) -> None:
    for act in acts(text, in_room=True):
        assert isinstance(act, Layer | Drain | Seal)
        assert act.on is not None
        assert act.on > WEDNESDAY.date()


def test_a_name_between_backticks_is_read() -> None:
    (act,) = acts("added 2 kg to the `big blue` bin", in_room=True)
    assert isinstance(act, Layer)
    assert act.bin == "big blue"


@pytest.mark.parametrize("text", ["added 2 kg to shed on 29 Feb 2023", "on 30/02/2026 added 2 kg"])
def test_a_leap_day_is_of_leap_years_alone(text: str) -> None:
    (act,) = acts(text, in_room=True)
    assert isinstance(act, Unsure)
    assert act.no_such_day


@pytest.mark.parametrize(
    "text", ["opened all three today, 10 litres each", "we started both, 15 L"]
)
def test_bins_that_no_name_tells_apart_are_not_one_bin(text: str) -> None:
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize(
    "text", ["full. sealing tonight", "draining the shed later", "burying bin 3 tomorrow"]
)
def test_what_somebody_is_about_to_do_is_not_done(text: str) -> None:
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize(
    "text",
    [
        "put four kilos of despair in the shed bin",
        "2 lb of my own foolishness into bin 3",
        "a whole bucket of Ruth's excuses to the shed",
        "tipped 70 kg of landlord into big blue",
        "half a kilo of wounded pride for Tall Paul",
        "added 3 kg of heartfelt compliments to the shed",
    ],
)
def test_what_no_scale_weighs_is_a_jest(text: str) -> None:
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("1.4 kg of regrets, mainly pasta, in the shed bin", 1.4),
        ("1 kg of leek tops and 3 kg of despair into the shed bin", 1),
        ("2 kg of my neighbour's windfalls into the shed", 2),
        ("put 2 kg of mystery meat in bin 3", 2),
        ("2 kg of passion fruit skins in the shed", 2),
        ("added 2 kg to the shed, hope that's fine", 2),
    ],
)
def test_scraps_beside_a_jest_are_told(text: str, kg: float) -> None:
    [layer] = acts(text, in_room=True)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == kg


@pytest.mark.parametrize(
    "text",
    [
        "so this bloke goes: sealed bin 3",
        "my cousin wrote: drained the shed, then sealed it",
        "the video said: sealed bin 3 for two weeks",
        "this chap told me: buried bin 3 under the hedge",
        "his last text says: 2 kg of peel into big blue",
        "Ines reckons she put 4 kg in the shed, I doubt it",
    ],
)
def test_words_behind_a_colon_are_those_of_whoever_said_them(text: str) -> None:
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize(
    ("text", "member"),
    [
        ("Ines wrote: drained bin 3", "ines"),
        ("Ruth told me: I drained bin 3 before lunch", "ruth"),
        ("Ruth mentioned that she drained bin 3", "ruth"),
        ("Ines tells me she drained bin 3", "ines"),
        ("as I said: drained bin 3", None),
        ("I told Ines: drained bin 3", None),
        ("never told anybody: drained bin 3", None),
    ],
)
def test_a_members_own_report_is_a_record_by_them(text: str, member: str | None) -> None:
    [drain] = acts(text, in_room=True)
    assert isinstance(drain, Drain)
    assert (drain.bin, drain.member) == ("bin 3", member)


@pytest.mark.parametrize(
    "text",
    [
        "put 4 kg of trifle in the shed bin, only joking",
        "jk put 4 kg of trifle in the shed bin",
        "sealed bin 3 in my dreams",
        "drained 2 L from bin 3 in another universe",
        "added 9 kg of cake to the shed... NOT!",
        "nobody: added 9 kg to the shed",
        '"put 9 kg in the shed" said no one ever',
        "once upon a time there were 9 kg of cake in the shed",
        "moved 2 kg of peel from the shed to bin 3",
    ],
)
def test_a_jest_that_takes_itself_back_is_no_record(text: str) -> None:
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize(
    "text", ["no joking, put 4 kg in the shed bin", "put 4 kg in the shed, I'm not kidding"]
)
def test_what_is_meant_in_earnest_is(text: str) -> None:
    [layer] = acts(text, in_room=True)
    assert isinstance(layer, Layer)


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("dug a hole for the shed bin", []),
        ("I've dug a trench 2 m long for bin 3, it goes in on Sunday", []),
        ("made a pit for the shed bin and tipped it in", ["bury"]),
        ("dug a hole for bin 3 and buried it", ["bury"]),
        ("dug the shed bin into the trench", ["bury"]),
    ],
)
def test_a_hole_alone_is_no_burial(text: str, kinds: list[str]) -> None:
    assert [act.act for act in acts(text, in_room=True) if act.act == "bury"] == kinds


@pytest.mark.parametrize(
    ("text", "topic", "kg", "kind"),
    [
        ("C:N of 3 kg coffee grounds", "carbon", 3, "coffee"),
        ("carbon to nitrogen ratio for 1 kg bread", "carbon", 1, "grain"),
        ("moisture of 2 kg carrots", "moisture", 2, "vegetable"),
    ],
)
def test_what_is_asked_by_a_heading_went_nowhere(
    text: str, topic: str, kg: float, kind: str
) -> None:
    [ask] = acts(text, in_room=True)
    assert isinstance(ask, Ask)
    assert (ask.topic, ask.mass_kg, ask.materials) == (topic, kg, {kind: 1.0})


def test_scraps_and_a_question_mark_are_asked_about() -> None:
    [unsure] = acts("1 kg of bread in the shed bin?", in_room=True)
    assert isinstance(unsure, Unsure)
    assert [act.act for act in unsure.guess] == ["layer"]


@pytest.mark.parametrize("text", ["bot shut up", "pailkeeper, shut up!", "oh shut it Ruth"])
@pytest.mark.parametrize("after_bot", [False, True])
def test_who_is_to_be_silent_has_sealed_nothing(text: str, after_bot: bool) -> None:
    assert acts(text, in_room=True, after_bot=after_bot) == ()


@pytest.mark.parametrize("text", ["shut up the shed bin, it's full", "shut the shed bin, Ruth"])
def test_shutting_a_bin_is_told_all_the_same(text: str) -> None:
    [sealed] = acts(text, in_room=True)
    assert isinstance(sealed, Seal)


@pytest.mark.parametrize(
    "text",
    [
        "maybe Ines put 800 g in",
        "perhaps Ruth drained the shed",
        "possibly Ruth sealed bin 3",
        "maybe she put 2 kg in bin 3",
        "could be Ines put 2 kg in bin 3",
        "it might be that Ines drained the shed",
        "maybe somebody drained the shed",
        "I wonder who put 2 kg in bin 3",
        "I wonder did Ines put 2 kg in bin 3",
        "any chance Ruth put 2 kg in bin 3",
        "do you think Ines put 2 kg in bin 3",
        "has Ruth put 2 kg in the shed",
        "has Ruth drained the shed yet",
        "have Ines and Ruth put 2 kg in the shed",
        "did Ines put 2 kg of rice in bin 3",
        "has somebody sealed bin 3",
        "anyone drained the shed today",
    ],
)
def test_what_another_may_have_done_is_not_told(text: str) -> None:
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("maybe I put in 2 kg", ["layer"]),
        ("maybe 2 kg of peelings in the shed", ["layer"]),
        ("maybe two kilos from Ines in the shed", ["layer"]),
        ("Ines put maybe 2 kg in the shed", ["layer"]),
        ("Ines put 2 kg in the shed, perhaps more", ["layer"]),
        ("I think Ines put 2 kg in the shed", ["layer"]),
        ("Ines has put 2 kg in the shed", ["layer"]),
        ("no wonder it was light: I drained 2 L from the shed", ["drain"]),
        ("I put 2 kg in the shed and maybe Ines put 1 kg in bin 3", ["layer"]),
        ("I drained the shed, 1 L, has Ines drained bin 3", ["drain"]),
        ("2 kg of rice in the shed. Maybe Ines drained bin 3", ["layer"]),
        ("did Ines's bin today: 2 kg of rice in the shed", ["layer"]),
        ("did Ruth a favour and drained the shed", ["drain"]),
        ("have put 2 kg in the shed", ["layer"]),
    ],
)
def test_what_is_told_beside_a_guess_is(text: str, told: list[str]) -> None:
    assert [act.act for act in acts(text, in_room=True)] == told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("I added another 500 g to the shed after it was sealed, sorry", ["layer"]),
        ("drained the shed after it was sealed, 200 ml", ["drain"]),
        ("the shed was sealed after I added 500 g", ["seal", "layer"]),
        ("the shed got 225 g of bacon grease from me, drained off", ["layer"]),
        ("2 kg in the shed, drained", ["layer", "drain"]),
        ("someone put a crisp packet in the shed", []),
    ],
)
def test_what_only_says_when_or_of_what_is_no_deed(text: str, told: list[str]) -> None:
    found = [act.act for act in acts(text, in_room=True)]
    assert found == told


@pytest.mark.parametrize(
    "text",
    [
        "voy a poner 1 kg in the shed",
        "vamos a echar 2 kg in the shed",
        "ich werde 1 kg in the shed tun",
        "quiero poner 1 kg in the shed",
    ],
)
def test_what_is_to_be_done_in_another_tongue_is_not_done(text: str) -> None:
    assert acts(text, in_room=True) == ()


def test_what_was_done_in_another_tongue_is() -> None:
    [layer] = acts("puse 1 kg in the shed", in_room=True)
    assert layer.act == "layer"


@pytest.mark.parametrize(
    "text", ["wir haben 2 kg Mehl", "mam 1 kg chleba", "tenemos 2 kg de arroz"]
)
def test_what_is_at_home_puts_no_layer_right(text: str) -> None:
    last = Layer(bin="shed", mass_kg=0.4)
    assert acts(text, in_room=True, last=last, after_bot=True) == ()


def test_who_drives_to_a_town_begins_no_bin() -> None:
    text = "drove to Dallas with 2 kg of pecans in the trunk"
    assert acts(text, in_room=True, bins=()) == ()
    [layer] = acts("2 kg went to Dolly", in_room=True, bins=())
    assert getattr(layer, "bin", None) == "Dolly"


@pytest.mark.parametrize(
    "text",
    [
        "having 6 kg of snags here from 3, bring a chair",
        "planted out the leeks in the bed behind the shed",
        "popped the tomatoes in the bed behind the shed",
        "sowed the carrots in the bed behind the shed",
    ],
)
def test_an_hour_and_a_bed_beside_a_bins_name_tell_of_no_bin(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    ("text", "kg", "rich"),
    [
        ("2.4 kg of scraps, about half of that bones, in the shed", 2.4, 0.5),
        ("4 lb total, half of that meat, in the shed", 1.814, 0.5),
        ("2 kg of prunings, half of that leaves, in the shed", 2.0, 0.0),
    ],
)
def test_half_of_that_is_a_share_and_no_more_of_it(text: str, kg: float, rich: float) -> None:
    [layer] = acts(text)
    assert isinstance(layer, Layer)
    assert (layer.mass_kg, layer.rich) == pytest.approx((kg, rich), abs=0.01)


def test_half_of_that_may_go_into_another_bin() -> None:
    first, second = acts("2 kg in the shed, and half of that in big blue")
    assert [getattr(act, "mass_kg", None) for act in (first, second)] == [2.0, 1.0]


def test_what_the_paper_says_is_measured() -> None:
    [seen] = acts("pH paper says 3.8 for the shed")
    assert seen.act == "observe"


def test_a_bin_that_is_open_again_was_begun() -> None:
    assert [act.act for act in acts("big blue is open again from today")] == ["open"]
    assert acts("the kitchen is open again", bins=("kitchen",)) == ()


@pytest.mark.parametrize(
    "text",
    [
        "Ines didn't put 2 kg of bread in the shed",
        "I won't be adding 800 g of crusts to bin 3",
        "we haven't put 3 litres of peelings in the shed yet",
        "not putting 2 kg of fish in the shed",
        "I couldn't add 1 kg of bread to bin 3",
        "I shan't put 500 g of rice in the shed",
        "I didn't drain 200 ml from bin 3",
    ],
)
def test_what_did_not_go_in_or_come_out_is_not_told(text: str) -> None:
    assert not any(isinstance(act, Drain | Layer | Unsure) for act in acts(text, in_room=True))


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("I didn't put 1 kg in the shed but I put 2 kg in bin 3", [2]),
        ("I couldn't resist adding 2 kg of fish to the shed", [2]),
        ("didn't put any meat in, just 2 kg of peelings in the shed", [2]),
        ("not sure exactly, added 2 kg to the shed", [2]),
    ],
)
def test_what_is_told_beside_a_denial_is(text: str, kg: list[float]) -> None:
    assert [act.mass_kg for act in acts(text, in_room=True) if isinstance(act, Layer)] == kg


@pytest.mark.parametrize(
    ("text", "bins"),
    [
        ("gave 2 kg of plums to Mei", []),
        ("sent 1 kg of crusts to Colin", []),
        ("dropped 2 kg of pears round to Mei Tanaka", []),
        ("I gave Ruth 2 kg of plums, and 1 kg to Mei", []),
        ("gave 2 kg of plums to the shed", ["shed"]),
        ("gave 2 kg of crusts to blue", ["blue"]),
        ("gave 2 kg to Portable B", ["Portable B"]),
        ("2 kg of crusts went to Dolly", ["Dolly"]),
    ],
)
def test_what_is_given_to_somebody_begins_no_bin(text: str, bins: list[str]) -> None:
    told = acts(text, in_room=True)
    assert [act.bin for act in told if isinstance(act, Layer)] == bins
