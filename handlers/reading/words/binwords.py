"""A bin that is meant, and the words round its name: vessels, places, colours, what follows."""

from typing import NamedTuple

from handlers.reading.words.vocabulary import words_in


class BinRef(NamedTuple):
    """A bin meant by words[start:end]."""

    start: int
    end: int
    name: str | None
    """The known name, or the words said; None for "the bin", "it", "the same one"."""
    known: bool = False
    plain: bool = False
    """It is said to be a bin ("the shed bin"), or could hardly be anything else."""
    place: bool = False
    """Its name is also that of a room or a place ("the shed")."""


BIN_WORDS = words_in(
    "bin bucket pail caddy tub drum barrel keg crock container cubeta balde tonne eimer tote "
    "bokashi"
) - {"tonne"}
AFTER_NOT_OURS = words_in(
    "day men man bag bags lorry liner liners collection collections store shed juice list hat truck"
)
PLACE_NAMES = words_in(
    "kitchen shed laundry roof balcony garage porch garden courtyard basement cellar yard "
    "hall cafeteria office attic patio terrace deck utility lounge bathroom stairs landing "
    "loft hallway pantry school church library canteen garten balkon keller backyard "
    "allotment greenhouse playground barn studio lobby"
)
# What may stand behind a bare name: anything else makes it part of another thing ("shed roof").
PLAIN_FOLLOWERS = words_in(
    "hope hoping see catch talk love well back xoxo amen inshallah fingers finally must cant "
    "couldnt wont didnt under beneath below underneath beside behind near along between "
    "against inside outside across among upon toward towards past above below beyond onto "
    "into within throughout despite instead except like unlike than whilst although whereas "
    "plus minus via is was has had are were will would can should be been isnt wasnt hasnt "
    "got gets get a an the and or but so then now today yesterday tonight tomorrow last this "
    "arvo morning afternoon evening night noon midday "
    "that on in at to into from for with without by off out of about around approx after "
    "before while when since because cos cuz as if again too also already just only still "
    "finally later twice once lol lmao haha please pls plz thx thanks ta rn ok okay mate "
    "folks all yet btw fyi fwiw tho though i ive we he she it they you there here smells "
    "smelt smelled stinks reeks stank smelling looks looked seems feels hisses hissing hissed "
    "needs needed full sealed drained buried closed opened started going went gone goes ready "
    "due not no never halfway completely fully right partly "
    "nearly almost over up down another plus more some mostly mainly half n "
    "y e und et o one bin bucket's 's how what when who why where did do does done didnt one "
    "two three four five six seven eight nine ten twenty thirty gave yields today's monday "
    "tuesday wednesday thursday friday saturday sunday mon tue wed thu fri sat sun yielded "
    "gave gives giving produced made drips dripping leaking bulging smell stink reek hums "
    "sorry thanks mate cheers im only bot yaar pal love thank tbh imo yo oh um and/or pls "
    "quick via per during this's was's yay innit eh huh yes yep yeah yup even actually "
    "literally properly really very bone way kinda sorta like maybe roughly probably x xx xxx "
    "itself myself myself's using till until around hoy ayer gestern heute kanina ngayon kahapon "
    "kagabi gisteren vandaag vanmorgen vanochtend hier ieri oggi hoje ontem ako po na naman "
    "daw ba yaar bhai only's total altogether combined put added dumped chucked tossed threw "
    "tipped shut lid sat has's came comes coming took turned developed grew lid's temp "
    "temperature ph bot first second next earlier lately overnight weighs weighed weighing "
    "measured contents starting have sorted turn turns week round whenever anytime be's "
    "fermented ferment right straight holds fits"
)
INTO = words_in(
    "sa dans na in into to from off of inside onto for at via em im ins en al aus into's del"
)
COLOURS = words_in(
    "red blue green yellow orange purple pink white black grey gray brown rojo azul verde amarillo"
)
TOLD_BY = COLOURS | words_in("silver gold teal turquoise beige")
"""Colours that a bin which nobody knows is told by; the scores look at the plain ones alone."""
SIDES = words_in("front back left right top bottom upper lower middle")
"""Where one of several bins stands; by themselves they are said of much else."""
# Words before "bin" that describe it and are no name.
GENERIC = words_in(
    "the a an my our your his her their this that these those same other another next second "
    "first third last new old big small wee little full empty whole each every both all any "
    "including incl some one two which what whose of in into to from off on for at and or but with "
    "is was "
    "are put it i we you shared communal spare current fermenting ready sealed starter scrap "
    "scraps food bokashi compost kitchen-scrap litre liter l gallon gal plastic metal lidded "
    "clean fresh good bad up out down over no not left per extra large mini nearly almost now "
    "then so started opened sealed drained emptied buried mixed opening starting got get have "
    "has had need about how wrong right actual open closed stinky smelly poor dear damn "
    "bloody stupid blasted single correct gonna go went can could would will should may might "
    "do does did more most kg g lb lbs oz ml litres liters kilos there here when if because "
    "cos as than that's like its 's set start feed fed fill filled check checked close closed "
    "seal drain bury dump dumped toss chucked threw called named calling entire original just "
    "minus less without plus "
    "also only again already your still today yesterday tonight tomorrow un una el la los mi "
    "nuestro de del der die das den mein unser le les mon ma une und y e o ang sa yung ng mga"
)
