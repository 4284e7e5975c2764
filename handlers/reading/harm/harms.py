"""Harm that somebody tells of or asks about: a splash in the eye, a child that drank the liquid.

It is heard whoever is spoken to, since it can hurt; what did not happen is left alone.
"""

from collections.abc import Iterator

from handlers.practice.dilution_words import use_said
from handlers.practice.harm import Hazard
from handlers.reading.acts import Ask
from handlers.reading.arranged import Harm
from handlers.reading.found import Found
from handlers.reading.harm.harmcases import (
    ASKED_NEAR,
    ASKED_OF_ANYBODY,
    FRAIL_TOLD,
    STALE,
    TOLD_NEAR,
)
from handlers.reading.harm.harmcases import CUES as CASE_CUES
from handlers.reading.harm.harmtea import with_tea_named
from handlers.reading.harm.harmwords import (
    BLEACH,
    BREATHED,
    BURNS,
    BY_ANIMAL,
    BY_MISTAKE,
    BY_PERSON,
    DENIED,
    DOWN,
    FED_FOR_ONE,
    GAS,
    GERMS,
    GIVEN,
    GLOVES,
    HANDLING,
    IS_IT_SAFE,
    IS_MOULD_BAD,
    MEASURED,
    MIGHT_ILL,
    MIXED,
    NEAT,
    NOT_OF_JARS,
    ONTO,
    OTHER_DRINK,
    OTHER_GAS,
    OTHER_STUFF,
    OURS,
    PRESERVES,
    RATIO,
    TAKEN_FOR,
    TO_DRINK,
    TO_FEED,
    TOLD,
    TOLD_OURS,
    WASHED,
    WHAT_NEXT,
    WHO,
)
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.asking import is_question
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = (
    *("eye", "mouth", "drank", "drink", "drunk", "swallow", "tast", "sip", "lick", "lapped"),
    *("been at", "got at", "got hold", " ate ", " eat", "edible", "breath", "inhal", "lungs"),
    *("touch", "hand", "finger", "thumb", "handled", "played with", "stepped in"),
    *("chest", "gas", "fume", "explo", "burst", "blew up", "blow up", "blown up", "bust"),
    *("shatter", "bleach", "chlorine", "my skin", "his skin", "her skin", "hands", " face"),
    *(" arm", " leg", "cut m"),
    *("cut h", "stab", "slic", "gash", "prick", "myself", "wound", " bit ", "bitten", " bite"),
    *("sick", " ill", "fever", "cough", "headache", "vomit", " rash", "dizzy", "faint", "poorly"),
    *("unwell", "pipe", "cable", "the drain", "sink", "toilet", " loo ", " loo?", "neat"),
    *("undiluted", "straight", "pregnan", "asthma", "immun", "kids", "children", "glove", "feed"),
    *("poison", "toxic", "danger", "harmful", "safe", " on my ", " it on", " it over", "my back"),
    *("lettuce", "salad", "fire", "smok", "needle", "syringe", "glass", "pond", "river", "stream"),
    *("lake", " 1:", " 1 to ", " 1 in ", "botul", "germs", "pathogen", "salmonella", "listeria"),
    *("juice", "leachate", " with it", "got into", "nibbl", "mistook", "coli", "lepto"),
    *CASE_CUES,
)


def harm(message: Message) -> Iterator[Found]:
    """What a message tells of or asks about that can hurt, each hazard once."""
    said: set[object] = set()
    for phrase in map(with_tea_named, phrases(message)):
        ours = _is_ours(phrase)
        hazard = _told(phrase, ours=ours) or _next(phrase)
        if hazard and hazard not in said:
            said.add(hazard)
            yield Found(*phrase.sentence, Harm(hazard=hazard), aside=hazard != "chlorine")
        elif hazard is None and (asked := _asked_about(phrase, ours=ours)) and asked not in said:
            said.add(asked)
            plan = asked if isinstance(asked, Ask) else Harm(hazard=asked)
            yield Found(*phrase.sentence, plan)


def _is_ours(phrase: Phrase) -> bool:
    message = phrase.message
    spoken_of = any(ref.known or ref.plain for ref in message.bins)
    context = message.context
    bot = phrase.to_bot or context.after_bot or context.to_bot or context.of_bins
    return bot or spoken_of or message.liquid() or message.has(OURS)


def _is_near(phrase: Phrase, *, ours: bool) -> bool:
    """Whether it is of ours, or said while the talk is on a record."""
    context = phrase.message.context
    return ours or (context.last or context.earlier) is not None


def _next(phrase: Phrase) -> Hazard | None:
    """What is asked or told further of whoever swallowed of it."""
    if not phrase.message.context.harmed or WHAT_NEXT.search(phrase.text) is None:
        return None
    return "swallowed, what next"


