"""Who speaks a line that is typed at the prompt: “ines: drained half a litre”."""

import re
from collections.abc import Collection

from handlers.reading.words.vocabulary import vocabulary, words_in

_WORD = r"[^\W\d_][\w.'’-]{0,23}"
_SPEAKER = re.compile(rf"({_WORD}(?: {_WORD}){{0,2}}):(?:\s+(?=\S)|(?=[^\W\d_]{{2}}))")
"""Up to three words and a colon, then more words; a figure or a slash right behind it is none."""

_HEADINGS = words_in(
    "bot pailkeeper rota roster turns correction correcting corrected update batch new ps pps nb "
    "fyi tldr edit note notes question answer reminder summary total totals re eta btw psa "
    "today tonight tomorrow yesterday morning evening afternoon monday tuesday wednesday thursday "
    "friday saturday sunday mon tue tues wed thu thur thurs fri sat sun"
)
"""Words that people write before a colon and that are nobody's name."""


def speaker_of(line: str, members: Collection[str], bins: Collection[str]) -> tuple[str, str]:
    """Who speaks by a line's own words, and what is said; "" for whoever sits at the prompt.

    Whom the room knows is taken in any case of letters. Of several words a new name has each in a
    capital, and one word in small letters is no name where it is a food or a deed ("bread: 2 kg").
    """
    found = _SPEAKER.match(line)
    if found is None:
        return "", line
    name = found[1]
    folded = name.casefold()
    if folded in map(str.casefold, bins) or not (
        folded in map(str.casefold, members) or _may_be_new(name, line[found.end() :])
    ):
        return "", line
    return name, line[found.end() :]


def _may_be_new(name: str, said: str) -> bool:
    parts = name.split(" ")
    if parts[0].casefold() in _HEADINGS:
        return False
    if len(parts) > 1:
        return all(part[0].isupper() for part in parts)
    if name[0].isupper() or name not in vocabulary():
        return True
    return not vocabulary().find([name]) and _OF_ONESELF.match(said) is not None


_OF_ONESELF = re.compile(r"(?:i|i['’]?(?:m|ve|d|ll)|we|me|my|hi|hey|hello|ok|yes|no)\b", re.I)
"""What only somebody says: a word behind which it stands is a name, unless it is a food itself."""
