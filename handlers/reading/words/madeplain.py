"""Text made plain before it is cut into words: hours, dates, what dictation and phones write."""

import re
from collections.abc import Callable, Sequence
from functools import lru_cache

from handlers.reading.words.binwords import COLOURS, PLACE_NAMES
from handlers.reading.words.cues import Cues

_BY_THE_H = re.compile(
    r"(?<!for )\b(?P<lead>(?:at|by|from|until|till) |@ ?)?"
    r"(?:(?P<hour>[01]?\d|2[0-3])[hH](?P<minute>[0-5]\d)?"
    r"|(?P<four>(?:[01]\d|2[0-3])[0-5]\d) ?(?:hrs?|hours|h))\b"
)
"""Hours of the clock as "16h30", "at 18h", "1930hrs"; without minutes or a lead it is a time
that something takes."""
_DOTTED = re.compile(r"(?<![^\W\d_])([ap])\. ?m(?:\.(?!\s+[A-Z])|\b)")
""" "This a.m.": a short form, and no end of a sentence."""
_HYPHENED_DATE = re.compile(r"(?<![\w-])(\d\d?)-(\d\d?)-(20\d\d)(?![\w-])")


def _by_the_clock(found: re.Match[str]) -> str:
    lead, hour, minute, four = found.group("lead", "hour", "minute", "four")
    if four:
        return f"{lead or ''}{four[:2]}:{four[2:]}" if lead or four[0] != "0" else found[0]
    return f"{lead or ''}{int(hour)}:{minute or '00'}" if lead or minute else found[0]


@lru_cache(maxsize=1)
def made_plain(text: str) -> str:
    """The text with hours and dates as most people write them ("16:30", "am", "9/3/2026"), and
    with what a phone wrote for them put right. It is asked for twice of each message.
    """
    if ".m" in text or ". m" in text:
        text = _DOTTED.sub(r"\1m", text)
    if "-20" in text:
        text = _HYPHENED_DATE.sub(r"\1/\2/\3", text)
    for k in sorted(_CUES.heard(text.casefold())):
        slip, meant, _ = _MEANT[k]
        text = slip.sub(meant, text)
    return _BY_THE_H.sub(_by_the_clock, text) if _HOUR_LETTER.search(text) else text


