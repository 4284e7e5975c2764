"""Whether a clause asks, by its first words, its order and its sign."""

from collections.abc import Sequence

from handlers.reading.words.sense import SUBJECTS
from handlers.reading.words.vocabulary import verb_words, words_in

_WH = words_in(
    "what when where who whos whose which why how wot wat whn hw que cuando como cuanto "
    "cuanta wie wann was-ist wer wieviel"
)
_AUX = words_in(
    "is are am was were do does did can could should shall will would may might must has have "
    "had isnt arent doesnt didnt cant couldnt shouldnt wont wouldnt hasnt havent puedo se"
)
_ASKERS = words_in("anyone anybody someone any")
_ANYONE = words_in("anyone anybody")
_ASKED_OF_ANYONE = words_in("know knows got have seen want else able")
_DONE = words_in(
    "put added add drained emptied fed sealed closed buried opened filled poured tipped done"
)
_HAS_DONE = words_in("did has have")
_SOMEBODY = words_in("somebody someone everybody everyone anybody anyone he she they")
_SKIP = words_in(
    "· and but so then ok okay hey hi hello oh um er also bot please pls sorry well right "
    "quick question just wait morning evening afternoon folks all guys everyone team q , . : "
    "! - ☺ \n @ and no yes yo ah hmm hm erm actually btw anyway oi dear ay ayuda y e ( \" ' "
    "lads ladies friends namaste hola ciao eh neighbours neighbors yeah now but tho"
) | {"\n"}
_SUBJECT_LIKE = SUBJECTS | words_in(
    "the a an my our your this that there these those his her their any all anyone anybody "
    "someone everyone everybody one bran starter liquid leachate juice"
)


def is_question(norms: Sequence[str], marked: bool, names: frozenset[str]) -> bool:
    """Whether a clause asks: by its first words, or by its sign together with its form."""
    if marked and norms[1:2] == ["to"] and norms[0] in ("ok", "okay", "alright", "safe", "fine"):
        return True
    k, end = 0, len(norms)
    while k < end and (norms[k] in _SKIP or norms[k] in names):
        k += 1
    if k >= end:
        return False
    within = not _ASKING_WITHIN.isdisjoint(norms)
    if within and ("whom" in norms or (norms[k] != "if" and _asks_behind_a_bin(norms, k))):
        return True
    after = norms[k + 1] if k + 1 < len(norms) else ""
    if norms[k] in _WH:
        return _wh_asks(norms[k], after, marked)
    if norms[k] in _AUX:
        named = k > 0 and norms[k - 1] in names
        return marked or _aux_asks(norms, norms[k], after, named, names)
    if norms[k] in _ASKERS and not marked:
        return after in _ASKED_OF_ANYONE or asks_of_another(norms[k:], names)
    if marked:
        return norms[k] in _ASKERS or _asks_within(norms)
    return within and (_how_within(norms, k) or _is_that_so(norms, k))


_ASKING_WITHIN = frozenset({"whom", "how", "when", "is", "or"})
"""Words, one of which stands wherever a clause asks neither by its first words nor its sign."""


def _aux_asks(
    norms: Sequence[str], first: str, after: str, named: bool, names: frozenset[str]
) -> bool:
    """Whether an unmarked clause that begins with "do", "can", "is" and the like asks."""
    if named and after not in SUBJECTS:
        return False  # "Heike has put": the name is the one who did it
    if first in _HAS_DONE and asks_of_another(norms, names):
        return True
    if first in ("had", "were") or (first == "did" and after in ("it", "that")):
        return False
    if first in ("is", "are") and norms[-1] in ("ok", "okay", "allowed"):
        return True
    if first in ("do", "does", "will") and norms[-1] in ("in", "count", "allowed", "ok", "work"):
        return True
    return _inverted(first, after)


def asks_of_another(norms: Sequence[str], names: frozenset[str]) -> bool:
    """ "Has Bram put it in", "did somebody drain it", "anyone fed the shed": whether the words ask
    after what another did, be it without a sign.
    """
    at = next((i for i, norm in enumerate(norms) if norm not in _SKIP), len(norms))
    first, after, beyond = (*norms[at : at + 3], "", "", "")[:3]
    if first in _ANYONE:
        return after in _DONE
    if first not in _HAS_DONE or beyond == "'s":  # "did Zoe's bin"
        return False
    return after in names or after in _SOMEBODY


def _asks_behind_a_bin(norms: Sequence[str], k: int) -> bool:
    """ "Roof bin how many days more": the asking word stands behind what is asked about."""
    if "how" not in norms and "when" not in norms:
        return False
    for i in range(k + 1, min(len(norms), k + 4)):
        if (
            norms[i] in ("how", "when")
            and norms[i + 1 : i + 2]
            and norms[i + 1]
            in ("many", "much", "long", "will", "is", "to", "full", "can", "should", "do", "it")
        ):
            return norms[i - 1] in _ASKED_ABOUT
    return False


_ASKED_ABOUT = words_in("bin bucket pail one liquid leachate juice bran starter")


def opens_question(norms: Sequence[str]) -> bool:
    """Whether a clause within a sentence opens a question of its own ("..., how much is that")."""
    if _OPENING.isdisjoint(norms):
        return False
    k = 0
    while k < len(norms) and norms[k] in _SKIP:
        k += 1
    after = norms[k + 1] if k + 1 < len(norms) else ""
    if k >= len(norms):
        return False
    if norms[k] in ("how", "why"):
        return after not in ("i", "we", "to", "it", "he", "she", "they", "the", "many's")
    if norms[k] in ("what", "who", "whose", "which", "where", "when"):
        beyond = norms[k + 2] if k + 2 < len(norms) else ""
        if after in ("had", "have", "has"):
            return beyond in SUBJECTS and norms[k] != "who"
        return after in _AUX | {"'s"} and norms[k] != "which" and norms[k] != "who"
    return norms[k] in _AUX and after in ("i", "we", "you", "it", "they", "this", "that", "there")


