"""Whether a question is about starter: how it is made, how much is left, how much a layer takes."""

import re

from handlers.reading.questions.question import Question
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_HOW_MUCH = words_in(
    "much many amount ratio dose dosage quantity rate double scoops spoons spoonfuls "
    "tablespoons handfuls cuanto cuanta enough measure per proportion extra heavy generous "
    "sprinkle sprinkling twice triple"
)
_MAKE = words_in(
    "make making mix mixing prepare recipe brew made prep inoculate ingredients jaggery "
    "molasses mekkin scratch method steps cook brewing preparing inside"
)
_LEFT = words_in(
    "left remaining last run stock low out remain leftover spare lasts hand running supply empty"
)
_ONE_SPOON = words_in("scoop spoon spoonful tablespoon handful")
_SPOON = words_in("scoops spoons spoonfuls tablespoons sprinkle dose handfuls dosage")


def asks_whose_starter(q: Question) -> bool:
    """Whose turn it is to make starter, or whether any is left."""
    return (
        q.bran()
        and q.has(frozenset({"make", "left", "enough"}))
        and q.has(frozenset({"turn", "any"}))
    )


_DINNER = words_in("dinner lunch supper menu course main dessert pudding restaurant")


def asks_batch(q: Question) -> bool:
    """How starter is made."""
    if q.bran() and re.search(
        r"\bwhat (?:goes|do (?:you|we|i) put) (?:in|into) the (?:bran|"
        r"starter)\b",
        q.text,
    ):
        return True
    if not q.bran() or not q.has(_MAKE):
        return False
    how = q.has(
        frozenset(
            {
                "how",
                "recipe",
                "ratio",
                "ingredients",
                "what",
                "method",
                "steps",
                "molasses",
                "jaggery",
            }
        )
    )
    when = q.has(
        frozenset({"need", "soon", "when", "should", "pronto", "time", "enough", "more", "some"})
    )
    return how and not (when and not q.has(frozenset({"how", "recipe", "ratio", "ingredients"})))


def asks_starter(q: Question) -> bool:
    """How much starter is left, and when to make more."""
    if not q.bran():
        return False
    per_layer = q.has(frozenset({"per", "layer", "meat", "double", "sprinkle", "each"})) or bool(
        q.amounts("mass") and not q.has(frozenset({"left", "have", "remaining"}))
    )
    if q.has(_MAKE) and q.has(frozenset({"need", "when", "time", "should", "soon", "want", "who",
                                         "due", "enough",
                                         "more", "do", "again", "next"})):  # fmt: skip
        return True
    if "enough" in q.words and not per_layer:
        return True
    if per_layer:
        return False
    if re.search(
        r"\bdo (?:we|i) need (?:any |some |more )?(?:bran|starter)\b|\bhow are we "
        r"for\b",
        q.text,
    ):
        return True
    more = any(p in q.text for p in ("more bran", "more starter", "next lot", "next batch",
                                     "any bran", "any starter",
                                     "got bran", "have bran", "order bran", "buy bran",
    "do we have"))  # fmt: skip
    return q.has(_LEFT) or more


_NO_DOSE = Late(
    r"\b(?:costs?|price|pricey|expensive)\b|"
    r"\bhow much (?:bran|starter) (?:is|are|have|do)(?: (?:we|you|still|got))* "
    r"(?:there|left|in the|have|got)\b|\bhow much (?:bran|starter) (?:have we|we have)\b"
)


def asks_starter_dose(q: Question) -> bool:
    """How much starter a layer takes."""
    if q.has(_DINNER) or q.amounts("money") or _NO_DOSE.search(q.text):
        return False  # a starter before the main course, a price, what is in the tin
    measure = q.has(_HOW_MUCH)
    if q.bran():
        using = any(
            p in q.text
            for p in (
                "how to use",
                "the go with",
                "too much",
                "need bran",
                "when do i add",
                "more bran",
            )
        )
        for_it = re.search(r"\b(?:bran|starter) for\b", q.text) is not None
        return for_it or measure or using or bool(q.amounts("mass"))
    spoon = q.has(_SPOON | _ONE_SPOON)
    return spoon and measure and (q.craft() or bool(q.amounts("mass")))
