"""An answer of a line or two that nothing is reckoned for, and who says so."""

from dataclasses import dataclass

from handlers.practice.figure import Figure, Standing


@dataclass(frozen=True, slots=True)
class Advice:
    """What to say, in lines, and where it is from."""

    lines: tuple[str, ...]
    source: str
    standing: Standing
    figures: tuple[Figure, ...] = ()

    def why(self) -> list[str]:
        """Where it is from, as "why?" prints it."""
        said = f"{self.standing}: {self.source}" if self.source else self.standing
        return [said, *(figure.line() for figure in self.figures)]


def advice(
    *lines: str,
    source: str = "",
    standing: Standing = "common practice",
    figures: tuple[Figure, ...] = (),
) -> Advice:
    """Advice; without a source it is common practice."""
    return Advice(lines, source, standing, figures)
