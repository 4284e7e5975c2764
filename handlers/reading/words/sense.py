"""The sense of a clause: it happened, it is planned, denied, supposed, asked, told by others."""

from collections.abc import Sequence
from itertools import pairwise
from typing import Literal

from handlers.reading.words.vocabulary import VerbForm, words_in

Sense = Literal["did", "will", "not", "if", "ask", "said", "order", "habit", "you", "none"]
"""`did` it happened; `will` it is planned, wished or due; `not` it did not happen; `if` it is only
supposed; `ask` a question; `said` somebody else's words; `order` somebody is told to; `habit` it
is what one does; `you` the one spoken to did it; `none` there is no verb."""

NOT = words_in(
    "didnt dont wont havent hasnt hadnt isnt wasnt werent cant couldnt wouldnt shouldnt never "
    "not nobody noone nothing nowt nowhere forgot forgotten forget forgetting neglected "
    "failed instead without refuse refused nor neither aint doesnt didn nope avoided nae "
    "canny cannae didnae havenae shant nay stopped resisted refrained missed skipped unable no "
    "nunca kein nicht nie mustnt neednt nearly almost none"
)
_IF = words_in(
    "if unless whether suppose supposing imagine pretend wish wished once until till lest assuming"
)
_MODAL_IN_TONGUES = words_in(
    "voy vas vamos quiero queremos puedo podemos debo werde werden muss möchte chcę będę vou"
)
_MODAL = _MODAL_IN_TONGUES | words_in(
    "will would shall should can could may might must 'd let lets gotta ought wont need needs "
    "want wants wanna plan plans planning planned going hope hopes hoping intend intends "
    "thinking gon ill theyll aiming aim tempted ready supposed meant mean means due expecting "
    "expect better fixing about considering dreaming promise promised remind musta gna "
    "volunteered offered decided willing try"
)
SAID = words_in(
    "says said say saying told tells telling reckons reckoned reckon claims claimed heard "
    "hears thinks thought believes wrote writes suggested suggests recommends recommended "
    "asks asked swears swore insists insisted mentioned explained advised according "
    "apparently supposedly warned quoting states goes-on leaflet article youtube tiktok video "
    "reddit forum blog podcast documentary guy dude"
)
SPOKE = words_in(
    "wrote writes texted texts messaged messages emailed posted posts replied replies goes shouted "
    "yelled whispered announced tweeted quote"
)
"""Words behind which a colon leads to what somebody said."""
_HABIT = words_in(
    "always usually normally generally often sometimes every each typically regularly rarely "
    "whenever seldom"
)
_DONE_TO = words_in(
    "managed remembered had able got remember helped went happened proceeded forced "
    "supposed-to came"
)
_BEFORE_ING = words_in(
    "before without instead of for about by on stop try worth keep like love hate enjoy "
    "recommend suggest avoid consider when if planning thinking stopped tried needs need "
    "wants want than from to mind bother start fancy despite versus any anyone anybody regret "
    "dreaming imagine tired sick was-just risk delay postpone into at"
)
SUBJECTS = words_in("i we he she they it you who u ye youse yous ya")
_FRONT = words_in(
    "and n & then so but or plus also just today yesterday now ok okay right well finally "
    "already even only ah oh hi hey morning evening bot pailkeeper please to @ can you could "
    "kindly"
)


def sense_of(
    left: Sequence[str],
    verb: VerbForm,
    names: frozenset[str],
    *,
    behind: bool,
    coming: bool,
    guessed: bool,
) -> Sense:
    """Sense of a verb from the words of its clause that stand before it.

    `behind` says that the clause names a day that is over, `coming` one that may be to come,
    `guessed` that another's deed is only guessed at.
    """
    if coming and verb.plain in ("go", "come") and verb.form in ("ing", "third"):
        return "will"  # "it's going in the ground on Saturday"
    if behind and verb.form == "either" and left and left[-1] == "'d":
        left = left[:-1]  # "I'd put": had, not would
    left = [word for word in left if word != "·"]
    left = _of_oneself(left, verb, names)
    words = set(left)
    if len(left) > 1 and left[0] == "had" and left[1] in SUBJECTS:
        return "if"
    if "forgot" in words and verb.plain in _WRITES_DOWN:
        return "did"  # "forgot to log Saturday" tells of it all the same
    if left and left[-1] in ("nearly", "almost") and verb.plain in ("go", "do", "finish", "fill"):
        return "did"  # "the bran's nearly gone" tells of it
    early = None if words.isdisjoint(_ASIDE) else _set_aside(left, words)
    if early is not None or guessed:
        return early or "if"
    if verb.form == "past":
        return _of_past(left, words)
    if verb.form == "ing":
        return _of_ing(left, words)
    if verb.form == "third":
        now = verb.plain == "have" and left[-1:] == ["now"]
        return "did" if now or verb.plain in ("go", "come") else "habit"
    return _of_plain(left, words, verb, names)


def is_guessed(left: Sequence[str], names: frozenset[str]) -> bool:
    """ "Maybe Zoe put it in", "could be that she did", "I wonder who put it in": whether the words
    before a verb only guess at what another did.
    """
    at = next((i for i, word in enumerate(left) if word in GUESSING), None)
    if at is None:
        return False
    behind = [word for word in left[at + 1 :] if word not in _BEFORE_DOER]
    if left[at] in _WONDERING:
        return left[at - 1 : at] not in (["no"], ["small"]) and behind[:1] != []
    if left[at] in ("be", "chance") and left[max(0, at - 1)] not in _MAY:
        return False
    led = left[: at - (left[at] in ("be", "chance"))]
    others = bool(behind) and (behind[0] in names or behind[0] in _OTHERS)
    return others and all(word in _FRONT or word == "it" or not word[0].isalpha() for word in led)


