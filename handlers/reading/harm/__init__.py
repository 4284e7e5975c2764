"""Harm that is told of or asked about."""
