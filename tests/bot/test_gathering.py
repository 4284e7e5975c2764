"""After an absence, or in a flood: every record is made, and the answers are told together."""

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from bot import gathering, inshort
from bot.turn import work_off
from storage import inbox, outbox, rooms
from storage.book import Book
from storage.database import Database
from storage.inbox import Arrival
from storage.rows import Message, Waiting

ROOM, OWN = "!yard:test", "@pailkeeper:test"
NOW = datetime(2026, 3, 2, 18, 0, tzinfo=UTC)


class Room:
    """A room whose events wait in the inbox until the bot works through them."""

    def __init__(self, db: Database) -> None:
        self.db = db
        self.count = 0

    async def come(self) -> None:
        async with self.db.transaction():
            await rooms.join(
                self.db, ROOM, NOW - timedelta(days=30), zone="Europe/Lisbon", units="metric"
            )

    async def hears(
        self, *bodies: str, ago: timedelta, who: str = "ines", to: str | None = None
    ) -> list[str]:
        """Messages a second apart, the first so long ago; their ids."""
        arrivals, events = [], []
        for number, body in enumerate(bodies):
            self.count += 1
            at = NOW - ago + timedelta(seconds=number)
            raw: dict[str, Any] = {
                "type": "m.room.message",
                "event_id": f"$e{self.count}",
                "sender": f"@{who}:test",
                "origin_server_ts": int(at.timestamp() * 1000),
                "content": {"msgtype": "m.text", "body": body},
            }
            if to:
                raw["content"] |= {"m.relates_to": {"m.in_reply_to": {"event_id": to}}}
            arrivals.append(Arrival(room=ROOM, raw=raw))
            events.append(f"$e{self.count}")
        await inbox.take_in(self.db, arrivals, None)
        return events

    async def works(self, at: datetime = NOW, *, paced: bool = False) -> None:
        while await work_off(self.db, now=lambda: at, own=OWN, paced=paced):
            pass

    async def sends(self) -> list[Waiting]:
        rows = await outbox.waiting(self.db)
        for row in rows:
            await outbox.sent(self.db, row.id, f"$of-{row.message.tx_id}", NOW)
        return rows

    async def masses(self) -> list[float | None]:
        room = await rooms.find(self.db, ROOM)
        assert room
        return [e.facts.mass_kg for e in await Book(self.db, room).entries() if not e.struck]


@pytest.fixture
async def room(db: Database) -> Room:
    room = Room(db)
    await room.come()
    return room


def layers(count: int) -> list[str]:
    return [f"added {number % 9 + 1} kg scraps to the shed bin" for number in range(count)]


async def test_old_news_is_recorded_and_told_in_one_message(room: Room) -> None:
    await room.hears(*layers(25), "what a lovely evening", ago=timedelta(hours=8))
    await room.works()
    [told] = await room.sends()
    head, line = told.message.body.split("\n")
    assert head.startswith("Many messages came at once")
    assert line.startswith("• ines: 25 layers, 118 kg in the shed bin: ")
    assert "9½ cups (about 580 g) of starter in all." in line
    assert await room.masses() == [number % 9 + 1 for number in range(25)]
    assert await room.sends() == []


async def test_a_record_of_long_ago_is_of_its_own_day(room: Room) -> None:
    await room.hears(*layers(5), ago=timedelta(days=3))
    await room.works()
    days = {row["on_day"] for row in await room.db.rows("SELECT on_day FROM entry")}
    assert days == {"2026-02-27"}


@pytest.mark.parametrize(
    ("count", "ago"), [(3, timedelta(hours=8)), (25, timedelta(minutes=5))], ids=["few", "fresh"]
)
async def test_few_or_fresh_ones_are_answered_one_by_one(
    room: Room, count: int, ago: timedelta
) -> None:
    events = await room.hears(*layers(count), ago=ago)
    await room.works()
    assert [row.message.to_event for row in await room.sends()] == events


