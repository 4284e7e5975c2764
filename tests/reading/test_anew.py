"""A record struck out, with what is to stand in its place."""

import pytest

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
