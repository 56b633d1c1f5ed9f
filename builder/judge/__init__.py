"""Judging: what the clinical rules say of a visit and of every option as written."""
