"""Refusals, delays, strikings and doubts that are between people, and answer nothing of ours."""

from handlers.reading.bins.names import find_bot
from handlers.reading.doubts.asidebins import (
    BESIDE_BINS,
    COUNCIL,
    ELSEWHERE,
    LORRY_CUES,
    OF_CRAFT,
    OF_DAYS,
)
from handlers.reading.doubts.asidewords import OF_ELSE
from handlers.reading.doubts.brews import is_of_culture
from handlers.reading.doubts.jests import is_joke
from handlers.reading.doubts.toperson import is_to_a_person
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import norms_in, words_of


def _is_of_council(message: Message) -> bool:
    """ "What day do the brown bins go out": of bins that no group keeps."""
    if not message.has(LORRY_CUES) or message.has(OF_CRAFT):
        return False
    if any(ref.known for ref in message.bins):
        return False
    return COUNCIL.search(" ".join(message.norms)) is not None


_ASKED_OF_BINS = ("ask bin", "ask custody")
"""Questions that are of other things behind the bot's words, too, where such a thing is named."""


_SIGHED = words_in("i we just simply cant cannot even anymore with this you , . !")
"""Nothing but "I can't", as people say it where they cannot go on for laughing."""
_CRAFT = words_in("bran leachate bokashi scraps mould mold bin bins bucket buckets stale grams")
"""With one of these a question is of the craft."""


_NO_REFUSAL = words_in("full cannot cant couldnt room space wish")
_REFUSED_ELSE = Late(
    r"\b(?:i am|i 'm|im|am|we are|we 're|feel|feeling) (?:(?:so|too|very|that|still|really|"
    r"absolutely|completely|already|both|all|now) )*(?:full|stuffed)\b"
    r"(?! (?:up|this|next|with|until|till|on|for|at)\b)|"
    r"\b(?:cannot|cant|couldnt) (?:take|stand|bear|face|handle) (?:(?:any|much|more|another|this|"
    r"that|these|all|the|of|bloody|day) )*(?:rain|heat|cold|snow|wind|noise|waiting|politics|news|"
    r"meetings?|drama|nonsense|moaning|winter|summer|weather|queues?|music|gossip|pain|pressure)\b|"
    r"\b(?:cannot|cant|couldnt) take (?:any(?:one|body)|you|him|her|them|people|us|the \w+|my \w+) "
    r"to (?!(?:qbin|it)\b)|"
    r"\bno (?:room|space)(?: left)? for (?:(?:a|an|any|another|more|the|my|our|his|her) )*"
    r"(?!(?:an?|any|another|more|the|my|our|his|her|qbin|qmember|bins?|buckets?|pails?|tubs?|drums?|"
    r"barrels?|it|one|that|this|them|him|her|"
    r"scraps?|peels?|bokashi|turn|week|at|in|now|today)\b)[a-z]+\b(?!.{0,80}\bqbin\b)|"
    r"\bwish (?:i|we) (?:had|'d) (?:got )?an? (?!(?:\w+ )?(?:room|space|corner|spot|place|bin|"
    r"minute|moment|hand|day|week)\b)[a-z]+"
)
"""A full stomach, no room for a piano, enough of the rain, a wish."""


def _is_no_refusal(message: Message) -> bool:
    """Whether nothing of ours is refused, where nothing was offered or asked."""
    context = message.context
    asked = context.on_offer or context.after_bot or context.on_reminder or context.on_handover
    if asked or message.bot or not message.has(_NO_REFUSAL):
        return False
    return _REFUSED_ELSE.search(plain_text(message)) is not None


def is_aside(kind: str, message: Message) -> bool:
    """Whether an answer or question of that kind speaks of other things, or to another person."""
    if _is_no_such_answer(kind, message):
        return True
    named = any(b.known or b.plain for b in message.bins)
    if message.context.after_bot and kind not in ("retract", "amend"):
        elsewhere = kind in _ASKED_OF_BINS and not named and _is_elsewhere(kind, message)
        return elsewhere or (not message.bot and _is_beside_bins(kind, message))
    if message.bot and kind == "retract":
        return False
    if kind == "ask trouble" and is_of_culture(message):
        return True
    joke = kind.startswith("ask ") and is_joke(message)
    if joke or (kind in OF_DAYS and _is_of_council(message)) or _is_beside_bins(kind, message):
        return True
    if named:
        return False
    if _is_elsewhere(kind, message) or is_to_a_person(kind, message):
        return True
    if kind == "decline" and _SIGHED.issuperset(message.said):
        return True
    of_else = OF_ELSE.get(kind)
    if of_else is None or message.bins:
        return False
    return of_else.search(plain_text(message)) is not None or (
        kind == "later"
        and not message.bot
        and (_speaks_to_a_member(message) or _plans_a_layer(message))
    )


