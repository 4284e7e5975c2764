"""What was long ago, on a screen, in print or far away: none of it is of our bins."""

from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_YEARS = frozenset(str(year) for year in range(1900, 2000))
"""So long ago is no record of ours, whatever is named."""
_LATER_YEARS = {str(year): year for year in range(2000, 2100)}
"""They are as long ago once two of them have gone by."""
_LONG_AGO = (
    words_in(
        "growing village country hometown childhood youth day days boy girl kid child lad lass "
        "nipper "
        "bairn bride student apprentice little wee small young younger school army navy teens "
        "years "
        "springs summers autumns falls winters seasons harvests christmases easters monsoons "
        "year war strike rationing famine siege winter summer autumn spring twenties thirties "
        "forties "
        "fifties sixties seventies eighties nineties grandmother grandfather grandma grandpa "
        "grandad "
        "grandmum granny gran nana nan nanna babushka oma opa nonna nonno abuela dadi nani mother "
        "father mum mam dad uncle aunt auntie aunty people folks parents family six seven eight "
        "nine "
        "ten eleven twelve back"
    )
    | _YEARS
    | frozenset(_LATER_YEARS)
)
_KIN = (
    r"(?:(?:my |our |his |her |the )?(?:great )?(?:grand(?:mother|father|ma|pa|dad|mum)|granny|"
    r"gran|"
    r"nana|nan|nanna|babushka|oma|opa|nonna|nonno|abuela|dadi|nani|mother|father|mum|mam|dad|uncle|"
    r"aunt|auntie|aunty|people|folks|parents|family))"
)
_CHILD = (
    r"(?:(?:a|an|just|only|still) )*(?:(?:little|wee|small|young) )?"
    r"(?:boy|girl|kid|child|lad|lass|nipper|bairn|bride|student|apprentice|little|wee|small|young|"
    r"younger|growing up|at school|in the army|in the navy|(?:in )?(?:our|my) (?:teens|twenties)|"
    r"six|seven|eight|nine|ten|eleven|twelve)\b"
)
_SEASONS = (
    r"(?:springs|summers|autumns|falls|winters|seasons|harvests|christmases|easters|monsoons)"
)
_THEN = Late(
    rf"\bwhen (?:i|we|he|she|they|{_KIN}) (?:was|were) {_CHILD}|"
    rf"\b(?:as an? (?:boy|girl|kid|child|lad|lass|student|apprentice)|growing up|"
    rf"in my (?:day|youth|childhood|(?:mother|father|grand\w+|nan|gran) 's day|time as an? \w+)|"
    rf"in the old (?:country|days)|back in the day)\b|"
    rf"(?:^|\b(?:was|were|back) )in 19[0-9]\d\b|"
    rf"\b(?:in|back in|of) those days\b|\bback then\b|"
    rf"[.,;!] years (?:ago|back) ,? ?(?:we|i|they|he|she|people|somebody|someone|{_KIN})\b|"
    rf"\b(?:in|during) the (?:twent|thirt|fort|fift|sixt|sevent|eight|ninet)ies\b|"
    rf"\b(?:many|some|\d+|two|three|four|five|six|ten|twenty|thirty|forty|fifty|few|couple of) "
    rf"(?:years|{_SEASONS}) (?:ago|back)\b|"
    rf"\b(?:spring|summer|autumn|fall|winter|christmas|easter|night|day) years (?:ago|back)\b|"
    rf"\b(?:the|that) (?:year|winter|summer|autumn|spring) (?:of the|of 19\d\d|we had|my|when "
    rf"(?:the|my))\b|"
    rf"\b(?:during|in) the (?:war|strike|rationing|bin strike|famine|siege)\b|"
    rf"\bin (?:my|our|her|his) (?:home )?(?:village|country|hometown)(?: \S+)?,? {_KIN}\b|"
    rf"\b{_KIN} (?:used to|would (?:always )?(?:put|keep|bury|dig|feed|throw|tip|pour|mix|salt|"
    rf"boil|"
    r"make|fill|empty|carry|drain|collect))\b|"
    r"^back (?:in|when we lived in|when i lived in) (?!the\b|our\b|my\b|it\b|there\b|town\b|time\b|"
    r"business\b|action\b|stock\b|bed\b|work\b|school\b|here\b|an?\b)\S+(?: \S+){0,2} "
    r"(?:we|they|everyone|everybody|people|mum|dad|nan|gran|you)\b"
)
_SHOWN = words_in(
    "telly television tv tele radio news youtube netflix tiktok facebook documentary programme "
    "program film movie series episode podcast article book novel magazine professor read expert "
    "experts internet blog video leaflet quiz archers"
)
_ON_SCREEN = Late(
    r"\bon (?:the |our )?(?:telly|television|tv|tele|radio|news|youtube|netflix|tiktok|facebook|"
    r"internet)(?: last night| today| yesterday| tonight| just now| ,| :)* (?:an?|one|some|this|"
    r"that|"
    r"the|these|he|she|they|someone|somebody)\b|"
    r"\b(?:telly|television|tv|radio|documentary|programme|program|film|movie|series|episode|"
    r"podcast|"
    r"article|book|novel|magazine|professor|experts?|internet|blog|video|leaflet|quiz)"
    r"(?: (?:woman|man|bloke|lady|guy|person|last night|today|yesterday|once|i saw|i read))* "
    r"(?:said|says|told|tells|reckons|reckoned|claims|claimed|showed|shows|where|about|in which)\b|"
    r"\bin (?:the|a|that|this|my) (?:film|movie|book|novel|series|soap|programme|documentary|"
    r"archers)\b"
    r"(?! (?:i|we|club|night|bucket|bin)\b)|"
    r"^(?:the )?archers\b|"
    r"\b(?:i|i have|just|once) read (?:that|somewhere|about|in|of)\b"
)
_OUTSIDERS = (
    "sister brother cousin aunt auntie aunty uncle mum mam mom dad nan gran grandma grandad granny "
    "nephew niece daughter son mother father ex boss mate friend colleague sister-in-law "
    "parents folks cousins hairdresser dentist"
)
_AFAR = words_in(
    f"{_OUTSIDERS} hers theirs their next neighbours neighbors neighbour neighbor work office lot"
)
_BIN = r"(?:q?bins?|buckets?|tubs?|pails?|caddy|caddies|drums?|barrels?|bokashi)"
_ELSEWHERE = Late(
    rf"(?i:\b(?:my|our|his|her|^) ?(?:{_OUTSIDERS.replace(' ', '|')})(?: [a-z]+)?"
    r"(?: over| up| down| back| out| away| living)? (?:in|from|at)) "
    r"(?!Flat|Number|Block|Unit|Room|House|Plot|Apartment|Bin|Floor|[A-Z]\w+ \d)[A-Z][a-z]{2,} |"
    r"(?i:\b(?:in|into|off|from|of|seals?|sealed|drains?|drained|bur(?:y|ies|ied)|opened|fills?|"
    r"filled) (?:hers|theirs)\b)|"
    rf"(?i:\b(?:next door|(?:the |my |our )?(?:neighbours?|neighbors?)) ?(?:'|’s|'s)? {_BIN}\b)|"
    rf"(?i:^their {_BIN}\b)"
)
"""A place has its capital: "my cousin in number 4" is one of us."""
_THEIR_OWN = Late(
    rf"\b(?:my|our|the) (?:\w+ ){{0,2}}(?:{_OUTSIDERS.replace(' ', '|')}|lot|crowd|people) "
    rf"(?:\S+ ){{1,8}}(?:her|his|their) (?:own )?(?:\w+ ){{0,2}}(?:{_BIN}|one)\b|"
    r"^(?:(?:so|ha|haha|well|,) )*at (?:work|the office|my (?:old )?(?:work|job|place)) "
    r"(?:we have|we had|we ve|we've|they have|they had|there is|there's|there was|they keep)\b"
)
"""Whoever it is told of has a bin of her own, whatever ours are called."""
_HEAPS = words_in(
    "wormery wormeries worm compost composter heap heaps cone tumbler midden allotment"
)
_HEAP = (
    r"(?:wormer(?:y|ies)|worm (?:farm|bin|tower)s?|composters?|(?:compost |muck |allotment "
    r")?heaps?|"
    r"compost(?:ing)? (?:bin|pile|tumbler)s?|green cones?|hot ?bins?|(?<= 's )compost|(?<=his "
    r")compost|"
    r"(?<=her )compost|(?<=their )compost|(?<=s )compost)"
)
_ON_A_HEAP = Late(
    rf"\b{_HEAP}\b.{{0,80}}\b(?:he|she|they|someone|somebody|some (?:idiot|fool|clown)|mum|dad|"
    r"the (?:kids|neighbours|neighbors)) (?:(?:has|have|had|must|ve|'ve|'s|probably|just|only) )*"
    r"(?:put|puts|chucked|tipped|threw|dumped|added|emptied|bunged|lobbed)\b|"
    r"\b(?:he|she|they|mates?|friend|bloke|guy|woman|neighbour|neighbor|cousin|uncle|aunt|auntie|"
    r"brother|sister|boss|mum|dad|nan|gran|grandad)(?: \w+){0,3} (?:put|puts|chucked|tipped|threw|"
    r"dumped|added|emptied|bunged|lobbed) [^.;!?]{1,50} (?:in|into|on|onto) "
    rf"(?:(?:the|a|his|her|their) )?{_HEAP}\b"
)
"""What others put on a heap or into a wormery."""
_RECALLING = words_in("remember remembers")
_RECALLED = Late(
    r"^(?:(?:hey|ha|haha|lol|oh|and|so|do|does|you|u|ye|yous|anyone|anybody|who|,) )*remembers? "
    r"(?:when|how|(?:that|the) (?:time|day|year|night|week)|last|to)\b"
)
CUES = _LONG_AGO | _SHOWN | _AFAR | _RECALLING | _HEAPS
"""Words without one of which nothing is taken for that."""
_OURS = Late(
    r"\b(?:so|but|anyway|anyhow|today|tonight|now|yesterday|meanwhile|instead|"
    r"just (?:now|put|added|tipped|drained|sealed|did)|"
    r"this (?:morning|evening|afternoon|week|lot)|last (?:night|week|\w+day)|while|went in|"
    r"in (?:it|they|she|he) went|(?:on|this) (?:mon|tues|wednes|thurs|fri|satur|sun)day)\b"
)
"""Words that come back from what was to what is."""
_OWN = Late(
    r"\b(?:i|we|ive|weve)(?: have| just| then| also| still| finally| 've)* (?:put|added|add|"
    r"drained|"
    r"drain|sealed|seal|buried|bury|tipped|chucked|emptied|threw|mixed|made|got|opened|started|"
    r"binned|scraped|bunged|layered|measured|see|saw|have|found|tried|took)\b|"
    r"\b(?:in|into) (?:our|my|mine|ours)\b|\bfrom (?:us|me)\b|\b(?:so|but) (?:in|ours|mine|the)\b"
)
"""The teller's own deed beside what was seen or read."""
_OWN_DEED = Late(
    r"\b(?:i|ive) (?:(?:have|just|then|also|still|'ve) )*(?:put|added|drained|sealed|buried|"
    r"tipped|chucked|emptied|threw|opened|fed)\b|\b(?:in|into) (?:mine|ours)\b|"
    r"\b(?:so|but) (?:in|ours|mine)\b"
)


