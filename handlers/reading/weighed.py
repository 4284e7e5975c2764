"""What a message tells by its rules, and by the scores where its words may mean several things."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import (
    Act,
    Amend,
    Ask,
    Layer,
    Observe,
    Offer,
    Set,
    Topic,
    Unsure,
)
from handlers.reading.arrangements.passing import BY_NAME, RIVALS
from handlers.reading.bins.binroll import bins_told
from handlers.reading.bins.binscaught import all_caught
from handlers.reading.completion.askedfood import with_food_asked_of
from handlers.reading.completion.cameoff import with_what_came_off
from handlers.reading.completion.completing import completed
from handlers.reading.corrections.goneon import things_in
from handlers.reading.deeds.bywords import told_by_word
from handlers.reading.deeds.drainedround import drained_round
from handlers.reading.deeds.flatly import FLATLY
from handlers.reading.deeds.plainly import (
    BY_FORM,
    dated_report,
    led_by,
    plain_report,
    with_siblings,
)
from handlers.reading.deeds.restarts import is_begun_again
from handlers.reading.deeds.straight import straight
from handlers.reading.doubts.asides import is_aside
from handlers.reading.doubts.closedalready import put_in_another
from handlers.reading.doubts.denied import without_denied
from handlers.reading.doubts.doubted import doubted
from handlers.reading.doubts.rivals import without_rivals
from handlers.reading.doubts.unmeasured import asked_first
from handlers.reading.doubts.untold import without_untold
from handlers.reading.likely import if_likely, is_unlikely
from handlers.reading.message import Message
from handlers.reading.plaintext import is_asking
from handlers.reading.questions.askedfigures import filled
from handlers.reading.questions.asks import ASKED_KINDS, asking, asks, question_of
from handlers.reading.questions.beside import CUES as BESIDE
from handlers.reading.questions.beside import asked_beside
from handlers.reading.questions.outright import OUTRIGHT, asked_outright, is_whether
from handlers.reading.records import RECORD_KINDS, records
from handlers.reading.replies import REPLY_KINDS, certain, replies
from handlers.reading.scores import Scores, scores_of
from handlers.reading.supplied import supplied
from handlers.reading.words.vocabulary import words_in


def told(message: Message, surely: str | None = None) -> tuple[Act, ...]:
    """What the rules find and the scores believe, and what the scores are sure of besides.

    `surely` is a kind that is told whatever its score. A plain report needs no scores.
    """
    context = message.context
    if listed := bins_told(message):
        return listed
    if drained := drained_round(message):
        return tuple(without_untold(drained, message))
    if context.in_room and (layers := straight(message)):
        return asked_first(without_untold(layers, message), message)
    if context.in_room and (things := things_in(message)):
        return asked_first(without_untold([things], message), message)
    plain = plain_report(message)
    if plain and (acts := [act for act in records(message) if isinstance(act, plain)]):
        return tuple(acts if message.bins[0].name else completed(acts, message))
    scores = scores_of(message)
    if surely is not None:
        scores = scores.with_told(surely, frozenset())
    return _weighed(message, scores)


def _weighed(message: Message, scores: Scores) -> tuple[Act, ...]:
    """What is told in words that may mean several things."""
    context = message.context
    outright = _outright(message)
    by_word, rivals = _told_in_words(message)
    if by_word is not None:
        scores = scores.with_told(by_word, rivals if _is_brief(message) else frozenset())
    if outright is None and not (scores.any_may() or context.in_room or context.after_bot):
        return certain(message)
    replied = _replied(message, scores)
    answer = [act for act in replied if _believed(act, scores, message)] if replied else []
    sure = _sure_beside(answer, message, scores)
    found: list[Act] = list(answer)
    if scores.any_may(RECORD_KINDS) and (not answer or not RECORD_KINDS.isdisjoint(sure)):
        told_of = records(message)
        found += with_siblings(
            [act for act in told_of if _believed(act, scores, message)], told_of, message
        )
    if not answer or any(kind.startswith("ask ") for kind in sure):
        found += _asks(answer, found, message, scores)
    if sure:
        known = {kind_of(act) for act in found}
        unfound = [kind for kind in sure if kind not in known]
        more = _supplied(unfound, found, message, scores) if unfound else []
        found += [act for act in more if kind_of(act) not in known]
    found += _asked_beside(found, message)
    if outright is not None:
        found = _asked(outright, found, message, scores)
    found = without_rivals(without_untold(found, message), message)
    found = without_denied(completed(found, message), message) if found else []
    found = with_what_came_off(put_in_another(found, message), message)
    if message.asked and len(found) > 1:
        found = with_food_asked_of(found, message)
    acts = asked_first(doubted(found, message), message) if found else ()
    return tuple(all_caught(acts, message))


def _told_in_words(message: Message) -> tuple[str | None, frozenset[str]]:
    """The kind of record that its words tell, whatever its score, and the kinds they are not."""
    kind, rivals = told_by_word(message)
    if kind is None and is_begun_again(message):
        kind = "open"
    if kind is None and message.context.in_room:
        kind = led_by(message) or dated_report(message)
    return kind, rivals


def _asks(
    answer: Sequence[Act], found: Sequence[Act], message: Message, scores: Scores
) -> list[Act]:
    """The questions that are believed and that the answer has not taken up."""
    asked = asks(message, scores, told=bool(found))
    if not asked:
        return []
    answered = {kind_of(act) for act in answer}
    own = [act for act in asked if not is_aside(kind_of(act), message)]
    return [act for act in own if _believed(act, scores, message) and kind_of(act) not in answered]


def _is_brief(message: Message) -> bool:
    """Whether one thing is told: another sentence or amount may tell another record."""
    return len(message.sentences) == 1 and len(message.measured()) <= 1


def _outright(message: Message) -> Topic | None:
    """The topic that a message can only ask about, if it is not of another matter."""
    topic = asked_outright(message)
    return None if topic is None or is_aside(f"ask {topic}", message) else topic


def _asked(topic: Topic, found: Sequence[Act], message: Message, scores: Scores) -> list[Act]:
    """What was found, with what can only be asked in place of what one sentence was taken for."""
    kinds = [kind_of(act) for act in found]
    if topic == "batch" and "batch" in kinds:
        return list(found)
    if f"ask {topic}" not in kinds:
        asked: Act = replace(filled(question_of(message), topic), rules=(OUTRIGHT,))
    else:
        asked = found[kinds.index(f"ask {topic}")]
    kept = [act for act in found if act is not asked]
    if topic == "bed":
        kept = [act for act in kept if kind_of(act) not in ("ask allowed", "ask trench")]
    if topic == "dilution":  # what it is poured on does not go into a bin
        used = getattr(asked, "use", None)
        kept = [act for act in kept if not (isinstance(act, Ask) and used and act.what == used)]
    if topic == "allowed" and is_whether(message):
        kept = [act for act in kept if kind_of(act) != "layer"]
    if len(message.sentences) == 1:
        taken_for = ASKED_KINDS | {"offer"}
        if _opens_asking(message):
            taken_for |= RECORD_KINDS
        kept = [a for a in kept if kind_of(a) not in taken_for or _is_certain(a, scores)]
    return [*kept, asked]


def _opens_asking(message: Message) -> bool:
    """ "Has the shed got room for a few kilos": one sentence that asks from its first word."""
    led = message.clauses[0].sense == "ask" or message.norms[0] in ("has", "have", "is", "does")
    return led or (message.norms[-1] == "?" and not _TAGS.isdisjoint(message.norms[-2:-1]))


_TAGS = words_in("yes right correct no yeah eh innit")
"""What makes a statement a question: "till Sunday, right?"."""


def _is_certain(act: Act, scores: Scores) -> bool:
    kind = kind_of(act)
    return kind in ASKED_KINDS - {"ask starter"} and scores.likelihood(kind) >= CERTAIN


def _asked_beside(found: Sequence[Act], message: Message) -> list[Act]:
    """The questions of a few words that lean on the records found, each topic once."""
    if not found or not message.has(BESIDE):
        return []
    kinds = frozenset(kind_of(act) for act in found if not _names_no_sign(act))
    topics = dict.fromkeys(asked_beside(message, kinds))
    asked = [filled(asking(message, t), t) for t in topics if f"ask {t}" not in kinds]
    seen = next((act.signs for act in found if isinstance(act, Observe)), ())
    return [replace(a, signs=a.signs or seen) if a.topic == "trouble" else a for a in asked]


def _names_no_sign(act: Act) -> bool:
    """ "Is that normal?", of whatever was told beside it."""
    return isinstance(act, Ask) and act.topic == "trouble" and not act.signs


def _sure_beside(answer: Sequence[Act], message: Message, scores: Scores) -> list[str]:
    """The kinds that the scores are sure of, without the rivals of what a bin's name told."""
    sure = scores.sure()
    if not answer:
        return sure
    if any(isinstance(act, Amend) and act.was for act in answer):
        sure = [kind for kind in sure if kind != "later"]
    if not any(BY_NAME in act.rules or FLATLY in act.rules for act in answer):
        return sure
    offered = any(isinstance(act, Offer) for act in answer)
    rivals = set(RIVALS)
    if len(message.sentences) > 1:
        rivals = {kind for kind in RIVALS if scores.likelihood(kind) < CERTAIN}
    if offered:
        rivals.add("decline")
    return [kind for kind in sure if kind not in rivals]


