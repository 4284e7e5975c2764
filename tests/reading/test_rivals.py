"""Answers that cannot both be meant: which of them stands."""

import pytest

from handlers.reading.acts import (
    Accept,
    Act,
    Amend,
    Ask,
    Decline,
    Done,
    Drain,
    Later,
    Layer,
    Observe,
    Offer,
    Retract,
    Seal,
    Stock,
)
from handlers.reading.arrangements.passing import BY_NAME
from handlers.reading.deeds.flatly import FLATLY
from handlers.reading.doubts.rivals import without_rivals
from handlers.reading.message import read_message
from tests.reading.context import acts, group

_USED = Ask(topic="starter")
_DIG = Ask(topic="trench")
_KEPT = Ask(topic="custody", rules=(BY_NAME,))


@pytest.mark.parametrize(
    ("text", "found", "left"),
    [
        ("can anyone have bin 3, I can't", [Offer(), Decline()], [Offer()]),
        ("bin 3 to whoever wants it, fine by me", [Offer(), Accept()], [Offer()]),
        ("bot, not now, ask me Friday", [Decline(), Later(days=2)], [Later(days=2)]),
        ("not now, ask me Friday", [Decline(), Later(days=2)], [Decline(), Later(days=2)]),
        ("sealed bin 3 yesterday", [Seal(), Done()], [Seal()]),
        ("sealed bin 3, done", [Seal(), Done()], [Seal(), Done()]),
        ("drained bin 3, so that's off your list", [Drain(), Done()], [Drain(), Done()]),
        ("bin 3 drained and the roses done for", [Drain(), Done()], [Drain()]),
        ("when do I get bin 3", [_KEPT, Ask(topic="due")], [_KEPT]),
        ("how much bran have we used this month", [_USED, Ask(topic="totals")], [_USED]),
        ("whose is bin 3? What's due?", [_KEPT, Ask(topic="due")], [_KEPT, Ask(topic="due")]),
        ("how long a trench for bin 3?", [_DIG, Ask(topic="due")], [_DIG]),
        ("how big a hole, and when?", [_DIG, Ask(topic="due")], [_DIG, Ask(topic="due")]),
        ("I can't", [Decline()], [Decline()]),
        ("nothing", [], []),
    ],
)
def test_of_two_rivals_one_stands(text: str, found: list[Act], left: list[Act]) -> None:
    assert without_rivals(found, read_message(text, group())) == left


@pytest.mark.parametrize("rule", [BY_NAME, FLATLY])
def test_an_answer_in_words_of_its_own_stands_beside_an_offer(rule: str) -> None:
    both: list[Act] = [Offer(bin="bin 3"), Decline(bin="shed", rules=(rule,))]
    text = "who wants bin 3, and put me down as a no for the shed"
    assert without_rivals(both, read_message(text, group())) == both


def test_who_offers_a_bin_does_not_refuse_it() -> None:
    assert [act.act for act in acts("can't keep bin 3 any longer, who'd like it?")] == ["offer"]


_MIXED = Ask(topic="batch", mass_kg=2.0)
_ALLOWED = Ask(topic="allowed")


@pytest.mark.parametrize(
    ("text", "found", "left"),
    [
        ("how does one mix 2 kg of bran?", [_MIXED, Stock(mass_kg=2.0)], [_MIXED]),
        (
            "2 kg of bran left, how do we make more?",
            [Stock(mass_kg=2.0), _MIXED],
            [Stock(mass_kg=2.0), _MIXED],
        ),
        (
            "that should be 38 degrees, not 83",
            [Amend(celsius=38.0), Observe(celsius=38.0)],
            [Amend(celsius=38.0)],
        ),
        (
            "shed at 18 degrees, and my last must be 1.4 kg",
            [Observe(celsius=18.0), Amend(celsius=18.0, mass_kg=1.4)],
            [Observe(celsius=18.0), Amend(celsius=18.0, mass_kg=1.4)],
        ),
        (
            "not one drop my foot, 250 ml",
            [Observe(signs=("no_liquid",)), Drain(volume_l=0.25)],
            [Drain(volume_l=0.25)],
        ),
        (
            "drained 250 ml and now no liquid comes",
            [Drain(volume_l=0.25), Observe(signs=("no_liquid",))],
            [Drain(volume_l=0.25), Observe(signs=("no_liquid",))],
        ),
        (
            "half a litre of thick sludge came out",
            [Drain(volume_l=0.5), Observe(signs=("wet",))],
            [Drain(volume_l=0.5)],
        ),
        (
            "drained half a litre, bin 3 is sludge",
            [Drain(volume_l=0.5), Observe(signs=("wet",))],
            [Drain(volume_l=0.5), Observe(signs=("wet",))],
        ),
        ("can dead flies go in?", [_ALLOWED, Ask(topic="trouble", signs=("insects",))], [_ALLOWED]),
        (
            "I said it was a gallon. Strike that, it was the dog's water",
            [Drain(volume_l=4.5), Retract()],
            [Retract()],
        ),
        (
            "strike my last, I drained a gallon",
            [Retract(), Drain(volume_l=4.5)],
            [Retract(), Drain(volume_l=4.5)],
        ),
    ],
)
def test_what_another_act_says_is_told_once(text: str, found: list[Act], left: list[Act]) -> None:
    assert without_rivals(found, read_message(text, group())) == left


@pytest.mark.parametrize(
    "said",
    [
        "actually the shed bin was buried on Thursday",
        "Oh no. My cheese had that once and I ate it anyway",
    ],
)
def test_neither_puts_the_last_record_right_nor_strikes_it(said: str) -> None:
    last = Layer(bin="shed", mass_kg=1.0)
    assert not [a for a in acts(said, last=last) if isinstance(a, Amend | Retract)]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("Back from the coast. The shed had a litre of juice in it, I drained it all", ["drain"]),
        ("lunch plates scraped into the shed, about 2 litres, mixed cooked stuff", ["layer"]),
        ("How do I make the bran? I have 3 kilo rice bran here", ["ask"]),
        ("restarted big blue today", ["open"]),
    ],
)
def test_one_deed_is_told_once(text: str, told: list[str]) -> None:
    assert [act.act for act in acts(text)] == told
