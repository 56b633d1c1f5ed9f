"""Checking: what an author must mend, each with its place and remedy."""
