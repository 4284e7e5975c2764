"""What a newcomer is taught: short, sourced, and with the figures of the craft and no others."""

import re

import pytest

from handlers.practice.days import DRAIN, FERMENT, FILL, LATE, PLANT
from handlers.practice.figure import number
from handlers.practice.lessons import LESSONS, Lesson
from handlers.practice.taught import TAUGHT


@pytest.mark.parametrize("lesson", LESSONS)
def test_a_lesson_is_short_and_says_where_it_is_from(lesson: Lesson) -> None:
    taught = TAUGHT[lesson]
    assert 1 <= len(taught.lines) <= 2
    assert all(len(line) < 220 for line in taught.lines)
    assert taught.source or taught.standing == "common practice"


@pytest.mark.parametrize("lesson", LESSONS)
def test_its_numbers_are_those_of_its_figures(lesson: Lesson) -> None:
    taught = TAUGHT[lesson]
    known = {number(v) for f in taught.figures for v in (f.value, f.low, f.high) if v is not None}
    metres = [f for f in taught.figures if f.unit in ("m", "of the mass")]
    known |= {number(v * 100) for f in metres for v in (f.value, f.low, f.high) if v is not None}
    warm = [v for f in taught.figures if f.unit == "°C" for v in (f.value, f.low, f.high) if v]
    known |= {number(celsius * 1.8 + 32, 2) for celsius in warm}
    known |= {number(sum(f.value for f in (FILL, FERMENT, PLANT)) / 7)}  # weeks in all
    said = re.sub(r"“[^”]*”", "", " ".join(taught.lines))
    assert set(re.findall(r"\d+(?:\.\d+)?", said)) <= known | {
        "1",
        "15",
        "33",
    }  # a bin of 15 kg, 33 lb: the caution


def test_the_days_are_those_of_the_books() -> None:
    # Footer 2013, ch. 6 and 7: filled within two weeks, two weeks sealed; a US supplier: drained
    # every two to three days; a New York booklet and a UK master composter: two to three weeks.
    assert (FILL.value, FERMENT.value, DRAIN.low, DRAIN.high) == (14, 14, 2, 3)
    assert (PLANT.low, PLANT.high, LATE.value) == (14, 21, 21)
