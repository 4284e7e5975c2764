"""`python -m bot`."""

import gc
import sys

from bot.cli import carry_out, parsed

if __name__ == "__main__":
    gc.disable()  # what is imported stays: looking through it meanwhile takes a tenth longer
    args = parsed(sys.argv[1:])
    gc.freeze()
    gc.enable()
    sys.exit(carry_out(args))
