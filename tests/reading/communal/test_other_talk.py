"""Talk with the same words is of no shared bin."""

from dataclasses import replace
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from handlers.reading.arrangements.communal import (
    Communal,
    Handing,
    WhenLast,
    WhoPut,
    WhoseTurn,
    Written,
)
from handlers.reading.plans import plans
from tests.reading.communal.said_in import THURSDAY
from tests.reading.corpus import FOLDER, messages


@pytest.mark.parametrize(
    "said",
    [
        "rename the file to notes",
        "who put the kettle on?",
        "who put the bins out?",
        "who put the chicken in the oven?",
        "who had the drill in March?",
        "my share of the bill is 20",
        "what happened to the match?",
        "the story of my life",
        "everybody may take a seat",
        "only admins can change the wifi settings of the router",
        "I need a label for the jam",
        "print the labels please",
        "labels for all of us",
        "call the plumber from now on",
        "no milk in the fridge",
        "I've got it now, thanks",
        "not me!",
        "I'll keep it short",
        "condition of the road is bad",
        "can anyone swap my shift?",
        "don't forget the swap",
        "the swap shop is off",
        "forget the swap meet on Sunday",
        "I'm not swapping my car after all",
        "Bram, did you forget the swap?",
        "cleaning rota: Ines, Bram, weekly",
        "put the milk after the bread on the list",
        "take Bram off the guest list",
        "put Bram after Mei on the choir rota",
        "draft rota: Ines, Bram, weekly",
        "the rota for the shed bin used to be Ines, Bram",
        "two weeks per country is what she's allowed",
        "giving the dog to Teodor on Friday",
        "handing the keys of the shed bin to Teodor",
        "found the shed bin behind the bikes, what a mess in there",
    ],
)
def test_talk_with_the_same_words_is_left_alone(said: str) -> None:
    assert plans(said, THURSDAY)[0] == ()


def test_in_labelled_talk_nothing_is_found_that_is_not_there() -> None:
    """Of all messages to learn from only offers and a few such questions are of shared bins."""
    wrong = []
    for path in sorted(FOLDER.glob("*.jsonl")):
        for row in messages(path.name) if not path.name.startswith("kept") else ():
            context = replace(
                THURSDAY,
                at=datetime.fromisoformat(row["at"]),
                zone=ZoneInfo(row["zone"]),
                units=row["units"],
                bins=tuple(row["bins"]),
                members=tuple(row["members"]),
                sender=row.get("sender"),
            )
            found = plans(row["body"], context)[0]
            acts = {act["act"] for act in row["expect"]}
            wrong += [
                (row["body"], one)
                for one in found
                if isinstance(one, Communal)
                and not isinstance(one, WhoPut)
                and not (isinstance(one, Handing) and acts == {"offer"})
                and not (isinstance(one, WhoseTurn) and acts == {"ask"})
                and not (isinstance(one, WhenLast) and row["body"].startswith("who drained"))
                and not (isinstance(one, WhenLast) and acts == {"ask"})
                and not (isinstance(one, Written) and "did i miss" in row["body"])
            ]
    assert wrong == []