_OPENING = _AUX | {"how", "why", "what", "who", "whose", "which", "where", "when"}


def _how_within(norms: Sequence[str], k: int) -> bool:
    """ "For 15 litres how deep a pit I should dig": asked without a sign and not at the start."""
    for i in range(k + 1, len(norms) - 1) if "how" in norms else ():
        if norms[i] == "how" and norms[i + 1] in (
            "much",
            "many",
            "deep",
            "long",
            "big",
            "often",
            "to",
        ):
            return norms[i - 1] not in _KNOWN_HOW and norms[i - 1] not in ("me", "us", "you")
    return False


def _is_that_so(norms: Sequence[str], k: int) -> bool:
    """ "The white stuff on top is that supposed to be there", "corn cobs yay or nay"."""
    if "or" in norms[-2:] and tuple(norms[-3:]) in _YES_OR_NO:
        return True
    return "is" in norms and any(
        norms[i] == "is" and norms[i + 1] in ("that", "it", "this") and norms[i + 2] in SUPPOSED
        for i in range(k + 1, len(norms) - 2)
    )


_YES_OR_NO = {("yes", "or", "no"), ("yay", "or", "nay"), ("yea", "or", "nay")}
SUPPOSED = words_in("supposed normal ok okay bad right meant good fine alright safe gone ruined a")
_KNOWN_HOW = words_in(
    "know knows knew see sees saw tell tells shows of about on amazing matter is was forgot "
    "forget learn learned learnt understand love like guess remember surprised depends and"
)


def _wh_asks(first: str, after: str, marked: bool) -> bool:
    if not marked and first == "what" and after in _NOT_ASKED:
        return False
    if not marked and first == "how" and after not in _HOW:
        return False
    if not marked and first == "why" and after in ("not",):
        return False
    if first in ("when", "where", "which", "who") and not marked:
        return (
            after in _AUX
            or after in ("'s", "to", "one", "bin", "is")
            or (first == "who" and (after not in ("'s",)))
        )
    return True


_NOT_ASKED = words_in("a an with i we you he she they it my the our lovely fun great joy")
_HOW = words_in(
    "much many full long deep do does did to is are can often big come would should about "
    "strong hot soon far bad close heavy 's old late wide thick we i high low hard will could "
    "am has have often small finely coarse thin fast quickly tightly firmly tall regularly"
)


def _inverted(first: str, after: str) -> bool:
    if first in ("didnt", "isnt", "arent", "doesnt", "cant", "couldnt", "shouldnt", "wont",
                 "wouldnt",
                 "hasnt", "havent", "do", "did", "have", "had", "has", "was", "will", "may",
        "might", "must"):  # fmt: skip
        return after in SUBJECTS or after in (
            *(("a",) if first in ("will", "was", "may", "might") else ()),
            "bran",
            "starter",
            "the",
            "my",
            "our",
            "one",
            "any",
            "anyone",
            "this",
            "we",
        )
    if after in _SUBJECT_LIKE:
        return True
    if first in ("is", "are", "isnt", "arent", "am", "se"):
        return after.isalpha() and after not in __NO_SUBJECTS and after not in verb_words()
    return (
        after.isalpha()
        and after not in __NO_SUBJECTS
        and after not in verb_words()
        and len(after) > 2
    )


__NO_SUBJECTS = words_in(
    "be not have barely hardly only never just also easily probably well confirm report "
    "mention someone's now still in on at to from of with for good great ok okay nice getting "
    "going full and but so really very quite too up down out done then well again sealed "
    "drained buried closed confirm vouch safely"
)


def _asks_within(norms: Sequence[str]) -> bool:
    """ "For a 10 L can, how much?" and "so it goes where?" carry their asking word inside."""
    for k, norm in enumerate(norms):
        if norm in ("how", "what", "when", "who", "whose", "why", "which", "where"):
            return True
        if norm in _AUX and norms[k + 1 : k + 2] and norms[k + 1] in SUBJECTS:
            return True
    return False


_NO = words_in("no nope nah naw nay negative nee nein never")
_NO_MATTER = words_in("idea clue chance way need time point use not , -")
"""Behind "no" they deny; "no liquid" tells of what was done."""
_HAVE_NOT = words_in("havent didnt wasnt couldnt cant forgot")
_DENIED_BY = {"i": _HAVE_NOT, "we": _HAVE_NOT, "nobody": frozenset({"", "has", "did", "yet"})}
_DONE_WHEN = words_in("now today tonight morning afternoon evening earlier yesterday")
_YET_TO_COME = words_in("not next until till before tomorrow later")
_LITTLE = words_in("much many a bad enough too only just")


def is_denial(norms: Sequence[str], start: int, days: frozenset[int]) -> bool:
    """ "No, just a peek", "not yet", "I haven't": whether a sentence says that it was not done.

    "No, yesterday" and "no, 3 kg" say that it was. `start` is the number of its first word and
    `days` those of the days on which it may have been done.
    """
    first, after = (*norms[:2], "", "")[:2]
    if first == "not":
        return after not in _LITTLE
    if first in _DENIED_BY:
        return after in _DENIED_BY[first]
    if first not in _NO or (after and after not in _NO_MATTER):
        return False
    if not _YET_TO_COME.isdisjoint(norms):
        return True
    if norms[1:3] in ([",", "a"], [",", "an"]):
        return False  # "no, a caddy full"
    dated = not days.isdisjoint(range(start, start + len(norms)))
    return not dated and _DONE_WHEN.isdisjoint(norms) and not any(n[:1].isdigit() for n in norms)
