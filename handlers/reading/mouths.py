"""Scraps that went to animals or to people, and not to a bin: "the hens had them, not bin 3"."""

import re

from handlers.reading.amending import plain_text
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in

_ONE = words_in(
    "hen duck pig dog goat worm chook horse pony rabbit parrot budgie cat gull bird cow calf "
    "hedgehog donkey hamster tortoise bunny fox badger squirrel lodger"
)
_MANY = words_in(
    "hens ducks pigs piglets dogs goats worms chooks chickens horses ponies rabbits cats gulls "
    "birds mice cows calves hedgehogs donkeys sheep geese swans bunnies neighbours neighbors"
)
_CUES = _ONE | _MANY
"""Words without one of which nothing is taken for eaten."""
_PETS = "horse|pony|dog|cat|parrot|budgie|hamster|donkey|tortoise|hens|ducks"


def _any_of(words: frozenset[str]) -> str:
    return f"(?:{'|'.join(sorted(words))})"


_WHOSE = r"(?:(?:the|my|our|his|her|their|your)(?: \w+ 's)?|\w+ 's)"
_MOUTH = rf"(?:{_WHOSE} (?:\w+ )?{_any_of(_ONE)}|(?:{_WHOSE} )?(?:\w+ )?{_any_of(_MANY)})\b"
"""An animal with its owner's word, or some without; "to Hen" may be a bin's name."""
_NO_DISH = r"(?! (?:skins?|bones?|scraps|carcass|feet|foot|food|heads?|curry|soup|stew|pie|fat)\b)"
_DENIED = re.compile(
    r"\b(?:not|none|nothing|instead of|rather than)(?: (?:to|for|in|into))?(?: the)? qbin\b|"
    r"\bsorry qbin\b|"
    r"\bqbin (?:went hungry|went without|missed out|didnt|would have|got (?:nothing|none|nowt))\b"
)
"""Said of a bin that was given nothing."""
_EATER = re.compile(
    rf"\bqbin(?: \( (?:the|my|our))? (?:{_PETS})\b{_NO_DISH}|"
    rf"\b(?:in|at) (?:the )?qbin for {_MOUTH}{_NO_DISH}|"
    rf"\bfull\b[^.]*\bso\b(?:(?!qbin).)*\b(?:fed|in|to|into) {_MOUTH}(?!.*qbin)|"
    rf"\bqbin : {_MOUTH} (?:got|had|ate)\b"
)
"""Another mouth beside a bin's name, which is its own, where it is fed, or that of a full bin."""
_FED = re.compile(
    rf"\b(?:to|for|fed|gave|given) {_MOUTH}{_NO_DISH}|"
    rf"\b{_MOUTH} (?:got|had|have had|ate|finished|demolished|polished off|scoffed)\b"
)
_SHARED = words_in(
    "rest remainder half some other left without bin bucket tub caddy in into added put logged"
)


def is_eaten(message: Message) -> bool:
    """Whether the words say that another mouth had it, and no bin."""
    if not message.has(_CUES) or any(_CUES & set(b.lower().split()) for b in message.context.bins):
        return False
    text = plain_text(message)
    if _EATER.search(text):
        return True
    if _DENIED.search(text):
        return text.count("qbin") == 1
    return not (message.bins or message.named or message.has(_SHARED)) and bool(_FED.search(text))
