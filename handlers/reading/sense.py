"""The sense of a clause: it happened, it is planned, denied, supposed, asked, told by others."""

from collections.abc import Sequence
from typing import Literal

from handlers.reading.vocabulary import VerbForm, verb_words, words_in

Sense = Literal["did", "will", "not", "if", "ask", "said", "order", "habit", "you", "none"]
"""`did` it happened; `will` it is planned, wished or due; `not` it did not happen; `if` it is only
supposed; `ask` a question; `said` somebody else's words; `order` somebody is told to; `habit` it
is what one does; `you` the one spoken to did it; `none` there is no verb."""

NOT = words_in(
    "didnt dont wont havent hasnt hadnt isnt wasnt werent cant couldnt wouldnt shouldnt never not "
    "nobody noone nothing nowt nowhere forgot forgotten forget forgetting neglected failed instead without refuse "
    "refused nor neither aint doesnt didn nope avoided nae canny cannae didnae havenae nay stopped "
    "resisted refrained missed skipped unable no nunca kein nicht nie mustnt neednt nearly almost"
)
_IF = words_in(
    "if unless whether suppose supposing imagine wish wished once until till lest assuming"
)
_MODAL = words_in(
    "will would shall should can could may might must 'd let lets gotta ought wont need needs want "
    "wants wanna plan plans planning planned going hope hopes hoping intend intends thinking gon "
    "ill theyll aiming aim tempted ready supposed meant mean means due expecting expect better fixing about "
    "considering dreaming promise promised remind musta gna volunteered offered decided willing try"
)
SAID = words_in(
    "says said say saying told tells telling reckons reckoned reckon claims claimed heard hears "
    "thinks thought believes wrote writes suggested suggests recommends recommended asks asked "
    "swears swore insists insisted mentioned explained advised according apparently supposedly "
    "warned quoting states goes-on leaflet article"
)
_HABIT = words_in("always usually normally generally often sometimes every each typically regularly "
                  "rarely whenever seldom")  # fmt: skip
_DONE_TO = words_in("managed remembered had able got remember helped went happened proceeded forced "
                    "supposed-to came")  # fmt: skip
_BEFORE_ING = words_in(
    "before without instead of for about by on stop try worth keep like love hate enjoy recommend "
    "suggest avoid consider when if planning thinking stopped tried needs need wants want than from "
    "to mind bother start fancy despite versus any anyone anybody regret dreaming imagine "
    "tired sick was-just risk delay postpone into at"
)
_SUBJECTS = words_in("i we he she they it you who u ye youse yous ya")
_BE = words_in("am is are was were be been being get gets got getting 's")
_FRONT = words_in("and n & then so but or plus also just today yesterday now ok okay right well "
                  "finally already even only ah oh hi hey morning evening bot pailkeeper please to @ can you could kindly")  # fmt: skip


def sense_of(
    left: Sequence[str], verb: VerbForm, names: frozenset[str], *, behind: bool = False
) -> Sense:
    """Sense of a verb from the words of its clause that stand before it.

    `behind` says that the clause names a day that is over.
    """
    if behind and verb.form == "either" and left and left[-1] == "'d":
        left = left[:-1]  # "I'd put": had, not would
    words = set(left)
    if "forgot" in words and verb.plain in _WRITES_DOWN:
        return "did"  # "forgot to log Saturday" tells of it all the same
    early = _set_aside(left, words)
    if early is not None:
        return early
    if verb.form == "past":
        return _of_past(left, words)
    if verb.form == "ing":
        return _of_ing(left, words)
    if verb.form == "third":
        return "did" if verb.plain in ("go", "come") else "habit"
    return _of_plain(left, words, verb, names)


def _set_aside(left: Sequence[str], words: set[str]) -> Sense | None:
    """Denied, supposed or told by others: whatever the verb's form."""
    if not words.isdisjoint(NOT) and _denies(left):
        return "not"
    if not words.isdisjoint(_IF):
        return "if"
    if not words.isdisjoint(SAID):
        return "said"
    if "used" in words and "to" in words:
        return "habit"
    if not words.isdisjoint(_HABIT) and "this" not in words:
        return "habit"
    return None


_WRITES_DOWN = words_in(
    "log say mention post tell write note record report said put add update message weigh"
)


