"""Where a bin was buried, however the place is said."""

import pytest

from handlers.reading.acts import Bury, meant
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("buried bin 3 under the plum tree", "plum tree"),
        ("buried bin 3. It's by the old gate now", "old gate"),
        ("buried Tall Paul. He's under the damsons", "damsons"),
        ("buried bin 3 down the back of the greenhouse", "back of the greenhouse"),
        ("buried bin 3 bed 4", "bed 4"),
        ("bin 3 is in the ground since Sunday, back of the quince", "back of the quince"),
        ("bin 3's in the hole. Ana dug. It's over the far side by the gate", "gate"),
        ("buried bin 3 on the bank holiday weekend, squash patch", "squash patch"),
        ("buried bin 3 at lunch in raised bed 6", "raised bed 6"),
        (
            "buried bin 3 with Ana at lunch, raised bed 6, and how much goes on each?",
            "raised bed 6",
        ),
        ("bin 3 has joined the lupins, a foot down", "lupins"),
        ("dug the trench. bin 3 is under the dahlias, bless it", "dahlias"),
        ("beneath the old medlar I buried bin 3", "old medlar"),
        ("buried bin 3 over the weekend, top terrace", "top terrace"),
        ("I dug a hole behind the sauna and bin 3 is in it", "sauna"),
        ("bin 3 in the pit. took ages. pit's full", "pit"),
        ("dug the trench, lay down in the trench. bin 3 is under the dahlias", "dahlias"),
        ("emptied into the long bed by the wall was bin 3 this morning", "long bed by the wall"),
        ("dug bin 3 in between the pear and the plum", "pear and the plum"),
        ("buried bin 3 in the bean patch half a metre down", "bean patch"),
        ("bin 3 is in the ground: behind the coop she went", "coop"),
        ("trenched bin 3 across the pea row", "pea row"),
        ("got bin 3 in the ground this morning under the quince", "quince"),
        ("dug bin 3 in under t'damsons", "damsons"),
        ("Trenched bin 3. South bed. Hard going.", "South bed"),
        ("bin 3 buried yesterday, row 4, 12 in deep", "row 4"),
        ("bin 3 is in the ground. Out past the water butt, 2 ft down", "Out past the water butt"),
        ("buried bin 3 in the rain, alone, under the dead lavender", "dead lavender"),
        ("buried bin 3 -> pit no. 2 (east corner)", "pit no. 2"),
        ("buried bin 3 debajo del limonero", "limonero"),
        ("bin 3 is in the soil, back garden beside the wall", "back garden beside the wall"),
        ("bin 3 is in the soil behind the goal", "goal"),
        ("put bin 3 in the ground Monday, by the swings", "swings"),
        ("laid bin 3 to rest in the soil at 3 pm", "ground"),
        ("bin 3 was buried along the hedge by me and Ruth", "hedge"),
        ("bin 3 lies in the earth, Ruth did the digging", "ground"),
        ("bin 3 was emptied into the trench & covered", "trench"),
        ("bin 3 has been under the plum since Saturday", "plum"),
        ("buried bin 3 in bed four", "bed four"),
        ("bin 3 is in the ground at last, down beside the old rhubarb", "beside the old rhubarb"),
        ("bin 3 in the ground, down by the gooseberries", "by the gooseberries"),
        ("buried bin 3! Right along the back fence", "along the back fence"),
        ("buried bin 3. Just behind the shed wall", "behind the shed wall"),
        ("buried bin 3. Right next to the shed wall", "next to the shed wall"),
        ("buried bin 3. Down at the pub now", None),
        ("buried bin 3, the top of it was mouldy", None),
        ("dug bin 3 in this morning, and the bottom of it was sodden", None),
        ("buried bin 3 in the bean patch on 14/6", "bean patch"),
    ],
)
def test_the_place_of_a_burial(text: str, place: str | None) -> None:
    places = [act.place for act in acts(text) if isinstance(act, Bury)]
    assert places == [place]


def test_what_is_dug_in_is_the_bin_and_not_the_plot() -> None:
    (act,) = acts("in plot 9 I dug in the whole of bin 3", bins=("plot 9", "bin 3"))
    assert isinstance(act, Bury)
    assert (act.bin, act.place) == ("bin 3", "plot 9")


@pytest.mark.parametrize(
    "text",
    [
        "dug a hole by the fence",
        "Zoe dug us a trench under the pear",
        "the boys made a deep pit behind the shed",
    ],
)
def test_a_hole_alone_is_no_burial(text: str) -> None:
    told = acts(text, bins=("green",), in_room=True, of_bins=True)
    assert not any(isinstance(meant(act), Bury) for act in told)
