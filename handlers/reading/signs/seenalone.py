"""A sign in a few words that name no bin: "maggots!", "now some of it is green", "like vinegar".

They are of a bin only while the room talks of the bins.
"""

from collections.abc import Mapping

from handlers.practice.signs import MOULD_OF_COLOUR, Sign
from handlers.reading.acts import Ask, Observe
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.signs.mouldcolours import COLOURS
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

_LONGEST = 9
_RULE = "a sign, while the talk is of the bins"
OF_SIGN = "asked of a sign just told"
"""The rule of such a question."""
CUES = words_in(
    "rat rats mouse mice fly flies maggot maggots larvae worms wet soggy slimy soaking dry "
    "dripping stinks stink smells smell smelly reeks reek rotten foul sour vinegar pickles pickle "
    "ammonia green black blue pink red yellow orange grey gray white mould mold mouldy moldy fluff "
    "fluffy nothing drop tap fuzz fuzzy bulging bulged bulges hissing hisses gas leaking leaks leak"
)
"""Words without one of which no such sign is told."""
_COLOURED = Late(
    r"^(?:(?:and|oh|oh no|but|now|so|hmm|uh|ok|,) )*(?:some|bits|parts?|half|most|all|the top)"
    r"(?: bits?| parts?)?(?: of (?:it|them|that))? (?:is|are|has|have|'s|looks?|went|turned|going|"
    r"getting)(?: (?:now|gone|gone all|turned|going|getting|a bit|all|quite|already))* "
    rf"(?P<colour>{'|'.join(MOULD_OF_COLOUR)})"
    r"(?: (?:now|too|as well|already|and (?:fuzzy|furry)))*$"
)
_RECOLOURED = Late(
    r"^(?:(?:actually|no|nope|oh|hmm|sorry|wait|well|but|ok|,) )*(?:(?:it|its|it is|it 's|that is|"
    r"that 's|the mould|the mold) )?(?:(?:is|was|looks?|more|rather|kind|sort|of|a|bit|like|really|"
    rf"actually|mostly|now|on the|side|almost) )*(?P<colour>{'|'.join(COLOURS)})"
    r"(?: (?:actually|really|than (?:white|green|black)|i think|now|side|one|stuff|mould|mold|"
    r"though|sorry|ish|,))*$"
)
""" "Actually it's more green": the growth told before is of another colour."""
_WHERE = (
    r"(?:(?:in|on|at|round|around|near|under|over) (?:the|one|its|a) (?:corners?|edges?|sides?|"
    r"rims?|top|bottom|middle|lid|walls?|surface|one side|far side|back|front)|here and there|"
    r"in places|in there|there)"
)
_COLOURED_TOO = Late(
    r"^(?:(?:and|plus|also|oh|but|hmm|uh|ok|now|yeah|yes|wait|,) )*(?:(?:there is|there 's|theres|"
    r"there are|i see|i can see|i found|it is|it 's|its|it has|it 's got|got) )?(?:(?:also|a|an|"
    r"some|bit|bits|little|few|tiny|small|touch|hint|of|spot|spots|patch|patches|specks?|streaks?|"
    rf"more|going|turning|gone|slightly) )+(?P<colour>{'|'.join(COLOURS)})(?: (?:spots?|patch|"
    r"patches|bits?|specks?|stuff|fuzz|fluff|tinge|streaks?|ones?|too|as well|also|now|"
    rf"{_WHERE}|,))*$"
)
""" "And a bit of green in the corner": behind a growth that was told there is another."""
_SMELLS_LIKE: Mapping[str, Sign] = {
    "vinegar": "sour", "pickles": "sour", "sauerkraut": "sour", "yoghurt": "sour", "cider": "sour",
    "sewage": "rotten", "vomit": "rotten", "sick": "rotten", "poo": "rotten", "death": "rotten",
    "rotten eggs": "rotten", "eggs": "rotten", "feet": "rotten", "ammonia": "ammonia",
    "pee": "ammonia", "cat pee": "ammonia", "beer": "alcohol", "wine": "alcohol",
    "alcohol": "alcohol", "nail varnish": "alcohol",
}  # fmt: skip
_LIKE = Late(
    r"^(?:(?:it|and|but|uh|hmm|sort|kind|kinda|,) )*(?:(?:smells?|smelling|stinks?|reeks?) )?"
    r"(?:(?:a bit|more|of|just|mostly|exactly|strongly) )*(?:like|of) (?:old |strong |bad )?"
    rf"(?P<like>{'|'.join(sorted(_SMELLS_LIKE, key=len, reverse=True))})(?: (?:too|now|really|to "
    r"me|i think))*$"
)


_NOTHING = Late(
    r"^(?:(?:and|but|so|hmm|oh|ok|still|again|,) )*(?:(?:the )?tap (?:(?:gave|gives|let "
    r"out) (?:us )?(?:nothing|not a drop|none)|(?:is|was|'s|ran) dry)|"
    r"(?:nothing|not a drop|not a thing|not much) (?:out|came|comes|came out|coming out|in the "
    r"tray|(?:out )?(?:of|from) the tap))"
    r"(?: (?:today|again|yet|at all|this time|out|of the tap|from the tap))*$"
)


def seen_alone(message: Message) -> Observe | None:
    """What is seen or smelt, where nothing says that it is of anything else."""
    if len(message.norms) > _LONGEST or message.asked:
        return None
    if message.bins or message.members or message.amounts:
        return None
    said = _in_turns(message)
    seen = (said,) if said else tuple(dict.fromkeys(one.sign for one in message.signs))
    if not seen or not (said or _is_only(message)):
        return None
    return Observe(signs=seen, on=message.today, rules=(_RULE,))


