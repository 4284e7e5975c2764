"""Answers and corrections: what leans on an earlier message, a reminder or an offer."""

from collections.abc import Callable, Sequence

from handlers.reading.acts import Accept, Act, Amend, Decline, Done, Later, Offer, Retract, Set
from handlers.reading.arrangements.finished import finished, is_not_yet
from handlers.reading.arrangements.offered import (
    OF_ACCEPTING,
    OF_DECLINING,
    OF_OFFERING,
    accepted,
    bin_meant,
    declined,
    is_denied,
    offered,
)
from handlers.reading.arrangements.passing import CUES as OF_PASSING
from handlers.reading.arrangements.passing import passed_on
from handlers.reading.arrangements.putoff import is_moved_to, put_off_by, put_off_to
from handlers.reading.arrangements.settingtold import OF_SETTINGS, setting_told
from handlers.reading.corrections.amending import SORRY, amend
from handlers.reading.corrections.dayright import CUES as OF_DAYS
from handlers.reading.corrections.dayright import another_day
from handlers.reading.corrections.doerright import another_did, shared_with
from handlers.reading.corrections.leaning import adds, another_doer, more
from handlers.reading.corrections.lessened import OFF, lessened
from handlers.reading.corrections.numberright import another_number, with_figure
from handlers.reading.corrections.otherbin import (
    FOR_BIN,
    NA,
    REFUSALS,
    in_another_bin,
    it_be,
    meant_for,
)
from handlers.reading.corrections.readfor import read_for
from handlers.reading.corrections.restated import CUES, restated
from handlers.reading.corrections.striking import (
    CALLING_OFF,
    FORGETTING,
    MINE,
    OF_STRIKING,
    called_off,
    food_forgotten,
    mine_struck_out,
    struck_out,
)
from handlers.reading.deeds.flatly import CUES as OF_ANSWERS
from handlers.reading.deeds.flatly import flat_answer
from handlers.reading.deeds.spoons import is_of_spoons
from handlers.reading.doubts.asides import is_aside
from handlers.reading.message import Message
from handlers.reading.plaintext import SHORT, is_asking, plain_text, word_count
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.wording import DONE_BARE, DONE_OF_BIN, LATER, first_in

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
    return _first(message, _CERTAIN)


def _first(message: Message, readers: Sequence[_Reader]) -> tuple[Act, ...]:
    words = message.said
    for reader, cues, _ in readers:
        if words.isdisjoint(cues) and not message.context.after_bot:
            continue
        act = reader(message)
        if act is not None and not is_aside(act.act, message):
            return (act,)
    return ()


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
    found = found or in_another_bin(message) or it_be(message)
    return found or read_for(message) or another_day(message)


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
    if turned_to and _says_done(message.norms) and not message.amounts and not is_denied(message):
        return finished(message, "done, to the bot")
    return None


def _says_done(norms: Sequence[str]) -> bool:
    """Whether something is called done: "well done" only praises."""
    return any(
        norm == "done" and (i == 0 or norms[i - 1] != "well") for i, norm in enumerate(norms)
    )


_PUT_RIGHT = CUES | OFF | OF_DAYS | _RESTS | words_in("only credit who") | REFUSALS | NA
_CERTAIN: tuple[_Reader, ...] = (
    (setting_told, OF_SETTINGS, ""),
    (meant_for, FOR_BIN, ""),
    (_restated, _PUT_RIGHT, ""),
    (another_did, _PUT_RIGHT | words_in("that"), ""),
    (mine_struck_out, MINE, ""),
    (food_forgotten, FORGETTING, ""),
    (called_off, CALLING_OFF, ""),
    (passed_on, OF_PASSING, ""),
    (flat_answer, OF_ANSWERS, ""),
)
"""What is read by its form alone."""
_READERS: tuple[_Reader, ...] = (
    *_CERTAIN,
    (struck_out, OF_STRIKING, "retract"),
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
    (declined, OF_DECLINING, "decline"),
    (offered, OF_OFFERING, "offer"),
    (accepted, OF_ACCEPTING, "accept"),
)
