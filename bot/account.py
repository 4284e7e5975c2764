"""The bot's Matrix account and device, as the login file keeps them; and the lock on its home."""

import fcntl
import json
import os
import secrets
import sqlite3
from collections.abc import Iterator, Mapping
from contextlib import closing, contextmanager
from dataclasses import asdict, dataclass, field
from pathlib import Path

from bot.settings import Home, SettingsError


@dataclass(frozen=True, slots=True, kw_only=True)
class Account:
    """Everything needed to be the same device of the same account again. All of it is secret."""

    homeserver: str
    user: str
    device: str
    token: str = field(repr=False)
    store_key: str = field(repr=False)
    seeds: Mapping[str, str] = field(default_factory=dict, repr=False)


def new_store_key() -> str:
    """A fresh key for the store of encryption keys."""
    return secrets.token_urlsafe(32)


def read(home: Home) -> Account | None:
    """The account of this home; None before the first login."""
    try:
        written = json.loads(home.login.read_text(encoding="utf-8"))
        return Account(**written)
    except FileNotFoundError:
        return None
    except (OSError, ValueError, TypeError) as error:
        raise SettingsError(
            f"{home.login} cannot be read ({type(error).__name__}). "
            "Put back a copy of it, or move it away and run `python -m bot login` again."
        ) from None


def write(home: Home, account: Account) -> None:
    """Keep the account: owner only, and all of it or nothing."""
    new = home.login.with_suffix(".new")
    new.unlink(missing_ok=True)
    descriptor = os.open(new, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(descriptor, "w", encoding="utf-8") as file:
        json.dump(asdict(account), file, indent=1)
        file.flush()
        os.fsync(file.fileno())
    new.replace(home.login)
    _sync_folder(home.folder)


def _sync_folder(folder: Path) -> None:
    descriptor = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(descriptor)
    finally:
        os.close(descriptor)


def key_store(home: Home, account: Account) -> Path:
    """The file in which a device keeps its encryption keys."""
    return home.keys / f"{account.user}_{account.device}.db"


def refuse_lost_keys(home: Home, account: Account) -> None:
    """SettingsError where the keys that the device once had are gone: others would not write to it.

    Made anew under the name of the old device, they would be taken for a forger's.
    """
    store = key_store(home, account)
    if not account.seeds:
        return  # the device has never been used
    if not store.exists():
        found = "are gone"
    elif damage := damage_of(store):
        found = f"are damaged ({damage}; move {store} away)"
    else:
        return
    raise SettingsError(
        f"The encryption keys of the bot's device {found}. Run `python -m bot login` with the "
        "password: it becomes a new device, signed by the same account, and the book stays."
    )


def damage_of(store: Path) -> str:
    """What SQLite finds wrong with a file; nothing if it is whole."""
    try:
        # Not read-only: what a crash left half done is taken back first.
        with closing(sqlite3.connect(store)) as opened:
            (found,) = opened.execute("PRAGMA quick_check").fetchone()
    except sqlite3.DatabaseError as error:
        return str(error)
    return "" if found == "ok" else str(found)


@contextmanager
def sole_user(home: Home) -> Iterator[None]:
    """Hold the home's lock: two processes on one device would destroy its encryption keys."""
    with home.lock.open("a", encoding="ascii") as file:
        home.lock.chmod(0o600)
        try:
            fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError:
            raise SettingsError(
                f"Another bot is using {home.folder}. Stop it first, or choose another --home."
            ) from None
        yield