def verbless_sense(norms: Sequence[str]) -> Sense:
    """Sense of a clause none of whose words is a verb we know."""
    words = set(norms)
    if not words.isdisjoint(SAID) and words.isdisjoint(_INSTRUMENTS):
        return "said"
    if not words.isdisjoint(_NEVER):
        return "not"
    if not words.isdisjoint(_WILL):
        return "will"
    return "none"


_INSTRUMENTS = words_in("thermometer probe scale scales strip meter gauge display label")
_NEVER = words_in("didnt never havent hasnt wouldnt couldnt wont cant shouldnt hadnt")
_WILL = words_in("will would should could might must shall gotta need needs want wants if unless hope "
                 "hoping planning plan wish tomorrow lets 'd")  # fmt: skip


def _denies(left: Sequence[str]) -> bool:
    last = len(left) - 1
    for k, word in enumerate(left):
        if word not in NOT:
            continue
        if word in ("nearly", "almost"):
            if k < last - 1 or (k == last - 1 and left[last] not in _SUBJECTS):
                continue
            return True
        if word == "no" and k < last and left[k + 1] not in ("one", "way"):
            if k == 0 and left[1] == ",":
                continue
            if left[k + 1] in ("worries", "problem", "bother", "rush", "idea"):
                continue
            return True
        if word == "not" and left[k + 1 : k + 2] == ["only"]:
            continue
        return True
    return False


def _of_past(left: Sequence[str], words: set[str]) -> Sense:
    modal = not words.isdisjoint(_MODAL)
    if modal and ("have" in words or "be" in words or "get" in words):
        return "if" if "have" in words else "will"
    if "to" in words and ("be" in words or "get" in words):
        return "will"
    if modal and left and left[-1] in ("'d", "would", "should", "could") and "i" not in words:
        return "will"
    if left and left[-1] in ("you", "u", "ye", "yous", "youse"):
        return "you"
    return "did"


def _of_ing(left: Sequence[str], words: set[str]) -> Sense:
    last = left[-1] if left else ""
    if last in _BEFORE_ING or (len(left) > 1 and left[-2] in _BEFORE_ING and last in ("the", "it")):
        return "will"
    if "be" in words or (not words.isdisjoint(_MODAL) and "was" not in words):
        return "will"
    if "you" in words:
        return "you"
    return "did"


def _of_plain(left: Sequence[str], words: set[str], verb: VerbForm, names: frozenset[str]) -> Sense:
    last = left[-1] if left else ""
    if last == "to" or (len(left) > 1 and left[-2] == "to"):
        return _of_infinitive(left)
    if "did" in words and last not in ("you",):
        return "did"
    if not words.isdisjoint(_MODAL):
        return "will"
    if "please" in words or "pls" in words:
        return "order"
    if last in ("you", "u", "ye") or "you" in words:
        return "you" if verb.form == "either" else "order"
    if verb.form == "either":
        return "did"
    if last in _SUBJECTS or last in names:
        return "habit"
    if all(word in _FRONT or not word[0].isalpha() for word in left):
        return "order"
    return "habit"


def _of_infinitive(left: Sequence[str]) -> Sense:
    before = left[: len(left) - 1 - list(reversed(left)).index("to")]
    if before and before[-1] in _DONE_TO and not {"would", "will", "ive", "'d"} & set(before):
        if before[-1] == "got" and "have" in before:
            return "will"
        return "did"
    return "will"


_WH = words_in("what when where who whos whose which why how wot wat whn hw que cuando como cuanto "
               "cuanta wie wann was-ist wer wieviel")  # fmt: skip
_AUX = words_in(
    "is are am was were do does did can could should shall will would may might must has have had "
    "isnt arent doesnt didnt cant couldnt shouldnt wont wouldnt hasnt havent puedo se"
)
_ASKERS = words_in("anyone anybody someone any")
_SKIP = words_in(
    "· and but so then ok okay hey hi hello oh um er also bot please pls sorry well right quick question "
    "just wait morning evening afternoon folks all guys everyone team q , . : ! - ☺ \n @ and no yes "
    "yo ah hmm hm erm actually btw anyway oi dear ay ayuda y e ( \" ' lads ladies friends namaste hola "
    "ciao eh neighbours neighbors yeah now but tho"
) | {"\n"}
_SUBJECT_LIKE = _SUBJECTS | words_in(
    "the a an my our your this that there these those his her their any all anyone anybody someone "
    "everyone everybody one bran starter liquid leachate juice"
)


