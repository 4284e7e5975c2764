"""Harm that somebody tells of or asks about: a splash in the eye, a child that drank the liquid.

It is heard whoever is spoken to, since it can hurt; what did not happen is left alone.
"""

import re
from collections.abc import Iterator

from handlers.practice.dilution_words import USE_WORDS
from handlers.practice.harm import Hazard
from handlers.reading.acts import Ask
from handlers.reading.arranged import Harm
from handlers.reading.asking import is_question
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.names import BIN_WORDS
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.question import CRAFT
from handlers.reading.vocabulary import words_in

CUES = (
    *("eye", "mouth", "drank", "drink", "drunk", "swallow", "tast", "sip", "lick", "lapped"),
    *("been at", "got at", "got hold", " ate ", " eat", "edible", "breath", "inhal", "lungs"),
    *(
        "gas",
        "fume",
        "explo",
        "burst",
        "blow up",
        "bleach",
        "chlorine",
        "my skin",
        "his skin",
        "her skin",
        "hands",
        " face",
    ),
    *(" arm", " leg", "cut m", "cut h", "myself", "wound", " bit ", "bitten", " bite", "sick"),
    *(" ill", "fever", "cough", "headache", "vomit", " rash", "dizzy", "poorly", "unwell"),
    *(
        "pipe",
        "cable",
        "the drain",
        "sink",
        "toilet",
        " loo ",
        " loo?",
        "neat",
        "undiluted",
        "straight",
    ),
    *("pregnan", "asthma", "immun", "kids", "children", "glove", "feed", "poison", "toxic"),
    *("danger", "harmful", " on my "),
)

