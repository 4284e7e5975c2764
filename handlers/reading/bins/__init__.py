"""Which bin: its name in the words, and the name that a new one is given."""
