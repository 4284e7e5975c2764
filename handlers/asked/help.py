"""What can be said to the bot, and how it introduces itself."""

from collections.abc import Sequence

from handlers.phrasing import the
from handlers.practice.figure import listed

GREETING = (
    "Hello, I keep this group's bin records: just write what you do (“added 2 kg scraps, mostly "
    "meat, to the shed bin”) and I answer with the starter it wants.\n"
    "Say “drained”, “sealed” or “buried” as it happens, ask “what's due?” or “how much water for "
    "250 mL of liquid?”, and “why?” after any answer.\n"
    "Edit or delete your message and the record follows; all else you say here I leave alone."
)
"""Three lines, said once when the bot comes into a room."""

MOST_NAMED = 6
"""Bins that are named at the bot's return; more are only counted."""


def back_again(bins: Sequence[str]) -> str:
    """What is said when the bot is asked back into a room, by the names of the bins in use."""
    many = f"{len(bins)} bins"
    named = listed([the(name) for name in bins]) if len(bins) <= MOST_NAMED else many
    return (
        f"I am back, and this group's book is as it was: {named}. What was said here meanwhile I "
        f"have not heard: say it again with its day (“drained {the(bins[0])} on Tuesday”)."
    )


PUT_RIGHT = (
    "Put right: edit or delete your message, reply “no, 3 kg”, say “scratch that” (and “put it "
    "back” on second thoughts), or mark it ❌."
)
"""How a record is corrected, struck out and restored."""

HELP = (
    "Write what you do, as you would tell a neighbour:\n"
    "“opened the blue bin, 20 L” · “added 2 kg scraps, mostly meat” · “drained half a litre” · "
    "“sealed it” · “buried it under the pear tree” · “white mould on top”\n"
    "Ask: “how much starter for 3 L of peelings?” · “how much water for 250 mL?” · “what's due?” · "
    "“how full is the blue bin?” · “can lamb bones go in?” · “what do I do first?” · “what are our "
    "settings?” · “show the calendar” · “why?”\n"
    "Share a bin: “handing the yard bin to Nives on Friday” · “I'll take it” · “rota for the yard "
    "bin: Ines, Bram, weekly” · “can anyone swap my week?” · “who put the chicken in?” · “a label "
    "for the yard bin”\n"
    "Arrange: “remind us to wash the lids every second Sunday” · “I'm away till Monday”\n"
    "Answer a reminder with ✅ or 💤, or 1️⃣ for its first line; or “done”, “tomorrow”.\n"
    f"{PUT_RIGHT}"
)

HELP_WITH = {
    "a mistake": PUT_RIGHT,
    "a call": "Yes, I'm here. Say “help” to see what I can answer.",
    "an export": "Whoever runs me can write out all that I know as a table, JSON or a calendar: "
    "“python -m bot export --format csv”, where I run. Here I tell “totals by month”, and “show "
    "the calendar” posts a picture.",
    "a praise": "",  # small talk, whoever it is said to
    "a complaint": "What was wrong? Reply to it with what is right, or say “scratch that”; "
    "“turn the reminders off” stops those.",
}
"""What is said in place of all the help where only so much is asked for."""

NOT_UNDERSTOOD = "I did not understand that question. Say “help” to see what I can answer."
TOO_LONG = (
    "That message is longer than I read: what stands at its end is not written down. Say it again "
    "in a message of its own."
)
NOTHING_WRITTEN = (
    "I did not understand that, so nothing is written down. Say it as “added 2 kg to the blue "
    "bin”, or “no, 3 kg” behind what is to be put right."
)
