"""What another is only guessed or asked to have done: "maybe Zoe put 800 g in", "has Bram drained
the shed", "do you think she sealed it". Nothing of it was told.
"""

from collections.abc import Sequence

from handlers.reading.acts import Act, meant
from handlers.reading.message import Message
from handlers.reading.people.members import doers_unknown
from handlers.reading.words.asking import asks_of_another
from handlers.reading.words.sense import GUESSING, is_guessed
from handlers.reading.words.sentences import BELIEVING, Clause
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_CUES = GUESSING | BELIEVING | words_in("did has have anyone anybody")
_SUPPOSED = frozenset({"ask", "if"})


def without_guessed(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts without the deeds of which the message only guesses or asks."""
    if not message.has(_CUES):
        return list(acts)
    guesses = [clause for clause in message.clauses if _is_guess(message, clause)]
    return [act for act in acts if not guesses or not _is_among(act, guesses, message)]


def _is_among(act: Act, guesses: Sequence[Clause], message: Message) -> bool:
    """Whether the words tell of such a deed only in guesses; amounts may tell it without a verb."""
    kind = meant(act).act
    deeds = [c for c in message.clauses if c.verb is not None and kind in c.verb.verb.classes]
    if not deeds or not all(clause in guesses for clause in deeds):
        return False
    held = [message.sentences[clause.sentence] for clause in deeds]
    return all(any(s.start <= a.start < s.end for s in held) for a in message.measured())


def _is_guess(message: Message, clause: Clause) -> bool:
    if clause.verb is None or clause.sense not in _SUPPOSED:
        return False
    named = indexes(message.members)
    names = frozenset([message.norms[i] for i in named])
    names |= doers_unknown(message.words, [clause.verb.start])
    if is_guessed(message.norms[clause.start : clause.verb.start], names):
        return True
    before = message.norms[max(0, clause.start - 1) : clause.start]
    asked = asks_of_another(message.norms[clause.start : clause.end], names)
    return clause.sense == "ask" and (asked or not BELIEVING.isdisjoint(before))
