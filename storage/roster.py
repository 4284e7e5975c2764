"""Who and what a room has: its bins, members and places."""

from collections.abc import Awaitable, Callable, Hashable, Sequence
from typing import TypeVar

from storage import words
from storage.database import Database
from storage.rows import Bin, Member, Room

# A bin that was retired is in use again once it is opened, somebody takes it or scraps go in.
_BINS = """
SELECT id, name, EXISTS (SELECT 1 FROM entry WHERE entry.bin = bin.id AND struck_at IS NULL)
    AND NOT EXISTS (SELECT 1 FROM entry AS gone
        WHERE gone.bin = bin.id AND gone.act = 'retire' AND gone.struck_at IS NULL
            AND NOT EXISTS (SELECT 1 FROM entry AS again
                WHERE again.bin = bin.id AND again.act IN ('open', 'layer', 'accept')
                    AND again.struck_at IS NULL AND again.root > gone.root)) AS is_used
FROM bin WHERE room = ? ORDER BY id
"""

_RETIRED = """
SELECT DISTINCT bin.id, bin.name FROM entry JOIN bin ON bin.id = entry.bin
WHERE entry.room = ? AND act = 'retire' AND struck_at IS NULL
"""

Result = TypeVar("Result")


class Roster:
    """The bins, members and places of one room."""

    def __init__(self, db: Database, room: Room) -> None:
        self.db = db
        self.room = room

    async def bins(self) -> Sequence[Bin]:
        """Every bin in use: with an entry that stands, and not retired since; oldest first."""

        async def ask() -> tuple[Sequence[Bin], bool]:
            rows = await self.db.rows(_BINS, (self.room.id,))
            used = [Bin(id=row["id"], name=row["name"]) for row in rows if row["is_used"]]
            return used, len(used) == len(rows)

        # What is in use stays so whatever is added, but for a retirement.
        bins, are_all = await self.known("bin entry:retire,rewritten", "bins", ask)
        if not are_all:
            bins, _ = await self.known("bin entry", "bins", ask)
        return bins

    async def retired(self) -> list[Bin]:
        """Every bin that went out of use and is not in use again."""

        async def ask() -> list[Bin]:
            rows = await self.db.rows(_RETIRED, (self.room.id,))
            return [Bin(id=row["id"], name=row["name"]) for row in rows]

        used = await self.bins()
        gone = await self.known("bin entry:retire,rewritten", "retired", ask)
        return [bin for bin in gone if bin not in used]

    async def former_names(self) -> dict[str, Bin]:
        """Bins by the names that they had before, casefolded; none that another has now."""

        async def ask() -> dict[str, Bin]:
            return await self._former_names()

        return await self.known("bin entry:rename", "former", ask)

    async def _former_names(self) -> dict[str, Bin]:
        rows = await self.db.rows(
            "SELECT id, name, key, called AS before FROM bin WHERE room = ?1 "
            "AND called IS NOT NULL UNION ALL "
            "SELECT bin.id, name, key, words FROM entry JOIN bin ON bin.id = entry.bin "
            "WHERE entry.room = ?1 AND act = 'rename' AND struck_at IS NULL",
            (self.room.id,),
        )
        if not rows:
            return {}
        present = await self.db.rows("SELECT key FROM bin WHERE room = ?", (self.room.id,))
        taken = {row["key"] for row in present}
        before = {row["before"].casefold(): Bin(id=row["id"], name=row["name"]) for row in rows}
        return {name: bin for name, bin in before.items() if name not in taken}

    async def bin(self, name: str) -> Bin | None:
        """The bin of that name, or once of that name, in any case, as `words.name` lets it in."""

        async def ask() -> Bin | None:
            key = words.name(name).casefold()
            row = await self.db.row(
                "SELECT * FROM bin WHERE room = ? AND key = ?", (self.room.id, key)
            )
            if row:
                return Bin(id=row["id"], name=row["name"])
            return (await self.former_names()).get(key)

        return await self.known("bin entry:rename", ("bin", name), ask)

    async def places(self) -> list[str]:
        """Where bins were buried, as it was said."""

        async def ask() -> list[str]:
            rows = await self.db.rows(
                "SELECT DISTINCT place FROM entry WHERE room = ? AND act = 'bury' "
                "AND place IS NOT NULL AND struck_at IS NULL",
                (self.room.id,),
            )
            return [row["place"] for row in rows]

        return await self.known("entry:bury", "places", ask)

    async def members(self) -> Sequence[Member]:
        """Everybody known in the room."""

        async def ask() -> Sequence[Member]:
            rows = await self.db.rows(
                "SELECT * FROM member WHERE room = ? ORDER BY id", (self.room.id,)
            )
            return [
                Member(id=r["id"], user=r["user"], name=r["name"], present=bool(r["present"]))
                for r in rows
            ]

        return await self.known("member", "members", ask)

    async def member(self, name: str) -> Member | None:
        """The member of that name, in any case."""
        named = [one for one in await self.members() if one.name.casefold() == name.casefold()]
        return named[0] if named else None

    async def name_of(self, user: str) -> str | None:
        """The name shown of a user id."""
        return next((one.name for one in await self.members() if one.user == user), None)

    def known(
        self, of: str, key: Hashable, ask: Callable[[], Awaitable[Result]]
    ) -> Awaitable[Result]:
        """What `ask` finds in this book; see `Database.known`."""
        return self.db.known(self.room.id, of, key, ask)
