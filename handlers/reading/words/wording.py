"""How people answer and correct: patterns over the plain words of a message.

The text they are held against has its bins as `qbin`, its members (where it matters) as
`qmember`, short forms opened and one space between words. Every gap is bounded, so that no
pattern can run away.
"""

import re
from collections.abc import Sequence

from handlers.reading.words.late import Late

Patterns = Sequence[Late]


def patterns(*sources: str) -> Patterns:
    """The sources as patterns, in their order."""
    return [Late(source) for source in sources]


def first_in(patterns: Patterns, text: str) -> re.Match[str] | None:
    """The first pattern that is found in the text."""
    for pattern in patterns:
        match = pattern.search(text)
        if match is not None:
            return match
    return None


def _patterns(*sources: str) -> Patterns:
    return patterns(*(source.replace("~", r"(?:\S+ ){0,3}") for source in sources))


_START = (
    r"^(?:(?:oh|och|ok|okay|ah|oops|whoops|wait|sorry|please|pls|hey|hi|no|and|can you|could you|"
    r"would you|nope|nah|yikes|oop|ugh|damn|actually|um|er|hang on|hold on|perdon|,|\.|!|-|"
    r"right|so|bot|well|my bad|"
    r"yes|yeah|yep|just|can we|lets|let us|no wait|argh|eek|gah|d'oh|doh|ay|aw|ach) )*"
)
_LAST = (
    r"(?:that|this|it|the last|my last|last one|the previous|previous|my previous|the entry|last|"
    r"that one|those|what i said|what i just said|my entry|the record|the shed one|both|eso|"
    r"the one before|qbin one)"
)

# "Scratch that" stands alone or goes on in these ways; "scratch that itch" does not.
_AND_NO_MORE = (
    r"(?=$| (?:[^\w\s]|please|pls|plz|last|one|entry|entries|record|layer|line|message|post|"
    r"sorry|i|it|"
    r"we|wrong|was|thanks|ta|bot|off|from|again|for|as|because|cos|he|she|my|mate|lol|just|"
    r"actually|"
    r"both|too|and|if|po|na|yaar|then|out|back|down|away|log|number|thing|bit|pal|love)(?: |$))"
)

RETRACTING = _patterns(
    r"\b(?:ignore|disregard) (?:me|that|the last|my last)\b.{0,25}\b(?:wrong|other|meant for|"
    r"mistake|another)\b",
    r"\b(?:take|strike|cross|knock|scrub|wipe) (?:the )?(?:second|first|other|duplicate|extra) "
    r"(?:one|entry)? ?(?:off|out|back)?\b",
    r"\b(?:mistake|error|wrong)\b.{0,12}\b(?:delete|remove|undo|scrap|cancel) (?:it|that)\b",
    r"\btake no notice of (?:that|my|the)\b",
    r"\b(?:can|could|please) (?:that|it|this) (?:be )?(?:wiped|deleted|removed|cancelled|taken "
    r"off|struck)\b",
    r"\b(?:please |kindly |pls )?(?:cancel|delete|remove|ignore|undo) (?:my|the|that) (?:last |"
    r"previous |earlier )?(?:message|entry|record|log|post|one)\b",
    r"^(?:that|the|my) (?:last|previous) (?:one|entry|message|record|log)?(?: is| 's| was)? "
    r"(?:wrong|a mistake|not right|rubbish|an error)\b",
    r"\b(?:wrong|other|different) (?:chat|group|room|thread)\b.{0,20}\b(?:sorry|ignore|delete|"
    r"oops)|\b(?:oops|sorry|ignore)\b.{0,30}\b(?:wrong|other|different) (?:chat|group|room|"
    r"thread)\b",
    _START + r"(?:scratch|strike|delete|undo|remove|cancel|disregard|erase|scrub|withdraw|void|"
    r"retract|unlog|discard|nix|borra|drop) " + _LAST + _AND_NO_MORE,
    _START + r"(?:ignore|scrap|forget|bin) (?:that|the last|my last|last|that one|the entry|what i "
    r"said|what i just said|my previous|the previous)\b(?! (?:he|she|they|guy|man|woman|bit "
    r"about))",
    _START
    + r"(?:take|strike|cross|rub|knock|wipe|chuck|throw) "
    + _LAST
    + r" ~(?:off|out|back|down|away)\b(?! (?:the|my|your|his|her|that) "
    r"(?!record|records|list|book|books|log|sheet|total|tally|count))",
    _START + r"(?:take off|strike out|cross out|rub out|undo|wipe) " + _LAST,
    r"^(?:bot )?(?:undo|undo please|please undo|delete|retract|delete please)$",
    r"\b(?:strike|scratch|take|delete|cancel|remove|scrub|cross|borra) (?:that|it|eso)(?: last "
    r"one)?"
    r"(?: off| out)?,? (?:please|pls|plz|sorry|from the|bot)",
    r"\b(?:please|pls|can you|could you|kindly) (?:delete|remove|cancel|undo|ignore|disregard|"
    r"strike|"
    r"scratch|erase|withdraw) " + _LAST,
    r"\b(?:logged|posted|sent|entered|said|counted|reported|wrote) (?:(?:it|that|this) )?twice\b",
    r"\b(?:that|this|it) (?:was|is) (?:a )?(?:duplicate|double entry|wrong group|wrong chat|"
    r"logged twice|"
    r"meant for another)",
    r"\bnever happened\b.{0,20}\b(?:delete|scratch|ignore|strike)",
)

