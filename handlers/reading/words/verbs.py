"""Which words of a message stand as its verbs."""

from collections.abc import Sequence
from typing import NamedTuple

from handlers.reading.words.marks import Mark
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import VerbForm, words_in
from handlers.reading.words.words import Word

AUX = words_in(
    "have has had was were been is are am be being got 's 'd ive get just also then already "
    "finally only even both all never not didnt dont did didn will would could should can to "
    "i we he she they you it and n & but or so who which that havent hasnt hadnt wont cant "
    "couldnt aint hasnt hadnt ll wasnt werent please now since so went gone still nearly almost "
    "more again ya y'all everything everyone folks mostly today yesterday always usually finally "
    "happily dutifully proudly kindly carefully eventually accidentally must might may shall gotta "
    "let lets going about you u nobody someone somebody"
)


class VerbUse(NamedTuple):
    """A verb at words[start:end]."""

    start: int
    end: int
    verb: VerbForm


_DETERMINERS = words_in(
    "a an the my our your his her their some of in any no these those this with from on at "
    "more each every"
)


def verbs_of(words: Sequence[Word], marks: Sequence[Mark], held: frozenset[int]) -> list[VerbUse]:
    """The words that stand as verbs, in order."""
    known = [m for m in marks if m.tag == "verb" and m.start not in held]
    if not known:
        return []
    foods = indexes([m for m in marks if m.tag == "food"])
    norms = [word.norm for word in words]
    out: list[VerbUse] = []
    for mark in known:
        if mark.start in foods and not has_begun(norms, mark.start):
            continue
        if mark.value.classes == _OF_ELSE and _is_said_of_food(norms, mark.start - 1, foods):
            continue
        if _stands_as_verb(words, mark, foods, held):
            out.append(VerbUse(mark.start, mark.end, mark.value))
    return [
        v
        for k, v in enumerate(out)
        if v.verb.plain not in _HELPERS or not _only_helps(words, v, out[k + 1 : k + 2])
    ]


def has_begun(norms: Sequence[str], i: int) -> bool:
    """ "I have begun it anew": a deed, and no aubergine of Bengal."""
    if norms[i] != "begun":
        return False
    before, behind = norms[max(0, i - 1) : i], norms[i + 1 : i + 2]
    return not (_HAVE.isdisjoint(before) and _BEGUN_WHAT.isdisjoint(behind))


_HAVE = words_in("have has had 've just i we he she they")
_BEGUN_WHAT = words_in("it her him them the again anew afresh new a an my our this")


_HELPERS = frozenset({"have", "do", "get"})


def _only_helps(words: Sequence[Word], verb: VerbUse, after: Sequence[VerbUse]) -> bool:
    """Whether "have", "do" or "got" only helps the verb behind it ("have you drained")."""
    if verb.verb.plain == "have" and after and after[0].verb.form in ("past", "either"):
        between = words[verb.end : after[0].start]
        said_of = words[verb.start - 1].norm if verb.start else ""
        kept = after[0].verb.plain in ("leave", "remain")
        return (
            not kept
            and len(between) <= 14
            and (
                all(w.norm in AUX for w in between)
                or (
                    len(between) > 1
                    and said_of != "to"
                    and not any(w.norm in _CLAUSE_SIGNS for w in between)
                )
            )
        )
    if verb.verb.plain == "do" and after and after[0].verb.form == "either":
        return after[0].start - verb.end <= 2  # "did Kofi put"
    if not after or after[0].verb.form == "plain":
        return verb.verb.plain == "do" and bool(after) and after[0].start - verb.end <= 2
    between = words[verb.end : after[0].start]
    return len(between) <= 3 and all(w.norm in AUX for w in between)


_SAYS_OF_THINGS = frozenset({"smells", "goes", "gives", "needs", "looks"})


def _stands_as_verb(
    words: Sequence[Word], mark: Mark, foods: frozenset[int], held: frozenset[int]
) -> bool:
    verb: VerbForm = mark.value
    before = words[mark.start - 1] if mark.start else None
    after = words[mark.end] if mark.end < len(words) else None
    if verb.form == "past":
        return _past_stands(before, after, mark, foods, held)
    if verb.form == "third":
        if before is None or before.norm in _DETERMINERS:
            return False
        if words[mark.start].norm == "tops" and before.norm not in _PERSONS:
            return False  # "300 ml tops"
        of_person = before.norm in _PERSONS or before.norm == "now" or mark.start - 1 in held
        return of_person or words[mark.start].norm in _SAYS_OF_THINGS
    if verb.form == "ing":
        return before is None or before.norm not in ("a", "an", "the", "my", "our", "some")
    if after is not None and (
        after.norm in ("is", "was", "are", "'s", "came", "comes", "coming", "went", "ran", "leaked")
        or (after.norm in ("on", "of") and verb.plain in _ALSO_THINGS)
        or (
            after.norm == "of"
            and verb.plain == "smell"
            and (before is None or before.kind == "sign")
        )
        or (after.kind == "number" and verb.plain == "layer")
    ):
        return False
    if verb.form == "plain" and _is_said_to_be(words, mark.start):
        return False
    if before is None or before.kind == "sign":
        return True
    if verb.form == "either":
        return before.norm not in ("a", "an", "the", "of", "this", "that", "each", "every")
    return before.norm in AUX or before.norm in _LEADS


_NO_ONE = words_in("nobody noone")
_OF_ELSE = frozenset({"other"})


def _is_said_of_food(norms: Sequence[str], at: int, foods: frozenset[int]) -> bool:
    """ "The sprouts nobody wanted", "cheese that nobody liked": what they are, and no denial."""
    if at < 1 or norms[at] not in _NO_ONE:
        return False
    return at - 1 - (norms[at - 1] in _THAT) in foods


_THAT = frozenset({"that", "which", "que"})
_ALSO_THINGS = frozenset({"tap", "layer", "seal", "load", "pile", "cap", "drain", "top", "tape"})
_BETWEEN_BE = words_in(
    "finally now still already just not all so almost nearly completely only also"
)


def _is_said_to_be(words: Sequence[Word], i: int) -> bool:
    """ "The fridge is finally empty": the word is what the thing is, no verb."""
    at = i - 1
    while at > 0 and words[at].norm in _BETWEEN_BE:
        at -= 1
    return at >= 0 and words[at].norm in ("is", "are", "was", "were", "'s")


_CLAUSE_SIGNS = words_in(". ; ! ? , but so because which who that if when i we he she they")


_PERSONS = words_in("he she it that who which this one")


_LEADS = words_in(
    "don first next then bot pls please to ok hey also do does why how kindly quickly "
    "remember then thanks ta"
)


def _past_stands(
    before: Word | None, after: Word | None, mark: Mark, foods: frozenset[int], held: frozenset[int]
) -> bool:
    """A past form is a verb unless it describes a thing ("2 kg of chopped carrots")."""
    if before is None or before.kind == "sign" or before.norm in AUX:
        return True
    describes = before.norm in _DETERMINERS or mark.start - 1 in held
    before_thing = mark.end in foods and mark.start - 1 in held
    lettered = before.norm == "a" and mark.start - 1 in held  # "bin A sealed today"
    if before_thing or (before.norm in _DETERMINERS and not lettered):
        return False
    return not describes or after is None or mark.end not in foods
