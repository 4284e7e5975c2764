"""Where things live, and what the person who runs the bot may choose: read once, at the start."""

import os
import sys
import tomllib
from collections.abc import Callable
from dataclasses import dataclass, field, fields
from pathlib import Path
from typing import Any, get_args
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from storage.errors import UserError
from storage.rows import Units


class SettingsError(UserError):
    """Something in the home folder cannot be used; the text says what to change."""


@dataclass(frozen=True, slots=True)
class Home:
    """The folder that holds all of one bot, readable by its owner only."""

    folder: Path

    @property
    def login(self) -> Path:
        """Homeserver, account, device and secrets, as `python -m bot login` wrote them."""
        return self.folder / "login.json"

    @property
    def book(self) -> Path:
        """The book of all rooms (SQLite)."""
        return self.folder / "book.db"

    @property
    def keys(self) -> Path:
        """The device's encryption keys: one unit with the login, never copied back."""
        return self.folder / "keys"

    @property
    def settings(self) -> Path:
        """The optional file of choices."""
        return self.folder / "settings.toml"

    @property
    def lock(self) -> Path:
        """Held by the one process that may use this home."""
        return self.folder / "lock"


@dataclass(frozen=True, slots=True)
class Settings:
    """What the person who runs the bot chose."""

    zone: str = "UTC"
    units: Units = "metric"
    obey: tuple[str, ...] = ()
    listen: str = "127.0.0.1:8464"
    address: str = ""
    backups: int = 7
    forget_after: int = 365
    caldav: str = ""
    caldav_user: str = ""
    caldav_password: str = field(default="", repr=False)

    def may_invite(self, inviter: str, own: str) -> bool:
        """Whether the bot follows an invitation by `inviter` (Matrix user ids)."""
        allowed = self.obey or (server_of(own),)
        return inviter in allowed or server_of(inviter) in allowed


@dataclass(frozen=True, slots=True)
class Setting:
    """One row of the table of settings: how it is written, checked and explained."""

    name: str
    type: str
    default: str
    sentence: str
    check: Callable[[object], Any]


def _zone(value: object) -> str:
    try:
        ZoneInfo(value if isinstance(value, str) else "")
    except (ZoneInfoNotFoundError, ValueError, OSError):
        raise ValueError('a time zone such as "Europe/Lisbon"') from None
    return str(value)


def _units(value: object) -> str:
    if value not in get_args(Units):
        raise ValueError("one of " + ", ".join(f'"{u}"' for u in get_args(Units)))
    return str(value)


def _obey(value: object) -> tuple[str, ...]:
    if not isinstance(value, list) or not all(_is_account_or_server(v) for v in value):
        raise ValueError('a list such as ["@ada:example.org", "example.org"]')
    return tuple(value)


def _is_account_or_server(value: object) -> bool:
    if not isinstance(value, str) or not value or any(c.isspace() for c in value):
        return False
    return bool(server_of(value)) and ":" in value if value.startswith("@") else True


def _listen(value: object) -> str:
    host, _, port = value.rpartition(":") if isinstance(value, str) else ("", "", "")
    if value != "" and not (host and port.isdecimal() and int(port) < 65536):
        raise ValueError('a host and a port such as "127.0.0.1:8464", or "" for none')
    return str(value)


def _address(value: object) -> str:
    if not isinstance(value, str) or not (value == "" or value.startswith(("https://", "http://"))):
        raise ValueError('a web address such as "https://bins.example.org"')
    return value


def _text(value: object) -> str:
    if not isinstance(value, str):
        raise ValueError("text in quotation marks")
    return value


def _days(value: object) -> int:
    if isinstance(value, bool) or not isinstance(value, int) or not 0 <= value <= 3650:
        raise ValueError("a whole number of days from 0 to 3650")
    return value


