"""What is said of shared bins: read in the room, and never printed by the reading contract."""

from dataclasses import replace
from datetime import UTC, date, datetime
from zoneinfo import ZoneInfo

import pytest

from handlers.reading.acts import Ask, Set
from handlers.reading.arranged import Plan
from handlers.reading.arrangements.communal import (
    Bar,
    Communal,
    Condition,
    Handing,
    Joining,
    LabelWanted,
    Quitting,
    Rearranged,
    Refusing,
    Rehanded,
    Rename,
    Reserve,
    Retire,
    Rota,
    RotaOver,
    Story,
    Swap,
    SwapOff,
    Taking,
    WhenLast,
    WhoKept,
    WhoMay,
    WhoPut,
    WhoseTurn,
    Withdrawing,
)
from handlers.reading.context import Context
from handlers.reading.plans import plans
from handlers.reading.read import read
from tests.reading.corpus import FOLDER, messages

THURSDAY = Context(
    at=datetime(2026, 3, 5, 10, tzinfo=UTC),
    zone=ZoneInfo("Europe/Lisbon"),
    bins=("courtyard", "shed", "bin 3", "Gertie"),
    members=("Ines", "Bram", "Mei"),
    sender="Ines",
)
OFFERED = replace(THURSDAY, on_offer=True, after_bot=True)
TAKEN = replace(THURSDAY, took="shed")


