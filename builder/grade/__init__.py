"""Marks answers and decides, by exact fractions."""
