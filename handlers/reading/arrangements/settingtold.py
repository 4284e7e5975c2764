"""A setting told by the form of its words alone, whatever it is a setting of."""

from handlers.reading.acts import Set
from handlers.reading.arrangements.craftsettings import craft_setting, measured_setting
from handlers.reading.arrangements.reminderdays import CUES as OF_WEEKDAYS
from handlers.reading.arrangements.reminderdays import reminder_days
from handlers.reading.arrangements.sethours import CUES as OF_HOURS
from handlers.reading.arrangements.sethours import hours_set
from handlers.reading.arrangements.settings import setting_of
from handlers.reading.arrangements.turntaking import turns_set
from handlers.reading.arrangements.wishes import (
    LANGUAGES,
    MEASURES,
    asked_by_name,
    is_of_old,
    is_to_bot,
    pounds_of,
    set_by_call,
)
from handlers.reading.calendar.zones import zone_named
from handlers.reading.doubts.jests import is_jest
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.vocabulary import words_in


def _measures(message: Message) -> bool:
    return any(a.quantity in MEASURES for a in message.amounts)


def setting_told(message: Message) -> Set | None:
    """What is to be set, by the form of its words alone."""
    if is_of_old(message) or is_jest(message):
        return None
    if _measures(message):
        by_measures = measured_setting(message)
        return (
            Set(what=by_measures[0], value=by_measures[1], rules=("a setting",))
            if by_measures
            else None
        )
    found = setting_of(plain_text(message), to_bot=is_to_bot(message)) or set_by_call(message)
    if found and found[0] in ("quiet before", "quiet after"):
        found = hours_set(message) or found  # both ends may be said
    if found == ("units", "pounds"):
        found = "units", pounds_of(message)
    found = found or craft_setting(message) or hours_set(message)
    found = found or zone_named(message) or turns_set(message)
    found = found or reminder_days(message) or asked_by_name(message)
    return None if found is None else Set(what=found[0], value=found[1], rules=("a setting",))


OF_SETTINGS = (
    words_in(
        "unit units metric imperial us american british kilos kilograms kg grams litres "
        "liters pounds lbs ounces oz pints quarts gallons zone timezone "
        "clock "
        "quiet silent night reminder reminders remind nagging habit dose dosing dosage doses "
        "spoon spoons weight dilution ferment fermenting fermentation planting soil "
        "calendar recipe nitrogen trench trenches rota roster rotation per "
        "keepers keeping keeps"
    )
    | OF_HOURS
    | OF_WEEKDAYS
    | LANGUAGES
)
