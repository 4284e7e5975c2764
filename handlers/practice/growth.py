"""How fast the lactic acid bacteria grow: a published model, used only for ratios.

Lactobacillus curvatus in broth, growth per hour at T °C and a pH:

    mu = 0.0001263 (T + 3.27)² (pH - 4.26) (9.77 - pH)

Wijtzes et al., Appl. Environ. Microbiol. 61:2533-2539, 1995 (coefficients and range as a public
model collection gives them; citation and unit from memory). It has no upper limit of temperature
and must not be used outside its range; growth is not yet acid, so a day count is an estimate.
"""

from handlers.practice.figure import Figure

_SOURCE = "Wijtzes et al., Appl. Environ. Microbiol. 61:2533-2539, 1995"

RATE = Figure(
    "growth coefficient of L. curvatus",
    0.0001263,
    "1/(h·°C²)",
    _SOURCE,
    "published",
)
COLDEST = Figure("no growth of L. curvatus below", -3.27, "°C", _SOURCE, "published")
LEAST_PH = Figure("no growth of L. curvatus at or below pH", 4.26, "pH", _SOURCE, "published")
MOST_PH = Figure("no growth of L. curvatus at or above pH", 9.77, "pH", _SOURCE, "published")
RANGE = Figure(
    "temperatures that the model of growth covers", 20, "°C", _SOURCE, "published", low=6, high=31
)


def growth_per_hour(celsius: float, ph: float = 6.5) -> float:
    """Growth rate in 1/h; 0 where nothing grows."""
    if celsius <= COLDEST.value:
        return 0.0
    acid = max(0.0, ph - LEAST_PH.value) * max(0.0, MOST_PH.value - ph)
    return RATE.value * (celsius - COLDEST.value) ** 2 * acid


def slowness(celsius: float) -> float:
    """How many times as long things take as at 20 °C; outside the model's range, as at its edge."""
    assert RANGE.low is not None
    assert RANGE.high is not None
    held = min(max(celsius, RANGE.low), RANGE.high)
    return growth_per_hour(RANGE.value) / growth_per_hour(held)