_WARM = Late(
    r"^(?:(?:and|but|so|oh|hmm|ok|brr|,) )*(?:(?:it|its|it is|it 's|ours is|mine is|(?:the )?qbin "
    r"(?:is|'s)(?: at)?|only|just|about|around|now|still) )*(?P<warm>qwarm)"
    r"(?: (?:now|today|only))*(?P<where> (?:in|inside) (?:(?:the|our|my) )?(?:qbin|bin|bucket|it|"
    r"there))?(?: (?:now|today|this morning|tonight|already))*$"
)


def measured_alone(message: Message) -> Observe | None:
    """ "It's 8 degrees in the garage", where a bin is called so: how warm it stands."""
    warm = [a for a in message.amounts if a.quantity == "celsius"]
    names = {ref.name for ref in message.bins if ref.known}
    if len(warm) != 1 or len(message.amounts) > 1 or len(names) > 1 or message.signs:
        return None
    if message.asked:
        return None
    norms = list(message.norms)
    spans = [(warm[0].start, warm[0].end, "qwarm")]
    spans += [(ref.start, ref.end, "qbin") for ref in message.bins if ref.known]
    for start, end, name in spans:
        norms[start:end] = [name, *[""] * (end - start - 1)]
    said = _WARM.match(" ".join(norm for norm in norms if norm and norm not in (".", "!")))
    if said is None or not (said["where"] or names or norms[0] in ("ours", "mine")):
        return None
    return Observe(
        celsius=warm[0].value, bin=next(iter(names), None), on=message.today, rules=(_RULE,)
    )


def _is_only(message: Message) -> bool:
    """Whether no more is said than that it is there; weather is wet and dry as well."""
    left = unheld(message.norms, indexes(message.signs) | _grown_on(message))
    weather = all(one.sign in _OF_WEATHER for one in message.signs)
    return _SMALL.issuperset(left) and not (weather and _SCRAPS.isdisjoint(message.said))


def _grown_on(message: Message) -> frozenset[int]:
    """The words of the scraps that a growth is seen on: "white fuzz on the rice"."""
    norms = message.norms
    if not any(one.sign in _GROWTHS for one in message.signs):
        return frozenset()
    things = [item for item in message.items if not item.generic]
    on = [i for i in things if norms[max(0, i.start - 2) : i.start] in _ON_THE]
    growing = any(kind == "garden" for item in on for kind, _ in item.food.shares)
    return indexes(on) if len(on) == len(things) and not growing else frozenset()


_GROWTHS = frozenset({"white_mould", "green_mould", "black_mould", "other_mould"})
_ON_THE = (["on", "the"], ["on", "that"], ["on", "those"], ["over", "the"])
_SMALL = words_in(
    "it it's its is 's are was there theres there's we i we've i've have has got get gets saw seen "
    "see found now another some more again too also a an the in on of all over everywhere inside "
    "really very so quite a bit pretty looks look looking like seems feels oh no uh hmm and but "
    "round around rim edge edges those lots loads few little bits bit spots patches ew eww lol omg "
    "that this stuff scraps top bottom lid bucket , . ! - : ; help yuck ugh"
)
_SCRAPS = words_in("it it's its that this stuff scraps bottom inside")
_OF_WEATHER = frozenset({"wet", "dry", "warm", "cold"})


_IS_LOST = Late(
    r"^(?!are they (?:good|fine)$)(?:(?:and|but|so|oh no|ok|,) )*"
    r"(?:(?:is|was|are) (?:it|that|this|all of it|they) "
    r"(?:still |now |all |really |meant to (?:be |look )|supposed to (?:be |look ))*(?:good|ok|"
    r"okay|fine|usable|ruined|lost|spoiled|spoilt|a lost cause|gone|bad|dead|dying|normal|"
    r"dangerous|harmful|a problem|like (?:that|this)|there)"
    r"|(?:should|must) (?:we|i) (?:be (?:worried|concerned)|worry)|(?:do|should|must) (?:we|i) "
    r"(?:have to |need to )?(?:start|begin) (?:again|over|anew|afresh)"
    r"|(?:do|should|must|shall) (?:we|i) (?:have to |need to )?(?:throw|chuck|bin|tip) (?:it|that|"
    r"all of it|everything)(?: (?:all|away|out))*|can (?:it|we|i) (?:still )?(?:be saved|save it|"
    r"use it)|what (?:do|should|can) (?:we|i) do(?: now| about (?:it|that))?)(?: now| then)?$"
)


def asked_of_sign(message: Message) -> Ask | None:
    """ "Is it still good?", "do we throw it away?", of what was seen in a bin just before."""
    if len(message.norms) > _LONGEST or message.bins or message.items or message.amounts:
        return None
    if _IS_LOST.match(plain_text(message)) is None:
        return None
    return Ask(topic="trouble", rules=(OF_SIGN,))


def _in_turns(message: Message) -> Sign | None:
    text = plain_text(message)
    if match := _COLOURED.match(text):
        return MOULD_OF_COLOUR[match["colour"]]
    told = (message.context.last, message.context.just_told)
    grown = any(isinstance(one, Observe) and not _GROWTHS.isdisjoint(one.signs) for one in told)
    if grown and (match := _RECOLOURED.match(text) or _COLOURED_TOO.match(text)):
        return COLOURS[match["colour"]]
    if _NOTHING.match(text):
        return "no_liquid"
    if match := _LIKE.match(text):
        return _SMELLS_LIKE[match["like"]]
    return None