_HOUR_LETTER = re.compile(r"\d ?[hH]")
_COLOUR, _PLACE = "|".join(sorted(COLOURS)), "|".join(sorted(PLACE_NAMES))
_BEEN = re.compile(
    rf"(?<!has )(?<!have )(?<!had )\b((?:the|our) (?:(?:{_COLOUR}) |(?:{_PLACE}) "
    r"(?=been\b(?: is| was| and| with| of| yesterday| today| this| \d| please|[^\w ]|$))))"
    r"(?:been|ben|bun)\b",
    re.IGNORECASE,
)
"""A bin as it is heard: "the blue been", "the yard been is 15 L"; "the yard been swept" is none."""
_BIN_BEFORE = re.compile(
    rf"\b(?:the )?bin of (?:the )?({_COLOUR}|{_PLACE})\b|"
    rf"(?<!the )(?<!our )(?<!my )\bbin ({_COLOUR})\b(?= is\b| and\b| \d|[,.;:!?]|$)",
    re.IGNORECASE,
)
""" "Bin of the balcony", "bin blue": the vessel before its name, as in other languages."""
_CAN_YOU = (
    r"\s*(?:(?:hey|hi|ok|please|pls|sorry),? )*(?:can|could|would|will) "
    r"(?:you|u|someone|somebody|anyone|anybody|one of you) (?:please |pls |just )*"
)
""" "Can someone log 2 kg in the shed?" is told, and not asked."""
_HEARD = (" been", " ben", " bun")
_MEANT: tuple[tuple[re.Pattern[str], str | Callable[[re.Match[str]], str], Sequence[str]], ...] = (
    (_BEEN, r"\1bin", _HEARD),
    (
        _BIN_BEFORE,
        lambda found: f"the {found[1] or found[2]} bin",
        (*_HEARD, "bin of ", *(f"bin {colour}" for colour in COLOURS)),
    ),
    *(
        (re.compile(slip, re.IGNORECASE), meant, cues)
        for slip, meant, *cues in (
            (r"\b2(day|nite|night|moro|morro|morrow)\b(?![ -]old)", r"to\1", "2d", "2n", "2m"),
            (r"\b(this|next|last) weak\b", r"\1 week", " weak"),
            (
                r"\b(what ?'?s|what is) do"
                r"(?= (?:this|next) (?:week|month)| (?:today|tomorrow|now)\b| ?[?.!]? ?$)",
                *(r"\1 due", "s do"),
            ),
            (
                r"\b(?:waht|wat|wht)(?=(?:'?s)? (?:is|was|did|do|due|i|we|have|can|goes|are)\b)",
                *("what", "waht", "wat", "wht"),
            ),
            (
                r"\b(skin|film|coat|coating|layer|crust|dusting|carpet|patch|patches|spots?|bits?|"
                r"lots?|loads?) o['’]? (?=[a-z]{3})",
                *(r"\1 of ", " o ", " o' ", " o’ "),
            ),
            (
                r"(?:(?<=^)|(?<=[.,;:!?] )|(?<=\bok )|(?<=\band )|(?<=\bthen )|(?<=\bso ))ill "
                r"(?=(?:do|take|see|seal|drain|bury|close|shut|empty|put|bring|add|have|get|go|"
                r"sort|mind|cover|keep|pop|try|dig|let|check|look|come|ask|make|start|open|feed|"
                r"move|wash|just|also|be)\b)",
                *("I'll ", "ill "),
            ),
            (r"\b(?:gans|gaes|gangs)(?= to\b)", "goes", "gans to", "gaes to", "gangs to"),
            (r"\bremnid(?= (?:me|us|every|all)\b)", "remind", "remnid"),
            (r"\b(how much) barn\b", r"\1 bran", " barn"),
            (r"^\s*(?:yeah,? ?nah|nah,? (?:mate|bro|pal|hun))\b,?", "no,", "nah"),
            (r"\bam (?=(?:(?:mon|diens|donners|frei|sams|sonn)tag|mittwoch)\b)", "on ", "am "),
            (
                r"(?<=[a-z]ed )er(?= (?:up|down|off|out|in|over|tight|again|back)\b)|"
                r"(?<=shut )er(?= (?:up|down|tight)\b)|(?<=got )er(?= (?:shut|sealed|closed)\b)",
                *("her", " er "),
            ),
            (
                r"\b(?:ready|shop|store|factory|pre|home)[ -]?made (?=(?:bokashi|bran|starter)\b)",
                *("", "made "),
            ),
            (
                r"\b(?:does|do|did)n['’]?t half "
                r"(?=(?:smell|stink|pong|reek|hum|whiff|hiss|fizz)\b)",
                *("really ", "t half "),
            ),
            (r"\b(\d+) point (\d+)\b", r"\1.\2", " point "),
            (
                rf"^{_CAN_YOU}(?:tell|let) the bot (?:know )?(?:that )?([^?]*)\??\s*$",
                *(r"\1", " the bot "),
            ),
            (
                rf"^{_CAN_YOU}(?:log|record|note(?: down)?|write down|jot down|put down) "
                r"(?=(?:that|i|we|half|an?) |\d)([^?]*)\??\s*$",
                *(r"please log \1", " log ", " record ", " note ", " down "),
            ),
            (r"\bsorry,? sorry\b", "sorry", "sorry sorry", "sorry, sorry"),
            (r"\b(?:one|1|a|ek) paav\b(?! (?:kilo|kg|bhaji))", "quarter kilo", " paav"),
            (r"\b([1-9]) not ([1-9]) (hundred|thousand)\b", r"\1 \3 not \2 \3", " not "),
            (r"(?<=[a-z])([lsekpt])\1\1+", r"\1\1", *(3 * letter for letter in "lsekpt")),
        )
    ),
)
"""Bins as they are heard, or named as in other languages; what is written for words that sound
alike, with a letter too many, or said twice; what two numbers share is said of both. Each with what
is meant, and the letters without one of which it does not stand there."""
_CUES = Cues({k: cues for k, (_, _, cues) in enumerate(_MEANT)})