async def test_a_flood_is_recorded_and_told_in_few_messages(room: Room) -> None:
    await room.hears(*layers(100), ago=timedelta(seconds=30), who="mallory")
    await room.hears("added 1 kg scraps to the yard bin", ago=timedelta(0), who="ines")
    await room.works()
    said = await room.sends()
    await room.works()
    said += await room.sends()
    assert len(await room.masses()) == 101
    assert [row.message.tx_id[:3] for row in said] == ["re-", "sum"]
    assert "yard bin" in said[0].message.body  # one member's flood holds up nobody else's answer


async def test_a_flood_in_one_room_holds_up_no_other(room: Room) -> None:
    async with room.db.transaction():
        await rooms.join(room.db, "!quiet:test", NOW, zone="Europe/Lisbon", units="metric")
    await room.hears(*layers(300), ago=timedelta(seconds=30), who="mallory")
    [event] = await room.hears("how full is the shed bin?", ago=timedelta(0))
    await room.db.write("UPDATE inbox SET room = '!quiet:test' WHERE event = ?", (event,))
    waiting = await inbox.waiting(room.db)
    assert event in [item.event for item in waiting[:2]]
    await room.works()
    made = await room.db.rows("SELECT event FROM entry ORDER BY id")
    assert [row["event"] for row in made] == [f"$e{number}" for number in range(1, 301)]


async def test_answers_that_cannot_be_sent_fast_enough_are_gathered(room: Room) -> None:
    for number in range(60):
        moment = timedelta(seconds=number)
        await room.hears(*layers(1), ago=-moment)
        await room.works(NOW + moment)
    first = await room.sends()
    await room.works()
    [rest] = await room.sends()
    assert len(first) == gathering.SLOW.seconds + gathering.UNSENT + 1
    assert f"• ines: {60 - len(first)} layers" in rest.message.body
    assert len(await room.masses()) == 60


async def test_what_asks_for_something_is_told_first_and_in_few_words(room: Room) -> None:
    known = await rooms.find(room.db, ROOM)
    assert known
    bodies = [*["Noted in the book."] * 12, "Which bin was it: shed or yard?", "x" * 500]
    async with room.db.transaction():
        for number, body in enumerate(bodies):
            message = Message(tx_id=f"re-${number}", kind="reply", body=body, to_event=f"${number}")
            await outbox.put(room.db, known.id, message, NOW, held_of="@ines:test")
    await room.works()
    [told] = await room.sends()
    lines = told.message.body.split("\n")
    assert lines[1] == "• Which bin was it: shed or yard?"
    assert all(len(line) < inshort.LONGEST + 50 for line in lines)


async def test_an_edit_among_old_news_is_told_as_it_stands(room: Room) -> None:
    [first, *_] = await room.hears(*layers(6), ago=timedelta(hours=8))
    edit = {
        "type": "m.room.message",
        "event_id": "$edit",
        "sender": "@ines:test",
        "origin_server_ts": int((NOW - timedelta(hours=7)).timestamp() * 1000),
        "content": {
            "msgtype": "m.text",
            "body": "* added 50 g scraps to the shed bin",
            "m.new_content": {"msgtype": "m.text", "body": "added 50 g scraps to the shed bin"},
            "m.relates_to": {"rel_type": "m.replace", "event_id": first},
        },
    }
    await inbox.take_in(room.db, [Arrival(room=ROOM, raw=edit)], None)
    await room.works()
    [told] = await room.sends()
    assert sorted(mass or 0 for mass in await room.masses()) == [0.05, 2, 3, 4, 5, 6]
    assert "6 layers, 20.1 kg in the shed bin" in told.message.body


async def test_what_is_held_back_outlives_a_crash(room: Room) -> None:
    await room.hears(*layers(120), ago=timedelta(hours=8))
    await work_off(room.db, now=lambda: NOW, own=OWN)  # a hundred at a time; then it is killed
    assert await room.sends() == []
    await room.works()
    [told] = await room.sends()
    assert "• ines: 120 layers" in told.message.body
    assert len(await room.masses()) == 120


