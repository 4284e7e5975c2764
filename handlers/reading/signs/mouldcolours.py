"""Which growth a colour tells of: the plain colours, their shades, and those of other tongues."""

from collections.abc import Mapping

from handlers.practice.signs import MOULD_OF_COLOUR, Sign
from handlers.reading.words.vocabulary import words_in

SHADES: Mapping[Sign, str] = {
    "white_mould": "whitish",
    "green_mould": "greenish bluish turquoise teal",
    "black_mould": "blackish",
    "other_mould": "pinkish orangey reddish yellowish purple",
}
_MORE: Mapping[Sign, str] = {
    "white_mould": "blanco blanca weiss weisse weisser weiße weißer snowy blanc "
    "blanche bianco bianca branco branca wit witte biala puti puting maputi maputing safed putih",
    "green_mould": "verde blueish gruner grun grune "
    "vert verte bleu bleue azul blau blaue blauer groen groene blauw zielona berde "
    "berdeng hara hijau",
    "black_mould": "negro negra dark schwarz schwarze schwarzer noir noire nero "
    "nera preto preta zwart zwarte czarna itim maitim kala hitam charcoal sooty inky",
    "other_mould": "yellowy brown brownish rosa rouge rojo roja jaune amarillo amarilla gelb gelbe "
    "gris",
}
"""What is a colour only of something that is called a growth: what ferments is dark and brown."""
COLOURS: Mapping[str, Sign] = {
    **MOULD_OF_COLOUR,
    **{
        word: sign
        for table in (SHADES, _MORE)
        for sign, words in table.items()
        for word in words_in(words)
    },
}
