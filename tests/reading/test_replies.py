from datetime import date

import pytest

from handlers.practice.kinds import Shares
from handlers.reading.acts import (
    Accept,
    Act,
    Amend,
    Decline,
    Done,
    Drain,
    Later,
    Layer,
    Offer,
    Retract,
    Set,
)
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "act"),
    [
        ("600 g not 900 sorry", Amend(mass_kg=0.6)),
        ("*1.6kg", Amend(mass_kg=1.6)),
        ("I meant bin 3", Amend(bin="bin 3")),
        ("make that 1.5 kg", Amend(mass_kg=1.5)),
        ("it was the shed not bin 3", Amend(bin="shed")),
        ("2.5 not 2kg, misread the scales", Amend(mass_kg=2.5)),
        ("scratch that", Retract()),
        ("please delete my last one", Retract()),
        ("done", Done()),
        ("shed's done", Done(bin="shed")),
        ("not now, come back to me in 3 days", Later(days=3)),
        ("remind me tomorrow", Later(days=1)),
        ("I'm away until Sunday, remind me again in six days' time", Later(days=6)),
        ("away for 3 days, ask me again on Saturday", Later(days=3)),
        ("I'll do it after Sunday, so please ask me again tomorrow", Later(days=1)),
        ("sat ask me again, or say 6 days", Later(days=6)),
        ("later", Later()),
        ("I'll take it", Accept()),
        ("happy to have the shed from Friday", Accept(bin="shed", on=date(2026, 6, 19))),
        ("sorry, can't take it", Decline()),
        (
            "I'm passing the shed on to Ruth on Saturday",
            Offer(bin="shed", to="ruth", on=date(2026, 6, 20)),
        ),
        ("Ruth can you take bin 3?", Offer(bin="bin 3", to="ruth")),
        ("bot set units to metric", Set(what="units", value="metric")),
        ("bot set the time zone to Europe/Lisbon", Set(what="zone", value="Europe/Lisbon")),
        ("bot use the weight habit", Set(what="habit", value="weight")),
    ],
)
def test_what_leans_on_an_earlier_message(text: str, act: Act) -> None:
    assert acts(text) == (act,)


@pytest.mark.parametrize(
    ("text", "act"),
    [("yes", Accept()), ("no", Decline()), ("about 2 kg", Amend(mass_kg=2)), ("done it", Done())],
)
def test_what_is_read_more_readily_behind_the_bot(text: str, act: Act) -> None:
    assert acts(text, after_bot=True) == (act,)


LAYER = Layer(mass_kg=3.0, bin="shed")
DRAIN = Drain(volume_l=0.5, bin="bin 3")
TODAY = date(2026, 6, 17)
MIXED: Shares = {"mixed": 1.0}


@pytest.mark.parametrize(
    ("text", "last", "act"),
    [
        ("in went 2 kg", LAYER, Layer(mass_kg=2, materials=MIXED, bin="shed", on=TODAY)),
        ("2 kilos more", LAYER, Layer(mass_kg=2, materials=MIXED, bin="shed", on=TODAY)),
        ("another 2 kg", None, Layer(mass_kg=2, materials=MIXED, on=TODAY)),
        ("also 500 g", LAYER, Layer(mass_kg=0.5, materials=MIXED, bin="shed", on=TODAY)),
        (
            "and 2 kg of bones too",
            LAYER,
            Layer(mass_kg=2, materials={"bone": 1.0}, rich=1, bin="shed", on=TODAY),
        ),
        ("plus 1 kg in bin 3", LAYER, Layer(mass_kg=1, materials=MIXED, bin="bin 3", on=TODAY)),
        ("another 200 ml", DRAIN, Drain(volume_l=0.2, bin="bin 3", on=TODAY)),
        ("drained another 200 ml", LAYER, Drain(volume_l=0.2, on=TODAY)),
        ("another 200 ml of juice", DRAIN, Drain(volume_l=0.2, bin="bin 3", on=TODAY)),
        ("3 kg", LAYER, Amend(mass_kg=3)),
        ("no, 2 kg", LAYER, Amend(mass_kg=2)),
        ("more like 2 kg", LAYER, Amend(mass_kg=2)),
        ("no, make it another 2 kg", LAYER, Amend(mass_kg=2)),
        ("no 2", LAYER, Amend(mass_kg=2)),
        ("no, it was 2.5", LAYER, Amend(mass_kg=2.5)),
        ("make it 2.5", LAYER, Amend(mass_kg=2.5)),
        ("nope, 600", Layer(mass_kg=0.5), Amend(mass_kg=0.6)),
        ("no 300", DRAIN, Amend(volume_l=0.3)),
        ("no", LAYER, Decline()),
        ("no thanks", None, Decline()),
    ],
)
def test_an_amount_leans_on_what_was_last_written_down(
    text: str, last: Act | None, act: Act
) -> None:
    assert acts(text, after_bot=True, last=last) == (act,)


_BREAD = Layer(mass_kg=3.0, materials={"grain": 1.0})
_REMINDER = Done()


