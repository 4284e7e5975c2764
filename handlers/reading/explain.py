"""What each stretch of a message was read as, and by which rules."""

from handlers.reading.acts import Act
from handlers.reading.context import Context
from handlers.reading.message import Message, read_message
from handlers.reading.read import read
from handlers.reading.scores import likelihood, scores_of


def explain(text: str, context: Context) -> list[str]:
    """A line for each thing found, each clause with its sense, each kind of act that may have been
    told with its likelihood and what weighs most in it, and each act with its rules.
    """
    message = read_message(text, context)
    acts = [_made(act) for act in read(text, context)]
    return [*_found(message), *_clauses(message), *_scores(message), *acts]


def _found(message: Message) -> list[str]:
    spans = [
        *((b.start, b.end, f"bin {b.name or '(not named)'}") for b in message.bins),
        *((m.start, m.end, f"member {m.name}") for m in message.members),
        *((a.start, a.end, f"{a.quantity} {a.value:g}") for a in message.amounts),
        *((d.start, d.end, f"day {d.past} or {d.future}") for d in message.days),
        *(
            (i.start, i.end, "scraps: " + ", ".join(k for k, _ in i.food.shares))
            for i in message.items
        ),
        *(
            (s.start, s.end, f"sign {s.sign}" + (" (absent)" if s.absent else ""))
            for s in message.signs
        ),
    ]
    return [f"“{message.text(start, end)}”: {what}" for start, end, what in sorted(spans)]


def _clauses(message: Message) -> list[str]:
    return [f"clause “{message.text(c.start, c.end)}”: {c.sense}" for c in message.clauses]


def _scores(message: Message) -> list[str]:
    scores = scores_of(message)
    likely = sorted(scores.log_odds.items(), key=lambda pair: -pair[1])
    return [
        f"score {kind} {likelihood(odds):.2f}: {', '.join(scores.reasons(kind))}"
        for kind, odds in likely
        if scores.may(kind)
    ]


def _made(act: Act) -> str:
    return f"{act.act}: {', '.join(act.rules)}"
