"""The name that a whole message gives to a new bin: "answers to Dot", "wrote DOT on it"."""

from handlers.reading.bins.namefrom import NAME_STOPS, is_capital, name_from
from handlers.reading.bins.sizes import SMALLEST_BARE
from handlers.reading.message import Message
from handlers.reading.words.binwords import BIN_WORDS, COLOURS, PLACE_NAMES
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import vocabulary, words_in

CALLED = words_in(
    "called named call calling name christened christen naming dubbed labelled labeled dub "
    "baptised baptized nicknamed titled callin namin"
)


def given_name(message: Message) -> str | None:
    """The name told anywhere in a message: "They voted to call it Dot", "small one, name Dot"."""
    for i, norm in enumerate(message.norms[:-1]):
        if norm not in CALLED and norm not in ("call", "calls"):
            continue
        if told := _capital_behind(message, i + 1):
            return told
    if led := named_by(message, 0, len(message.norms)) or written(message, 0, len(message.norms)):
        return led
    if led := _led_name(message) or _quoted(message) or _that_started(message):
        return led
    if led := _sentence_behind(message):
        return led
    fresh = {b.name for b in message.bins if b.name is not None and not b.known}
    return fresh.pop() if len(fresh) == 1 else _place_opened(message)


def _capital_behind(message: Message, at: int) -> str | None:
    """ "Call it Dot": the capital words from there on, past the words for a bin."""
    while at < len(message.norms) - 1 and message.norms[at] in _IT:
        at += 1
    return (
        name_from(message, at, len(message.norms), capital=True)
        if is_capital(message, at)
        else None
    )


def named_by(message: Message, start: int, end: int) -> str | None:
    """ "Answers to nigel", "my wife calls it Dot", "name puck.": only a name can follow."""
    norms = message.norms
    if _SURE_STARTS.isdisjoint(norms[start:end]):
        return None
    for i in range(start, end - 1):
        if norms[i] == "calls" and (told := _capital_behind(message, i + 1)):
            return told
        lead = next((x for x in _SURE_LEADS if tuple(norms[i : i + len(x)]) == x), None)
        at = i if lead is None else i + len(lead)
        if lead is None or at >= end or message.words[at].kind == "number":
            continue
        stop = norms[at + 1 : at + 2]
        bare = lead == ("name",) and not is_capital(message, at)
        bare = bare and (bool(stop and stop[0].isalnum()) or norms[i - 1 : i] == ["no"])
        bare = bare or (lead[-1] in ("says", "say") and not is_capital(message, at))
        if not bare and norms[at].isalpha() and norms[at] not in NEVER_NAMES | NAME_STOPS | _IT:
            return name_from(message, at, len(norms))
    return None


NEVER_NAMES = words_in(
    "that there here who what he she everything of yet tbc tbd tba pending later suggestions "
    "needed wanted undecided nobody nothing no"
)
_SURE_LEADS = (
    ("answers", "to"), ("answering", "to"), ("goes", "by"), ("known", "as"), ("responds", "to"),
    ("on", "the", "lid", "is"), ("label", "says"), ("lid", "says"), ("tag", "says"),
    ("side", "says"), ("sticker", "says"), ("letters", "say"), ("naam", "rakha", "hai"),
    ("rakha", "naam"), ("name",),
)  # fmt: skip
_SURE_STARTS = words_in("calls") | {lead[0] for lead in _SURE_LEADS}


def written(message: Message, start: int, end: int) -> str | None:
    """ "Wrote FRANK on it", "painted NORA on the side": what stands on a bin in capitals."""
    norms = message.norms
    for i in range(start, end - 2):
        if norms[i] in _WROTE and is_capital(message, i + 1):
            at = i + 1
            while at < end and is_capital(message, at):
                at += 1
            if norms[at : at + 1] == ["on"]:
                return message.text(i + 1, at)
    return None


_WROTE = words_in(
    "wrote written painted scrawled marked stencilled inked scribbled chalked printed"
)


def _sentence_behind(message: Message) -> str | None:
    """ "New bin. Red": a sentence of its own that is no more than the name."""
    if len(message.sentences) != 2:  # the bin, and its name
        return None
    first, second = message.sentences
    said = [n for n in message.norms[first.start : first.end] if n.isalpha()]
    at, stop = second.start, second.end
    while stop > at and not message.norms[stop - 1][:1].isalnum():
        stop -= 1
    words = message.words[at:stop]
    if second.asked or not 0 < len(words) <= _SHORT_NAME or any(w.kind != "word" for w in words):
        return None
    if said not in (["new", "bin"], ["a", "new", "bin"], ["new", "bucket"], ["another", "bin"]):
        return None
    if not _NO_NAME.isdisjoint(message.norms[at:stop]):
        return None
    held = indexes(message.amounts, message.days)
    return message.text(at, stop) if held.isdisjoint(range(at, stop)) else None


