"""A weekend told late: days added to a record, several records put right in one go, and what one
neighbour puts right or answers of another's.
"""

import pytest

from storage.database import Database
from tests.room import TalkingRoom

BINS = ("cellar", "porch", "red", "green")


async def talked(db: Database, *lines: str) -> tuple[list[str], list[str]]:
    """The layers and drainings that stand, and the last answer; the lines are said on a Monday."""
    room = TalkingRoom(db)
    for bin in BINS:
        await room.says(f"opened the {bin} bin, 20 L")
    for who in ("bram", "ruth"):
        await room.says("hello", who=who)
    said: list[str] = []
    for line in lines:
        who, colon, words = line.partition(": ")
        speaker = who if colon and who in ("bram", "ruth") else "ines"
        said = [
            told.body for told in await room.says(words if speaker == who else line, who=speaker)
        ]
    standing = [e for e in await room.standing() if e.act in ("layer", "drain") and e.bin]
    return [
        " ".join(
            filter(
                None,
                [
                    "drain" if entry.act == "drain" else "",
                    entry.bin.name if entry.bin else "",
                    f"{entry.facts.mass_kg or entry.facts.volume_l or 0:g}",
                    f"{entry.on:%a}" if entry.on else "",
                    entry.member if entry.member != "ines" else "",
                ],
            )
        )
        for entry in standing
    ], said


FRIDAY = "2 kg in cellar on Friday"


@pytest.mark.parametrize(
    ("said", "further"),
    [
        ("forgot Saturday, that was 900 g", ["cellar 0.9 Sat"]),
        ("oh and I forgot Saturday's: 900 g of bread", ["cellar 0.9 Sat"]),
        ("missed Saturday, 900 g in the porch", ["porch 0.9 Sat"]),
        ("forgot Saturday and Sunday, 500 g each", ["cellar 0.5 Sat", "cellar 0.5 Sun"]),
        ("there was 1 kg on Saturday too", ["cellar 1 Sat"]),
        ("the same again on Saturday", ["cellar 2 Sat"]),
        ("and some on Saturday", ["cellar 0 Sat"]),
        ("and the day before, 1 kg", ["cellar 1 Thu"]),
        ("another 300 g in the evening", ["cellar 0.3 Fri"]),
        ("another 300 g just now", ["cellar 0.3 Mon"]),
        ("forgot Saturday's meeting, sorry", []),
        ("missed Saturday", []),
        ("the day before we had 1 kg of cake", []),
        ("we left 1 kg of peel out on Saturday", []),
        ("same day on Saturday", []),
    ],
)
async def test_a_further_day_overwrites_nothing(
    db: Database, said: str, further: list[str]
) -> None:
    records, _ = await talked(db, FRIDAY, said)
    assert records == ["cellar 2 Fri", *further]


@pytest.mark.parametrize(
    ("said", "records"),
    [
        ("that was all yesterday", ["cellar 2 Sun", "porch 1 Sun"]),
        ("those were both yesterday", ["cellar 2 Sun", "porch 1 Sun"]),
        ("no wait, both were in red", ["red 2 Mon", "red 1 Mon"]),
        ("both were Ruth's", ["cellar 2 Mon ruth", "porch 1 Mon ruth"]),
        ("scratch both", []),
        ("delete the last two", []),
        ("scrap my last two", []),
        ("all on Friday", ["cellar 2 Fri", "porch 1 Fri"]),
        ("it was all in red", ["cellar 2 Mon", "red 1 Mon"]),
        ("they were both out yesterday", ["cellar 2 Mon", "porch 1 Mon"]),
        ("both bins are full", ["cellar 2 Mon", "porch 1 Mon"]),
    ],
)
async def test_several_messages_are_put_right_together(
    db: Database, said: str, records: list[str]
) -> None:
    assert (await talked(db, "2 kg in cellar", "1 kg in porch", said))[0] == records


async def test_both_of_three_told_in_two_messages_are_not_guessed(db: Database) -> None:
    records, [told] = await talked(
        db, "2 kg in cellar, 1 kg in porch", "3 kg in red", "scratch both"
    )
    assert len(records) == 3
    assert told.startswith("Which record do you mean?")


