"""What is kept about a member, and how they are taken out of the book."""

from collections import Counter

from handlers.answer import Answer, Query, Turn
from handlers.phrasing import capital, day, mass, the
from handlers.practice.figure import listed
from handlers.reading.acts import Forget
from handlers.state import layer_mass, states_of
from storage import links
from storage.forgetting import naming
from storage.rows import Entry, Member

WORDS = {
    "layer": ("layer", "layers"),
    "drain": ("draining", "drainings"),
    "open": ("bin opened or sized", "bins opened or sized"),
    "seal": ("sealing", "sealings"),
    "unseal": ("sealing undone", "sealings undone"),
    "bury": ("burial", "burials"),
    "observe": ("observation", "observations"),
    "leave": ("leaving of the room", "leavings of the room"),
    "return": ("coming into the room", "comings into the room"),
    "batch": ("batch of starter", "batches of starter"),
    "stock": ("count of starter", "counts of starter"),
}
OTHERS = ("word on who takes a bin", "words on who takes a bin")

ONLY_RECORDS = (
    "Of what you write I keep only what became a record, and my own answers to it; all else is "
    "forgotten at once. To be taken out of the book, say “pailkeeper, forget me”."
)
WHAT_IT_MEANS = (
    "That takes your name and your account out of this group's book, for good. What you put into "
    "bins stays in their totals, without the name. If that is what you want, say “pailkeeper, "
    "forget me for good”."
)
ONLY_THEY = (
    "Only {who} can ask for that, by “pailkeeper, forget me”; or whoever runs me does it for them."
)
OLD_BACKUPS = "Backups made before now still hold the name until newer ones take their place."


async def known(turn: Turn) -> Answer:
    """All that the group's book has on the sender."""
    member = await _sender(turn)
    user = member.user if member else None
    account = f" ({user})" if user and user != turn.sender else ""
    lines = [f"I know you here as {turn.sender}{account}.", _records(await _about(turn), turn)]
    states = await states_of(turn.book, turn.today)
    kept = [the(state.bin.name) for state in states if state.keeper == turn.sender]
    if kept:
        lines.append(f"You keep {listed(kept)} now.")
    if await links.token(turn.book, turn.sender):
        lines.append("You have a calendar link of your own.")
    return Answer(say="\n".join([*lines, ONLY_RECORDS]))


async def forget(act: Forget, turn: Turn) -> Answer:
    """Take the sender out of the book; where they are not sure yet, say what that means."""
    if act.whose:
        return Answer(say=ONLY_THEY.format(who=act.whose))
    member = await _sender(turn)
    named = await _bins_named(member, turn)
    if not act.sure:
        say = f"{WHAT_IT_MEANS}{f' {named}' if named else ''}"
        return Answer(say=say, query=Query.about(act, lacks="yes"))
    count = len(await _about(turn))
    stay = {0: "", 1: " One record stays, without the name."}
    return Answer(
        forgets=member,
        say="Done: your name and account are out of this group's book."
        + stay.get(count, f" {count} records stay, without the name.")
        + (f" {named}" if named else "")
        + f" {OLD_BACKUPS}",
    )


async def _bins_named(member: Member | None, turn: Turn) -> str:
    """That bins bear the member's name: the group calls them so, and nothing of ours can know
    by what other name it would.
    """
    if member is None:
        return ""
    named = naming(member, await turn.book.members())
    bins = [
        the(bin.name)
        for bin in (*await turn.book.bins(), *await turn.book.retired())
        if named.search(bin.name)
    ]
    keeps = "keep their names" if len(bins) > 1 else "keeps its name"
    return f"{capital(listed(bins))} {keeps}, which the group gave." if bins else ""


async def _sender(turn: Turn) -> Member | None:
    members = [one for one in await turn.book.members() if one.name == turn.sender]
    return max(members, key=lambda one: (one.present, one.user is not None), default=None)


async def _about(turn: Turn) -> list[Entry]:
    name = turn.sender
    return [e for e in await turn.book.entries() if name in (e.member, e.writer, e.receiver)]


def _records(entries: list[Entry], turn: Turn) -> str:
    if not entries:
        return "There are no records by you or about you."
    count = Counter(entry.act for entry in entries if not entry.struck)
    told = [
        f"{many} {words[many > 1]}" for act, words in WORDS.items() if (many := count.pop(act, 0))
    ]
    if rest := count.total():
        told.append(f"{rest} {OTHERS[rest > 1]}")
    if struck := sum(entry.struck for entry in entries):
        told.append(f"{struck} struck out")
    kg = sum(
        layer_mass(entry.facts) or 0.0
        for entry in entries
        if entry.act == "layer" and not entry.struck and entry.member == turn.sender
    )
    weight = f" You put in {mass(kg, turn.units)} in all." if kg else ""
    since = min(entry.on or turn.today for entry in entries)
    return f"Records by you or about you since {day(since, turn.today)}: {listed(told)}.{weight}"
