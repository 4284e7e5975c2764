"""How it is said that one did as another has just told: "same here", "me too", "ditto"."""

from handlers.reading.words.vocabulary import words_in

LED = r"^(?:(?:and|oh|yes|yep|yeah|ok|,) )*"
"""What may stand before it."""
LIKEWISE = (
    r"(?:(?:the )?same (?:again )?(?:here|(?:for|from|with) (?:me|us|mine))|"
    r"(?:me|us|mine|ours) (?:too|as well|also)|ditto(?: (?:here|for (?:me|us)))?|likewise)"
)
CUES = words_in("same too also well ditto likewise")
"""Words of which one stands in it."""
