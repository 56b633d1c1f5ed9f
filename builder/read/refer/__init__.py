"""Referring: whether the names and values in one file hold against all the others."""
