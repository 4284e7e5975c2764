"""What one neighbour asked of another, and who said yes: their "done" is then of that bin.

All that is kept of it is the mark of the message that asked or promised: deed, bin and names.
"""

import json
from collections.abc import Iterator, Sequence
from dataclasses import asdict, dataclass, replace
from datetime import UTC, datetime, timedelta

from bot.heard import Said
from bot.spoken import bin_in_talk
from bot.talk import ASKS, NAMES, REMINDERS, TALK_GOES_ON, TALKS_BRAN, Talk
from handlers.answer import Turn
from handlers.doubtful.several import STAGES
from handlers.people import is_same
from handlers.planning.reminded import RECORDED
from handlers.reading.acts import Accept, Act, Ask, Bury, Done, Drain, Later, Seal, Unsure
from handlers.reading.arranged import Favour, Plan, Promise
from handlers.reading.arrangements.assenting import assents, briefly_done
from handlers.reading.plans import Reading
from handlers.sharing.favours import all_kept_by, kept_by
from handlers.sharing.promised import MOST_SINCE, PROMISES, STANDS, promise_in
from handlers.state import look_up, named
from storage import outbox, traces
from storage.traces import Trace

ANSWERED_WITHIN = timedelta(hours=12)
"""So long a yes may be to a favour that was asked."""
MOST_BETWEEN = 8
"""Messages that are looked back on for a favour."""

_OF_OTHER_THINGS = Favour()
"""A favour of other things than the bins."""

_Deed = Drain | Seal | Bury


@dataclass(frozen=True, slots=True)
class Taken:
    """A favour that somebody has taken on, and not done yet."""

    plan: Promise
    bin: str
    at: datetime
    deed_of_own: bool = False
    """It is the sender's own bin, and what they were going to do with it."""


async def asked_or_promised(
    acts: Sequence[Act | Plan], said: Said, reading: Reading, talk: Talk, turn: Turn
) -> tuple[list[Act | Plan], str | None]:
    """The acts, a promise among them with its bin; and the mark of a favour asked or promised."""
    favour = next((act for act in acts if isinstance(act, Favour)), None)
    if favour is not None:
        rest = [act for act in acts if act is not favour and not _is_reason(act, reading)]
        return rest, ASKS + await _written(favour, said, talk, turn)
    promise = next((act for act in acts if isinstance(act, Promise)), None)
    rest = [act for act in acts if act is not promise]
    if promise is None:
        says_yes = all(isinstance(act, Accept | Later) and act.bin is None for act in acts)
        oneself = (
            assents(said.body, reading.message) if says_yes and not talk.calls_us(said) else None
        )
        asked = None if oneself is None else await _asked_lately(said, talk, turn, oneself)
        if asked == _OF_OTHER_THINGS:
            return list(acts), PROMISES
        promise, rest = _to_do(asked, None) if asked else None, []
    elif promise.bin is None and promise.whose is None:
        asked = await _asked_lately(said, talk, turn, oneself=True)
        own = await _of_own_bin(promise, said, talk, turn)
        promise = _to_do(asked, promise.by) if asked else own
    else:
        promise = await _of_bin(promise, turn)
    if promise is None or promise.bin is None:
        return [act for act in acts if not isinstance(act, Promise)], None
    return [promise, *rest], _promised(promise)


def _is_reason(act: Act | Plan, reading: Reading) -> bool:
    """ "Blue is nearly full, Zoe can you seal it?": why it is asked, and no question to us."""
    asked = sum(sentence.asked for sentence in reading.message.sentences)
    return isinstance(act, Ask) and act.topic == "bin" and asked <= 1


def _promised(promise: Promise) -> str:
    """A promise as the mark of the message by which it was made."""
    return PROMISES + json.dumps(asdict(replace(promise, on=None, until=None)))


def _favour_in(one: Trace) -> Favour | None:
    """The favour that a message asked, by its mark; None where it asked nothing of the sort."""
    mark = one.mark or ""
    asks = mark.startswith(f"{ASKS}{{")
    return Favour(**json.loads(mark.removeprefix(ASKS))) if asks else None


def _to_do(favour: Favour, by: str | None) -> Promise:
    """What whoever says yes to a favour takes on."""
    return Promise(deed=favour.deed, bin=favour.bin, whose=favour.whose, by=by, cover=favour.cover)


