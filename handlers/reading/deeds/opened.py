"""A bin was started, or named for the first time."""

from collections.abc import Sequence

from handlers.reading.acts import Open
from handlers.reading.bins.naming import called, name_behind, new_name
from handlers.reading.bins.sizes import OF_SIZE, SMALLEST, size_of
from handlers.reading.deeds.toldday import day_of, is_ahead
from handlers.reading.groups import Group, sentence_text
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.people.doers import member_of
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

NAME_LOST = "its name can be none"
"""A further rule of a bin that was called by what is no name."""
_OPENING = frozenset(
    {"open", "start", "begin", "set up", "kick off", "launch", "christen", "name", "get going",
     "inaugurate",
     "set going", "call", "dub"}
)  # fmt: skip
_GETTING = frozenset({"get", "have", "set"})
_NAMING = frozenset({"christen", "name", "call", "dub"})
_SHARED = words_in(
    "shared communal everyone everybody all common anybody public community house block whole "
    "anyone"
)
_NOT_OPENED = words_in(
    "lid tap spigot window door bag account shop bakery book conversation season batting"
)
_NEW = Late(
    r"\b(?:new|fresh) (?:\S+ ){0,2}(?:bin|balde|cubeta|bucket|pail|one|tub|caddy|drum|barrel)\b|"
    r"\b(?:bin|bucket|pail) (?:number )?\d+ joins\b"
)
_BEING = words_in("is 's now officially has all just been")
_IN_USE = Late(
    rf"\bqbin (?:(?:{'|'.join(sorted(_BEING))}) )+(?:up and running|live|open for "
    r"business|in use|in service|"
    r"in action|good to go|on the go|started|up and going|ready for scraps|ready to be filled|"
    r"open)\b"
)
_OPENED = _BEING | {"new", "fresh", "joins"}
"""Words without one of which nothing is opened by another verb, or by none."""
_GOING = Late(
    r"\b(?:got|have|get|had|set) (?:\S+ ){0,5}(?:going|on the go|up and running|set up)\b"
)


def open_of(groups: Sequence[Group], k: int) -> Open | None:
    """The opening or naming of a bin that the k-th group tells of, if it does."""
    group = groups[k]
    if not (_may_be_opened(group) or _has_size(group)) or is_ahead(group) or is_several(group):
        return None
    rule = _opened(groups, k)
    return None if rule is None else open_from(groups, k, rule)


def _may_be_opened(group: Group) -> bool:
    """Whether a verb or a word is there without which nothing is opened."""
    plain = None if group.verb is None else group.verb.verb.plain
    return plain in _OPENING or plain in _GETTING or group.message.has(_OPENED)


def open_from(groups: Sequence[Group], k: int, rule: str) -> Open:
    """The opening with what the k-th group and its neighbours say of it."""
    group = groups[k]
    name, capacity = new_name(group), _capacity(group)
    if name is None and capacity and group.message.context.in_room:
        name = _by_its_kind(group)
    return Open(
        bin=None if name is not None and name.lower() in _SHARED else name,
        capacity_l=capacity,
        shared=True if _is_for_all(group) else None,
        member=member_of(groups, k),
        on=day_of(groups, k, since=True),
        rules=(rule, NAME_LOST) if name is None and _is_called_else(group) else (rule,),
    )


def _by_its_kind(group: Group) -> str | None:
    """ "Opened the tub, 15 L", where the group has other bins: it is called so from then on."""
    refs = [ref for ref in group.bins if ref.name is None and ref.end == ref.start + 1]
    if len(refs) != 1 or not refs[0].start or not group.message.context.bins:
        return None
    before, said = group.message.norms[refs[0].start - 1 : refs[0].end]
    return said if before in ("the", "our") and said in _KINDS_OF_BIN else None


_KINDS_OF_BIN = words_in("tub bucket pail caddy drum barrel keg crock tote")


