"""What to do where somebody is hurt, or could be: one or two lines for each hazard.

First aid as poison centres and health services put it, no advice of medicine: whoever is hurt asks
a doctor or the poison line, and local rules come first.
"""

from collections.abc import Mapping
from typing import Literal, get_args

from handlers.practice.advice import Advice, advice
from handlers.practice.cautions import caution
from handlers.practice.figure import Figure, number

Hazard = Literal[
    "in the eye",
    "swallowed",
    "swallowed by an animal",
    "swallowed, what next",
    "on the skin",
    "in a wound",
    "bitten",
    "breathed in",
    "ill after",
    "chlorine",
    "pipe or cable",
    "sharp things",
    "burst",
    "fire",
    "back",
    "into water",
    "to drink",
    "to feed",
    "bleach",
    "germs",
    "gas",
    "mould",
    "who should not",
    "not to lift",
    "before digging",
    "hands",
]
"""What has happened, and behind that what is only asked about."""

HAZARDS: tuple[Hazard, ...] = get_args(Hazard)


RINSE = Figure(
    "rinsing an eye at least",
    15,
    "min",
    "Mayo Clinic, first aid for a chemical splash",
    "published",
)
INCUBATION = Figure(
    "soil-borne Legionella makes ill within",
    10,
    "d",
    "NSW Health, media note of 14 December 2018",
    "published",
    2,
    10,
)

_POISONS_CENTRE = "National Poisons Centre of New Zealand, first aid"
_ACID_AND_BLEACH = "acid sets chlorine free from hypochlorite: chemistry"