async def test_what_another_told_is_asked_about_and_ones_own_put_right(db: Database) -> None:
    lines = ("2 kg in cellar", "bram: 1 kg in porch", "Bram's and mine should both be in red")
    records, [told] = await talked(db, *lines)
    assert records == ["porch 1 Mon bram", "red 2 Mon"]
    assert "Bram's last record is 1 kg in the porch bin" in told
    assert (await talked(db, *lines, "yes"))[0] == ["red 2 Mon", "red 1 Mon bram"]


@pytest.mark.parametrize(
    ("said", "records"),
    [
        ("yesterday's was a typo, should be 200 g", ["porch 1 Mon", "cellar 0.2 Sun"]),
        ("typo in yesterday's: 200 g not 2 kg", ["porch 1 Mon", "cellar 0.2 Sun"]),
        ("yesterday's 2 kg should be 200 g", ["porch 1 Mon", "cellar 0.2 Sun"]),
        ("the one from yesterday was 200 g", ["porch 1 Mon", "cellar 0.2 Sun"]),
        ("I was wrong about the cellar, that was 500 g", ["porch 1 Mon", "cellar 0.5 Sun"]),
        ("cellar's should be 1.5", ["porch 1 Mon", "cellar 1.5 Sun"]),
        ("make the cellar 3", ["porch 1 Mon", "cellar 3 Sun"]),
        ("make the cellar nice", ["cellar 2 Sun", "porch 1 Mon"]),
        ("yesterday was a mistake", ["cellar 2 Sun", "porch 1 Mon"]),
    ],
)
async def test_an_earlier_record_is_called_by_its_day_or_bin(
    db: Database, said: str, records: list[str]
) -> None:
    assert (await talked(db, "2 kg in cellar yesterday", "1 kg in porch", said))[0] == records


@pytest.mark.parametrize(
    ("said", "right"),
    [
        ("no that was 2, not 3, and in the green", "2 kg and the green bin"),
        ("that was 2 kg and in the green", "2 kg and the green bin"),
        ("no, 2 kg, and it went in green", "2 kg and the green bin"),
        ("I think that was 2 kg not 3", "2 kg"),
        ("that was in the green", "the green bin"),
    ],
)
async def test_anothers_record_is_put_right_whole(db: Database, said: str, right: str) -> None:
    lines = ("3 kg in cellar", f"ruth: {said}")
    records, [told] = await talked(db, *lines)
    assert records == ["cellar 3 Mon"]
    assert told == f"Ines's last record is 3 kg in the cellar bin. Shall I correct it to {right}?"
    kilos, bin = ("2" if "kg" in right else "3"), "green" if "green" in right else "cellar"
    assert (await talked(db, *lines, "ruth: yes"))[0] == [f"{bin} {kilos} Mon"]


@pytest.mark.parametrize(
    "said",
    ["no that was me, 3 kg in cellar", "that was me, 3 kg of peel"],
)
async def test_what_another_told_as_his_own_is_no_second_layer(db: Database, said: str) -> None:
    records, [told] = await talked(db, "bram: 3 kg in cellar", f"ruth: {said}")
    assert records == ["cellar 3 Mon bram"]
    assert told.endswith("Shall I put it down to ruth?")


@pytest.mark.parametrize(
    ("said", "records"),
    [
        ("that was 2 kg and in the green", ["green 2 Mon"]),
        ("no, 2 kg, and it went in green", ["green 2 Mon"]),
        ("2 kg in green", ["cellar 3 Mon", "green 2 Mon"]),
        ("and 2 kg in green", ["cellar 3 Mon", "green 2 Mon"]),
    ],
)
async def test_ones_own_is_told_right_and_not_twice(
    db: Database, said: str, records: list[str]
) -> None:
    assert (await talked(db, "3 kg in cellar", said))[0] == records


