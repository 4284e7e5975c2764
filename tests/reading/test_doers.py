"""Who did it: the member told of, the sender where nobody else is."""

import pytest

from handlers.reading.acts import Layer
from tests.reading.context import WEDNESDAY, acts


@pytest.mark.parametrize(
    "text",
    [
        "Ruth told me she had put 2 kg of peelings in bin 3",
        "for the record (and Ruth's conscience): she put 2 kg of fish skins in bin 3",
        "2 kg of peelings were added to bin 3 by Miss Ruth",
        "yesterday has Ruth 2,4 kg herring heads brought and in bin 3 thrown",
        "Ruth puso 2 kg de pan en bin 3",
        "Ruth the early bird, she added 2 kg to bin 3",
        "Ruth added 2 kg to bin 3 last night",
        "Ruth throw 2 kg of noodles inside bin 3",
        "please note Ruth bin 3 700 g of peelings",
        'Ruth says "2 kg in bin 3, all peel"',
        "Ruth, which is a strong woman, has put 2 kg of leeks in bin 3",
        "Ruth (her with the accordion) poured 400 ml out of bin 3",
        "500 g of mash to bin 3, from Ruth",
        "Ruth's went and sealed bin 3",
        "@Ruth put 2 kg of rice in bin 3",
        "2 kg of peelings in bin 3 (Ruth)",
        "2 kg of peelings in bin 3 - Ruth",
        "2 kg of peelings in bin 3. That was Ruth",
        "she's drained bin 3, 300 ml, Ruth has",
        "bin 3 has been shut since Monday, Ruth did it",
        "bin 3 was sealed this morning, Ruth's doing",
        "Ruth's only gone and sealed bin 3",
        "Ruth was kind enough to drop 2 kg of peelings into bin 3",
        "big thanks to Ruth who put 3 kg of apple cores in bin 3",
        "3 kg of apple cores into bin 3, thanks to Ruth",
        "3 kg of apple cores from Ruth went in bin 3",
        "2 kg of peelings in bin 3, courtesy of Ruth",
        "2 kg of Ruth's peelings into bin 3",
        "bin 3 got 2 kg of peelings off Ruth",
        "for Ruth: 2 kg of peelings, bin 3",
        "message from Ruth: sealed bin 3",
        "Ruth and Ines drained bin 3",
        "Ruth and the scouts buried bin 3 under the plum",
        "Ruth told Ines she'd sealed bin 3 on Monday",
        "it's me Ruth, sealed bin 3",
        "Ruth carry bin 3 go bury under the plum",
        "bin 3 was sealed last night by our Ruth",
        "bin 3 is shut now, it was Ruth who did it",
        "bin 3's been dug in by the wall, that was Ruth on Monday, not me",
        "buried bin 3 on Monday, well Ruth did",
        "2 kg of peelings in bin 3, Ruth saw to it",
        "2 kg of peelings in bin 3, credit to Ruth",
        "Ruth's been at it. 2 kilos of peel in bin 3",
        "bin 3 went in under the beans yesterday, Ruth dug it in.",
        "bin 3 went to the far bed, Ruth forked it under",
        "Ruth called at the hall while I was at work and drained bin 3",
    ],
)
def test_a_member_told_of_is_the_doer(text: str) -> None:
    assert [act.member for act in acts(text)] == ["ruth"]  # type: ignore[union-attr]


@pytest.mark.parametrize(
    "text",
    [
        "Ruth, I added 2 kg to bin 3",
        "thanks Ruth! added 2 kg to bin 3",
        "added 2 kg to bin 3, sorry Ruth",
        "Ruth thanks for the scales, added 2 kg of peelings to bin 3",
        "Ruth and Ines were out so I added 2 kg to bin 3",
        "kofi here, added 2 kg to bin 3",
        "me and Ruth put 2 kg of peelings in bin 3",
        "Ruth, Ines and I drained bin 3",
        "bin 3 was sealed by Ruth and myself",
        "I helped Ruth put 2 kg of peelings in bin 3",
        "Ruth: sealed bin 3 today",
        "Ruth rang while I was at work and I drained bin 3",
        "Ruth came by while I sealed bin 3",
        "bin 3 is buried, Ruth carried it off the van and I dug it in",
        "Ruth made a pie for thirty and we binned 2 kg of it in bin 3",
    ],
)
def test_one_who_is_only_spoken_to_is_not(text: str) -> None:
    assert [act.member for act in acts(text)] == [None]  # type: ignore[union-attr]


@pytest.mark.parametrize("text", ["that was ruths not mine", "that was ruth's not mine, sorry"])
def test_a_correction_names_whose_it_was(text: str) -> None:
    (act,) = acts(text)
    assert act.member == "ruth"  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("text", "member"),
    [
        ("Grace O put 2 kg in bin 3", "Grace Okoro"),
        ("Grace Lim put 2 kg in bin 3", "Grace Lim"),
        ("Grace put 2 kg in bin 3", None),
        ("Lola put 2 kg in bin 3", "Lola (flat 2)"),
        ("Mrs Rao put 2 kg in bin 3", "Mrs. Rao"),
        ("mai put 2 kg in bin 3", "Thị Mai"),
        ("tomek put 2 kg in bin 3", "@tomek:flat9.example"),
    ],
)
def test_members_are_called_by_short_forms_that_only_one_has(text: str, member: str | None) -> None:
    members = ("Grace Okoro", "Grace Lim", "Lola (flat 2)", "Mrs. Rao", "Thị Mai")
    (act,) = acts(text, members=(*members, "@tomek:flat9.example"))
    assert act.member == member  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("text", "member"),
    [
        ("Hope put 2 kg of rice in bin 3", "Hope"),
        ("Hope it's fine, I put 2 kg of rice in bin 3", None),
        ("on behalf of Hope: 2 kg of rice, bin 3", "Hope"),
        ("May's lot was 2 kg of rice, into bin 3", "May"),
        ("may I say: 2 kg of rice in bin 3", None),
        ("Friday put 2 kg of rice in bin 3", "Friday"),
        ("Basil put 2 kg of rice in bin 3", "Basil"),
    ],
)
def test_a_name_that_is_a_word_too_is_one_where_somebody_is_meant(
    text: str, member: str | None
) -> None:
    (act,) = acts(text, members=("Hope", "May", "Friday", "Basil"))
    assert act.member == member  # type: ignore[union-attr]
    assert act.materials == {"grain": 1.0}  # type: ignore[union-attr]
    assert act.on == WEDNESDAY.date()  # type: ignore[union-attr]


def test_did_stands_for_the_verb_before_it() -> None:
    told = acts("I drained bin 3 and Ruth did big blue")
    assert [(act.act, act.member) for act in told] == [("drain", None), ("drain", "ruth")]  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("text", "doer"),
    [
        ("Earl got 1 kg of peel", None),
        ("1 kg of peel for Earl", None),
        ("Ruth put 1 kg of peel in Earl", "ruth"),
        ("Earl put 1 kg of peel in Earl", "Earl"),
    ],
)
def test_a_bin_called_as_a_member_has_put_in_nothing(text: str, doer: str | None) -> None:
    found = acts(text, bins=("Earl", "Dolly"), members=("Earl", "ruth", "ines"), in_room=True)
    [layer] = [act for act in found if isinstance(act, Layer)]
    assert (layer.bin, layer.member) == ("Earl", doer)
