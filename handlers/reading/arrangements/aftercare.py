"""What is answered to the dues of ground that was filled: "nothing dug there", "planted beans in
mine", "a fox had a go at it, covered it with a slab".

Whether such a due is open is known to the book alone: see `handlers/planning/reminded.py`.
"""

from collections.abc import Iterator

from handlers.reading.acts import Done
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late

CUES = ("plant", "sown", "sowed", "dug", "digging", "undisturbed", "been at it", "covered it",
        "covered mine", "over it", "on it", "on top")  # fmt: skip

_MOST_SENTENCES, _LONGEST = 3, 24
"""Sentences and words of a message; a longer one tells of other things."""

_OF_GROUND = (
    r"(?:(?:spot|bed|patch|place|hole|trench|pit|ground|grave)|"
    r"where (?:the )?qbin (?:went|was(?: buried)?|is(?: buried)?|lies|got buried))"
)
_THERE = (
    rf"(?:there|(?:in|on|over|at|into|onto|on top of) (?:it|mine|ours|qbin|the qbin|(?:that|the|my|"
    rf"our) {_OF_GROUND})|where (?:the )?qbin (?:went|was(?: buried)?|is(?: buried)?|lies))"
)
_LEAD = (
    r"(?:(?:i|we|have|'ve|just|already|now|also|yes|ok|checked|looked|had a look|went to look|"
    r"been to look|and|so|today|qday|all fine|all good|good news) )*"
)
_TAIL = (
    rf"(?: (?:{_THERE}|yet|so far|now|today|qday|at all|fine|good|all|ok|looks|is|well|there|again|"
    r"at mine|thank|goodness|luckily|too|as|last|night|this|morning|up|everything|in))*"
)
_NO_TRACE = Late(
    rf"{_LEAD}(?:(?:nothing|nobody|no one|no animals?|no fox(?:es)?) (?:has |'s |have |had )?"
    r"(?:dug|been digging|been dug|been at (?:it|mine|qbin)|been there|dug up)|"
    r"(?:there (?:is|'s|are) )?no (?:signs?|traces?) of (?:any )?(?:digging|foxes|a fox|rats|"
    r"animals|dogs|anything)|(?:it|mine|qbin|all|the (?:spot|ground|soil|cover))"
    rf" (?:is |'s |was |looks )?(?:not dug up|undisturbed|untouched)){_TAIL}"
)
_NO_TRACE_BRIEF = Late(rf"{_LEAD}(?:not dug up|undisturbed|untouched|no digging){_TAIL}")
"""Said so of many things: only right behind our words."""
_COVERED = Late(
    r"(?:.{0,40} )?(?:covered (?:it|mine|ours|the (?:spot|hole|place))(?: up| over| again| well)* "
    r"(?:again|with (?:a|an|some|two|the|more|wire|mesh|stones|bricks|boards|slabs|soil|earth))|"
    r"(?:put|laid|lay|placed) (?:a|an|some|two|the|another) \S+(?: \S+){0,2} "
    r"(?:over|on|on top of) (?:it|mine|ours|the (?:spot|hole|place)))(?: \S+){0,5}"
)
_ANIMAL = Late(
    r"\b(?:fox|foxes|dog|dogs|badger|rats?|cats?|birds|crows|something|animals?|dug|digging)\b"
)
_PLANTED = Late(
    rf"{_LEAD}(?:planted|sown|sowed|planted out|planted up)(?: \S+){{0,6}}? {_THERE}{_TAIL}|"
    rf"(?:mine|ours|(?:the )?qbin(?: one)?|that (?:bed|spot|patch)|that one)"
    rf" (?:is|'s|are|has been|got) (?:all |now |already )?planted(?: up)?{_TAIL}|"
    rf"(?:i am |we are )?not planting(?: (?:anything|it|any))?(?: {_THERE})(?: \S+){{0,3}}"
)
_PLANTED_BRIEF = Late(rf"{_LEAD}(?:planted|all planted|planted up|planted it)(?: \S+){{0,3}}")


def after_care(message: Message) -> Iterator[Found]:
    """Each sentence that tells that ground was looked at or planted."""
    said = phrases(message) if message.context.in_room and len(message.words) <= _LONGEST else ()
    if len(said) > _MOST_SENTENCES:
        return
    for phrase in said:
        done = None if phrase.asked or len(phrase.bins) > 1 else _done(phrase)
        if done is not None:
            yield Found(*phrase.sentence, done)


def _done(phrase: Phrase) -> Done | None:
    text, answers = phrase.text, phrase.message.context.after_bot
    bin = _buried(phrase)
    if bin is None and "qbin" in phrase.tokens:
        return None  # sown in the shed
    if phrase.message.measured() or _RECORD.search(text):
        return None  # it tells of a bin too
    if _NO_TRACE.fullmatch(text) or (answers and _NO_TRACE_BRIEF.fullmatch(text)):
        return Done(what="cover", bin=bin)
    if _COVERED.fullmatch(text) and (answers or _ANIMAL.search(text)):
        return Done(what="cover", bin=bin)
    if _PLANTED.fullmatch(text) or (answers and _PLANTED_BRIEF.fullmatch(text)):
        return Done(what="plant", bin=bin)
    return None


def _buried(phrase: Phrase) -> str | None:
    """The bin that is named; behind "where" it is no place of the same name."""
    where = _WHERE.search(phrase.text)
    at = phrase.words(where, "bin") if where else None
    refs = [ref for ref in phrase.message.bins if at and ref.start == at[0] and ref.known]
    return refs[0].name if refs else phrase.bin


_RECORD = Late(r"\b(?:drained|sealed|emptied|added|opened|fed|filled|topped)\b")
_WHERE = Late(r"\bwhere (?:the )?(?P<bin>qbin)\b")
