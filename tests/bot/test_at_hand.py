"""What lasts as long as the bot is kept out of the garbage collector's way."""

import gc

from bot.run import at_hand


def test_a_full_collection_has_little_to_look_through() -> None:
    gc.collect()
    before = len(gc.get_objects())
    try:
        at_hand()
        assert len(gc.get_objects()) < before / 100
    finally:
        gc.unfreeze()
