"""The words that a day is told by."""

from handlers.reading.calendar.feasts import first_words
from handlers.reading.measures.numberwords import NUMBER_WORDS
from handlers.reading.words.vocabulary import words_in

_OFFSETS = {
    "today": 0, "tonight": 0, "tonite": 0, "2day": 0, "now": 0, "2nite": 0, "hoy": 0,
    "this morning": 0, "this afternoon": 0, "this evening": 0, "this aft": 0, "this arvo": 0,
    "this am": 0, "this pm": 0, "this mornin": 0, "this lunchtime": 0,
    "yesterday": -1, "yest": -1, "yesty": -1, "yestie": -1, "ystrday": -1, "yestadday": -1,
    "yestday": -1, "yestdy": -1,
    "yday": -1, "yesterdy": -1, "yesteday": -1, "yestrday": -1,
    "ayer": -1, "gestern": -1, "yesterdays": -1, "yesturday": -1, "anoche": -1,
    "last night": -1, "las night": -1, "lastnight": -1, "las nite": -1,
    "last nite": -1, "last evening": -1, "last eve": -1, "yesternight": -1,
    "last evenin": -1, "last nicht": -1, "yestreen": -1,
    "yestere'en": -1, "yester evening": -1, "the streen": -1, "yestermorn": -1, "this evenin": 0,
    "this forenoon": 0, "the nicht": 0, "the day before yestreen": -2,
    "the night before last": -2, "night before last": -2, "the day before yesterday": -2,
    "day before yesterday": -2, "day b4 yesterday": -2, "day b 4 yesterday": -2, "day b4 yday": -2,
    "yesterday week": -8, "ytd night": -1, "ytd nite": -1, "ytd evening": -1,
    "ytd morning": -1, "ytd afternoon": -1, "ystd": -1, "ytd": -1, "ydy": -1, "yst": -1,
    "ystdy": -1, "ystday": -1, "yestrdy": -1, "yestd": -1, "yesterdae": -1, "yestaday": -1,
    "day b4 ytd": -2, "day b 4 ytd": -2, "day before ytd": -2, "the day before ytd": -2,
    "day bef ytd": -2, "day bef yesterday": -2, "day bef yest": -2, "day before yest": -2,
    "day before yday": -2,
    "the other night": -2, "ereyesterday": -2,
    "tomorrow": 1, "tmrw": 1, "tmr": 1, "tmw": 1, "2moro": 1, "tomoz": 1, "tomorow": 1,
    "tommorow": 1, "tommorrow": 1, "tomorrows": 1, "manana": 1, "morgen": 1, "the morra": 1,
    "the morn": 1, "the morrow": 1, "tomorra": 1, "tomo": 1, "tomoro": 1, "tomorro": 1,
    "tmrrw": 1, "tmro": 1, "2mrw": 1, "2mro": 1,
    "the day after tomorrow": 2, "day after tomorrow": 2, "overmorrow": 2,
    "heute": 0, "oggi": 0, "hoje": 0, "ce matin": 0, "ce soir": 0, "esta manana": 0,
    "hier": -1, "hier soir": -1, "gestern abend": -1, "ieri": -1, "ieri sera": -1, "ontem": -1,
    "kahapon": -1, "semalam": -1, "kelmarin": -1, "kemarin": -1, "wczoraj": -1, "gisteren": -1,
    "ayer noche": -1,
    "avant-hier": -2, "avant - hier": -2, "avant hier": -2, "vorgestern": -2, "anteayer": -2,
    "antes de ayer": -2, "anteontem": -2,
    "demain": 1, "domani": 1, "amanha": 1, "jutro": 1, "esok": 1, "besok": 1, "kesho": 1,
    "i gar": -1, "i gar kvall": -1, "i forgars": -2, "eergisteren": -2, "przedwczoraj": -2,
    "idag": 0, "i dag": 0, "vandaag": 0, "dzisiaj": 0, "dzis": 0, "hari ini": 0, "aaj": 0,
    "kanina": 0, "kaninang umaga": 0, "kaninang hapon": 0, "ngayong umaga": 0,
    "kagabi": -1, "tadi pagi": 0, "tadi siang": 0, "tadi malam": -1, "vanmorgen": 0,
    "vanochtend": 0, "vanmiddag": 0, "gisteravond": -1, "gisterenavond": -1, "heute morgen": 0,
    "heute fruh": 0, "heute mittag": 0, "gestern morgen": -1, "gestern fruh": -1, "stamattina": 0,
    "stamani": 0, "esta tarde": 0, "esta manha": 0, "i morse": 0,
}  # fmt: skip


YEAR_TO_DATE = ("ytd",)
""" "Ytd" beside a sum is no day."""
SUMS = words_in("total totals sum sums figure figures altogether average budget target sales")


OFFSET_PHRASES = sorted(
    ((tuple(k.split()), v) for k, v in _OFFSETS.items()), key=lambda r: -len(r[0])
)


