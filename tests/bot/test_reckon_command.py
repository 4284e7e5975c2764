"""`python -m bot reckon`: what it prints, and how it fails."""

import json
from argparse import ArgumentParser
from contextlib import redirect_stderr, redirect_stdout
from io import StringIO

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.reckon import add_parser, named, run
from handlers.practice.figure import Refused
from handlers.practice.kinds import KINDS
from handlers.practice.topics import TOPICS


def reckon(*words: str) -> int:
    parser = ArgumentParser(prog="bot")
    add_parser(parser.add_subparsers(required=True))
    return run(parser.parse_args(["reckon", *words]))


def test_the_answer_in_plain_lines(capsys: pytest.CaptureFixture[str]) -> None:
    assert reckon("dilution", "water=9L", "parts=100") == 0
    shown = capsys.readouterr()
    answer, care = shown.out.splitlines()
    assert answer == "90 mL of liquid in 9 L of water: 1:100."
    assert "raw waste" in care
    assert shown.err == ""


def test_the_answer_as_one_json_object(capsys: pytest.CaptureFixture[str]) -> None:
    assert reckon("dose", "mass=2kg", "meat=0.7", "--units", "us", "--json") == 0
    shown = capsys.readouterr().out
    assert shown.count("\n") == 1
    answer = json.loads(shown)
    assert answer["topic"] == "dose"
    assert answer["tablespoon"] == "us"
    assert answer["starter_ml"] > answer["starter_g"] > 0
    assert answer["why"]
    assert answer["lines"]


def test_why_prints_the_arithmetic_and_its_sources(capsys: pytest.CaptureFixture[str]) -> None:
    assert reckon("bed", "area=4x8ft", "--why") == 0
    shown = capsys.readouterr().out
    assert "170 kg N/ha, published: Directive 91/676/EEC" in shown


def test_words_without_a_name_belong_to_the_value_before(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert reckon("starter", "mass=1", "lb", "4", "oz", "--json") == 0
    # NIST SP 811: 1 lb is 0.45359237 kg.
    assert json.loads(capsys.readouterr().out)["bran_kg"] == pytest.approx(0.56699, abs=1e-6)


@pytest.mark.parametrize(
    "words",
    [
        ("weather",),
        ("dose",),
        ("dose", "mass=much"),
        ("dose", "mass=-2kg"),
        ("dose", "mass=0kg"),
        ("dose", "mass=9000kg"),
        ("dose", "2kg"),
        ("dose", "mass=2kg", "mass=3kg"),
        ("dose", "mass=2kg", "colour=blue"),
        ("dilution", "water=9L", "total=5L"),
        ("days", "sealed=yesterday"),
        ("days", "sealed=9999-12-31"),
        ("bed", "area=4x8"),
        ("trouble", "signs=purple"),
        ("allowed", "what=xyzzy"),
        ("dose", "mass=9**9**9"),
    ],
)
def test_a_bad_value_is_one_clear_line_and_status_two(
    words: tuple[str, ...], capsys: pytest.CaptureFixture[str]
) -> None:
    assert reckon(*words) == 2
    shown = capsys.readouterr()
    assert shown.out == ""
    assert shown.err.count("\n") == 1
    assert shown.err.endswith(".\n")


@pytest.mark.parametrize("value", ["a\nb", "\x1b[31m", "\udcff", "x=y=z", "🥕" * 200, "9" * 300])
def test_whatever_is_typed_the_answer_stays_one_line(
    value: str, capsys: pytest.CaptureFixture[str]
) -> None:
    for words in (
        ("dose", f"mass={value}"),
        ("allowed", f"what=soup {value}"),
        (value, "mass=2kg"),
    ):
        status = reckon(*words, "--json")
        shown = capsys.readouterr()
        assert (shown.out if status == 0 else shown.err).count("\n") == 1
        assert len(shown.err) < 500


NAMES = st.sampled_from([*KINDS, "mass", "volume", "water", "bran", "area", "sealed", "signs", "x"])
VALUES = st.one_of(
    st.text(max_size=20),
    st.from_regex(r"[0-9]{1,12}([.,/][0-9]{1,4})? ?(kg|g|lb|L|ml|gal|cups?|m|ft|m2|%|d|C|peck)?"),
    st.sampled_from(["yes", "us", "2026-03-20", "4x8ft", "1:100", "rotten", "bones", "nan", "1e9"]),
)


@settings(max_examples=400, deadline=None)
@given(st.sampled_from(sorted(TOPICS)), st.dictionaries(NAMES, VALUES, max_size=4))
def test_any_values_get_an_answer_or_one_sentence(topic: str, values: dict[str, str]) -> None:
    out, err = StringIO(), StringIO()
    with redirect_stdout(out), redirect_stderr(err):
        status = reckon(topic, *(f"{name}={value}" for name, value in values.items()), "--json")
    assert status in (0, 2)
    told = out.getvalue() if status == 0 else err.getvalue()
    assert told.count("\n") == 1
    if status == 0:
        json.loads(told, parse_constant=pytest.fail)


def test_names_are_read_whatever_their_case() -> None:
    assert named(["First-Layer=2026-03-01", "MASS=2 kg"]) == {
        "first_layer": "2026-03-01",
        "mass": "2 kg",
    }
    with pytest.raises(Refused, match="has no name"):
        named(["2kg"])


def test_what_a_topic_asks_first_in_words_needs_no_name() -> None:
    assert named(["small", "bones"], only="what") == {"what": "small bones"}
    for topic, words, told in (
        ("allowed", ["small", "bones"], "With care, small bones"),
        ("trouble", ["green", "mould"], "Most likely air gets in"),
    ):
        out = StringIO()
        with redirect_stdout(out):
            assert reckon(topic, *words) == 0
        assert out.getvalue().startswith(told)


def test_the_help_names_what_each_topic_takes(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit):
        reckon("--help")
    told = " ".join(capsys.readouterr().out.split())
    for name, topic in TOPICS.items():
        assert f"{name}: {', '.join(topic.names)}" in told
