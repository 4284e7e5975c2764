"""Bare corrections: a figure or a unit put right, and nothing else said."""

from datetime import date

import pytest

from handlers.reading.acts import Act, Amend, Drain, Layer, Retract
from tests.reading.context import acts

LAYER = Layer(mass_kg=0.6, bin="shed")
POUNDS = Layer(mass_kg=3 * 0.45359237, bin="shed")
DRAIN = Drain(volume_l=0.003, bin="shed")


@pytest.mark.parametrize(
    ("text", "last", "amend"),
    [
        ("make it 840", LAYER, Amend(mass_kg=0.84)),
        ("that lot I said 3 kg, its 2", None, Amend(mass_kg=2)),
        ("the 1.9 I put is 1.7", LAYER, Amend(mass_kg=1.7)),
        ("it was 1.4 I logged, not 4.1", LAYER, Amend(mass_kg=1.4)),
        ("make that three. I weighed it with the crate", None, Amend(mass_kg=3)),
        ("salah lah, 340g bukan 430", None, Amend(mass_kg=0.34)),
        ("oh sorry 1.7, not 1.9", LAYER, Amend(mass_kg=1.7)),
        ("mistyped that, it's 1.25", LAYER, Amend(mass_kg=1.25)),
        ("whoops that was 480 not 840", LAYER, Amend(mass_kg=0.48)),
        ("*950 oops", LAYER, Amend(mass_kg=0.95)),
        ("120 should be 210", LAYER, Amend(mass_kg=0.21)),
        ("ought to have been 3.1", LAYER, Amend(mass_kg=3.1)),
        ("miskeyed it, 480", LAYER, Amend(mass_kg=0.48)),
        ("it must be 1.45", LAYER, Amend(mass_kg=1.45)),
        ("700 sorry, not 1700", LAYER, Amend(mass_kg=0.7)),
        ("I wrote 4 but meant 1.4", LAYER, Amend(mass_kg=1.4)),
        ("sorry it was 2.1 not 2.6, misread the scale", LAYER, Amend(mass_kg=2.1)),
        ("litres, not ml!", DRAIN, Amend(volume_l=3)),
        ("pints! not litres", Drain(volume_l=2), Amend(volume_l=2 * 0.56826125)),
        ("not 6, it's 0.9, excuse my eyes", LAYER, Amend(mass_kg=0.9)),
        ("my mistake, 0.7, and Tom's", LAYER, Amend(mass_kg=0.7)),
        ("oops I put 700, it's 500", LAYER, Amend(mass_kg=0.5)),
        ("for 600 read 660", LAYER, Amend(mass_kg=0.66)),
        ("600 was a mistake, it's 750", LAYER, Amend(mass_kg=0.75)),
        ("600 is a typo, 680", LAYER, Amend(mass_kg=0.68)),
        ("I said 480 not 840", LAYER, Amend(mass_kg=0.48)),
        ("meant to type 650", LAYER, Amend(mass_kg=0.65)),
        ("call it 900, the plate was on the scale", LAYER, Amend(mass_kg=0.9)),
        ("less the tub it's 520", LAYER, Amend(mass_kg=0.52)),
        ("second weighing gives 640", LAYER, Amend(mass_kg=0.64)),
        ("change mine to 820", LAYER, Amend(mass_kg=0.82)),
        ("I had the point astray, 0.6 not 6", LAYER, Amend(mass_kg=0.6)),
        ("a third, not two thirds of a litre", DRAIN, Amend(volume_l=1 / 3)),
        ("that's pounds, I'm daft", LAYER, Amend(mass_kg=0.6 * 0.45359237)),
        ("that's ounces, I'm daft", POUNDS, Amend(mass_kg=3 * 0.028349523125)),
        ("read ounces where I wrote grams", LAYER, Amend(mass_kg=600 * 0.028349523125)),
        ("not a litre, a pint. Silly me", Drain(volume_l=1), Amend(volume_l=0.56826125)),
        ("typo, 6 not 60", None, Amend()),
        ("supposed to read 4", None, Amend()),
        ("350 not 3500, dearie me", None, Amend()),
        ("on the scale again it says 1,350", None, Amend(mass_kg=1.35)),
        ("600 is a typo, 60", LAYER, Amend(mass_kg=0.06)),
        ("0.3 not 3", POUNDS, Amend(mass_kg=0.3 * 0.45359237)),
        ("knock 150 g off for the tray", LAYER, Amend(mass_kg=0.45)),
        ("take 100 off that, I forgot the bowl", LAYER, Amend(mass_kg=0.5)),
        ("take 150 g off for the lid", None, Amend()),
        ("oops 1.8, not 2.8", None, Amend(mass_kg=1.8)),
        ("that should read millilitres", None, Amend()),
        ("please correct my last entry; the weight was 2.2 kg", None, Amend(mass_kg=2.2)),
        ("correct my last entry. It was 2.2 kg.", None, Amend(mass_kg=2.2)),
        ("please amend the last record, it was 300 ml", None, Amend(volume_l=0.3)),
        ("the last entry is wrong, it was 2.2 kg", None, Amend(mass_kg=2.2)),
        ("typo 640 not 340", None, Amend(mass_kg=0.64)),
        ("sorry, shed, and 640 g", None, Amend(mass_kg=0.64, bin="shed")),
        ("2 kg in the shed not 3", None, Amend(mass_kg=2, bin="shed")),
    ],
)
def test_a_figure_or_a_unit_is_put_right(text: str, last: Act | None, amend: Amend) -> None:
    (act,) = acts(text, last=last)
    assert isinstance(act, Amend)
    for field in ("mass_kg", "volume_l"):
        assert getattr(act, field) == pytest.approx(getattr(amend, field))


