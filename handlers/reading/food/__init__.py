"""What the scraps are: the things named, their kinds, and which amount is of which."""
