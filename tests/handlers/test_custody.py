"""A bin passes from one keeper to the next, and stays with the first until it is accepted."""

from datetime import date

from handlers.reading.acts import Accept, Ask, Decline, Layer, Offer, Open
from handlers.state import look_up
from tests.group import Group


async def keeper(group: Group, day: int = 2) -> str | None:
    bin = await group.book.bin("yard")
    assert bin
    return (await look_up(group.book, bin, date(2026, 3, day))).keeper


async def test_a_bin_is_kept_by_who_opened_it_until_another_accepts(group: Group) -> None:
    await group.says(Open(bin="yard", capacity_l=30.0, shared=True), who="nives")
    await group.says(Layer(mass_kg=4.0, bin="yard"), who="bram")
    asked = await group.says(Offer(bin="yard", to="bram"), who="nives")
    assert asked.say.startswith("Bram, will you take the yard bin?")
    assert await keeper(group) == "nives"
    taken = await group.says(Accept(), who="bram")
    assert taken.say.startswith("Bram keeps the yard bin now.")
    assert "4 kg" in taken.say
    assert await keeper(group) == "bram"


async def test_an_offer_for_a_day_takes_effect_on_that_day(group: Group) -> None:
    await group.says(Open(bin="yard"), who="nives")
    await group.says(Offer(bin="yard", to="bram", on=date(2026, 3, 6)), who="nives")
    taken = await group.says(Accept(), who="bram")
    assert "takes the yard bin Friday 6 March; until then nives keeps it" in taken.say
    assert await keeper(group, 5) == "nives"
    assert await keeper(group, 6) == "bram"


async def test_nobody_takes_what_was_offered_to_another(group: Group) -> None:
    await group.says(Open(bin="yard"), who="nives")
    await group.says(Offer(bin="yard", to="bram"), who="nives")
    assert not (await group.says(Accept(bin="yard"), who="ines")).entries
    assert await keeper(group) == "nives"


async def test_a_declined_offer_leaves_the_keeper(group: Group) -> None:
    await group.says(Open(bin="yard"), who="nives")
    await group.says(Offer(bin="yard", to="bram"), who="nives")
    assert "nives still keeps it" in (await group.says(Decline(), who="bram")).say
    assert not (await group.says(Accept(), who="bram")).entries


async def test_declining_another_day_gives_back_nothing(group: Group) -> None:
    await group.says(Open(bin="yard"), who="nives")
    await group.says(Offer(bin="yard", to="bram", on=date(2026, 3, 6)), who="nives")
    await group.says(Accept(bin="yard", on=date(2026, 3, 6)), who="bram")
    assert not (await group.says(Decline(on=date(2026, 4, 12)), who="bram")).entries
    assert (await group.says(Decline(on=date(2026, 3, 6)), who="bram")).entries


async def test_yes_without_an_offer_is_not_about_bins(group: Group) -> None:
    await group.says(Open(bin="yard"), who="nives")
    assert (await group.says(Accept(), who="bram")).say == ""


async def test_who_has_it(group: Group) -> None:
    await group.says(Open(bin="yard"), who="nives")
    assert (await group.says(Ask(topic="custody", bin="yard"))).say == "The yard bin: nives."