@pytest.mark.parametrize(
    "text",
    ["take 200 g off the butter", "take 5 off for the raffle", "it's 7 not 8 the concert",
     "the vet says twelve not twenty", "I put nine in the lottery, not ninety",
     "for 8 read 9, the clocks went back", "half seven rather than seven, the traffic",
     "scale says 1.2 kg into bin 3", "the green hat, not the yellow one",
     "held the jug to it till it stopped, 450", "call it 4 kg of bran for the lot",
     "make that three beers", "make it 7", "make that eight", "make that two, I'm parched",
     "make that ten, I weighed the baby",
     "make that four, I weighed the suitcase again", "the 3 I gave the busker was too much",
     "they took the wrong bin out, green not brown", "wrong bin day, it's blue this week",
     "it was Petra on the phone", "it was 1987 not 1986", "oops, forgot 3 chairs",
     "sorry, not a mile", "grams please, not ounces", "sorry 250 people came"],
)  # fmt: skip
def test_other_things_are_put_right_in_talk(text: str) -> None:
    assert not any(isinstance(act, Amend) for act in acts(text))


def test_a_day_before_a_deed_is_told_with_it() -> None:
    (act,) = acts("it was last night I put 2 kg of prawn shells in the shed")
    assert isinstance(act, Layer)


@pytest.mark.parametrize(
    ("text", "last", "amend"),
    [
        ("weighed it again, 0.75", LAYER, Amend(mass_kg=0.75)),
        ("we reweighed it and it's 820 g", LAYER, Amend(mass_kg=0.82)),
        ("checked it on the proper scales: 700 grams", LAYER, Amend(mass_kg=0.7)),
        ("minus the crate it's 480 g", LAYER, Amend(mass_kg=0.48)),
        ("it's 510 without the pan", LAYER, Amend(mass_kg=0.51)),
        ("take 150 g off that for the tub", LAYER, Amend(mass_kg=0.45)),
        ("the correct weight for that is 1.35", LAYER, Amend(mass_kg=1.35)),
        ("turns out it was litres, not ml", DRAIN, Amend(volume_l=3)),
        ("read litres where I wrote millilitres", DRAIN, Amend(volume_l=3)),
        ("it was cooked, not raw", LAYER, Amend(materials={"cooked": 1.0})),
    ],
)
def test_circumstance_puts_a_record_right(text: str, last: Act | None, amend: Amend) -> None:
    (act,) = acts(text, last=last)
    assert isinstance(act, Amend)
    for field in ("mass_kg", "volume_l"):
        assert getattr(act, field) == pytest.approx(getattr(amend, field))
    assert act.materials == amend.materials