PUTTING_RIGHT = _patterns(
    r"\bi (?:wrote|said|typed|put down|logged|posted|entered) .{1,40} but (?:it|that|i) "
    r"(?:was|is|should|"
    r"meant|weighed)\b",
    r"^(?:(?:actually|sorry|oops|no|wait|,|it|that|this|the|weight|amount|number|figure|one) )*"
    r"(?:should|shd) (?:have |of )?(?:be|been|read|say)(?: (?:about|just|only))* \d+(?:[.,]\d+)?$",
    r"^(?:(?:actually|sorry|oops|no|wait|,|please|pls) )*make (?:it|that) \d+(?:[.,]\d+)?$",
    r"\bi (?:meant|mean)\b",
    r"\bmeant (?:to (?:say|write|type|put) )?(?:qbin|\d|the qbin|half|a |one|two|three)",
    r"\b(?:should|shoulda|shd) (?:have |of |ve )?(?:be|been|read|say|said)(?: (?:about|in|on|for|"
    r"the|under|against|only))*"
    r" (?:\d|qbin|qday|qmember|half|a |an |one|two|three|four|five|six|seven|eight|nine|ten)",
    r"^(?:\S+ ){0,4}should (?:be|have been|read|say)$",
    r"^(?:(?:actually|sorry|oops|no|wait|ah|,|\.|and|so|ok|erm|er|um|well) )*(?:it|that)(?: "
    r"one)? (?:was|is) (?:on )?qday\b(?!(?: ,? ?not qday)?(?: ,)? (?:i|we|you|he|she|they|when|"
    r"that|the|my|our|qmember) )",
    r"^(?:(?!i |we |you |to |can )\S+ ){0,3}make (?:that|it) (?!up|work|to)",
    r"^(?:\S+ ){0,2}correction\b",
    r"\b(?:change|correct|amend|fix|update|edit) (?:that|it|the last|last|my last|this) ~(?:to|"
    r"for|into|-|:)",
    r"\bmy (?:last|previous)(?: \S+)? (?:was|should)\b",
    r"\bwrong (?:bin|bucket|amount|number|one|weight|day|date)\b.{0,20}(?:qbin|\d)",
    r"\btypo\b",
    r"^(?:that|the|my|this) (?:drain|layer|amount|weight|draining|entry|figure|number|one|last "
    r"one|last) (?:was|should|is) ",
    r"^(?:it|that) was \w+(?: \w+)? not \w+\b",
    r"^(?:(?:actually|sorry|oops|no|wait|,|and|so|ok|um|well) )*(?:it|that)(?: one)? was "
    r"(?:actually )?qmember\b(?! who (?:said|told))",
    r"\bthat should (?:say|read)\b",
    r"\b(?:it|that) was (?:actually|really|only|in fact|more like)\b",
    r"\bactually (?:it|that) (?:was|is|weighed)\b",
    r"^(?:actually|no|sorry|oops|wait|whoops)(?: ,)? (?:it|that)(?: was| is|'s| s) ",
    r"^(?:actually|sorry|oops|wait|no)(?: ,)? (?:the )?qbin not (?:the )?qbin",
    r"^(?:it|that) (?:was|is) (?:the |in |in the )?qbin(?: ,)? not (?:the |in |in the )?qbin",
    r"^(?:(?:sorry|ah|oh|no|wait|actually|,) )*(?:the )?qbin(?: ,)? not (?:the |in the )?qbin",
    r"^(?:sorry |oops |, )*not (?:the )?qbin(?: ,)? (?:but )?(?:the )?qbin$",
    r"\bnot qbin ?,? ?(?:but|it was|i meant|sorry) ",
)

