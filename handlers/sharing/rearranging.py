"""The turns of a rota in another order, or at another length."""

from handlers.answer import SILENCE, Answer, Turn
from handlers.phrasing import capital
from handlers.reading.arrangements.communal import DUTIES, Duty, Place, Rearranged, Rota
from handlers.sharing import rota
from handlers.sharing.rotas import RotaState, called, is_on, rotas_of


async def rearranged(plan: Rearranged, turn: Turn) -> Answer:
    """The turns there are go on from the present one in another order, or at another length."""
    if plan.maybe and not await rotas_of(turn.book, turn.today):
        return SILENCE
    one = await rota.meant(plan.bin, None, turn)
    if isinstance(one, Answer):
        return one
    present = next(iter(one.coming(turn.today)), None)
    names = _from(present.member if present else None, _on(one))
    if not names:
        return await rota.shown(plan.bin, turn)
    if plan.place:
        told = [name for name in (plan.member, plan.other) if name]
        known = await called(told, turn) if told else []
        missing = [name for name in known[1:] if name not in names]
        if missing:
            name = missing[0]
            return Answer(say=f"{capital(name)} is not on that rota: say “add {name} to the rota”.")
        names = _placed(names, plan.place, *known)
    if plan.maybe and not plan.place and plan.days == one.days:
        return Answer(noted=True)
    start = present.start if present else max(one.start, turn.today)
    days = plan.days or one.days
    if not rota.SHORTEST <= days <= rota.LONGEST:
        return Answer(say=rota.HOW_LONG)
    said = Rota(members=tuple(names), days=days, duty=_duty(one), start=start)
    entries, say = await rota.begun(said, names, one.bin, turn)
    return Answer(entries=entries, say=say)


def _on(one: RotaState) -> list[str]:
    return [name for name, _ in one.members if is_on(one, name)]


def _duty(one: RotaState) -> Duty:
    return next(duty for duty in DUTIES if duty == one.duty)


def _from(member: str | None, names: list[str]) -> list[str]:
    """The round of turns as it comes from a member on."""
    at = names.index(member) if member in names else 0
    return names[at:] + names[:at]


def _placed(names: list[str], place: Place, member: str = "", other: str = "") -> list[str]:
    """The round with a member elsewhere; whoever has the present turn keeps it, unless swapped."""
    if place == "by name":
        return _from(names[0], sorted(names, key=str.casefold))
    if place == "swapped":
        return [{member: other, other: member}.get(name, name) for name in names]
    if place == "instead":
        return [member if name == other else name for name in names if name != member]
    rest = [name for name in names if name != member]
    at = {
        "first": int(names[0] != member),
        "last": len(rest),
        "before": (rest.index(other) or len(rest)) if other else 0,
        "after": rest.index(other) + 1 if other else 0,
    }[place]
    return _from(names[0], [*rest[:at], member, *rest[at:]])
