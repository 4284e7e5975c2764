"""Tea that is the liquid of a bin and not the one to drink, where it did harm or could."""

from dataclasses import replace

from handlers.reading.harm.harmwords import ANIMAL, WHOSE
from handlers.reading.phrases import Phrase
from handlers.reading.words.late import Late

_DRINK = Late(
    r"\b(?:(?:my|his|her|your|their|hot|iced?|cold|green|black|white|mint|herbal|fruit|chai|"
    r"camomile|chamomile|peppermint|afternoon|morning|cream|earl grey|tasty|nice|lovely|best|"
    r"strong|"
    r"weak|"
    r"builders?|bubble) tea|qmember 's tea|tea (?:and|with|or) (?:cakes?|biscuits?|scones?|toast|"
    r"milk|sugar|lemon|coffee|honey)|teabags?|tea (?:bags?|party|towel|room|time|break|lea(?:f|"
    r"ves)|"
    r"cups?|pots?|house|set|lady|tree|made|brewed)|(?:coffee|cups?|mugs?|pots?|flasks?) (?:\w+ )?"
    r"tea|kettle|biscuits?|cakes?|sugar|milk|party|lunch|breakfast|supper|cafe|visit\w*|party)\b"
)
"""What tea that people make for each other stands beside."""
_FROM_BIN = Late(
    r"\b(?:bin|bins|bucket|qbin|bokashi|compost|scraps?|kitchen scrap|ferment|raw|neat|undiluted|"
    r"diluted|drained|worm) tea\b|\btea (?:i |we )?(?:drained|tapped|ran off|drawn off|from the|"
    r"from "
    r"our|out of the|in the (?:tray|jug|watering can)|off the)\b|"
    r"\bby (?:mistake|accident)\b|\baccident(?:al)?ly\b|\bmistook\b|\b(?:thought|thinking) it was\b"
)
_THE_TEA = (
    r"(?:(?:some|any|a bit|all|a sip|of|from|up|at|into|hold) ){0,4}(?:the |our |that |this )?tea"
)
_HARMED = Late(
    r"\b(?:child|kids?|children|toddler|baby|babies|son|daughter|grand(?:son|daughter|child|kid)|"
    r"little one|wee one|"
    rf"{ANIMAL})\b.{{0,30}}\b(?:the|our|some) tea\b|"
    rf"\btea\b.{{0,40}}\b(?:in|into|on|onto) (?:{WHOSE} ){{1,3}}(?:open |small )?(?:eyes?|cut|"
    rf"wound|"
    r"graze|sore|blister)\b|"
    rf"\beyes?\b.{{0,30}}\b(?:with|by) {_THE_TEA}\b|\bbleach\b|"
    r"\btea\b.{0,20}\b(?:drinkable|edible|poisonous|toxic|safe to drink|harmful|dangerous)\b|"
    rf"\b(?:can|could|may|should|shall|is it|ok to|what if) .{{0,20}}\b(?:drink|taste|sip|swallow) "
    rf"{_THE_TEA}\b"
)


def with_tea_named(phrase: Phrase) -> Phrase:
    """The sentence with tea that a bin gave called leachate: what the patterns know it by."""
    text = phrase.text
    if "tea" not in phrase.tokens or _DRINK.search(text) is not None:
        return phrase
    if _FROM_BIN.search(text) is None and _HARMED.search(text) is None:
        return phrase
    tokens = tuple("leachate" if token == "tea" else token for token in phrase.tokens)
    return replace(phrase, tokens=tokens, text=" ".join(tokens))
