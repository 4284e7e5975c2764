"""A communal bin passes from one keeper to the next, in the words that people use."""

import pytest

from storage.database import Database
from storage.rows import Message
from tests.room import OWN, TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines keeps the yard bin, which everybody feeds; Bram and Mei have spoken."""
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 30 L, shared")
    await room.says("added 4 kg scraps, mostly meat, to the yard bin", who="bram")
    await room.says("put 1 kg of peelings in the yard bin", who="mei")
    await room.waits(minutes=1)
    return room


async def keeper(room: TalkingRoom, bin: str = "yard") -> str:
    told = (await room.says(f"who has the {bin} bin?", who="zoe"))[0]
    return told.body.split(": ")[1].split(".")[0]


def words(messages: list[Message]) -> str:
    return "\n".join(message.body for message in messages)


async def test_an_offer_is_pending_until_its_taker_accepts(room: TalkingRoom) -> None:
    [asked] = await room.says("handing the yard bin to Bram")
    assert asked.body.startswith("Bram, will you take the yard bin?")
    assert asked.mentions == ("@bram:test",)
    assert await keeper(room) == "ines"
    [taken] = await room.says("I'll take it", who="bram")
    assert taken.body.startswith("Bram keeps the yard bin now.")
    assert taken.mentions == ("@ines:test",)
    assert await keeper(room) == "bram"


async def test_the_card_says_what_the_bin_is_and_what_comes_first(room: TalkingRoom) -> None:
    await room.says("green mould in the yard bin")
    await room.says("drained half a litre from the yard bin")
    await room.waits(days=3)
    await room.says("handing the yard bin to Bram")
    [taken] = await room.says("I'll take it", who="bram")
    assert taken.body.split("\n") == [
        "Bram keeps the yard bin now.",
        "The yard bin: filling, 2 layers, 5 kg, about 15 % full.",
        "Last drained Monday 2 March.",
        "First drain it (today), then seal it (Monday 16 March).",
        "Seen: green mould, Monday 2 March.",
        "Do not sniff mould or dusty bran: damp it, wear a mask and gloves, and leave it to others "
        "if your lungs or immunity are weak.",
        "Treat it as raw waste: gloves on, use it the same day, keep it off leaves you eat raw and "
        "away from bleach.",
        "It holds about 5 kg. A full bin can weigh more than 15 kg (33 lb): lift it in pairs or on "
        "a trolley.",
        "Reply with what you find, such as “lid cracked, about 6 kg”, and I keep it.",
    ]


async def test_what_the_taker_finds_is_kept_beside_the_book(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram")
    await room.says("I'll take it", who="bram", event="$taken")
    [noted] = await room.says("lid cracked, it's about 8 kg", who="bram", replies_to="re-$taken")
    assert "You found 8 kg; by the book there is about 5 kg. Both are kept." in noted.body
    [note] = [entry for entry in await room.standing() if entry.act == "note"]
    assert (note.facts.words, note.facts.mass_kg) == ("lid cracked, it's about 8 kg", 8.0)
    assert [e.facts.mass_kg for e in await room.standing() if e.act == "layer"] == [4.0, 1.0]
    await room.says("handing the yard bin to Mei", who="bram")
    assert "Seen: “lid cracked, it's about 8 kg”, today." in words(
        await room.says("I'll take it", who="mei")
    )


@pytest.mark.parametrize(
    "answer", ["thanks, will do", "added 2 kg scraps", "how full is it?", "brilliant, ta"]
)
async def test_an_answer_to_the_card_that_tells_nothing_of_the_bin_is_no_note(
    room: TalkingRoom, answer: str
) -> None:
    await room.says("handing the yard bin to Bram")
    await room.says("I'll take it", who="bram", event="$taken")
    await room.says(answer, who="bram", replies_to="re-$taken")
    assert not any(entry.act == "note" for entry in await room.standing())


@pytest.mark.parametrize("target", ["$offer", "re-$offer"], ids=["on the offer", "on our question"])
async def test_a_thumb_accepts(room: TalkingRoom, target: str) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    [taken] = await room.marks(target, "👍", who="bram")
    assert taken.body.startswith("Bram keeps the yard bin now.")


async def test_only_the_thumb_of_whom_it_is_offered_to_counts(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    for who in ("mei", "ines"):
        assert await room.marks("re-$offer", "👍", who=who) == []
    assert await keeper(room) == "ines"


async def test_a_thumb_taken_back_gives_the_bin_back(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    await room.marks("re-$offer", "👍", who="bram", event="$thumb")
    await room.deletes("$thumb", who="bram")
    assert await keeper(room) == "ines"
    await room.says("I'll take it", who="bram")
    assert await keeper(room) == "bram"


async def test_a_thumb_down_declines(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    [told] = await room.marks("re-$offer", "👎", who="bram")
    assert told.body == "Fair enough: ines still keeps it. Who else could take the yard bin?"
    assert not await room.says("I'll take it", who="bram")


async def test_the_first_of_two_who_accept_has_it_and_the_other_is_told(room: TalkingRoom) -> None:
    [asked] = await room.says("can someone take the yard bin?")
    assert asked.body == (
        "Who takes the yard bin? Say “I'll take it” or put 👍 here: the first has it."
    )
    await room.says("I'll take it", who="bram")
    [told] = await room.says("I'll take it!", who="mei")
    assert told.body == "Bram was first and has the yard bin."
    assert await keeper(room) == "bram"


@pytest.mark.parametrize("no", ["not me", "not me, sorry", "I can't take it"])
async def test_who_declines_leaves_it_with_the_keeper(room: TalkingRoom, no: str) -> None:
    await room.says("handing the yard bin to Bram on Friday")
    [told] = await room.says(no, who="bram")
    assert "ines still keeps it" in told.body
    assert await keeper(room) == "ines"


async def test_not_me_of_one_leaves_what_anybody_can_take(room: TalkingRoom) -> None:
    await room.says("can someone take the yard bin?")
    await room.says("not me", who="bram")
    await room.says("I'll take it", who="mei")
    assert await keeper(room) == "mei"


async def test_who_has_just_taken_it_may_think_better_of_it(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram")
    await room.says("I'll take it", who="bram")
    await room.says("sorry, I can't take it after all", who="bram")
    assert await keeper(room) == "ines"


@pytest.mark.parametrize(
    "words",
    ["I'll keep it after all", "never mind, I'm keeping the yard bin", "I withdraw my offer"],
)
async def test_an_offer_is_withdrawn(room: TalkingRoom, words: str) -> None:
    await room.says("handing the yard bin to Bram")
    [told] = await room.says(words)
    assert told.body == "The yard bin stays with ines."
    assert told.mentions == ("@bram:test",)
    assert await room.says("I'll take it", who="bram") == []


@pytest.mark.parametrize(
    ("who", "said", "answer"),
    [
        ("ines", "cancel the hand-over", "The yard bin stays with ines."),
        ("ines", "the handover of the yard bin is off", "The yard bin stays with ines."),
        ("ines", "I'd rather keep the yard bin", "The yard bin stays with ines."),
        ("ines", "I'm not handing over the yard bin after all", "The yard bin stays with ines."),
        ("ines", "sorry, I changed my mind, I keep the yard bin", "The yard bin stays with ines."),
        ("bram", "the hand-over is off", "Fair enough: ines still keeps it."),
    ],
)
async def test_a_hand_over_that_was_agreed_is_called_off(
    room: TalkingRoom, who: str, said: str, answer: str
) -> None:
    await room.says("handing the yard bin to Bram on Friday")
    await room.says("yes", who="bram")
    assert words(await room.says(said, who=who)).startswith(answer)
    await room.waits(days=8)
    assert await keeper(room) == "ines"


@pytest.mark.parametrize(
    ("said", "begins", "back"),
    [
        ("handing the yard bin to Bram from 12 to 20 March", "Thursday 12 March", "Friday 20"),
        ("can Bram mind the yard bin 12-20 March?", "Thursday 12 March", "Friday 20 March"),
        ("can Bram have the yard bin between 7 and 9 March?", "Saturday 7 March", "Monday 9"),
        ("handing the yard bin to Bram from Friday till Tuesday", "Friday 6 March", "Tuesday 10"),
        ("handing the yard bin to Bram on Friday for a week", "Friday 6 March", "Friday 13 March"),
        ("can Bram take the yard bin until Friday?", "", "Friday 6 March"),
    ],
)
async def test_a_bin_goes_on_the_first_day_of_a_loan(
    room: TalkingRoom, said: str, begins: str, back: str
) -> None:
    [told] = await room.says(said)
    assert f"will you take the yard bin{f' {begins}' if begins else ''}?" in told.body
    assert f"It is to go back to ines {back}" in told.body


async def lends(room: TalkingRoom, said: str = "Bram takes the yard bin till Sunday") -> None:
    await room.says(said)
    [told] = await room.says("I'll take it", who="bram", event="$taken")
    assert "It is to go back to ines" in told.body


async def test_a_bin_that_was_lent_goes_back_when_its_lender_takes_it(room: TalkingRoom) -> None:
    await lends(room)
    assert await keeper(room) == "bram"
    told = [message.body for message in await room.waits(days=6)]
    assert any("hand over the yard bin to ines" in body for body in told)
    assert await keeper(room) == "bram"
    await room.says("I'll take it")
    assert await keeper(room) == "ines"


async def test_a_bin_lent_from_a_day_on_goes_there_and_back(room: TalkingRoom) -> None:
    await lends(room, "handing the yard bin to Bram from Friday till Tuesday")
    assert await keeper(room) == "ines"
    await room.waits(days=5)
    assert await keeper(room) == "bram"
    await room.says("I'll take it")
    await room.waits(days=4)
    assert await keeper(room) == "ines"


async def test_a_bin_whose_lender_does_not_answer_stays_where_it_is(room: TalkingRoom) -> None:
    await lends(room)
    told = [message.body for message in await room.waits(days=12)]
    assert any("so it stays with bram" in body for body in told)
    assert await keeper(room) == "bram"


@pytest.mark.parametrize("how", ["not me after all", "deleted"])
@pytest.mark.parametrize(
    "said",
    ["Bram takes the yard bin till Sunday", "handing the yard bin to Bram from Friday for a week"],
)
async def test_a_loan_that_is_off_leaves_nothing_to_go_back(
    room: TalkingRoom, said: str, how: str
) -> None:
    await lends(room, said)
    if how == "deleted":
        await room.deletes("$taken", who="bram")
    else:
        await room.says(how, who="bram")
    await room.waits(days=14)
    assert await keeper(room) == "ines"
    assert "bram" not in [one.writer for one in await room.standing() if one.act == "offer"]


async def test_a_bin_handed_on_for_good_is_not_asked_back(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram")
    [told] = await room.says("I'll take it", who="bram")
    assert "go back" not in told.body
    assert "bram" not in [one.writer for one in await room.standing() if one.act == "offer"]


@pytest.mark.parametrize("agreed", [True, False])
@pytest.mark.parametrize(
    ("said", "asked"),
    [
        ("actually on Saturday", "Bram, will you take the yard bin Saturday 7 March?"),
        ("move the hand-over to Saturday", "Bram, will you take the yard bin Saturday 7 March?"),
        ("not Friday, Sunday", "Bram, will you take the yard bin Sunday 8 March?"),
        ("no, to Mei", "Mei, will you take the yard bin Friday 6 March?"),
        ("no, Mei on Saturday", "Mei, will you take the yard bin Saturday 7 March?"),
    ],
)
async def test_a_hand_over_gets_another_day_or_taker(
    room: TalkingRoom, said: str, asked: str, agreed: bool
) -> None:
    await room.says("handing the yard bin to Bram on Friday")
    if agreed:
        await room.says("yes", who="bram")
    [told] = await room.says(said)
    assert told.body.casefold().startswith(asked.casefold())
    assert "@bram:test" in told.mentions
    await room.waits(days=4)
    assert await keeper(room) == "ines"


async def test_an_offer_deleted_before_its_acceptance_is_none(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    await room.deletes("$offer")
    await room.says("I'll take it", who="bram")
    assert await keeper(room) == "ines"


async def test_an_offer_deleted_long_after_takes_nothing_back(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    await room.says("I'll take it", who="bram")
    await room.waits(days=20)
    await room.deletes("$offer")
    assert await keeper(room) == "bram"


async def test_an_offer_edited_to_another_is_that_others(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    await room.edits("$offer", "handing the yard bin to Mei")
    await room.says("I'll take the yard bin", who="bram")
    assert await keeper(room) == "ines"
    await room.says("I'll take it", who="mei")
    assert await keeper(room) == "mei"


async def test_somebody_who_never_spoke_is_offered_a_bin_and_takes_it(room: TalkingRoom) -> None:
    [asked] = await room.says("handing the yard bin to Nives on Friday")
    assert asked.body.startswith("Nives, will you take the yard bin Friday 6 March?")


async def joins(room: TalkingRoom, who: str, name: str, membership: str = "join") -> list[Message]:
    """A member event: somebody comes, goes or changes their name."""
    room.count += 1
    raw = {
        "type": "m.room.member",
        "event_id": f"$e{room.count}",
        "sender": f"@{who}:test",
        "state_key": f"@{who}:test",
        "origin_server_ts": int(room.now.timestamp() * 1000),
        "content": {"membership": membership, "displayname": name},
    }
    return [spoken.message for spoken in await room.playback.take(raw, room.now)]


async def test_the_first_name_is_name_enough(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Nives")
    await joins(room, "nives", "Nives Horvat")
    [taken] = await room.says("I'll take it", who="nives")
    assert taken.body.startswith("Nives Horvat keeps the yard bin now.")
    [asked] = await room.says("handing the yard bin to Nives")
    assert asked.body == "Nives Horvat keeps the yard bin already."


async def test_a_bin_agreed_for_a_day_passes_on_that_day(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram on Friday")
    [agreed] = await room.says("I'll take it", who="bram")
    assert agreed.body == "Bram takes the yard bin Friday 6 March; until then ines keeps it."
    told = await room.waits(days=3)
    assert await keeper(room) == "ines"
    told = await room.waits(days=1)
    card = next(message for message in told if message.kind == "notice")
    assert card.body.startswith("Today the yard bin goes from ines to bram.\nThe yard bin: filling")
    assert set(card.mentions) == {"@ines:test", "@bram:test"}
    assert await keeper(room) == "bram"
    assert all("goes from" not in m.body for m in await room.waits(days=2))


async def test_an_offer_is_said_again_and_lapses(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram on Friday", event="$offer")
    [still] = [m for m in await room.waits(days=3) if m.kind == "notice"]
    assert still.body.startswith("Bram, the yard bin is still on offer from ines, until tomorrow.")
    assert set(still.mentions) == {"@ines:test", "@bram:test"}
    [lapsed] = [m for m in await room.waits(days=2) if m.kind == "notice"]
    assert lapsed.body == (
        "Nobody took the yard bin, so it stays with ines. Hand it over anew if it is still to go."
    )
    assert lapsed.to_event == "$offer"
    late = await room.says("I'll take it", who="bram")
    assert "Shall I write down that you keep it" in words(late)
    assert await keeper(room) == "ines"
    assert not [m for m in await room.waits(days=5) if m.kind == "notice" and "took" in m.body]


async def test_an_offer_without_a_day_waits_for_three(room: TalkingRoom) -> None:
    await room.says("can anyone take the yard bin?")
    told = [m.body for m in await room.waits(days=3) if m.kind == "notice"]
    assert told == [
        "The yard bin is still on offer from ines, until today. Say “I'll take it” or put 👍 "
        "here; or “not me”."
    ]
    told = [m.body for m in await room.waits(days=1) if m.kind == "notice"]
    assert told[0].startswith("Nobody took the yard bin")


async def test_a_keeper_who_leaves_is_noticed_and_the_group_asked_once(room: TalkingRoom) -> None:
    [asked] = await joins(room, "ines", "ines", "leave")
    assert asked.body.startswith(
        "Ines has left the room, and nobody keeps the yard bin. Who takes it?"
    )
    assert await keeper(room) == "nobody, since ines left"
    assert not [m for m in await room.waits(days=9) if "left the room" in m.body]
    [taken] = await room.marks(asked.tx_id, "👍", who="mei")
    assert taken.body.startswith("Mei keeps the yard bin now.")


async def test_a_keeper_who_comes_back_has_the_bin_unless_it_was_taken(room: TalkingRoom) -> None:
    await joins(room, "ines", "ines", "leave")
    await joins(room, "ines", "ines")
    assert await keeper(room) == "ines"
    await joins(room, "ines", "ines", "leave")
    await room.says("I'll take the yard bin", who="bram")
    await joins(room, "ines", "ines")
    assert await keeper(room) == "bram"


async def test_at_night_nobody_is_asked(room: TalkingRoom) -> None:
    await room.waits(hours=4)
    assert await joins(room, "ines", "ines", "leave") == []
    told = await room.waits(hours=12)
    assert [m.body[:24] for m in told if m.kind == "notice"] == ["Ines has left the room, "]


async def test_a_keeper_who_goes_silent_past_a_due_is_asked_for(room: TalkingRoom) -> None:
    told = [m for m in await room.waits(days=14) if m.kind == "notice"]
    assert [m.body.split(".")[0] for m in told] == [
        "Ines, are you there? Nothing was heard of you since Monday 2 March, and it was time to "
        "drain the yard bin by Thursday 5 March"
    ]
    await room.marks(told[0].tx_id, "👍", who="mei")
    assert await keeper(room) == "mei"


async def test_a_keeper_who_is_away_is_not_silent(room: TalkingRoom) -> None:
    await room.says("I'm away till the 30th")
    told = [m for m in await room.waits(days=14) if m.kind == "notice"]
    assert told == []


async def test_a_kept_bin_is_taken_only_when_sure(room: TalkingRoom) -> None:
    [asked] = await room.says("I'll take the yard bin", who="bram")
    assert asked.body == (
        "Ines keeps the yard bin. Shall I write down that you keep it from now on?"
    )
    assert await keeper(room) == "ines"
    await room.says("yes", who="bram")
    assert await keeper(room) == "bram"


async def test_a_layer_of_another_is_theirs_and_the_dues_stay_the_keepers(
    room: TalkingRoom,
) -> None:
    layers = [entry for entry in await room.standing() if entry.act == "layer"]
    assert [entry.member for entry in layers] == ["bram", "mei"]
    digest = next(m for m in await room.waits(days=2) if m.kind == "digest")
    assert "drain the yard bin (ines)" in digest.body
    assert digest.mentions == ("@ines:test",)


async def test_offers_outlive_a_restart(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    again = room.restarted(room.db)
    await again.marks("re-$offer", "👍", who="bram")
    assert await keeper(again) == "bram"


async def test_what_is_no_bin_of_ours_is_small_talk(room: TalkingRoom) -> None:
    assert await room.says("can someone take the recycling bin out?") == []
    assert await room.says("I'll take it") == []
    assert await room.says("not me!") == []
    assert OWN not in {entry.member for entry in await room.standing()}


async def test_a_short_word_after_the_card_tells_what_the_bin_is_like(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram")
    await room.says("I'll take it", who="bram")
    [noted] = await room.says("lid's loose, about 8 kg", who="bram")
    assert "You found 8 kg" in noted.body


async def test_who_else_may_take_what_one_declined(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram on Friday")
    await room.says("not me", who="bram")
    [taken] = await room.says("I'll take it", who="mei")
    assert taken.body == "Mei takes the yard bin Friday 6 March; until then ines keeps it."


@pytest.mark.parametrize(
    "consent", ["fine by me", "works for me", "that's ok with me", "good plan"]
)
async def test_consent_to_another_takes_nothing(room: TalkingRoom, consent: str) -> None:
    await room.says("who wants the yard bin?")
    await room.says("Bram would be good at that", who="mei")
    assert await room.says(consent, who="zoe") == []
    assert await keeper(room) == "ines"


async def test_a_keepers_consent_leaves_the_offer_standing(room: TalkingRoom) -> None:
    await room.says("Bram could take the yard bin", who="mei")
    assert await room.says("fine by me") == []
    await room.says("fine by me", who="bram")
    assert await keeper(room) == "bram"


async def test_nobody_is_too_late_for_what_they_gave_away_or_was_not_offered_to_them(
    room: TalkingRoom,
) -> None:
    await room.says("handing the yard bin to Bram")
    await room.says("I'll take it", who="bram")
    assert await room.says("I'll take it") == []
    assert await room.says("I'll take it", who="mei") == []
    await room.says("handing the yard bin to Mei", who="bram")
    await room.says("no thanks", who="mei")
    assert await room.says("I'll take it", who="mei") == []


async def test_what_was_offered_since_is_asked_about(room: TalkingRoom) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("handing the yard bin to Bram")
    await room.says("who wants the shed bin?")
    [told] = await room.says("I'll take it", who="bram")
    assert told.body == "Which do you take: the yard bin or the shed bin?"


@pytest.mark.parametrize("words", ["I've accepted the yard bin", "just accepted the yard bin"])
async def test_a_bin_that_somebody_has_accepted_is_theirs(room: TalkingRoom, words: str) -> None:
    await room.says("handing the yard bin to Bram")
    await room.says(words, who="bram")
    assert await keeper(room) == "bram"


@pytest.mark.parametrize("words", ["handing the yard bin to Bram", "who wants the yard bin"])
async def test_a_bin_passes_on_no_day_that_there_is_not(room: TalkingRoom, words: str) -> None:
    [told] = await room.says(f"{words} on 31 February")
    assert told.body == "No calendar has that day. Say it again with the right one."


async def test_a_bin_that_was_handed_on_is_asked_after(room: TalkingRoom) -> None:
    [told] = await room.says("handed the yard bin to Bram yesterday")
    assert told.body.startswith("Bram, have you had the yard bin since yesterday?")
    await room.says("I'll take it", who="bram")
    assert await keeper(room) == "bram"


@pytest.mark.parametrize(("days", "taken_by"), [(0, "bram"), (2, "ines")])
async def test_a_bare_yes_days_after_the_offer_is_to_what_was_said_last(
    room: TalkingRoom, days: int, taken_by: str
) -> None:
    await room.says("handing the yard bin to Bram")
    await room.waits(days=days)
    await room.says("1 kg in the yard bin, Bram did you bring the lids?", who="mei")
    await room.says("yes", who="bram")
    assert await keeper(room) == taken_by
    await room.says("I'll take it", who="bram")
    assert await keeper(room) == "bram"
