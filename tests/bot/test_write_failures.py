"""Every write of a conversation fails once: the book holds exactly what was acknowledged."""

import resource
import signal
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest

from storage import backup
from storage.errors import StorageRefused
from tests.failing import Disk, Server, conversation, run


def said(body: str, **more: object) -> tuple[str, dict[str, object]]:
    return "m.room.message", {"msgtype": "m.text", "body": body, **more}


def edited(target: str, body: str) -> tuple[str, dict[str, object]]:
    relation = {"rel_type": "m.replace", "event_id": target}
    new = {"msgtype": "m.text", "body": body}
    return said(f"* {body}", **{"m.new_content": new, "m.relates_to": relation})


Talk = list[tuple[str, dict[str, object]]]

TALK: Talk = [
    ("m.room.member", {"membership": "join", "displayname": "Ines"}),
    said("added 2 kg scraps, mostly meat, to the shed bin"),
    edited("$e1", "added 3 kg scraps to the shed bin"),
    said("what a lovely evening"),
    said("drained 200 ml from the shed bin"),
    said("sealed the shed bin"),
    ("m.reaction", {"m.relates_to": {"rel_type": "m.annotation", "event_id": "$e5", "key": "❌"}}),
    ("m.room.redaction", {"redacts": "$e6"}),
    said("remind us at 8"),
    said("how full is the shed bin?"),
]


def dump(path: Path) -> list[str]:
    """All that a book says, word for word."""
    with closing(sqlite3.connect(path)) as book:
        return list(book.iterdump())


async def unharmed(tmp_path: Path, talk: Talk) -> tuple[Server, list[list[str]]]:
    """The conversation without failures, and the book after each of its transactions."""
    path, server = tmp_path / "unharmed.db", Server(conversation(talk))
    books: list[list[str]] = []
    disk = Disk(after_commit=lambda: books.append(dump(path)))
    await run(server, path, disk)
    return server, books


def assert_sound(path: Path) -> None:
    assert backup.faults(path, thorough=True) == []
    with closing(sqlite3.connect(path)) as book:
        assert book.execute("PRAGMA foreign_key_check").fetchall() == []


@pytest.mark.parametrize("code", [sqlite3.SQLITE_IOERR, sqlite3.SQLITE_FULL])
async def test_each_write_fails_once(tmp_path: Path, code: int) -> None:
    reference, books = await unharmed(tmp_path, TALK)
    path, server = tmp_path / "book.db", Server(conversation(TALK))
    commits = passes = failures = 0
    while True:
        disk = Disk(passes, code)
        try:
            await run(server, path, disk)
            break
        except StorageRefused as error:
            assert "nothing is lost" in str(error)  # noqa: PT017 - most runs fail, the last does not
            failures += 1
        commits += disk.commits
        if commits:
            assert dump(path) == books[commits - 1]
        # Past a commit the count begins anew, so that every write after it has its turn.
        passes = 0 if disk.commits else passes + 1
    assert failures > 100
    assert dump(path) == books[-1]
    assert server.taken == reference.taken
    assert_sound(path)


async def test_the_disk_grows_a_page_at_a_time(tmp_path: Path) -> None:
    talk = [*TALK, *(said(f"added {kg % 9 + 1} kg scraps to the yard bin") for kg in range(40))]
    reference, books = await unharmed(tmp_path, talk)
    path, server = tmp_path / "book.db", Server(conversation(talk))
    await run(Server([]), path, Disk())
    with closing(sqlite3.connect(path)) as book:
        pages = int(book.execute("PRAGMA page_count").fetchone()[0])
    refused = 0
    while True:
        try:
            await run(server, path, Disk(), limit_pages=pages)
            break
        except StorageRefused as error:
            assert "the disk is full" in str(error)  # noqa: PT017 - the last run does not fail
            refused += 1
        assert dump(path) in books
        assert_sound(path)
        pages += 1
    assert refused > 0
    assert dump(path) == books[-1]
    assert server.taken == reference.taken


def small_disk() -> None:
    """No file of this process grows past a limit: the system refuses the write itself."""
    signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    resource.setrlimit(resource.RLIMIT_FSIZE, (560_000, 560_000))


def test_a_full_disk_ends_the_program_with_what_to_do(tmp_path: Path) -> None:
    book = tmp_path / "book.db"
    lines = "".join(f"added {kg % 9 + 1} kg scraps to the shed bin\n" for kg in range(200))
    command = [sys.executable, "-m", "bot", "chat", "--book", str(book), "--zone", "UTC"]
    full = subprocess.run(
        command, input=lines, text=True, capture_output=True, check=False, preexec_fn=small_disk
    )
    assert full.returncode == 2
    assert len(full.stderr.splitlines()) == 1
    assert "nothing is lost" in full.stderr
    answers = full.stdout.count("Sprinkle") or full.stdout.count("starter")
    assert 0 < answers < 200
    assert_sound(book)
    with closing(sqlite3.connect(book)) as opened:
        acts = opened.execute("SELECT count(*) FROM entry WHERE act = 'layer'").fetchone()[0]
        replies = opened.execute("SELECT count(*) FROM outbox WHERE kind = 'reply'").fetchone()[0]
    assert acts == replies
    again = subprocess.run(
        command, input="added 1 kg scraps\n", text=True, capture_output=True, check=False
    )
    assert again.returncode == 0