@pytest.mark.parametrize(
    "text",
    [
        "the scales say 82 kg, diet starts now",
        "weighed him again, 4.2 kg, the midwife is happy",
        "it's pounds not euros over there",
        "it was cooked, not raw, at the sushi place",
        "make that three coffees, my mates are here",
        "not a gallon, a pint! the milk I mean",
    ],
)
def test_what_is_weighed_or_ordered_elsewhere(text: str) -> None:
    assert acts(text, last=LAYER) == ()


@pytest.mark.parametrize(
    ("text", "bin"),
    [
        ("bin 3, not the shed, I'm half asleep", "bin 3"),
        ("I put bin 3, should be Tall Paul", "Tall Paul"),
        ("200 not 220 for bin 3", "bin 3"),
        ("nope, wrong bin. blue not shed", "big blue"),
        ("wrong bucket: shed not Paul", "shed"),
        ("what I wrote as the shed should be bin 3", "bin 3"),
        ("oop ment bin 3", "bin 3"),
        ("fix my last entry please, it was bin 3", "bin 3"),
        ("ups, that was for bin 3", "bin 3"),
        ("eek this was for the shed", "shed"),
        ("whoopsie, it was meant for Tall Paul!", "Tall Paul"),
        ("ugh, this one was for bin 3 sorry", "bin 3"),
        ("upps, wrong bin, it was the shed", "shed"),
        ("I'm afraid it was the shed, not bin 3, into which we tipped the 2 kg", "shed"),
        ("I confess it was bin 3, not the shed, that I drained", "bin 3"),
        ("sorry o, na shed I seal, no be bin 3", "shed"),
        ("no be bin 3 I feed, na shed", "shed"),
        ("ups and downs, that was for sure", None),
        ("ugh this is for the birds", None),
        ("damn, that was for the shed roof", None),
        ("oh, is that for bin 3?", None),
        ("oh that was for ruth", None),
    ],
)
def test_a_bin_is_put_right(text: str, bin: str | None) -> None:
    found = [act.bin for act in acts(text) if isinstance(act, Amend)]
    assert found == ([] if bin is None else [bin])


@pytest.mark.parametrize(
    ("last", "told"),
    [
        (LAYER, [Amend(bin="bin 3")]),
        (Layer(mass_kg=0.6, bin="bin 3"), []),
        (None, []),
    ],
)
def test_a_bin_named_without_a_sigh_is_of_the_record_in_talk(
    last: Act | None, told: list[Act]
) -> None:
    assert [*acts("this was for bin 3", last=last, in_room=True)] == told


def test_where_no_record_is_spoken_of_a_small_number_is_of_other_things() -> None:
    assert acts("typo, 4 not 40", in_room=True) == ()
    assert isinstance(acts("typo, 4 not 40")[0], Amend)


def test_what_follows_a_correction_is_read_too() -> None:
    amend, layer = acts("I wrote 3 kg; should be 2. Also added 500 g of crusts to bin 3.")
    assert (isinstance(amend, Amend) and amend.mass_kg) == pytest.approx(2)
    assert isinstance(layer, Layer)


