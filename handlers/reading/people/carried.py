"""What a member brought and somebody else put in is one layer, of whoever put it in."""

from dataclasses import replace

from handlers.reading.acts import Act, Layer
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text, with_people
from handlers.reading.words.late import Late

_BRINGS = (
    "brought|came|turned up|appeared|showed up|dropped|delivered|left|handed|gave|fetched|sent|"
    "collected"
)
_BROUGHT = frozenset(deed.split()[0] for deed in _BRINGS.split("|"))
"""Words without one of which nobody brought anything."""
_PUT = r"(?:put|chucked|tipped|added|threw|binned|emptied|dropped|popped|stuck|bunged|shoved|slung)"
_PUT_BY_US = Late(
    rf"\bqmember (?:just |also |kindly |has |have |had )*(?:{_BRINGS})\b(?:(?! qbin).){{1,80}}"
    r"(?:\b(?:and|so|then)\b|[,;.]) (?:so |then )?(?:i|we)(?: have| 've| just| then| all)* "
    rf"{_PUT} (?:it|them|the (?:whole )?(?:lot|thing|load)|half|all|everything|that|those|these)\b|"
    r"\bqmember (?:brought|came|turned up|left|gave)\b(?:(?! qbin).){1,80}"
    rf"\bwhich (?:i|we) {_PUT} in(?:to)?\b"
)


def put_in_by_us(acts: list[Act], message: Message) -> list[Act]:
    """ "Bo brought 2 kg of plums and I put them in green": the sender's, and told but once."""
    if not (message.members and message.has(_BROUGHT)):
        return acts
    layers = [act for act in acts if isinstance(act, Layer)]
    if not layers or _PUT_BY_US.search(with_people(message, plain_text(message))) is None:
        return acts
    first, last = layers[0], layers[-1]
    if len({layer.bin for layer in layers}) > 1 or len(layers) > 2:
        return [replace(act, member=None) if isinstance(act, Layer) else act for act in acts]
    again = last.mass_kg is not None or last.volume_l is not None
    told = last if again else replace(last, mass_kg=first.mass_kg, volume_l=first.volume_l)
    one = replace(told, materials=first.materials, rich=first.rich, member=None)
    return [one, *(act for act in acts if not isinstance(act, Layer))]
