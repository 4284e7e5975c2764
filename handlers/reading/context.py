"""What a message is read with, beside its words."""

from dataclasses import dataclass
from datetime import datetime
from typing import Literal
from zoneinfo import ZoneInfo

from handlers.reading.acts import Act, Ask, Drain, Layer, Units

Subject = Literal["bran", "batch", "liquid"]
"""What of the craft the room may talk of: its starter, the making of it, what is drained."""


@dataclass(frozen=True, slots=True)
class Context:
    """All that a message is read with: nothing else decides what it means."""

    at: datetime
    """When it was sent; aware of its zone."""
    zone: ZoneInfo
    """The group's zone: it decides which day "today" is."""
    units: Units = "metric"
    bins: tuple[str, ...] = ()
    retired: tuple[str, ...] = ()
    """Those of the bins that are out of use, until they are opened again."""
    members: tuple[str, ...] = ()
    sender: str | None = None
    bot_names: tuple[str, ...] = ("pailkeeper", "bot")
    """What the bot is called when somebody turns to it."""
    after_bot: bool = False
    """It replies to the bot's words, or follows on them directly."""
    replied: bool = False
    """It replies to what the bot answered to a record of the sender's own."""
    harmed: bool = False
    """The bot's last words were of somebody who swallowed what came from a bin."""
    to_bot: bool = False
    """It is said to the bot: by its name, in reply to it, or where nobody else is."""
    on_offer: bool = False
    """A bin or a turn waits for somebody to take it."""
    taken: bool = False
    """Somebody has lately agreed to take a bin, be it on a day to come."""
    last: Act | None = None
    """The record that the talk is on: the one replied to, or that of the message just before."""
    just_told: Act | None = None
    """What the message just before told, where it was another's and the words may go on from it."""
    own_bin: str | None = None
    """The one bin that the sender keeps, where the words may go on from what another told."""
    earlier: Act | None = None
    """The sender's own last record, where others have spoken since."""
    asked: tuple[Ask, ...] = ()
    """The questions that the bot answered last, where a few words may be meant to change them."""
    asked_food: "Ask | None" = None
    """Whether some food may go in, which the sender has asked right before."""
    asked_deed: Drain | Layer | None = None
    """What another has just asked to have been done, where the words may tell that it was."""
    planned: tuple[Layer, ...] = ()
    """What the sender has told they would put in, where the words may tell that it is in."""
    planned_next: bool = False
    """Nothing else was talked of since that was planned."""
    on_reminder: bool = False
    """The sender's last record is a reminder that they set."""
    on_absence: bool = False
    """The sender's last record is an absence."""
    on_rota: bool = False
    """The sender's last record is a rota."""
    on_handover: bool = False
    """The sender's last record is an offer of a bin."""
    took: str | None = None
    """The bin that the sender has just taken over, where it answers what was said of it."""
    talk_of: Subject | None = None
    """What the room talks of, where a few words may lean on that."""
    of_bins: bool = False
    """The room has just talked of its bins: of a record, a question to the bot, or its answer."""
    in_room: bool = False
    """Said in a room, where more can be asked than the reading contract has topics for."""
    places: tuple[str, ...] = ()
    """Where the group has buried bins, as it calls these places."""
    kept: tuple[tuple[str, str], ...] = ()
    """Members, each with a bin that they keep, where somebody may be said to own one."""
