"""Answers and corrections: what leans on an earlier message, a reminder or an offer."""

from collections.abc import Callable, Sequence
from dataclasses import replace

from handlers.reading.acts import (
    Accept,
    Act,
    Amend,
    Decline,
    Done,
    Later,
    Layer,
    Offer,
    Retract,
    Set,
)
from handlers.reading.arrangements.craftsettings import craft_setting, measured_setting
from handlers.reading.arrangements.finished import finished, is_not_yet
from handlers.reading.arrangements.passing import CUES as OF_PASSING
from handlers.reading.arrangements.passing import coming, passed_on, taker
from handlers.reading.arrangements.putoff import is_moved_to, put_off_by, put_off_to
from handlers.reading.arrangements.reminderdays import CUES as OF_WEEKDAYS
from handlers.reading.arrangements.reminderdays import reminder_days
from handlers.reading.arrangements.sethours import CUES as OF_HOURS
from handlers.reading.arrangements.sethours import hours_set
from handlers.reading.arrangements.settings import setting_of
from handlers.reading.arrangements.turntaking import turns_set
from handlers.reading.arrangements.wishes import (
    LANGUAGES,
    MEASURES,
    asked_by_name,
    is_of_old,
    is_to_bot,
    pounds_of,
    set_by_call,
)
from handlers.reading.calendar.zones import zone_named
from handlers.reading.corrections.amending import SORRY, UNDONE, amend, retract
from handlers.reading.corrections.dayright import CUES as OF_DAYS
from handlers.reading.corrections.dayright import another_day
from handlers.reading.corrections.doerright import another_did, shared_with
from handlers.reading.corrections.leaning import (
    adds,
    another_doer,
    another_number,
    more,
    spoken_of,
    with_figure,
)
from handlers.reading.corrections.lessened import OFF, lessened
from handlers.reading.corrections.otherbin import FOR_BIN, REFUSALS, in_another_bin, meant_for
from handlers.reading.corrections.readfor import read_for
from handlers.reading.corrections.restated import CUES, restated
from handlers.reading.deeds.flatly import CUES as OF_ANSWERS
from handlers.reading.deeds.flatly import flat_answer
from handlers.reading.deeds.spoons import is_of_spoons
from handlers.reading.doubts.asides import is_aside
from handlers.reading.food.makeups import makeup
from handlers.reading.message import Message
from handlers.reading.plaintext import SHORT, is_asking, plain_text, with_people, word_count
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.wording import (
    ACCEPTING,
    ACCEPTING_BARE,
    DECLINING,
    DECLINING_BARE,
    DONE_BARE,
    DONE_OF_BIN,
    LATER,
    OFFERING,
    first_in,
)

REPLY_KINDS = frozenset(
    each.act for each in (Set, Retract, Later, Amend, Done, Decline, Offer, Accept)
)

_Reader = tuple[Callable[[Message], Act | None], frozenset[str], str]
"""Reads one kind of reply; with the words without one of which none of its patterns is found, and
the kind's name in the scores."""


def replies(message: Message, may: Callable[[str], bool] | None = None) -> tuple[Act, ...]:
    """The acts of a message that answers or corrects; none if it stands on its own.

    `may` says which kinds are believed: where none of those is found, no other is looked for.
    """
    if may is not None and not _first(message, [r for r in _READERS if not r[2] or may(r[2])]):
        return ()
    return _first(message, _READERS)


def certain(message: Message) -> tuple[Act, ...]:
    """What is a reply by its form alone: a setting, a figure put right, a bin named as passing, a
    flat answer.
    """
    return _first(message, _READERS[:5])


def _first(message: Message, readers: Sequence[_Reader]) -> tuple[Act, ...]:
    words = frozenset(message.norms)
    for reader, cues, _ in readers:
        if words.isdisjoint(cues) and not message.context.after_bot:
            continue
        act = reader(message)
        if act is not None and not is_aside(act.act, message):
            return (act,)
    return ()


def bin_meant(message: Message) -> str | None:
    """The first bin that the message names."""
    names = [b.name for b in message.bins if b.name is not None]
    return names[0] if names else None


def bin_passed(message: Message) -> str | None:
    """ "Sealed Maple and handed Cedar to Ruth": the bin behind the word of passing on."""
    for i, norm in enumerate(message.norms):
        behind = [b.name for b in message.bins if i < b.start <= i + 3] if norm in _PASSES else []
        if behind and behind[0] is not None:
            return behind[0]
    return bin_meant(message)


_PASSES = words_in(
    "pass passing passed hand handing handed give giving gave offer offering offered transfer "
    "transferring leaving turning"
)


def _retract(message: Message) -> Retract | None:
    act = retract(message, plain_text(message))
    if act is not None and message.has(_CHANGES) and not (message.items or message.bins):
        return replace(act, rules=(UNDONE,))
    return None if act is None else of_scraps(act, message)