def is_long_ago(message: Message) -> bool:
    """Whether it is told as a memory, and comes back to no bin of ours."""
    if not message.has(_LONG_AGO) or "?" in message.said:
        return False
    if message.norms[0] in _DEEDS and not message.has(_YEARS):
        return False  # "added 2 kg 12 years ago" has its day asked for
    if _OURS.search(plain_text(message)):
        return False
    text = " ".join(message.norms)
    return (
        _is_all_of_it(message, _THEN)
        or _YEAR_AGO.search(text) is not None
        or _is_of_a_past_year(message, text)
    )


_IN_THE_YEAR = Late(
    r"^(?:(?:well|so|and|ha|haha|back|way|,) )*in (?P<year>20\d\d) ,? ?"
    r"(?:we|i|they|he|she|people|somebody|someone|everyone)\b"
)


def _is_of_a_past_year(message: Message, text: str) -> bool:
    """ "In 2019 we buried two bins under the hedge": what lies in the ground longer than a year."""
    found = _IN_THE_YEAR.search(text)
    return found is not None and _LATER_YEARS[found["year"]] < message.context.at.year - 1


def is_recalled(message: Message) -> bool:
    """ "Remember when we filled the shed?", "remember to seal it": old days, or what is to be."""
    if not message.has(_RECALLING) or _RECALLED.search(plain_text(message)) is None:
        return False
    first = message.sentences[0]
    return all(amount.start < first.end for amount in message.measured())


