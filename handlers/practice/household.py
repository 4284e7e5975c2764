"""What household vessels hold, as people measure scraps with them: litres, with a range.

All figures are common practice: a vessel of ordinary size, filled loosely to the brim. The range
is what the same word covers in different kitchens.
"""

from collections.abc import Mapping
from typing import NamedTuple


class Vessel(NamedTuple):
    """What one vessel holds, in litres."""

    low: float
    usual: float
    high: float
    standing: str = "common practice"


VESSELS: Mapping[str, Vessel] = {
    "pinch": Vessel(0.0003, 0.0005, 0.001),
    "spoon": Vessel(0.005, 0.015, 0.02),
    "handful": Vessel(0.05, 0.15, 0.4),
    "fistful": Vessel(0.05, 0.1, 0.2),
    "scoop": Vessel(0.05, 0.1, 0.25),
    "ladle": Vessel(0.1, 0.15, 0.25),
    "eggcup": Vessel(0.03, 0.05, 0.06),
    "espresso cup": Vessel(0.05, 0.07, 0.1),
    "teacup": Vessel(0.12, 0.2, 0.25),
    "coffee can": Vessel(0.7, 1.0, 3.0),
    "glass": Vessel(0.2, 0.25, 0.35),
    "mug": Vessel(0.25, 0.3, 0.4),
    "can of food": Vessel(0.35, 0.4, 0.8),
    "jam jar": Vessel(0.3, 0.4, 0.5),
    "jar": Vessel(0.3, 0.5, 1.0),
    "katori": Vessel(0.1, 0.15, 0.25),
    "bowl": Vessel(0.4, 0.75, 1.5),
    "mixing bowl": Vessel(2.0, 3.0, 4.0),
    "plate": Vessel(0.2, 0.4, 0.7),
    "dish": Vessel(0.5, 1.0, 2.0),
    "tray": Vessel(0.5, 1.5, 4.0),
    "lunch box": Vessel(0.5, 0.8, 1.2),
    "jug": Vessel(0.8, 1.0, 2.0),
    "bottle": Vessel(0.5, 0.75, 1.5),
    "tub": Vessel(0.5, 1.0, 2.0),
    "yoghurt pot": Vessel(0.12, 0.45, 0.5),
    "margarine tub": Vessel(0.25, 0.5, 1.0),
    "takeaway box": Vessel(0.5, 0.65, 1.0),
    "ice-cream tub": Vessel(1.0, 2.0, 4.0),
    "saucepan": Vessel(1.0, 2.0, 3.0),
    "pot": Vessel(1.5, 3.0, 6.0),
    "cooking pot": Vessel(2.0, 4.0, 8.0),
    "hotel pan": Vessel(6.0, 13.0, 20.0),
    "casserole": Vessel(2.0, 3.0, 5.0),
    "sandwich bag": Vessel(0.5, 1.0, 1.5),
    "freezer bag": Vessel(1.0, 2.0, 4.0),
    "colander": Vessel(2.0, 3.0, 5.0),
    "basin": Vessel(3.0, 5.0, 8.0),
    "caddy": Vessel(3.0, 5.0, 7.0),
    "carrier bag": Vessel(5.0, 8.0, 15.0),
    "paper bag": Vessel(3.0, 6.0, 12.0),
    "bag": Vessel(3.0, 8.0, 15.0),
    "box": Vessel(5.0, 10.0, 25.0),
    "bucket": Vessel(8.0, 10.0, 15.0),
    "washing-up bowl": Vessel(6.0, 8.0, 10.0),
    "watering can": Vessel(5.0, 9.0, 10.0),
    "crate": Vessel(20.0, 30.0, 50.0),
    "sack": Vessel(20.0, 40.0, 60.0),
    "wheelbarrow": Vessel(60.0, 85.0, 100.0),
}
"""Litres in each vessel: least, usual, most."""