_LIQUID = r"(?:liquid|juice|leachate|liquor|run ?off|drainings|fluid|bokashi tea|bokashi)"
_FERMENT = (
    rf"(?:{_LIQUID}|ferment|fermented \w+|bran|inoculant|pickled scraps|scraps (?:from|out of|in) "
    r"(?:the )?(?:bin|bucket|qbin|pail)|(?:stuff|some|bits?|something|anything|what|it|them) "
    r"(?:is |'s |comes? )?(?:from|out of|off|in|inside) (?:the )?(?:bin|bucket|qbin|tap|tray|pail|"
    r"caddy|jug))"
)
_OTHER_DRINK = re.compile(
    r"\b(?:orange|apple|fruit|tomato|lemon|lime|cranberry|grape|carrot|pineapple|mango|"
    r"beet(?:root)?"
    r"|pomegranate|grapefruit|raisin|oat|fizzy|glass of|carton of|breakfast) (?:juice|bran)\b|"
    r"\bbran (?:flakes|muffins?)\b|\b(?:my|his|her|your|all the) juice\b"
)
_STUFF = rf"(?:{_LIQUID}|some|it|splash\w*|squirt\w*|spray\w*|drops?|bran|starter|dust|bit|stuff)"
_OTHER_STUFF = re.compile(
    r"\b(?:soap|shampoo|sand|eyelash|onions?|chill?i|lemon|sun|sunscreen|paint|contact|pollen|"
    r"smoke|perfume|midges?|football|tears?|twinkle|glint|apple|evil|black)\b"
)
_WHOSE = r"(?:my|his|her|our|their|your|the|an?|one|both|each|qmember 's|\w+ 's)"
_DENIED = re.compile(
    r"\b(?:nobody|no one|none|nothing|didnt|did not|never|nearly|almost|hasnt|havent|wont|doesnt|"
    r"does not|(?:dont|do not|avoid|without|not to|before you|so you dont) (?:let|get|getting|"
    r"drink|eat|swallow|breathe|inhale|mix|put|pour))\b"
)
_PERSON = (
    r"(?:i|we|he|she|they|you|child|children|kids?|toddlers?|baby|boys?|girls?|son|daughter|"
    r"grand\w+|someone|somebody|anyone|anybody|qmember|husband|wife|neighbou?rs?|friend|mum|dad|"
    r"mother|father|brother|sister|pupils?|students?|nephew|niece|man|woman|lad|wee one|little one)"
)
_ANIMAL = (
    r"(?:dogs?|puppy|puppies|pup|cats?|kitten|pets?|hens?|chickens?|chooks?|ducks?|pigs?|goats?|"
    r"rabbits?|horse|pony|sheep|cows?|hamster|guinea pigs?|animals?|livestock|tortoise|parrot)"
)
_DRANK = (
    r"(?:drank|drunk|drinks|drinking|swallow(?:ed|s|ing)|sipped|tasted|gulped|lapped(?: up)?|"
    r"licked|slurped|ate|eaten|eats|eating|chewed|ingested|gobbled|"
    r"had (?:a )?(?:sip|taste|swig|drink|lick|mouthful) of|got hold of|been at|got at)"
)
_SOME = r"(?:(?:some|a bit|a sip|a cup|a glass|any|all|half|most|lots|of|the|our|my|this|that|your|"
_SOME += r"raw|neat|bin) ){0,4}"
_BY_ANIMAL = re.compile(rf"\b{_ANIMAL} (?:\w+ ){{0,2}}?{_DRANK} {_SOME}(?:{_FERMENT}|it|some)\b")
_BY_PERSON = re.compile(
    rf"(?:^|\b{_PERSON} (?:\w+ ){{0,2}}?){_DRANK} {_SOME}(?P<what>{_FERMENT}|it|some)\b"
)
_TOLD: tuple[tuple[Hazard, re.Pattern[str]], ...] = (
    ("in the eye", re.compile(rf"\b{_STUFF}\b.{{0,40}}\b(?:in|into) (?:{_WHOSE} ){{1,3}}eyes?\b")),
    ("in the eye", re.compile(rf"\beyes?\b.{{0,30}}\b(?:splashed|squirted|"
                              rf"hit)\b.{{0,20}}{_LIQUID}")),
    ("swallowed", re.compile(rf"\b{_STUFF}\b.{{0,40}}\b(?:in|into) (?:{_WHOSE} ){{1,3}}mouth\b")),
    ("bitten", re.compile(r"\b(?:rat|mouse) (?:has |just )?bit\b|\bbitten by (?:a|the) (?:rat|"
                          r"mouse)\b"
                          r"|\brat bite\b")),
    ("in a wound", re.compile(
        rf"\b{_STUFF}\b.{{0,30}}\b(?:in|into|on) (?:{_WHOSE} )(?:open |small )?(?:cut|wound|graze|"
        r"scratch|sore)\b")),
)  # fmt: skip
_TOLD_OURS: tuple[tuple[Hazard, re.Pattern[str]], ...] = (
    ("in a wound", re.compile(
        r"\b(?:cut|sliced|stabbed|gashed|pricked|nicked|jabbed) (?:(?:my|his|her|our|their) "
        r"(?:\w+ )?(?:hand|finger|thumb|arm|leg|foot|toe|knee|self)|myself|himself|herself)\b")),
    ("on the skin", re.compile(
        rf"\b{_STUFF}\b.{{0,40}}\b(?:on|over|down|onto) (?:{_WHOSE} )(?:bare )?(?:hands?|skin|"
        rf"arms?|"
        r"legs?|face|foot|feet|fingers?|lips?|clothes)\b")),
    ("ill after", re.compile(
        r"\b(?:fever|feverish|ill|sick|cough(?:ing)?|headache|vomit\w*|throwing up|diarrh\w+|rash|"
        r"poorly|unwell|short of breath|wheez\w+|dizzy|nause\w+)\b.{0,30}\b(?:after|since|"
        r"from)\b")),
    ("pipe or cable", re.compile(
        r"\b(?:hit|struck|cut|damaged|nicked|broke|burst|severed|went through|dug (?:through|into))"
        r" (?:a|the|an|some|what looks like a) (?:\w+ ){0,2}?(?:pipe|cable|main|wire|line)\b")),
)  # fmt: skip
_MOULD = r"(?:moulds?|molds?|mouldy|moldy|spores?|fungus|fuzz|mildew)"
_BREATHED = re.compile(
    rf"\b(?:breath(?:e|ed|ing)?|inhal(?:e|ed|ing)|lungful)\b.{{0,30}}\b(?:{_MOULD}|dust|bran|gas|"
    rf"gases"
    rf"|fumes|green|black)\b|\b(?:{_MOULD}|dust|bran|fumes)\b.{{0,20}}\bin (?:my|his|her) lungs?\b"
)
_BLEACH = re.compile(r"\b(?:bleach|bleached|chlorine|hypochlorite|disinfectant)\b")
_MIXED = re.compile(
    r"\b(?:mixed|poured|put|added|tipped|chucked|threw|splashed|dumped|combined) (?:\w+ ){0,4}?"
    rf"(?:bleach|chlorine)\b(?=.*\b(?:{_LIQUID}|ferment|scraps|bin|bucket|qbin|pail|tray)\b)|"
    rf"\bmixed (?:\w+ ){{0,3}}{_LIQUID} (?:\w+ ){{0,2}}(?:with|and) (?:\w+ )?bleach\b"
)
_WASHED = re.compile(
    r"\b(?:washed|cleaned|scrubbed|rinsed|swilled|sprayed)\b.{0,30}\bwith (?:\w+ )?bleach\b"
)
_MAY = (
    r"(?:(?:can|could|may|should|would|shall|do|does|will|might) (?:\w+ ){1,3}?|"
    r"(?:is it |it is |it 's |is that )?(?:safe|ok|okay|all ?right|alright|fine|allowed|bad|"
    r"dangerous|harmful) (?:for (?:\w+ ){1,3})?to |what (?:happens )?if (?:\w+ ){1,3}?)"
)
_TO_DRINK = re.compile(
    rf"\b{_MAY}(?:drinks?|sip|taste|eats?|swallows?) {_SOME}(?:{_FERMENT}|it|bokashi)\b|"
    rf"\b{_LIQUID}\b.{{0,20}}\b(?:drinkable|edible|poisonous|toxic|safe to drink)\b|"
    rf"\b(?:drink|eat|taste) (?:the |this |that |our )?{_LIQUID}$"
)
_TO_FEED = re.compile(
    rf"\b(?:can|could|may|should|ok|okay|safe|allowed|will|would|do|does|what if)\b.{{0,40}}"
    rf"(?:\bfeed\b.{{0,40}}\b{_ANIMAL}\b|\b{_ANIMAL} (?:eat|have|drink|get|lick|eats|drinks) "
    rf"{_SOME}(?:{_FERMENT}|it|scraps|leftovers|them|this|that)\b|\b(?:give|to|for) (?:the |my |"
    rf"our )?"
    rf"{_ANIMAL}\b.{{0,30}}{_FERMENT})"
)
_BAD_FOR = (
    r"(?:dangerous|harmful|hazardous|toxic|poisonous|unhealthy|explosive|flammable|bad for (?:me|"
    r"you|"
    r"us|health|the lungs)|explode|catch fire|hurt|kill|make (?:me|us|you|people) (?:ill|sick)|"
    r"safe)"
)
_GAS = re.compile(
    rf"\b(?:gas|gases|fumes)\b.{{0,40}}\b{_BAD_FOR}\b|\b{_BAD_FOR}\b.{{0,20}}\b(?:gas|gases|"
    rf"fumes)\b|"
    r"\b(?:can|could|will|might) (?:the |a |our )?(?:bin|bucket|qbin|lid|pail|it)s? (?:explode|"
    r"blow up|"
    r"burst)\b"
)
_BURNS = re.compile(
    rf"\b{_LIQUID} (?:burn|hurt|harm|irritate|sting|damage)s? (?:my |the |your |our )?"
    r"(?:skin|hands?|eyes?)\b"
)
_OTHER_GAS = words_in(
    "bill cooker heater boiler bottle canister stove meter fire engineer tank price hob tear ring"
)
_IS_MOULD_BAD = re.compile(
    rf"\b(?:is|are|can|could|will|does)\b.{{0,30}}\b{_MOULD}\b.{{0,25}}\b(?:dangerous|harmful|"
    rf"hazardous|"
    r"toxic|poisonous|unhealthy|bad for|hurt|make (?:me|us|you|people|anyone) (?:ill|sick))\b"
)
_WHO = re.compile(
    r"\b(?:pregnant|pregnancy|asthma|asthmatic|immun\w+|copd|chemo\w*)\b|"
    r"\b(?:safe|ok|okay|alright|dangerous|suitable) for (?:the |my |our |small |young )*"
    r"(?:kids|children|toddlers?|child|pupils)\b|"
    r"\b(?:can|should|may) (?:the |my |our |small )*(?:kids|children|toddlers?) "
    r"(?:help|do|touch|handle|stir|drain|use|work)\b"
)
_GLOVES = re.compile(
    r"\b(?:need|wear|use|have to wear|should i wear|must i wear) (?:\w+ )?gloves\b|"
    r"^(?:are )?gloves(?: needed| necessary)?$"
)
_DOWN = re.compile(
    rf"\b(?:{_LIQUID}|it|rest|excess|this|that|what is left)\b.{{0,20}}\b(?:down|into|"
    rf"in) (?:the |my |"
    r"our |a )?(?:\w+ )?(?:drains?|sink|toilet|loo|plughole|gully|septic tank|lavatory)\b"
)
_NEAT = re.compile(r"\b(?:neat|undiluted|unthinned|straight(?! away| after| on)|pure|without water|"
                   r"without diluting)\b")  # fmt: skip
