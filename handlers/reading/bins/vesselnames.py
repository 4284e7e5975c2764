"""A name that is given with its vessel: a bin called "blue tub" is no "blue"; "the green bin" is
green.
"""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Bury, Drain, Layer, Observe, Open, Seal
from handlers.reading.bins.givennames import CALLED
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in


def named_with_vessel(acts: Sequence[Act], message: Message) -> tuple[Act, ...]:
    """The acts, under the whole name of a bin that is begun in them and called by its vessel."""
    opened = next((act for act in acts if isinstance(act, Open) and act.bin), None)
    if opened is None or opened.bin is None or not message.has(_VESSELS):
        return tuple(acts)
    whole = None if opened.bin in message.context.bins else _whole_name(opened.bin, message)
    if whole is None:
        return tuple(acts)
    return tuple(
        replace(act, bin=whole) if isinstance(act, _OF_BIN) and act.bin == opened.bin else act
        for act in acts
    )


_OF_BIN = (Open, Layer, Drain, Seal, Bury, Observe)


def _whole_name(name: str, message: Message) -> str | None:
    """The name with the vessel behind it, where it is given so."""
    norms, last = message.norms, name.casefold().split()[-1]
    for i in [i for i, norm in enumerate(norms[:-1]) if norm == last]:
        start = i + 1 - len(name.split())
        if norms[i + 1] not in _VESSELS or start < 0:
            continue
        if norms[start - 1 : start] in _OLD and name.casefold() not in _OLD_WORDS:
            return message.text(start - 1, i + 2)  # "started the old blue tub"
        lead = start
        while lead > max(0, start - _NEAR) and norms[lead - 1] in _BETWEEN:
            lead -= 1
        if lead and norms[lead - 1] in _CALLING:
            return message.text(start, i + 2)
    return None


_VESSELS = words_in("tub pail bucket drum barrel keg crock caddy tote cask churn urn crate trug")
"""What a name may end in; any of them is a bin, and so is called none."""
_OLD_WORDS = words_in("old auld")
_OLD = [[word] for word in sorted(_OLD_WORDS)]
_CALLING = CALLED | words_in("call calls name name's")
_BETWEEN = words_in("it them him her this that one is 's : \" the new our my will be as")
_NEAR = 5
"""Words between a word of naming and the name."""
