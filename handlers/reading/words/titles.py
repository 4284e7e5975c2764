"""Short titles before a name, whose stop ends no sentence: "Dr. Bell", "St. Mary's"."""

from collections.abc import Sequence

from handlers.reading.words.vocabulary import verb_words, words_in
from handlers.reading.words.words import Word, joined

SAINTS = words_in("st ste mt")
TITLES = SAINTS | words_in("dr mr mrs ms prof")
"""Short for what stands before a name, with or without a stop behind."""
_LONGEST = 9
"""Words of a name at most."""


def is_titles_stop(words: Sequence[Word], i: int) -> bool:
    """Whether the stop at word i is that of a title before a name ("Dr. Bell"), and does not end
    a street ("on Oak St. Opened a bin").
    """
    if i < 1 or i + 1 >= len(words) or not joined(words, i) or words[i].norm != ".":
        return False
    title, name = words[i - 1], words[i + 1]
    if title.norm not in TITLES or not (title.text[:1].isupper() and name.text[:1].isupper()):
        return False
    of_street = i >= 2 and (words[i - 2].text[:1].isupper() or words[i - 2].kind == "number")
    return not of_street and name.norm not in verb_words()


def start_of_titled(words: Sequence[Word], start: int) -> int:
    """Where the name begins whose last word stands at `start`: with its title ("Dr. Bell")."""
    if start >= 2 and is_titles_stop(words, start - 1):
        return start - 2
    titled = start >= 1 and words[start - 1].norm in TITLES and words[start].text[:1].isupper()
    return start - titled


def end_of_titled(words: Sequence[Word], norms: Sequence[str], start: int) -> int:
    """Index behind "St. Mary's" or "Mr. Stinky", from word `start` on; 0 if none is named so."""
    if not is_titles_stop(words, start + 1):
        return 0
    end = start + 3
    while end < min(len(words), start + _LONGEST) and words[end].text[:1].isupper():
        end += 1
    return end + (norms[end : end + 1] == ["'s"])
