"""Lines of a chat that are pasted or forwarded: whoever wrote them has told it there already."""

import re
from collections.abc import Sequence

from handlers.reading.words.words import plain

_HOUR = r"\d{1,2}[:.]\d\d(?::\d\d)?(?: ?[AaPp]\.?[Mm]\.?)?"
_STAMP = rf"(?:\d{{1,4}}[./-]\d{{1,2}}[./-]\d{{1,4}},? )?{_HOUR}"
_NAME = r"[^\n\[\]():<>,]{1,40}"
_LINE = re.compile(
    rf"^[ \t]*(?:(?:[\[(]{_STAMP}[\])] ?|{_STAMP} ?[-–] ?)<?(?P<told>{_NAME})(?:>:?|:)"
    rf"|<[@+ ]?(?P<nick>{_NAME})>).*\n?",
    re.MULTILINE,
)
""" "[12:03] Bram: ...", "28/11/2026, 09:12 - Bram: ...", "<bram> ..."."""
_HEADED = re.compile(
    rf"^[ \t]*(?P<name>{_NAME}),? [\[(]?{_STAMP}[\])]?:?[ \t]*\n.*(?:\n[ \t]*[^\s].*)*\n?",
    re.MULTILINE,
)
""" "Bram, 12:03", and what he said in the lines below it."""
_FORWARDED = re.compile(
    r"^[ \t>*_-]*(?:forwarded|fwd)(?: message)?(?: from\b[^\n:]{0,60})?[*_]{0,2}[ ]?(?::.*|$)"
    r"(?:\n[ \t]*[^\s].*)*\n?",
    re.MULTILINE | re.IGNORECASE,
)


def without_pasted(text: str, members: Sequence[str]) -> str:
    """The text without the lines that a client heads with a member's name and the hour, and
    without what is said to be forwarded.
    """
    if ":" not in text and "<" not in text and "orwarded" not in text:
        return text
    text = _FORWARDED.sub("", text)
    if not members:
        return text
    called = {plain(name.lstrip("@")).strip() for name in members}
    called |= {parts[0] for name in called if (parts := name.split())}

    def kept(found: re.Match[str]) -> str:
        groups = found.groupdict()
        name = next(name for name in groups.values() if name)
        return "" if plain(name).strip(" @+") in called else found[0]

    return _HEADED.sub(kept, _LINE.sub(kept, text))