async def _written(favour: Favour, said: Said, talk: Talk, turn: Turn) -> str:
    """A favour with its bin and keeper, as a mark; nothing where it is not known which bin."""
    whose = favour.whose or turn.sender
    bin = favour.bin or (await bin_in_talk(said, talk) if favour.is_it else None)
    bins = [one.name for one in await turn.book.bins()]
    bin = bin or (bins[0] if len(bins) == 1 else await kept_by(whose, turn))
    keeper = whose if favour.bin is None or favour.bin == await kept_by(whose, turn) else None
    return json.dumps(asdict(replace(favour, bin=bin, whose=keeper))) if bin else ""


async def _of_own_bin(promise: Promise, said: Said, talk: Talk, turn: Turn) -> Promise | None:
    """ "Sealing it tonight": of the bin that the talk is on, the one that the sender keeps, or the
    only one; None if of none.
    """
    bins = [bin.name for bin in await turn.book.bins()]
    bin = bins[0] if len(bins) == 1 else await bin_in_talk(said, talk)
    bin = bin or await kept_by(turn.sender, turn)
    return replace(promise, bin=bin) if promise.deed and bin else None


async def _of_bin(promise: Promise, turn: Turn) -> Promise:
    """A promise that says whose bin it is of, with that bin."""
    bin = promise.bin or (await kept_by(promise.whose, turn) if promise.whose else None)
    return replace(promise, bin=bin, by=promise.by or turn.sender)


async def _asked_lately(said: Said, talk: Talk, turn: Turn, oneself: bool) -> Favour | None:
    """The favour that was asked last, if the sender may say yes to it: whoever was asked, or who
    offers to do it `oneself`. One that is of no bin has none.
    """
    book = talk.book
    if said.replies_to:
        replied = await traces.trace(book.db, book.room.address, said.replies_to)
        before = [replied] if replied else []
    else:
        before = await traces.said_lately(book.db, book.room.address, talk.item.id, MOST_BETWEEN)
    of_else = False
    for one in before:
        mark = one.mark or ""
        if said.at - one.at > ANSWERED_WITHIN or mark.startswith(f"{PROMISES}{{"):
            return None
        of_else |= mark == PROMISES  # somebody has said yes to something else since
        if one.sender == said.sender or not mark.startswith(ASKS):
            continue
        if await _spoken_since(one, talk):
            return None
        favour = _favour_in(one)
        if favour is None:
            return _OF_OTHER_THINGS
        is_asked = favour.to is not None and is_same(favour.to, turn.sender)
        may = is_asked or (not of_else and (oneself or favour.to is None))
        return favour if may else None
    return None


async def _spoken_since(asked: Trace, talk: Talk) -> bool:
    """Whether we have said something since that was no answer to it: a yes may be to that."""
    latest = await outbox.latest(talk.book.db, talk.book.room.id)
    return latest is not None and latest[1] > asked.at and latest[0].to_event != asked.event


async def taken_by_mark(asked: Trace, turn: Turn) -> Promise | None:
    """What whoever puts a 👍 on a favour takes on, if it is theirs to take."""
    favour = _favour_in(asked)
    if favour is None:
        return None
    if favour.to is not None and not is_same(favour.to, turn.sender):
        return None
    promise = _to_do(favour, turn.sender)
    mark = _promised(promise)
    await traces.mark_anew(turn.book.db, turn.book.room.address, asked.event, mark)
    return promise


async def given_back(mark: Trace, turn: Turn) -> None:
    """Whoever takes their 👍 off a favour does not do it: it is asked for again, of anybody."""
    book = turn.book
    asked = await traces.trace(book.db, book.room.address, mark.about) if mark.about else None
    promise = promise_in(asked) if asked else None
    if asked is None or promise is None or promise.by is None:
        return
    if mark.sender and is_same(promise.by, await book.name_of(mark.sender) or ""):
        favour = Favour(
            deed=promise.deed, bin=promise.bin, whose=promise.whose, cover=promise.cover
        )
        again = ASKS + json.dumps(asdict(favour))
        await traces.mark_anew(book.db, book.room.address, asked.event, again)


