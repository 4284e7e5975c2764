"""The words that numbers are told by, in English and in the languages that neighbours mix in.

Foreign number words are short and often words of another language too ("once", "do", "due"), so
they count only in front of a measure: FOREIGN with a unit of MEASURES or a half behind it.
"""

from collections.abc import Mapping

from handlers.reading.words.vocabulary import words_in


def _counted(words: str, first: int = 0, step: int = 1) -> dict[str, float]:
    """The words in order from `first` on; spellings of one number are joined by a bar."""
    return {
        spelling: first + k * step
        for k, spellings in enumerate(words.split())
        for spelling in spellings.split("|")
    }


UNITS: Mapping[str, float] = _counted(
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen "
    "sixteen seventeen eighteen nineteen"
) | {
    "un": 1,
    "una": 1,
    "uno": 1,
    "dos": 2,
    "tres": 3,
    "cinco": 5,
    "wan": 1,
    "tow": 2,
    "twa": 2,
    "fower": 4,
    "yin": 1,
}
TENS: Mapping[str, float] = _counted(
    "twenty thirty forty|fourty fifty sixty seventy eighty ninety", 20, 10
)
HALVES = words_in("half haf halve hauf haaf arf alf media medio")
"""Words for one half that may stand alone before a unit."""
QUARTER = words_in("quarter quater qarter quartr quorter qtr")
"""A quarter, as it is written in haste too."""
PARTS: Mapping[str, float] = {
    "half": 1 / 2, "halves": 1 / 2, "haf": 1 / 2, "halve": 1 / 2, "media": 1 / 2, "medio": 1 / 2,
    "hauf": 1 / 2, "haaf": 1 / 2, "arf": 1 / 2, "alf": 1 / 2, **dict.fromkeys(QUARTER, 1 / 4),
    "third": 1 / 3, "thirds": 1 / 3, "quarters": 1 / 4, "fourth": 1 / 4,
    "fourths": 1 / 4, "fifth": 1 / 5, "fifths": 1 / 5, "sixth": 1 / 6, "sixths": 1 / 6,
    "eighth": 1 / 8, "eighths": 1 / 8, "tenth": 1 / 10, "tenths": 1 / 10, "cuarto": 1 / 4,
}  # fmt: skip
ARTICLES = frozenset({"a", "an", "another"})
FEW: Mapping[str, float] = {"couple": 2, "few": 3, "several": 4, "dozen": 12, "pair": 2}

