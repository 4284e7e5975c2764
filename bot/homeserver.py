"""A homeserver of one's own on loopback, for the sandbox and for the tests: a real Synapse.

It federates with nobody, limits nothing and keeps all it has in the folder it is given.
"""

import base64
import hashlib
import hmac
import importlib.util
import json
import os
import secrets
import socket
import subprocess
import sys
import time
import urllib.error
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from storage.errors import UserError

SERVER_NAME = "sandbox.localhost"
START_SECONDS = 60
STOP_SECONDS = 20
_NO_LIMIT = {"per_second": 1e5, "burst_count": 100_000}


class HomeserverError(UserError):
    """The homeserver cannot be used; the text says what to do."""


@dataclass(frozen=True, slots=True, kw_only=True)
class User:
    """A user of the homeserver, logged in once."""

    id: str
    name: str
    password: str
    device: str
    token: str


@dataclass(frozen=True, slots=True)
class Homeserver:
    """A running Synapse."""

    url: str
    folder: Path
    secret: str

    def register(self, name: str, *, display: str | None = None, admin: bool = False) -> User:
        """A new user `@name:sandbox.localhost`, shown as `display`."""
        password = secrets.token_urlsafe(9)
        endpoint = "/_synapse/admin/v1/register"
        _, answer = self.call("GET", endpoint)
        role = "admin" if admin else "notadmin"
        message = "\0".join([answer["nonce"], name, password, role]).encode()
        body = {
            "nonce": answer["nonce"],
            "username": name,
            "password": password,
            "admin": admin,
            "mac": hmac.new(self.secret.encode(), message, hashlib.sha1).hexdigest(),
        }
        status, answer = self.call("POST", endpoint, body)
        if status != 200:
            raise HomeserverError(f"The user {name} was refused: {answer.get('error', status)}.")
        user = User(
            id=answer["user_id"],
            name=name,
            password=password,
            device=answer["device_id"],
            token=answer["access_token"],
        )
        path = f"/_matrix/client/v3/profile/{user.id}/displayname"
        self.call("PUT", path, {"displayname": display or name}, user.token)
        return user

    def call(
        self, method: str, path: str, body: object = None, token: str | None = None
    ) -> tuple[int, dict[str, Any]]:
        """One request to the client-server or admin API: HTTP status and JSON answer."""
        data = None if body is None else json.dumps(body).encode()
        request = urllib.request.Request(self.url + path, method=method, data=data)
        request.add_header("Content-Type", "application/json")
        if token:
            request.add_header("Authorization", f"Bearer {token}")
        try:
            with urllib.request.urlopen(request, timeout=30) as response:
                return response.status, json.load(response)
        except urllib.error.HTTPError as error:
            with error:
                return error.code, json.load(error)


def is_installed() -> bool:
    """Whether Synapse can be started here."""
    return importlib.util.find_spec("synapse") is not None


@contextmanager
def running(folder: Path, port: int = 0) -> Iterator[Homeserver]:
    """A Synapse that lives in `folder` and listens on `port` (0: any free one) of 127.0.0.1."""
    if not is_installed():
        raise HomeserverError(
            "The sandbox needs a homeserver. Install it with: pip install -e '.[homeserver]'"
        )
    port = _free_port(port)
    server = Homeserver(f"http://127.0.0.1:{port}", folder, secrets.token_hex(16))
    _write_configuration(folder, port, server.secret)
    command = [sys.executable, "-m", "synapse.app.homeserver", "-c", str(folder / "hs.json")]
    with (folder / "out.log").open("wb") as log:
        # A session of its own: Ctrl-C in the terminal is ours to pass on, when the bot is done.
        process = subprocess.Popen(
            command, cwd=folder, stdout=log, stderr=subprocess.STDOUT, start_new_session=True
        )
    try:
        _await_health(server, process)
        yield server
    finally:
        stop(process)


def _free_port(port: int) -> int:
    with socket.socket() as probe:
        probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            probe.bind(("127.0.0.1", port))
        except OSError as error:
            raise HomeserverError(
                f"Port {port} cannot be used ({error.strerror}). Choose another with --port."
            ) from error
        return int(probe.getsockname()[1])


def _await_health(server: Homeserver, process: subprocess.Popen[bytes]) -> None:
    deadline = time.monotonic() + START_SECONDS
    while time.monotonic() < deadline:
        if process.poll() is not None:
            break
        try:
            with urllib.request.urlopen(server.url + "/health", timeout=1):
                return
        except OSError:
            time.sleep(0.05)
    log = (server.folder / "out.log").read_text(encoding="utf-8", errors="replace")
    raise HomeserverError("Synapse did not start. Its last words:\n" + log[-2000:].strip())


def stop(process: subprocess.Popen[bytes]) -> None:
    """Have a program end, by force where it does not."""
    process.terminate()
    try:
        process.wait(STOP_SECONDS)
    except subprocess.TimeoutExpired:
        process.kill()
        process.wait()


def _write_configuration(folder: Path, port: int, secret: str) -> None:
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    key = folder / "signing.key"
    if not key.exists():
        seed = base64.b64encode(os.urandom(32)).decode().rstrip("=")
        key.write_text(f"ed25519 a_one {seed}\n", encoding="ascii")
    log = {"version": 1, "disable_existing_loggers": False, "root": {"level": "WARNING"}}
    (folder / "log.json").write_text(json.dumps(log), encoding="utf-8")
    # JSON is valid YAML, which is what Synapse reads.
    (folder / "hs.json").write_text(
        json.dumps(_configuration(folder, port, secret), indent=1), encoding="utf-8"
    )


def _configuration(folder: Path, port: int, secret: str) -> dict[str, Any]:
    listener = {
        "port": port,
        "bind_addresses": ["127.0.0.1"],
        "type": "http",
        "resources": [{"names": ["client"]}],
    }
    unlimited = (
        "rc_message",
        "rc_registration",
        "rc_admin_redaction",
        "rc_joins_per_room",
        "rc_room_creation",
    )
    return {
        "server_name": SERVER_NAME,
        "public_baseurl": f"http://127.0.0.1:{port}/",
        "report_stats": False,
        "pid_file": str(folder / "pid"),
        "listeners": [listener],
        "database": {"name": "sqlite3", "args": {"database": str(folder / "hs.db")}},
        "media_store_path": str(folder / "media"),
        "signing_key_path": str(folder / "signing.key"),
        "log_config": str(folder / "log.json"),
        "trusted_key_servers": [],
        "federation_domain_whitelist": [],
        "registration_shared_secret": secret,
        "macaroon_secret_key": secrets.token_hex(16),
        "form_secret": secrets.token_hex(16),
        "bcrypt_rounds": 4,
        "presence": {"enabled": False},
        # Or the same sync token would be answered from memory, and a restart see an old world.
        "caches": {"sync_response_cache_duration": "0s"},
        **dict.fromkeys(unlimited, _NO_LIMIT),
        "rc_login": dict.fromkeys(("address", "account", "failed_attempts"), _NO_LIMIT),
        "rc_joins": dict.fromkeys(("local", "remote"), _NO_LIMIT),
        "rc_invites": dict.fromkeys(("per_room", "per_user", "per_issuer"), _NO_LIMIT),
    }