async def test_one_who_never_stops_is_answered_ever_more_rarely(room: Room) -> None:
    """A message each second for three minutes, each worked through and answered as it comes."""
    said: list[Waiting] = []
    for second in range(180):
        moment = timedelta(seconds=second)
        await room.hears(*layers(1), ago=-moment, who="mallory")
        if second % 45 == 7:
            await room.hears("added 1 kg scraps to the yard bin", ago=-moment)
        await room.works(NOW + moment, paced=True)
        said += await room.sends()
    assert len(await room.masses()) == 184
    together = [row for row in said if row.message.tx_id.startswith("sum-")]
    assert len(said) - len(together) <= 3 * gathering.OF_MEMBER_A_MINUTE + 4
    assert 1 < len(together) <= 180 / gathering.TOGETHER_EVERY.seconds
    # What is still held back is told later, though nothing more comes.
    await room.works(NOW + timedelta(minutes=4), paced=True)
    await room.sends()
    assert await room.db.rows("SELECT 1 FROM outbox WHERE gathered = 0") == []


async def test_a_room_full_of_neighbours_is_answered_together_at_last(room: Room) -> None:
    said: list[Waiting] = []
    for second in range(90):
        moment = timedelta(seconds=second / 2)
        await room.hears(*layers(1), ago=-moment, who=f"neighbour{second % 12}")
        await room.works(NOW + moment, paced=True)
        said += await room.sends()
    assert len(await room.masses()) == 90
    single = [row for row in said if not row.message.tx_id.startswith("sum-")]
    assert len(single) == gathering.OF_ROOM_A_MINUTE


EYE = "got juice in my eye"


@pytest.mark.parametrize("ago", [timedelta(hours=8), timedelta(seconds=30)], ids=["old", "flood"])
async def test_first_aid_is_never_held_back(room: Room, ago: timedelta) -> None:
    [_, eye] = await room.hears("opened the shed bin, 200 L", EYE, ago=ago)
    [child] = await room.hears("my child drank some of the liquid!", ago=ago, who="bram")
    await room.hears(EYE, *layers(45), ago=ago)
    await room.works(paced=True)
    first, second, *_ = await room.sends()
    assert [row.message.to_event for row in (first, second)] == [eye, child]
    assert "Rinse" in first.message.body
    await room.works(paced=True)
    # What the room has just been told waits, and is told whole all the same.
    assert first.message.body in (await room.sends())[-1].message.body


async def test_first_aid_is_said_twice_to_two_who_ask_for_it(room: Room) -> None:
    [first] = await room.hears(EYE, ago=timedelta(seconds=20))
    [second] = await room.hears(EYE, ago=timedelta(0), who="bram")
    await room.works(paced=True)
    assert [row.message.to_event for row in await room.sends()] == [first, second]


async def test_first_aid_goes_out_before_what_waits(room: Room) -> None:
    await room.hears("opened the shed bin, 200 L", *layers(9), ago=timedelta(seconds=30))
    [eye] = await room.hears(EYE, ago=timedelta(0))
    await room.works()
    first, *rest = [row.message.to_event for row in await room.sends()]
    assert (first, len(rest)) == (eye, 10)


OPENED = ("opened the shed bin, 20 L", "opened the yard bin, 20 L")


async def test_what_is_asked_back_is_told_whole(room: Room) -> None:
    await room.hears(*OPENED, "added 700 g of leek", *layers(3), ago=timedelta(hours=8))
    await room.works()
    [told] = await room.sends()
    line = told.message.body.split("\n")[1]
    assert line.endswith("of starter on 700 g. Which bin: the shed bin or the yard bin?")


