"""The board: what it says, that it lets nothing in, and how a real browser shows it."""

import re
from collections.abc import AsyncIterator
from datetime import date, timedelta
from html.parser import HTMLParser
from itertools import pairwise
from pathlib import Path

import pytest

from bot.board import as_page
from bot.web import served
from handlers.reading.acts import Accept, Bury, Drain, Layer, Offer, Open, Seal, Set
from storage.database import Database
from tests.browser import IS_REQUIRED, PROGRAM, Browser, browser
from tests.group import BEGIN, Group

NOW = BEGIN + timedelta(hours=4)

HOSTILE = "<img src=x onerror=a()>\"'&"


@pytest.fixture
async def season(group: Group) -> Group:
    """Bins in each stage, one of them named by somebody who means ill."""
    await group.says(Open(bin="shed", capacity_l=20.0), who="bram", days=-5)
    await group.says(Layer(mass_kg=3.0, bin="shed"), who="bram", days=-5)
    await group.says(Layer(mass_kg=2.0, bin="yard"), days=-20)
    await group.says(Seal(bin="yard"), days=-6)
    await group.says(Open(bin="communal", capacity_l=60.0, shared=True), days=-30)
    await group.says(Layer(mass_kg=20.0, bin="communal"), days=-30)
    await group.says(Seal(bin="communal"), days=-17)
    await group.says(Layer(mass_kg=2.0, bin="blue"), days=-40)
    await group.says(Seal(bin="blue"), days=-25)
    await group.says(Bury(bin="blue"), days=-10)
    await group.says(Layer(mass_kg=1.0, bin="blue"), days=-3)
    await group.says(Drain(bin="blue"), days=-1)
    await group.says(Offer(bin="shed", to="ines", on=date(2026, 3, 6)), who="bram")
    await group.says(Accept(bin="shed"), who="ines")
    await group.says(Open(bin=HOSTILE, capacity_l=10.0), who="bram")
    return group


class Text(HTMLParser):
    """The words of a page, and its tags."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.words: list[str] = []
        self.tags: list[str] = []
        self.attributes: set[str] = set()
        self.feed(page)

    def handle_data(self, data: str) -> None:
        self.words.append(data)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes |= {name for name, _ in attrs}

    def __str__(self) -> str:
        return re.sub(r"\s+", " ", "".join(self.words))


async def test_it_says_who_keeps_what_how_full_it_is_and_what_comes_next(season: Group) -> None:
    said = str(Text((await as_page(season.book, NOW)).decode()))
    for words in (
        "as of Monday 2 March 2026, in the time of Europe/Lisbon",
        "Late by 2 daysDrain the shed bin (bram)",
        "The shed bin , filling kept by bram",
        "20 % full of 20 L, about 3 kg in it",
        "Fermenting: since Tuesday 24 February, until about Friday 6 March",
        "The communal bin , ready kept by ines, for everybody",
        "In the ground: since Friday 20 February, until about Friday 13 March",
        "Hand over the shed bin to ines (bram)",
        "The blue bin , filling kept by ines; last drained yesterday",
        "take the calendar’s address",
    ):
        assert words in said, (words, said)


async def test_what_people_wrote_stays_words(season: Group) -> None:
    page = Text((await as_page(season.book, NOW)).decode())
    assert "img" not in page.tags
    assert not {name for name in page.attributes if name.startswith("on")}
    assert HOSTILE in str(page)


async def test_an_empty_book_has_a_board(group: Group) -> None:
    assert "Nothing is due." in str(Text((await as_page(group.book, NOW)).decode()))


needs_browser = pytest.mark.skipif(
    PROGRAM is None and not IS_REQUIRED, reason="Chromium is missing: apt-get install chromium"
)


@pytest.fixture
async def board(db: Database, season: Group) -> AsyncIterator[str]:
    """The address of the season's board."""
    async with served(db, "127.0.0.1:0", "", lambda: NOW):
        said = (await season.says(Set(what="calendar link", value=""))).say
        yield next(word for word in said.split() if word.startswith("http"))


@pytest.fixture
async def page(tmp_path: Path) -> AsyncIterator[Browser]:
    async with browser(tmp_path / "browser") as opened:
        yield opened


@needs_browser
@pytest.mark.parametrize("width", [320, 390, 1200])
async def test_it_fits_the_window_in_its_own_style(page: Browser, board: str, width: int) -> None:
    await page.open(board, width=width)
    assert await page.value("document.documentElement.scrollWidth") <= width
    assert await page.value("getComputedStyle(document.body).backgroundColor") == (
        "rgb(251, 247, 238)"
    )
    overflowing = await page.value(
        "[...document.querySelectorAll('main *')].filter(e => "
        "e.getBoundingClientRect().right > innerWidth + 1).length"
    )
    assert overflowing == 0
    complaints = [text for text in page.complaints if "favicon" not in text]
    assert [text for text in complaints if "404" not in text] == []


