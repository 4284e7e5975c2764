"""The day of a report, where its own words do not say it but the message does."""

from datetime import date

import pytest

from handlers.reading.acts import Drain, Layer
from tests.reading.context import WEDNESDAY, acts

# The message is of Wednesday 17 June 2026.


@pytest.mark.parametrize(
    ("text", "on"),
    [
        ("yesterday's drain: 300 ml, bin 3", "2026-06-16"),
        ("put yesterday's rice in bin 3, 1 kg", "2026-06-17"),
        ("sealed bin 3 on the evening of the 12th", "2026-06-12"),
        ("bin 3 is sealed, did it Sunday night", "2026-06-14"),
        ("the juice of yesterday from bin 3 was 2 litres, I forgot to write it", "2026-06-16"),
        ("2 kg of bread from Saturday's fair, added same day to bin 3", "2026-06-13"),
        ("was it Tuesday I put 2 kg in bin 3, no it was Monday", "2026-06-15"),
        ("did bin 3 get sealed on Monday? no, I sealed it on Tuesday", "2026-06-16"),
        ("i går 2 kg of peel in bin 3", "2026-06-16"),
        ("jumapili 2 kg of peel in bin 3", "2026-06-14"),
        ("Ruth drained the shed kanina, 220 ml", "2026-06-17"),
        ("Ruth drained the shed kagabi, 220 ml", "2026-06-16"),
        ("drained the shed vanmorgen, 220 ml", "2026-06-17"),
        ("drained the shed heute Morgen, 220 ml", "2026-06-17"),
        ("2 kg of sprouts into bin 3 on St Stephen's Day", "2025-12-26"),
        ("drianed bin 3 on Monday, 200 ml", "2026-06-15"),
        ("bin 3 is shut since Monday, lid taped down", "2026-06-15"),
        ("bin 3 is sealed since the 4th", "2026-06-04"),
        ("1.2 kg of rind, it's in bin 3 since last night", "2026-06-16"),
        ("bin 3 has been under the plum since Saturday", "2026-06-13"),
        ("3 days back, 2 kg of batter gone sour, put into bin 3", "2026-06-14"),
        ("16.06. 1,2 kg in bin 3", "2026-06-16"),
        ("two sundays ago I put 3 kg in bin 3", "2026-06-07"),
        ("day b4 yesterday 1.5 kg of rice, bin 3", "2026-06-15"),
        ("sat nite 2 kg of bones into bin 3", "2026-06-13"),
        ("bin 3 has been closed since Sunday, I only now remember to write it", "2026-06-14"),
        ("10/06 bin 3 1.5 kg of peel", "2026-06-10"),
        ("please add 1.5 kg of peel to bin 3 for yesterday", "2026-06-16"),
        ("5/6 2 kg of peel into bin 3", "2026-06-05"),
        ("closed bin 3 on the first, by the way", "2026-06-01"),
        ("Sunday's kale, 2 kg, is in bin 3 as of right now, put in just now", "2026-06-17"),
        ("crusts off Sunday, 2 kg, bin 3, just now", "2026-06-17"),
        ("At Sunday's meeting I put 2 kg of crusts in bin 3", "2026-06-14"),
        ("At the market of Saturday I filled bin 3 with 4 kg of kale", "2026-06-13"),
        ("Sunday's fair left us 4 kg of crusts for bin 3", "2026-06-14"),
        ("mark me down for Monday's crusts, 2 kg, bin 3", "2026-06-15"),
        ("Monday's crusts, 2 kg, bin 3, I forgot to say", "2026-06-15"),
        ("the kale from Sunday? 2 kg, it went in bin 3 that same evening", "2026-06-14"),
        ("2 kg of kale into bin 3 yestreen", "2026-06-16"),
        ("2 kg of kale into bin 3 last evenin", "2026-06-16"),
        ("bin 3 closed and taped by me yesterday night", "2026-06-16"),
        ("he dropped by Monday and put all of bin 3 under my plum", "2026-06-15"),
        ("as of last night, bin 3 is sealed", "2026-06-16"),
        ("put 2 pound of peel in bin 3 las night", "2026-06-16"),
        ("oh! forgot — Monday — 2 kg of peelings into bin 3", "2026-06-15"),
        ("From last evening: 0.2 L drained from bin 3", "2026-06-16"),
        ("450 g of crusts, which went in bin 3 on Monday", "2026-06-15"),
        ("batch: 4 kg bran, started fermenting 9 June", "2026-06-09"),
        ("pressed bin 3 down and sealed it at the weekend, Saturday I think it was", "2026-06-13"),
        ("bin 3 closed ytd, dont open it", "2026-06-16"),
        ("2 kg of peel into bin 3 day b4 ytd", "2026-06-15"),
        ("put 2 kg of peel in bin 3 ystdy", "2026-06-16"),
        ("2 kg of crusts in bin 3, we baked all day Sunday so there's more", "2026-06-17"),
        ("note this, bot: Monday we put 2 kg of peel in bin 3", "2026-06-15"),
        ("log this Sunday I put 2 kg of peel in bin 3 and forgot", "2026-06-14"),
        ("choir tomorrow night, so 2 kg of crusts are in bin 3", "2026-06-17"),
        ("ines n me sealed bin 3 sat", "2026-06-13"),
    ],
)
def test_the_one_day_told_is_the_day(text: str, on: str) -> None:
    assert {act.on for act in acts(text)} == {date.fromisoformat(on)}  # type: ignore[union-attr]


