"""What Matrix clients make of a photo with words beneath it, and of a member who is mentioned."""

from typing import Any

import pytest

from bot.mentions import shortened
from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    room = TalkingRoom(db)
    for who, shown in (("ines", "Ines"), ("bram", "Bram"), ("dev", "Devika Rao")):
        await room.calls_itself(shown, who=who)
    await room.says("opened the yard bin, 20 L, shared")
    return room


async def layers(room: TalkingRoom) -> list[tuple[str | None, float | None]]:
    entries = await room.standing()
    return [(entry.member, entry.facts.mass_kg) for entry in entries if entry.act == "layer"]


def photo(body: str, name: str | None = "IMG_3.jpg", kind: str = "m.image") -> dict[str, Any]:
    named = {} if name is None else {"filename": name}
    return {"msgtype": kind, "body": body, "url": "mxc://x/y"} | named


@pytest.mark.parametrize("kind", ["m.image", "m.video", "m.file"])
async def test_words_beneath_a_file_are_read(room: TalkingRoom, kind: str) -> None:
    assert await room.event("m.room.message", photo("added 2 kg of bread to yard", kind=kind))
    assert await layers(room) == [("Ines", 2.0)]


@pytest.mark.parametrize(
    ("body", "name"), [("added 2 kg to yard.jpg",) * 2, ("added 2 kg to yard.jpg", None)]
)
async def test_the_name_of_a_file_is_not_read(
    room: TalkingRoom, body: str, name: str | None
) -> None:
    assert not await room.event("m.room.message", photo(body, name))
    assert not await layers(room)


async def test_words_beneath_a_photo_are_changed_and_taken_away(room: TalkingRoom) -> None:
    await room.event("m.room.message", photo("added 2 kg of bread to yard"), event="$p")
    relation = {"m.relates_to": {"rel_type": "m.replace", "event_id": "$p"}}
    new = photo("added 3 kg of bread to yard")
    await room.event("m.room.message", new | {"m.new_content": new} | relation)
    assert await layers(room) == [("Ines", 3.0)]
    new = photo("IMG_3.jpg", None)
    [gone] = await room.event("m.room.message", new | {"m.new_content": new} | relation)
    assert gone.body.startswith("Struck out: 3 kg")
    assert not await layers(room)


@pytest.mark.parametrize(
    ("body", "member"),
    [
        ("@bram:test put 2 kg of apples in yard", "Bram"),
        ("[Bram](https://matrix.to/#/@bram:test) put 2 kg of apples in yard", "Bram"),
        ("[D](<https://matrix.to/#/%40dev%3Atest?via=test>) put 2 kg of apples in yard", None),
        ("https://matrix.to/#/@dev:test put 2 kg of apples in yard", "Devika Rao"),
        ("put 2 kg of apples in yard, by @dev:test.", "Devika Rao"),
        ("@pailkeeper:test added 2 kg of apples to yard", "Ines"),
    ],
)
async def test_a_member_called_by_id_is_that_member(
    room: TalkingRoom, body: str, member: str | None
) -> None:
    assert await room.says(body)
    assert await layers(room) == [(member or "Devika Rao", 2.0)]


async def test_an_edit_may_call_a_member_by_id(room: TalkingRoom) -> None:
    await room.says("put 2 kg of apples in yard", event="$m")
    await room.edits("$m", "@dev:test put 2 kg of apples in yard")
    assert await layers(room) == [("Devika Rao", 2.0)]


async def test_a_rota_and_a_question_name_members_by_id(room: TalkingRoom) -> None:
    [answer] = await room.says("rota for the yard bin: @ines:test, @bram:test, weekly")
    keepers = [entry.member for entry in await room.standing() if entry.act == "join"]
    assert keepers == ["Ines", "Bram"]
    assert "I have not heard" not in answer.body
    await room.says("added 3 kg of peelings to yard", who="bram")
    [answer] = await room.says("what did @bram:test put in?")
    assert "3 kg" in answer.body