async def test_what_was_asked_back_and_answered_is_not_asked_again(room: Room) -> None:
    await room.hears(*OPENED, "added 700 g of leek", "shed", *layers(3), ago=timedelta(hours=8))
    await room.works()
    [told] = await room.sends()
    assert "Which bin" not in told.message.body
    assert "4 layers, 700 g, 1 kg, 2 kg and 3 kg in the shed bin" in told.message.body
    assert told.message.body.count("% full") == 1


async def test_an_answer_to_a_question_is_told_with_all_its_lines(room: Room) -> None:
    await room.hears(*OPENED, *layers(1), ago=timedelta(hours=8))
    await room.hears("what is due this week?", ago=timedelta(hours=7), who="bram")
    await room.hears(*layers(4), "totals by person", ago=timedelta(hours=6))
    await room.works()
    [told] = await room.sends()
    body = told.message.body
    assert "in 5 layers" in body
    assert "ines: 11 kg" in body
    assert "drain the shed bin" in body
    assert body.index("drain the shed bin") < body.index("5 layers, 1 kg, 1 kg,")


async def test_whoever_asks_much_leaves_room_for_the_others(room: Room) -> None:
    asked = [f"how much starter for {number} kg?" for number in range(1, 40)]
    await room.hears(*asked[:30], ago=timedelta(hours=8), who="mallory")
    await room.hears("how much starter for 3 L of peelings?", ago=timedelta(hours=7), who="bram")
    await room.hears(*asked[30:], ago=timedelta(hours=6), who="mallory")
    await room.works()
    [told] = await room.sends()
    lines = told.message.body.split("\n")
    assert lines[2].startswith("• bram: ")
    assert len(lines) == inshort.PIECES + 2
    assert lines[-1].startswith(f"… and {40 - inshort.PIECES} more answers to mallory.")


async def test_the_arithmetic_of_what_was_told_together_is_kept(room: Room) -> None:
    await room.hears(*OPENED, *layers(4), ago=timedelta(hours=8))
    await room.hears("how much starter for 3 kg of fish?", ago=timedelta(hours=7))
    await room.works()
    [told] = await room.sends()
    assert told.message.why
    assert "on 3 kg: " in told.message.why
    assert "on 4 kg in the shed bin.\n- 4 kg at" in told.message.why
    assert "kg/L" in told.message.why


async def test_a_clock_set_back_holds_up_nothing(room: Room) -> None:
    await room.hears(*layers(gathering.OF_MEMBER_A_MINUTE), ago=timedelta(0))
    await room.works()
    await room.sends()
    earlier = NOW - timedelta(hours=1)
    [event] = await room.hears("added 1 kg scraps to the shed bin", ago=timedelta(hours=1))
    await room.works(earlier, paced=True)
    assert [row.message.to_event for row in await room.sends()] == [event]


@pytest.mark.parametrize(
    ("said", "asks", "masses"),
    [
        (
            "no, 5 kg",
            "Your last record there is 3 kg in the shed bin. Shall I correct it to 5 kg?",
            5,
        ),
        ("delete", "Your last record there is 3 kg in the shed bin. Shall I strike it out?", None),
    ],
)
async def test_which_of_those_told_together_is_wrong_is_asked(
    room: Room, said: str, asks: str, masses: float | None
) -> None:
    await room.hears(*OPENED, *layers(3), ago=timedelta(hours=8))
    await room.hears("added 7 kg scraps to the yard bin", ago=timedelta(hours=7), who="bram")
    await room.hears(*["@pailkeeper help"] * 3, ago=timedelta(hours=6))
    await room.works()
    *_, told = await room.sends()
    await room.hears(said, ago=timedelta(0), to=f"$of-{told.message.tx_id}")
    await room.works()
    [asked] = await room.sends()
    assert asked.message.body == asks
    assert await room.masses() == [None, None, 1, 2, 3, 7]
    await room.hears("yes", ago=timedelta(0))
    await room.works()
    assert sum(mass or 0 for mass in await room.masses()) == 10 + (masses or 0)
