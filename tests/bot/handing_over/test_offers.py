"""A bin is offered, accepted, declined or withdrawn, in the words and signs that people use."""

import pytest

from tests.room import OWN, TalkingRoom


async def test_an_offer_is_pending_until_its_taker_accepts(room: TalkingRoom) -> None:
    [asked] = await room.says("handing the yard bin to Bram")
    assert asked.body.startswith("Bram, will you take the yard bin?")
    assert asked.mentions == ("@bram:test",)
    assert await room.keeper("yard") == "ines"
    [taken] = await room.says("I'll take it", who="bram")
    assert taken.body.startswith("Bram keeps the yard bin now.")
    assert taken.mentions == ("@ines:test",)
    assert await room.keeper("yard") == "bram"


@pytest.mark.parametrize("target", ["$offer", "re-$offer"], ids=["on the offer", "on our question"])
async def test_a_thumb_accepts(room: TalkingRoom, target: str) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    [taken] = await room.marks(target, "👍", who="bram")
    assert taken.body.startswith("Bram keeps the yard bin now.")


async def test_only_the_thumb_of_whom_it_is_offered_to_counts(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    for who in ("mei", "ines"):
        assert await room.marks("re-$offer", "👍", who=who) == []
    assert await room.keeper("yard") == "ines"


async def test_a_thumb_taken_back_gives_the_bin_back(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    await room.marks("re-$offer", "👍", who="bram", event="$thumb")
    await room.deletes("$thumb", who="bram")
    assert await room.keeper("yard") == "ines"
    await room.says("I'll take it", who="bram")
    assert await room.keeper("yard") == "bram"


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
    assert await room.keeper("yard") == "bram"


@pytest.mark.parametrize("no", ["not me", "not me, sorry", "I can't take it"])
async def test_who_declines_leaves_it_with_the_keeper(room: TalkingRoom, no: str) -> None:
    await room.says("handing the yard bin to Bram on Friday")
    [told] = await room.says(no, who="bram")
    assert "ines still keeps it" in told.body
    assert await room.keeper("yard") == "ines"


async def test_not_me_of_one_leaves_what_anybody_can_take(room: TalkingRoom) -> None:
    await room.says("can someone take the yard bin?")
    await room.says("not me", who="bram")
    await room.says("I'll take it", who="mei")
    assert await room.keeper("yard") == "mei"


async def test_who_has_just_taken_it_may_think_better_of_it(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram")
    await room.says("I'll take it", who="bram")
    await room.says("sorry, I can't take it after all", who="bram")
    assert await room.keeper("yard") == "ines"


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


async def test_an_offer_deleted_before_its_acceptance_is_none(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    await room.deletes("$offer")
    await room.says("I'll take it", who="bram")
    assert await room.keeper("yard") == "ines"


async def test_an_offer_deleted_long_after_takes_nothing_back(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    await room.says("I'll take it", who="bram")
    await room.waits(days=20)
    await room.deletes("$offer")
    assert await room.keeper("yard") == "bram"


async def test_an_offer_edited_to_another_is_that_others(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    await room.edits("$offer", "handing the yard bin to Mei")
    await room.says("I'll take the yard bin", who="bram")
    assert await room.keeper("yard") == "ines"
    await room.says("I'll take it", who="mei")
    assert await room.keeper("yard") == "mei"


async def test_somebody_who_never_spoke_is_offered_a_bin_and_takes_it(room: TalkingRoom) -> None:
    [asked] = await room.says("handing the yard bin to Nives on Friday")
    assert asked.body.startswith("Nives, will you take the yard bin Friday 6 March?")


async def test_the_first_name_is_name_enough(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Nives")
    await room.calls_itself("Nives Horvat", who="nives")
    [taken] = await room.says("I'll take it", who="nives")
    assert taken.body.startswith("Nives Horvat keeps the yard bin now.")
    [asked] = await room.says("handing the yard bin to Nives")
    assert asked.body == "Nives Horvat keeps the yard bin already."


async def test_a_kept_bin_is_taken_only_when_sure(room: TalkingRoom) -> None:
    [asked] = await room.says("I'll take the yard bin", who="bram")
    assert asked.body == (
        "Ines keeps the yard bin. Shall I write down that you keep it from now on?"
    )
    assert await room.keeper("yard") == "ines"
    await room.says("yes", who="bram")
    assert await room.keeper("yard") == "bram"


async def test_offers_outlive_a_restart(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram", event="$offer")
    again = room.restarted(room.db)
    await again.marks("re-$offer", "👍", who="bram")
    assert await again.keeper("yard") == "bram"


async def test_what_is_no_bin_of_ours_is_small_talk(room: TalkingRoom) -> None:
    assert await room.says("can someone take the recycling bin out?") == []
    assert await room.says("I'll take it") == []
    assert await room.says("not me!") == []
    assert OWN not in {entry.member for entry in await room.standing()}


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
    assert await room.keeper("yard") == "ines"


async def test_a_keepers_consent_leaves_the_offer_standing(room: TalkingRoom) -> None:
    await room.says("Bram could take the yard bin", who="mei")
    assert await room.says("fine by me") == []
    await room.says("fine by me", who="bram")
    assert await room.keeper("yard") == "bram"


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
    assert await room.keeper("yard") == "bram"


@pytest.mark.parametrize(("days", "taken_by"), [(0, "bram"), (2, "ines")])
async def test_a_bare_yes_days_after_the_offer_is_to_what_was_said_last(
    room: TalkingRoom, days: int, taken_by: str
) -> None:
    await room.says("handing the yard bin to Bram")
    await room.waits(days=days)
    await room.says("1 kg in the yard bin, Bram did you bring the lids?", who="mei")
    await room.says("yes", who="bram")
    assert await room.keeper("yard") == taken_by
    await room.says("I'll take it", who="bram")
    assert await room.keeper("yard") == "bram"


async def test_an_offer_from_a_month_on_changes_nothing_before(room: TalkingRoom) -> None:
    await room.says("I'd like somebody else to keep the yard bin from April")
    [told] = await room.says("I can have it", who="bram")
    assert told.body == "Bram takes the yard bin Wednesday 1 April; until then ines keeps it."
    assert await room.keeper("yard") == "ines"


@pytest.mark.parametrize("answer", ["yep, it's here", "it's arrived", "yep, got it"])
async def test_a_bin_that_was_brought_to_somebody_is_theirs_once_they_say_so(
    room: TalkingRoom, answer: str
) -> None:
    [asked] = await room.says("dropped the yard bin at Bram's")
    assert asked.body.startswith("Bram, will you take the yard bin?")
    assert await room.keeper("yard") == "ines"
    await room.says(answer, who="bram")
    assert await room.keeper("yard") == "bram"


async def test_a_bin_that_comes_before_its_day_is_asked_about(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram on Friday")
    await room.says("perfect", who="bram")
    [asked] = await room.says("it's in our porch", who="bram")
    assert asked.body == (
        "You are to have the yard bin Friday 6 March. "
        "Shall I write down that you keep it from now on?"
    )
    assert await room.keeper("yard") == "ines"
    await room.says("yes", who="bram")
    assert await room.keeper("yard") == "bram"


async def test_perfect_from_another_takes_no_bin(room: TalkingRoom) -> None:
    await room.says("can anyone take the yard bin?")
    await room.says("perfect", who="mei")
    assert await room.keeper("yard") == "ines"


async def test_who_has_a_bin_back_that_was_given_for_good_keeps_it(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram")
    await room.says("I'll take it", who="bram")
    await room.waits(days=2)
    [said] = await room.says("got it back")
    assert said.body.startswith("Ines keeps the yard bin now.")
    assert await room.keeper("yard") == "ines"


async def test_a_yes_right_behind_the_offer_takes_it_though_a_neighbour_asked_before(
    room: TalkingRoom,
) -> None:
    await room.says("how hot was your oven, Bram?", who="mei")
    [offer] = await room.says("handing the yard bin to Bram")
    assert offer.body.startswith("Bram, will you take the yard bin")
    [taken] = await room.says("yep happy to", who="bram")
    assert taken.body.startswith("Bram keeps the yard bin now.")