def march(day: int) -> date:
    return date(2026, 3, day)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("handing the courtyard bin to Nives on Friday", ("courtyard", "Nives", march(6))),
        ("passing the shed bin on to Teodor", ("shed", "Teodor", None)),
        ("Can Nives take the shed bin on Sunday?", ("shed", "Nives", march(8))),
    ],
)
def test_a_bin_is_offered_to_somebody_unknown(
    said: str, meant: tuple[str, str, date | None]
) -> None:
    bin, to, on = meant
    assert plans(said, THURSDAY)[0] == (Handing(bin=bin, to=to, on=on),)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("rota for the shed bin: Ines, Bram and Mei, weekly", ("keep", 7, "shed", None)),
        ("draining rota for bin 3: Ines, Bram, Mei, every 3 days", ("drain", 3, "bin 3", None)),
        ("Ines, Bram and Mei take turns to drain the shed bin, a week each",
         ("drain", 7, "shed", None)),
        ("rota for carrying Gertie: Ines, Bram, Mei, fortnightly from Monday",
         ("carry", 14, "Gertie", march(9))),
        ("rota to drain the bins: Ines, Bram, Mei, every other day", ("drain", 2, None, None)),
    ],
)  # fmt: skip
def test_a_rota_is_read(said: str, meant: tuple[str, int, str | None, date | None]) -> None:
    duty, days, bin, start = meant
    wanted = Rota(
        members=("Ines", "Bram", "Mei"),
        days=days,
        duty=duty,  # type: ignore[arg-type]
        bin=bin,
        start=start,
    )
    assert plans(said, THURSDAY)[0] == (wanted,)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("let's all take turns with the shed bin, weekly, everybody",
         Rota(members=(), days=7, bin="shed")),
        ("rota for the shed bin: Ines, Nives, weekly",
         Rota(members=("Ines", "Nives"), days=7, bin="shed")),
        ("show the rota", WhoseTurn()),
        ("the rota for the shed bin?", WhoseTurn(bin="shed")),
        ("rota for rinsing the lids: Ines, Bram, weekly",
         Rota(members=("Ines", "Bram"), days=7, other="rinsing the lids")),
        ("rota for the bran: Ines, Bram, fortnightly",
         Rota(members=("Ines", "Bram"), days=14, other="the bran")),
        ("rota for looking after the shed bin: Ines, Bram, weekly",
         Rota(members=("Ines", "Bram"), days=7, bin="shed")),
        ("put me on the rota", Joining()),
        ("can I be in the rota as well?", Joining()),
        ("could I join the rota for bin 3?", Joining(bin="bin 3")),
        ("take me off the rota after this turn", Quitting(after_turn=True)),
        ("I'm away when mine comes up, can anyone swap?", Swap()),
        ("sorry, I'll be in Wales, can anyone swap my week?", Swap()),
        ("leave me out in April please",
         Quitting(on=date(2026, 4, 1), until=date(2026, 4, 30))),
        ("count me out for two weeks", Quitting(until=march(18))),
        ("no turns for me from 10 to 20 March", Quitting(on=march(10), until=march(20))),
        ("Bram is out of the rota next week",
         Quitting(member="Bram", on=march(9), until=march(15))),
        ("skip me this time", Swap()),
        ("can Mei and me swap?", Swap(to="Mei")),
        ("swap me with Bram", Swap(to="Bram")),
        ("add Mei to the rota for bin 3", Joining(member="Mei", bin="bin 3")),
        ("Bram is off the rota", Quitting(member="Bram")),
        ("take me off the rota for the shed bin please", Quitting(bin="shed")),
        ("take Greet off the rota, she's moved away", Quitting(member="Greet")),
        ("Bram has left, take him out of the rota", Quitting(member="Bram")),
        ("Bram has left the group, please take him off the rota", Quitting(member="Bram")),
        ("please remove Bram from the list of keepers", Quitting(member="Bram")),
        ("rota Ines, Bram, Zora weekly", Rota(members=("Ines", "Bram", "Zora"), days=7)),
        ("put Mei after Bram on the rota", Rearranged(member="Mei", place="after", other="Bram")),
        ("add Zora to the rota before Mei",
         Rearranged(member="Zora", place="before", other="Mei")),
        ("put Zora between Bram and Mei in the rota",
         Rearranged(member="Zora", place="after", other="Bram")),
        ("swap the rota so Mei goes before Bram",
         Rearranged(member="Mei", place="before", other="Bram")),
        ("could you move Bram to the end of the rota", Rearranged(member="Bram", place="last")),
        ("swap Bram and Mei on the rota", Rearranged(member="Bram", place="swapped", other="Mei")),
        ("Bram out, Zora in on the rota", Rearranged(member="Zora", place="instead", other="Bram")),
        ("make it an alphabetical rota", Rearranged(place="by name")),
        ("make the rota for bin 3 two weeks each", Rearranged(days=14, bin="bin 3")),
        ("ten days per keeper from now on", Rearranged(days=10)),
        ("keeping period: 3 weeks", Rearranged(days=21)),
        ("stop the rota", RotaOver()),
        ("make the rota fortnightly", Rearranged(days=14)),
        ("change the rota to every two weeks", Rearranged(days=14)),
        ("set the rota for bin 3 to weekly", Rearranged(days=7, bin="bin 3")),
        ("whose turn is it in June?", WhoseTurn(on=date(2026, 6, 1))),
        ("Bram and I swap", Swap(to="Bram", told=True)),
        ("I swapped with Bram", Swap(to="Bram", told=True)),
        ("I'll swap weeks with Bram", Swap(to="Bram", told=True)),
        ("I'll do Bram's week", Swap(to="Bram", told=True)),
        ("can you give my turn to Bram", Swap(to="Bram", told=True)),
        ("can anyone swap my week?", Swap()),
        ("call off the swap", SwapOff()),
        ("call the swap off", SwapOff()),
        ("please cancel the swap with Bram", SwapOff(to="Bram")),
        ("the swap with Bram is off, sorry", SwapOff(to="Bram")),
        ("let's forget about our swap of weeks", SwapOff()),
        ("we're not swapping after all", SwapOff()),
        ("no swap after all", SwapOff()),
        ("Can anyone swap with me on Friday?", Swap(on=march(6))),
        ("Bram, can you swap weeks with me?", Swap(to="Bram")),
        ("can Bram do my turn?", Swap(to="Bram")),
        ("swap my week with Mei please", Swap(to="Mei")),
        ("I can't do my turn", Swap()),
        ("rename Gertie to Kitchen", Rename(bin="Gertie", name="Kitchen")),
        ("rename 3 to Kitchen", Rename(bin="bin 3", name="Kitchen")),
        ("rename the shed bin to Rosemary", Rename(bin="shed", name="Rosemary")),
        ("call bin 3 the Green Man from now on", Rename(bin="bin 3", name="Green Man")),
        ("from today bin 3 is called Rosemary", Rename(bin="bin 3", name="Rosemary")),
        ("let's call the shed bin Rosemary", Rename(bin="shed", name="Rosemary")),
        ("can we change the shed bin's name to Rosemary?", Rename(bin="shed", name="Rosemary")),
        ("change the name of bin 3 to Rosemary", Rename(bin="bin 3", name="Rosemary")),
        (
            "swap the names of bin 3 and the shed bin",
            Rename(bin="bin 3", name="", other="shed"),
        ),
        ("please take the shed bin off the list", Retire(bin="shed", deleted=True)),
        ("remove bin 3 from the calendar", Retire(bin="bin 3", deleted=True)),
        ("remove the shed bin please, Bram took it", Retire(bin="shed", maybe=True)),
        ("Bram keeps the shed bin", Handing(bin="shed", to="Bram")),
        ("the shed bin is Bram's", Handing(bin="shed", to="Bram")),
        ("the keeper of bin 3 is Bram", Handing(bin="bin 3", to="Bram")),
        ("retire bin 3", Retire(bin="bin 3")),
        ("Gertie is out of use now", Retire(bin="Gertie")),
        ("can we have a label for the shed bin?", LabelWanted(bin="shed")),
        ("print a label for Gertie", LabelWanted(bin="Gertie")),
        ("labels for all our bins, please", LabelWanted()),
        ("the shed bin takes no meat or fish", Bar(bin="shed", kinds=("meat", "fish"))),
        ("bot, no bread in bin 3", Bar(bin="bin 3", kinds=("grain",))),
        ("the shed bin takes everything", Bar(bin="shed")),
        ("only moderators may rename bins", Reserve(what=("rename",), for_everybody=False)),
        ("only admins can change the settings", Reserve(what=("settings",), for_everybody=False)),
        ("bot, everybody may retire bins", Reserve(what=("retire",), for_everybody=True)),
        ("who may rename a bin?", WhoMay()),
        ("who put the chicken in?", WhoPut(kinds=("meat",), words="chicken")),
        ("who put bread in the shed bin last week?",
         WhoPut(kinds=("grain",), words="bread", bin="shed",
                first=date(2026, 2, 23), last=march(1))),
        ("who fed the shed bin last?", WhoPut(bin="shed")),
        ("who's fed the shed this week?",
         WhoPut(bin="shed", first=march(2), last=march(5))),
        ("what did I put in today?",
         WhoPut(member="Ines", first=march(5), last=march(5))),
        ("what all did I put in today?", WhoPut(member="Ines", first=march(5), last=march(5))),
        ("what I did put in today?", WhoPut(member="Ines", first=march(5), last=march(5))),
        ("what I have put today?", WhoPut(member="Ines", first=march(5), last=march(5))),
        ("did I put something today?", WhoPut(member="Ines", first=march(5), last=march(5))),
        ("wat did i put in 2day", WhoPut(member="Ines", first=march(5), last=march(5))),
        ("who put it in the shed yesterday?",
         WhoPut(bin="shed", first=march(4), last=march(4))),
        ("wah who put chicken in the shed bin?",
         WhoPut(kinds=("meat",), words="chicken", bin="shed")),
        ("what did Mei put in?", WhoPut(member="Mei")),
        ("what went into the shed yesterday?",
         WhoPut(bin="shed", first=march(4), last=march(4))),
        ("list what we put in today", WhoPut(first=march(5), last=march(5))),
        ("who kept it in March?", WhoKept(first=march(1), last=march(31))),
        ("who had the shed bin in December?",
         WhoKept(bin="shed", first=date(2025, 12, 1), last=date(2025, 12, 31))),
        ("who kept bin 3 before Bram?", WhoKept(bin="bin 3", before="Bram")),
        ("how much has each of us put in?", Ask(topic="totals", by="member")),
        ("what's my share of the shed bin?",
         Ask(topic="totals", by="member", bin="shed", member="Ines")),
        ("who has put in the most?", Ask(topic="totals", by="member")),
        ("the story of the shed bin", Story(bin="shed")),
        ("tell us the history of the last run of bin 3", Story(bin="bin 3", run=-1)),
        ("what happened to Gertie?", Story(bin="Gertie")),
        ("story of run 2 of the shed bin", Story(bin="shed", run=2)),
        ("I've got the shed bin now", Taking(bin="shed")),
        ("picked up the shed bin from Bram", Taking(bin="shed")),
        ("condition of the shed bin: lid cracked, tap drips",
         Condition(bin="shed", words="lid cracked, tap drips")),
    ],
)  # fmt: skip
def test_what_is_said_of_shared_bins_is_read(said: str, meant: Plan) -> None:
    assert plans(said, THURSDAY) == ((meant,), "") or plans(said, THURSDAY)[0] == (meant,)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("add me after Bram", Rearranged(member="Ines", place="after", other="Bram", maybe=True)),
        (
            "put Mei between me and Bram",
            Rearranged(member="Mei", place="after", other="Ines", maybe=True),
        ),
        ("make it three weeks each", Rearranged(days=21, maybe=True)),
    ],
)
def test_behind_our_words_a_rota_is_changed_in_few_words(said: str, meant: Plan) -> None:
    assert plans(said, replace(THURSDAY, after_bot=True))[0] == (meant,)
    assert plans(said, THURSDAY)[0] == ()


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("when's my turn?", Ask(topic="custody", what="turn", member="Ines")),
        ("is it Bram's turn?", Ask(topic="custody", what="turn", member="Bram")),
        (
            "am I on next week?",
            Ask(topic="custody", what="turn", member="Ines", on=march(9)),
        ),
        (
            "when do I have the shed bin next?",
            Ask(topic="custody", what="turn", member="Ines", bin="shed"),
        ),
        ("when do I hand it over?", Ask(topic="custody", what="hand over")),
        ("who do I pass bin 3 on to?", Ask(topic="custody", what="hand over", bin="bin 3")),
        ("when does it go back?", Ask(topic="custody", what="hand over")),
        ("when's my turn on the swings?", None),
        ("it's my turn to cook", None),
        ("when do I hand in the form?", None),
        ("when does the shop go back to normal?", None),
    ],
)
def test_a_members_own_turn_is_asked_for(said: str, meant: Ask | None) -> None:
    found, _ = plans(said, replace(THURSDAY, in_room=True))
    assert found == ((meant,) if meant else ())


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("I've got it now", Taking()),
        ("I can", Taking()),
        ("me!", Taking()),
        ("not me", Refusing()),
        ("sorry, I can't either", Refusing()),
        ("I'll keep it after all", Withdrawing()),
        ("never mind, I'm keeping the shed bin", Withdrawing(bin="shed")),
        ("perfect", Taking(by_name=True)),
        ("lovely, see you then", Taking(by_name=True)),
        ("it's arrived", Taking(here=True)),
        ("yep, it's in our porch", Taking(here=True)),
        ("the shed bin is here now", Taking(bin="shed", here=True)),
        ("got it back", Taking(again=True)),
        ("fetched it", Taking(again=True)),
        ("keeping it till Saturday", Rehanded(on=date(2026, 3, 7))),
        ("Bram's not back yet, keeping it till Saturday", Rehanded(on=date(2026, 3, 7))),
        (
            "yep, it's here. lid was loose, about 8 kg",
            Taking(here=True, found=Condition(words="lid was loose, about 8 kg", mass_kg=8.0)),
        ),
    ],
)
def test_bare_answers_count_while_something_is_on_offer(said: str, meant: Plan) -> None:
    assert plans(said, OFFERED)[0] == (meant,)
    if "bin" not in said:
        assert plans(said, THURSDAY)[0] == ()


