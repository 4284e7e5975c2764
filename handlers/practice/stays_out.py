"""The other table behind `allowed`: what stays out of a bin, and why."""

from handlers.practice.goes_in import BOOK, Row, row

RUBBISH = "household rubbish"
STAYS_OUT: tuple[Row, ...] = (
    row(
        "mouldy food",
        "mould, mold, mouldy food, moldy food, mouldy bread, moldy bread, mouldy, moldy, green "
        "bread, mildew, mildewed, fuzzy, furry",
        "no",
        "green or black growth brings the wrong microbes in: bury it apart or put it in the waste",
        f"{BOOK}, ch. 4 and 6",
        care="mould",
    ),
    row(
        "rotten food",
        "rotten, rotting, spoiled, spoilt, gone off, off meat, rancid, smelly meat, maggot, "
        "putrid, decomposed, slimy",
        "no",
        "what is already rotting spoils the bin",
        "a South African supplier's guide",
    ),
    row(
        "pet waste",
        "poo, poop, faeces, feces, dog waste, cat waste, pet waste, cat litter, kitty litter, "
        "litter, dog poo, dog poop, cat poo, cat poop, dog mess, dog turd, manure, dung, "
        "hamster bedding, rabbit bedding, animal bedding, droppings, rabbit droppings, "
        "bird droppings, dog dirt, dog muck, cat mess, pet poo, pet poop, chicken "
        "manure, horse manure, guano",
        "no",
        "it carries parasites that fermenting does not kill: never into soil for food",
    ),
    row(
        "nappies and human waste",
        "nappy, nappie, diaper, excrement, urine, human waste, toilet paper, sewage, vomit",
        "no",
        "they carry germs and parasites that fermenting does not kill: never into soil for food",
    ),
    row(
        RUBBISH,
        "rubbish, garbage, trash, refuse, general waste, household waste, junk, sweepings",
        "no",
        "only what was food goes in: pick out the rest",
    ),
    row(
        "hygiene things",
        "wet wipe, wipe, baby wipe, sanitary towel, sanitary pad, tampon, condom, plaster, "
        "bandage, cotton bud, cotton wool, cotton pad, face mask, dental floss, sponge, dishcloth, "
        "cloth, textile, fabric, cigarette, cigarette butt, chewing gum, gum, candle, wax",
        "no",
        "most hold plastic or dirt and never break down: into the waste with them",
    ),
    row(
        "plastic, glass and metal",
        "plastic, plastic bag, plastic wrap, plastic bottle, plastic packaging, cling film, "
        "clingfilm, saran wrap, cellophane, foil, tin foil, aluminium foil, aluminum foil, "
        "tinfoil, "
        "tin can, glass, glass jar, metal, rubber, rubber band, elastic band, sticker, fruit "
        "sticker, produce sticker, label, wrapper, sweet wrapper, candy wrapper, styrofoam, "
        "crisp packet, crisp bag, chip packet, chip bag, crisps packet, bread bag, net bag, "
        "polystyrene, bottle cap, tea bag with plastic, bin bag, bin liner, carrier bag, garbage "
        "bag, trash bag, ziploc, twist tie, wire, nylon, plastic net, coffee pod, coffee capsule, "
        "capsule, ceramic, china, tetra pak, milk carton, juice carton, drinks carton, fork, "
        "knife, straw wrapper, plastic straw, cutlery, packaging, tape, nail polish, "
        "string bag, glove",
        "no",
        "it never breaks down",
    ),
    row(
        "bags called compostable",
        "compostable, compostable bag, compostable bin liner, biodegradable, biodegradable bag, "
        "bioplastic, compostable liner, compostable cup, compostable plate, compostable cutlery, "
        "compostable packaging, compostable plastic, compostable coffee pod, compostable tea bag, "
        "pla, corn starch bag, cornstarch bag, bio bag, biobag, green bag",
        "no",
        "they need a hot heap, and come out of a bin or trench whole",
    ),
    row(
        "coated paper",
        "baking paper, parchment paper, greaseproof paper, wax paper, waxed paper, receipt, "
        "magazine, glossy paper, photo, paper cup, coffee cup, takeaway cup, foil paper",
        "no",
        "its coating never breaks down",
    ),
    row(
        "ash and charcoal",
        "ash, wood ash, fireplace ash, charcoal, biochar, coal, briquette, soot, match",
        "no",
        "ash takes away the acid that the ferment lives on",
    ),
    row(
        "soil and lime",
        "soil, potting soil, potting mix, lime powder, garden lime, limestone, compost, dirt, "
        "sand, gravel, clay, baking soda, bicarbonate",
        "no",
        "it brings other microbes and takes away the acid: soil comes after burial",
    ),
    row(
        "chemicals and medicine",
        "chemical, battery, bleach, soap, detergent, washing powder, dish soap, shampoo, cleaner, "
        "disinfectant, hand sanitiser, medicine, medication, pill, tablet, vitamin, antibiotic, "
        "paint, solvent, petrol, motor oil, engine oil, pesticide, weedkiller, herbicide, "
        "fertiliser, fertilizer, poison, rat poison, preservative, cosmetic, lipstick, perfume",
        "no",
        "they kill the ferment and do not belong in soil",
    ),
    row(
        "dead animals",
        "dead animal, dead mouse, dead rat, dead bird, dead fish, dead chicken, dead cat, dead "
        "pet, "
        "mouse, rat, roadkill",
        "no",
        "ask your local authority how to dispose of it",
    ),
    row(
        "hair, dust and feathers",
        "hair, pet hair, dog hair, cat hair, feather, fur, wool, lint, dryer lint, dust, vacuum "
        "dust, vacuum bag, hoover bag, nail, fingernail, nail clipping, leather, dog fur",
        "no",
        "far too slow here, and dust holds plastic",
    ),
    row(
        "sick plants",
        "blight, late blight, potato blight, tomato blight, blighted, clubroot, club root",
        "no",
        "nobody can say that fermenting ends it: put them in the waste, and ask your local "
        "authority "
        "or plant health service",
    ),
)
"""What stays out."""

SPOILT = frozenset({"mouldy food", "rotten food"})
"""Rows of food that was still food, so that a layer of it is one all the same."""
