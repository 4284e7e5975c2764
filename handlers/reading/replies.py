"""Answers and corrections: what leans on an earlier message, a reminder or an offer."""

from collections.abc import Callable
from datetime import date

from handlers.reading.acts import Accept, Act, Amend, Decline, Done, Later, Offer, Retract, Set
from handlers.reading.materials import makeup
from handlers.reading.amounts import Amount
from handlers.reading.days import Day
from handlers.reading.message import Message
from handlers.reading.names import BinRef
from handlers.reading.numbers import digits_value
from handlers.reading.scraps import amount_sum
from handlers.reading.settings import setting_of
from handlers.reading.told import is_sender
from handlers.reading.vocabulary import words_in
from handlers.reading.wording import (
    ACCEPTING,
    ACCEPTING_BARE,
    DECLINING,
    DECLINING_BARE,
    DONE_BARE,
    DONE_OF_BIN,
    LATER,
    OFFERING,
    PUTTING_RIGHT,
    RETRACTING,
    first_in,
)

_SORRY = words_in("sorry oops whoops correction wait actually typo soz meant mean perdon woops ooops oop "
                  "apologies edit er erm lo fix mistake ugh misread")  # fmt: skip
_SHORT = 16
"""Words in a correction or an answer; longer messages tell something new."""


def replies(message: Message) -> tuple[Act, ...]:
    """The acts of a message that answers or corrects; none if it stands on its own."""
    text = _text(message)
    for reader in _READERS:
        act = reader(message, text)
        if act is not None:
            return (act,)
    return ()


def _text(message: Message, *, days: bool = False) -> str:
    """The words with their stops, bin names as `qbin` and the bot's name left out.

    With `days`, a day is `qday`.
    """
    out: list[str] = []
    starts: dict[int, BinRef | Day] = {d.start: d for d in message.days} if days else {}
    starts |= {b.start: b for b in message.bins}
    i = 0
    while i < len(message.norms):
        ref = starts.get(i)
        if ref is not None:
            out.append("qbin" if isinstance(ref, BinRef) else "qday")
            i = ref.end
            continue
        if i not in message.bot and message.norms[i] not in ("@", "☺"):
            out.append(message.norms[i])
        i += 1
    return " ".join(out).strip(" ,.!:?-")


def _length(message: Message) -> int:
    return sum(1 for w in message.words if w.kind != "sign")


def _bin(message: Message) -> str | None:
    names = [b.name for b in message.bins if b.name is not None]
    return names[0] if names else None


def _coming(message: Message) -> date | None:
    """The day that lies ahead, where one is said."""
    for day in message.days:
        if not day.aside or message.norms[day.start - 1] == "from":
            return day.past if day.past >= message.today else day.future
    return None


def _retract(message: Message, text: str) -> Retract | None:
    if _length(message) > 2 * _SHORT or first_in(RETRACTING, text) is None:
        return None
    return Retract(rules=("strike it out",))


def _amend(message: Message, _: str) -> Amend | None:
    if _length(message) > 2 * _SHORT or _tells_more(message):
        return None
    rule = _correction(message)
    if rule is None:
        return None
    kept = _not_denied(message)
    amounts = [a for a in message.amounts if a.quantity in ("mass", "volume") and a.start in kept]
    amounts = amounts or _in_the_other_unit(message)
    mass, volume = amount_sum(amounts)
    bins = [b.name for b in message.bins if b.start in kept and b.name is not None]
    items = [i for i in message.items if i.start in kept and not i.absent and not i.generic]
    made = makeup(items) if items and rule != "an amount, not another" else None
    warm = [a.value for a in message.amounts if a.quantity == "celsius" and a.start in kept]
    acid = [a.value for a in message.amounts if a.quantity == "ph" and a.start in kept]
    days = [d.past for d in message.days if not d.aside and d.start in kept]
    people = [
        m.name
        for m in message.members
        if m.start in kept and not _addressed(message, m.start, m.end)
    ]
    act = Amend(
        mass_kg=mass,
        volume_l=volume,
        materials=None if made is None else made.shares,
        rich=None if made is None else made.rich,
        celsius=warm[0] if warm else None,
        ph=acid[0] if acid else None,
        bin=bins[0] if bins else None,
        member=people[0] if people else None,
        on=days[0] if days else None,
        rules=(rule,),
    )
    return None if act == Amend() else act


def _in_the_other_unit(message: Message) -> list[Amount]:
    """ "2.5 not 2 kg": the bare number has the unit of the one it corrects."""
    words = message.words
    for a in message.amounts:
        at = a.start - 2
        if a.quantity in ("mass", "volume") and at >= 0 and words[at + 1].norm == "not":
            right, wrong = digits_value(words[at].norm), digits_value(words[a.start].norm)
            if right is not None and wrong:
                return [a._replace(value=a.value * right / wrong)]
    return []


def _addressed(message: Message, start: int, end: int) -> bool:
    """A member who is only spoken to: "sorry Bev", "2 kg not 3, Alf"."""
    norms = message.norms
    before = norms[start - 1] if start else ""
    after = norms[end] if end < len(norms) else "."
    return before in ("sorry", ",", "@", "cheers", "ta", "thanks", "") or after in (",", ":", "!")


def _tells_more(message: Message) -> bool:
    """Whether the message tells of a new deed with its own words."""
    corrects = not {"meant", "mean", "said", "typo", "should"}.isdisjoint(message.norms)
    return (
        not corrects
        and any(
            c.sense == "did"
            and c.verb is not None
            and c.verb.verb.plain in ("add", "drain", "seal", "bury", "chuck")
            for c in message.clauses
        )
        and "actually" not in message.norms
        and "sorry" not in message.norms[:3]
    )


