"""`python -m bot run`: the bot in its Matrix rooms, until it is told to stop.

Four tasks share one book: listening (events into the inbox), minding (inbox to entries and
outbox), sending (outbox to the homeserver) and reminding (what is due, into the outbox). Should one
of them fail, the process ends with its reason; nothing is lost, since each has stored what it took.
"""

import argparse
import asyncio
import gc
import logging
import os
import signal
import sys
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from peewee import PeeweeException

from bot import account as accounts
from bot import clock, settings
from bot.account import Account
from bot.backup import keep_daily
from bot.calendar_server import CalendarServer, keep_shared
from bot.connection import Client, closed_after, cross_sign, opened, refuse_lost_device, tend_keys
from bot.forget import forget_left
from bot.matrix import Session
from bot.pacing import Bell
from bot.pinned import Notices
from bot.progress import Progress
from bot.reminders import tell
from bot.sender import Sender
from bot.settings import Home, Settings, SettingsError
from bot.terminal import say
from bot.turn import TOGETHER, work_off
from bot.web import served
from handlers.reading.context import Context
from handlers.reading.plans import read
from handlers.reading.words.late import Late
from storage import inbox, outbox
from storage.database import Database
from storage.errors import UserError

log = logging.getLogger(__name__)

LONGEST_SLEEP = timedelta(minutes=1)
"""A clock may be set, or the machine sleep: look at the calendar again at least so often."""


LOOK_AT_HELD_SECONDS = 5.0


