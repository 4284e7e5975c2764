"""What sounds like a record and is none, or had better be asked about."""
