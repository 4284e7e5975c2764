"""Where the book can be seen outside the room, and how it is written out: "is there a page?",
"can I get all this as a spreadsheet?".
"""

from collections.abc import Iterator

from handlers.reading.acts import Ask
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late

CUES = (
    "spreadsheet", "export", "csv", "excel", "download", "page", "website", "web site",
    "the board", "a board", "where can", "where do", "online", "my phone", "subscribe", "calendar",
)  # fmt: skip
_MOST_WORDS = 20
_OURS = (
    r"(?:(?:all|everything|of|our|the|my|your|this|that|these|it|records?|data|book|logs?|layers?|"
    r"history|entries|figures|numbers|bins?|qbin|group 's|dues|calendar|is|'s|what|due|us|here|"
    r"there|online) ?)"
)
_AS = (
    r"(?:as|in|to|into|for) (?:(?:a|an|some) )?(?:spreadsheet|csv|excel|table|json|sheet)"
    r"(?: (?:file|sheet|table))?"
)
_MAY = r"(?:(?:can|could|may|would|how (?:do|can|could|would|should|to)) (?:(?:i|we|you|one) )?)"
_EXPORT = Late(
    rf"{_MAY}?(?:get|have|download|see|print|save|pull|take|send|put|give|export|turn)(?: me| us)? "
    rf"{_OURS}{{1,6}}(?:out )?{_AS}|"
    rf"{_MAY}?export(?: {_OURS}{{1,6}}(?:{_AS})?)?|"
    rf"{_MAY}?download (?:all )?(?:the|our) (?:records|book|logs?|data|layers|history)|"
    rf"is there (?:an?|any) (?:export|csv|spreadsheet|download)(?: file)?(?: (?:of|for|with) "
    rf"{_OURS}{{1,6}})?"
)
_PAGE_OF_OURS = Late(
    r"(?:is there|do we have|have we got|have you got|where is|where 's|do you have) "
    r"(?:(?:an?|any|the|our|your) )?(?:web ?)?(?: ?(?:page|site|board))(?: (?:for|with|of|to see|"
    rf"where (?:i|we|one|you) can see|that shows|showing) {_OURS}{{1,6}})|"
    r"where (?:can|do|could) (?:i|we|you|one) (?:see|find|look at|read|look up) "
    r"(?:all (?:of )?(?:it|this|that|our \w+)|everything|the (?:board|records|page)|our (?:records|"
    r"bins|book|page|board))(?: online| on the web)?|"
    r"what (?:is|'s) the (?:link|address) (?:to|of|for) (?:the|our) (?:board|page|calendar)|"
    rf"{_MAY}(?:get|have|put|see|add) (?:the |our )?(?:calendar|dues|dates) (?:on|in|into|to) my "
    r"(?:phone|calendar|laptop|computer|diary)|"
    r"(?:how (?:do|can) (?:i|we) |can i )?subscribe(?: to (?:the|our) calendar)|"
    r"where (?:is|'s|do i find|can i (?:find|see)) (?:the|our) calendar"
)
_PAGE = Late(
    r"(?:is there|do we have|have you got|do you have) an? (?:web ?)?(?: ?(?:page|site|board))|"
    r"where (?:can|do|could) (?:i|we|you|one) (?:see|look at|read) (?:it|this|that)"
    r"(?: all| online)*|"
    rf"{_MAY}(?:get|have|put|see|add) (?:it|this|that) (?:on|in|into|to) my (?:phone|calendar)|"
    r"how (?:do|can) (?:i|we) subscribe"
)
"""Only said to the bot: others speak of other pages."""


def outlets(message: Message) -> Iterator[Found]:
    """The questions of a message where all this can be seen or had."""
    for phrase in phrases(message) if len(message.words) <= _MOST_WORDS else ():
        if (what := _asked(phrase)) is not None:
            yield Found(*phrase.sentence, Ask(topic="help", what=what))


def _asked(phrase: Phrase) -> str | None:
    to_us = phrase.to_bot or phrase.message.context.after_bot
    if not (phrase.asked or to_us):
        return None
    if _EXPORT.fullmatch(phrase.text):
        return "an export"
    if _PAGE_OF_OURS.fullmatch(phrase.text) or (to_us and _PAGE.fullmatch(phrase.text)):
        return "a page"
    return None
