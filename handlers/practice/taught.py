"""What a newcomer is taught, by lesson: short, sourced, and with the figures of the craft alone."""

from collections.abc import Mapping

from handlers.practice.advice import Advice
from handlers.practice.lessons import Lesson
from handlers.practice.taught_bins import BINS
from handlers.practice.taught_bran import BRAN
from handlers.practice.taught_fermenting import FERMENTING
from handlers.practice.taught_filling import FILLING
from handlers.practice.taught_group import GROUP
from handlers.practice.taught_soil import SOIL

TAUGHT: Mapping[Lesson, Advice] = {**FILLING, **BINS, **FERMENTING, **BRAN, **SOIL, **GROUP}
"""What to say, by lesson."""
