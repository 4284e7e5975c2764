"""When to look after what was seen or done: a bin in trouble, ground that was just filled."""

from datetime import date

from handlers.practice.days import Window, after, high_days, low_days
from handlers.practice.figure import Figure
from handlers.practice.trouble import PATIENCE

SETTLING = Figure(
    "days after burial to see that nothing has dug there",
    2,
    "d",
    "our judgement: animals come in the first nights",
    "derived",
    2,
    5,
)
CHECKING = Figure(
    "days within which a treated bin is looked at again", 2, "d", "our judgement", "derived"
)


def check_window(seen: date) -> Window:
    """When to look again at a bin that was treated on that day."""
    start = after(seen, int(PATIENCE.value))
    end = after(start, int(CHECKING.value))
    return Window(
        start=start,
        end=end,
        steps=(f"{seen} + {PATIENCE.value:.0f} days = {start}",),
        figures=(PATIENCE, CHECKING),
        lines=(f"Look again between {start} and {end}.",),
    )


def cover_window(buried: date) -> Window:
    """When to look whether the cover over a burial holds."""
    start, end = after(buried, low_days(SETTLING)), after(buried, high_days(SETTLING))
    return Window(
        start=start,
        end=end,
        steps=(
            f"{buried} + {low_days(SETTLING)} to {high_days(SETTLING)} days = {start} to {end}",
        ),
        figures=(SETTLING,),
        lines=(f"Look at the ground between {start} and {end}.",),
    )