@pytest.mark.parametrize(
    ("question", "said", "records"),
    [
        ("did you drain the cellar?", "yes, 300 ml", ["drain cellar 0.3 Mon"]),
        (
            "Ruth, did you drain the cellar yesterday?",
            "yep, about 300 ml",
            ["drain cellar 0.3 Sun"],
        ),
        ("how much did you drain from the red?", "about 200 ml", ["drain red 0.2 Mon"]),
        ("have you put stuff in the red?", "yes, yesterday, 1.5 kg", ["red 1.5 Sun"]),
        ("did you drain the cellar?", "no", []),
        ("did you drain the cellar?", "yes, 3 times", []),
        ("did you drain the cellar?", "yes, drank 300 ml of tea after", []),
        ("did you like the cellar?", "yes, 300 ml", []),
    ],
)
async def test_a_neighbour_is_answered(
    db: Database, question: str, said: str, records: list[str]
) -> None:
    told = (await talked(db, f"bram: {question}", f"ruth: {said}"))[0]
    assert told == [f"{record} ruth" for record in records]


async def test_what_was_told_before_the_question_is_none_besides(db: Database) -> None:
    lines = ("ruth: drained 300 ml from cellar", "bram: did you drain the cellar?")
    assert (await talked(db, *lines, "ruth: yes, 300 ml"))[0] == ["drain cellar 0.3 Mon ruth"]


@pytest.mark.parametrize(
    ("lines", "records"),
    [
        (("700 g in cellar", "make that 900 and in the red"), ["red 0.9 Mon"]),
        (("700 g in cellar", "I'd double-counted, take 200 g off"), ["cellar 0.5 Mon"]),
        (
            ("700 g in cellar, 1 kg in red", "I'd double-counted the cellar, take 200 g off"),
            ["cellar 0.7 Mon", "red 1 Mon"],
        ),
        (("2 kg in red and 1 kg in cellar", "the red one was Bram's"),
         ["cellar 1 Mon", "red 2 Mon bram"]),
        (("2 kg in red", "the red was Bram's idea"), ["red 2 Mon"]),
        (("drained red 100 ml yesterday and 150 today", "yesterday's was 200"),
         ["drain red 0.15 Mon", "drain red 0.2 Sun"]),
        (("started the green on Saturday with 800 g",), ["green 0.8 Sat"]),
    ],
)  # fmt: skip
async def test_what_is_right_of_one_of_them(
    db: Database, lines: tuple[str, ...], records: list[str]
) -> None:
    assert sorted((await talked(db, *lines))[0]) == sorted(records)


async def test_all_but_one_bin(db: Database) -> None:
    told, _ = await talked(db, "drained all of them, 200 ml each", "except the green")
    assert told == [f"drain {bin} 0.2 Mon" for bin in ("cellar", "porch", "red")]


@pytest.mark.parametrize(("said", "bin"), [("put 300 g of them in", "green"),
                                           ("put 300 g of them in the red", "red")])  # fmt: skip
async def test_what_was_asked_about_goes_into_the_bin_that_was_asked_of(
    db: Database, said: str, bin: str
) -> None:
    assert (await talked(db, "can fish bones go in the green?", said))[0] == [f"{bin} 0.3 Mon"]


async def test_the_day_of_what_went_in(db: Database) -> None:
    told, _ = await talked(
        db, "1 kg of bread in cellar and 2 kg of peel in porch", "the bread was Friday"
    )
    assert told == ["porch 2 Mon", "cellar 1 Fri"]


@pytest.mark.parametrize(
    ("said", "standing"),
    [
        ("no worries, 900 g in green", ["red 1 Mon", "green 0.9 Mon"]),
        ("no problem at all, another 900 g in red", ["red 1 Mon", "red 0.9 Mon"]),
        ("not a problem! 900 g into green", ["red 1 Mon", "green 0.9 Mon"]),
        ("no meat, 900 g in green", ["red 1 Mon", "green 0.9 Mon"]),
        ("no time before work, so another 900 g in red", ["red 1 Mon", "red 0.9 Mon"]),
        ("no one was in so I put 900 g in green", ["red 1 Mon", "green 0.9 Mon"]),
        ("no idea how, but 900 g in green", ["red 1 Mon", "green 0.9 Mon"]),
        ("no, 900 g in green", ["green 0.9 Mon"]),
        ("no 900 g", ["red 0.9 Mon"]),
        ("nope, it was 900 g", ["red 0.9 Mon"]),
    ],
)
async def test_not_every_no_puts_a_record_right(
    db: Database, said: str, standing: list[str]
) -> None:
    told, _ = await talked(db, "1 kg in red", said)
    assert told == standing
