"""Turns of phrase that tell of harm or ask about it, over the plain words of a sentence.

Bins stand as `qbin`, members as `qmember`. Every gap is bounded, so that none can run away.
"""

from handlers.practice.harm import Hazard
from handlers.reading.questions.question import CRAFT
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_LIQUID = r"(?:liquid|juice|leachate|liquor|run ?off|drainings|fluid|bokashi tea|bokashi)"
_FERMENT = (
    rf"(?:{_LIQUID}|ferment|fermented \w+|bran|inoculant|pickled scraps|scraps (?:from|out of|in) "
    r"(?:the )?(?:bin|bucket|qbin|pail)|(?:stuff|some|bits?|something|anything|what|it|them) "
    r"(?:is |'s |comes? )?(?:from|out of|off|in|inside) (?:the )?(?:bin|bucket|qbin|tap|tray|pail|"
    r"caddy|jug))"
)
OTHER_DRINK = Late(
    r"\b(?:orange|apple|fruit|tomato|lemon|lime|cranberry|grape|carrot|pineapple|mango|"
    r"beet(?:root)?"
    r"|pomegranate|grapefruit|raisin|oat|fizzy|glass of|carton of|breakfast) (?:juice|bran)\b|"
    r"\bbran (?:flakes|muffins?)\b|\b(?:my|his|her|your|all the) juice\b|"
    r"\bjuice (?:apple|orange|fruit|tomato|grape|carrot)\b"
)
TAKEN_FOR = Late(r"\b(?:thought|thinking|believing|mistook|mistaking|mistaken|confused|instead)\b")
"""A drink named here is what the liquid was taken for."""
PRESERVES = words_in(
    "jam jams jelly chutney compote gherkin gherkins pickles pickle olives olive brine capers "
    "sauerkraut kimchi tinned peaches pears cherries plums prunes pineapple beetroot tuna"
)
"""What stands in a jar, a tin or a pan of the kitchen, and has a juice of its own."""
NOT_OF_JARS = words_in(
    "leachate bokashi tap spigot tray bucket bin pail bran starter mistake accident accidentally "
    "ferment fermented scraps liquor thought instead "
    "mixed"
)
"""Beside one of these the juice may be ours whatever food is named."""
_STUFF = rf"(?:{_LIQUID}|some|it|splash\w*|squirt\w*|spray\w*|drops?|bran|starter|dust|bit|stuff)"
OTHER_STUFF = Late(
    r"\b(?:soap|shampoo|sand|eyelash|onions?|chill?i|lemon|sun|sunscreen|paint|contact|pollen|"
    r"perfume|midges?|football|tears?|twinkle|glint|apple|evil|black)\b"
)
_WHOSE = r"(?:my|his|her|our|their|your|the|an?|one|both|each|qmember 's|\w+ 's)"
DENIED = Late(
    r"\b(?:nobody|no one|none|nothing|didnt|did not|never|nearly|almost|hasnt|havent|wont|doesnt|"
    r"does not|(?:dont|do not|avoid|without|not to|before you|so you dont) (?:let|get|getting|"
    r"drink|eat|swallow|breathe|inhale|mix|put|pour))\b"
)
_PERSON = (
    r"(?:i|we|he|she|they|you|child|children|kids?|toddlers?|baby|boys?|girls?|son|daughter|"
    r"grand\w+|someone|somebody|anyone|anybody|qmember|husband|wife|neighbou?rs?|friend|mum|dad|"
    r"mother|father|brother|sister|pupils?|students?|nephew|niece|man|woman|lad|wee one|little one|"
    r"people|person|guests?|visitors?|(?:room|house|flat|class|work)mates?|uncle|aunt(?:ie|y)?|"
    r"cousin|"
    r"gran(?:ny|dad|dpa)?|nana?|partner|colleague|volunteer|teacher|teen(?:ager)?|twins?|babysitter|"
    r"nanny|caretaker|cleaner|tenant|lodger|landlord|landlady|dad|daddy|mummy|mom|mommy|wean)"
)
_ANIMAL = (
    r"(?:dogs?|puppy|puppies|pup|cats?|kitten|pets?|hens?|chickens?|chooks?|ducks?|pigs?|goats?|"
    r"rabbits?|horse|pony|sheep|cows?|hamster|guinea pigs?|animals?|livestock|tortoise|parrot)"
)
_DRANK = (
    r"(?:drank|drunk|drinks|drinking|swallow(?:ed|s|ing)|sipped|tasted|gulped|lapped(?: up)?|"
    r"licked(?: up)?|slurped|ate|eaten|eats|eating|chewed|ingested|gobbled|"
    r"had (?:a )?(?:sip|taste|swig|drink|lick|mouthful) of|got hold of|been at|got at|"
    r"got into|nibbled|nibbling)"
)
_SOME = r"(?:(?:some|a bit|a sip|a cup|a glass|any|all|half|most|lots|of|the|our|my|this|that|your|"
_SOME += r"raw|neat|bin|a gulp|a mouthful|whole|drained|spilled|spilt|undiluted|fresh) ){0,5}"
_FROM_BIN = (
    r"(?:\w+ ){0,3}?(?:from|out of) (?:(?:the|our|my|your|that|this) )?"
    r"(?:qbin|bins?|buckets?|pails?|caddy|trench)"
)
BY_ANIMAL = Late(
    rf"\b{_ANIMAL} (?:\w+ ){{0,6}}?{_DRANK} {_SOME}(?:{_FERMENT}|it|some|buried \w+|"
    rf"{_FROM_BIN}|"
    rf"(?:from )?(?:the )?"
    rf"(?:drip )?(?:tray|tap|spigot|jug|puddle)|scraps (?:i|we) (?:just )?buried)\b|"
    rf"\b{_ANIMAL} (?:\w+ ){{0,3}}?(?:dug|dig) (?:\w+ ){{0,4}}?(?:and|then) ate\b"
)
BY_PERSON = Late(
    rf"(?:^|\band |\b{_PERSON} (?:\w+ ){{0,2}}?){_DRANK} a (?:bit|little|drop|sip|"
    rf"mouthful)$|"
    rf"(?:^|\band |\b{_PERSON} (?:\w+ ){{0,2}}?){_DRANK} {_SOME}(?P<of_what>{_FERMENT}|it|some|"
    rf"{_FROM_BIN}|from the (?:drip )?(?:tray|tap|spigot|jug))\b"
)
BY_MISTAKE = Late(r"\b(?:by (?:mistake|accident)|accident(?:al)?ly|mistakenly)\b")
_ILL = (
    r"(?:is|was|are|were|am|im|hes|shes|feel|feels|feeling|felt|fell|fallen|been|be|got|get|gets|so|"
    r"very|really|bit|quite|became|become|went|made|taken|took|seriously|violently|badly|both|all|"
    r"still|now) ill|ill(?= (?:since|after)\b)"
)
"""Between other words "ill" is a phone's "I'll"."""
_ILL_AFTER = (
    rf"\b(?:fever|feverish|{_ILL}|sick|cough(?:ing)?|headache|vomit\w*|throwing up|"
    r"diarrh\w+|rash|poorly|unwell|short of breath|wheez\w+|dizzy|nause\w+)\b.{0,30}"
    r"\b(?:after|since|from)\b"
)
TOLD: tuple[tuple[Hazard, Late], ...] = (
    ("ill after", Late(
        rf"{_ILL_AFTER} (?:\w+ ){{0,5}}?(?:turn|dig|turned|turning|digging|dug|handled|handling|"
        rf"mixing|mixed|"
        r"spread|spreading|sieving|sieved|shovelling|shoveling|forking|forked|emptying|emptied) "
        r"(?:\w+ ){0,2}?(?:compost|heap|"
        r"soil|bed|trench|potting mix)\b")),
    ("swallowed", Late(
        rf"\bmistook (?:\w+ ){{0,2}}?{_LIQUID} for\b.{{0,40}}\b(?:drank|had|sipped|tasted)\b")),
    ("in the eye", Late(rf"\b{_STUFF}\b.{{0,40}}\b(?:in|into) (?:{_WHOSE} ){{1,3}}eyes?\b")),
    ("in the eye", Late(rf"\beyes?\b.{{0,30}}\b(?:splashed|squirted|"
                              rf"hit)\b.{{0,20}}{_LIQUID}")),
    ("swallowed", Late(rf"\b{_STUFF}\b.{{0,40}}\b(?:in|into) (?:{_WHOSE} ){{1,3}}mouth\b")),
    ("bitten", Late(r"\b(?:rat|mouse) (?:has |just )?bit\b|\bbitten by (?:a|the) (?:rat|"
                          r"mouse)\b"
                          r"|\brat bite\b")),
    ("swallowed", Late(
        rf"\b{_PERSON} (?:\w+ ){{0,2}}?swallowed (?:some|a bit|a little|a drop|a mouthful)$")),
    ("breathed in", Late(r"\bcant breathe\b.{0,40}\b(?:bran|dust|bin|mould|lid|fumes)\b")),
    ("into water", Late(
        rf"\b(?:{_LIQUID}|it|some)\b.{{0,15}}\b(?:in|into) (?:the |my |our |a )?(?:\w+ )?(?:pond|"
        r"river|stream|lake|canal|brook|sea|storm drain|creek)\b")),
    ("sharp things", Late(
        r"\b(?:needles?|syringes?|broken glass|glass shards?|razor|blade)\b.{0,20}\b(?:in|inside|"
        r"into) (?:the |our |my )?(?:qbin|bin|bucket|scraps|pail)\b")),
    ("fire", Late(
        r"\b(?:bin|bucket|qbin|pail) (?:is |'s )?(?:on fire|burning|smoking|in flames)\b|"
        r"\bsmoke (?:coming )?(?:out of|from|in) (?:the )?(?:bin|bucket|qbin)\b")),
    ("in a wound", Late(
        rf"\b{_STUFF}\b.{{0,30}}\b(?:in|into|on) (?:{_WHOSE} )(?:open |small )?(?:cut|wound|graze|"
        r"scratch|sore)\b")),
)  # fmt: skip
TOLD_OURS: tuple[tuple[Hazard, Late], ...] = (
    ("swallowed", Late(
        rf"\b{_PERSON} (?:\w+ ){{0,2}}?(?:hands?|fingers?|thumb) in(?:to|side)? (?:the )?(?:qbin|"
        rf"bin|bucket|pail|{_LIQUID})\b.{{0,20}}\b(?:licked|sucked|ate|tasted) (?:it|them)\b")),
    ("who should not", Late(
        r"\b(?:asthma|asthmatic|copd|pregnant|bad lungs)\b.{0,40}\b(?:bran|dust|dusty|moulds?|"
        r"mouldy|bins?|qbin|bucket|pail|lid)\b")),
    ("swallowed", Late(
        rf"\b{_PERSON} (?:\w+ ){{0,2}}?(?:licked|licking|sucked|sucking) (?:{_WHOSE} )"
        r"(?:\w+ )?(?:fingers?|hands?|thumbs?)\b")),
    ("on the skin", Late(
        rf"\b{_PERSON} (?:\w+ ){{0,2}}?(?:touched|grabbed|handled|stepped in|played with|"
        rf"put (?:{_WHOSE} )(?:\w+ )?(?:fingers?|hands?|foot|arm) in(?:to)?) {_SOME}{_LIQUID}\b")),
    ("in the eye", Late(
        r"\beyes? (?:is |are )?(?:really |keeps? |started )*(?:sting|stings|stinging|burn|burns|"
        r"burning|sore|red|hurt|hurts|itch\w*)\b")),
    ("breathed in", Late(
        r"\b(?:chest (?:is |feels )?tight|tight chest|short of breath|trouble breathing|wheez\w+|"
        r"dizzy|faint|light ?headed)\b.{0,40}\b(?:bins?|lid|bran|mould|gas|cellar|dust|opening|"
        r"emptying)\b")),
    ("burst", Late(
        r"\b(?:bottle|jar|jug|flask)\b.{0,25}\b(?:exploded|burst|bust|blew up|blown up|shattered|"
        r"popped)\b")),
    ("back", Late(
        r"\b(?:hurt|pulled|strained|put out|did|wrenched|ricked) (?:my|his|her) back\b")),
    ("on the skin", Late(
        r"\b(?:skin|hands?|arms?|fingers) (?:is |are )?(?:itch\w*|burn\w*|sting\w*|red|sore)\b|"
        rf"\brash\b.{{0,15}}{_LIQUID}|\btouch(?:es|ed)? (?:my|his|her|the) skin\b")),
    ("in a wound", Late(
        r"\b(?:cut|sliced|stabbed|gashed|pricked|nicked|jabbed) (?:(?:my|his|her|our|their) "
        r"(?:\w+ )?(?:hand|finger|thumb|arm|leg|foot|toe|knee|self)|myself|himself|herself)\b")),
    ("on the skin", Late(
        rf"\b{_STUFF}\b.{{0,40}}\b(?:on|over|down|onto) (?:{_WHOSE} )(?:bare )?(?:hands?|skin|"
        rf"arms?|"
        r"legs?|face|foot|feet|fingers?|lips?|clothes)\b")),
    ("ill after", Late(_ILL_AFTER)),
    ("pipe or cable", Late(
        r"\b(?:hit|struck|cut|damaged|nicked|broke|burst|severed|went through|dug (?:through|into))"
        r" (?:a|the|an|some|what looks like a) (?:\w+ ){0,2}?(?:pipe|cable|main|wire|line)\b")),
)  # fmt: skip
_MOULD = r"(?:moulds?|molds?|mouldy|moldy|spores?|fungus|fuzz|mildew)"
BREATHED = Late(
    rf"\b(?:breath(?:e|ed|ing)?|inhal(?:e|ed|ing)|lungful)\b.{{0,30}}\b(?:{_MOULD}|dust|bran|gas|"
    rf"gases"
    rf"|fumes|green|black)\b|\b(?:{_MOULD}|dust|bran|fumes)\b.{{0,20}}\bin (?:my|his|her) lungs?\b"
)
BLEACH = Late(r"\b(?:bleach|bleached|chlorine|hypochlorite|disinfectant)\b")
MIXED = Late(
    r"\b(?:mixed|poured|put|added|tipped|chucked|threw|splashed|dumped|combined) (?:\w+ ){0,4}?"
    rf"(?:bleach|chlorine)\b(?=.*\b(?:{_LIQUID}|ferment|scraps|bin|bucket|qbin|pail|tray)\b)|"
    rf"\bmixed (?:\w+ ){{0,3}}{_LIQUID} (?:\w+ ){{0,2}}(?:with|and) (?:\w+ )?bleach\b|"
    rf"\b(?:bleach|chlorine) and (?:the )?{_LIQUID} (?:got |were |have )*mixed\b|"
    r"^(?:(?:i|we|he|she|they|qmember|somebody|someone|have|has|just|accidentally|stupidly|and|"
    r"think|may|might) )*(?:mixed|diluted|thinned) (?:it|this|that|some|some of it) "
    r"(?:with|and|into) (?:\w+ ){0,2}?bleach(?: by (?:mistake|accident)| accidentally| qday)?$"
)
WASHED = Late(
    r"\b(?:washed|cleaned|scrubbed|rinsed|swilled|sprayed)\b.{0,30}\bwith (?:\w+ )?bleach\b"
)
_MAY = (
    r"(?:(?:can|could|may|should|would|shall|do|does|will|might) (?:\w+ ){1,3}?|"
    r"(?:is it |it is |it 's |is that )?(?:safe|ok|okay|all ?right|alright|fine|allowed|bad|"
    r"dangerous|harmful) (?:for (?:\w+ ){1,3})?to |what (?:happens )?if (?:\w+ ){1,3}?)"
)
TO_DRINK = Late(
    rf"\b{_MAY}(?:drinks?|sip|taste|eats?|swallows?) {_SOME}(?:{_FERMENT}|it|bokashi)\b|"
    rf"\b{_LIQUID}\b.{{0,20}}\b(?:drinkable|edible|poisonous|toxic|safe to drink)\b|"
    rf"\b(?:drink|eat|taste) (?:the |this |that |our )?(?:{_LIQUID}|stuff)$"
)
TO_FEED = Late(
    rf"\b(?:can|could|may|should|ok|okay|safe|allowed|will|would|do|does|what if)\b.{{0,40}}"
    rf"(?:\bfeed\b.{{0,40}}\b{_ANIMAL}\b|\b{_ANIMAL} (?:eat|have|drink|get|lick|eats|drinks|licks) "
    rf"{_SOME}(?:{_FERMENT}|it|scraps|leftovers|them|this|that)\b|\b(?:give|to|for) (?:the |my |"
    rf"our )?"
    rf"{_ANIMAL}\b.{{0,30}}{_FERMENT})"
)
FED_FOR_ONE = Late(
    rf"\b(?:can|could|will|would) (?:you|u|(?:some|any)(?:one|body)|one of you) "
    rf"(?:\w+ ){{0,2}}?feed (?:the |my |our |his |her )?{_ANIMAL}\b(?! (?:with|on|it|this|that)\b)"
)
"""A neighbour is asked to feed what somebody keeps."""
_BAD_FOR = (
    r"(?:dangerous|harmful|hazardous|toxic|poisonous|unhealthy|explosive|flammable|bad for (?:me|"
    r"you|"
    r"us|health|the lungs)|bad|explode|catch fire|hurt|kill|make (?:me|us|you|people) (?:ill|sick)|"
    r"safe)"
)
GAS = Late(
    rf"\b(?:gas|gases|fumes)\b.{{0,40}}\b{_BAD_FOR}\b|\b{_BAD_FOR}\b.{{0,20}}\b(?:gas|gases|"
    rf"fumes)\b|"
    r"\b(?:what|which) gas(?:es)? (?:comes?|is|are|does)\b|\b(?:can|could|will|might) (?:the |a |"
    r"our )?(?:bin|bucket|qbin|lid|pail|it)s? (?:catch fire|explode|"
    r"blow up|"
    r"burst)\b"
)
BURNS = Late(
    rf"\b{_LIQUID} (?:burn|hurt|harm|irritate|sting|damage)s? (?:my |the |your |our )?"
    r"(?:skin|hands?|eyes?)\b"
)
GERMS = Late(
    r"\b(?:botulism|botulinum|botulin|salmonella|listeria|e ?\.? ?coli|pathogens?|germs|"
    r"food poisoning|leptospirosis)\b"
)
MIGHT_ILL = Late(
    r"^(?:(?:and|so|but|or) )*(?:can|could|will|would|might|may|do|does) (?:\w+ ){1,2}?(?:get|fall|"
    r"become|make (?:me|us|you|people|one|anyone)) (?:ill|sick|poorly|unwell|food poisoning)\b"
)
"""Nobody is ill: it is asked whether one could be."""
_THEY = rf"(?:(?:the|my|our) )?(?:it|i|we|qmember|{_PERSON}|{_ANIMAL})"
WHAT_NEXT = Late(
    rf"^(?:and |but |so )?{_THEY} (?:still )?(?:seems?|looks?|feels?|is|are|'s|'re) (?:to be )?"
    r"(?:all )?(?:perfectly |quite |totally |completely )?(?:fine|ok|okay|right|alright|well|"
    r"normal|happy)(?: now)?(?:$| .*\b(?:do|should|must|need|have|worry|doctor|vet|hospital|"
    r"what)\b)|"
    rf"\b(?:should|do|must|shall|can) {_THEY} (?:still )?(?:need to |have to )?(?:call|ring|see|go "
    r"to|phone|worry|watch|do (?:any|some)thing|take (?:her|him|them|it)|drink (?:water|milk)|"
    r"be sick|vomit)\b|"
    r"\b(?:is|was) (?:it|that|this|the \w+) (?:really |very )?(?:poisonous|toxic|dangerous|bad|"
    r"serious|harmful|an emergency|safe)\b|"
    rf"\b(?:will|is|are) {_THEY} (?:going to )?be(?: (?:all )?(?:ok|okay|fine|right|"
    r"alright|sick|ill|poisoned))?$|"
    r"\bhow much (?:of it )?(?:is|would be) (?:\w+ )?(?:dangerous|toxic|too much|bad|safe)\b|"
    rf"^(?:and |but |now )?{_THEY} (?:(?:has|have|is|are|'s|just|now|keeps?|feels?) )*(?:threw up|"
    r"thrown up|throwing up|vomited|vomiting|sick|being sick|drowsy|sleepy|dizzy|in pain|"
    r"shaking|shivering|a fever|cramps|stomach ache|tummy ache|diarrhoea|diarrhea)\b"
)
"""Said while the talk is on somebody who swallowed of it."""
NEXT_CUES = (
    "?", "sick", "threw", "throw", "vomit", "drows", "sleepy", "dizzy", "pain", "shak", "shiver",
    "fever", "cramp", "ache", "diarr", "is it ", "is that ", "is he ", "is she ", "will he ",
    "will she ", "should ",
)  # fmt: skip
"""Letters without one of which nothing of that is said."""
OTHER_GAS = words_in(
    "bill cooker heater boiler bottle canister stove meter engineer tank price hob tear ring"
)
IS_MOULD_BAD = Late(
    rf"\b(?:is|are|can|could|will|does)\b.{{0,30}}\b{_MOULD}\b.{{0,25}}\b(?:dangerous|harmful|"
    rf"hazardous|"
    r"toxic|poisonous|unhealthy|bad for|hurt|make (?:me|us|you|people|anyone) (?:ill|sick))\b"
)
WHO = Late(
    r"\b(?:pregnant|pregnancy|asthma|asthmatic|immun\w+|copd|chemo\w*)\b|"
    r"\b(?:safe|ok|okay|alright|dangerous|suitable) (?:for|with|around|near) "
    r"(?:the |my |our |small |young )*"
    r"(?:kids|children|toddlers?|child|pupils)\b|"
    r"\b(?:can|should|may) (?:the |my |our |small )*(?:kids|children|toddlers?) "
    r"(?:help|do|touch|handle|stir|drain|use|work)\b"
)
HANDLING = Late(r"\bhandl(?:e|ing) (?:it|this|them|while|when|if|during)\b")
IS_IT_SAFE = Late(
    r"(?:is|are) (?:it|bokashi|this|the (?:bins?|bucket|qbin)|handling it) (?:really |at all )?"
    r"(?:dangerous|safe|harmful|unhealthy|hazardous|a health risk)(?: at all| for us| really)?"
)
GLOVES = Late(
    r"\b(?:need|wear|use|have to wear|should i wear|must i wear) (?:\w+ )?gloves\b|"
    r"^(?:are )?gloves(?: needed| necessary)?$"
)
DOWN = Late(
    rf"\b(?:{_LIQUID}|it|rest|excess|this|that|what is left)\b.{{0,20}}\b(?:down|into|"
    rf"in) (?:the |my |"
    r"our |a )?(?:\w+ )?(?:drains?|sink|toilet|loo|plughole|gully|septic tank|lavatory)\b"
)
RATIO = Late(
    r"(?:is|would|will|and) 1 ?(?::|to|in) ?(?P<parts>\d{2,4}) (?:\w+ ){0,3}?(?:ok|okay|safe|fine|"
    r"alright|right|good|enough|strong|weak|too strong|too weak|work|do)\b.{0,20} (?:on|for|with)\b"
)
NEAT = Late(r"\b(?:neat|undiluted|unthinned|straight(?! away| after| on)|pure|without water|"
                   r"without diluting)\b")  # fmt: skip