def _correction(message: Message) -> str | None:
    if first_in(PUTTING_RIGHT, _with_people(message, _text(message, days=True))) is not None:
        return "putting it right"
    norms = message.norms
    short = _length(message) <= _SHORT
    if norms[:1] == ["*"] and short and (message.amounts or message.bins):
        return "a starred correction"
    if not short:
        return None
    if _amount_not_another(message):
        return "an amount, not another"
    sorry = any(w in _SORRY for w in norms[:3])
    if sorry and "not" in norms and (message.bins or message.amounts or message.days):
        return "putting it right"
    fragment = all(c.verb is None for c in message.clauses) and not _asks(message)
    if sorry and (message.amounts or message.bins) and _length(message) <= 8 and fragment:
        return "putting it right"
    return None


def _asks(message: Message) -> bool:
    return any(c.sense == "ask" for c in message.clauses) or any(s.asked for s in message.sentences)


def _amount_not_another(message: Message) -> bool:
    """ "600 g not 900", "not 3 kg but 2", "2 lbs, not 3"."""
    norms = message.norms
    for i, norm in enumerate(norms):
        if norm != "not" or i + 1 >= len(norms):
            continue
        number = message.words[i + 1].kind == "number"
        if number and i and message.words[i - 1].kind == "number" and i <= 3:
            return True
        before = any(
            a.quantity in ("mass", "volume") and i - 3 <= a.end <= i for a in message.amounts
        )
        if number and (before or any(a.start > i + 2 for a in message.amounts)):
            return True
    return False


def _not_denied(message: Message) -> set[int]:
    """Indexes of the words that are not behind a "not", up to the next stop."""
    kept: set[int] = set()
    denied = False
    for i, norm in enumerate(message.norms):
        if norm in ("not", "isnt", "wasnt", "instead", "than", "rather"):
            denied = norm != "instead" or message.norms[i + 1 : i + 2] == ["of"]
        elif norm in (
            ",",
            ".",
            ";",
            "but",
            "its",
            "it",
            "\n",
            "!",
            "and",
            "(",
            "-",
            "—",
            "actually",
            "sorry",
        ):
            denied = False
        if not denied:
            kept.add(i)
    return kept


def _offer(message: Message, text: str) -> Offer | None:
    if not message.bins and not message.context.after_bot:
        return None
    match = first_in(OFFERING, _with_people(message, text))
    if match is None or _is_denied(message):
        return None
    others = [m.name for m in message.members if not m.owner and not is_sender(message, m.name)]
    return Offer(
        bin=_bin(message),
        to=others[0] if others else None,
        on=_coming(message),
        rules=("a bin is to pass on",),
    )


def _with_people(message: Message, text: str) -> str:
    """The text with members as `qmember`."""
    names = {" ".join(message.norms[m.start : m.end]) for m in message.members}
    words = [("qmember" if word in names else word) for word in text.split(" ")]
    return " ".join(words)


def _is_denied(message: Message) -> bool:
    """Whether the clause of the bin, or the only clause, is a denial or somebody's words."""
    at = message.bins[0].start if message.bins else 0
    return any(c.sense in ("not", "said") and c.start <= at < c.end for c in message.clauses)


def _accept(message: Message, text: str) -> Accept | None:
    if _length(message) > 2 * _SHORT or first_in(DECLINING, text) is not None:
        return None
    bare = message.context.after_bot and first_in(ACCEPTING_BARE, text) is not None
    if not bare and first_in(ACCEPTING, text) is None:
        return None
    return Accept(bin=_bin(message), on=_coming(message), rules=("yes to an offer or a turn",))


def _decline(message: Message, text: str) -> Decline | None:
    bare = message.context.after_bot and first_in(DECLINING_BARE, text) is not None
    if not bare and (_length(message) > 2 * _SHORT or first_in(DECLINING, text) is None):
        return None
    return Decline(bin=_bin(message), on=_coming(message), rules=("no to an offer or a turn",))


def _later(message: Message, text: str) -> Later | None:
    if _length(message) > 2 * _SHORT or first_in(LATER, text) is None:
        return None
    return Later(bin=_bin(message), days=_put_off_by(message), rules=("put off",))


def _put_off_by(message: Message) -> float | None:
    for day in message.days:
        if day.past > message.today or day.future > message.today:
            ahead = day.past if day.past > message.today else day.future
            if not (day.loose or day.past == day.future == message.today):
                return float((ahead - message.today).days)
    for amount in message.amounts:
        if amount.quantity == "days":
            return amount.value
    return None


def _done(message: Message, text: str) -> Done | None:
    if _asks(message):
        return None
    if first_in(DONE_BARE, _text(message, days=True).replace(" , ", " ")) is not None:
        return Done(bin=_bin(message), rules=("it is done",))
    turned_to = bool(message.bot) or message.context.after_bot
    if (
        message.bins
        and not message.amounts
        and _length(message) <= _SHORT
        and (first_in(DONE_OF_BIN, text) is not None)
    ):
        return Done(bin=_bin(message), rules=("a bin is done",))
    if turned_to and "done" in message.norms and not message.amounts and not _is_denied(message):
        return Done(bin=_bin(message), rules=("done, to the bot",))
    return None


def _set(message: Message, text: str) -> Set | None:
    found = setting_of(text, to_bot=bool(message.bot) or message.context.after_bot)
    return None if found is None else Set(what=found[0], value=found[1], rules=("a setting",))


_READERS: tuple[Callable[[Message, str], Act | None], ...] = (
    _set,
    _retract,
    _later,
    _amend,
    _done,
    _decline,
    _offer,
    _accept,
)
