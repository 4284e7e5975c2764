"""The usual cautions, one line each, said once where harm is possible.

They are care as the trade and health services put it, not advice on law or medicine: local rules
and licensed people come first.
"""

from collections.abc import Mapping

from handlers.practice.figure import Figure

CAUTIONS: Mapping[str, str] = {
    # NSW Health and WorkSafe Queensland on potting mix and compost.
    "mould": "Do not sniff mould or dusty bran: damp it, wear a mask and gloves, and leave it to "
    "others if your lungs or immunity are weak.",
    # Acid fermentation gives off carbon dioxide: 10 g of sugar make over a litre of it.
    "gas": "If the lid bulges, let the gas out with your face turned away; never ferment in glass "
    "or under a screw cap.",
    # Liquid of pH 3.5 to 4 with the microbes of raw waste; acid and hypochlorite give chlorine.
    "liquid": "Treat it as raw waste: gloves on, use it the same day, keep it off leaves you eat "
    "raw and away from bleach.",
    # Reg. (EC) 1069/2009 and 142/2011; US Swine Health Protection Act.
    "meat": "Fermenting does not make meat safe: never feed it to animals, and ask your local "
    "authority before a shared site takes it.",
    # Leptospirosis leaflet of a UK allotment association.
    "rats": "If rats have been at it: gloves on, cuts covered, hands washed after.",
    # Waters et al. 1993 (23 kg at best); HSE L23 (16 kg for women at the waist).
    "lifting": "A full bin can weigh more than 15 kg (33 lb): lift it in pairs or on a trolley.",
    # National one-call services (811 in the US, 1100 in Australia).
    "digging": "Before digging deep, ask where pipes and cables run; cover well if animals dig.",
    # Acids of a fresh ferment: half of cress seeds fail at 2 to 4 mM.
    "roots": "Fresh ferment is sour enough to burn roots: let it rest in the soil before planting.",
    # Gardeners' illness after handling soil starts within days (NSW Health).
    "illness": "Fever, cough or headache in the days after handling it: see a doctor and say what "
    "you handled.",
    # Contact with acid and microbes: first-aid practice.
    "splash": "Splashed in the eye: rinse with clean water for a quarter of an hour and get help.",
    # Communal sites need approval in the UK; rules differ elsewhere.
    "rules": "Local rules on food waste and manure come first.",
}
"""Caution by name."""


LIFTED_KG = Figure(
    "weight up to which one lifts a bin alone",
    15,
    "kg",
    "Waters et al. 1993: 15.35 kg held at 30 cm and lifted 60 cm",
    "derived",
)


def caution(name: str) -> str:
    """The caution of that name, one sentence."""
    return CAUTIONS[name]
