"""Whether "done" is said of a job of ours, or of whatever else people finish: marathons, taxes, a
shed with two coats of paint on it.
"""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Bury, Done, Seal
from handlers.reading.arrangements.jobsdone import Part, parts_of
from handlers.reading.bins.keptbins import only_mine
from handlers.reading.doubts.asidebins import OF_CRAFT
from handlers.reading.doubts.asidewords import OF_ELSE
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import word_classes, words_in

_OUR_THING = words_in(
    "qbin qday qmuch qmember deed deeds thing things usual honours honors necessary needful "
    "business dirty job jobs work task tasks chore chores duty duties part bit share turn round "
    "rounds lot stuff list ones one two three four five six seven eight nine bin bins bucket "
    "buckets caddy caddies pail pails tub tubs barrel drum crate liquid juice tea tap taps lid "
    "lids rest first second other others same bokashi bran starter scraps draining drain drainage "
    "watering sealing seal burying burial burials emptying digging trench composting weighing "
    "mixing week weeks reminder reminders needed weekend morning evening night time times people "
    "stinky smelly whiffy big small little old new red green blue yellow black white grey brown "
    "front back left right top bottom outside inside lads ladies now already and just it this that "
    "them those these all both everything too today yesterday tonight as so ok with for in on at "
    "by before after without thanks ta cheers bot mate love please also again myself ourselves "
    "yes is 's was are were quick quickly honour above below dusted"
)
"""What may be done of ours, or stands where no object does."""
_OBJECT = Late(
    r"(?:^| )(?:done|did|sorted|finished|completed|dealt|seen to|saw to)"
    r"(?P<lead>(?: (?:all|both|with|of|off|out|up|the|my|our|his|her|their|your|a|an|some|most|"
    r"half|last|whole|entire|qmember|'s|s|\d|two|three|four|five|six|seven|eight|nine|ten))+)"
    r"(?: (?:big|new|old|first|second|last|final|other|stupid|bloody|damn|wretched|whole|entire))*"
    r" (?P<thing>[a-z][a-z'-]+)"
)
_HANDLED = Late(r"(?: with (?:a|an)|(?: all| both)+)$")
"""The words before a tool ("with a torch"), or before what is no object ("all yesterday")."""
_OF_EACH = Late(r"(?: (?:all|both))+ (?:of )?(?:the )?(?:\d|two|three|four|five|six|seven|eight)$")
_SUBJECT = Late(
    r"^(?:(?:so|and|ok|yes|right|finally|phew|,) )*"
    r"(?:that is|that 's|thats|the|my|our|all the|all my|qmember 's)(?: [a-z'-]+){0,2}? "
    r"(?P<thing>[a-z'-]+)"
    r"(?: (?:is|'s|are|was|were|has been|have been|all|now|just|finally))* "
    r"(?:done|sorted|finished|completed)\b"
)
_BARE_SUBJECT = Late(
    r"^(?:[a-z]+ ){0,2}(?P<thing>[a-z]+) (?:is|'s|are|was|were) (?:(?:all|now|finally|well) )*"
    r"(?:done|sorted|finished)$"
)
_SAID_SO = Late(
    r"\bsaid than done\b|\bdone deal\b|\bdone is done\b|"
    r"^(?:all|both|most|some|none) of (?:us|you)\b"
)
"""Turns of phrase that tell of no job."""
_PEOPLE = words_in("she he they everybody everyone who i we you there here")
_TRADES = words_in(
    "paint paints painted painting coat coats coated gloss glossed primer undercoat emulsion "
    "varnish varnished stain stained creosote creosoted felt felted roof roofed roofing hinge "
    "hinges gate gates door doors shelf shelves shelving window windows gutter gutters wallpaper "
    "wallpapered tiles tiled plaster plastered swept sweeping hoovered mopped tidied "
    "decluttered weeds weeded mowed mown raked leaves nails screws wired rewired insulated "
    "insulation boarded fence fenced slabs paving concrete brushes roller sanded floorboards "
    "sockets bulbs cobwebs bikes tools wall walls ceiling"
)
"""What is done to a shed, a yard or a gate for which no bin was named."""
_CRAFT_CLASSES = frozenset({"<smell>", "<sour>", "<pests>", "<binpart>", "<craft>", "<dig>"})
_DONE = words_in("done did sorted finished completed seen dealt handled")
_REMARKED = words_in(
    "a an the i im ive we it its he she they you me us him her them my our your his their this "
    "that these those is isnt 's was wasnt are were be been am has have had 've 'm 're do does "
    "did dont didnt not no nothing and or but so as if then than to of for in on at by with "
    "from up down off out over into about around before after again all any some more most "
    "much many very too quite rather really just only even still yet already now today tonight "
    "here there ok okay yes yep yeah yup nope fine good great well grand lovely perfect super "
    "cool nice happy sorry thanks thank ta cheers please pls bot mate love dear boss folks "
    "everyone everybody guys lads hands hand gloves wash washed washing hose hosed rinsed "
    "clean cleaned shower disgusting yuck ugh eww phew finally last took take takes mins min "
    "minutes minute hour hours ages forever forgot forget remembered reminder reminding remind "
    "reminded nagging nag stop enough back home late early first thing morning evening "
    "afternoon night dark rain raining rained lashing pouring snow cold freezing torch went go "
    "going gone got get getting looks look looking looked seems feels felt easy hard heavy "
    "light quick quickly next see weeks week time times problem problems trouble issue issues "
    "worries usual everything anything something yours mine ours one both half lol haha ha x "
    "xx can cannot will would should could sleep bed tired knackered else came come comes "
    "little bit lot lots log logged record recorded how write tick list update updated sent "
    "qday qmuch qbin qmember done sorted finished way through em youse machine evenin beeping "
    "beepin cross quit bugging pestering put things finish start started when while because "
    "cos cuz since myself ourselves yourself help helped helping people say mention tell"
)
"""What is remarked of any job."""