_WONDERING = words_in("wonder wondering")
GUESSING = _WONDERING | words_in("maybe perhaps possibly probably presumably be chance")
_MAY = words_in("could might may any")
_BEFORE_DOER = words_in("that it was the one of")
_OTHERS = words_in(
    "he she they someone somebody anyone anybody kids children neighbours neighbors others you us "
    "them"
)


def _of_oneself(left: list[str], verb: VerbForm, names: frozenset[str]) -> list[str]:
    """The words that tell a deed: "Ines says she" added is what a member reports of her own."""
    if verb.form not in ("past", "either") or len(left) < 3 or left[0] not in names:
        return left
    at = next((i for i, word in enumerate(left[1:4], 1) if word in _REPORTS), None)
    if at is None:
        return left
    rest = left[at + 1 :]
    while rest and (rest[0] in ("me", "us", "that") or rest[0] in names):
        rest = rest[1:]
    return rest if rest[:1] and rest[0] in ("she", "he", "they") else left


_REPORTS = words_in("says said told tells mentioned reports reported texted messaged wrote writes")


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


_ASIDE = NOT | _IF | SAID | _HABIT | {"used"}
_WRITES_DOWN = words_in(
    "log say mention post tell write note record report said put add update message weigh"
)


def verbless_sense(norms: Sequence[str]) -> Sense:
    """Sense of a clause none of whose words is a verb we know.

    `norms` go up to the last thing told; what trails behind it ("..., can't stay") denies nothing.
    """
    words = set(norms)
    if "nobody" in words or "noone" in words:  # "the egg salad nobody claimed"
        words -= {b for a, b in pairwise(norms) if a in ("nobody", "noone")}
    if not words.isdisjoint(SAID) and words.isdisjoint(_INSTRUMENTS):
        return "said"
    if not words.isdisjoint(_NEVER):
        return "not"
    if not words.isdisjoint(_WILL):
        return "will"
    return "habit" if norms and norms[0] in ALWAYS else "none"


_INSTRUMENTS = words_in("thermometer probe scale scales strip meter gauge display label paper")
_NEVER = words_in("didnt never havent hasnt wouldnt couldnt wont cant shouldnt hadnt")
_WILL = (
    words_in(
        "will would should could might must shall gotta need needs want wants if unless hope "
        "hoping planning plan wish tomorrow lets 'd meant promised imagine suppose supposing"
    )
    | _MODAL_IN_TONGUES
)
ALWAYS = words_in("always usually normally typically generally")
VERBLESS = SAID | _NEVER | _WILL | ALWAYS
"""Words without one of which a clause that has no verb has no sense either."""


def _denies(left: Sequence[str]) -> bool:
    last = len(left) - 1
    for k, word in enumerate(left):
        if word not in NOT:
            continue
        if word in ("nearly", "almost"):
            if k < last - 1 or (k == last - 1 and left[last] not in SUBJECTS):
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
        if word == "none" and left[k + 1 : k + 2] != ["of"]:
            continue
        return True
    return False


def _of_past(left: Sequence[str], words: set[str]) -> Sense:
    modal = not words.isdisjoint(_MODAL)
    if modal and ("have" in words or "be" in words or "get" in words):
        return "if" if "have" in words else "will"
    if "to" in words and ("be" in words or "get" in words):
        return "will"
    if modal and left and left[-1] in ("would", "should", "could") and "i" not in words:
        return "will"
    if left and left[-1] in ("you", "u", "ye", "yous", "youse"):
        return "you"
    return "did"


def _of_ing(left: Sequence[str], words: set[str]) -> Sense:
    last = left[-1] if left else ""
    if list(left[-3:]) in (["got", "round", "to"], ["got", "around", "to"]):
        return "did"
    if last in _BEFORE_ING or (len(left) > 1 and left[-2] in _BEFORE_ING and last in ("the", "it")):
        return "will"
    if "be" in words or (not words.isdisjoint(_MODAL) and "was" not in words):
        return "will"
    if "you" in words:
        return "you"
    return "did"


def _of_plain(left: Sequence[str], words: set[str], verb: VerbForm, names: frozenset[str]) -> Sense:
    last = left[-1] if left else ""
    if last == "don":
        return "did"  # "I don seal am"
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
    if verb.form == "either" or (last in ("i", "we") and _is_over(left)):
        return "did"  # "last night I drain the shed"
    if last in SUBJECTS or last in names:
        return "habit"
    if all(word in _FRONT or not word[0].isalpha() for word in left):
        return "order"
    return "habit"


def _is_over(left: Sequence[str]) -> bool:
    """Whether a day that is over is told first of all."""
    return left[0] == "yesterday" or (left[0] == "last" and left[1] in _LAST)


_LAST = words_in(
    "night evening week weekend monday tuesday wednesday thursday friday saturday sunday"
)
_ASKED_TO = words_in("would will ive 'd must should please dont lets might gotta need")


def _of_infinitive(left: Sequence[str]) -> Sense:
    before = left[: len(left) - 1 - list(reversed(left)).index("to")]
    if before and before[-1] in _DONE_TO and not _ASKED_TO & set(before):
        if before[-1] == "got" and "have" in before:
            return "will"
        return "did"
    return "will"