SUMS = words_in("makes brings thats 's is")
_UP_TO = r"(?:(?:this )?(?:week|month|year)|today|so far|now|in all|altogether|total)"
_SUM = Late(
    r"^(?:(?:so|and|ok|well|right|,) )*"
    rf"(?:(?:that|this|it)(?: now)? (?:makes|brings)(?= .*\b{_UP_TO}\b)|"
    r"(?:that|it)(?: now)? (?:is|'s)(?= .*\b(?:this (?:week|month|year)|in all|altogether)\b))"
    r"(?: (?:it|us|about|to|now|over|nearly|around|up|at))* \d"
)


def is_sum_told(message: Message) -> bool:
    """ "That makes 3 kg in the yard this week": a sum of what was told before, and no layer."""
    if message.items or len(message.measured()) != 1:
        return False
    return _SUM.match(plain_text(message)) is not None


_YEAR_AGO = Late(
    r"^(?:(?:well|so|and|ha|haha|remember|,) )*(?:last (?:year|spring|summer|autumn|winter)|"
    r"the (?:year|summer|winter) before(?: last)?|"
    r"(?:(?:an?|one|two|three|four|five|six|ten|twenty|some|many|a few|a couple of|\d+) )?"
    rf"(?:years?|{_SEASONS}) (?:ago|back)) ,? ?"
    r"(?:(?:at|in|for) (?:the |a |our )?(?:\w+ ){1,3}?)?"
    rf"(?:we|i|they|somebody|someone|everyone|he|she|people|"
    rf"{_KIN})\b(?! (?:have|had) (?:just|now))"
)
"""Told of a season that is over, a bin of ours is long dug in."""
_DEEDS = words_in("added put tipped chucked drained emptied sealed buried opened started mixed")


