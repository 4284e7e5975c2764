"""Questions the bot can answer: where one is asked, about which topic, with which figures."""

from handlers.reading.acts import Act, Ask, Topic
from handlers.reading.message import Message
from handlers.reading.questions.askedfigures import filled
from handlers.reading.questions.further import further, may_be_further, names_place, placed
from handlers.reading.questions.question import Question
from handlers.reading.questions.topics import TOPICS
from handlers.reading.scores import Scores
from handlers.reading.words.asking import is_question

_WHY = frozenset({
    "why", "how come", "hows that", "how is that", "why is that", "where 's that from",
    "where is that from",
    "says who", "why so much", "why that", "why so", "really", "how so", "on what basis",
    "source", "why not",
    "who says", "how do you know", "how do you know that", "how did you get that",
    "why that much", "explain",
    "why so many", "why so little", "where do you get that", "according to who",
    "how did you work that out",
    "how do you work that out", "whats that based on", "what is that based on", "why though",
    "but why",
    "show me the working", "show the working", "show your working", "show me your working",
    "show me the workings", "show your workings", "show me the maths", "show me the math",
    "show me the sums", "can you show me the working", "can you show the working",
    "whats the working",
    "how did you calculate that", "how was that worked out", "how is that worked out",
})  # fmt: skip
_HELP = frozenset({"help", "help me", "help please", "please help", "help me please", "pls help"})
_TELL_ME = (
    "tell me", "let me know how", "remind me how", "anybody know", "anyone know", "any idea",
    "wondering",
    "want to know", "know whether", "know if", "asking if", "asks if", "wonder if",
    "not sure if", "no idea how", "i need how", "need to know", "anyone remember",
    "advise",
)  # fmt: skip
_ASKED_BY = (
    "how ", "what ", "total ", "totals", "status", "anything due", "anything late",
    "any bins due", "recipe ",
    "which ", "help ,", "help !", "what about", "bran amount", "amount of bran", "bran for",
)  # fmt: skip


ASKED_KINDS = frozenset(f"ask {topic}" for topic, _ in TOPICS)
"""What may be asked without a room, by its name in the scores."""


def asks(message: Message, scores: Scores, *, told: bool = False) -> tuple[Act, ...]:
    """The questions of a message that the bot can answer, each topic once.

    `told` says that the message also reports something, so that it asks only where it plainly asks.
    Where the scores allow no topic, only what has no score is looked for: that which only a room
    can be asked.
    """
    if not (_is_scored(message, scores) or may_be_further(message)):
        return ()
    if "help" in message.said and _bare(message) in _HELP:
        return (Ask(topic="help", rules=("help",)),)
    if message.context.after_bot and is_why(message):
        return (Ask(topic="why", rules=("why, behind the bot's words",)),)
    out: list[Ask] = []
    for question in _questions(message, told):
        act = _asked(question, scores)
        if act is not None and all(act.topic != other.topic for other in out):
            out.append(act)
    return tuple(out)


def _asked(question: Question, scores: Scores) -> Ask | None:
    """What a stretch asks; in a room that may be more than the reading contract has topics for."""
    topic = _topic(question, scores)
    act = None if topic is None else filled(question, topic)
    if not question.message.context.in_room:
        return act
    return further(question) or placed(act, question)


def _topic(question: Question, scores: Scores) -> Topic | None:
    """The first topic that fits; none where the scores allow none of those that fit.

    A question of a place where bins were buried needs no score.
    """
    message = question.message
    if names_place(message):
        return next((name for name, test in TOPICS if test(question)), None)
    if not _is_scored(message, scores):
        return None
    allowed = {kind.removeprefix("ask ") for kind in scores.allowed(ASKED_KINDS)}
    for k, (name, test) in enumerate(TOPICS):
        if name in allowed and test(question):
            before = (name for name, test in TOPICS[:k] if name not in allowed and test(question))
            return next(before, name)
    return None


def _is_scored(message: Message, scores: Scores) -> bool:
    """Whether any topic may be asked about."""
    return message.context.after_bot or scores.any_may(ASKED_KINDS)


def _bare(message: Message) -> str:
    """The words of the message without the bot's name."""
    names = message.context.bot_names
    return " ".join(w.norm for w in message.words if w.kind == "word" and w.norm not in names)


def is_why(message: Message) -> bool:
    """Whether the message is no more than "why?"."""
    return _bare(message) in _WHY


def _questions(message: Message, told: bool) -> list[Question]:
    """Sentences that ask, each with the sentence before it where it only sets the scene."""
    names = frozenset(message.norms[i] for m in message.members for i in range(m.start, m.end))
    out: list[Question] = []
    to_bot = bool(message.bot)
    for k, sentence in enumerate(message.sentences):
        norms = message.norms[sentence.start : sentence.end]
        whole = is_question(norms, sentence.asked, names)
        part = any(c.sense == "ask" for c in message.clauses if c.sentence == k)
        plain = all(c.sense in ("none", "order", "ask") for c in message.clauses if c.sentence == k)
        hinted = not told and (sentence.asked or _requests(norms, to_bot and plain))
        if not (whole or part or hinted):
            continue
        start = sentence.start
        if k and not told and not _tells(message, k - 1):
            start = message.sentences[k - 1].start
        out.append(Question.within(message, start, sentence.end))
    return out


def _tells(message: Message, k: int) -> bool:
    """Whether a sentence tells of something done, so that it is no part of a question behind it."""
    return any(
        c.sense in ("did", "not", "said") and c.verb is not None and c.verb.verb.plain != "have"
        for c in message.clauses
        if c.sentence == k
    )


def _requests(norms: list[str], to_bot: bool) -> bool:
    """ "Bot, total so far", "tell me when the shed is due": a question in the form of an order."""
    text = " ".join(norms)
    if any(words in text for words in _TELL_ME):
        return True
    return to_bot or text.startswith(_ASKED_BY)


def question_of(message: Message) -> Question:
    """The whole message as one question."""
    return Question.within(message, 0, len(message.norms))


def asking(message: Message, topic: str) -> Question:
    """The one sentence that asks how much water goes with what it measures; else all of it."""
    if topic == "dilution" and "water" in message.said:
        told = [s for s in message.sentences if "water" in message.norms[s.start : s.end]]
        own = [Question.within(message, s.start, s.end) for s in told if s.asked]
        if len(told) == len(own) == 1 and own[0].amounts("volume"):
            return own[0]
    return question_of(message)
