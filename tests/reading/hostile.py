"""Texts of the greatest length that a message can have, each one piece over and over."""

LENGTH = 64 * 1024
"""Bytes."""
PIECES = (
    *("a ", "1 ", "2 kg ", "and ", "shed bin ", "?", "-", '"a b c ', "put 2 kg in shed and "),
    *("not now ", "the 3rd of may ", "9", "half a ", "1/2/", "🍗", "can you ", "in the "),
    *("white mould ", "and 2 kg ", "\"('", "a", "I'll", "'", "1,", "½", "e\u0301", "no no , "),
    *(
        "2 kg of bones ",
        "bin 2 ",
        "1 kg 3 ",
        "please can you bot ",
        "how many more ",
        "is it too wet or ",
        "a couple of ",
        "\n",
        "@ines ",
    ),
    *(
        "hand the shed bin to ines ",
        "added peel, no meat, 2 kg, ",
        "if I drained it when ",
        "👩‍👩‍👧",
    ),
)


def text(piece: str) -> str:
    """The piece over and over."""
    return piece * (LENGTH // len(piece.encode()))
