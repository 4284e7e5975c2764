"""When: days, stretches of days, hours and zones."""
