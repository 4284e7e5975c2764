"""A record that its teller takes back by saying that it was not done."""

from datetime import timedelta

import pytest

from handlers.reading.acts import Act, Amend, Drain, Layer, Retract, Seal
from handlers.reading.plans import read
from tests.reading.context import acts, group

DRAINED, FED = Drain(volume_l=0.5, bin="shed"), Layer(mass_kg=2.0, bin="shed")


@pytest.mark.parametrize(
    ("text", "last"),
    [
        ("I didn't drain it at all", DRAINED),
        ("actually I never drained it, that was the rain barrel", DRAINED),
        ("no, I haven't added it yet", FED),
        ("oops, I didn't seal it after all", Seal(bin="shed")),
    ],
)
def test_what_was_not_done_is_struck_out(text: str, last: Act) -> None:
    assert read(text, group(in_room=True, last=last)) == (Retract(bin="shed"),)


@pytest.mark.parametrize(
    ("text", "last"),
    [
        ("I didn't put it in today, it was yesterday", FED),
        ("I didn't put it in today but yesterday", FED),
        ("I never put anything today o, na yesterday I put am", FED),
        ("oops, I didn't drain it today, I drained it yesterday", DRAINED),
        ("no, I didn't add it today - that was yesterday", FED),
        ("I didn't seal it today, I did it yesterday", Seal(bin="shed")),
    ],
)
def test_what_was_done_on_another_day_is_put_down_to_it(text: str, last: Act) -> None:
    context = group(in_room=True, last=last)
    yesterday = context.at.astimezone(context.zone).date() - timedelta(1)
    assert read(text, context) == (Amend(on=yesterday),)


@pytest.mark.parametrize(
    ("text", "last"),
    [
        ("I didn't put it in today, I'll do it tomorrow", FED),
        ("I didn't drain it today, Bram did yesterday", FED),
    ],
)
def test_what_another_did_or_is_to_come_moves_no_record(text: str, last: Act) -> None:
    said = read(text, group(in_room=True, last=last))
    assert not [one for one in said if isinstance(one, Amend)]


@pytest.mark.parametrize(
    ("text", "last"),
    [
        ("I didn't drain it at all", FED),
        ("I didn't drain bin 3 though", DRAINED),
        ("I didn't add the eggs", FED),
        ("he didn't drain it", DRAINED),
        ("I didn't drain it at all", None),
    ],
)
def test_what_else_was_not_done_strikes_nothing(text: str, last: Act | None) -> None:
    said = read(text, group(in_room=True, last=last))
    assert not [one for one in said if isinstance(one, Retract)]


def test_the_barrel_for_rain_is_no_bin_called_barrel() -> None:
    said = read("that was the rain barrel", group(in_room=True, bins=("barrel",), last=DRAINED))
    assert said == ()


@pytest.mark.parametrize(
    "text",
    [
        "Emptied bin 3? No, just peeked under the lid.",
        "Sealed the shed? Nope.",
        "Drained the shed? I haven't, sorry.",
        "Buried bin 3? Not this week.",
        "Ruth drained the shed? No, not yet.",
        "Put 2 kg in bin 3? No chance.",
        "Sealed the shed on Monday? No, not before Friday.",
        "Drained the shed? No idea.",
    ],
)
@pytest.mark.parametrize("in_room", [True, False])
def test_ones_own_question_that_is_denied_tells_nothing(text: str, in_room: bool) -> None:
    assert acts(text, in_room=in_room) == ()


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("Drained the shed? Yes, 300 ml.", "drain"),
        ("Drained the shed today? No, yesterday.", "drain"),
        ("Drained the shed yesterday? No, Sunday.", "drain"),
        ("Sealed bin 3 at the weekend? No, only now.", "seal"),
        ("Drained the shed? Not much in it, 50 ml.", "drain"),
        ("Drained bin 3? No, buried it.", "bury"),
        ("Drained the shed. No smell at all though.", "drain"),
        ("Sealed the shed? Not yet. Drained it though, 200 ml", "drain"),
    ],
)
def test_what_was_done_all_the_same_is_told(text: str, kind: str) -> None:
    assert [act.act for act in acts(text)] == [kind]