@pytest.mark.parametrize(
    ("text", "last", "struck"),
    [
        ("forget the bread", _BREAD, True),
        ("forget about the bread", _BREAD, True),
        ("ignore the bread", _BREAD, True),
        ("scratch the bread", _BREAD, True),
        ("forget that", _BREAD, True),
        ("forget the peelings", _BREAD, False),
        ("forget about the fish", _BREAD, False),
        ("forget the fish", None, False),
        ("forget the bread", _REMINDER, False),
        ("forget about the scraps", _REMINDER, False),
    ],
)
def test_food_to_be_forgotten_strikes_what_holds_it_and_no_other_record(
    text: str, last: Act | None, struck: bool
) -> None:
    read = acts(text, last=last, after_bot=True, in_room=True)
    assert any(isinstance(act, Retract) for act in read) == struck


@pytest.mark.parametrize(
    "text",
    [
        "please correct my last entry",
        "I need to correct my last entry",
        "edit last entry",
        "I've corrected my last entry already",
        "can somebody fix the last record",
    ],
)
def test_a_record_to_be_put_right_is_not_struck_out(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize("text", ["no liquid at all", "no idea", "no smell", "no 2"])
def test_what_is_not_there_is_no_refusal(text: str) -> None:
    assert not any(isinstance(act, Decline) for act in acts(text, after_bot=True))


@pytest.mark.parametrize(
    "text",
    ["that's me done for the day", "scratch that itch", "I can't take it anymore",
     "pass the salt", "yes", "no",
     "I'll take the last slice", "forget it, too complicated", "later folks", "I make it 14 "
                                                                              "litres of milk"],
)  # fmt: skip
def test_small_talk_with_the_same_words(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("quiet hours 10 to 7", "22:00-07:00"),
        ("make the quiet hours 9 to 6:30", "21:00-06:30"),
        ("quiet hours 1 to 5", "01:00-05:00"),
        ("quiet hours 10 am to 7 am", "10:00-07:00"),
        ("quiet hours 09:00 to 7:00", "09:00-07:00"),
        ("quiet hours 25:00", "25:00"),
    ],
)
def test_quiet_hours_begin_in_the_evening_unless_said_otherwise(text: str, value: str) -> None:
    (act,) = acts(text)
    assert isinstance(act, Set)
    assert (act.what, act.value) == ("quiet hours", value)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("back to metric", "metric"),
        ("bot, use kilos again", "metric"),
        ("back to imperial", "imperial"),
    ],
)
def test_units_are_set_back(text: str, value: str) -> None:
    (act,) = acts(text, to_bot=text.startswith("bot"))
    assert isinstance(act, Set)
    assert (act.what, act.value) == ("units", value)


@pytest.mark.parametrize(
    "text",
    [
        "a silly slip, I said bin 3 and it was Tall Paul, put it right please",
        "I'd written bin 3 but obviously it was the Tall Paul one, pls change",
        "it was never bin 3, it was Tall Paul",
        "my mistake, it was Tall Paul, put bin 3 by mistake",
    ],
)
def test_the_bin_that_it_was_puts_right_the_one_that_was_written(text: str) -> None:
    (amend,) = acts(text)
    assert isinstance(amend, Amend)
    assert amend.bin == "Tall Paul"


def test_the_member_who_it_was_puts_right_the_one_that_was_written() -> None:
    (amend,) = acts('Correction. I have written "ines". It was Ruth who fed bin 3, please change.')
    assert isinstance(amend, Amend)
    assert amend.member == "ruth"


@pytest.mark.parametrize(
    "text",
    ["can can", "ok lah can", "sweet as", "no wukkas", "yep too easy", "grand so",
     "aye nae bother", "will do, cheers"],
)  # fmt: skip
def test_consent_in_many_englishes(text: str) -> None:
    said = acts(text, in_room=True, after_bot=True, on_offer=True)
    assert [type(act) for act in said] == [Accept]


@pytest.mark.parametrize("text", ["can we eat now", "easy on the salt", "sorted the spoons"])
def test_what_is_no_consent(text: str) -> None:
    said = acts(text, in_room=True, after_bot=True, on_offer=True)
    assert not [act for act in said if isinstance(act, Accept)]


@pytest.mark.parametrize("where", [{}, {"in_room": True}, {"in_room": True, "after_bot": True}])
@pytest.mark.parametrize(
    "text",
    [
        "thanks bot",
        "thank you bot, that was helpful",
        "cheers bot, much appreciated",
        "ta bot, you're a star",
        "thanks bot, great work 🙏",
        "bot thank you",
        "thanks for the nudge bot",
        "thanks for reminding us, bot",
        "well done bot",
        "well done Ruth",
    ],
)
def test_thanks_and_praise_call_nothing_done(text: str, where: dict[str, bool]) -> None:
    assert acts(text, **where) == ()


@pytest.mark.parametrize("where", [{}, {"after_bot": True}])
@pytest.mark.parametrize(
    "text",
    [
        "thanks bot, done",
        "thanks bot, sorted",
        "done, cheers bot",
        "well, done bot",
        "✅ thanks bot",
    ],
)
def test_done_is_said_beside_thanks(text: str, where: dict[str, bool]) -> None:
    assert acts(text, **where) == (Done(),)
