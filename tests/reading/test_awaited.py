"""Deeds that are waited for, doubted or given up, and the craft's verbs said of other things."""

import pytest

from handlers.reading.records import RECORD_KINDS
from tests.reading.context import acts

_BINS = ("shed", "bin 3", "Tall Paul", "grandma", "keg")
_DEEDS = RECORD_KINDS - {"observe"}


@pytest.mark.parametrize(
    "text",
    [
        "tell Ines when Tall Paul's been drained",
        "give us a shout once bin 3 is buried",
        "ring me as soon as the shed's sealed",
        "leave bin 3 alone till it's sealed",
        "as long as the shed's shut I can sleep",
        "provided Tall Paul is drained we're off on Friday",
        "the day the shed gets buried I'll bake a cake",
        "I'll believe bin 3 is sealed when I see the tape",
        "all but sealed the shed and then the clip snapped",
        "nearly buried bin 3 but it was dark",
        "took bin 3 up to bury it, forgot the fork",
        "make sure the shed's sealed before you go",
        "she wanted to know when bin 3 was sealed",
        "dug a hole for Tall Paul, hit a root, gave up",
        "let's pretend I sealed bin 3",
    ],
)
def test_a_deed_that_is_waited_for_or_given_up_is_no_record(text: str) -> None:
    assert _DEEDS.isdisjoint(act.act for act in acts(text, bins=_BINS))


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("letting you know that bin 3 has been buried", "bury"),
        ("bin 3 is sealed, tell Ines", "seal"),
        ("sat on the lid till it shut, so I sealed the shed bin", "seal"),
        ("the minute bin 3 was full I sealed it", "seal"),
        ("dug a hole for bin 3, hit a root, dug another and buried it there", "bury"),
        ("Ines asked me to seal bin 3 so I sealed it", "seal"),
        ("forgot the fork so I buried bin 3 with a trowel", "bury"),
        ("2 kg of peel into the shed, shout when you've drained Tall Paul", "layer"),
    ],
)
def test_a_deed_that_was_done_is_a_record(text: str, kind: str) -> None:
    assert kind in {act.act for act in acts(text, bins=_BINS)}


@pytest.mark.parametrize(
    "text",
    [
        "grandma sealed a letter to the council",
        "sealed the gaps in the shed floor with putty",
        "the shed's sealed and varnished, two coats",
        "the shed is closed for renovations",
        "shed's sealed off by the fire brigade",
        "drained the noodles over the sink, 2 litres",
        "keg's drained, landlord, next one please",
        "the nurse drained 40 ml off my ear",
        "drained the pond, 300 litres, newts and all",
        "bottled the cider, 5 litres, it's in the shed",
        "buried my face in the pillow by bin 3",
        "buried under 30 kg of homework in the shed",
        "the compost heap behind the shed is steaming at 55 degrees",
        "drew off 3 litres of oil from the mower in the shed",
        "we buried Auntie Jo on Friday, by the shed gate",
        "grandma's buried in the crossword",
        "12 bulbs went into the ground by the shed",
    ],
)
def test_a_deed_on_other_things_is_no_record(text: str) -> None:
    assert RECORD_KINDS.isdisjoint(act.act for act in acts(text, bins=_BINS))


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("grandma's sealed, lid taped, 14 days", "seal"),
        ("sealed the shed bin tight as an envelope", "seal"),
        ("sealed bin 3 and then the envelope for the rent", "seal"),
        ("closed the shed bin for the season", "seal"),
        ("drained the keg, 300 ml, smells of cider", "drain"),
        ("drained bin 3 into a wine bottle, 700 ml", "drain"),
        ("drained two bottles off the shed bin", "drain"),
        ("drained a pint from bin 3", "drain"),
        ("let me know when to drain it, bin 3 has been sealed since Monday", "seal"),
        ("buried Tall Paul under the leeks", "bury"),
        ("buried grandma beside the compost heap", "bury"),
    ],
)
def test_the_same_deed_on_a_bin_is_a_record(text: str, kind: str) -> None:
    assert kind in {act.act for act in acts(text, bins=_BINS)}
