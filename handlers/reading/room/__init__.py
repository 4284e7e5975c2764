"""What is between neighbours, and what is for the bot amid their talk."""
