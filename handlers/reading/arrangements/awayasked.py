"""The question who is away, and when: "who's away over Easter?", "anyone around on Friday?"."""

from datetime import date

from handlers.reading.arranged import WhoIsAway
from handlers.reading.calendar.feasts import feast_days, first_words
from handlers.reading.calendar.stretches import stretch_in
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.plaintext import words_between
from handlers.reading.questions.daysasked import days_asked
from handlers.reading.words.late import Late
from handlers.reading.words.sentences import Sentence

_ASKED = Late(
    r"(?:who(?: is|s| else is| will be| 's)?|(?:is|are|will) any(?:one|body)(?: be)?)(?: else)? "
    r"(?:away|on holiday|on leave|gone|out of town|not here|not around)(?= |$)"
)


def away_asked(message: Message, sentence: Sentence) -> Found | None:
    """The question who is away; without its mark it is no more than that and a time."""
    start, end, marked = sentence
    text = words_between(message, start, end)
    match = _ASKED.search(text) if marked else _ASKED.match(text)
    if match is None:
        return None
    stretch = stretch_in(message, start, end)
    more = end - start - len(match.group().split())
    if not marked and more and (more > _WORDS_OF_A_TIME or stretch is None):
        return None
    first = stretch.first if stretch else message.today
    last = stretch.last if stretch and stretch.last else first
    if stretch is None and (feast := _feast(message, start, end)):
        first = last = feast
    elif stretch is None:
        begin, until = days_asked(message, start, end, text.removesuffix(" ?"))
        first, last = begin or message.today, until or last
    return Found(start, end, WhoIsAway(first=first, last=last))


_WORDS_OF_A_TIME = 4


def _feast(message: Message, start: int, end: int) -> date | None:
    """The next day of a feast that is named, also behind "for"."""
    for i in range(start, end):
        if message.norms[i] in first_words():
            for stop in range(min(end, i + 3), i, -1):
                days = feast_days(words_between(message, i, stop), message.today, american=False)
                if days is not None:
                    return days[1]
    return None
