"""The bot called or scolded: one line, not the whole help."""

import pytest

from handlers.reading.acts import Ask
from handlers.reading.arrangements.calls import A_CALL, A_COMPLAINT
from handlers.reading.plans import read
from tests.reading.context import acts, group


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("bot are you there?", A_CALL),
        ("hello pailkeeper", A_CALL),
        ("pailkeeper?", A_CALL),
        ("can you hear me pailkeeper", A_CALL),
        ("is the bot working today?", A_CALL),
        ("bot, you're useless", A_COMPLAINT),
        ("bot stop", A_COMPLAINT),
        ("bot why do you keep telling me that", A_COMPLAINT),
        ("pailkeeper you never answered me", A_COMPLAINT),
    ],
)
def test_called_or_scolded(text: str, what: str) -> None:
    [asked] = read(text, group(in_room=True))
    assert isinstance(asked, Ask)
    assert (asked.topic, asked.what) == ("help", what)


@pytest.mark.parametrize(
    "text",
    ["bot help", "bot, you are good", "bot stop the reminders", "are you there?", "stop",
     "bot thanks", "cheers bot"],
)  # fmt: skip
def test_other_words_are_read_as_before(text: str) -> None:
    assert not any(
        isinstance(act, Ask) and act.what in (A_CALL, A_COMPLAINT)
        for act in read(text, group(in_room=True))
    )


def test_outside_of_a_room_nobody_calls() -> None:
    assert all(isinstance(act, Ask) and act.what is None for act in acts("bot are you there?"))