_ONTO = re.compile(
    rf"\b(?:put|use|pour|spray|give|feed|water|splash)\b.{{0,30}}\b{_LIQUID}\b|"
    rf"\b(?:put|use|pour|spray)\b.{{0,10}}\b(?:it|{_LIQUID})\b"
)
_GIVEN = re.compile(r"\b(?:can|may|should) (?:i|we|you) (?:use|spray|pour) it (?:on|onto|over) ")
_MEASURED = words_in("much many ratio strong")
_OURS = (
    CRAFT | BIN_WORDS | words_in("spade digging dig dug bury burying buried leachate bran mould")
)


def harm(message: Message) -> Iterator[Found]:
    """What a message tells of or asks about that can hurt, each hazard once."""
    said: set[object] = set()
    for phrase in phrases(message):
        ours = _is_ours(phrase)
        hazard = _told(phrase, ours=ours)
        if hazard and hazard not in said:
            said.add(hazard)
            yield Found(*phrase.sentence, Harm(hazard=hazard), aside=hazard != "chlorine")
        elif hazard is None and (asked := _asked(phrase, ours=ours)) and asked not in said:
            said.add(asked)
            plan = asked if isinstance(asked, Ask) else Harm(hazard=asked)
            yield Found(*phrase.sentence, plan)


