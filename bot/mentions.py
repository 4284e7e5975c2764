"""Members whom a client writes by their Matrix ids, as the plain words of a mention may be; and the
bot by the name that it shows in the room.
"""

import re
from collections.abc import Collection
from functools import lru_cache
from urllib.parse import unquote

from handlers.reading.room.neighbours import BOOKED, CRAFT

_LINK = re.compile(
    r"(?:\[[^\]\n]{0,120}\]\()?<?(?:https?://matrix\.to/#/(?:@|%40)|matrix:u/)"
    r"([^\s)>?]{1,255})(?:\?[^\s)>]{0,255})?[)>]?",
    re.IGNORECASE,
)
"""A link to a user, with its words in front of it or without."""
_ID = re.compile(
    r"(?<![\w@])@(?P<local>[\w.=/+-]{1,200}):(?P<server>(?:(?:[a-z0-9-]{1,63}\.){0,10}[a-z][a-z0-9-]{0,62}|"
    r"\d{1,3}(?:\.\d{1,3}){3})(?::\d{1,5})?)\b",
    re.IGNORECASE,
)


def shortened(body: str, sender: str) -> tuple[str, tuple[str, ...]]:
    """The body with "@bram" for each Matrix user id or link to one, and the ids in order.

    The name of a server has a stop in it, or is that of the sender's own: "@bram:put" is no id.
    """
    if ":" not in body or ("@" not in body and "matrix" not in body):
        return body, ()
    own, ids = sender.partition(":")[2], []

    def short(found: re.Match[str]) -> str:
        if "." not in found["server"] and found["server"] != own:
            return found[0]
        ids.append(found[0])
        return f"@{found['local']}"

    linked = _LINK.sub(lambda link: f"@{unquote(link[1])}", body)
    return _ID.sub(short, linked), tuple(ids)


PLAIN_NAME = "pailkeeper"
"""The name by which the reading knows the bot, whatever it shows."""
_ASIDE = re.compile(r"[(\[{][^)\]}]*[)\]}]")
_FEWEST_LETTERS = 3


@lru_cache(maxsize=64)
def _words_of(shown: str) -> tuple[str, ...]:
    """The words by which the bot may be called that shows this name; none of its plain name."""
    words = tuple(re.findall(r"\w+", _ASIDE.sub(" ", shown).casefold()))
    return () if words == (PLAIN_NAME,) or len("".join(words)) < _FEWEST_LETTERS else words


def may_call(body: str, shown: str) -> bool:
    """Whether the first word of the name that the bot shows stands in a body."""
    words = _words_of(shown)
    return bool(words) and words[0] in body.casefold()


def by_plain_name(body: str, shown: str, others: Collection[str]) -> str:
    """The body with the bot's plain name where it is called by the one that it shows, in any case.

    Who shows a word of the craft, or the name of one of the `others` (members and bins), is called
    by it only where a message begins with it and a comma or a colon.
    """
    words = _words_of(shown)
    if not words:
        return body
    taken = {word for other in others for word in re.findall(r"\w+", other.casefold())}
    ambiguous = (CRAFT | BOOKED | taken).issuperset(words)
    return _pattern(words, ambiguous).sub(PLAIN_NAME, body)


@lru_cache(maxsize=64)
def _pattern(words: tuple[str, ...], ambiguous: bool) -> re.Pattern[str]:
    name = r"@?" + r"\W{1,3}".join(map(re.escape, words))
    written = rf"^\s*{name}(?=\s?[,:])" if ambiguous else rf"(?<!\w){name}(?!\w)"
    return re.compile(written, re.IGNORECASE)