SETTINGS = (
    Setting(
        "zone", "text", '"UTC"', "Time zone of a new room, until the room sets its own.", _zone
    ),
    Setting("units", "text", '"metric"', "Units of a new room: metric, us or imperial.", _units),
    Setting(
        "obey",
        "list of text",
        "[]",
        "Who may invite the bot: accounts or servers; empty: accounts of its own server.",
        _obey,
    ),
    Setting(
        "listen",
        "text",
        '"127.0.0.1:8464"',
        "Where calendars and boards are served, as host:port; empty: not at all.",
        _listen,
    ),
    Setting(
        "address",
        "text",
        '""',
        "The web address under which others reach that place; empty: the place itself.",
        _address,
    ),
    Setting(
        "backups",
        "whole number",
        "7",
        "How many daily backups of the book are kept in the folder backups; 0: none are made.",
        _days,
    ),
    Setting(
        "forget_after",
        "whole number",
        "365",
        "How many days the book of a room is kept once the bot has left it; 0: for ever.",
        _days,
    ),
    Setting(
        "caldav",
        "text",
        '""',
        "A CalDAV server in which each group's calendar is kept up to date; empty: none.",
        _address,
    ),
    Setting("caldav_user", "text", '""', "The bot's account on that server.", _text),
    Setting("caldav_password", "text", '""', "The password of that account.", _text),
)


def server_of(account: str) -> str:
    """The server part of a Matrix user id."""
    return account.partition(":")[2]


def home(given: str | None = None) -> Home:
    """The home folder: the one given, else $PAILKEEPER_HOME, else the usual place; made if new."""
    chosen = given or os.environ.get("PAILKEEPER_HOME")
    folder = Path(chosen).expanduser().absolute() if chosen else _usual_place()
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as e:
        raise SettingsError(
            f"The home folder {folder} cannot be used ({e.strerror}). Choose another with --home."
        ) from e
    return Home(folder)


def _usual_place() -> Path:
    if sys.platform == "darwin":
        return Path.home() / "Library" / "Application Support" / "Pailkeeper"
    if sys.platform == "win32":
        return Path(os.environ.get("LOCALAPPDATA", Path.home())) / "Pailkeeper"
    data = os.environ.get("XDG_DATA_HOME", "")
    # The XDG rule: a path that is not absolute does not count.
    base = Path(data) if Path(data).is_absolute() else Path.home() / ".local" / "share"
    return base / "pailkeeper"


def read(place: Home) -> Settings:
    """The settings of this home; defaults where the file or a row is missing."""
    try:
        text = place.settings.read_text(encoding="utf-8")
    except FileNotFoundError:
        return Settings()
    except (OSError, UnicodeDecodeError) as e:
        raise SettingsError(f"{place.settings} cannot be read: {e}. Mend or remove it.") from e
    return parse(text, place.settings)


def parse(text: str, file: Path) -> Settings:
    """The settings written in `text`, which stands or will stand in `file`."""
    try:
        written = tomllib.loads(text)
    except tomllib.TOMLDecodeError as e:
        raise SettingsError(f"{file} cannot be read: {e}. Mend or remove it.") from e
    except RecursionError:
        raise SettingsError(f"{file} is nested too deep. Mend or remove it.") from None
    rows = {row.name: row for row in SETTINGS}
    unknown = sorted(written.keys() - rows.keys())
    if unknown:
        raise SettingsError(
            f"{file}: there is no setting {unknown[0]!r}. There are: {', '.join(rows)}."
        )
    values: dict[str, Any] = {}
    for name, value in written.items():
        try:
            values[name] = rows[name].check(value)
        except ValueError as e:
            raise SettingsError(f"{file}: {name} must be {e}.") from None
    return Settings(**values)


def template(obey: tuple[str, ...]) -> str:
    """The text of a new settings file: every row explained, those not chosen as comments."""
    lines: list[str] = []
    for row in SETTINGS:
        lines.append(f"# {row.sentence} ({row.type})")
        if row.name == "obey" and obey:
            lines.append("obey = [" + ", ".join(_quoted(o) for o in obey) + "]")
        else:
            lines.append(f"# {row.name} = {row.default}")
        lines.append("")
    return "\n".join(lines)


def _quoted(text: str) -> str:
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"') + '"'


assert {row.name for row in SETTINGS} == {one.name for one in fields(Settings)}
