"""Sentences and clauses: where one thing said ends and the next begins."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple

from handlers.reading.words.asking import (
    SUPPOSED,
    asks_of_another,
    is_question,
    opens_question,
)
from handlers.reading.words.late import Late
from handlers.reading.words.sense import (
    SPOKE,
    VERBLESS,
    Sense,
    is_guessed,
    sense_of,
    verbless_sense,
)
from handlers.reading.words.titles import is_titles_stop
from handlers.reading.words.verbs import AUX, VerbUse
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word


@dataclass(slots=True)
class Clause:
    """One thing said: words[start:end], with its verb, if any, and its sense."""

    start: int
    end: int
    verb: VerbUse | None
    sense: Sense
    sentence: int
    """Number of its sentence."""
    joint: str = ""
    """The sign or word that leads it ("and", ",", "but"); empty at a sentence's beginning."""


class Sentence(NamedTuple):
    """words[start:end]; `asked` if it ends with a question mark."""

    start: int
    end: int
    asked: bool


_STOPS = words_in(". ! ? ; ☺ —") | {"\n"}
_NO_STOP_BEHIND = words_in(
    "approx abt no vs incl ca nr st mt mr mrs ms dr prof etc temp vol qty kg g lb lbs oz ml "
    "tsp tbsp fl gal pt"
)
_DATED = words_in("on the by from until till since")
_DAY_AND_MONTH = Late(r"\d\d?\.(?:0?[1-9]|1[0-2])")
_SOFT = words_in(', : ( ) - → [ ] = | > "')
_JOINTS = words_in(
    "and n & but then so because cos cuz while whilst though although which when after before "
    "or + plus y und et since as bc than until if unless once"
)
_CUTTING = _SOFT | _JOINTS
_NOT_YET = frozenset({"will", "order", "habit", "if", "ask", "said"})
_UNQUOTED = words_in("i we asked asks all never nobody not dont didnt whoever")
"""Words before a colon behind which the sender speaks all the same."""
_MOST_OF_NOBODY = 3
_TIME_JOINTS = words_in("before after since until as than when while")


def sentences_of(
    words: Sequence[Word], norms: Sequence[str], held: frozenset[int]
) -> list[Sentence]:
    """Sentences by their stops; a stop inside an amount, a date or a name ends nothing."""
    out: list[Sentence] = []
    start = 0
    for i in [i for i, norm in enumerate(norms) if norm in _STOPS]:
        if i in held:
            continue
        if norms[i] == "." and _is_short_form(words, i) and not _names_on(words, i + 1, held):
            continue
        if i > start:
            out.append(Sentence(start, i, norms[i] == "?"))
        elif out and norms[i] == "?":
            out[-1] = out[-1]._replace(asked=True)
        start = i + 1
    if start < len(words):
        out.append(Sentence(start, len(words), False))
    return out


def _is_short_form(words: Sequence[Word], i: int) -> bool:
    """Whether the full stop at word i belongs to a shortened word ("approx. 2 kg"), or to a date
    ("on 9.3. at six")."""
    if i == 0 or i + 1 >= len(words):
        return False
    dated = i > 1 and words[i - 2].norm in _DATED and _DAY_AND_MONTH.fullmatch(words[i - 1].norm)
    if words[i - 1].norm not in _NO_STOP_BEHIND and not dated:
        return False
    if is_titles_stop(words, i):
        return True
    return words[i + 1].kind == "number" or words[i + 1].text.islower()


def _names_on(words: Sequence[Word], i: int, held: frozenset[int]) -> bool:
    """ "1 kg. garage bin: 2 kg": whether word i begins a new entry, so that the stop ends one."""
    listed = any(word.norm == ":" or word.kind == "number" for word in words[i + 1 : i + 4])
    return listed and i in held and words[i].kind == "word"


def _announces(previous: Clause | None, number: int) -> bool:
    """ "Tomorrow: 2 kg ...": a short clause that only says when it is to happen."""
    return (
        previous is not None
        and previous.sentence == number
        and previous.verb is None
        and previous.sense == "will"
        and previous.end - previous.start <= 2
    )


_TURNS = frozenset(
    {("what", "do", "i"), ("what", "do", "we"), ("what", "should", "i"), ("what", "should", "we"),
     ("how", "do", "i"), ("should", "i", "be"), ("should", "i", "worry"), ("what", "can", "i")}
)  # fmt: skip
_TURNING = frozenset(first for first, *_ in _TURNS) | {"is", "are"}
_BREAKING = _CUTTING | _TURNING


