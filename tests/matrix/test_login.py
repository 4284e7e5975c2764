"""`python -m bot login`, as a person runs it: what is kept, who may read it, what is said."""

from __future__ import annotations

import asyncio
import json
import stat
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from bot import account as accounts
from bot.connection import DeviceLost
from bot.cross_signing import Identity
from bot.settings import Home

if TYPE_CHECKING:
    from tests.matrix.conftest import Street

Done = subprocess.CompletedProcess[str]


def log_in(home: Path, *answers: str, more: tuple[str, ...] = ()) -> Done:
    command = [sys.executable, "-W", "error", "-m", "bot", "login", "--home", str(home), *more]
    given = "".join(f"{answer}\n" for answer in answers)
    return subprocess.run(command, input=given, text=True, capture_output=True, check=False)


def signers(street: Street, home: Home) -> set[str]:
    """The keys that the bot's device is signed by."""
    account = accounts.read(home)
    assert account is not None
    query: dict[str, Any] = {"device_keys": {account.user: []}}
    path = "/_matrix/client/v3/keys/query"
    _, answer = street.server.call("POST", path, query, account.token)
    device = answer["device_keys"][account.user][account.device]
    return {key.removeprefix("ed25519:") for key in device["signatures"][account.user]}


def own_key(home: Home) -> str:
    """The key that the bot signs its devices by."""
    account = accounts.read(home)
    assert account is not None
    return Identity.from_seeds(account.seeds).public("self_signing")


def mode(path: Path) -> str:
    return oct(stat.S_IMODE(path.stat().st_mode))


def test_the_login_is_kept_for_its_owner_only(street: Street, tmp_path: Path) -> None:
    user, home = street.user("pailkeeper"), tmp_path / "home"
    done = log_in(home, street.server.url, user.name, user.password, "")
    assert done.returncode == 0, done.stderr
    kept = json.loads((home / "login.json").read_text())
    assert kept["user"] == user.id
    assert kept["homeserver"] == street.server.url
    assert mode(home) == mode(home / "keys") == "0o700"
    assert mode(home / "login.json") == "0o600"
    for secret in (user.password, kept["token"], kept["store_key"], *kept["seeds"].values()):
        assert secret not in done.stdout + done.stderr
    status, answer = street.server.call(
        "GET", "/_matrix/client/v3/account/whoami", token=kept["token"]
    )
    assert (status, answer["device_id"]) == (200, kept["device"])


def test_a_second_login_stays_the_same_device(street: Street, tmp_path: Path) -> None:
    user, home = street.user("pailkeeper"), tmp_path / "home"
    logins = []
    for who in (user.name, user.id):
        assert log_in(home, street.server.url, who, user.password, "").returncode == 0
        logins.append(json.loads((home / "login.json").read_text()))
    first, second = logins
    assert first["token"] != second["token"]
    for same in ("device", "store_key", "seeds"):
        assert first[same] == second[same]


def lose_keys(street: Street, home: Home) -> None:
    for file in home.keys.iterdir():
        file.unlink()


def sign_out_everywhere(street: Street, home: Home) -> None:
    """As after a new password: the homeserver deletes the account's devices with their keys."""
    account = accounts.read(home)
    assert account is not None
    path = "/_matrix/client/v3/logout/all"
    assert street.server.call("POST", path, {}, account.token)[0] == 200


@pytest.mark.parametrize("lose", [lose_keys, sign_out_everywhere])
async def test_a_device_that_is_lost_is_set_up_again(
    street: Street, lose: Callable[[Street, Home], None]
) -> None:
    """Another device, signed by the same identity, goes on with the same book."""
    ines, bot = await street.neighbour("ines"), street.bot()
    answers = (street.server.url, bot.user.name, bot.user.password)
    devices, seeds = [], []
    room = ""
    for kg in (2, 3):
        done = await asyncio.to_thread(log_in, bot.home.folder, *answers)
        assert done.returncode == 0, done.stderr
        account = accounts.read(bot.home)
        assert account is not None
        devices.append(account.device)
        seeds.append(account.seeds)
        bot.start()
        room = room or await street.room_with(bot, ines)
        await bot.comes_to("SELECT 1 FROM session")
        event = await ines.say(room, f"added {kg} kg scraps to the shed bin")
        await ines.answer_to(room, event, bot.user.id)
        assert own_key(bot.home) in signers(street, bot.home)
        await bot.stop()
        lose(street, bot.home)
    assert devices[0] != devices[1]
    assert seeds[0] == seeds[1]
    assert bot.rows("SELECT mass_kg FROM entry WHERE act = 'layer'") == [(2.0,), (3.0,)]