_LANGUAGES = (
    # Spanish, Portuguese, French, Italian
    "uno|una|un dos tres cuatro|quatro cinco seis siete|sete ocho|oito nueve|nove diez|dez "
    "once|onze doce|doze trece|treze catorce|catorze quince|quinze dieciseis|dezesseis "
    "diecisiete|dezessete dieciocho|dezoito diecinueve|dezenove veinte|vinte",
    "um|uma|un|une deux|dois|duas trois quatre cinq six sept huit neuf dix onze douze treize "
    "quatorze quinze seize dixsept dixhuit dixneuf vingt",
    "un|uno|una due tre quattro cinque sei sette otto nove dieci undici dodici tredici "
    "quattordici quindici sedici diciassette diciotto diciannove venti",
    # German, Dutch
    "ein|eine|einen|einem zwei|zwo drei vier funf sechs sieben acht neun zehn elf zwolf dreizehn "
    "vierzehn funfzehn sechzehn siebzehn achtzehn neunzehn zwanzig",
    "een twee drie vier vijf zes zeven acht negen tien elf twaalf dertien veertien vijftien "
    "zestien zeventien achttien negentien twintig",
    # Polish
    "jeden|jedna|jedno dwa|dwie trzy cztery piec szesc siedem osiem dziewiec dziesiec jedenascie "
    "dwanascie trzynascie czternascie pietnascie szesnascie siedemnascie osiemnascie "
    "dziewietnascie dwadziescia",
    # Hindi and Urdu in Roman letters
    "ek do teen|tin char|chaar panch|paanch chhe|cheh|chah saat|sat aath nau das|dus gyarah barah "
    "terah chaudah pandrah|pandra solah satrah atharah unnis bees|bis",
    # Tagalog
    "isa|isang dalawa|dalawang tatlo|tatlong apat lima|limang anim pito|pitong walo|walong siyam "
    "sampu|sampung labingisa labindalawa|labindalawang labintatlo|labintatlong labingapat "
    "labinlima|labinlimang labinganim labimpito|labimpitong labingwalo|labingwalong "
    "labinsiyam|labinsiyamang dalawampu|dalawampung",
)
_HUNDREDS = {
    "cien": 100, "ciento": 100, "cem": 100, "cento": 100, "cent": 100, "hundert": 100,
    "honderd": 100, "sto": 100, "sau": 100, "doscientos": 200, "trescientos": 300,
    "cuatrocientos": 400,
    "quinientos": 500, "seiscientos": 600, "setecientos": 700, "ochocientos": 800,
    "novecientos": 900, "quatrocentos": 400, "seiscentos": 600, "setecentos": 700,
    "oitocentos": 800, "quattrocento": 400, "seicento": 600, "settecento": 700, "ottocento": 800,
    "vierhundert": 400, "sechshundert": 600, "siebenhundert": 700, "achthundert": 800,
    "duzentos": 200, "trezentos": 300, "quinhentos": 500, "duecento": 200,
    "trecento": 300, "cinquecento": 500, "zweihundert": 200, "dreihundert": 300,
    "funfhundert": 500, "tweehonderd": 200, "driehonderd": 300, "vijfhonderd": 500,
    "dwiescie": 200, "trzysta": 300, "piecset": 500,
}  # fmt: skip
_MIXED = {
    "anderthalb": 1.5, "eineinhalb": 1.5, "einundeinhalb": 1.5, "zweieinhalb": 2.5,
    "zweiundeinhalb": 2.5, "dreieinhalb": 3.5, "viereinhalb": 4.5, "anderhalf": 1.5,
    "anderhalve": 1.5, "tweeenhalf": 2.5, "tweeeneenhalf": 2.5, "drieenhalf": 3.5,
    "drieeneenhalf": 3.5, "połtora": 1.5, "połtorej": 1.5, "poltora": 1.5, "poltorej": 1.5,
    "dedh": 1.5, "sava": 1.25, "sawa": 1.25, "dhai": 2.5, "dhaai": 2.5, "adhai": 2.5,
}  # fmt: skip
FOREIGN: Mapping[str, float] = {
    **{word: value for row in _LANGUAGES for word, value in _counted(row, 1).items()},
    **_HUNDREDS,
    **_MIXED,
    **dict.fromkeys(("pav", "paav", "pao"), 0.25),
}
"""Number words of other languages, without accents."""
FOREIGN_HALVES = words_in(
    "medio media meio meia demi demie mezzo mezza halb halbe halbes halber halben halve poł pol "
    "aadha adha aadhi aadhe kalahati kalahating nusu"
)
"""A half in other languages."""
FOREIGN_AND = words_in("y e et ed und en i at na")
"""Words that join a half to the number or the unit before it ("kilo y medio", "et demi")."""
TEENS = frozenset({"dix", "labing"})
"""Ten with a digit behind it ("dix-sept", "labing-isa")."""
PLUS_HALF = frozenset({"sadhe", "saadhe", "sarhe"})
"""Hindi: the number behind it and a half more."""
MEASURES = words_in(
    "kg kgs kilo kilos kilogram kilograms kilogramm kilogramme kilogrammes kilogramos chilo chili "
    "quilo quilos g gr gm gram grams gramm gramme grammes gramos gramas grammi grammo gramow "
    "gramy etto etti l lt litre litres liter liters litro litros litri litr litry litrow ml "
    "pound pounds libra libras pfund livre livres pint pints cup cups taza tazas cucharada "
    "cucharadas onza onzas balde baldes cubeta cubetas"
)
"""Units in front of which a foreign number word is a number."""
NOUGHTS = words_in("nought naught")
"""Before "point" or "comma" and a digit: "nought point eight"."""
NUMBER_WORDS = frozenset(
    {*UNITS, *TENS, *FEW, *ARTICLES, *HALVES, "hundred", "thousand", *QUARTER, "third", "fourth",
     "fifth", "sixth", "eighth", "tenth", "cuarto", "between"} - {"pair"}
)  # fmt: skip
"""Words that a number of any use can begin with."""
MEASURE_NUMBERS = NUMBER_WORDS | {"point"} | NOUGHTS | FOREIGN.keys() | FOREIGN_HALVES | PLUS_HALF
"""Words that the number of a measure can begin with."""
