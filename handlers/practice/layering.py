"""In how many layers scraps go into an ordinary bucket."""

from dataclasses import dataclass
from math import ceil, pi

from handlers.practice.density import loose_figures, loose_volume_l
from handlers.practice.dose import BUCKET, LAYER_DEPTH
from handlers.practice.figure import Figure, Reckoning, number
from handlers.practice.kinds import Shares


@dataclass(frozen=True, slots=True, kw_only=True)
class Layering(Reckoning):
    """The layers that so much makes, none deeper than is usual."""

    layers: int


def layering(
    *, mass_kg: float | None = None, volume_l: float | None = None, materials: Shares | None = None
) -> Layering:
    """The layers of so many kg, or litres as they are thrown in."""
    figures: tuple[Figure, ...] = (LAYER_DEPTH, BUCKET)
    steps: tuple[str, ...] = ()
    litres = volume_l or 0.0
    if mass_kg is not None:
        litres = loose_volume_l(mass_kg, materials)
        steps = (f"{number(mass_kg)} kg, loose, is {number(litres)} L",)
        figures = (*figures, *loose_figures(materials))
    depth_cm = litres * 1000 / (pi / 4 * BUCKET.value**2)
    deepest = LAYER_DEPTH.high or LAYER_DEPTH.value
    layers = max(1, ceil(depth_cm / deepest - 0.05))
    step = (
        f"{number(litres)} L in a {number(BUCKET.value)} cm bucket are {number(depth_cm)} cm deep: "
        f"{layers} of at most {number(deepest)} cm"
    )
    return Layering(
        layers=layers,
        steps=(*steps, step),
        figures=figures,
        lines=(f"{layers} layer{'s' if layers > 1 else ''} in an ordinary bucket.",),
    )