LATER = _patterns(
    r"\bnot now\b",
    r"\bsnooze\b(?! (?:button|alarm|feature))",
    r"^(?:not today|not tonight|not this week|in (?:a|another|one|two|three|four|five|\d+|a "
    r"couple of|a few) (?:days?|weeks?))(?: (?:please|thanks|bot|sorry|,|then))*$",
    r"\b(?:do|see to|sort|get to|get round to|handle) (?:it|that|this|them) (?:later|tomorrow)\b",
    r"\bleave (?:it|that|this|me) (?:for now|till|until)\b",
    r"(?<!will )(?<!ll )\b(?:remind|ask|tell|nudge|ping|prod|poke|bug|nag|chase|try) (?:me|us|"
    r"again|after|later|in "
    r"\d)\b(?! (?:never|not|to (?!do|drain|seal|bury|feed|check|see|open|it|look)|how|what|"
    r"who|why|where|when|if|more|of|about|"
    r"about the|that i))",
    r"\bcome back (?:to (?:me|us) )?(?:in|on|tomorrow|later|next)\b",
    r"^(?:maybe |do it |ill do it |will do (?:it )?|i will do (?:it |that )?|not today |cant "
    r"today |not yet |"
    r"bit |a bit )*(?:later|later please|later bot|later thanks|ill do it later|not yet|tomorrow|"
    r"tomorrow please)$",
    r"^(?:i )?(?:will|ll|can|shall) (?:do|get|see|sort) (?:to )?(?:it|that|this|them) (?:later|"
    r"tomorrow|tonight|on|"
    r"this weekend|at the weekend|next|in)\b",
    r"^give (?:me|us|it) (?:a |another |\d|two|three|until|till)(?!.*\boff\b)",
    r"\b(?:need|want) (?:another|a few more|more) (?:days?|week|\d)",
    r"^(?:busy|too busy|no time|away|not home|in bed|at work|"
    r"cant(?! (?:keep|have|take|host|mind)\b)|cant today|not today|not "
    r"tonight)\b.{0,40}"
    r"\b(?:later|tomorrow|remind|next|in \w+ days?|on \w+day)\b",
    r"\b(?:cant|cannot|wont) (?:be able to )?(?:do|reach|manage|sort) (?:it|that|mine|this)"
    r"(?: ,)? (?:before|until|till|til) ",
    r"\bpostpone\b|\bput (?:it|that) off\b|\bpush (?:it|that) (?:back|to)\b",
)

DONE_BARE = _patterns(
    r"^(?:yes |yep |ok |bot |, )*(?:it|that|this)(?: is|'s| 's| has)? been (?:done|sorted|seen "
    r"to)(?: (?:now|already|qday|thanks))*$",
    r"^(?:yes |yep |ok |bot |, )*(?:i|we) have (?:now |already |just )?(?:done|sorted) (?:it|"
    r"that|this)(?: (?:now|already|qday|thanks))*$",
    r"^(?:(?:yes|yep|ok|i|we|just|already|all) )*(?:did|done|sorted) (?:(?:it|that|this|them) "
    r")?(?:qday|earlier|already|before work|first thing|just now)$",
    r"^(?:(?:yes|yep|yeah|ok|aye|all) )+(?:all )?(?:sorted|done)(?: bot| thanks| now)?$",
    r"^(?:(?:ok|okay|yes|yep|yeah|yup|right|its|it is|it 's|all|that is|thats|that 's|both|ya|ta|"
    r"just|now|is|esta) )*"
    r"(?:done|sorted|finished|completed|ya esta|esta|quedo|ya quedo|did it|i did it|have done it|"
    r"listo|erledigt|did that|"
    r"taken care of|hecho|tapos na|fertig|ho gaya|feito|ticked off|job done|mission accomplished|"
    r"dusted)"
    r"(?: (?:qday|bot|now|thanks|ta|cheers|today|already|just now|yesterday|it|that|last night|"
    r"this morning|!|,|and dusted|boss|mate|"
    r"love|for today|sir|madam|po|na|yaar|hours ago|ages ago))*$",
)
DONE_OF_BIN = _patterns(
    r"\bqbin 's (?:been )?(?:done|sorted|seen to)\b",
    r"qbin (?:one )?(?:is |'s |has been |is now |is all |all |now |also |already |was |got "
    r")*(?:done|sorted|dealt with|"
    r"taken care of|seen to|finished)\b(?! (?:when|with the|fermenting))",
    r"^(?:\S+ ){0,3}(?:done|did|sorted|finished)(?: with)? (?:the )?qbin(?: one)?$",
)

