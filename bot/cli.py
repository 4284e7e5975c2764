"""The command line: which command runs, and the only place where an error becomes a status."""

import argparse
import sys
from collections.abc import Mapping, Sequence
from importlib import import_module
from typing import NoReturn

from storage.errors import UserError

COMMANDS: Mapping[str, str] = {
    "demo": "watch an invented group's season, with the bot's answers",
    "chat": "open a room at the prompt, kept in a file",
    "sandbox": "try it in a real encrypted room on this machine",
    "login": "give the bot its Matrix account",
    "run": "take part in the bot's Matrix rooms",
    "read": "show what is understood from messages",
    "replay": "play a room's log through the bot",
    "reckon": "use the craft's calculators without a room",
    "export": "write out everything a book knows",
    "link": "show where a group's calendar and board can be read",
    "label": "draw a bin's label to print",
    "backup": "copy a book safely, also while it is in use",
    "forget": "take a person out of a book",
    "check": "see whether everything is in order",
}
"""Each command lives in the module of its name, which is imported only when it is wanted."""


class Parser(argparse.ArgumentParser):
    """Says what is wrong in one line."""

    def error(self, message: str) -> NoReturn:
        """Print the line and leave with status 2."""
        self.exit(2, f"{self.prog}: {message} (see {self.prog} --help)\n")


def main(argv: Sequence[str]) -> int:
    """Run a command; its exit status: 0 for success, 2 for what the person can put right."""
    return carry_out(parsed(argv))


def parsed(argv: Sequence[str]) -> argparse.Namespace:
    """The command and its options; what the command needs is imported then."""
    for stream in (sys.stdin, sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="replace")
    return _parser(argv).parse_args(argv)


def carry_out(args: argparse.Namespace) -> int:
    """Run the command; its exit status."""
    try:
        status: int = import_module(f"bot.{args.command}").run(args)
    except UserError as error:
        sys.stderr.write(f"python -m bot: {' '.join(str(error).splitlines())}\n")
        return 2
    except KeyboardInterrupt:
        return 130
    except BrokenPipeError:
        sys.stderr.close()  # the reader has gone; there is nobody left to tell
        return 0
    return status


def _parser(argv: Sequence[str]) -> Parser:
    parser = Parser(
        prog="python -m bot",
        description="Pailkeeper keeps the bin records of neighbours who ferment kitchen scraps.",
    )
    commands = parser.add_subparsers(
        dest="command", metavar="COMMAND", required=True, parser_class=Parser
    )
    wanted = next((word for word in argv if not word.startswith("-")), None)
    for name, sentence in COMMANDS.items():
        if name == wanted:
            import_module(f"bot.{name}").add_parser(commands)
        else:
            commands.add_parser(name, help=sentence)
    return parser
