"""Where the bot's things are, and what may be chosen."""

import os
import stat
import sys
from pathlib import Path

import pytest

from bot import account as accounts
from bot import settings
from bot.account import Account
from bot.settings import SETTINGS, Home, Settings, SettingsError


def written(folder: Path, text: str) -> Settings:
    (folder / "settings.toml").write_text(text, encoding="utf-8")
    return settings.read(Home(folder))


def test_without_a_file_the_defaults_hold(tmp_path: Path) -> None:
    assert settings.read(Home(tmp_path)) == Settings("UTC", "metric", ())


def test_what_is_chosen_holds(tmp_path: Path) -> None:
    text = 'zone = "Europe/Lisbon"\nunits = "us"\nobey = ["@ada:example.org"]\n'
    assert written(tmp_path, text) == Settings("Europe/Lisbon", "us", ("@ada:example.org",))


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ('zone = "Lisbon"', "zone must be a time zone such as"),
        ("zone = 1", "zone must be a time zone such as"),
        ('zone = "../etc/passwd"', "zone must be a time zone such as"),
        ('units = "stone"', 'units must be one of "metric", "us", "imperial"'),
        ('obey = "example.org"', "obey must be a list such as"),
        ('obey = [""]', "obey must be a list such as"),
        ('obey = ["@ada"]', "obey must be a list such as"),
        ('colour = "red"', "there is no setting 'colour'. There are: zone, units, obey, "),
        ('devices = "mine"', 'devices must be one of "signed", "only signed", "all"'),
        ("zone =", "cannot be read"),
        ("backups = " + "9" * 5000, "cannot be read"),
        ("backups = " + "[" * 5000, "nested too deep"),
    ],
)
def test_what_is_wrong_is_named(tmp_path: Path, text: str, says: str) -> None:
    with pytest.raises(SettingsError) as error:
        written(tmp_path, text)
    assert says in str(error.value)
    assert str(tmp_path / "settings.toml") in str(error.value)


def test_the_template_holds_every_row_and_the_defaults(tmp_path: Path) -> None:
    text = settings.template(())
    assert written(tmp_path, text) == Settings()
    assert all(f"# {row.name} = {row.default}" in text for row in SETTINGS)
    uncommented = text.replace("# zone =", "zone =").replace("# units =", "units =")
    assert written(tmp_path, uncommented.replace("# obey =", "obey =")) == Settings()


@pytest.mark.parametrize(
    ("obey", "inviter", "may"),
    [
        ((), "@ada:home.example", True),
        ((), "@ada:away.example", False),
        ((), "", False),
        (("away.example",), "@ada:away.example", True),
        (("away.example",), "@ada:home.example", False),
        (("@ada:away.example",), "@ada:away.example", True),
        (("@ada:away.example",), "@bob:away.example", False),
        (("@ada:away.example", "home.example"), "@bob:home.example", True),
    ],
)
def test_who_may_invite(obey: tuple[str, ...], inviter: str, may: bool) -> None:
    assert Settings(obey=obey).may_invite(inviter, "@pail:home.example") is may


def test_the_home_given_is_first_then_the_environment(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("PAILKEEPER_HOME", str(tmp_path / "environment"))
    assert settings.home(str(tmp_path / "given")).folder == tmp_path / "given"
    assert settings.home().folder == tmp_path / "environment"
    assert stat.S_IMODE((tmp_path / "environment").stat().st_mode) == 0o700


@pytest.mark.skipif(sys.platform != "linux", reason="other systems have other usual places")
@pytest.mark.parametrize(
    ("data", "place"), [("data", "data/pailkeeper"), (None, ".local/share/pailkeeper")]
)
def test_else_it_is_the_usual_place(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, data: str | None, place: str
) -> None:
    monkeypatch.delenv("PAILKEEPER_HOME", raising=False)
    monkeypatch.setenv("HOME", str(tmp_path))
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / data) if data else "")
    assert settings.home().folder == tmp_path / place


def test_a_home_that_cannot_be_made_is_refused(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("")
    with pytest.raises(SettingsError, match="Choose another with --home"):
        settings.home(str(tmp_path / "file" / "home"))


def test_a_login_is_written_whole_and_for_its_owner_only(tmp_path: Path) -> None:
    before = os.umask(0o022)
    try:
        for token in ("first", "second"):
            account = Account(
                homeserver="http://x", user="@p:x", device="D", token=token, store_key="k"
            )
            accounts.write(Home(tmp_path), account)
            assert accounts.read(Home(tmp_path)) == account
    finally:
        os.umask(before)
    (kept,) = tmp_path.iterdir()
    assert stat.S_IMODE(kept.stat().st_mode) == 0o600


def test_what_is_secret_is_not_shown() -> None:
    account = Account(
        homeserver="http://x",
        user="@p:x",
        device="D",
        token="t0ken",
        store_key="k3y",
        seeds={"m": "s33d"},
    )
    assert not any(secret in repr(account) for secret in ("t0ken", "k3y", "s33d"))