ACCEPTING = _patterns(
    r"^(?:ok|okay|yes|sure|fine|right|yep)(?: ,)? (?:it is |its |'s )?my turn\b",
    r"\bi (?:'d|would) (?:be glad of|love|like|be happy with|be happy to have) (?:the )?qbin\b",
    r"^(?:the )?qbin (?:i |we )(?:can|will|could) (?:take|have|keep|host)\b",
    r"\b(?:i (?:will|can|ll|would love to|'d love to|could|shall|am happy to|am glad to|happily)|"
    r"ill) (?:happily |gladly |definitely |"
    r"defo |certainly |also |totally )*(?:take|have|host|mind|keep|look after|do|collect|grab|"
    r"adopt|babysit|get) "
    r"(?:it|this|that|qbin|the qbin|my turn|the turn|this week|next week|over|on qbin|her|him|"
    r"care of it|"
    r"care of qbin|one|the next turn|the week|that week)\b(?! (?:anymore|back to the shop|easy|"
    r"personally|from here))",
    r"^(?:ok|okay|yes|yep|yeah|sure|fine|of course|alright|sure thing|yes please|no problem|ya|"
    r"claro|si|gladly|"
    r"no worries|absolutely|deal|aye|grand)(?: ,| \.| !)* (?:i |ill )?(?:will |can |ll |would "
    r")?(?:take|have|do|host|mind|collect|pick|accept|"
    r"get) (?:it|qbin|the qbin|my turn|up|that|this|care)",
    r"\b(?:happy|glad|delighted|pleased) to (?:take|have|host|mind|keep|look after|do) (?:it|"
    r"qbin|the qbin|my turn|"
    r"this|over|that|her|him|the week|this week)\b",
    r"\bi (?:accept|am in for|agree to take)\b(?! (?:that|your apolog|the apolog|defeat))",
    r"\bcount me in (?:for|on) (?:qbin|the qbin|my turn|the turn|it)",
    r"\b(?:my turn|qbin)(?: ,)? (?:is |that is )?(?:fine|ok|okay|good|no problem|works)(?: (?:by|"
    r"with|for) me)\b",
    r"\bput me down for (?:it|qbin|the qbin|that|next|this)",
    r"\bi (?:am|will be) (?:ready|free) (?:for|to take) (?:it|qbin|the qbin|my turn)",
    r"^(?:mine|dibs|bagsy|ill have it|i will have it|i will take it)\b(?=$| [.!,]| then| from| "
    r"on| thanks| ta| please| \()",
    r"\b(?:i (?:will|can|ll)|ill) (?:take|have|do) (?:it|qbin|the qbin|my turn|the turn)\b",
)
ACCEPTING_BARE = _patterns(
    r"^(?:yes|yep|yeah|ok|okay|sure|of course|yes please|fine|alright|happy to|no problem|go on "
    r"then|why not|"
    r"deal|will do|sounds good|aye|yup|gladly|absolutely|si|claro|ja|oui|haan|oo)\b.{0,30}$",
    r"^(?:(?:yep|yeah|aye|ok|okay|sure|,) )*(?:can can|can(?: (?:lah|leh|one))?|(?:lah )?can|"
    r"sweet as|no (?:wukkas|wuckas|wucking furries|worries|dramas?|stress|bother)|nae bother|"
    r"too easy|easy|grand so|righto|right you are|right so|not a bother|sorted|roger|wilco)"
    r"(?: (?:mate|bro|cheers|thanks|ta|so|then|lah|pal|,|[.!]))*$",
)

WENT_IN = _patterns(r"\bin (?:went|goes|go)\b|\b(?:went|gone|goes) in\b")
"""It goes on from what was told, where no food is named."""

MORE = _patterns(
    r"^(?:(?:oh|ah|ok|okay|yes|yep|,) )*(?:and|plus|then|\+|&|another|also) ",
    r"\b(?:more|another|extra|additional|further|again|too|also|plus|as well|on top|"
    r"noch|dazu|jeszcze|otros?|otras?|encore|ancora|mas)\b",
)
FURTHER = (*MORE, *WENT_IN)
"""A further amount, behind the bot's answer to the one before."""

