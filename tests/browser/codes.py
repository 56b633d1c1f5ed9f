"""Personal codes for the samples, made by the tool's own arithmetic."""

from builder.model.code import ALPHABET, check_character, version_of


def code_for(version: str, body: str = "3F9K2MX", versions: int = 2) -> str:
    """A whole code that belongs to a version."""
    codes = (f"{body}{letter}{check_character(body + letter)}" for letter in ALPHABET)
    return next(code for code in codes if version_of(code, versions) == version)
