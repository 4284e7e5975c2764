"""Moisture and C:N of what was logged, and what to add where it is out of range."""

from dataclasses import dataclass

from handlers.answer import Answer, Turn
from handlers.chosen import reasons
from handlers.phrasing import capital, mass, the
from handlers.practice.blending import MOISTURE, Blend, Purpose, blend
from handlers.practice.composition import FOODS, content
from handlers.practice.density import mass_kg
from handlers.practice.figure import Refused, number, ranging
from handlers.practice.kinds import Shares
from handlers.practice.units import KILOGRAMS
from handlers.reading.acts import Ask
from handlers.recording.bins import meant

NO_LAYERS = "Nothing was logged there yet: tell me what went in (“added 2 kg, half of it rice”)."

STANDING_LIQUID = "If liquid stands in it all the same, drain it and add torn paper or dry bread."
UNKNOWN = ("salt", "sugar")
"""What is asked of a bin and follows from no layer."""
SUCH = "Such a mix"
NOT_FOR_BINS = "C:N matters for a hot heap, not for a sealed bin."


@dataclass(frozen=True, slots=True)
class _Scraps:
    materials: Shares
    kg: float
    subject: str
    """The scraps as the subject of a sentence."""
    each: str = ""
    """To what an addition is reckoned, where no weight is known."""
    food: str | None = None
    """The one food that it is, if its own make-up is known."""

    @property
    def made_of(self) -> dict[str, float]:
        """Shares by food or kind."""
        if self.food:
            return {self.food: 1.0}
        return {str(kind): share for kind, share in self.materials.items()}


async def asked(act: Ask, turn: Turn) -> Answer:
    """How wet the scraps of a bin, or those named, are, or their C:N; and what to add."""
    purpose: Purpose = "carbon" if act.topic == "carbon" else "moisture"
    if act.what in UNKNOWN:
        return Answer(
            say=f"How much {act.what} is in it I cannot tell: nobody logs that. Ask me “how much "
            "nitrogen is in it?” or “is it too wet?”"
        )
    scraps = await _scraps(act, turn)
    if isinstance(scraps, Answer):
        return scraps
    if act.what == "nitrogen":
        return _nitrogen(scraps, turn)
    try:
        found = blend(
            scraps.made_of,
            mass_kg=scraps.kg,
            purpose=purpose,
        )
    except Refused as refused:
        return Answer(say=str(refused))
    words = _moist(found, scraps, turn) if purpose == "moisture" else _carbon(found, scraps, turn)
    return Answer(say=words, why=reasons(found, turn.book.room))


def _nitrogen(scraps: _Scraps, turn: Turn) -> Answer:
    made = content(scraps.materials)
    kg = scraps.kg * made.nitrogen / 100
    say = (
        f"{scraps.subject} holds about {mass(float(number(kg, 2)), turn.units)} of nitrogen in "
        f"{mass(scraps.kg, turn.units)}."
    )
    step = f"{number(scraps.kg)} kg x {number(made.nitrogen)} % = {number(kg * 1000)} g"
    return Answer(say=say, why=[step, *([made.source] if made.source else [])])


async def _scraps(act: Ask, turn: Turn) -> _Scraps | Answer:
    """What is asked about: scraps that were named, else the layers of the bin; or what to say."""
    if act.materials and not act.bin:
        food = act.what if act.what in FOODS else None
        such = capital(food) if food else SUCH
        weight = act.mass_kg
        if weight is None and act.volume_l is not None:
            weight = mass_kg(act.volume_l, act.materials)
        if weight is not None:
            return _Scraps(act.materials, weight, such, food=food)
        kg, each = (1.0, "kilo") if turn.units == "metric" else (KILOGRAMS["pound"], "pound")
        return _Scraps(act.materials, kg, such, f" to each {each}", food)
    state = await meant(act.bin, turn)
    if isinstance(state, Answer):
        return state
    if state.run.make_up is None:
        return Answer(say=NO_LAYERS)
    logged = f"By what was logged {the(state.bin.name)}"
    return _Scraps(state.run.make_up, state.run.mass_kg, logged)


def _moist(found: Blend, scraps: _Scraps, turn: Turn) -> str:
    water = f"about {number(found.moisture * 100, 2)} % water"
    if not found.add:
        right = f"{ranging(MOISTURE, 100)} % is right for a sealed bin. {STANDING_LIQUID}"
        return f"{scraps.subject} holds {water}: {right}"
    if found.moisture < (MOISTURE.low or 0.0):
        return (
            f"{scraps.subject} is dry, {water}: mix in juicy scraps, or sprinkle up to "
            f"{_added(found, scraps, turn)} over it. No liquid is no fault."
        )
    return (
        f"{scraps.subject} is wet, {water}: add {_added(found, scraps, turn)}, and drain it often."
    )


def _carbon(found: Blend, scraps: _Scraps, turn: Turn) -> str:
    if found.cn is None:
        return f"{scraps.subject} holds no nitrogen at all. {NOT_FOR_BINS}"
    heap = f" For a heap, mix in {_added(found, scraps, turn)}." if found.add else ""
    return f"{scraps.subject} has a C:N of about {number(found.cn, 2)} to 1. {NOT_FOR_BINS}{heap}"


def _added(found: Blend, scraps: _Scraps, turn: Turn) -> str:
    (part,) = found.add
    return f"{mass(float(number(part.kg, 2)), turn.units)} of {part.what}{scraps.each}"
