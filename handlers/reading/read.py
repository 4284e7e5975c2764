"""The one door: a text and its context in, acts out."""

from handlers.reading.acts import Act, Context
from handlers.reading.message import read_message
from handlers.reading.privacy import about_oneself
from handlers.reading.questions import asks
from handlers.reading.records import records
from handlers.reading.replies import replies
from handlers.reading.unmeasured import asked_first


def read(text: str, context: Context) -> tuple[Act, ...]:
    """The acts that a message means, in the order said; small talk gives none."""
    message = read_message(text, context)
    if not message.words:
        return ()
    if context.to_bot and (found := about_oneself(message)):
        return found
    answer = replies(message)
    if answer:
        return answer
    told = asked_first(records(message), message)
    return (*told, *asks(message, told=bool(told)))