def is_question(norms: Sequence[str], marked: bool, names: frozenset[str]) -> bool:
    """Whether a clause asks: by its first words, or by its sign together with its form."""
    if marked and norms[1:2] == ["to"] and norms[0] in ("ok", "okay", "alright", "safe", "fine"):
        return True
    k = 0
    while k < len(norms) and (norms[k] in _SKIP or norms[k] in names):
        k += 1
    if k >= len(norms):
        return False
    if "whom" in norms or (norms[k : k + 1] != ["if"] and _asks_behind_a_bin(norms, k)):
        return True
    first = norms[k]
    after = norms[k + 1] if k + 1 < len(norms) else ""
    if first in _WH:
        return _wh_asks(first, after, marked)
    if first in _AUX:
        if not marked and (
            first in ("had", "were") or (first == "did" and after in ("it", "that"))
        ):
            return False
        if first in ("do", "does", "will") and norms[-1] in (
            "in",
            "count",
            "allowed",
            "ok",
            "work",
        ):
            return True
        return marked or _inverted(first, after)
    if not marked and (_how_within(norms, k) or _is_that_so(norms, k)):
        return True
    if first in _ASKERS:
        return marked or after in ("know", "knows", "got", "have", "seen", "want", "else", "able")
    return marked and _asks_within(norms)


def _asks_behind_a_bin(norms: Sequence[str], k: int) -> bool:
    """ "Roof bin how many days more": the asking word stands behind what is asked about."""
    for i in range(k + 1, min(len(norms), k + 4)):
        if (
            norms[i] in ("how", "when")
            and norms[i + 1 : i + 2]
            and norms[i + 1]
            in ("many", "much", "long", "will", "is", "to", "full", "can", "should", "do", "it")
        ):
            return norms[i - 1] in BIN_WORDS_ASKED
    return False


BIN_WORDS_ASKED = words_in("bin bucket pail one liquid leachate juice bran starter")


def opens_question(norms: Sequence[str]) -> bool:
    """Whether a clause within a sentence opens a question of its own ("..., how much is that")."""
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
            return beyond in _SUBJECTS and norms[k] != "who"
        return after in _AUX | {"'s"} and norms[k] != "which" and norms[k] != "who"
    return norms[k] in _AUX and after in ("i", "we", "you", "it", "they", "this", "that", "there")


def _how_within(norms: Sequence[str], k: int) -> bool:
    """ "For 15 litres how deep a pit I should dig": asked without a sign and not at the start."""
    for i in range(k + 1, len(norms) - 1):
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
    """ "The white stuff on top is that supposed to be there"."""
    return any(
        norms[i] == "is" and norms[i + 1] in ("that", "it", "this") and norms[i + 2] in _SUPPOSED
        for i in range(k + 1, len(norms) - 2)
    )


_SUPPOSED = words_in("supposed normal ok okay bad right meant good fine alright safe gone ruined a")
_KNOWN_HOW = words_in("know knows knew see sees saw tell tells shows of about on amazing matter is was forgot "
                      "forget learn learned learnt understand love like guess remember surprised depends and")  # fmt: skip


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
_HOW = words_in("much many full long deep do does did to is are can often big come would should about strong hot "
                "soon far bad close heavy 's old late wide thick we i high low hard will could am has have often")  # fmt: skip


def _inverted(first: str, after: str) -> bool:
    if first in ("didnt", "isnt", "arent", "doesnt", "cant", "couldnt", "shouldnt", "wont", "wouldnt",
                 "hasnt", "havent", "do", "did", "have", "had", "has", "was", "will", "may", "might", "must"):  # fmt: skip
        return after in _SUBJECTS or after in (
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
        return after.isalpha() and after not in _NO_SUBJECTS and after not in verb_words()
    return (
        after.isalpha()
        and after not in _NO_SUBJECTS
        and after not in verb_words()
        and len(after) > 2
    )


_NO_SUBJECTS = words_in("be not have barely hardly only never just also easily probably well confirm report "
                        "mention someone's now still in on at to from of with for good great ok okay nice "
                        "getting going full and but so really very quite too up down out done then "
                        "well again sealed drained buried closed confirm vouch safely")  # fmt: skip


def _asks_within(norms: Sequence[str]) -> bool:
    """ "For a 10 L can, how much?" and "so it goes where?" carry their asking word inside."""
    for k, norm in enumerate(norms):
        if norm in ("how", "what", "when", "who", "whose", "why", "which", "where"):
            return True
        if norm in _AUX and norms[k + 1 : k + 2] and norms[k + 1] in _SUBJECTS:
            return True
    return False