def _is_called_else(group: Group) -> bool:
    """ "Opened the seal bin", "a bin called 2 kg": called by what can be no name."""
    norms = group.message.norms
    if group.verb is None:
        return False
    for ref in group.bins:
        at = ref.start - 1
        named = at - 1 == group.verb.end and norms[at - 1] in ("the", "our")
        behind = norms[ref.end : ref.end + 1]
        if behind in (["called"], ["named"], ["-"]) or _is_a_number(group.message, ref.end):
            return True
        if ref.name is None and named and norms[at] not in _DESCRIBING:
            return True
    return False


def _is_a_number(message: Message, i: int) -> bool:
    """ "Bin 3.5": a number that measures nothing."""
    measured = any(amount.start <= i < amount.end for amount in message.amounts)
    return i < len(message.words) and message.words[i].kind == "number" and not measured


_DESCRIBING = words_in(
    "new old big small little wee next second third last first other another large spare shared "
    "communal same fresh clean empty plastic metal lidded l litre liter gallon gal kg kitchen food "
    "scrap scraps whole"
)


def _is_for_all(group: Group) -> bool:
    """Whether it is told to be everybody's, there or in words of the next two sentences."""
    message = group.message
    if not _SHARED.isdisjoint(_sentence_words(group)):
        return True
    if not message.has(_FOR_ALL_CUES):
        return False
    return _FOR_ALL.search(" ".join(message.norms)) is not None


_FOR_ALL_CUES = words_in(
    "all shared communal everyone everybody anyone anybody everyones todos todas tous alle tutti "
    "lahat sabke wote share staff parish street terrace tenants residents neighbours neighbors "
    "members team crew congregation parishioners village families volunteers workers teachers "
    "students plots community"
)
_FOR_ALL = Late(
    r"\bfor (?:all )?the (?:\S+ ){0,2}(?:staff|parish|street|terrace|tenants|residents|neighbou?rs"
    r"|members|team|crew|congregation|parishioners|village|families|volunteers|workers|teachers"
    r"|students|plots|community)\b|\bfor (?:the |our )?(?:\S+ ){1,3}to share\b|"
    r"\bcommunity (?:property|bin|bucket)\b|\b4 (?:all|everyone|everybody)\b|"
    r"\bpa (?:todos|todas)\b|"
    r"\b(?:for|belongs to|open to|free to|available to) (?:use by )?(?:us all|all of us|everyone"
    r"|everybody|anyone|anybody|all|the (?:whole|entire) \S+)\b(?! the| of the)|"
    r"\b(?:all|everyone|everybody|anyone|anybody|you all|all of you|all of us|we all|all members"
    r"|all neighbou?rs|all residents|all tenants)(?: here| in the \S+| of us)? "
    r"(?:may|can|could|is (?:free|welcome) to|are (?:free|welcome) to|gets to|to|should) "
    r"(?:please |also |now |freely )*(?:use|share|fill|feed|add|put|throw|chuck|tip|drop)"
    r"\b|"
    r"\b(?:all|everyone|everybody|anyone|anybody)(?: is| are| 's| s)? welcome\b|"
    r"(?:^|[.!;,(-] )(?:it 's |it is |is )?(?:shared|communal)(?: (?:one|bin|use))?(?= [.!;,)]|$)|"
    r"\b(?:todos|todas|tous|alle|tutti)(?: la| lo| le)? (?:pueden|podem|peuvent|konnen|possono)\b|"
    r"\b(?:para|pour|fur|per|por) (?:todos|todas|tous|alle|tutti)\b|\bpara sa lahat\b|"
    r"\bsabke liye\b|\bya wote\b|\b(?:everyone|everybody) 's (?:bin|bucket|to use)\b"
)


def is_several(group: Group) -> bool:
    """ "Opened all three": bins that no name tells apart."""
    return not group.bins and _SEVERAL.search(" ".join(group.norms)) is not None


_SEVERAL = Late(r"\b(?:all|both|the|our|these) (?:two|three|four|five|six|2|3|4|5|6)\b|"
                      r"\b(?:them all|both|all of them)\b")  # fmt: skip


def _sentence_words(group: Group) -> list[str]:
    sentence = group.message.sentences[group.clauses[0].sentence]
    return group.message.norms[sentence.start : sentence.end]