class Cutter:
    """Cuts one sentence into clauses, each with one verb at most.

    `held` are words inside of which a joint cuts nothing (amounts, dates, names); `behind` the
    words of days that are over, `coming` of those that may be to come, `hedged` those that leave
    the sense as it is.
    """

    def __init__(
        self,
        norms: Sequence[str],
        verbs: Sequence[VerbUse],
        held: frozenset[int],
        names: frozenset[str],
        behind: frozenset[int],
        coming: frozenset[int],
        hedged: frozenset[int],
    ) -> None:
        self.behind = behind
        self.coming = coming
        self.norms = list(norms)
        self.said = norms
        for i in hedged:
            self.norms[i] = "·"
        self.verbs = verbs
        self.held = held
        self.names = names

    def cut(self, sentence: Sentence, number: int) -> list[Clause]:
        """The clauses of a sentence, in order."""
        clauses: list[Clause] = []
        for start, end, joint in self._stretches(sentence):
            inside = [v for v in self.verbs if start <= v.start < end] if self.verbs else []
            parts = self._by_verb(start, end, inside) if len(inside) > 1 else [(start, end)]
            for k, (a, b) in enumerate(parts):
                verb = inside[k] if inside else None
                lead = joint if k == 0 else ""
                previous = clauses[-1] if clauses else None
                sense = self._sense(a, b, verb, lead, previous, sentence, number)
                if sense == "none" and _announces(previous, number):
                    sense = "will"
                clauses.append(Clause(a, b, verb, sense, number, lead))
        for clause, after in pairwise(clauses) if len(clauses) > 1 else ():
            coming = clause.verb is not None and clause.verb.verb.form in ("ing", "plain")
            if coming and after.joint in ("if", "unless", "once", "when") and clause.sense == "did":
                clause.sense = "will"
            if clause.sense == "did" and "doubt" in self.norms[after.start : after.start + 3]:
                clause.sense = "said"
        return clauses

    def _stretches(self, sentence: Sentence) -> list[tuple[int, int, str]]:
        out: list[tuple[int, int, str]] = []
        start, joint = sentence.start, ""
        norms = self.norms
        for i in [i for i in range(sentence.start, sentence.end) if norms[i] in _BREAKING]:
            norm = norms[i]
            if norm in _TURNING and i > start and self._turns_to_ask(i, sentence.end):
                out.append((start, i, joint))
                start, joint = i, ""
            if norm not in _CUTTING or i in self.held or self._leads_on(i, sentence):
                continue
            if i > start:
                out.append((start, i, joint))
                joint = norm
            else:
                joint = norm if not joint or norm in _JOINTS else joint
            start = i + 1 if norm in _SOFT else i
            if norm in _JOINTS:
                start = i + 1
        if start < sentence.end:
            out.append((start, sentence.end, joint))
        return out

    def _turns_to_ask(self, i: int, end: int) -> bool:
        """ "There's fluff on it is that bad": a question with no stop before it."""
        norms = self.norms[i : min(end, i + 3)]
        if tuple(norms) in _TURNS:
            return True
        return (
            len(norms) == 3
            and norms[0] in ("is", "are")
            and norms[1] in ("that", "it", "this", "they")
            and norms[2] in SUPPOSED
        )

    def _leads_on(self, i: int, sentence: Sentence) -> bool:
        """ "So much", "before midnight": words that join clauses, but here lead no clause."""
        norm = self.norms[i]
        if norm == "so":
            return i + 1 < sentence.end and self.norms[i + 1] in ("much", "many", "far")
        if norm == "when" and i == sentence.start:
            return True
        if norm == "which":
            return self.norms[i - 1] == "of" and i > sentence.start  # "3 kg, of which 1 kg meat"
        if norm not in _TIME_JOINTS:
            return False
        return not any(i < v.start <= i + 7 for v in self.verbs)

    def _by_verb(self, start: int, end: int, verbs: Sequence[VerbUse]) -> list[tuple[int, int]]:
        cuts = [start]
        for last, verb in pairwise(verbs):
            at = verb.start
            while at - 1 >= last.end and (
                self.norms[at - 1] in AUX or self.norms[at - 1] in self.names
            ):
                at -= 1
            cuts.append(at)
        return [(a, b) for a, b in zip(cuts, [*cuts[1:], end], strict=True)]

    def _sense(
        self,
        start: int,
        end: int,
        verb: VerbUse | None,
        joint: str,
        previous: Clause | None,
        sentence: Sentence,
        number: int,
    ) -> Sense:
        first = previous is None or previous.sentence != number
        if (joint == "which" and self.norms[start] in _WHICH) or (
            sentence.asked and not first and self._goes_on_asking(start, previous)
        ):
            return "ask"
        if self._asks(start, end, first, sentence):
            return "ask"
        if joint == ":" and not first and self._quotes(previous):
            return "said"
        if verb is None:
            if joint in ("if", "unless", "until"):
                return "if"
            if VERBLESS.isdisjoint(self.norms[start:end]):
                return "none"
            told = [i for i in range(start, end) if i in self.held and self.norms[i] != "·"]
            return verbless_sense(self.norms[start : told[-1] + 1 if told else end])
        left = self.norms[start : verb.start]
        if joint in ("if", "unless", "once"):
            left = [joint, *left]
        behind = bool(self.behind) and not self.behind.isdisjoint(range(start, end))
        coming = bool(self.coming) and not self.coming.isdisjoint(range(start, end))
        guessed = is_guessed(self.said[start : verb.start], self.names)
        own = sense_of(left, verb.verb, self.names, behind=behind, coming=coming, guessed=guessed)
        if joint in ("before", "until", "than", "when") and verb.verb.form in ("plain", "ing"):
            return "will"
        if previous is None:
            return own
        return self._known(start, joint, previous) or self._joined(own, left, verb, joint, previous)

    def _known(self, start: int, joint: str, previous: Clause) -> Sense | None:
        """ "Do we know when the shed was drained": what stands behind is asked or remembered."""
        if joint == "when" and self.norms[previous.start : previous.end] == ["remember"]:
            return "said"
        asked = previous.sense == "ask" and self.norms[previous.end - 1] in _KNOWING
        if asked and joint == "" and self.norms[previous.end - 1] in BELIEVING:
            return "ask"  # "do you think Zoe drained it"
        if previous.sense == "ask" and previous.verb is None and joint == "and":
            named = self.norms[previous.end - 1] in self.names and self.norms[start] in self.names
            return "ask" if named else None  # "have Bram and Zoe drained it"
        return "ask" if asked and joint in _ASKED_OF else None

    def _goes_on_asking(self, start: int, previous: Clause | None) -> bool:
        """ "How many days is it that he is shut?": what the question is about."""
        asked = previous is not None and previous.sense == "ask" and previous.end == start
        return asked and self.norms[start] == "that"

    def _quotes(self, lead: Clause | None) -> bool:
        """ "The leaflet says: sealed for two weeks": words of one who is not of the group."""
        if lead is None or lead.joint == "as":
            return False  # "as agreed: sealed it"
        spoken = self.norms[lead.start : lead.end]
        if len(spoken) < _MOST_OF_NOBODY and spoken[-1] in ("nobody", "noone"):
            return True  # "nobody: …"
        says = lead.sense == "said" or spoken[-1] in SPOKE
        return says and not any(norm in _UNQUOTED or norm in self.names for norm in spoken)

    def _asks(self, start: int, end: int, first: bool, sentence: Sentence) -> bool:
        """Whether a clause asks; one further on needs a question mark or an asking word."""
        norms = self.norms[start:end]
        if first or sentence.asked:
            return is_question(norms, sentence.asked, self.names)
        return opens_question(norms) or asks_of_another(norms, self.names)

    def _joined(
        self, own: Sense, left: Sequence[str], verb: VerbUse, joint: str, previous: Clause
    ) -> Sense:
        """A clause without a subject of its own shares the sense of the one before it."""
        alone = not any(
            w in ("i", "we", "he", "she", "they", "you") or w in self.names for w in left
        )
        if previous.sense in ("said", "if") and joint in ("", "and", "n", "or", "then", ","):
            return previous.sense if own in ("did", "habit", "order", "you", "will") else own
        if (
            verb.verb.form == "ing"
            and joint == ""
            and previous.sense in ("not", "will", "if", "ask")
        ):
            return previous.sense
        if verb.verb.form == "ing" and joint in _TIME_JOINTS and previous.sense in _NOT_YET:
            return previous.sense  # "you need to press it down after adding 2 kg"
        wanted = previous.verb is not None and previous.verb.verb.plain in ("need", "want")
        if wanted and verb.verb.form == "ing" and joint == "":
            return "will"  # "bin 3 needs draining"
        if not alone or joint in ("but", "so", "because", "cos"):
            return own
        shares = own == "order" or verb.verb.form == "either"
        if shares and previous.sense in ("will", "not", "if", "ask", "order", "habit"):
            return previous.sense
        if joint == "or" and previous.sense == "not":
            return "not"
        return own


_WHICH = words_in("one ones bin bucket bins buckets")
"""Behind "which" they open a question, with no mark at its end."""
_ASKED_OF = frozenset({"when", "if", "whether", "who", "what", "where", "how"})
BELIEVING = words_in("think reckon suppose guess")
_KNOWING = BELIEVING | words_in("know knows remember recall say tell idea clue sure")
