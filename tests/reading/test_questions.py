import pytest

from handlers.reading.acts import Ask
from tests.reading.context import acts

IMPERIAL_GALLON = 4.54609  # UK Weights and Measures Act 1985, Schedule 1


@pytest.mark.parametrize(
    ("text", "topic"),
    [
        ("how much bran for 2 kg?", "dose"),
        ("how much leachate in a 9 litre can", "dilution"),
        ("what's due?", "due"),
        ("when is the shed ready", "due"),
        ("how full is the shed", "bin"),
        ("how deep do I dig to bury the shed", "trench"),
        ("how much for a 4x8 ft bed?", "bed"),
        ("how do I make bran", "batch"),
        ("how much bran is left", "starter"),
        ("how much starter is there?", "starter"),
        ("is white mould ok", "trouble"),
        ("can I put onion skins in", "allowed"),
        ("how many kilos have we done this year", "totals"),
        ("how much have we done so far?", "totals"),
        ("whose turn is it", "custody"),
        ("bot what can you do", "help"),
    ],
)
def test_the_topic_of_a_question(text: str, topic: str) -> None:
    (asked,) = acts(text)
    assert isinstance(asked, Ask)
    assert asked.topic == topic


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("How does one prepare the starter? I would like 4 kg.", 4),
        ("Who has the recipe for bran? For 3 kg, if I may ask", 3),
        ("How do I make bran? There are 3 kg left in the tin.", None),
        ("How do we make starter? My cousin lives 4 km away.", None),
        ("how much bran for this? It's 3 kg of prawn heads", 3),
    ],
)
def test_the_amount_asked_about_in_a_sentence_beside(text: str, kg: float | None) -> None:
    (asked,) = (act for act in acts(text) if isinstance(act, Ask))
    assert asked.mass_kg == kg


@pytest.mark.parametrize(
    ("text", "liquid", "water"),
    [
        ("what's the ratio for ferns? got about 80 ml of the tea", 0.08, None),
        ("what ratio for roses? My can holds 8 litres", None, 8),
        ("how do I dilute the leachate? I need 8 litres of feed", None, None),
    ],
)
def test_the_liquid_told_in_a_sentence_beside(
    text: str, liquid: float | None, water: float | None
) -> None:
    (asked,) = (act for act in acts(text) if isinstance(act, Ask))
    assert (asked.liquid_l, asked.water_l) == (liquid, water)


@pytest.mark.parametrize(
    ("text", "liquid", "water"),
    [
        ("is a cup of juice in a 12 L can too strong?", 0.25, 12),
        ("I've 90 ml of juice in a mug, how much water?", 0.09, None),
        ("3 L of leachate in a bucket, how much water?", 3, None),
        ("got 2 cups total from the shed, how much water?", 0.5, None),
    ],
)
def test_liquid_in_a_vessel(text: str, liquid: float, water: float | None) -> None:
    (asked,) = (act for act in acts(text, in_room=True) if isinstance(act, Ask))
    assert (asked.liquid_l, asked.water_l, asked.total_l) == (liquid, water, None)


def test_the_figures_that_were_said() -> None:
    assert _ask("how much bran for 2 kg of fish?").mass_kg == 2
    assert _ask("how much juice in a 2 gallon can?").water_l == pytest.approx(2 * IMPERIAL_GALLON)
    assert _ask("I have 300 ml of leachate, how much water?").liquid_l == pytest.approx(0.3)
    assert _ask("is 1:100 right for the leachate?").parts == 100
    assert _ask("how much liquid for a 9 L can at 1:9999999?").parts == 9999999
    assert _ask("why does bin 3 stink?").signs == ("rotten",)
    both = _ask("is 1 tablespoon per gallon right?")
    assert both.liquid_l == pytest.approx(0.015)
    assert both.water_l == pytest.approx(IMPERIAL_GALLON)


def _ask(text: str) -> Ask:
    (asked,) = acts(text)
    assert isinstance(asked, Ask)
    return asked


@pytest.mark.parametrize(
    "text",
    [
        "why?",
        "how come?",
        "says who?",
        "where's that from?",
        "show me the working",
        "how was that worked out?",
    ],
)
def test_a_bare_why_is_read_only_behind_the_bot(text: str) -> None:
    assert acts(text) == ()
    (asked,) = acts(text, after_bot=True)
    assert isinstance(asked, Ask)
    assert asked.topic == "why"


@pytest.mark.parametrize(
    "text",
    ["who won the match?", "what time is kick off?", "anyone seen my spade?", "is it going to "
                                                                              "rain?",
     "how do you get wine out of carpet?", "what a day", "who put a kilo of meat in the shed",
     "we make bran on the last Saturday of each month"],
)  # fmt: skip
def test_other_questions_are_small_talk(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    ("text", "kilos"),
    [("how much bran for 2 kg", 2), ("how much starter do I need for 500 g?", 0.5)],
)
def test_the_dose_is_asked_for_what_is_not_said_to_be_scraps(text: str, kilos: float) -> None:
    (ask,) = acts(text)
    assert isinstance(ask, Ask)
    assert ask.mass_kg == pytest.approx(kilos)


@pytest.mark.parametrize(
    ("text", "liquid", "water"),
    [
        ("I've a pint of the brown stuff, what do I dilute it with?", 0.568, None),
        ("how much water for 300 ml?", 0.3, None),
        ("got 200 ml off the shed, what do I mix that with?", 0.2, None),
        ("how much juice goes into a 10 litre can?", None, 10),
    ],
)
def test_what_is_thinned_and_with_what(
    text: str, liquid: float | None, water: float | None
) -> None:
    (ask,) = [act for act in acts(text) if isinstance(act, Ask)]
    assert ask.topic == "dilution"
    assert ask.liquid_l == (None if liquid is None else pytest.approx(liquid, abs=1e-3))
    assert ask.water_l == water


@pytest.mark.parametrize("text", ["how much does starter cost?", "how much is the price of bran"])
def test_a_price_is_no_dose(text: str) -> None:
    assert not [act for act in acts(text) if isinstance(act, Ask) and act.topic == "dose"]


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("bottle of leachate here, 500 ml, how much water for my roses?", 0.5),
        ("a jug of tea here, 2 litres, how much water?", 2.0),
        ("how much water for a bottle of leachate?", 0.75),
    ],
)
def test_what_a_vessel_of_liquid_holds_is_what_was_measured(text: str, litres: float) -> None:
    [asked] = acts(text)
    assert isinstance(asked, Ask)
    assert asked.liquid_l == pytest.approx(litres)