@pytest.mark.parametrize(
    "said",
    [
        "the parcel has arrived",
        "it's in the oven",
        "perfect weather for it",
        "got the drill back",
        "I keep it in the fridge till Saturday",
    ],
)
def test_what_is_said_of_other_things_takes_nothing_on_offer(said: str) -> None:
    assert plans(said, OFFERED)[0] == ()


@pytest.mark.parametrize("said", ["it's here. added 2 kg of peelings to the shed"])
def test_a_record_beside_a_bin_that_came_is_left_to_the_record(said: str) -> None:
    found, rest = plans(said, OFFERED)
    assert found == (Taking(here=True),)
    assert rest.endswith("added 2 kg of peelings to the shed")


@pytest.mark.parametrize(
    "said", ["great, it's yours from Saturday", "take it over on Saturday then", "on Saturday then"]
)
def test_whoever_hands_on_a_bin_names_another_day(said: str) -> None:
    assert plans(said, replace(THURSDAY, on_handover=True))[0] == (Rehanded(on=date(2026, 3, 7)),)
    assert plans(said, THURSDAY)[0] == ()


@pytest.mark.parametrize(
    ("said", "kg", "fill"),
    [
        ("lid cracked, about 6 kg", 6.0, None),
        ("more like 9 kg", 9.0, None),
        ("the tap leaks and it's half full", None, 0.5),
        ("heavier than I thought!", None, None),
    ],
)
def test_the_taker_tells_what_a_bin_is_like(
    said: str, kg: float | None, fill: float | None
) -> None:
    assert plans(said, TAKEN)[0] == (Condition(words=said, bin="shed", mass_kg=kg, fill=fill),)