ADVICE: Mapping[Hazard, Advice] = {
    "in the eye": advice(
        f"Rinse the eye now with clean running water for {number(RINSE.value)} minutes, lids held "
        "open, contact lenses out.",
        "Then have it seen to the same day, at once if it hurts or sight is blurred; say it was "
        "sour liquid of raw waste.",
        source=RINSE.source,
        standing="published",
        figures=(RINSE,),
    ),
    "swallowed": advice(
        "Rinse or wipe out the mouth and do not make them vomit. Call your poison line or a doctor "
        "now, and say how much of what.",
        "Drowsy, in pain or short of breath: the emergency number at once.",
        source=_POISONS_CENTRE,
        standing="published",
    ),
    "swallowed by an animal": advice(
        "Take it away from the rest and do not make it vomit. Call your vet now and say how much "
        "of what: bones, mould and alcohol in there can harm an animal.",
    ),
    "swallowed, what next": advice(
        "However well they seem, call your poison line or a doctor, for an animal the vet: they "
        "say how much is dangerous and what to watch for.",
        "Vomiting, drowsy, in pain or short of breath: the emergency number now.",
        source=_POISONS_CENTRE,
        standing="published",
    ),
    "on the skin": advice(
        "Wash it off with soap and plenty of water, and change what it soaked.",
        "If it got into a cut, or the skin turns red and sore, show it to a doctor.",
    ),
    "in a wound": advice(
        "Wash the cut well under running water with soap, and cover it before you go on.",
        "Deep or dirty, or red, hot or swollen later: see a doctor, and ask whether your tetanus "
        "cover still holds.",
    ),
    "bitten": advice(
        "Wash the bite well under running water with soap, and see a doctor today: rats carry "
        "illness that starts like a flu.",
        source="leptospirosis leaflet of a UK allotment association",
        standing="published",
    ),
    "breathed in": advice(
        "Go into fresh air. Tight chest, wheezing or short breath: call a doctor or the emergency "
        "number now.",
        caution("illness"),
        source=INCUBATION.source,
        standing="published",
        figures=(INCUBATION,),
    ),
    "ill after": advice(
        "See a doctor and say that you handled fermented waste and soil; badly short of breath or "
        "drowsy, the emergency number.",
        source=INCUBATION.source,
        standing="published",
        figures=(INCUBATION,),
    ),
    "chlorine": advice(
        "Leave the room now and keep others out: sour liquid and bleach give off chlorine. Open "
        "doors and windows only on your way.",
        "Coughing, burning eyes or a tight chest: call your poison line or the emergency number.",
        source=_ACID_AND_BLEACH,
        standing="from memory",
    ),
    "pipe or cable": advice(
        "Stop digging, keep everybody away, and touch neither spade nor line. Gas smell: no "
        "flames, no switches.",
        "Call the network's emergency number, or the emergency services.",
    ),
    "sharp things": advice(
        "Do not reach in. Gloves on, lift it out with tongs, and throw out the layer round it; "
        "ask your local authority about needles.",
        "If somebody is cut or pricked: wash it under running water and see a doctor today.",
    ),
    "burst": advice(
        "Keep faces away and clear it up with gloves and glasses on; open no other bottle or lid "
        "but slowly, turned away. Hurt: a doctor.",
        caution("gas"),
    ),
    "fire": advice(
        "Keep away and call the fire service; do not open the lid. A bin that is only warm and "
        "steams is not burning: move it out of the sun.",
    ),
    "back": advice(
        "Put it down and lift no more today. Numb, weak or shooting pain: see a doctor.",
        caution("lifting"),
    ),
    "into water": advice(
        "Not into ponds, streams or storm drains: it takes the air from the water, and fish die. "
        "If much got in, tell your local authority.",
    ),
    "to drink": advice(
        "Nobody should drink or eat what comes out of a bin: it is raw waste, sour but not made "
        "safe.",
        "If somebody did: rinse the mouth, and ask your poison line or a doctor.",
        source=_POISONS_CENTRE,
        standing="published",
    ),
    "to feed": advice(
        "No, not to any animal: fermenting makes neither meat nor mould safe, and in many places "
        "feeding kitchen waste is against the law.",
        source="Reg. (EC) 1069/2009, Art. 11; US Swine Health Protection Act",
        standing="from memory",
    ),
    "bleach": advice(
        "No bleach or other cleaner near ferment or its liquid: with acid, bleach gives off "
        "chlorine, and what is left kills the next ferment.",
        "Empty the bin, then wash it with hot water and a brush, rinse, and dry it in the sun.",
        source=_ACID_AND_BLEACH,
        standing="from memory",
    ),
    "germs": advice(
        "Treat it as raw waste that may carry any germ, meat above all: sour is no proof that it "
        "is safe. Nobody tastes it; gloves on, cuts covered, hands washed.",
        "Ill after handling it: see a doctor and say what you handled.",
        source="leptospirosis leaflet of a UK allotment association; the rest is our reading",
        standing="derived",
    ),
    "gas": advice(
        "It is mostly carbon dioxide: harmless where air moves, but do not put your face over a "
        "fresh bin or keep many in a small closed room. Dizzy: out into fresh air.",
        caution("gas"),
        source="ferments of sugar give lactic acid, alcohol and carbon dioxide: chemistry",
        standing="from memory",
    ),
    "mould": advice(
        "White growth does no harm in the bin; green, blue or black is not for breathing in.",
        caution("mould"),
        source="NSW Health and WorkSafe Queensland, on potting mix and compost",
        standing="published",
    ),
    "who should not": advice(
        "Leave open bins, mould and dusty bran to others if you are pregnant, if your lungs or "
        "immunity are weak, and to no small child alone; ask your doctor if unsure.",
        "Everybody else: gloves, cuts covered, hands washed after.",
        source="WorkSafe Queensland and WA Health, on potting mix; the rest is our reading",
        standing="derived",
    ),
    "not to lift": advice(
        "Better not: leave lifting to others, and ask a doctor first.",
        caution("lifting"),
        source="NIOSH 94-110 and HSE INDG143 on lifting at work; the rest is our reading",
        standing="derived",
    ),
    "before digging": advice(
        "Yes, where you dig deep: many countries have one number to call for pipes and cables.",
        caution("digging"),
    ),
    "hands": advice(
        "Yes, wear gloves for scraps, ferment and liquid, cover cuts, and wash your hands after.",
        source="leptospirosis leaflet of a UK allotment association",
        standing="published",
    ),
}
"""What to do, by hazard."""