NOTHING_FURTHER = _patterns(
    r"\bmore (?:like|than)\b|\b(?:no|any|nothing|not|once) more\b|\btoo (?:much|many|heavy|big)\b",
    r"^(?:(?:oh|ah|ok|okay|yes|yep|and|,) )*(?:it|that|this) (?:was|came to|weighed|made)\b"
    r"(?!.*\b(?:another|more|extra|again|too|also|further)\b)",
)

ANOTHER_DOER = _patterns(r"\b(?:it|that) was qmember (?:who|that) ")
"""A record is put down to the one who did it."""

NO_ROOM = _patterns(
    r"\b(?:no|not enough|havent (?:the )?|havent any) (?:room|space) for (?:the )?qbin\b"
)
"""No room for a bin that is offered: also a way to decline."""

DECLINING = _patterns(
    r"^(?:sorry |, |no |i |we )*(?:cant|cannot|wont)(?: do it| make it)? (?:this|next) (?:week|"
    r"month|time|weekend|fortnight)\b",
    r"\bno can do\b",
    r"^(?:sorry |, |no )*not me (?:this|next) (?:time|week|month)\b",
    r"\bso (?:its a |it is a |a )?no(?: (?:from me|sorry|thanks|then|,))*$",
    r"^(?:sorry |, |i |no )*(?:cant|cannot) do (?:monday|tuesday|wednesday|thursday|friday|"
    r"saturday|sunday|this week|next week|that week|it)\b",
    r"^(?:i )?(?:would|'d) (?:love|like) to(?: help)?(?: ,)? but (?:i |we )?(?:cant|cannot|am|"
    r"have|wont)\b",
    r"\bno puedo\b|\bnao posso\b|\bich kann nicht\b",
    r"^(?:this time |this week |sorry |,|i )*(?:cannot|cant)(?: (?:sorry|,|this time|this week|"
    r"please))*$",
    r"\b(?:no|not enough|havent (?:the )?|havent any) (?:room|space) for (?:the )?qbin\b",
    r"\b(?:cant|cannot|cant really|wont be able to|am not able to|unable to|not able to|can not|"
    r"couldnt|wont) "
    r"(?:really |possibly |actually )?(?:take|have|host|mind|do|manage|keep|look after|accept|"
    r"make|collect) (?:it|qbin|the qbin|that|"
    r"this(?! (?:heat|weather|noise|rain|smell|cold|any|wind|pain|job))|my turn|the turn|"
    r"my week|this week|next week|on|one|another|over|the week|her|him|"
    r"any)\b(?! (?:anymore|"
    r"any more|seriously|back|all|, this|any longer))",
    r"^(?:no|nope|sorry|i am sorry|im sorry|no sorry|not me|nah|no ,|sorry ,)(?: [,.])? ?(?:\S+ "
    r"){0,4}(?:cant|cannot|pass|decline|not this "
    r"time|no room|no space|skip|away|full already)\b",
    r"^(?:i |i will |ill |have to |gonna |going to |i am going to |i have to |will |sorry |, "
    r")*(?:pass|decline|say no)(?! on (?:my|your|his|her|a|some)\b)(?: (?:on|this|to|thanks|"
    r"please|sorry|,).{0,30})?$",
    r"\b(?:skip me|skip my turn|pass on my turn|miss my turn|not this time|somebody else (?:have|"
    r"take)|someone "
    r"else (?:have|take)|no room for (?:it|qbin|the qbin|another))\b",
    r"\bi (?:have to|must|will have to|d have to|'d have to|would have to) (?:say no|decline|"
    r"pass|refuse)\b",
    r"\b(?:no thanks|no thank you)\b.{0,40}\b(?:qbin|turn|week|take|room|full|away)\b",
    r"\bi (?:decline|am declining)\b",
    r"\b(?:not|isnt|wont be) possible (?:for me|this|to take|now)\b",
    r"^(?:cant|cannot|can not|i cant|i cannot)(?: (?:sorry|this week|this time|,|next week|i am "
    r"away|away))+$",
)
DECLINING_BARE = _patterns(
    r"^(?:nope|nah|sorry no|not me|cant|i cant|i cannot|not this time|"
    r"pass|i pass|nein|non|nahi|hindi)\b.{0,30}$",
    # "No liquid at all", "no idea": what is not there is no refusal.
    r"^no(?=$| ?[^\w\s]| (?:thanks?|ta|cheers|sorry|not|never|i|im|we|cant|cannot|wont|pass|room|"
    r"space|time|way|it|that|this|you|from|please|bot|mate|chance|can do|afraid|no|really|"
    r"but|because|cos|qmember|qbin)\b).{0,30}$",
)

