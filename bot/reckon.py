"""`python -m bot reckon TOPIC name=value …`: the craft's arithmetic on the command line."""

import json
import sys
import textwrap
from argparse import ArgumentParser, Namespace, RawDescriptionHelpFormatter
from collections.abc import Iterable
from typing import TYPE_CHECKING

from handlers.practice.figure import Refused, listed, quoted
from handlers.practice.reckon import Reckoned, reckon
from handlers.practice.topics import TOPICS
from handlers.practice.units import SYSTEMS

if TYPE_CHECKING:
    from argparse import _SubParsersAction


def add_parser(subparsers: "_SubParsersAction[ArgumentParser]") -> None:
    """Add the `reckon` command to the command line."""
    parser = subparsers.add_parser(
        "reckon",
        help="work out a dose, a dilution, days and so on",
        formatter_class=RawDescriptionHelpFormatter,
        epilog=_what_each_takes(),
    )
    parser.add_argument("topic", metavar="TOPIC", help=listed(TOPICS, "or"))
    parser.add_argument("values", metavar="name=value", nargs="*", help="what is known")
    parser.add_argument(
        "--units",
        choices=SYSTEMS,
        default="metric",
        help="what a bare gallon, cup or spoon is in what is given; answers are metric",
    )
    parser.add_argument("--json", action="store_true", help="print the answer as one JSON object")
    parser.add_argument("--why", action="store_true", help="print the working and its sources")


def _what_each_takes() -> str:
    """Every topic with the names of its values."""
    lines = ["Each topic takes, with the unit in the value (mass=2kg, area=4x8ft):"]
    for name, topic in TOPICS.items():
        kinds = ", shares of kinds (meat=0.7)" if topic.kinds else ""
        lines += textwrap.wrap(f"{name}: {', '.join(topic.names)}{kinds}", 78,
                               initial_indent="  ", subsequent_indent="      ")  # fmt: skip
    return "\n".join(lines)


def run(args: Namespace) -> int:
    """Print the answer and return 0; or print one sentence on standard error and return 2."""
    try:
        values = named(args.values, only=_only_words(args.topic))
        found = reckon(args.topic, values, units=args.units)
    except Refused as refused:
        sys.stderr.write(f"python -m bot reckon: {refused}\n")
        return 2
    sys.stdout.write(_as_json(found) if args.json else _as_text(found, why=args.why))
    return 0


def _only_words(topic: str) -> str:
    """The value of a topic that takes words first: “allowed bones” needs no name for them."""
    known = TOPICS.get(topic.strip().lower())
    return known.names[0] if known and known.names[0] in ("what", "signs") else ""


def named(words: Iterable[str], only: str = "") -> dict[str, str]:
    """Values by name; a word without "=" belongs to the value before it ("mass=1 lb 4 oz"), or to
    `only` where there is none.
    """
    values: dict[str, str] = {}
    name = ""
    for word in words:
        before, equals, value = word.partition("=")
        if equals:
            name = _plain(before).strip().lower().replace("-", "_")
            if name in values:
                raise Refused(f"{quoted(name)} was given twice: give it once.")
            values[name] = _plain(value)
        elif name:
            values[name] += f" {_plain(word)}"
        elif only:
            name = only
            values[name] = _plain(word)
        else:
            raise Refused(f"{quoted(word)} has no name: write it like mass=2kg.")
    return values


def _plain(word: str) -> str:
    """The word without bytes that are no text, which could not be printed again."""
    return word.encode("utf-8", "replace").decode()


def _as_json(found: Reckoned) -> str:
    told = {"topic": found.topic, **found.answer, "lines": found.lines, "why": found.why}
    return json.dumps(told, ensure_ascii=False, allow_nan=False) + "\n"


def _as_text(found: Reckoned, *, why: bool) -> str:
    return "".join(f"{line}\n" for line in (*found.lines, *(found.why if why else ())))