_CHANGES = words_in("undo correction change edit")


def of_scraps(act: Retract, message: Message) -> Retract | None:
    """ "Scratch the bread": the record is called by what went in with it; None for "forget the
    fish" where the talk is on no fish, which is said of a supper too.
    """
    if not message.context.in_room:
        return act
    called = _called_by_scraps(act, message)
    if _FORGETTING.isdisjoint(message.norms) or message.bot:
        return called
    last = spoken_of(message)
    held = (last.materials or {}) if isinstance(last, Layer) else {}
    if called.materials:
        return called if not called.materials.keys().isdisjoint(held) else None
    return called if isinstance(last, Layer) or not message.items else None


def _called_by_scraps(act: Retract, message: Message) -> Retract:
    for item in message.items:
        led = item.start
        while led and message.norms[led - 1] in _LEADS:
            led -= 1
        made = makeup([item]) if 0 < led < item.start and not item.generic else None
        if made is not None and message.norms[led - 1] in _STRIKING:
            return replace(act, materials=made.shares)
    return act


_STRIKING = words_in(
    "scratch strike delete remove cancel erase drop undo scrap out unlog take leave pull cross rub "
    "knock forget ignore disregard"
)
_FORGETTING = words_in("forget ignore disregard")
_LEADS = words_in("the that my last layer of record entry about")


def _amend(message: Message) -> Amend | None:
    if adds(message):
        return None
    put_right = amend(message, plain_text(message))
    if put_right is not None:
        return with_figure(put_right, message)
    return another_number(message) or another_doer(message)


_RESTS = words_in("rest remainder other")


def _restated(message: Message) -> Amend | None:
    if adds(message) or is_of_spoons(message):
        return None
    if message.has(_RESTS) and (shared := shared_with(message)):
        return shared
    found = lessened(message) or restated(message)
    if found is None and message.bins:
        found = another_number(message)
    found = found or in_another_bin(message)
    return found or read_for(message) or another_did(message) or another_day(message)


def _offer(message: Message) -> Offer | None:
    if not message.bins and not message.context.after_bot:
        return None
    match = first_in(OFFERING, with_people(message, plain_text(message)))
    if match is None or _is_denied(message):
        return None
    return Offer(
        bin=bin_passed(message),
        to=taker(message),
        on=coming(message),
        rules=("a bin is to pass on",),
    )


def _is_denied(message: Message) -> bool:
    """Whether the clause of the bin, or the only clause, is a denial or somebody's words."""
    at = message.bins[0].start if message.bins else 0
    return any(c.sense in ("not", "said") and c.start <= at < c.end for c in message.clauses)


def _accept(message: Message) -> Accept | None:
    text = plain_text(message)
    if word_count(message) > 2 * SHORT or first_in(DECLINING, text) is not None:
        return None
    if any(message.norms[b.end : b.end + 1] == ["out"] for b in message.bins):
        return None  # "I can take the bins out"
    bare = message.context.after_bot and first_in(ACCEPTING_BARE, text) is not None
    takes = first_in(ACCEPTING, text) is not None
    if not (bare or takes):
        return None
    return Accept(
        bin=bin_meant(message),
        on=coming(message),
        bare="answer" if message.context.in_room and not takes else None,
        rules=("yes to an offer or a turn",),
    )


def is_consent(message: Message) -> bool:
    """ "Fine by me", "sounds good": behind others' words it takes only what is offered by name."""
    return _CONSENT.issuperset(message.norms)


_CONSENT = words_in(
    "fine ok okay good great grand perfect lovely brilliant works suits sounds happy glad cool no "
    "problem objection objections by with for me us that it this all yes yep yeah sure 's is am i "
    "we idea a plan thats either way too as well and so , . ! ☺ -"
)


def _decline(message: Message) -> Decline | None:
    text = plain_text(message)
    bare = message.context.after_bot and first_in(DECLINING_BARE, text) is not None
    bare = bare and not (message.amounts or message.items or message.signs or message.liquid())
    if not bare and (word_count(message) > 2 * SHORT or first_in(DECLINING, text) is None):
        return None
    return Decline(
        bin=bin_meant(message),
        on=coming(message, refused=True),
        rules=("no to an offer or a turn",),
    )


def _later(message: Message) -> Later | None:
    if alone := put_off_to(message):
        return alone
    if word_count(message) > 2 * SHORT:
        return None
    if first_in(LATER, plain_text(message)) is None and not is_moved_to(message):
        return None
    return Later(bin=bin_meant(message), days=put_off_by(message), rules=("put off",))


