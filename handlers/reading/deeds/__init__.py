"""What was done to a bin, each kind of record with its own reader."""