CERTAIN = 0.9
"""Likelihood from which one answer is believed beside another that is told by a bin's name."""


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
            more = supplied(kind, message, scores)
            alone = not (found or out)
            likely = [if_likely(act, kind, likelihood, message, alone=alone) for act in more]
            out += [act for act in likely if act is not None]
    return out


BESIDE_ANOTHER, IN_ONE_BREATH = 0.5, 0.7
"""Likelihoods from which an act that no rule found is believed beside another act: where there is
a second sentence, and where there is but one."""


def _replied(message: Message, scores: Scores) -> tuple[Act, ...]:
    """The reply that a message is; behind the bot's words it was looked for before the scores."""
    if message.context.after_bot:
        return ()
    return replies(message, scores.may) if scores.any_may(REPLY_KINDS) else certain(message)


def _believed(act: Act, scores: Scores, message: Message) -> bool:
    """Whether what a rule found is told: some forms say so themselves, the rest by its score."""
    if isinstance(act, Set) or not BY_FORM.isdisjoint(act.rules) or _is_beyond(act, scores):
        return True
    kind = kind_of(act)
    if not scores.may(kind):
        return False
    return not (isinstance(act, Layer) and is_unlikely(act, scores.likelihood(kind), message))


def _is_beyond(act: Act, scores: Scores) -> bool:
    """A question that no labelled message asks: only a room can be asked it."""
    return isinstance(act, Ask) and (act.place is not None or not scores.knows(kind_of(act)))


def kind_of(act: Act) -> str:
    """The act's name in the scores: a question has its topic with it."""
    if isinstance(act, Unsure):
        return kind_of(act.guess[0]) if act.guess else "unsure"
    return f"ask {act.topic}" if isinstance(act, Ask) else act.act
