"""Every figure of the craft says its unit, its source and how sure it is."""

import pkgutil
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from importlib import import_module

import pytest

from handlers import practice
from handlers.practice.allowed import ROWS
from handlers.practice.causes import CAUSES
from handlers.practice.composition import CONTENT, FOODS
from handlers.practice.figure import (
    STANDINGS,
    Figure,
    Reckoning,
    Refused,
    listed,
    number,
    positive,
    quoted,
    spoons,
    within,
)

MODULES = [
    import_module(f"handlers.practice.{m.name}") for m in pkgutil.iter_modules(practice.__path__)
]


def figures_in(value: object) -> Iterator[Figure]:
    if isinstance(value, Figure):
        yield value
    elif isinstance(value, Mapping):
        for item in value.values():
            yield from figures_in(item)
    elif isinstance(value, tuple):
        for item in value:
            yield from figures_in(item)


ALL = {
    id(figure): (module.__name__, figure)
    for module in MODULES
    for value in vars(module).values()
    for figure in figures_in(value)
}


@pytest.mark.parametrize(("module", "figure"), ALL.values(), ids=lambda v: getattr(v, "name", v))
def test_a_figure_is_whole(module: str, figure: Figure) -> None:
    assert figure.name.strip(), module
    assert figure.unit.strip(), f"{figure.name} has no unit"
    if figure.standing != "common practice":
        assert len(figure.source.strip()) > 3, f"{figure.name} has no source"
    assert figure.standing in STANDINGS
    assert (figure.low is None) == (figure.high is None)
    if figure.low is not None and figure.high is not None:
        assert figure.low <= figure.value <= figure.high, f"{figure.name} lies outside its range"


def test_there_are_figures_and_no_name_stands_twice() -> None:
    names = [figure.name for _, figure in ALL.values()]
    assert len(names) > 80
    assert len(names) == len(set(names))


def test_a_rule_of_thumb_is_never_called_published() -> None:
    for _, figure in ALL.values():
        words = f"{figure.source} ".lower()
        if not figure.source or "habit" in words or "our judgement" in words:
            assert figure.standing in {"common practice", "derived"}, figure.name


@pytest.mark.parametrize(
    "sourced", [*FOODS.values(), *CONTENT.values(), *ROWS, *(c for c, _ in CAUSES)]
)
def test_rows_of_tables_have_a_source_too(sourced: object) -> None:
    standing = getattr(sourced, "standing", None)
    assert standing in STANDINGS
    assert standing == "common practice" or len(getattr(sourced, "source", "")) > 3


def test_a_figure_explains_itself() -> None:
    figure = Figure("dose", 2, "%", "a book", "published", 1.3, 2.9)
    assert figure.line() == "dose: 2 % (1.3 to 2.9), published: a book"
    assert figure.line(cited=True) == "dose: 2 % (1.3 to 2.9), published: same source"
    assert Figure("width", 8, "in", "", "common practice").line() == "width: 8 in, common practice"


def test_a_share_is_told_in_percent() -> None:
    figure = Figure("loss", 0.15, "of the volume", "", "common practice", 0, 0.3)
    assert figure.line() == "loss: 15 % of the volume (0 to 30), common practice"


@dataclass(frozen=True, slots=True, kw_only=True)
class Something(Reckoning):
    volume_l: float
    on: date
    missing: float | None = None


def test_a_reckoning_tells_results_and_why() -> None:
    figure = Figure("dose", 2, "%", "a book", "published")
    found = Something(
        volume_l=1.23456789,
        on=date(2026, 3, 20),
        steps=("1 + 1 = 2",),
        figures=(figure,),
        lines=("Two.",),
    )
    assert found.results() == {"volume_l": 1.23456789, "on": "2026-03-20"}
    assert found.why() == ("1 + 1 = 2", "dose: 2 %, published: a book")


def test_a_source_is_named_once_and_a_figure_told_once() -> None:
    one = Figure("dose", 2, "%", "a book", "published")
    other = Figure("wait", 14, "d", "a book", "published")
    found = Something(volume_l=1, on=date.max, steps=(), figures=(one, other, one), lines=())
    assert found.why() == ("dose: 2 %, published: a book", "wait: 14 d, published: same source")


@pytest.mark.parametrize(
    ("value", "digits", "text"),
    [
        (0, 3, "0"),
        (37.27, 2, "37"),
        (0.4549, 3, "0.455"),
        (1234.5, 3, "1230"),
        (9.0, 3, "9"),
        (-2.50, 3, "-2.5"),
        (0.000126, 3, "0.000126"),
        (1e60, 3, "1e+60"),
        (1e-60, 3, "1e-60"),
    ],
)
def test_numbers_are_short(value: float, digits: int, text: str) -> None:
    assert number(value, digits) == text


@pytest.mark.parametrize(
    ("said", "shown"),
    [
        ("two  kilos", "“two kilos”"),
        ("a\nb\x1b[31m", "“a b [31m”"),
        ("\u202eabc\udcff", "“abc”"),
        ("x" * 50, f"“{'x' * 40}…”"),
    ],
)
def test_words_are_repeated_on_one_short_line(said: str, shown: str) -> None:
    assert quoted(said) == shown


@pytest.mark.parametrize(
    ("count", "text"),
    [(0.1, "¼"), (0.72, "¾"), (1.0, "1"), (1.3, "1¼"), (2.53, "2½"), (9.9, "10"), (22.1, "22")],
)
def test_spoons_are_counted_as_people_do(count: float, text: str) -> None:
    assert spoons(count) == text


@pytest.mark.parametrize(
    ("words", "text"), [(["a"], "a"), (["a", "b"], "a and b"), (["a", "b", "c"], "a, b and c")]
)
def test_lists(words: Iterable[str], text: str) -> None:
    assert listed(words) == text


@pytest.mark.parametrize("value", [-1.0, 11.0, float("nan"), float("inf")])
def test_what_is_out_of_range_is_refused_with_advice(value: float) -> None:
    with pytest.raises(Refused, match=r"say less\.$"):
        within(value, 0, 10, what="A bin", unit="L", advice="say less")


def test_nought_is_not_positive() -> None:
    with pytest.raises(Refused, match="nought"):
        positive(0, 10, what="A bin", unit="L", advice="say more")
    assert positive(3, 10, what="A bin", unit="L", advice="say more") == 3
