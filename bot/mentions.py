"""Members whom a client writes by their Matrix ids, as the plain words of a mention may be."""

import re
from urllib.parse import unquote

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