@pytest.mark.parametrize(
    ("body", "short", "ids"),
    [
        ("@bram:test.example, hi", "@bram, hi", ("@bram:test.example",)),
        ("@b.r=m:10.0.0.1:8448 hi", "@b.r=m hi", ("@b.r=m:10.0.0.1:8448",)),
        ("@mei:home did", "@mei did", ("@mei:home",)),
        ("@bram:put it in", "@bram:put it in", ()),
        ("write to mei@garden.example: yes", "write to mei@garden.example: yes", ()),
        ("ratio 1:100 @ 20 C", "ratio 1:100 @ 20 C", ()),
    ],
)
def test_ids_are_shortened(body: str, short: str, ids: tuple[str, ...]) -> None:
    assert shortened(body, "@ines:home") == (short, ids)


@pytest.mark.parametrize(
    ("body", "answered"),
    [
        ("Bram: can you put 3 kg of apples in yard?", False),
        ("hey @bram:test how full is the yard bin?", False),
        ("how full is the yard bin, Bram?", False),
        ("what did Bram put in?", True),
        ("Bram's scraps, can they go in?", True),
        ("Bram put 2 kg of apples in yard, how much starter?", True),
        ("Bram: the dog drank the liquid, what do we do?", True),
    ],
)
async def test_what_a_neighbour_who_is_mentioned_is_asked_is_left_to_them(
    room: TalkingRoom, body: str, answered: bool
) -> None:
    mentions = {"m.mentions": {"user_ids": ["@bram:test"]}}
    said = {"msgtype": "m.text", "body": body} | mentions
    assert bool(await room.event("m.room.message", said)) is answered
    assert bool(await room.event("m.room.message", said | {"m.mentions": {}}))


async def test_who_is_not_in_the_room_is_kept_by_name(room: TalkingRoom) -> None:
    [answer] = await room.says("Yusra put 2 kg of apples in yard")
    assert "by Yusra" in answer.body
    assert await layers(room) == [("Yusra", 2.0)]


async def test_a_name_shown_no_more_is_known_by_the_account(room: TalkingRoom) -> None:
    await room.calls_itself("Bramble", who="bram")
    await room.says("Bram put 2 kg of apples in yard")
    assert await layers(room) == [("Bramble", 2.0)]


@pytest.mark.parametrize(
    ("body", "formatted", "kg"),
    [
        ("added 2 kg 3 kg to yard", "added <del>2 kg</del> 3 kg to yard", 3.0),
        ("added 2 kg 2.5 kg to yard", "added <s>2 kg</s> <b>2.5 kg</b> to yard", 2.5),
        ("added 2 kg to yard", "added <strong>2 kg</strong> to yard", 2.0),
        ("added 2 kg to yard", "<strike>nothing</strike> added 2 kg to yard", 2.0),
    ],
)
async def test_what_only_the_html_strikes_through_is_not_read(
    room: TalkingRoom, body: str, formatted: str, kg: float
) -> None:
    said = {"msgtype": "m.text", "body": body, "format": "org.matrix.custom.html"}
    await room.event("m.room.message", said | {"formatted_body": formatted})
    assert await layers(room) == [("Ines", kg)]


async def test_the_words_of_a_link_are_not_read(room: TalkingRoom) -> None:
    body = "https://example.org/added-2-kg-to-the-yard-bin"
    assert not await room.event("m.room.message", {"msgtype": "m.text", "body": body})
    assert not await layers(room)


LETTER = "It was a lovely evening and we walked along the river for an hour. " * 60


@pytest.mark.parametrize(
    ("end", "owned_up"),
    [("Oh and I added 6 kg of peelings to the yard bin.", True), ("See you all on Sunday!", False)],
)
async def test_what_stands_behind_a_long_letter_is_owned_up_to(
    room: TalkingRoom, end: str, owned_up: bool
) -> None:
    answers = await room.says(LETTER + end)
    assert [answer.body.startswith("That message is longer") for answer in answers] == (
        [True] * owned_up
    )
    assert not await layers(room)
