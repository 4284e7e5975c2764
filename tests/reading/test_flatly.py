"""Answers in so many words, which hold whatever their score, and neighbours' talk like them."""

from datetime import date

import pytest

from handlers.reading.acts import Accept, Decline, Done, Later, Retract
from handlers.reading.deeds.flatly import FLATLY
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("It would be my pleasure", Accept),
        ("oh, that will be a real honour, Ruth", Accept),
        ("I've no objection to minding big blue", Accept),
        ("we have no quarrel with hosting the shed", Accept),
        ("I could just manage bin 3 until Sunday", Accept),
        ("we might manage the shed for a week", Accept),
        ("I can take it but only from Friday, not before", Accept),
        ("we will keep her from Monday onwards", Accept),
        ("I shall gladly receive big blue", Accept),
        ("I'll be big blue's keeper till August", Accept),
        ("we could be its foster mum for the month", Accept),
        ("I'll get bin 3 off you, Ruth", Accept),
        ("aye, I can relieve you of big blue", Accept),
        ("let me have bin 3 next month", Accept),
        ("lemme keep the shed till Sunday", Accept),
        ("hand big blue over", Accept),
        ("Thank you. Gladly accepted.", Accept),
        ("oga I no fit this week, exam", Decline),
        ("no sir, we've got three of them already, offer it to Ruth", Decline),
        ("fine, send bin 3 my way", Accept),
        ("ah well, go on then", Accept),
        ("okay, gwan then", Accept),
        ("can't manage this month, I'm away", Decline),
        ("sorry, we won't make it next week", Decline),
        ("alas, cannot", Decline),
        ("I can't, I'm abroad", Decline),
        ("no, I can't, no room", Decline),
        ("stand me down for this month", Decline),
        ("count us out next week", Decline),
        ("put me down as a firm no", Decline),
        ("please mark us as a pass for bin 3", Decline),
        ("sorry, not my turn", Decline),
        ("it's not my turn yet, Ruth", Decline),
        ("I'd rather not, thanks", Decline),
        ("prefer not, we are away", Decline),
        ("I must decline with regret", Decline),
        ("I respectfully decline the turn", Decline),
        ("no thanks, already got two buckets", Decline),
        ("I can't lah, give somebody else a go", Decline),
        ("haven't got a use for bin 3, pass it on to someone else", Decline),
        ("I said I'd host bin 3 but it turns out I can't", Decline),
        ("that was meant for my cousin, take it off the list", Retract),
        ("it was for the neighbours, please strike it", Retract),
        ("delete am, abeg", Retract),
        ("scratch dat one", Retract),
        ("tek back dat, mi mistake", Retract),
        ("take back that entry", Retract),
        ("I request that the last entry be expunged", Retract),
        ("could my earlier figure kindly be struck", Retract),
        ("qmbot, undo", Retract),
        ("bot, unlog that please", Retract),
        ("bot, forget what I said about the leeks", Retract),
        ("bot: please disregard what I sent", Retract),
        ("I heard you, give me till Friday", Later),
        ("yes yes, heard you, just give us a week", Later),
        ("I'll get round to it on Friday", Later),
        ("ok, we'll get round to bin 3 on Monday", Later),
        ("bot, in a bit", Later),
        ("not right now, bot", Later),
        ("bot, gie us two more days", Later),
        ("can't be bothered tonight, bot", Later),
        ("stop nagging, bot, I said tomorrow", Later),
        ("saw to it this morning, you can cross it off", Done),
        ("dealt with that already. So tick it off", Done),
        ("reminder heeded and carried out", Done),
        ("bin 3's done this morning, tell the machine", Done),
        ("shed all sorted, let the bot know", Done),
        ("yes bot, sorted that one", Done),
        ("bot, we handled that one", Done),
    ],
)
def test_an_answer_in_so_many_words_is_believed(text: str, kind: type) -> None:
    found = [act for act in acts(text) if type(act) is kind]
    assert len(found) == 1


@pytest.mark.parametrize(
    "text",
    [
        "it was a pleasure to meet your mum",
        "the pleasure garden opens on Monday",
        "I've no objection to taking the train",
        "we have no problem with keeping the shed keys",
        "I could manage a curry",
        "I can take her to the dentist on Friday",
        "I'd happily receive a postcard",
        "I'll be her babysitter for the night",
        "he could be the father of the bride",
        "I'll get the ladder off you tomorrow",
        "let me have the shed for the party",
        "lemme keep the change",
        "hand over the crisps",
        "send the photos my way",
        "go on then, one more pint",
        "go on then, tell us who won",
        "can't, lol",
        "I can't do this crossword",
        "I can't do this week's crossword",
        "can't make this round of golf",
        "I can't even",
        "stand me a drink this month",
        "count me out this round, I'm skint",
        "put me down for a pie",
        "mark it as a no ball",
        "it's not my round",
        "not my turn to cook",
        "not my week, first the boiler then the car",
        "I'd rather not say how old I am",
        "I'd rather not be in the photo",
        "he declined the honour of opening the fete",
        "I already have two buckets of paint",
        "that was meant for my sister",
        "this is for my mum",
        "that was for the play, so I took it off",
        "tek it back to the shop",
        "take back that library book",
        "my criminal record should be expunged, says the lawyer",
        "the police report must be withdrawn",
        "forget what I said about the neighbours",
        "undo the top button",
        "heard you singing, give me a copy",
        "give us a bell",
        "can't reach the shelf, ask someone else",
        "no room at the pub, try another",
        "I can't sing, ask another",
        "can't find the remote, ask somebody else",
        "we've no use for the piano, pass it on to someone else",
        "I'll get round to it one day",
        "we'll get to the shed on Friday",
        "in a bit",
        "not right now, love, I'm on the phone",
        "homework done, tell your mother",
        "can't be bothered tonight",
        "I dealt with the wasps, cross it off the wish list of horrors",
        "reminder to self, buy milk",
        "we sorted that one out with the council",
    ],
)
def test_talk_of_other_things_is_no_answer(text: str) -> None:
    assert not any(isinstance(act, Accept | Decline | Retract | Later | Done) for act in acts(text))


def test_the_bin_and_the_day_of_an_answer_are_read() -> None:
    assert acts("I'll get bin 3 off you on Friday") == (
        Accept(bin="bin 3", on=date(2026, 6, 19), rules=(FLATLY,)),
    )


def test_how_long_it_is_put_off_is_read() -> None:
    (found,) = acts("I heard you, give me till Friday")
    assert isinstance(found, Later)
    assert found.days == 2


def test_a_question_accepts_nothing() -> None:
    assert not any(isinstance(act, Accept) for act in acts("will it be my pleasure?"))


@pytest.mark.parametrize(
    "text", ["Thanks. Accepted.", "boss I no fit, I get work", "no ma'am I got two already"]
)
def test_in_a_room_some_answer_only_what_is_offered(text: str) -> None:
    assert acts(text, in_room=True) == ()
    assert [act.rules for act in acts(text, in_room=True, on_offer=True)] == [(FLATLY,)]