def test_a_word_of_a_bins_name_says_nothing_of_its_day() -> None:
    [act] = acts("450 g of crusts, which went in the back step on Monday", bins=("back step",))
    assert isinstance(act, Layer)
    assert (act.bin, act.on) == ("back step", date(2026, 6, 15))


@pytest.mark.parametrize(
    "text",
    [
        "2 kg of leftovers from Sunday into bin 3",
        "put 2 kg Sunday roast bones in bin 3",
        "put the same as yesterday in bin 3",
        "2 kg of old Friday curry went in bin 3",
        "added 2 kg to bin 3, the collection is on Monday",
        "meeting on the 7th, 2 kg of peelings in bin 3",
        "added a kilo of bones of the Sunday chicken to bin 3",
        "2 kg of peel into bin 3, it was in the freezer since Monday",
        "arroz de ayer, 500 gramos, bin 3",
        "6th layer into bin 3, 2 kg of peelings",
        "the market was yesterday, so 2 kg of kale in bin 3 today",
        "sealed bin 3 (full since Sunday)",
        "bin 3 was full on Sunday, sealed it this morning",
        "bin 3 smells like a pub on a Sunday",
        "bin 3 is warm today, yesterday it was not",
    ],
)
def test_a_day_of_something_else_is_not(text: str) -> None:
    assert {act.on for act in acts(text)} == {date(2026, 6, 17)}  # type: ignore[union-attr]


@pytest.mark.parametrize(
    "text",
    [
        "on Monday I put 2 kg of fish and on Tuesday 1 kg of bread",
        "I put 2 kg of fish on Monday and 1 kg of bread on Tuesday in bin 3",
    ],
)
def test_what_went_in_on_two_days_is_two_layers(text: str) -> None:
    layers = [(act.mass_kg, act.on) for act in acts(text) if isinstance(act, Layer)]
    assert layers == [(2, date(2026, 6, 15)), (1, date(2026, 6, 16))]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        (
            "Sunday 200 ml off the shed and the day before that, 300 ml off bin 3",
            [("shed", 14), ("bin 3", 13)],
        ),
        ("2 kg in the shed yesterday and, on Monday, 1 kg in bin 3", [("shed", 16), ("bin 3", 15)]),
        (
            "I drained the shed yesterday, 500 ml, and the day before half that",
            [("shed", 16), ("shed", 15)],
        ),
        ("Mon + Tue, 2 kg each time, crusts, bin 3", [("bin 3", 15), ("bin 3", 16)]),
        ("Sealed are now shed (Monday) and bin 3 (today)", [("shed", 15), ("bin 3", 17)]),
        ("Shed is shut today. Bin 3 also, but on Monday", [("shed", 17), ("bin 3", 15)]),
        ("Monday I did 500 g in bin 3 and Tuesday another 700ish", [("bin 3", 15), ("bin 3", 16)]),
        (
            "maggots in bin 3 on Sunday, so I shut it today",
            [("bin 3", 17), ("bin 3", 14)],
        ),
        (
            "a pound of peel in bin 3 Monday, another pound of it today",
            [("bin 3", 15), ("bin 3", 17)],
        ),
        ("a kilo of crusts Monday and another yesterday, bin 3", [("bin 3", 15), ("bin 3", 16)]),
    ],
)
def test_each_of_two_has_its_own_day(text: str, told: list[tuple[str, int]]) -> None:
    found = [(act.bin, act.on and act.on.day) for act in acts(text)]  # type: ignore[union-attr]
    assert found == told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("6 kg of kale in bin 3, half of it yesterday, half today", [(3, 16), (3, 17)]),
        ("6 kg of kale in bin 3, a third on Monday, the rest today", [(2, 15), (4, 17)]),
        ("6 kg of kale in bin 3 yesterday, half of it mouldy", [(6, 16)]),
        ("6 litres off bin 3, half of it on Monday, other half just now", [(3, 15), (3, 17)]),
    ],
)
def test_a_share_of_the_whole_has_its_day(text: str, told: list[tuple[float, int]]) -> None:
    found = [act for act in acts(text) if isinstance(act, Layer | Drain)]
    amounts = [act.mass_kg if isinstance(act, Layer) else act.volume_l for act in found]
    days = [act.on.day for act in found if act.on is not None]
    assert list(zip(amounts, days, strict=True)) == told


