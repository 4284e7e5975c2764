"""What stands on a bin's label: its name, what may go in, the cautions, and where its board is."""

from collections.abc import Sequence

from handlers.answer import Answer, Setting, Turn
from handlers.asked.addresses import made
from handlers.asked.labelart import Label
from handlers.phrasing import capital, spoon, starter, the, volume
from handlers.practice.allowed import row_of
from handlers.practice.cautions import caution
from handlers.practice.dose import dose
from handlers.practice.figure import listed
from handlers.practice.goes_in import OF_KIND, Verdict
from handlers.practice.kinds import KINDS
from handlers.practice.stays_out import STAYS_OUT
from handlers.practice.units import KILOGRAMS
from handlers.reading.arrangements.communal import LabelWanted
from handlers.recording import rules
from handlers.recording.bins import asked_of
from handlers.state import look_up
from storage import links, session
from storage.book import Book
from storage.rows import Bin, Room

MOST_OUT = 6
"""Things that stay out of any bin which a label names, those first that are put in most."""

CAUTIONS = ("lifting", "gas", "liquid", "rules")


async def asked(plan: LabelWanted, turn: Turn) -> Answer:
    """The label of a bin is posted as a file."""
    bin = await asked_of(plan.bin, turn)
    if isinstance(bin, Answer):
        return bin
    base, token = await session.address(turn.book.db), await links.token(turn.book, None)
    settings = []
    if base and token is None:
        token = made()
        settings.append(Setting(what="calendar link", value=token))
    return Answer(attach=await label(turn.book, bin, turn, board_of(base, token, bin)),
                  settings=settings)  # fmt: skip


def board_of(base: str | None, token: str | None, bin: Bin) -> str | None:
    """The address of a bin on the board."""
    return f"{base}/{token}/#{place(bin)}" if base and token else None


def place(bin: Bin) -> str:
    """Where a bin stands on the board page."""
    return f"bin-{bin.id}"


async def label(book: Book, bin: Bin, turn: Turn, board: str | None) -> Label:
    """The label of a bin, by what the craft says and what its group keeps out."""
    state = await look_up(book, bin, turn.today)
    barred = await rules.barred(book, bin)
    return Label(
        name=capital(the(bin.name)),
        about=_about(state.capacity_l, book.room, shared=state.shared),
        starter=_starter(book.room),
        goes_in=_kinds("yes", barred),
        with_care=_kinds("with care", barred),
        stays_out=[*_barred(barred), *(row.name for row in STAYS_OUT[:MOST_OUT])],
        cautions=list(map(_caution, CAUTIONS)),
        board=board,
    )


def _about(capacity_l: float | None, room: Room, *, shared: bool) -> str:
    size = volume(capacity_l, room.units) if capacity_l else ""
    return ", ".join(filter(None, (size, "for everybody" if shared else "")))


def _starter(room: Room) -> str:
    """The dose that is usual on what is plain, by the group's habit, for what people weigh."""
    kilos, unit = (1.0, "kilo") if room.units == "metric" else (KILOGRAMS["pound"], "pound")
    usual = dose(mass_kg=kilos, habit=room.habit, tablespoon=spoon(room.units))
    measured = starter(usual.tablespoons, usual.starter_g, room.units)
    return f"{capital(measured)} of starter on each {unit}, more on meat or fish"


def _caution(name: str) -> str:
    """A caution that says itself what it is about, as nothing stands before it."""
    told = caution(name)
    return f"The liquid: {told[:1].lower()}{told[1:]}" if name == "liquid" else told


def _kinds(verdict: Verdict, barred: Sequence[str]) -> list[str]:
    """The names of the rows with that verdict whose kinds are not all barred."""
    found: dict[str, None] = {}
    for kind in KINDS:
        row = row_of(kind)
        if row.verdict == verdict and kind not in barred:
            found[_without(row.name, barred)] = None
    return list(found)


def _without(name: str, barred: Sequence[str]) -> str:
    """ "Meat and fish" where fish is barred is only meat."""
    own = [kind for kind in KINDS if OF_KIND[kind] == name]
    left = ["eggs" if kind == "egg" else kind for kind in own if kind not in barred]
    named = {"meat and fish", "dairy and eggs"}
    return " and ".join(left) if name in named and len(left) < len(own) else name


def _barred(barred: Sequence[str]) -> list[str]:
    return [f"{listed(barred)} (our own rule)"] if barred else []