async def fulfilled(
    acts: Sequence[Act | Plan], said: Said, reading: Reading, talk: Talk, turn: Turn
) -> tuple[list[Act | Plan], tuple[str, ...]]:
    """The acts, a deed on no bin that is named among them on the bin that its doer took on; and the
    bins that it may be of, where that is to be asked.
    """
    if not acts and (deed := briefly_done(reading.message)):
        done: list[Act | Plan] = [Done(what=deed)]
        found, bins = await fulfilled(done, said, reading, talk, turn)
        return ([], ()) if bins or found == done else (found, ())
    if turn.refers_to or not any(_may_be_of_favour(act) for act in acts):
        return list(acts), ()
    book = talk.book
    before = await traces.said_lately(book.db, book.room.address, talk.item.id, MOST_SINCE)
    marked = [one for one in before if one.mark not in (None, TALKS_BRAN)]
    marked = [one for one in marked if not (one.mark or "").startswith(NAMES)]
    own = next((one for one in marked if one.sender == said.sender), None)
    latest = await outbox.latest(book.db, book.room.id)
    reminded_at = (
        latest[1] if latest and latest[0].kind in REMINDERS else datetime.min.replace(tzinfo=UTC)
    )
    if own and own.mark == PROMISES and reminded_at < own.at >= said.at - TALK_GOES_ON:
        return [act for act in acts if not isinstance(act, Done) or act.volume_l], ()
    taken = await _taken_on(before, said, talk, turn)
    if not taken:
        return list(acts), ()
    bins = tuple(dict.fromkeys(one.bin for one in taken))
    reminded = reminded_at > taken[0].at and await all_kept_by(turn.sender, turn)
    if reminded and len(taken) == 1 and taken[0].deed_of_own:
        return [await _asked_of(taken[0], act, turn) for act in acts], ()
    if reminded or len(bins) > 1:
        return list(acts), bins
    return [await _on(taken[0], act, turn) if _may_be_of_favour(act) else act for act in acts], ()


def _may_be_of_favour(act: Act | Plan) -> bool:
    if isinstance(act, _Deed):
        return act.bin is None and act.each is None and act.member is None
    return isinstance(act, Done) and act.bin is None


async def _asked_of(taken: Taken, act: Act | Plan, turn: Turn) -> Act | Plan:
    """ "Done" behind a reminder of something else: whether it is what they were going to do."""
    done = await _on(taken, act, turn)
    asked = isinstance(act, Done) and isinstance(done, _Deed)
    return Unsure(guess=(done,)) if asked and isinstance(done, _Deed) else act


async def _on(taken: Taken, act: Act | Plan, turn: Turn) -> Act | Plan:
    """A deed, on the bin that was taken on, if it is what was promised and can be done there."""
    deed = taken.plan.deed
    if isinstance(act, Done):
        if deed is None or act.what not in (None, deed):
            return replace(act, bin=taken.bin) if act.what is None else act
        return (
            Drain(bin=taken.bin, volume_l=act.volume_l, on=act.on)
            if deed == "drain"
            else RECORDED[deed](bin=taken.bin, on=act.on)
        )
    if not isinstance(act, _Deed) or deed not in (None, act.act):
        return act
    state = await named(turn.book, taken.bin, turn.today)
    fits = state is not None and state.run.stage(turn.today) in STAGES[act.act]
    return replace(act, bin=taken.bin) if fits else act


async def _taken_on(before: Sequence[Trace], said: Said, talk: Talk, turn: Turn) -> list[Taken]:
    """What the sender took on and nobody has done since, the latest first."""
    book = talk.book
    found = []
    for one, promise in _promises(before, said, turn):
        bin = await book.bin(promise.bin or "")
        if bin is None or await book.is_withdrawn(one.event):
            continue
        own = is_same((await look_up(book, bin, turn.today)).keeper, turn.sender)
        if own and promise.deed is None:
            continue  # it is theirs anyway
        deeds = (promise.deed,) if promise.deed else tuple(RECORDED)
        since = [entry for entry in await book.history(bin) if entry.written_at > one.at]
        if not any(entry.act in deeds for entry in since):
            found.append(Taken(promise, bin.name, one.at, own))
    return found


def _promises(before: Sequence[Trace], said: Said, turn: Turn) -> Iterator[tuple[Trace, Promise]]:
    """What the sender promised of late; also what they alone were asked for just now."""
    answered = False
    for one in before:
        if said.at - one.at > STANDS:
            return
        mark = one.mark or ""
        answered = answered or one.sender == said.sender or mark.startswith(PROMISES)
        if promise := promise_in(one):
            is_own = one.sender == said.sender if promise.by is None else False
            if is_own or is_same(promise.by or "", turn.sender):
                yield one, promise
            continue
        favour = None if answered or said.at - one.at > TALK_GOES_ON else _favour_in(one)
        if favour and favour.to and is_same(favour.to, turn.sender):
            yield one, _to_do(favour, turn.sender)