def _by_first_word() -> dict[str, list[tuple[tuple[str, ...], int]]]:
    found: dict[str, list[tuple[tuple[str, ...], int]]] = {}
    for phrase, offset in OFFSET_PHRASES:
        found.setdefault(phrase[0], []).append((phrase, offset))
    return found


FIRST_OF_OFFSET = _by_first_word()
"""Words for a day by their first word, the longest first, with the days from today."""


WEEKDAYS = {
    name: i
    for i, names in enumerate(
        ("monday mon mondays", "tuesday tue tues tuesdays", "wednesday wed weds wednesdays",
         "thursday thu thur thurs thursdays", "friday fri fridays", "saturday saturdays satdy",
         "sunday sundays")
    )
    for name in names.split()
} | {"lunes": 0, "martes": 1, "miercoles": 2, "jueves": 3, "viernes": 4, "sabado": 5,
     "domingo": 6, "montag": 0, "dienstag": 1, "mittwoch": 2, "donnerstag": 3, "freitag": 4,
     "samstag": 5, "sonntag": 6, "lundi": 0, "mercredi": 2, "jeudi": 3, "vendredi": 4,
     "samedi": 5, "dimanche": 6, "lunedi": 0, "martedi": 1, "mercoledi": 2, "giovedi": 3,
     "venerdi": 4, "sabato": 5, "domenica": 6, "jumatatu": 0, "jumanne": 1, "jumatano": 2,
     "alhamisi": 3, "ijumaa": 4, "jumamosi": 5, "sato": 5, "jumapili": 6, "mandag": 0, "tirsdag": 1,
     "onsdag": 2, "torsdag": 3, "fredag": 4, "lordag": 5, "sondag": 6, "maandag": 0, "dinsdag": 1,
     "poniedziałek": 0, "wtorek": 1, "srode": 2, "czwartek": 3, "piatek": 4, "sobote": 5,
     "niedziele": 6, "woensdag": 2, "donderdag": 3, "vrijdag": 4, "zaterdag": 5,
     "zondag": 6}  # fmt: skip


# "sat" and "sun", "wed" and "fri" are words too: a day only behind one of these.
SHORT = {"sat": 5, "sun": 6, "wed": 2, "mon": 0}


BEFORE_SHORT = frozenset(
    ["on", "last", "this", "next", "since", "by", "until", "every", "till", "from"]
)


MONTHS = {
    name: i
    for i, names in enumerate(
        ("january jan", "february feb", "march mar", "april apr", "may", "june jun", "july jul",
         "august aug", "september sep sept", "october oct", "november nov", "december dec"), 1
    )
    for name in names.split()
}  # fmt: skip


ORDINALS = {
    word: i
    for i, word in enumerate(
        ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth",
    "tenth", "eleventh", "twelfth", "thirteenth", "fourteenth", "fifteenth", "sixteenth",
    "seventeenth", "eighteenth", "nineteenth", "twentieth", "twenty-first", "twenty-second",
    "twenty-third", "twenty-fourth", "twenty-fifth", "twenty-sixth", "twenty-seventh",
    "twenty-eighth", "twenty-ninth", "thirtieth", "thirty-first"], 1
    )
}  # fmt: skip


DEEDS = words_in(
    "draining drain drainings layer layers feed feeding addition additions deposit filling fill "
    "topping contribution offering haul entry burial burying sealing opening"
)
"""What is done on the day that it is called after; other things only come from it."""


ENDS = frozenset({"st", "nd", "rd", "th"})


ASIDE = frozenset(
    [
        "since",
        "until",
        "till",
        "from",
        "of",
        "by",
        "before",
        "every",
        "for",
        "between",
        "like",
        "as",
        "each",
    ]
)


AMOUNT_BEHIND = frozenset(
    ["kg", "kgs", "g", "lb", "lbs", "l", "ml", "litres", "liters", "oz", "cups", "kilos"]
)


BEHIND_A_DAY = frozenset(
    [
        "i",
        "we",
        "he",
        "she",
        "they",
        "put",
        "added",
        "and",
        "the",
        "it",
        "in",
        "to",
        "at",
        "morning",
        "night",
    ]
)


DAY_PARTS = frozenset(
    [
        "morning",
        "afternoon",
        "evening",
        "night",
        "nite",
        "am",
        "pm",
        "arvo",
        "lunch",
        "lunchtime",
        "mornin",
        "evenin",
        "nicht",
        "forenoon",
        "teatime",
        "noon",
        "midday",
        "dinnertime",
    ]
)


PLAIN_STARTS = (
    FIRST_OF_OFFSET.keys()
    | WEEKDAYS.keys()
    | SHORT.keys()
    | MONTHS.keys()
    | ORDINALS.keys()
    | first_words()
    | {"last", "this", "next", "coming", "past", "on", "the"}
)
STARTS = PLAIN_STARTS | {"in", "at", "over", "during", "a"} | NUMBER_WORDS
"""Words that a day can begin with, where none is counted to and where one may be: all others are
passed over at once."""


MEETING = frozenset(["see", "meet", "ready", "due", "return", "visit", "cya", "catch"])
"""Words behind which a day is one to come: "see you on Saturday"."""