def is_on_screen(message: Message) -> bool:
    """Whether it was seen on a screen or read in print, and no bin of ours is named."""
    if not message.has(_SHOWN):
        return False
    return _is_all_of_it(message, _ON_SCREEN) and not _OWN.search(plain_text(message))


def is_of_others(message: Message) -> bool:
    """Whether it is of bins that relatives and strangers keep elsewhere, and of none of ours."""
    if message.members or len(message.sentences) > _SENTENCES:
        return False
    if message.has(_HEAPS) and not any(ref.name for ref in message.bins):
        return _ON_A_HEAP.search(" ".join(message.norms)) is not None
    if not message.has(_AFAR):
        return False
    if _THEIR_OWN.search(" ".join(message.norms)):
        return not _OWN_DEED.search(plain_text(message))
    if any(ref.known for ref in message.bins):
        return False
    said = " ".join([word.text for word in message.words])
    return _ELSEWHERE.search(said) is not None and not _OWN.search(plain_text(message))


_SENTENCES = 2
"""A longer story may tell of our bins besides."""


def _is_all_of_it(message: Message, turns: Late) -> bool:
    """Whether the turn stands in each sentence that measures something, and no bin of ours."""
    norms = message.norms
    if any(ref.known for ref in message.bins) and not message.has(_YEARS):
        return False
    text = " ".join(norms)  # a place may be taken for a new bin: "back in Leeds we"
    if turns.search(text) is None:
        return False
    measured = message.measured()
    return all(
        turns.search(" ".join(norms[s.start : s.end])) is not None
        for s in message.sentences
        if any(s.start <= amount.start < s.end for amount in measured)
    )
