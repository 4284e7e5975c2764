"""What the whole message adds to its records: lots shared out, told apart, told in one breath."""