@pytest.mark.parametrize(
    "text",
    [
        "the shed is going in the ground on Saturday",
        "the shed one is ready and it's going under the beans next Saturday",
        "shed's going in the trench on Sunday",
        "shed goes in the ground next week",
    ],
)
def test_what_is_going_into_the_ground_on_a_day_to_come_is_not_buried(text: str) -> None:
    assert [act.act for act in acts(text) if act.act != "ask"] == []


def test_what_went_into_the_ground_is_and_liquid_is_of_the_day_it_was_drawn() -> None:
    assert [act.act for act in acts("the shed went in the ground on Saturday")] == ["bury"]
    [drain] = acts("drained 2 cups off the shed, it goes on the roses tomorrow")
    assert getattr(drain, "on", None) == WEDNESDAY.date()


@pytest.mark.parametrize(
    ("text", "on"),
    [
        ("1.2 kg of curry, bin 3. It spoiled because of a blackout last night", "2026-06-17"),
        ("2 kg of fish in bin 3, the freezer died on Monday", "2026-06-17"),
        ("2 kg of rice in bin 3 because the power was off yesterday", "2026-06-17"),
        ("1 kg of ham in bin 3, bought it on Saturday", "2026-06-17"),
        ("2 kg of stew in bin 3. Cooked it on Sunday", "2026-06-17"),
        ("the fridge broke yesterday so I put 1 kg of fish in bin 3", "2026-06-17"),
        ("2 kg of rice in bin 3 last night, the freezer broke", "2026-06-16"),
        ("2 kg of rice in bin 3. That was yesterday", "2026-06-16"),
        ("emptied the freezer yesterday, 2 kg of peas in bin 3", "2026-06-16"),
        ("2 kg of rice in bin 3. Went in last night", "2026-06-16"),
        ("I was away from the 3rd to the 10th, drained bin 3 on Sunday, 300 ml", "2026-06-14"),
        ("drained bin 3 on Sunday, I was away from the 3rd to the 10th", "2026-06-14"),
        ("baked a loaf on Sunday and it's gone hard, so that's 500 g in bin 3", "2026-06-17"),
        ("made a dal on Monday, it's gone off so that's 1 kg of it in bin 3", "2026-06-17"),
        ("my brother came on Sunday, and what he left, 1 kg, has gone in bin 3", "2026-06-17"),
        ("my brother came on Sunday and we put 800 g of rice in bin 3", "2026-06-14"),
        ("bin 3 yesterday after the committee meeting: 2 kg of bread", "2026-06-16"),
    ],
)
def test_the_day_of_a_mishap_or_an_absence_is_not_that_of_the_record(text: str, on: str) -> None:
    told = [act for act in acts(text) if isinstance(act, Drain | Layer)]
    assert [act.on for act in told] == [date.fromisoformat(on)]


@pytest.mark.parametrize(
    ("text", "on", "kg"),
    [
        ("12/6 shed 500 g", "2026-06-12", 0.5),
        ("3/5 shed 500 g", "2026-05-03", 0.5),
        ("5/16 shed bin 2 kg", "2026-05-16", 2.0),
        ("11/21 shed 4 lb", "2025-11-21", 1.814),
        ("3/5 of 2 kg went in the shed", "2026-06-17", 1.2),
        ("5 kg, 2/5 in the shed", "2026-06-17", 2.0),
        ("2/3 shed 6 kg", "2026-06-17", 4.0),  # its date would be months ago
    ],
)
def test_two_numbers_before_a_bin_and_an_amount_are_a_date(text: str, on: str, kg: float) -> None:
    found = [one for one in acts(text, in_room=True) if isinstance(one, Layer)]
    [told] = [one for one in found if one.bin == "shed"]
    assert told.on == date.fromisoformat(on)
    assert told.mass_kg == pytest.approx(kg, rel=0.01)