def _is_ours(phrase: Phrase) -> bool:
    message = phrase.message
    spoken_of = any(ref.known or ref.plain for ref in message.bins)
    bot = phrase.to_bot or message.context.after_bot
    return bot or spoken_of or message.liquid() or message.has(_OURS)


def _told(phrase: Phrase, *, ours: bool) -> Hazard | None:
    text = phrase.text
    if _DENIED.search(text) and not phrase.asked:
        return None
    if _OTHER_STUFF.search(text) is None:
        for hazard, pattern in _TOLD + (_TOLD_OURS if ours else ()):
            if pattern.search(text):
                return hazard
    if _OTHER_DRINK.search(text) is None:
        if _BY_ANIMAL.search(text) and (ours or phrase.message.liquid()):
            return "swallowed by an animal"
        drank = _BY_PERSON.search(text)
        if drank and (drank["what"] not in ("it", "some") or _means_liquid(phrase)):
            return "swallowed"
    if _BREATHED.search(text):
        return "breathed in"
    if not _is_question(phrase) and _MIXED.search(text):
        return "chlorine"
    return "bleach" if ours and _WASHED.search(text) else None


def _means_liquid(phrase: Phrase) -> bool:
    """Whether "it" is the liquid spoken of before."""
    message = phrase.message
    return (message.liquid() or message.context.after_bot) and not _has(phrase, _EATEN)


_EATEN = words_in("ate eaten eats eating")


def _is_question(phrase: Phrase) -> bool:
    return phrase.asked or is_question(phrase.tokens, False, frozenset())


def _asked(phrase: Phrase, *, ours: bool) -> Hazard | Ask | None:
    text = phrase.text
    if not _is_question(phrase):
        return None
    if _TO_FEED.search(text) and ours:
        return "to feed"
    if _TO_DRINK.search(text) and _OTHER_DRINK.search(text) is None and ours:
        return "to drink"
    if _BLEACH.search(text) and ours:
        return "bleach"
    if _BURNS.search(text):
        return "on the skin"
    if _GAS.search(text) and not _has(phrase, _OTHER_GAS):
        return "gas"
    if _IS_MOULD_BAD.search(text):
        return "mould"
    if _WHO.search(text) and ours:
        return "who should not"
    if _GLOVES.search(text) and ours:
        return "hands"
    return _poured(phrase, ours=ours)


def _poured(phrase: Phrase, *, ours: bool) -> Ask | None:
    """ "Can I put it down the drain?", "can I put the juice on lettuce neat?"."""
    if _DOWN.search(phrase.text):
        return Ask(topic="dilution", use="drain")
    use = next((token for token in phrase.tokens if token in USE_WORDS), None)
    neat = _NEAT.search(phrase.text) is not None
    given = _GIVEN.search(phrase.text) is not None
    if not (ours or given) or (use is None and not neat) or _ONTO.search(phrase.text) is None:
        return None
    if phrase.message.amounts or _has(phrase, _MEASURED):
        return None
    return Ask(topic="dilution", use=use, parts=0.0 if neat else None)


def _has(phrase: Phrase, words: frozenset[str]) -> bool:
    return not words.isdisjoint(phrase.tokens)