OFFERING = _patterns(
    r"\b(?:need|want|looking for|after) (?:someone|somebody|anyone|one of you) to (?:take|have|"
    r"mind|host|look after)(?: over| on)? (?:the |my )?qbin",
    r"\b(?:would|could|can|does|will) qmember (?:like|take|have|want|mind|host|look after)(?: to "
    r"have| to take)? (?:the )?qbin",
    r"qmember (?:will|should|is going to|can|could|to) (?:be )?(?:taking|take|have|having|get|"
    r"getting|mind|minding|host|hosting|keep|keeping|look after|looking after)(?: over)? "
    r"(?:the )?qbin",
    r"\b(?:like|want) qmember to (?:have|take|mind|host) (?:the )?qbin",
    r"qmember (?:you|do you|would you)(?: want| like| fancy| take)+ (?:to have |to take )?(?:the "
    r")?qbin",
    r"\b(?:pass|passing|passed|hand|handing|handed|give|giving|gave|offer|offering|offered|"
    r"transfer|transferring|"
    r"leave|leaving|bring|bringing|send|sending|moving|move|drop|dropping|turn|turning) (?:over |"
    r"on |along )?(?:the |my )?qbin "
    r"(?:on |over |along |off |back |round )?(?:to|with|for) (?:@ )?qmember",
    r"\b(?:pass|passing|hand|handing|give|giving|offer|offering|handed|gave|passed)(?: over| "
    r"on)? (?:@ )?qmember (?:the |my )?qbin",
    r"qmember(?: ,| :)? ~(?:would|could|can|will|do|wanna|want|are) (?:you|u) ~~(?:take|have|"
    r"host|mind|keep|look after|"
    r"collect|adopt|babysit|want|grab|fancy)(?: on| over)? (?:the |my )?qbin",
    r"qmember(?: ,| :)? ~(?:fancy|up for|ok with|happy with|how about) (?:having|taking|minding|"
    r"hosting|keeping|a turn with|a go of) (?:the |my )?qbin",
    r"\b(?:would|could|can|will|do) (?:you|u) ~~(?:take|have|host|mind|keep|look after|collect|"
    r"adopt|babysit|want)(?: on| over)? "
    r"(?:the |my )?qbin.{0,40}qmember",
    r"\b(?:can|could|will|would|does) (?:anyone|anybody|someone|somebody|one of you) ~~(?:take|"
    r"have|host|mind|keep|look "
    r"after|adopt|babysit|want|fancy)(?: on| over| to take| taking)? (?:the |my )?qbin",
    r"\b(?:anyone|anybody|someone|somebody|who) (?:want|wants|willing|able|free|up for|fancy|"
    r"fancies|like|can|could|will|"
    r"would like|happy)(?: to)? ~(?:take|taking|have|host|mind|keep|look after|adopt|babysit|"
    r"over)?(?: on| over)? ?(?:the |my )?qbin",
    r"qbin (?:is|can be|could be|will be|'s|is all) (?:yours|qmember(?: 's)?$|for qmember|going "
    r"to qmember|qmember 's (?:from|now|on))",
    r"qbin.{0,60}qmember(?: ,)? (?:it is|its|it 's|he is|she is|it will be|is) (?:all )?yours",
    r"qmember(?: ,)? ~(?:qbin )?(?:is|it is|its|it 's) (?:all )?yours.{0,60}",
    r"qbin (?:is |will be |to be |should |can )?(?:going|goes|go|moves|moving|passes|passing|"
    r"over|handed|passed|given|off) ~to (?:@ )?qmember",
    r"qmember (?:is|will be|is going to be|will|takes|to|'s) ?(?:have|having|take|taking|takes|"
    r"get|getting|over)?(?: over)? (?:the )?qbin "
    r"(?:from|on|next|tomorrow|starting|over|this)",
    r"qmember (?:takes|gets|will take|will have|is taking|is having|is getting)(?: over)? (?:the "
    r")?qbin",
    r"qbin (?:is )?up for (?:grabs|adoption)|qbin (?:needs|is looking for|wants) (?:a )?(?:new "
    r")?(?:keeper|home|host|minder)",
    r"\bover to qmember\b",
)
