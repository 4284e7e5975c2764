"""Amounts that are aimed at, allowed or summed up are in no bin yet."""

import pytest

from handlers.reading.acts import Layer
from handlers.reading.records import RECORD_KINDS
from tests.reading.context import acts


@pytest.mark.parametrize(
    "text",
    ["our target for June: 30 kg in the shed", "maximum 15 kg in big blue",
     "last month's total for the shed was 90 kg", "Friday's plan: shed 2 kg, bin 3 1 kg",
     "to follow: 2 kg apple peel, shed", "still to come: bin 3, 1 kg crusts",
     "later today: shed, 2 kg peelings", "next up: shed 1 kg peel"],
)  # fmt: skip
def test_what_is_not_yet_in_is_no_layer(text: str) -> None:
    assert not any(isinstance(act, Layer) for act in acts(text))


@pytest.mark.parametrize(
    "text",
    ["added 2 kg to the shed, our target is 30", "Friday: shed 2 kg", "shed: 1.5 kg potato peel",
     "to follow: more. added 2 kg to the shed",
     "goal: 100 kg. today 2 kg of peel to the shed"],
)  # fmt: skip
def test_what_is_in_is_a_layer(text: str) -> None:
    assert any(isinstance(act, Layer) for act in acts(text))


@pytest.mark.parametrize(
    "text",
    ["Plan for week 12: shed sealed Tuesday, bin 3 buried Thursday, 3 kg bran mixed",
     "Spring plan: big blue sealed by Easter, 4 kg bran made", "Targets: 6 kg bran made, no flies",
     "next week's list: bin 3 sealed, shed drained, 1 kg bran to Tall Paul",
     "Option B: the shed sealed now and bin 3 buried in May",
     "to be decided: bin 3 sealed when? shed buried where?", "Friday's job: 2 kg of bones, shed",
     "hypothetical: the shed is full and sealed, and a goose turns up",
     "Agenda: shed drained, bin 3 dug in, tea", "I dreamt I sealed the shed bin",
     "in my dream I buried bin 3 under a palm",
     "tomorrow: shed 2 kg, bin 3 1 kg",
     "by Friday that will be another 4 kg in bin 3",
     "this bag of skins, 3 kg, is destined for bin 3",
     "next month: shed sealed, bin 3 drained weekly", "ideas for May: shed buried, 4 kg bran made",
     "tell me you didn't put 5 kg in bin 3",
     "roadmap for May: shed sealed, bin 3 buried, 2 kg bran mixed",
     "shed sealed: that's the plan",
     "option 1, 4 kg in the shed; option 2, all in bin 3"],
)  # fmt: skip
def test_what_is_planned_or_dreamt_is_no_record(text: str) -> None:
    assert RECORD_KINDS.isdisjoint(act.act for act in acts(text))


@pytest.mark.parametrize(
    ("text", "kind"),
    [("the plan worked: I sealed the shed bin", "seal"),
     ("Friday's list done: shed sealed", "seal"),
     ("we hit our target: 3 kg of peel into bin 3", "layer"),
     ("plan B it was: 2 kg of crusts in big blue", "layer"),
     ("two jobs done: shed drained, bin 3 sealed", "seal"),
     ("today's list: shed 2 kg potato peel", "layer"),
     ("a bag of skins, 3 kg, was destined for bin 3 but the shed got it", "layer"),
     ("I thought I had dreamt it but I did seal the shed bin", "seal")],
)  # fmt: skip
def test_what_was_carried_out_is_a_record(text: str, kind: str) -> None:
    assert kind in {act.act for act in acts(text)}
