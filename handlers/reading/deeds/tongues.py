"""Plain reports in tongues that neighbours mix in: asked about in English rather than lost."""

from handlers.reading.acts import Drain, Layer, Unsure
from handlers.reading.food.makeups import makeup
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in

RULE = "told in another tongue"
_PUT = words_in(
    "hab habe haben getan reingetan reingeworfen eingefullt dazugegeben puse puesto echado eche "
    "meti metido puesta pusimos echamos mis ajoute jete verse wrzuciłam wrzuciłem dodałam dodałem "
    "dałam dałem wsypałam wsypałem messo aggiunto buttato dala daala daale daali dale dali dalaa "
    "coloquei botei deitei"
)
_DREW = words_in(
    "abgelassen abgezapft abgegossen abgeschopft entleert drenado drene vidange tire spusciłam "
    "spusciłem zlałam zlałem scolato spillato nikala nikaala nikali drainato gedrained"
)
CUES = _PUT | _DREW
_LIQUID = words_in("saft flussigkeit sickersaft liquido jugo lixiviado jus liquide sok płyn succo")
_UNTOLD = words_in(
    "nicht kein keine nie nein no non ne pas nie nahi nahin mat voy vamos vas va werde werden "
    "wird morgen manana jutro kal demain domani amanha si wenn if when se jesli agar quiero will "
    "gekauft comprado compre achete kupiłam kupiłem kharida gekocht cocinado mujhe chahiye"
)
_LONGEST = 14


def in_tongues(message: Message) -> tuple[Unsure, ...]:
    """What is told to have gone into a bin that is named, or the only one, or come out of one."""
    if not message.context.in_room or not message.has(CUES) or message.has(_UNTOLD):
        return ()
    if len(message.norms) > _LONGEST or message.asked:
        return ()
    measured = message.measured()
    called = {name.casefold(): name for name in message.context.bins}
    bins = {ref.name for ref in message.bins if ref.known and ref.name}
    bins |= {called[norm] for norm in message.norms if norm in called}
    used = [name for name in message.context.bins if name not in message.context.retired]
    if len(measured) != 1 or len(bins) > 1:
        return ()
    [amount] = measured
    days = {day.past for day in message.days}
    on = days.pop() if days else message.today
    if days or on > message.today:
        return ()
    bin = bins.pop() if bins else used[0] if len(used) == 1 else None
    if message.has(_DREW | _LIQUID) or message.liquid():
        if amount.quantity != "volume":
            return ()
        drained = Drain(volume_l=amount.value, bin=bin, on=on, rules=(RULE,))
        return (Unsure(guess=(drained,), rules=(RULE,)),)
    if bin is None:
        return ()
    made = makeup(list(message.items)) if message.items else None
    layer = Layer(
        mass_kg=amount.value if amount.quantity == "mass" else None,
        volume_l=amount.value if amount.quantity == "volume" else None,
        materials=made.shares if made else {"mixed": 1.0},
        rich=made.rich if made else None,
        bin=bin,
        on=on,
        rules=(RULE,),
    )
    return (Unsure(guess=(layer,), rules=(RULE,)),)
