"""Food that animals or people had, though a bin bears the name or is spoken of beside them."""

import re

from handlers.reading.message import Message
from handlers.reading.phrases import named_text
from handlers.reading.vocabulary import words_in

_BEASTS = (
    r"(?:hens|chickens|chooks|ducks?|geese|goats?|pigs?|piglets|horses?|pony|ponies|cows?|calf|"
    r"sheep|lambs?|dogs?|cats?|parrot|rabbits?|gulls?|pigeons|birds|worms|mice|rats)"
)
_PEOPLE = r"(?:neighbours|neighbors|street|kids|children|lads|team|crew|guests|whole \w+)"
_WHOSE = r"(?:the |his |her |my |our |their |your |some |\w+ 's )"
_CUES = words_in(
    "hens chickens chooks ducks duck geese goat goats pig pigs piglets horse horses pony ponies",
    "cow cows calf sheep lamb lambs dog dogs cat cats parrot rabbit rabbits gull gulls pigeons",
    "birds worms mice rats neighbours neighbors street kids children lads team crew guests whole",
    "lie vet doctor slimming ramadan weigh gone",
)
_EATEN = re.compile(
    rf"\b(?:fed|gave|feeding|giving) {_WHOSE}?(?:{_BEASTS}|{_PEOPLE})\b|"
    rf"\b{_WHOSE}?{_BEASTS} (?:got|had|ate|have had|finished)\b|"
    rf"\b(?:to|for) {_WHOSE}{_BEASTS}\b|\( the {_BEASTS} \)|"
    rf"\bqbin (?:, the (?:old|wee|big) )?{_BEASTS}\b"
)
_BY_PERSON = re.compile(
    r"\b(?:qbin|qmember) (?:'s )?(?:ate|eaten|had|put|gained|lost) .{0,60}"
    r"\b(?:to lie down|the vet|the doctor|slimming|ramadan|weigh in|gone down)\b"
)
_INTO_BIN = re.compile(
    r"\b(?:in|into|inside) (?:the |our |to )?qbin\b(?! (?:would|instead))|"
    r"(?<!not )(?<!none )\b(?:to|for|within|feeding) (?:the |our )?qbin\b|"
    r"\bqbin (?:got|gets|has|had|took) |\b(?:the )?(?:rest|remainder|leavings)\b"
)


def is_eaten(message: Message) -> bool:
    """ "Gave the hens 2 kg of peel, none for Rosie": what they had went into no bin."""
    if not message.has(_CUES) or "?" in message.norms:
        return False
    text = named_text(message)
    if _BY_PERSON.search(text):
        return True
    return _EATEN.search(text) is not None and _INTO_BIN.search(text) is None