async def test_a_device_that_the_homeserver_deleted_is_not_taken_up_again(street: Street) -> None:
    """A token of another session's making, for the same device, does not bring its keys back."""
    bot = street.bot()
    answers = (street.server.url, bot.user.name)
    assert log_in(bot.home.folder, *answers, bot.user.password).returncode == 0
    before = accounts.read(bot.home)
    assert before is not None
    sign_out_everywhere(street, bot.home)
    body = {
        "type": "m.login.password",
        "identifier": {"type": "m.id.user", "user": bot.user.id},
        "password": bot.user.password,
        "device_id": before.device,
    }
    _, again = street.server.call("POST", "/_matrix/client/v3/login", body)
    done = log_in(bot.home.folder, *answers, "", again["access_token"])
    assert done.returncode == 2
    assert "no longer has the keys of the bot's device" in done.stderr
    bot.start()
    assert bot.task is not None
    with pytest.raises(DeviceLost):
        await bot.task
    bot.task = None


def test_where_the_home_is_lost_the_account_gets_a_new_identity(
    street: Street, tmp_path: Path
) -> None:
    user, first, second = street.user("pailkeeper"), tmp_path / "first", tmp_path / "second"
    answers = (street.server.url, user.name, user.password, "")
    assert log_in(first, *answers).returncode == 0
    done = log_in(second, *answers)
    assert done.returncode == 0
    assert "login --new-identity" in done.stderr
    assert own_key(Home(second)) not in signers(street, Home(second))
    done = log_in(second, *answers[:3], more=("--new-identity",))
    assert (done.returncode, done.stderr) == (0, "")
    assert own_key(Home(second)) in signers(street, Home(second))


def test_an_access_token_does_as_well(street: Street, tmp_path: Path) -> None:
    user, home = street.user("pailkeeper"), tmp_path / "home"
    done = log_in(home, street.server.url, user.name, "", user.token, "")
    assert done.returncode == 0, done.stderr
    kept = json.loads((home / "login.json").read_text())
    assert (kept["user"], kept["device"]) == (user.id, user.device)


def test_who_may_invite_is_asked_once(street: Street, tmp_path: Path) -> None:
    user, home = street.user("pailkeeper"), tmp_path / "home"
    answers = (street.server.url, user.name, user.password, "@ada:example.org, example.com")
    assert log_in(home, *answers).returncode == 0
    text = (home / "settings.toml").read_text()
    assert 'obey = ["@ada:example.org", "example.com"]' in text
    assert log_in(home, *answers[:3]).returncode == 0
    assert (home / "settings.toml").read_text() == text


@pytest.mark.parametrize(
    ("answers", "says"),
    [
        (("{url}", "{name}", "wrong"), "does not take this password"),
        (("{url}", "{name}", "", "wrong"), "does not know this access token"),
        (("http://127.0.0.1:9", "{name}", "secret"), "cannot be reached"),
        (("", "", ""), "A homeserver and a user are needed"),
        (("{url}", "{name}", "", ""), "A password or an access token is needed"),
    ],
)
def test_what_went_wrong_is_said_in_a_line(
    street: Street, tmp_path: Path, answers: tuple[str, ...], says: str
) -> None:
    user = street.user("pailkeeper")
    given = [answer.format(url=street.server.url, name=user.name) for answer in answers]
    done = log_in(tmp_path / "home", *given)
    assert done.returncode == 2
    assert says in done.stderr
    assert len(done.stderr.splitlines()) == 1
    assert not (tmp_path / "home" / "login.json").exists()


def test_a_home_belongs_to_one_account(street: Street, tmp_path: Path) -> None:
    first, second = street.user("pailkeeper"), street.user("other")
    home, url = tmp_path / "home", street.server.url
    assert log_in(home, url, first.name, first.password, "").returncode == 0
    done = log_in(home, url, second.name, second.password, "")
    assert done.returncode == 2
    assert "belongs to" in done.stderr
    assert json.loads((home / "login.json").read_text())["user"] == first.id