@needs_browser
async def test_the_policy_refuses_scripts_and_foreign_styles(page: Browser, board: str) -> None:
    await page.open(board, width=800)
    await page.value(
        "document.body.insertAdjacentHTML('beforeend', '<p style=\"color: rgb(1, 2, 3)\" id=x>x')"
    )
    assert await page.value("getComputedStyle(document.getElementById('x')).color") != (
        "rgb(1, 2, 3)"
    )
    await page.value(
        "{const s = document.createElement('script'); s.textContent = 'window.ran = 1';"
        "document.body.append(s)}"
    )
    assert await page.value("window.ran") is None


@needs_browser
async def test_a_screen_reader_is_told_all_of_it(page: Browser, board: str) -> None:
    await page.open(board, width=390)
    spoken = await page.spoken()
    headings = [name for role, name in spoken if role == "heading"]
    assert headings[:3] == ["Our bins", "What is due", "The bins"]
    assert "The shed bin , filling" in [re.sub(r"\s+", " ", name) for name in headings]
    words = " ".join(name for role, name in spoken if role == "StaticText")
    assert "Fermenting: since Tuesday 24 February, until about Friday 6 March" in words
    roles = [role for role, _ in spoken]
    assert "meter" in roles
    assert not {"image", "img", "graphics-document"} & set(roles)  # drawings say nothing new


# What WCAG 2.2 asks of a page that is only read, looked for by hand: 1.1.1, 1.3.1, 1.4.3 (4.5:1),
# 1.4.4, 2.4.2, 2.4.6, 3.1.1, 4.1.2.
CONTRASTS = """(() => {
  const parts = c => c.match(/[\\d.]+/g).map(Number);
  const light = ([r, g, b]) => [r, g, b].map(v => v / 255).map(
    v => v <= .04045 ? v / 12.92 : ((v + .055) / 1.055) ** 2.4
  ).reduce((sum, v, i) => sum + v * [.2126, .7152, .0722][i], 0);
  const behind = e => {
    for (; e; e = e.parentElement) {
      const c = parts(getComputedStyle(e).backgroundColor);
      if (c.length < 4 || c[3] > 0) return c;
    }
    return [255, 255, 255];
  };
  return [...document.querySelectorAll('body *')].filter(e => !e.closest('svg') &&
    [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim())
  ).map(e => {
    const [a, b] = [light(parts(getComputedStyle(e).color)), light(behind(e))];
    return (Math.max(a, b) + .05) / (Math.min(a, b) + .05);
  });
})()"""


@needs_browser
@pytest.mark.parametrize("width", [390, 1200])
async def test_it_can_be_read_by_everybody(page: Browser, board: str, width: int) -> None:
    await page.open(board, width=width)
    contrasts = await page.value(CONTRASTS)
    assert len(contrasts) > 30
    assert min(contrasts) >= 4.5
    assert await page.value("document.documentElement.lang") == "en"
    assert await page.value("document.title")
    assert "user-scalable" not in await page.value(
        "document.querySelector('meta[name=viewport]').content"
    )
    levels = await page.value(
        "[...document.querySelectorAll('h1,h2,h3,h4')].map(e => Number(e.tagName[1]))"
    )
    assert levels[0] == 1
    assert levels.count(1) == 1
    assert all(after - before <= 1 for before, after in pairwise(levels))
    ids = await page.value("[...document.querySelectorAll('[id]')].map(e => e.id)")
    assert len(ids) == len(set(ids))
    spoken = await page.spoken()
    assert [role for role, _ in spoken if role in ("banner", "main", "contentinfo")] == [
        "banner",
        "main",
        "contentinfo",
    ]
    named = [name for role, name in spoken if role in ("region", "meter")]
    assert named
    assert all(named)


@needs_browser
async def test_the_bars_can_be_told_apart_without_colour(page: Browser, board: str) -> None:
    await page.open(board, width=800)
    fills = await page.value(
        "[...new Set([...document.querySelectorAll('.bar')].map(e => e.getAttribute('fill')))]"
    )
    assert sorted(fills) == [
        "url(#fermenting)",
        "url(#filling)",
        "url(#in-the-ground)",
        "url(#ready)",
    ]


@needs_browser
async def test_it_can_be_printed_and_pictured(page: Browser, board: str) -> None:
    await page.open(board, width=390)
    assert (await page.picture()).startswith(b"\x89PNG")
    pdf = await page.paper()
    assert pdf.startswith(b"%PDF")
    assert len(re.findall(rb"/Type\s*/Page\b", pdf)) <= 3
