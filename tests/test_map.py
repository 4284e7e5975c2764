"""The map of DEVELOPERS.md: every file that it names is there."""

import re
from pathlib import Path

import pytest

_ROOT = Path(__file__).parent.parent
_ROWS = [
    line
    for line in (_ROOT / "DEVELOPERS.md").read_text(encoding="utf-8").splitlines()
    if line.startswith("| ") and "`" in line
]
_FILE = re.compile(r"`((?:\w+/)*)(\w+\.(?:py|txt))`")


def _named(row: str) -> list[Path]:
    """The files of a row; one without a folder lies beside the one before it."""
    out: list[Path] = []
    folder = ""
    for said, name in _FILE.findall(row):
        folder = said or folder
        whole = f"handlers/{folder}" if folder.startswith("reading/") else folder
        out.append(_ROOT / whole / name)
    return out


def test_the_map_has_rows() -> None:
    assert sum(map(len, map(_named, _ROWS))) > len(_ROWS) > 50


@pytest.mark.parametrize("row", _ROWS, ids=lambda row: row[2:40])
def test_every_file_of_a_row_is_there(row: str) -> None:
    missing = [str(path.relative_to(_ROOT)) for path in _named(row) if not path.is_file()]
    assert missing == []