_NO_NAME = words_in(
    "yay yes no hooray woohoo great wow hi hello thanks thank ta cheers lol finally please ok okay "
    "done again today here now help nice good lovely exciting same mine ours shared communal"
)
_SHORT_NAME = 2
"""Words of a name that is a sentence."""
_LEADS = (
    ("goes", "by"), ("going", "by"), ("known", "as"), ("answers", "to"), ("answering", "to"),
    ("name", "'s"), ("se", "llama"), ("le", "pusimos"), ("being",), ("as",), ("it", "'s"),
    ("she", "'s"), ("he", "'s"), ("it", "is"), ("she", "is"), ("he", "is"), ("meet",),
    ("introducing",), ("hello", "to"), ("=",), ("nickname",), ("name", "will", "be"),
)  # fmt: skip
_LEAD_STARTS = frozenset(lead[0] for lead in _LEADS)


def _led_name(message: Message) -> str | None:
    """ "Going by Nickel", "se llama Paco", "to be known as Prior"."""
    norms = message.norms
    for i, norm in enumerate(norms):
        if norm not in _LEAD_STARTS:
            continue
        for lead in _LEADS:
            at = i + len(lead)
            told = tuple(norms[i:at]) == lead
            at += at < len(norms) and norms[at] in ("'", '"', "the")
            if told and is_capital(message, at):
                return name_from(message, at, len(norms), capital=True)
    return None


def _quoted(message: Message) -> str | None:
    """ "New bin "Chotu" started": the capital words between quotation marks."""
    mark = next((sign for sign in ('"', "'") if sign in message.norms), None)
    if mark is None:
        return None
    at = message.norms.index(mark) + 1
    named = is_capital(message, at) and mark in message.norms[at + 1 : at + _LONGEST]
    return name_from(message, at, len(message.norms), capital=True) if named else None


_LONGEST = 5
"""Words in a name and its closing mark, at most."""


def _that_started(message: Message) -> str | None:
    """ "Penny's started", "Mango Two is up and running": the capital words before the copula."""
    norms = message.norms
    for i in range(1, len(norms) - 1):
        if norms[i] not in ("'s", "is", "=") or norms[i + 1] not in _BEGUN:
            continue
        start = i
        while start > 0 and is_capital(message, start - 1) and norms[start - 1] not in _NO_NAMES:
            start -= 1
        if start < i:
            return message.text(start, i)
    return None


_BEGUN = words_in("started begun up going open live new")
_NO_NAMES = words_in("it that there this here who what he she everything one") | BIN_WORDS


def _place_opened(message: Message) -> str | None:
    """ "Opened shed, 20 litres", "opened room 12": a room or a colour right behind the verb, and no
    other thing.
    """
    measured = {amount.start for amount in message.amounts}
    for clause in message.clauses:
        if clause.verb is None or "open" not in clause.verb.verb.classes:
            continue
        at = clause.verb.end
        while message.norms[at : at + 1] and message.norms[at] in ("the", "our", "my"):
            at += 1
        numbered = message.norms[at : at + 1] and message.norms[at] in _NUMBERED
        end = at + 1 + bool(numbered and message.words[at + 1 : at + 2])
        if numbered and message.words[end - 1].kind != "number":
            continue
        if numbered or (message.norms[at : at + 1] and message.norms[at] in PLACE_NAMES | COLOURS):
            behind = message.norms[end : end + 1]
            if not behind or not behind[0].isalpha() or end in measured:
                return message.text(at, end)
        elif _is_word_with_size(message, at):
            return message.text(at, end)
    return None


def _is_word_with_size(message: Message, at: int) -> bool:
    """ "Opened horace, 20 litres": a word of its own, its size behind it and no more."""
    norm = message.norms[at] if at < len(message.words) and message.words[at].kind == "word" else ""
    if len(norm) < _SHORTEST or norm in vocabulary() or norm in _NO_SIZED | _NO_NAMES:
        return False
    end = at + 1 + (message.norms[at + 1 : at + 2] == [","])
    sizes = [a for a in message.amounts if a.start == end and a.quantity == "volume"]
    if not sizes or sizes[0].value < SMALLEST_BARE:
        return False
    behind = message.norms[sizes[0].end : sizes[0].end + 1]
    return not behind or behind[0] in NAME_STOPS


_SHORTEST = 3
_NO_SIZED = words_in(
    "tank tanks cask casks cellar door window windows gate account tap box bottle bottles can cans "
    "jar jars bag bags tin tins pack packs carton crate engine fuel petrol diesel cement compost "
    "with about around another some bran starter"
)
"""What is opened with litres too, and may be no bin."""


_NUMBERED = words_in("room plot flat class unit floor")
_IT = words_in("it him her er them this that one is of 's : \" the")


def vessel_as_name(message: Message) -> str | None:
    """ "Opened the barrel, 60 L": the one vessel of its sort is called by it in a room."""
    if not message.context.in_room:
        return None
    pairs = zip(message.norms, message.norms[1:], strict=False)
    named = {word for the, word in pairs if the in ("the", "our") and word in _OF_ITS_SORT}
    return named.pop() if len(named) == 1 else None


_OF_ITS_SORT = words_in("barrel drum keg churn cask urn tank tote crock")
