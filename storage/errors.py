"""What a person can put right, in a sentence that says how."""


class UserError(Exception):
    """Something is wrong that the person at the keyboard can put right; the message says how."""


class BookError(UserError):
    """The book cannot be used as it is."""