ONTO = Late(
    rf"\b{_LIQUID} (?:ok|okay|good|safe|fine|bad|alright) (?:for|on)\b|"
    rf"\b(?:put|use|pour|spray|give|feed|water|splash)\b.{{0,30}}\b{_LIQUID}\b|"
    rf"\b(?:put|use|pour|spray)\b.{{0,10}}\b(?:it|{_LIQUID})\b|"
    rf"\bwater (?:\w+ ){{1,3}}?with (?:it|(?:the |this |our )?{_LIQUID})\b|"
    rf"\b{_LIQUID} (?:go|be (?:used|put|poured|given)) (?:on|onto|over|to|round|around|for)\b|"
    rf"\b(?:like|love|want|have|get|take|stand|bear|appreciate) (?:(?:some|a bit) of )?"
    rf"(?:the |our |this |some )?{_LIQUID}\b"
)
GIVEN = Late(
    r"\b(?:can|may|should|is it ok to|is it safe to)(?: (?:i|we|you))? (?:(?:use|spray|pour) it "
    r"(?:on|onto|over) |water (?:\w+ ){1,3}?with it\b)|"
    rf"\b(?:can|may|could|would|will|do|does)\b.{{1,40}}\b(?:like|love|want|stand|bear|appreciate) "
    rf"(?:(?:some|a bit) of )?(?:the |our |this )?{_LIQUID}\b|"
    rf"\b(?:can|may|could|should) (?:the |our |this )?{_LIQUID} (?:go|be (?:used|put|poured)) on"
)
MEASURED = words_in("much many ratio strong")
OURS = (
    CRAFT
    | BIN_WORDS
    | words_in("spade digging dig dug bury burying buried leachate bran mould draining drained")
)
ANIMAL, LIQUID, PERSON, WHOSE = _ANIMAL, _LIQUID, _PERSON, _WHOSE
"""Parts of a pattern: the words for a beast, the liquid, a person, and whose something is."""
