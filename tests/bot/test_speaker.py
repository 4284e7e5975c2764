"""Who speaks a line typed at the prompt."""

import pytest

from bot.speaker import speaker_of

MEMBERS, BINS = ("you", "ana maria", "Olive"), ("shed", "yard bin")


@pytest.mark.parametrize(
    ("line", "speaker", "said"),
    [
        ("ines: drained half a litre", "ines", "drained half a litre"),
        ("Bram:drained half a litre", "Bram", "drained half a litre"),
        ("Anna Lena Schmidt-Meier: added 1 kg rice", "Anna Lena Schmidt-Meier", "added 1 kg rice"),
        ("ana maria: added 2 kg rice", "ana maria", "added 2 kg rice"),
        ("olive: added 2 kg rice", "olive", "added 2 kg rice"),
        ("Zoë O'Brien: hello", "Zoë O'Brien", "hello"),
        ("J.R.: hello", "J.R.", "hello"),
        ("tom: I drained 200 mL", "tom", "I drained 200 mL"),
    ],
)
def test_a_name_before_the_colon_speaks(line: str, speaker: str, said: str) -> None:
    assert speaker_of(line, MEMBERS, BINS) == (speaker, said)


@pytest.mark.parametrize(
    "line",
    [
        "PS: drained 100 mL",
        "FYI: drained 100 mL",
        "Note: I drained 200 mL",
        "Tomorrow: sealing the blue bin",
        "Sunday: buried it",
        "Question: how full is blue?",
        "shed: 2 kg of bread",
        "Shed: 2 kg of bread",
        "yard bin: drained",
        "bread: 2 kg to the shed",
        "bread: I put 2 kg in the shed",
        "for lunch: 2 kg of rice",
        "C:N of the shed bin",
        "see https://yard.example/dues",
        "at 18:30 we drained it",
        "ines:",
    ],
)
def test_other_words_before_a_colon_are_nobody(line: str) -> None:
    assert speaker_of(line, MEMBERS, BINS) == ("", line)
