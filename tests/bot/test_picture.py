"""The picture of the next four weeks: what it says, and that it can be read."""

import io
import json
from datetime import date, time
from itertools import product
from typing import Any

import pytest
from PIL import Image, ImageDraw

from bot import picture
from bot.attachments import attachment
from bot.files import made
from bot.picture import WIDTH, drawn
from handlers.answer import Turn
from handlers.planning import owndates
from handlers.planning.sheet import (
    DAYS,
    MOST_LINES,
    Row,
    Sheet,
    as_json,
    from_json,
    in_words,
    sheet,
)
from handlers.reading.acts import Layer, Open, Seal
from storage import changes
from storage.rows import Facts, NewEntry
from tests.group import BEGIN, Group
from tests.year import BINS

TODAY = BEGIN.date()


@pytest.fixture
async def season(group: Group) -> Sheet:
    await group.says(Open(bin="shed", capacity_l=20.0), who="Bram", days=-5)
    await group.says(Layer(mass_kg=3.0, bin="shed"), who="Bram", days=-5)
    await group.says(Seal(bin="yard"), who="Ines", days=-6)
    entry = NewEntry(
        act="date",
        event="$d",
        cause="$d",
        said_at=BEGIN,
        written_at=BEGIN,
        on=date(2026, 3, 6),
        facts=Facts(words="empty the caddy", hour=time(18)),
    )
    async with group.book.db.transaction():
        await changes.write_down(group.book, entry)
        await owndates.settle(group.book, BEGIN)
    return await sheet(group.book, TODAY)


def written(made: Sheet, monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """All that is written into the picture."""
    words: list[str] = []
    text = ImageDraw.ImageDraw.text

    def noted(self: ImageDraw.ImageDraw, xy: object, said: str, *more: object) -> None:
        words.append(said)
        text(self, xy, said, *more)  # type: ignore[arg-type]

    monkeypatch.setattr(ImageDraw.ImageDraw, "text", noted)
    drawn(made)
    return words


async def test_the_words_say_what_the_picture_shows(
    season: Sheet, monkeypatch: pytest.MonkeyPatch
) -> None:
    said = in_words(season)
    assert said.splitlines() == [
        "Our bins, Monday 2 to Sunday 29 March 2026.",
        "The shed bin (Bram): drain (late since Saturday 28 February); seal Wednesday 11 March.",
        "The yard bin (Ines): drain (late since Friday 27 February); bury Friday 6 to Tuesday 10 "
        "March.",
        "Other dates: empty the caddy at 18:00 Friday 6 March.",
    ]
    shown = written(season, monkeypatch)
    for block in season.blocks:
        assert block.title in shown
        assert all(row.words in shown for row in block.rows)
        assert all(row.said.split(" (")[0].split(" ")[0] in said for row in block.rows)


async def test_bars_stand_on_their_days(season: Sheet) -> None:
    [bury] = [row for block in season.blocks for row in block.rows if row.what == "bury"]
    assert (bury.first, bury.last) == (4, 8)
    assert (bury.words, bury.late) == ("bury, Fri 6 to Tue 10 Mar", False)
    rows = [row for block in season.blocks for row in block.rows]
    assert all(0 <= row.first <= row.last < DAYS for row in rows)


async def test_the_picture_is_made_for_a_phone(season: Sheet) -> None:
    data, width, height = drawn(season)
    image = Image.open(io.BytesIO(data))
    assert image.format == "PNG"
    assert image.size == (width, height) == (WIDTH, height)
    assert len(data) < 500_000


async def test_kinds_can_be_told_apart_without_colour(season: Sheet) -> None:
    """In grey, the bars of two kinds differ by their pattern."""

    def bar(what: str) -> bytes:
        image = Image.new("L", (120, 40), 255)
        draw = ImageDraw.Draw(image)
        picture._pattern(draw, what, (0, 0, 120, 40))
        return image.tobytes()

    kinds = ["drain", "seal", "bury", "plant", "cover", "check", "own"]
    assert len({bar(kind) for kind in kinds}) == len(kinds)
    del season


async def test_an_empty_book_and_a_full_one_have_a_picture(group: Group) -> None:
    empty = await sheet(group.book, TODAY)
    assert in_words(empty).endswith("Nothing is due.")
    assert drawn(empty)[0]
    for place, colour in product(BINS, ("crimson", "turquoise", "yellowish")):
        await group.says(Layer(mass_kg=1.0, bin=f"{place} {colour} and rather long"))
    full = await sheet(group.book, TODAY)
    lines = sum(1 + len(block.rows) for block in full.blocks)
    assert MOST_LINES - 1 <= lines <= MOST_LINES
    assert full.more in in_words(full).casefold()
    _, wide, high = drawn(full)
    assert high < 2.2 * wide  # a phone's screen: 9 by 20


async def test_what_waits_to_be_sent_is_made_from_what_is_kept(group: Group) -> None:
    await group.says(Layer(mass_kg=1.0, bin="shed"))
    assert from_json(json.loads(json.dumps(as_json(await sheet(group.book, TODAY))))) == (
        await sheet(group.book, TODAY)
    )
    turn = Turn(
        book=group.book, event="$s", cause="$s", sender="ines", at=BEGIN, now=BEGIN, today=TODAY
    )
    for what, kind in (("picture", "image/png"), ("calendar file", "text/calendar")):
        message = await attachment(group.book, what, turn)  # type: ignore[arg-type]
        assert message.attached
        assert (await made(message.attached)).type == kind


@pytest.mark.parametrize(
    ("words", "drawable"),
    [
        ("The north bin (🦊🐟 Ines)", "The north bin (Ines)"),
        ("The 🐟 bin", "The fish bin"),
        ("The 🐟 bin (bram)", "The fish bin (bram)"),
        ("Rosie’s bin (Zoë)", "Rosie’s bin (Zoë)"),
    ],
)
def test_pictures_among_words_are_left_out_or_named(words: str, drawable: str) -> None:
    assert picture._drawable(words) == drawable


def test_a_label_that_has_no_room_loses_its_weekdays_first() -> None:
    told: list[str] = []

    class Pen(ImageDraw.ImageDraw):
        def text(self, xy: Any, text: Any, *args: Any, **more: Any) -> None:
            told.append(text)

    row = Row(what="plant", words="plant there, Fri 10 to Fri 17 Apr", said="", first=10, last=17)
    picture._row(Pen(Image.new("RGB", (WIDTH, 200))), row, 20)
    assert told == ["plant there, 10 to 17 Apr"]
