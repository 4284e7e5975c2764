"""Whether the bot has heard somebody: what was last written down of theirs."""

from handlers.answer import Answer, Turn
from handlers.doubtful.spokenof import TALK_GOES_ON
from handlers.recording.describing import describe
from handlers.righting.corrections import struck_words

NOTHING_YET = (
    "Nothing of yours is written down yet. Say it as “added 2 kg to the blue bin”, and it will be."
)
STILL_ASKED = "I still wait for your answer to what I asked about it."


async def asked(turn: Turn) -> Answer:
    """The sender's last record, and whether a question of ours about a later one is open."""
    last = await turn.book.last_by(turn.sender)
    question = await turn.book.question(turn.sender)
    waits = question is not None and turn.at - question.asked_at <= TALK_GOES_ON
    if question and waits and (last is None or question.asked_at > last.written_at):
        return Answer(say=f"Not yet: {STILL_ASKED}")
    if last is None:
        return Answer(say=NOTHING_YET)
    if last.struck:
        return Answer(say=struck_words([last], turn))
    lately = turn.at - last.written_at <= TALK_GOES_ON
    also = f" {STILL_ASKED}" if waits else ""
    led = "Yes, written down" if lately else "The last I have of yours"
    return Answer(say=f"{led}: {describe(last, turn)}.{also}")