def test_whoever_has_handed_a_bin_on_tells_what_it_is_like() -> None:
    said = "handed the shed bin over to Bram last night, it's about half full and a bit whiffy"
    condition = Condition(words="it's about half full and a bit whiffy", bin="shed", fill=0.5)
    assert plans(said, THURSDAY) == ((condition,), said)
    assert plans("gave Bram the shed bin, it's raining now", THURSDAY)[0] == ()


@pytest.mark.parametrize(
    "said", ["added 2 kg of bread", "drained it", "how heavy is it?", "thanks"]
)
def test_a_record_or_a_question_of_the_taker_is_no_condition(said: str) -> None:
    assert plans(said, TAKEN)[0] == ()


@pytest.mark.parametrize(
    "said",
    [
        "rename the file to notes",
        "who put the kettle on?",
        "who put the bins out?",
        "who put the chicken in the oven?",
        "who had the drill in March?",
        "my share of the bill is 20",
        "what happened to the match?",
        "the story of my life",
        "everybody may take a seat",
        "only admins can change the wifi settings of the router",
        "I need a label for the jam",
        "print the labels please",
        "labels for all of us",
        "call the plumber from now on",
        "no milk in the fridge",
        "I've got it now, thanks",
        "not me!",
        "I'll keep it short",
        "condition of the road is bad",
        "can anyone swap my shift?",
        "don't forget the swap",
        "the swap shop is off",
        "forget the swap meet on Sunday",
        "I'm not swapping my car after all",
        "Bram, did you forget the swap?",
        "cleaning rota: Ines, Bram, weekly",
        "put the milk after the bread on the list",
        "take Bram off the guest list",
        "put Bram after Mei on the choir rota",
        "draft rota: Ines, Bram, weekly",
        "the rota for the shed bin used to be Ines, Bram",
        "two weeks per country is what she's allowed",
        "giving the dog to Teodor on Friday",
        "handing the keys of the shed bin to Teodor",
        "found the shed bin behind the bikes, what a mess in there",
    ],
)
def test_talk_with_the_same_words_is_left_alone(said: str) -> None:
    assert plans(said, THURSDAY)[0] == ()


