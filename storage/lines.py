"""Rows of the book as what they stand for: entries and questions."""

import json
import sqlite3
from collections.abc import Mapping
from functools import lru_cache

from storage.moments import from_ms, to_day, to_hour
from storage.rows import Bin, Entry, Facts, Question

LINES = (
    "SELECT id, act, bin, bin_name, run, member_name, writer_name, on_day, said_at, event, cause, "
    "receiver_name, until_day, written_at, struck_at, struck_by, replaces, root, mass_kg, "
    "volume_l, materials, rich, starter_g, capacity_l, shared, place, signs, celsius, ph, "
    "words, hour, rule, days FROM line "
)
"""What is read of a line of the book, in the order in which `entry_of` takes it."""


def question_of(row: sqlite3.Row) -> Question:
    """The question that a row of its table is."""
    return Question(
        id=row["id"],
        event=row["event"],
        sender=row["sender"],
        guess=row["guess"],
        lacks=row["lacks"],
        asked_at=from_ms(row["asked_at"]),
    )


def entry_of(row: sqlite3.Row) -> Entry:
    """The entry that a row of `LINES` is."""
    # All at once and by place: by name it takes three times as long, and entries are read most.
    (
        id, act, bin, bin_name, run, member, writer, on, said_at, event, cause, receiver, until,
        written_at, struck_at, struck_by, replaces, root,
        mass_kg, volume_l, materials, rich, starter_g, capacity_l, shared, place, signs, celsius,
        ph, words_said, hour, rule, days,
    ) = row  # fmt: skip
    return Entry(
        id=id,
        act=act,
        bin=Bin(id=bin, name=bin_name) if bin else None,
        run=run,
        member=member,
        writer=writer,
        on=to_day(on),
        said_at=from_ms(said_at),
        event=event,
        cause=cause,
        facts=Facts(
            mass_kg=mass_kg,
            volume_l=volume_l,
            materials=_shares(materials) if materials else None,
            rich=rich,
            starter_g=starter_g,
            capacity_l=capacity_l,
            shared=None if shared is None else bool(shared),
            place=place,
            signs=tuple(json.loads(signs)) if signs else (),
            celsius=celsius,
            ph=ph,
            words=words_said,
            hour=to_hour(hour),
            rule=rule,
            days=days,
        ),
        receiver=receiver,
        until=to_day(until),
        written_at=from_ms(written_at),
        struck_at=from_ms(struck_at) if struck_at is not None else None,
        struck_by=struck_by,
        replaces=replaces,
        root=root,
    )


@lru_cache(maxsize=1000)
def _shares(materials: str) -> Mapping[str, float]:
    """A make-up, of which a group has few, read once."""
    shares: dict[str, float] = json.loads(materials)
    return shares