def add_parser(subparsers: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Describe the command."""
    parser = subparsers.add_parser(
        "run",
        help="take part in the bot's Matrix rooms",
        description="Takes part in the rooms the bot is invited to, until it is stopped (Ctrl-C).",
    )
    parser.add_argument("--home", metavar="DIR", help="where the bot keeps everything")
    parser.add_argument("--verbose", action="store_true", help="say more about what happens")


def run(args: argparse.Namespace) -> int:
    """Take part until stopped; 0 when stopped on purpose."""
    os.umask(0o077)
    place = settings.home(args.home)
    chosen = settings.read(place)
    account = accounts.read(place)
    if account is None:
        raise SettingsError(
            f"There is no login in {place.folder}. Run `python -m bot login` first."
        )
    _start_log(args.verbose)
    try:
        with accounts.sole_user(place):
            accounts.refuse_lost_keys(place, account)
            client = opened(place, account, chosen.devices)
            asyncio.run(_until_signalled(place, chosen, account, client))
    except asyncio.CancelledError:
        return 130
    return 0


def _start_log(verbose: bool) -> None:
    level = logging.INFO if verbose else logging.WARNING
    logging.basicConfig(
        level=level, stream=sys.stderr, format="%(levelname)s %(name)s: %(message)s"
    )


async def _until_signalled(place: Home, chosen: Settings, account: Account, client: Client) -> None:
    stop = asyncio.Event()
    this = asyncio.current_task()
    assert this is not None

    def end() -> None:
        if stop.is_set():
            this.cancel()  # asked a second time: what is being done is not waited for
        stop.set()

    for number in (signal.SIGINT, signal.SIGTERM):
        asyncio.get_running_loop().add_signal_handler(number, end)
    await asyncio.to_thread(at_hand)
    await take_part(place, chosen, account, client, stop)


async def take_part(
    place: Home, chosen: Settings, account: Account, client: Client, stop: asyncio.Event
) -> None:
    """Be in the rooms until `stop` is set; what is being done then is finished."""
    async with closed_after(client):
        db = await Database.open(place.book, alone=True)
        try:
            await refuse_lost_device(client)
            await tend_keys(client)
            await cross_sign(client, place, account)
            async with served(db, chosen.listen, chosen.address, clock.now):
                await _work_together(client, db, place, chosen, stop)
        except ExceptionGroup as group:
            raise _reason(group) from group
        finally:
            await db.close()


def at_hand() -> None:
    """Have ready what reading needs, before somebody waits for it.

    It lasts as long as the program does; were the collector to look through all of it now and then
    (a quarter of a million objects), everything else would stand still for a tenth of a second.
    """
    Late.compile_all()
    read("added 2 kg of peelings to the bin", Context(at=clock.now(), zone=ZoneInfo("UTC")))
    gc.collect()
    gc.freeze()


def _reason(group: ExceptionGroup[Exception]) -> Exception:
    """Why the tasks ended: what a person can put right, else the first failure."""
    told = [error for error in group.exceptions if isinstance(error, UserError)]
    first = told[0] if told else group.exceptions[0]
    if isinstance(first, PeeweeException):
        return UserError(
            f"The bot's encryption keys could not be kept ({first}): make room on the disk, or "
            "look at the folder's permissions, and start again; nothing is lost."
        )
    return first


async def _work_together(
    client: Client, db: Database, place: Home, chosen: Settings, stop: asyncio.Event
) -> None:
    heard, calendar, changed = Bell(), Bell(), Bell()
    sender = Sender(client, db, clock.now)
    session = Session(client, db, chosen, clock.now, heard=heard, outgoing=sender.bell)
    bells = (heard, sender.bell, calendar, changed, session.invitations.bell)
    async with asyncio.TaskGroup() as tasks:
        tasks.create_task(session.listen(stop))
        tasks.create_task(session.invitations.work(stop))
        tasks.create_task(_mind(db, client.user_id, heard, (sender.bell, calendar, changed), stop))
        tasks.create_task(_send(session, sender, calendar, stop))
        notices = Notices(db, client)
        tasks.create_task(_remind(db, notices, session, calendar, sender.bell, stop))
        if chosen.caldav:
            shared = CalendarServer(db, chosen)
            tasks.create_task(keep_shared(shared, clock.now, changed, stop))
        tasks.create_task(keep_daily(place, chosen.backups, stop))
        tasks.create_task(forget_left(db, chosen.forget_after, stop))
        tasks.create_task(_wake_all(bells, stop))


async def _wake_all(bells: tuple[Bell, ...], stop: asyncio.Event) -> None:
    await stop.wait()
    for bell in bells:
        bell.ring()


async def _send(session: Session, sender: Sender, calendar: Bell, stop: asyncio.Event) -> None:
    """Send once the session knows the rooms; nio can send to none before."""
    waits = [asyncio.create_task(event.wait()) for event in (session.ready, stop)]
    await asyncio.wait(waits, return_when=asyncio.FIRST_COMPLETED)
    for wait in waits:
        wait.cancel()
    if session.ready.is_set():
        calendar.ring()
        say("Listening. Stop with Ctrl-C.")
        await sender.work(stop)


async def _mind(
    db: Database, own: str, heard: Bell, then: tuple[Bell, ...], stop: asyncio.Event
) -> None:
    progress, done = Progress("messages"), 0
    while not stop.is_set():
        if worked_off := await work_off(db, now=clock.now, own=own, paced=True):
            done += worked_off
            if worked_off == TOGETHER:
                progress.reached(done, done + await inbox.how_many_wait(db))
            for bell in then:
                bell.ring()
        else:
            # Answers held back are told once those before them are sent, which rings no bell.
            await heard.wait(LOOK_AT_HELD_SECONDS if await outbox.holding(db) else None)


async def _remind(
    db: Database,
    notices: Notices,
    session: Session,
    calendar: Bell,
    outgoing: Bell,
    stop: asyncio.Event,
) -> None:
    """The one task that sleeps until something is due, woken by whatever changes the book."""
    while not stop.is_set():
        moments = [await tell(db, clock.now())]
        if session.ready.is_set():
            moments.append(await notices.refresh(clock.now()))
        outgoing.ring()
        upcoming = min((moment for moment in moments if moment), default=None)
        await calendar.wait(_seconds_until(upcoming, clock.now()))


def _seconds_until(moment: datetime | None, now: datetime) -> float:
    wait = LONGEST_SLEEP if moment is None else min(moment - now, LONGEST_SLEEP)
    return max(1.0, wait.total_seconds())