def test_in_labelled_talk_nothing_is_found_that_is_not_there() -> None:
    """Of all messages to learn from only offers and a few such questions are of shared bins."""
    wrong = []
    for path in sorted(FOLDER.glob("*.jsonl")):
        for row in messages(path.name) if not path.name.startswith("kept") else ():
            context = replace(
                THURSDAY,
                at=datetime.fromisoformat(row["at"]),
                zone=ZoneInfo(row["zone"]),
                units=row["units"],
                bins=tuple(row["bins"]),
                members=tuple(row["members"]),
                sender=row.get("sender"),
            )
            found = plans(row["body"], context)[0]
            acts = {act["act"] for act in row["expect"]}
            wrong += [
                (row["body"], one)
                for one in found
                if isinstance(one, Communal)
                and not isinstance(one, WhoPut)
                and not (isinstance(one, Handing) and acts == {"offer"})
                and not (isinstance(one, WhoseTurn) and acts == {"ask"})
                and not (isinstance(one, WhenLast) and row["body"].startswith("who drained"))
                and not (isinstance(one, WhenLast) and acts == {"ask"})
            ]
    assert wrong == []


@pytest.mark.parametrize(
    "said", ["rename the shed bin to Rosemary", "show the rota", "a label for the shed bin"]
)
def test_the_reading_contract_has_none_of_it(said: str) -> None:
    assert read(said, THURSDAY) == ()


@pytest.mark.parametrize("said", ["put me on the rota", "ten days per keeper", "stop the rota"])
def test_by_the_reading_contract_a_rota_is_a_setting(said: str) -> None:
    assert read(said, THURSDAY) == (Set(what="rota", value=said),)


def test_who_keeps_each_is_told_in_one_breath() -> None:
    told, _ = plans("the shed bin is mine and bin 3 is Bram's", THURSDAY)
    assert told == (Taking(bin="shed"), Handing(bin="bin 3", to="Bram"))


@pytest.mark.parametrize(
    "said",
    [
        "does Bram keep the shed bin?",
        "Bram keeps the shed bin clean",
        "Bram keeps filling the shed bin",
        "the shed bin is Bram's favourite",
        "the shed bin is mine",
        "take the shed bin off the shelf",
        "please take the lid off the shed bin",
        "let's call the shed bin men",
    ],
)
def test_what_only_sounds_like_it_hands_on_no_bin(said: str) -> None:
    told, _ = plans(said, THURSDAY)
    assert not any(isinstance(plan, Handing | Rename | Retire) for plan in told)
