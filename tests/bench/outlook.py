"""How good the forecast of a full bin is, on simulated households: `python -m tests.bench.outlook`.

Each row takes 1500 seeds from the number it begins with. The median is interpolated within its day
(`statistics.median_grouped`), since whole days tie too easily; behind it is that of whole days.
"""

import sys
from statistics import mean, median, median_grouped

from tests.practice.households import Mould, hold, regular, varied

BEGINNINGS = (0, 100_000, 200_000, 300_000, 400_000)
MOULDS: tuple[Mould, ...] = (varied, regular)


def main() -> None:
    """Print a row for each mould, each thing known, and each stretch of seeds."""
    sys.stdout.write("days off: median (in whole days) and mean, of ours and of a plain average\n")
    for mould in MOULDS:
        for people_known in (True, False):
            for first in BEGINNINGS:
                found = hold(mould, range(first, first + 1500), people_known=people_known)
                sys.stdout.write(
                    f"{mould.__name__:8} people {'known  ' if people_known else 'unknown'} "
                    f"seeds {first:6} in the range {found.share:.1%}  "
                    f"median {_medians(found.ours)} against {_medians(found.theirs)}  "
                    f"mean {mean(found.ours):5.2f} against {mean(found.theirs):5.2f}\n"
                )


def _medians(days: list[int]) -> str:
    return f"{median_grouped(days):.2f} ({median(days):.0f})"


if __name__ == "__main__":
    main()
