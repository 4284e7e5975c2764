"""A record struck out, with what is to stand in its place."""

import pytest

from handlers.reading.acts import Amend
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("scratch that, 4 kg to bin 3", ["retract", "layer"]),
        ("sorry, scratch that: 4 kg to bin 3", ["retract", "layer"]),
        ("delete that and add 2 kg to the shed", ["retract", "layer"]),
        ("undo the last one. drained 300 ml from the shed", ["retract", "drain"]),
        ("strike that out please, I sealed bin 3", ["retract", "seal"]),
        ("scratch that, wrong chat", ["retract"]),
        ("scratch that please", ["retract"]),
        ("scratch that, it was 4 kg", ["amend"]),
        ("forget the bin, 2 kg to the shed", ["layer"]),
    ],
)
@pytest.mark.parametrize("after_bot", [True, False])
def test_struck_out_and_told_anew(text: str, kinds: list[str], after_bot: bool) -> None:
    assert [act.act for act in acts(text, in_room=True, after_bot=after_bot)] == kinds


@pytest.mark.parametrize(
    ("text", "right"),
    [
        ("scratch that it was bin 3 but nearer 2 kg", Amend(bin="bin 3", mass_kg=2.0)),
        ("scratch that, it was bin 3, about 2 kg", Amend(bin="bin 3", mass_kg=2.0)),
        ("scrap that, it went in bin 3 and only 2 kg", Amend(bin="bin 3", mass_kg=2.0)),
        ("delete that, it was 5 litres into the shed", Amend(bin="shed", volume_l=5.0)),
        ("scratch that it was bin 3", Amend(bin="bin 3")),
        ("scratch that, more like 2 kg", Amend(mass_kg=2.0)),
    ],
)
@pytest.mark.parametrize("where", [{}, {"in_room": True}, {"in_room": True, "after_bot": True}])
def test_what_is_right_behind_a_striking_out(
    text: str, right: Amend, where: dict[str, bool]
) -> None:
    assert acts(text, **where) == (right,)


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("scratch that, it was the neighbour's cat", ["retract"]),
        ("ignore my last, that was last week's", ["retract"]),
        ("scratch that, 2 kg of bread in the shed", ["retract", "layer"]),
    ],
)
def test_another_matter_behind_a_striking_out_is_no_correction(text: str, kinds: list[str]) -> None:
    assert [act.act for act in acts(text, in_room=True)] == kinds
