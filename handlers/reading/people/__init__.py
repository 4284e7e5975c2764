"""Who: members named in the words, and whose doing it was."""
