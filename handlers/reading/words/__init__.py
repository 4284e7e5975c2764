"""The words of a message and the lists that know them: what everything else is read from."""