def jobs_of_ours(acts: Sequence[Act], message: Message) -> tuple[Act, ...]:
    """The acts without what is done of other things; where it may be, "done" is asked about."""
    if not any(isinstance(act, Done) for act in acts):
        return tuple(acts)
    if is_done_elsewhere(message):
        return tuple(act for act in acts if not isinstance(act, Done))
    last = message.context.last
    if isinstance(last, Seal | Bury) and last.act in [getattr(act, "what", None) for act in acts]:
        return ()  # "sealed, not buried", behind that very record
    if not _is_remarked_of_else(message):
        return tuple(acts)
    return tuple(
        replace(act, doubtful=True)
        if isinstance(act, Done) and not (act.what or act.volume_l or _names_bin(message))
        else act
        for act in acts
    )


def is_done_elsewhere(message: Message) -> bool:
    """Whether other things are done: "did all four marathons", "shed done, painted it white"."""
    parts = parts_of(message)
    praised = "well done" in message.body.casefold()  # "well" alone is no more than a pause
    if praised or any(_is_of_else(part) for part in parts):
        return True
    if _names_bin(message):
        names = {word for name in message.context.bins for word in name.casefold().split()}
        words = {word for part in parts for word in part.words} - names
        return not (words.isdisjoint(_TRADES) or any(map(_is_craft, words)))
    return OF_ELSE["done"].search(plain_text(message)) is not None


def _is_of_else(part: Part) -> bool:
    done = _OBJECT.search(part.text)
    if done is not None and done["thing"] not in _OUR_THING:
        lead = done["lead"]
        if _HANDLED.search(lead) is None or _OF_EACH.search(lead) is not None:
            return True
    if _SAID_SO.search(part.text) is not None:
        return True
    subject = _SUBJECT.search(part.text) or _BARE_SUBJECT.search(part.text)
    return subject is not None and subject["thing"] not in _OUR_THING | _PEOPLE


def _is_remarked_of_else(message: Message) -> bool:
    """Whether a remark beside it names what no job of ours has to do with."""
    if message.bot:
        return False
    remarks = [part.words for part in parts_of(message) if not part.is_sure]
    if any(_is_craft(word) for remark in remarks for word in remark):
        return False
    return any(
        word.isalpha() and word not in _REMARKED and word not in _OUR_THING
        for remark in remarks
        if len(remark) > 1 and _DONE.isdisjoint(remark)
        for word in remark
    )


def _is_craft(word: str) -> bool:
    return word in OF_CRAFT or not _CRAFT_CLASSES.isdisjoint(word_classes().get(word, ()))


def _names_bin(message: Message) -> bool:
    return bool(message.bins) and not only_mine(message.bins, message.norms)
