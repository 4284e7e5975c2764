from datetime import date

import pytest

from handlers.reading.acts import Bury, Drain, Open, Seal
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "name", "place"),
    [
        ("done the shed, it's in the ground by the plum", "shed", "plum"),
        ("shed done, it's in the soil", "shed", None),
        ("ok, finished with bin 3, it is all in the earth now", "bin 3", None),
    ],
)
def test_a_job_done_that_ends_in_the_ground_is_a_burial(
    text: str, name: str, place: str | None
) -> None:
    (buried,) = acts(text, in_room=True)
    assert isinstance(buried, Bury)
    assert (buried.bin, buried.place) == (name, place)


@pytest.mark.parametrize(
    ("text", "name", "litres"),
    [
        ("started a new 15 litre bin, called it Nora", "Nora", 15),
        ("New bin: Gertrude, 20 L", "Gertrude", 20),
        ("bin 4 is up and running", "bin 4", None),
        ("kicked off bin 5 today, 12 L", "bin 5", 12),
        ("the shed bin holds 18 litres", "shed", 18),
        ("New one started today: stairwell, 15 litres", "stairwell", 15),
    ],
)
def test_a_bin_that_was_opened(text: str, name: str, litres: float | None) -> None:
    (opened,) = acts(text)
    assert isinstance(opened, Open)
    assert (opened.bin, opened.capacity_l) == (name, litres)


def test_a_bin_for_all_is_shared() -> None:
    (opened,) = acts("Set up a 20 L bin in the hallway for everybody")
    assert isinstance(opened, Open)
    assert (opened.bin, opened.shared) == ("hallway", True)


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("sealed the shed", "shed"), ("bin 3 is full so I closed it", "bin 3"),
        ("lid's on big blue for good", "big blue"), ("shed got sealed last night", "shed"),
    ],
)  # fmt: skip
def test_a_bin_that_was_sealed(text: str, name: str) -> None:
    (sealed,) = acts(text)
    assert isinstance(sealed, Seal)
    assert sealed.bin == name


@pytest.mark.parametrize(
    ("text", "name", "place"),
    [
        ("buried the shed under the roses", "shed", "roses"),
        ("dug bin 3 into the veggie patch", "bin 3", "veggie patch"),
        ("big blue is in the ground, by the fence", "big blue", "fence"),
        ("buried the shed", "shed", None),
    ],
)
def test_a_bin_that_was_buried(text: str, name: str, place: str | None) -> None:
    (buried,) = acts(text)
    assert isinstance(buried, Bury)
    assert (buried.bin, buried.place) == (name, place)


def test_the_day_it_was_done() -> None:
    (sealed,) = acts("I sealed the shed on Monday")
    assert isinstance(sealed, Seal)
    assert sealed.on == date(2026, 6, 15)


@pytest.mark.parametrize(
    "text",
    ["sealed the deal", "sealed my windows", "opened the shed and there was a hedgehog in it",
     "opened a bottle", "buried the hamster", "closed the curtains", "I'll seal the shed on Friday",
     "don't seal the shed yet", "the shed was sealed up by the last owner", "started a new job"],
)  # fmt: skip
def test_the_same_words_of_other_things(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize("said", ["{} the barn bin", "I {} the barn bin yesterday", "{} bin 3!"])
@pytest.mark.parametrize(
    ("deed", "kind"),
    [("started", Open), ("drained", Drain), ("sealed", Seal), ("buried", Bury)],
)
def test_the_plainest_report_holds_by_its_form(said: str, deed: str, kind: type) -> None:
    (act,) = acts(said.format(deed), bins=("barn", "bin 3"))
    assert isinstance(act, kind)


@pytest.mark.parametrize(
    "text", ["drained the barn bin, got 250 ml", "just drained the barn, about 250 ml of liquid"]
)
def test_a_plain_draining_with_what_came(text: str) -> None:
    (act,) = acts(text, bins=("barn", "bin 3"), in_room=True)
    assert isinstance(act, Drain)
    assert (act.bin, act.volume_l) == ("barn", 0.25)


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("drained 250 ml, how much water does that need?", ["drain", "ask"]),
        ("Added 3 kg of bread. May cheese go in?", ["layer", "ask"]),
        ("sealed it, when can I bury it?", ["seal", "ask"]),
        ("just drained half a litre. How full is the barn?", ["drain", "ask"]),
        ("have you added 3 kg of bread, or how much?", ["ask"]),
    ],
)
def test_a_record_stands_before_its_question(text: str, kinds: list[str]) -> None:
    assert [act.act for act in acts(text, bins=("barn", "bin 3"), in_room=True)] == kinds


@pytest.mark.parametrize("text", ["who drained the barn bin", "nobody buried the barn bin"])
def test_what_is_no_plain_report(text: str) -> None:
    told = acts(text, bins=("barn",))
    assert not any(isinstance(act, Bury | Drain) for act in told)


@pytest.mark.parametrize("text", ["opened the barn bin", "We opened the barn bin today."])
def test_a_new_bin_is_opened_in_the_plainest_words(text: str) -> None:
    (act,) = acts(text, bins=())
    assert isinstance(act, Open)
    assert act.bin == "barn"


def test_several_new_bins_are_opened_in_one_breath() -> None:
    told = acts("opened the orange bin and the pink bin")
    assert [(act.act, act.bin) for act in told] == [("open", "orange"), ("open", "pink")]  # type: ignore[union-attr]


def test_a_known_bin_said_in_a_word_is_not_opened_anew() -> None:
    told = acts("bin three opened up today, stinks like sewage")
    assert [(act.act, act.bin) for act in told] == [("observe", "bin 3")]  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("drained and sealed bin 3", ["drain", "seal"]),
        ("sealed bin 3, it has a white mould", ["seal", "observe"]),
        ("drained and sealed bin 3. It has a white mould", ["drain", "seal", "observe"]),
        (
            "sealed bin 3 after running off 180 ml, it had some green fur",
            ["seal", "drain", "observe"],
        ),
    ],
)
def test_several_deeds_on_one_bin(text: str, told: list[str]) -> None:
    found = acts(text)
    assert sorted(act.act for act in found) == sorted(told)
    assert {act.bin for act in found} == {"bin 3"}  # type: ignore[union-attr]


@pytest.mark.parametrize("text", ["bin 3 sealed on Sunday, bin A sealed today",
                                  "bin 3 sealed on Sunday, bin A today"])  # fmt: skip
def test_each_bin_has_its_own_day(text: str) -> None:
    found = acts(text, bins=("bin 3", "bin A"))
    days = [(act.bin, act.on) for act in found if isinstance(act, Seal)]
    assert days == [("bin 3", date(2026, 6, 14)), ("bin A", date(2026, 6, 17))]
