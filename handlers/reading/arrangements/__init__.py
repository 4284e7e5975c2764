"""What a group arranges: absences, keepers, turns, reminders, settings."""