def _is_no_such_answer(kind: str, message: Message) -> bool:
    """Whether its own words say that it refuses nothing, puts nothing off, or only thanks."""
    match kind:
        case "decline":
            return _is_no_refusal(message)
        case "later":
            return message.has(_SAYING) and _WISHED_ELSE.search(plain_text(message)) is not None
        case "ask help" if _OFFERS_HELP.search(message.body):
            return True
    return kind in _NO_THANKS and is_only_thanks(message)


_OFFERS_HELP = Late(r"(?i)\b(?:can|could|may|shall) (?:i|we) help\b")
"""What a neighbour is offered."""
_NO_THANKS = ("done", "set", "ask help")
"""Kinds that nothing but thanks or praise is not, though the bot is called in it."""


def is_only_thanks(message: Message) -> bool:
    """ "Ta bot, much appreciated", "well done bot": every word thanks, praises or fills up."""
    words, norms, bot = message.words, message.norms, message.bot
    if len(bot) == len(norms):  # "bot thanks": the thanks are passed over as a courtesy
        words = words_of(message.body)
        norms = norms_in(words)
        bot = find_bot(norms, message.context.bot_names)
    if _THANKING.isdisjoint(norms) or any(word.text in _TICKS for word in words):
        return False
    passed = {*bot, *indexes(message.members)}
    passed |= {i + 1 for i in range(len(norms) - 1) if norms[i : i + 2] == _WELL_DONE}
    return _THANKS.issuperset(norm for i, norm in enumerate(norms) if i not in passed)


_WELL_DONE = ["well", "done"]


_TICKS = ("✅", "☑", "✔", "✓")
_THANKING = words_in(
    "thanks thank thx tnx tysm ty ta cheers appreciate appreciated appreciates grateful obliged "
    "gracias merci danke obrigado obrigada salamat grazie dank bedankt tak takk love loved well "
    "good great nice brilliant amazing awesome helpful useful clever smart star legend hero genius "
    "gem lifesaver godsend marvel treasure"
)
_THANKS = _THANKING | words_in(
    "you you're ya u ur your yous youse 're are is 's 'm am it this that thats i we me us our my "
    "so very really much many muchly most a an the all lots tons loads bunch million always again "
    "as too ever just such simply absolutely honestly oh wow ha ok okay yes yeah aww aw dear "
    "friend mate pal love machine robot best lovely wonderful fantastic fab super perfect cool "
    "handy kind sweet funny excellent superb for of and help helping reminder reminders reminding "
    "nudge nudges nudging prompt heads up letting know telling asking info answer tip advice job "
    "work one thing stuff indeed bot , . ! ☺ - — : ( )"
)


_SAYING = words_in("show list remind tell warn ping nudge notify")
_WISHED_ELSE = Late(
    r"^(?:(?:can|could|would|will|you|please|ok|and|now|so|just|,) )*(?:show|list)\b|"
    r"\bremind (?:everyone|everybody|all|people|the group)\b"
    r"(?!(?: please| ,)* (?:again|tomorrow|later|tonight|in|on|next|at)\b)|"
    r"\b(?:remind|tell|warn|ping|nudge|notify) (?:me|us|everyone|everybody|all)\b.{0,40}"
    r"\b(?:ahead|earlier|beforehand|in advance|(?:days?|nights?|evenings?|mornings?|weeks?|"
    r"weekend|hours?|minutes?) before)\b|"
    r"\b(?:remind|tell|ping|nudge) (?:me|us) (?:when|once|if|as soon as) "
    r"(?!i\b|we\b|im\b|my\b|our\b|you\b)"
)
"""What is wished to be shown, or said sooner or once something is so: nothing is put off by it."""


def _is_beside_bins(kind: str, message: Message) -> bool:
    turns = BESIDE_BINS.get(kind)
    return turns is not None and turns.search(plain_text(message)) is not None


def _is_elsewhere(kind: str, message: Message) -> bool:
    words = _asked_words(message) if kind == "ask bin" else message.said
    return not words.isdisjoint(ELSEWHERE.get(kind, ())) and words.isdisjoint(_CRAFT)


def _asked_words(message: Message) -> frozenset[str]:
    """The words of what is asked: "which is nearly full? I've a bag with me" is of no bag."""
    asked = [s for s in message.sentences if s.asked]
    return frozenset(n for s in asked for n in message.norms[s.start : s.end]) or message.said


def _plans_a_layer(message: Message) -> bool:
    """ "Tomorrow I bring two kilos of peel": a plan, and no reminder put off."""
    if not message.items or len(message.sentences) > 1 or message.has(_REMINDING):
        return False
    return any(amount.quantity == "mass" for amount in message.amounts)


_REMINDING = words_in("remind ask nag ping nudge poke prod bug chase snooze tell later try")


def _speaks_to_a_member(message: Message) -> bool:
    """ "Remind me tomorrow, Ruth": set off by a stop on its left, or first of all."""
    norms = message.norms
    return any(
        (norms[m.start - 1] == "," if m.start else norms[m.end : m.end + 1] == [","])
        for m in message.members
    )
