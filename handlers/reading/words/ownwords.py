"""What in a text its sender says and means: without quotes, what is struck through, the words of
links and files, and what is still to do.
"""

import re

_FENCED = re.compile(r"^ {0,3}(```|~~~).*?(?:^ {0,3}\1[^\n]*$|\Z)", re.MULTILINE | re.DOTALL)
_QUOTED = re.compile(r"^ {0,3}>(?!\d).*\n?", re.MULTILINE)
"""A line of another's message; ">2 kg" is more than 2 kg."""
_STRUCK = re.compile(
    r"~~(?=\S)[^~\n]+~~"
    r"|(?<![\w~])~(?=[^\s~])[^~\n]{1,300}(?<=[^\s~])~(?![\w~])"  # one each, as some apps write it
    r"|(?<![\w`])`[^`\n ]+(?: [^`\n ]+){2,}`(?![\w`])"
)
"""Words struck through, and several words between backticks: taken back, or only quoted."""
_MARKED = re.compile(r"(?<![\w`])`([^`\n]+)`(?![\w`])")
"""A name set in backticks."""

_ADDRESS = re.compile(
    r"\b[a-z][a-z0-9+.-]{1,15}://[^\s<>\"]+|\bwww\.[^\s<>\"]+"
    r"|(?<![\w@.-])(?:[a-z0-9-]{1,63}\.){1,4}"
    r"(?:com|org|net|info|eu|uk|ie|de|at|ch|fr|be|nl|es|pt|it|se|no|dk|fi|pl|ca|us|au|nz|za|in|io|"
    r"app|dev|co|me|tv|blog|shop|garden|example)[/?#](?=[^\s<>\"])[^\s<>\"]+",
    re.IGNORECASE,
)
"""An address on the web, with its scheme or without."""
_FILE = re.compile(
    r"(?<!\S)\S+\.(?:jpe?g|png|gif|webp|heic|bmp|svg|pdf|mp[34]|mov|webm|mkv|ogg|m4a|wav|txt|md|csv|"
    r"docx?|xlsx?|od[st]|zip|html?|ics)(?![\w.-])",
    re.IGNORECASE,
)
"""The name of a file; one of a single word is none that tells anything."""
_TIED = re.compile(r"[^\W\d_][-_+%]")
_CLOSING = ".,;:!?)]'"
"""Signs behind an address that are not part of it."""

_EMPTY_BOX = "☐□▢❏❑"
_UNTICKED = re.compile(
    r"^[ \t]*(?:[-*+•]|\d{1,3}[.)])?[ \t]*\[ ?\](?!\()[^\n]*"
    rf"|[{_EMPTY_BOX}][^\n{_EMPTY_BOX}☑☒✅✔]*",
    re.MULTILINE,
)
"""An item of a list whose box is empty."""
_LEADING = r"^[ \t]*(?:[-*+•#>]+[ \t]*)?[*_]{0,2}"
_TO_DO = re.compile(
    _LEADING + r"(?:(?:still|left|yet|things|jobs|what is|what's|the|my|our|bins?|also|and|ok|next)"
    r"[ ]){0,3}(?:to[ -]?do(?:s|[ -]?list)?|not(?: yet)? done|not done yet|pending|outstanding)"
    r"[*_]{0,2}[ ]?[:–—-][*_]{0,2}(?:[^\n\S]*\n(?P<list>(?:[ \t]*(?:[-*+•]|\d{1,3}[.)]).*\n?)*)|.*)"
    r"|" + _LEADING + r"(?-i:TODO)\b.*",
    re.MULTILINE | re.IGNORECASE,
)
"""A list of what is to do, on its line or in the items below it."""
_TICKED = re.compile(r"[✅✔☑]|\[[xX]\]|\bdone\b(?! yet)")


def without_addresses(text: str) -> str:
    """The text without the words of links and file names: they are nobody's report."""
    if "." in text or "://" in text:
        text = _FILE.sub(_file, _ADDRESS.sub(_address, text))
    return text


def _address(found: re.Match[str]) -> str:
    return found[0][len(found[0].rstrip(_CLOSING)) :]


def _file(found: re.Match[str]) -> str:
    return "" if _TIED.search(found[0]) else found[0]


def own_words(text: str) -> str:
    """A message without what its sender only quotes, takes back, links to or has yet to do.

    Lines quoted and blocks fenced are those of Markdown.
    """
    if ">" in text:
        text = _QUOTED.sub("", text)
    if "```" in text or "~~~" in text:
        text = _FENCED.sub("", text)
    if "~" in text or "`" in text:
        text = _MARKED.sub(r"\1", _STRUCK.sub("", text))
    text = without_addresses(text)
    if "[" in text or not text.isascii():
        text = _UNTICKED.sub("", text)
    lower = text.lower()
    if "do" in lower or "pending" in lower or "outstanding" in lower:
        text = _TO_DO.sub(_to_do, text)
    return text


def _to_do(found: re.Match[str]) -> str:
    return found[0] if _TICKED.search(found[0].partition(":")[2]) else ""