def _told(phrase: Phrase, *, ours: bool) -> Hazard | None:
    text = phrase.text
    if DENIED.search(text) and not phrase.asked:
        return None
    if OTHER_STUFF.search(text) is None:
        near = TOLD_NEAR if _is_near(phrase, ours=ours) else ()
        for hazard, pattern in near + TOLD + (TOLD_OURS if ours else ()):
            if pattern.search(text):
                might = hazard == "ill after" and MIGHT_ILL.search(text) is not None
                return "germs" if might else hazard
    if not _is_other_drink(text) and not _is_of_preserves(phrase):
        if BY_ANIMAL.search(text) and _is_near(phrase, ours=ours):
            return "swallowed by an animal"
        drank = BY_PERSON.search(text)
        if drank and (drank["of_what"] not in (None, "it", "some") or _means_liquid(phrase)):
            return "swallowed"
    if BREATHED.search(text):
        return "breathed in"
    if not _is_question(phrase) and MIXED.search(text):
        return "chlorine"
    return "bleach" if ours and WASHED.search(text) else None


def _is_other_drink(text: str) -> bool:
    return OTHER_DRINK.search(text) is not None and TAKEN_FOR.search(text) is None


def _is_of_preserves(phrase: Phrase) -> bool:
    """ "I made jam and drank the juice": of a jar in the kitchen, where nothing else is named."""
    message = phrase.message
    context = message.context
    if context.after_bot or context.to_bot or any(ref.known or ref.plain for ref in message.bins):
        return False
    return message.has(PRESERVES) and not message.has(NOT_OF_JARS)


def _means_liquid(phrase: Phrase) -> bool:
    """Whether "it" is the liquid spoken of before."""
    message, context = phrase.message, phrase.message.context
    of_ours = message.liquid() or context.after_bot or context.to_bot
    return (of_ours or BY_MISTAKE.search(phrase.text) is not None) and not _has(phrase, _EATEN)


_EATEN = words_in("ate eaten eats eating")


def _is_question(phrase: Phrase) -> bool:
    if phrase.asked or is_question(phrase.tokens, False, frozenset()):
        return True
    return _ASKED_BEHIND.search(phrase.text) is not None


_ASKED_BEHIND = Late(r"\b(?:can|may|should) (?:i|he|she|they|we)\b")
""" "I have asthma, can I do this"."""


def _asked_about(phrase: Phrase, *, ours: bool) -> Hazard | Ask | None:
    if (match := RATIO.match(phrase.text)) and (use := _use(phrase)):
        return Ask(topic="dilution", use=use, parts=float(match["parts"]))
    return _asked_case(phrase, ours=ours) or _asked(phrase, ours=ours)


def _asked_case(phrase: Phrase, *, ours: bool) -> Hazard | None:
    """What is asked by those to whom it could do harm, or told to the bot of being such."""
    if phrase.message.context.to_bot and FRAIL_TOLD.match(phrase.text):
        return "who should not"
    if not _is_question(phrase):
        return None
    near = ASKED_NEAR if _is_near(phrase, ours=ours) else ()
    cases = ASKED_OF_ANYBODY + near
    return next((hazard for hazard, pattern in cases if pattern.search(phrase.text)), None)


def _asked(phrase: Phrase, *, ours: bool) -> Hazard | Ask | None:
    text = phrase.text
    if not _is_question(phrase):
        return None
    near = _is_near(phrase, ours=ours)
    if near and TO_FEED.search(text) and not FED_FOR_ONE.search(text):
        return "to feed"
    stuff = near or text.endswith(" stuff")
    if TO_DRINK.search(text) and not _is_other_drink(text) and stuff:
        return "to drink"
    for hazard, pattern in _ASKED_OF_OURS if ours else _ASKED:
        if pattern.search(text):
            return hazard
    if GAS.search(text) and not _has(phrase, OTHER_GAS):
        return "gas"
    if _asks_who(phrase, ours=ours):
        return "who should not"
    return _poured(phrase, ours=ours)


def _asks_who(phrase: Phrase, *, ours: bool) -> bool:
    """Whether it is asked who had better leave it alone."""
    of_us = _is_near(phrase, ours=ours) or HANDLING.search(phrase.text) is not None
    return (of_us and WHO.search(phrase.text) is not None) or (
        IS_IT_SAFE.fullmatch(phrase.text) is not None
    )


_ASKED: tuple[tuple[Hazard, Late], ...] = (("on the skin", BURNS), ("mould", IS_MOULD_BAD))
_ASKED_OF_OURS: tuple[tuple[Hazard, Late], ...] = (
    ("bleach", BLEACH),
    ("germs", GERMS),
    *_ASKED,
    ("hands", GLOVES),
)


def _poured(phrase: Phrase, *, ours: bool) -> Ask | None:
    """ "Can I put it down the drain?", "can I put the juice on lettuce neat?"."""
    if STALE.search(phrase.text):
        return None
    if DOWN.search(phrase.text):
        return Ask(topic="dilution", use="drain")
    use = _use(phrase)
    neat = NEAT.search(phrase.text) is not None
    given = GIVEN.search(phrase.text) is not None
    if not (ours or given) or (use is None and not neat) or ONTO.search(phrase.text) is None:
        return None
    if phrase.message.amounts or _has(phrase, MEASURED):
        return None
    return Ask(topic="dilution", use=use, parts=0.0 if neat else None)


def _use(phrase: Phrase) -> str | None:
    """What the liquid is to be given to: "tomato seedlings" are no tomatoes yet."""
    return use_said(phrase.tokens)


def _has(phrase: Phrase, words: frozenset[str]) -> bool:
    return not words.isdisjoint(phrase.tokens)
