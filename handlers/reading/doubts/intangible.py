"""What nobody can put into a bin by weight: "3 kg of regret", "half a kilo of my boss"."""

from collections.abc import Sequence

from handlers.reading.words.vocabulary import vocabulary, words_in

_NOTHING_THERE = words_in(
    "affection ambition anger angst anguish anxiety apathy apologies attention attitude banter "
    "bliss bollocks boredom boss boyfriend bullshit calm care cash chaos charm cheer chemistry "
    "childhood coins colleagues comfort compassion compliment compliments confidence confusion "
    "congratulations courage creativity cringe criticism curiosity cynicism debt delight denial "
    "depression desire despair destiny determination diamond diamonds disappointment discipline "
    "disdain doubt drama dread dream dreams ego embarrassment emotion emotions energy ennui "
    "enthusiasm envy evil ex excuses existentialism expectations faith fame fate fear fears "
    "feelings freedom frustration fun fury girlfriend glee glory gold goodwill gossip grace "
    "gratitude gravity greetings grief grievances grudge grudges guilt gumption hate hatred "
    "heartache heartbreak homework honor honour hope hopes horror humility humor humour husband "
    "ideas ignorance imagination inspiration insults irony jealousy jewels joke jokes joy "
    "judgement judgment justice karma kids knowledge landlord laughs laughter lawyer lawyers "
    "laziness lies life loathing loneliness longing love luck lust luxury magic malice "
    "melancholy memories mercy mischief misery money morale motivation music mystery neighbor "
    "neighbors neighbour neighbours nonsense nostalgia nothing opinion opinions optimism panic "
    "passion patience peace pessimism pity platinum plutonium politician politicians politics "
    "positivity potential power prayer prayers pride procrastination promises purpose rage "
    "reason regret regrets relief remorse resentment resolve respect revenge rumors rumours "
    "sanity sarcasm satisfaction scepticism schadenfreude secrets sense serenity shame silence "
    "silver sins sorrow sorrows soul souls spite stress stupidity success sympathy talent tears "
    "teenager teenagers temper thoughts tiredness toddler toddlers tranquillity trauma treasure "
    "trouble trust truth unease uranium vengeance vibes vitriol wife willpower wisdom wishes "
    "wit woe woes wonder worries worry wrath yearning youth zeal"
)
_ENDINGS = ("ness", "ship", "hood", "tude")
"""Of nouns for what cannot be touched."""
_LEAST = 7
"""Letters of a word that is told by its ending."""
_QUALIFIED = 3
"""Words behind "of" among which the noun stands ("of my own self-doubt")."""
_BEHIND = words_in(
    ", . ! ? ; : ( ) - and & in into to for from on at with that which today tonight yesterday "
    "this last again please lol haha → ☺"
)


def is_intangible(norms: Sequence[str], at: int) -> bool:
    """Whether "of" and a thing that no scale weighs stand behind an amount that ends at a word."""
    if norms[at : at + 1] not in (["of"], ["o"]):
        return False
    for i in range(at + 1, min(at + 1 + _QUALIFIED, len(norms))):
        if norms[i] in _BEHIND:
            return False
        if _is_such(norms[i]) and _BEHIND.issuperset(norms[i + 1 : i + 2]):
            return True
    return False


def _is_such(word: str) -> bool:
    if word in _NOTHING_THERE:
        return True
    return len(word) >= _LEAST and word.endswith(_ENDINGS) and word not in vocabulary()
