"""The one door: a text and its context in, acts out."""

from collections.abc import Sequence

from handlers.reading.acts import Act, Ask, Context, Layer, Set, Unsure
from handlers.reading.amending import is_asking
from handlers.reading.completing import completed
from handlers.reading.eaters import is_eaten
from handlers.reading.jests import is_jest
from handlers.reading.message import Message, read_message
from handlers.reading.outlook import is_outlook
from handlers.reading.plainly import BY_FORM, plain_report, with_siblings
from handlers.reading.privacy import about_oneself
from handlers.reading.questions import asks
from handlers.reading.records import RECORD_KINDS, records
from handlers.reading.replies import REPLY_KINDS, certain, replies
from handlers.reading.scores import Scores, scores_of
from handlers.reading.slips import put_right
from handlers.reading.supplied import supplied
from handlers.reading.underway import is_under_way
from handlers.reading.unmeasured import asked_first


def read(text: str, context: Context) -> tuple[Act, ...]:
    """The acts that a message means, in the order said; small talk gives none."""
    return read_in(read_message(text, context))


def read_in(message: Message) -> tuple[Act, ...]:
    """The acts that a message means, once its words are read."""
    context = message.context
    if not message.words:
        return ()
    if context.to_bot and (found := about_oneself(message)):
        return found
    if context.after_bot and (leaning := replies(message)):
        return leaning
    if (meant := put_right(message)) is not None:
        message = read_message(meant, context)
    return told(message, scores_of(message))


def told(message: Message, scores: Scores) -> tuple[Act, ...]:
    """What the rules find and the scores believe, and what the scores are sure of besides."""
    context = message.context
    plain = plain_report(message)
    if plain and (acts := [act for act in records(message) if isinstance(act, plain)]):
        return tuple(completed(acts, message))
    if not (scores.any_may() or context.in_room or context.after_bot):
        return certain(message)
    sure = scores.sure()
    answer = [act for act in _replied(message, scores) if _believed(act, scores)]
    found: list[Act] = list(answer)
    if scores.any_may(RECORD_KINDS) and (not answer or not RECORD_KINDS.isdisjoint(sure)):
        told_of = records(message)
        found += with_siblings([act for act in told_of if _believed(act, scores)], told_of, message)
    if not answer or any(kind.startswith("ask ") for kind in sure):
        asked = asks(message, scores, told=bool(found))
        found += [act for act in asked if _believed(act, scores)]
    known = {kind_of(act) for act in found}
    unfound = [kind for kind in sure if kind not in known]
    if unfound:
        found += _supplied(unfound, found, message, scores)
    if any(kind_of(act) in RECORD_KINDS for act in found) and is_jest(message):
        found = [act for act in found if kind_of(act) not in RECORD_KINDS]
    if any(isinstance(act, Layer) for act in found) and (
        is_outlook(message) or is_under_way(message) or is_eaten(message)
    ):
        found = [act for act in found if not isinstance(act, Layer)]
    return asked_first(completed(found, message), message) if found else ()


def _supplied(
    kinds: Sequence[str], found: Sequence[Act], message: Message, scores: Scores
) -> list[Act]:
    """The acts that no rule found and the scores are sure of, beside those found."""
    beyond = any(_is_beyond(act, scores) for act in found) or (
        any(isinstance(act, Set) for act in found) and not is_asking(message)
    )
    beside = BESIDE_ANOTHER if len(message.sentences) > 1 else IN_ONE_BREATH
    out: list[Act] = []
    for kind in kinds:
        likelihood = scores.likelihood(kind)
        if beyond and kind.startswith("ask "):
            continue
        if not (found or out) or likelihood >= beside:
            out += [_doubted(act, likelihood) for act in supplied(kind, message, scores)]
    return out


BESIDE_ANOTHER, IN_ONE_BREATH = 0.5, 0.7
"""Likelihoods from which an act that no rule found is believed beside another act: where there is
a second sentence, and where there is but one."""
PLAINLY_TOLD = 0.7
"""Likelihood from which a record that no rule found is written down without asking."""


def _doubted(act: Act, likelihood: float) -> Act:
    """A record that is none too likely is asked about first."""
    if act.act in RECORD_KINDS and likelihood < PLAINLY_TOLD:
        return Unsure(guess=(act,), rules=("likely, but no more",))
    return act


def _replied(message: Message, scores: Scores) -> tuple[Act, ...]:
    """The reply that a message is; behind the bot's words it was looked for before the scores."""
    if message.context.after_bot:
        return ()
    return replies(message, scores.may) if scores.any_may(REPLY_KINDS) else certain(message)


def _believed(act: Act, scores: Scores) -> bool:
    """Whether what a rule found is told: some forms say so themselves, the rest by its score."""
    by_form = isinstance(act, Set) or not BY_FORM.isdisjoint(act.rules)
    return by_form or _is_beyond(act, scores) or scores.may(kind_of(act))


def _is_beyond(act: Act, scores: Scores) -> bool:
    """A question that no labelled message asks: only a room can be asked it."""
    return isinstance(act, Ask) and (act.place is not None or not scores.knows(kind_of(act)))


def kind_of(act: Act) -> str:
    """The act's name in the scores: a question has its topic with it."""
    if isinstance(act, Unsure):
        return kind_of(act.guess[0]) if act.guess else "unsure"
    return f"ask {act.topic}" if isinstance(act, Ask) else act.act
