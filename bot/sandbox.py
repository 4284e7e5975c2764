"""`python -m bot sandbox`: a homeserver on this machine, an encrypted room, neighbours and the bot.

Everything is real but the people: the homeserver is a Synapse on loopback, the neighbours are
Matrix clients with encryption, and the bot is `python -m bot login` and `run`, as anybody runs it.
"""

import argparse
import asyncio
import signal
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import AsyncExitStack, ExitStack, contextmanager
from pathlib import Path

from bot import homeserver
from bot.homeserver import Homeserver, User
from bot.sandbox_neighbour import Neighbour, neighbour
from bot.sandbox_room import SandboxError, Scene, Window, play, set_up_room
from bot.settings import SettingsError
from bot.terminal import say

BOT = "pailkeeper"
NEIGHBOURS = {"ines": "Ines", "bruno": "Bruno", "mei": "Mei"}


def add_parser(subparsers: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Describe the command."""
    parser = subparsers.add_parser(
        "sandbox",
        help="see the bot at work in an encrypted Matrix room on this machine",
        description="Starts a homeserver on this machine with three invented neighbours and the "
        "bot in an encrypted room, lets them talk for a minute, and stays until Ctrl-C, so that "
        "you can join with any Matrix client.",
    )
    parser.add_argument(
        "--port", type=int, default=0, metavar="N", help="where to listen (default: any free port)"
    )
    parser.add_argument(
        "--home", metavar="DIR", help="a new folder to keep it all (default: none of it is kept)"
    )
    parser.add_argument("--once", action="store_true", help="end after the conversation")


def run(args: argparse.Namespace) -> int:
    """Build the sandbox, play, and stay; 0 when it was ended on purpose."""
    # Until the loop listens to signals itself: what was started must be stopped.
    signal.signal(signal.SIGTERM, signal.default_int_handler)
    try:
        with ExitStack() as stack:
            folder = stack.enter_context(_folder(args.home))
            say("Starting a homeserver on this machine …")
            server = stack.enter_context(homeserver.running(folder / "homeserver", args.port))
            people = [server.register(name, display=NEIGHBOURS[name]) for name in NEIGHBOURS]
            bot = server.register(BOT, display="Pailkeeper")
            say("Logging the bot in …")
            _log_in(server, bot, folder / "bot")
            stack.enter_context(_running_bot(folder / "bot"))
            asyncio.run(_meet(server, people, bot, folder, once=args.once))
    except KeyboardInterrupt:
        pass
    return 0


@contextmanager
def _folder(given: str | None) -> Iterator[Path]:
    if given is None:
        with tempfile.TemporaryDirectory(prefix="pailkeeper-") as fleeting:
            yield Path(fleeting)
        return
    folder = Path(given).expanduser().absolute()
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise SettingsError(f"{folder} is in use. Name a new folder with --home, or none at all.")
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    yield folder


def _log_in(server: Homeserver, bot: User, home: Path) -> None:
    # As a person would answer: homeserver, user, password, who may invite (everybody here).
    answers = f"{server.url}\n{bot.name}\n{bot.password}\n\n"
    done = subprocess.run(
        _command("login", home), input=answers, text=True, capture_output=True, check=False
    )
    if done.returncode:
        raise SandboxError(f"The bot could not log in: {done.stderr.strip()}")


@contextmanager
def _running_bot(home: Path) -> Iterator[None]:
    # A session of its own: Ctrl-C in the terminal is ours to pass on.
    with (home / "log").open("wb") as log:
        process = subprocess.Popen(
            _command("run", home), stdout=log, stderr=subprocess.STDOUT, start_new_session=True
        )
    try:
        yield
    except SandboxError as error:
        state = "It runs." if process.poll() is None else "It has stopped."
        words = (home / "log").read_text(encoding="utf-8").strip()
        raise SandboxError(f"{error} {state} It said:\n{words}") from None
    finally:
        homeserver.stop(process)


def _command(name: str, home: Path) -> list[str]:
    return [sys.executable, "-m", "bot", name, "--home", str(home)]


async def _meet(
    server: Homeserver, people: list[User], bot: User, folder: Path, *, once: bool
) -> None:
    stop = asyncio.Event()
    for number in (signal.SIGINT, signal.SIGTERM):
        asyncio.get_running_loop().add_signal_handler(number, stop.set)
    async with AsyncExitStack() as stack:
        present: dict[str, Neighbour] = {}
        for user in people:
            somebody = neighbour(server, user, folder / user.name)
            present[user.name] = await stack.enter_async_context(somebody)
        scene = Scene(server, present, bot)
        await set_up_room(scene)
        _explain(server, people, scene.alias)
        window = Window(scene)
        showing = asyncio.create_task(window.watch())
        stopping = asyncio.create_task(stop.wait())
        try:
            playing = asyncio.create_task(play(scene))
            await asyncio.wait({playing, stopping}, return_when=asyncio.FIRST_COMPLETED)
            if playing.done():
                await playing
            playing.cancel()
            window.show()
            if not once and not stop.is_set():
                say("\nThe room stays open, and shows here what is said in it. End with Ctrl-C.")
                await stopping
        finally:
            for task in (showing, stopping):
                task.cancel()
            await asyncio.gather(showing, stopping, return_exceptions=True)


def _explain(server: Homeserver, people: list[User], alias: str) -> None:
    say("\nA room with end-to-end encryption, on this machine only. Join it if you like, with any")
    say("Matrix client that lets you choose the homeserver:\n")
    say(f"  homeserver  {server.url}")
    for user in people:
        say(f"  user        {user.name:<8}  password  {user.password}")
    say(f"  room        {alias}")
    say("\nThe neighbours talk. The bot answers what is about the bins, and leaves the rest alone.")