def _done(message: Message) -> Done | None:
    if is_asking(message) or is_not_yet(message):
        return None
    if first_in(DONE_BARE, plain_text(message, days=True).replace(" , ", " ")) is not None:
        return finished(message, "it is done")
    turned_to = bool(message.bot) or message.context.after_bot
    if (
        message.bins
        and not message.amounts
        and word_count(message) <= SHORT
        and (first_in(DONE_OF_BIN, plain_text(message)) is not None)
    ):
        return finished(message, "a bin is done")
    if turned_to and _says_done(message.norms) and not message.amounts and not _is_denied(message):
        return finished(message, "done, to the bot")
    return None


def _says_done(norms: Sequence[str]) -> bool:
    """Whether something is called done: "well done" only praises."""
    return any(
        norm == "done" and (i == 0 or norms[i - 1] != "well") for i, norm in enumerate(norms)
    )


def _measures(message: Message) -> bool:
    return any(a.quantity in MEASURES for a in message.amounts)


def setting_told(message: Message) -> Set | None:
    """What is to be set, by the form of its words alone."""
    if is_of_old(message):
        return None
    if _measures(message):
        by_measures = measured_setting(message)
        return (
            Set(what=by_measures[0], value=by_measures[1], rules=("a setting",))
            if by_measures
            else None
        )
    found = setting_of(plain_text(message), to_bot=is_to_bot(message)) or set_by_call(message)
    if found and found[0] in ("quiet before", "quiet after"):
        found = hours_set(message) or found  # both ends may be said
    if found == ("units", "pounds"):
        found = "units", pounds_of(message)
    found = found or craft_setting(message) or hours_set(message)
    found = found or zone_named(message) or turns_set(message)
    found = found or reminder_days(message) or asked_by_name(message)
    return None if found is None else Set(what=found[0], value=found[1], rules=("a setting",))


_READERS: tuple[_Reader, ...] = (
    (
        setting_told,
        words_in(
            "unit units metric imperial us american british kilos kilograms kg grams litres "
            "liters pounds lbs ounces oz pints quarts gallons zone timezone "
            "clock "
            "quiet silent night reminder reminders remind nagging habit dose dosing dosage doses "
            "spoon spoons weight dilution ferment fermenting fermentation planting soil "
            "calendar recipe nitrogen trench trenches rota roster rotation per "
            "keepers keeping keeps"
        )
        | OF_HOURS
        | OF_WEEKDAYS
        | LANGUAGES,
        "",
    ),
    (meant_for, FOR_BIN, ""),
    (_restated, CUES | OFF | OF_DAYS | _RESTS | words_in("only credit") | REFUSALS, ""),
    (passed_on, OF_PASSING, ""),
    (flat_answer, OF_ANSWERS, ""),
    (
        _retract,
        words_in(
            "scratch strike delete undo remove cancel disregard erase scrub withdraw void retract "
            "unlog discard nix borra drop ignore scrap forget bin take cross rub knock wipe chuck "
            "throw logged posted sent entered said counted reported wrote duplicate wrong mistake "
            "error notice wiped deleted removed cancelled struck double rubbish happened chat "
            "group "
            "room thread meant"
        ),
        "retract",
    ),
    (
        _later,
        words_in(
            "now snooze remind ask tell nudge ping prod poke bug nag chase try come later tomorrow "
            "tonight give need want postpone put push busy see sort leave today yet cant away "
            "weekend "
            "next time on in"
        ),
        "later",
    ),
    (more, frozenset(), ""),
    (
        _amend,
        words_in(
            "meant mean should shoulda shd make correction change correct amend fix update edit "
            "wrong "
            "typo actually really not * was is 's my more no nope nah"
        )
        | SORRY,
        "amend",
    ),
    (
        _done,
        words_in(
            "done sorted finished completed quedo did esta listo erledigt taken hecho tapos "
            "fertig ho "
            "feito ticked mission dusted dealt seen complete"
        ),
        "done",
    ),
    (
        _decline,
        words_in(
            "cant cannot wont couldnt unable able pass decline declining skip no nope nah sorry "
            "not "
            "miss somebody someone refuse thanks thank love like puedo posso kann possible havent"
        ),
        "decline",
    ),
    (
        _offer,
        words_in(
            "pass passing passed hand handing handed give giving gave offer offering offered "
            "transfer "
            "transferring leave leaving bring bringing send sending moving move drop dropping turn "
            "turning take have host mind keep look collect adopt babysit want grab fancy yours "
            "taking "
            "having getting get takes gets goes going anyone anybody someone somebody who up needs "
            "wants looking over for with like minding hosting"
        ),
        "offer",
    ),
    (
        _accept,
        words_in(
            "take have host mind keep do collect accept happy glad delighted pleased count ok okay "
            "fine yes mine dibs bagsy put ready free works good get grab adopt babysit love like "
            "look "
            "agree"
        ),
        "accept",
    ),
)