@pytest.mark.parametrize(
    ("text", "member"),
    [
        ("Ines carried that one, not me", "ines"),
        ("not me, Ruth it was that brought it", "ruth"),
        ("Ruth poured it, I only held the lid", "ruth"),
        ("should be Ruth, not me", "ruth"),
        ("that must read Ines, not me", "ines"),
        ("please credit that one to Ruth", "ruth"),
        ("should be Ruth, not me, who sings", None),
        ("credit to Ruth for the cake", None),
        ("Ruth ate those, not me", None),
        ("Ruth did that dance, not me", None),
        ("that wasn't me, that's Ruth's bread", "ruth"),
        ("not me, that was Ines's fish", "ines"),
        ("it wasn't me who put that in, it was Ruth", "ruth"),
        ("that wasn't me, that's Ruth's dog", None),
        ("that's Ruth's bread on the table", None),
        ("it was Ruth who drained it", "ruth"),
        ("it was Ruth who ate it", None),
    ],
)
def test_a_deed_is_put_down_to_who_did_it(text: str, member: str | None) -> None:
    found = [act.member for act in acts(text) if isinstance(act, Amend)]
    assert found == ([] if member is None else [member])


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("for bread read beef", "meat"),
        ("where I wrote apples, read potatoes", "vegetable"),
        ("sorry, read cheese where I put peas", "dairy"),
        ("it was cooked, not raw, that last lot", "cooked"),
        ("for your sins read a book", None),
    ],
)
def test_a_food_is_put_right(text: str, kind: str | None) -> None:
    found = [act.materials for act in acts(text) if isinstance(act, Amend)]
    assert found == ([] if kind is None else [{kind: 1.0}])


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("put it down as yesterday", 16),
        ("can you log that one under Monday please", 15),
        ("date that yesterday", 16),
        ("oops, that was Monday's lot", 15),
        ("not Saturday. We sealed it on Sunday. Correct it please", 14),
        ("put it down to Monday, I ask you, who works on a Monday", None),
        ("that was Monday's paper", None),
        ("this is Monday's", None),
        ("mark it down as a day to remember", None),
        ("book it for Friday's concert", None),
        ("put it off to Monday", None),
        ("not Saturday, Sunday works, fix the fence first", None),
    ],
)
def test_a_record_is_put_down_to_another_day(text: str, day: int | None) -> None:
    found = [act.on for act in acts(text) if isinstance(act, Amend) and act.on]
    assert found == ([] if day is None else [date(2026, 6, day)])


@pytest.mark.parametrize(
    ("text", "amend"),
    [
        ("that's 300 g too much", Amend(mass_kg=0.3)),
        ("oops I wrote 100 g too much", Amend(mass_kg=0.5)),
        ("that's 3 kg too much", None),
        ("no way, 5 kg?", None),
        ("Ruth's puppy is 4 kg", None),
        ("the fish was 3 kg", Amend(mass_kg=3, materials={"fish": 1.0}, rich=1.0)),
    ],
)
def test_what_is_too_much_or_not_of_the_record(text: str, amend: Amend | None) -> None:
    found = acts(text, last=LAYER, after_bot=True, in_room=True)
    assert found == (() if amend is None else (amend,))


def test_what_a_bin_holds_is_put_right() -> None:
    for text in (
        "bin 3 is a 15 litre bucket, not 20",
        "I was wrong. bin 3 is a 15 l pail, not 12.",
    ):
        assert acts(text) == (Amend(capacity_l=15.0, bin="bin 3"),)


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("Oh, we weighed it in the crate. It is 2.5 kg without.", 2.5),
        ("make that eight", 8 * 0.45359237),
    ],
)
def test_an_amount_is_put_right_behind_its_layer(text: str, kg: float) -> None:
    [act] = acts(text, units="us", last=Layer(mass_kg=3.0, bin="shed"), in_room=True)
    assert isinstance(act, Amend)
    assert act.mass_kg == pytest.approx(kg)


@pytest.mark.parametrize(
    ("text", "struck"),
    [
        ("Ruth had logged it already, take mine off please", True),
        ("oh it's on here twice, cross mine out bot", True),
        ("take mine off the list for Friday", False),
        ("he took his coat off already, I'll take mine off the hook", False),
    ],
)
def test_the_sender_takes_back_what_is_there_twice(text: str, struck: bool) -> None:
    assert any(isinstance(act, Retract) for act in acts(text)) is struck


@pytest.mark.parametrize("text", ["it was Ines that sealed it", "Ruth's the one who shut it"])
def test_a_deed_is_put_down_to_the_one_who_did_it(text: str) -> None:
    [act] = acts(text)
    assert isinstance(act, Amend)
    assert act.member in ("ines", "ruth")
