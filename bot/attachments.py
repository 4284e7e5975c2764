"""What is posted besides words: the calendar as a picture, or as a file for calendar programs.

Kept in the outbox as what it is made of; `bot/files.py` makes it when it is sent.
"""

import json
import re
from typing import Literal

from handlers.answer import Turn
from handlers.asked.labelart import Label, drawn
from handlers.planning.sheet import as_json, in_words, sheet
from storage.book import Book
from storage.rows import Message

FILE_NAME = "our-bins.ics"
PICTURE_NAME = "our-bins.png"
CAPTION = "What is due, for a calendar program. It does not change any more: a calendar link does."


async def attachment(
    book: Book, what: Literal["picture", "calendar file"] | Label, turn: Turn
) -> Message:
    """The message that posts it; its transaction id is still to be given."""
    if isinstance(what, Label):
        return _label(what)
    if what == "picture":
        shown = await sheet(book, turn.today)
        made_of = {"name": PICTURE_NAME, "sheet": as_json(shown)}
        return Message(tx_id="", kind="picture", body=in_words(shown), attached=json.dumps(made_of))
    from bot.feed import as_calendar  # slow to import, and seldom asked for

    text = (await as_calendar(book, turn.now)).decode()
    made_of = {"name": FILE_NAME, "text": text}
    return Message(tx_id="", kind="file", body=CAPTION, attached=json.dumps(made_of))


def _label(label: Label) -> Message:
    """A label to be printed; its words say what it is for where no picture is shown."""
    name = "-".join(re.findall(r"\w+", label.name.casefold())) or "bin"
    made_of = {"name": f"label-{name}.svg", "type": "image/svg+xml", "text": drawn(label)}
    code = "" if label.board else " It has no code: there is no board page to show."
    bin = label.name.replace("The ", "the ", 1) if label.name.startswith("The ") else label.name
    body = f"The label of {bin}, to print on half a sheet of A4."
    return Message(tx_id="", kind="file", body=body + code, attached=json.dumps(made_of))
