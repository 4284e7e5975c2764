"""How much: numbers, units, vessels, and the amounts that they make together."""