def _opened(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    if _has_size(group):
        return OF_SIZE
    if not _NOT_OPENED.isdisjoint(_own_words(group)) or group.message.bran(group.start, group.end):
        return None
    if (
        group.sense in ("none", "did", "habit")
        and group.message.has(_BEING)
        and _IN_USE.search(sentence_text(groups, k))
        and not _known(group)
    ):
        return "a bin is in use"
    if group.verb is None:
        fresh = _NEW.search(" ".join(group.norms)) and group.sense == "none"
        return (
            "a new bin"
            if fresh and (_capacity(group) or called(group) or name_behind(group))
            else None
        )
    if group.sense != "did":
        return None
    plain = group.verb.verb.plain
    if plain in _GETTING:
        new = "new" in group.norms or _GOING.search(" ".join(group.norms)) is not None
        return "a new bin" if new and _capacity(group) is not None else None
    if plain not in _OPENING:
        return None
    return _started(groups, k, plain, sized=_capacity(group) is not None)


def _has_size(group: Group) -> bool:
    """ "Shed is 20 L", "the blue bin holds 18 litres"."""
    if group.sense not in ("none", "did", "habit") or group.items:
        return False
    return any(size_of(group.message, ref, group.end) for ref in group.bins)


def _own_words(group: Group) -> list[str]:
    """The words of the clause with the verb, or of the whole group without one."""
    if group.verb is None:
        return group.norms
    at = group.verb.start
    own = [c for c in group.clauses if c.start <= at < c.end] or group.clauses[:1]
    return group.message.norms[own[0].start : own[0].end]


def _started(groups: Sequence[Group], k: int, plain: str, *, sized: bool) -> str | None:
    group = groups[k]
    if plain == "open" and not _starts_anew(group):
        return None
    if plain in _NAMING:
        before = any(_opened(groups, j) for j in range(k)) or sized
        fresh = any(b.plain or not b.known for b in group.bins)
        return "a bin was named" if before or fresh else None
    if (group.bins and not _is_only_where(group)) or sized or called(group):
        return "a bin was started"
    if "new" in group.norms and ("one" in group.norms or not BIN_WORDS.isdisjoint(group.norms)):
        return "a bin was started"
    return None


def _is_only_where(group: Group) -> bool:
    """ "Started a new term at the dorm": a place that is not what was started."""
    assert group.verb is not None
    norms, end = group.message.norms, group.verb.end
    if any(b.plain or not b.place for b in group.bins):
        return False
    return not any(
        b.start == end or (b.start == end + 1 and norms[end] in ("the", "our")) for b in group.bins
    )


def _known(group: Group) -> bool:
    return any(b.known and b.name not in group.message.context.retired for b in group.bins)


def _starts_anew(group: Group) -> bool:
    """Whether a bin was opened to be used, and not only its lid to look in."""
    if _capacity(group) is not None or called(group):
        return True
    if not {"new", "again", "fresh", "another", "shared", "communal"}.isdisjoint(group.norms):
        return True
    return not _known(group) and bool(group.names())


def _capacity(group: Group) -> float | None:
    """Litres of the new bin: a size, or a bare volume that no scraps follow."""
    sentence = group.message.sentences[group.clauses[0].sentence]
    exact = [
        a
        for a in group.message.amounts
        if a.quantity == "volume"
        and sentence.start <= a.start < sentence.end
        and a.value >= SMALLEST
        and not _is_below_nought(group.message, a)
        and (a.size or not a.vessel)
        and not any(a.end <= x.start <= a.end + 2 for x in group.message.items)
    ]
    sized = [a for a in exact if a.size]
    return (sized or exact)[0].value if exact else None


def _is_below_nought(message: Message, amount: Amount) -> bool:
    """ "The pink bin, -20 L", where "pink bin -20 L" has a dash."""
    return amount.negative and message.norms[amount.start - 2 : amount.start - 1] in (
        [","],
        [":"],
        ["of"],
        ["is"],
    )
