"""Sentences and clauses: where one thing said ends and the next begins."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple

from handlers.reading.marks import Mark
from handlers.reading.sense import Sense, is_question, opens_question, sense_of, verbless_sense
from handlers.reading.vocabulary import VerbForm, words_in
from handlers.reading.words import Word


class VerbUse(NamedTuple):
    """A verb at words[start:end]."""

    start: int
    end: int
    verb: VerbForm


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
    "approx abt no vs incl ca nr st mr mrs dr etc temp vol qty kg g lb lbs oz ml"
)
_SOFT = words_in(', : ( ) - → [ ] = | > "')
_JOINTS = words_in(
    "and n & but then so because cos cuz while whilst though although which when after before or + "
    "plus y und et since as bc than until if unless once"
)
_TIME_JOINTS = words_in("before after since until as than when while")
_AUX = words_in(
    "have has had was were been is are am be being got 's 'd ive get just also then already finally only "
    "even both all never not didnt dont did didn will would could should can to i we he she they you "
    "it and n & but or so who which that havent hasnt hadnt wont cant couldnt ll wasnt werent please "
    "now since so went gone still nearly almost more again ya y'all everything everyone folks mostly "
    "today yesterday always usually finally happily dutifully proudly kindly carefully eventually "
    "accidentally must might may shall gotta let lets going about you u nobody someone somebody"
)
_DETERMINERS = words_in("a an the my our your his her their some of in any no these those this with from "
                        "on at more each every")  # fmt: skip


def sentences_of(words: Sequence[Word], held: frozenset[int]) -> list[Sentence]:
    """Sentences by their stops; a stop inside an amount, a date or a name ends nothing."""
    out: list[Sentence] = []
    start = 0
    for i, word in enumerate(words):
        if word.norm not in _STOPS or i in held:
            continue
        if word.norm == "." and i and words[i - 1].norm in _NO_STOP_BEHIND and i + 1 < len(words):
            if words[i + 1].kind == "number" or words[i + 1].text.islower():
                continue
        if i > start:
            out.append(Sentence(start, i, word.norm == "?"))
        elif out and word.norm == "?":
            out[-1] = out[-1]._replace(asked=True)
        start = i + 1
    if start < len(words):
        out.append(Sentence(start, len(words), False))
    return out


def verbs_of(words: Sequence[Word], marks: Sequence[Mark], held: frozenset[int]) -> list[VerbUse]:
    """The words that stand as verbs, in order."""
    foods = {i for m in marks if m.tag == "food" for i in range(m.start, m.end)}
    out: list[VerbUse] = []
    for mark in marks:
        if mark.tag != "verb" or mark.start in held:
            continue
        if mark.start in foods:
            continue
        if _stands_as_verb(words, mark, foods, held):
            out.append(VerbUse(mark.start, mark.end, mark.value))
    return [v for k, v in enumerate(out) if not _only_helps(words, v, out[k + 1 : k + 2])]


def _only_helps(words: Sequence[Word], verb: VerbUse, after: Sequence[VerbUse]) -> bool:
    """Whether "have", "do" or "got" only helps the verb behind it ("have you drained")."""
    if verb.verb.plain not in ("have", "do", "get") or not after or after[0].verb.form == "plain":
        return verb.verb.plain == "do" and bool(after) and after[0].start - verb.end <= 2
    between = words[verb.end : after[0].start]
    return len(between) <= 3 and all(w.norm in _AUX for w in between)


def _stands_as_verb(
    words: Sequence[Word], mark: Mark, foods: set[int], held: frozenset[int]
) -> bool:
    verb: VerbForm = mark.value
    before = words[mark.start - 1] if mark.start else None
    after = words[mark.end] if mark.end < len(words) else None
    if verb.form == "past":
        return _past_stands(before, after, mark, foods, held)
    if verb.form == "third":
        return before is not None and (before.norm in _PERSONS or mark.start - 1 in held or (
            words[mark.start].norm in ("smells", "goes", "gives", "needs", "looks"))) and (
            before.norm not in _DETERMINERS)  # fmt: skip
    if verb.form == "ing":
        return before is None or before.norm not in ("a", "an", "the", "my", "our", "some")
    if before is None or before.kind == "sign":
        return True
    if verb.form == "either":
        return before.norm not in ("a", "an", "the", "of", "this", "that", "each", "every")
    return before.norm in _AUX or before.norm in _LEADS or mark.start - 1 in held


_PERSONS = words_in("he she it that who which this one")
_LEADS = words_in(
    "bot pls please to ok hey also do does why how kindly quickly remember then thanks ta"
)


def _past_stands(
    before: Word | None, after: Word | None, mark: Mark, foods: set[int], held: frozenset[int]
) -> bool:
    """A past form is a verb unless it describes a thing ("2 kg of chopped carrots")."""
    if before is None or before.kind == "sign" or before.norm in _AUX:
        return True
    describes = before.norm in _DETERMINERS or mark.start - 1 in held
    before_thing = mark.end in foods and mark.start - 1 in held
    if before_thing or before.norm in _DETERMINERS:
        return False
    return not describes or after is None or mark.end not in foods


class _Cutter:
    """Cuts one sentence into clauses, each with one verb at most."""

    def __init__(
        self,
        words: Sequence[Word],
        verbs: Sequence[VerbUse],
        held: frozenset[int],
        names: frozenset[str],
        behind: frozenset[int],
        hedged: frozenset[int],
    ) -> None:
        self.words = words
        self.behind = behind
        self.norms = ["·" if i in hedged else w.norm for i, w in enumerate(words)]
        self.verbs = verbs
        self.held = held
        self.names = names

    def cut(self, sentence: Sentence, number: int) -> list[Clause]:
        clauses: list[Clause] = []
        for start, end, joint in self.stretches(sentence):
            inside = [v for v in self.verbs if start <= v.start < end]
            for k, (a, b) in enumerate(self.by_verb(start, end, inside)):
                verb = inside[k] if inside else None
                lead = joint if k == 0 else ""
                previous = clauses[-1] if clauses else None
                sense = self.sense(a, b, verb, lead, previous, sentence, number)
                clauses.append(Clause(a, b, verb, sense, number, lead))
        for clause, after in pairwise(clauses):
            coming = clause.verb is not None and clause.verb.verb.form in ("ing", "plain")
            if coming and after.joint in ("if", "unless", "once", "when") and clause.sense == "did":
                clause.sense = "will"
        return clauses

    def stretches(self, sentence: Sentence) -> list[tuple[int, int, str]]:
        out: list[tuple[int, int, str]] = []
        start, joint = sentence.start, ""
        for i in range(sentence.start, sentence.end):
            norm = self.norms[i]
            if i in self.held or not (norm in _SOFT or norm in _JOINTS):
                continue
            if self.leads_on(i, sentence.end):
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

    def leads_on(self, i: int, end: int) -> bool:
        """ "So much", "before midnight": words that join clauses, but here lead no clause."""
        norm, after = self.norms[i], self.norms[i + 1] if i + 1 < end else ""
        if norm == "so":
            return after in ("much", "many", "far")
        if norm not in _TIME_JOINTS:
            return False
        return not any(i < v.start <= i + 7 for v in self.verbs)

    def by_verb(self, start: int, end: int, verbs: Sequence[VerbUse]) -> list[tuple[int, int]]:
        if len(verbs) < 2:
            return [(start, end)]
        cuts = [start]
        for last, verb in zip(verbs, verbs[1:], strict=False):
            at = verb.start
            while at - 1 >= last.end and (
                self.norms[at - 1] in _AUX or self.norms[at - 1] in self.names
            ):
                at -= 1
            cuts.append(at)
        return [(a, b) for a, b in zip(cuts, [*cuts[1:], end], strict=True)]

    def sense(
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
        if self.asks(start, end, first, sentence):
            return "ask"
        if verb is None:
            return verbless_sense(self.norms[start:end])
        left = self.norms[start : verb.start]
        if joint in ("if", "unless", "once"):
            left = [joint, *left]
        behind = any(i in self.behind for i in range(start, end))
        own = sense_of(left, verb.verb, self.names, behind=behind)
        if joint in ("before", "until", "than", "when") and verb.verb.form in ("plain", "ing"):
            return "will"
        if previous is None:
            return own
        return self.joined(own, left, verb, joint, previous)

    def asks(self, start: int, end: int, first: bool, sentence: Sentence) -> bool:
        """Whether a clause asks; one further on needs a question mark or an asking word."""
        norms = self.norms[start:end]
        if first or sentence.asked:
            return is_question(norms, sentence.asked, self.names)
        return opens_question(norms)

    def joined(
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
        if not alone or joint in ("but", "so", "because", "cos"):
            return own
        shares = own == "order" or verb.verb.form == "either"
        if shares and previous.sense in ("will", "not", "if", "ask", "order", "habit"):
            return previous.sense
        if joint == "or" and previous.sense == "not":
            return "not"
        return own


def clauses_of(
    words: Sequence[Word],
    sentences: Sequence[Sentence],
    verbs: Sequence[VerbUse],
    held: frozenset[int],
    names: frozenset[str],
    behind: frozenset[int],
    hedged: frozenset[int],
) -> list[Clause]:
    """All clauses in order; a joint inside a word of `held` (amounts, dates, names) cuts nothing.

    `behind` are the words of days that are over, `hedged` those that leave the sense as it is.
    """
    cutter = _Cutter(words, verbs, held, names, behind, hedged)
    return [c for k, s in enumerate(sentences) for c in cutter.cut(s, k)]
