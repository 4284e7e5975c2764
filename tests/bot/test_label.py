"""A bin's label: well made, of its own words, and with a code that any reader reads."""

import io
import subprocess
import sys
import xml.etree.ElementTree as ElementTree
from dataclasses import replace
from pathlib import Path

import pytest
import zxingcpp
from PIL import Image

from handlers.asked.labelart import EDGE, HEIGHT, WIDTH, Label, drawn
from storage import session
from storage.database import Database
from tests.browser import IS_REQUIRED, PROGRAM, browser
from tests.room import TalkingRoom

ADDRESS = "https://bins.test"

needs_browser = pytest.mark.skipif(
    PROGRAM is None and not IS_REQUIRED, reason="Chromium is not installed"
)


@pytest.fixture
async def book(tmp_path: Path) -> Path:
    """A book on disk of a group whose board is served, with two bins."""
    path = tmp_path / "season.db"
    db = await Database.open(path)
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 30 L, shared")
    await room.says("opened the shed bin, 20 L")
    await session.set_address(db, ADDRESS)
    await room.says("the yard bin takes no fish")
    await db.close()
    return path


def label(book: Path, *more: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "bot", "label", "--book", str(book), *more]
    return subprocess.run(command, text=True, capture_output=True, check=False)


def words(svg: str) -> list[str]:
    root = ElementTree.fromstring(svg)
    return [text.strip() for text in root.itertext() if text.strip()]


def test_it_says_what_may_go_in_and_what_to_mind(book: Path) -> None:
    done = label(book, "yard")
    assert (done.returncode, done.stderr) == (0, "")
    said = words(done.stdout)
    assert said[:3] == ["The yard bin", "The yard bin", "30 L, for everybody"]
    flat = " ".join(said)
    for part in (
        "of starter on each kilo, more on meat or fish",
        "The liquid: treat it as raw waste",
        "Goes in fruit and vegetables; bread, rice and pasta; meat;",
        "Stays out fish (our own rule); mouldy food; rotten food; pet waste;",
        "A full bin can weigh more than 15 kg (33 lb): lift it in pairs or on a trolley.",
        "Local rules on food waste and manure come first.",
    ):
        assert part in flat


def test_it_is_written_where_it_is_wanted(book: Path, tmp_path: Path) -> None:
    to = tmp_path / "label.svg"
    done = label(book, "yard", "--to", str(to))
    assert (done.returncode, done.stdout) == (0, "")
    assert words(to.read_text())[0] == "The yard bin"


@pytest.mark.parametrize("name", ["the shed bin", "Shed bin", "shed"])
def test_a_bin_is_called_as_people_say_it(book: Path, name: str) -> None:
    assert words(label(book, name).stdout)[0] == "The shed bin"


@pytest.mark.parametrize(
    ("more", "told"),
    [
        ((), "say which bin; this group has: yard, shed"),
        (("attic",), "this group has no bin attic; it has: yard, shed"),
        (("yard", "--to", "no/such/folder/label.svg"), "the label cannot be written to"),
    ],
)
def test_what_is_amiss_is_said_in_one_line(book: Path, more: tuple[str, ...], told: str) -> None:
    done = label(book, *more)
    assert done.returncode == 2
    assert told in done.stderr
    assert len(done.stderr.splitlines()) == 1


def test_names_are_words_and_no_markup() -> None:
    name = "<script>&\"' bin"
    svg = drawn(replace(wide(None), name=name))
    assert "<script" not in svg
    assert words(svg)[:2] == [name, name]


def wide(board: str | None) -> Label:
    """A label as full as one can be."""
    many = [f"thing number {n} of a long list" for n in range(8)]
    return Label(
        name="Rosemary Terrace, behind the wash house",
        about="30 L, for everybody",
        starter="1½ tablespoons (about 6 g) of starter on each kilo, more on meat or fish",
        goes_in=many,
        with_care=many,
        stays_out=many,
        cautions=["A caution of about a hundred and sixty letters. " * 3] * 4,
        board=board,
    )


@needs_browser
@pytest.mark.parametrize("board", [None, f"{ADDRESS}/{'x' * 32}/#bin-7"], ids=["bare", "code"])
async def test_nothing_runs_over_the_edge_or_into_the_cautions(
    tmp_path: Path, board: str | None
) -> None:
    page = tmp_path / "label.html"
    page.write_text(f"<!DOCTYPE html><body style='margin:0'>{drawn(wide(board))[38:]}</body>")
    async with browser(tmp_path / "browser") as shown:
        await shown.open(page.as_uri(), width=1000)
        boxes = await shown.value(
            "[...document.querySelectorAll('body > svg > text')].map(t => { const b = t.getBBox();"
            " return [t.textContent, b.x, b.y, b.x + b.width, b.y + b.height] })"
        )
    foot = min(top for text, _, top, _, _ in boxes if text.startswith("•"))
    for text, left, top, right, bottom in boxes:
        assert left >= 0, text
        assert right <= WIDTH - EDGE, text
        assert bottom <= HEIGHT, text
        assert top >= foot - 1 or bottom <= foot + 1, text


@needs_browser
async def test_another_reader_reads_its_code(book: Path, tmp_path: Path) -> None:
    """ZXing, a reader of another make, finds the address of the bin's place on the board."""
    page = tmp_path / "label.html"
    page.write_text(f"<!DOCTYPE html><body>{label(book, 'yard').stdout[38:]}</body>")
    async with browser(tmp_path / "browser") as shown:
        await shown.open(page.as_uri(), width=1000)
        picture = Image.open(io.BytesIO(await shown.picture()))
    [code] = zxingcpp.read_barcodes(picture.convert("L"))
    base, token, place = code.text.removeprefix("https://").split("/")
    assert (base, place) == ("bins.test", "#bin-1")
    assert len(token) >= 32


async def test_a_label_of_no_bin_or_of_all_is_answered_with_the_names(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 30 L")
    await room.says("opened the shed bin, 20 L")
    [unknown] = await room.says("a label for the attic bin")
    assert unknown.body == "I know no bin called “attic”. There is the yard bin and the shed bin."
    [several] = await room.says("labels for all the bins")
    assert several.body.startswith("Which bin: the yard bin or the shed bin?")
