"""Personal codes: eight characters and a check character that tie a participant to a version."""

from __future__ import annotations

ALPHABET = "23456789ABCDEFGHJKLMNPQRSTVWXYZ"
LENGTH = 8
VERSIONS = "ABCDEF"


def check_character(body: str) -> str:
    """The check character of eight code characters.

    A weighted sum modulo 31, a prime: every single wrong character and every swap of two is caught.
    """
    total = sum(weight * ALPHABET.index(letter) for weight, letter in enumerate(body, start=2))
    return ALPHABET[total % len(ALPHABET)]


def tidy(typed: str) -> str:
    """A typed code without spaces and dashes, in capitals."""
    return "".join(letter for letter in typed.upper() if letter not in " -\u2010\u2011\u2013\t")


def is_code(typed: str) -> bool:
    """Whether this is a whole personal code with the right check character."""
    code = tidy(typed)
    known = len(code) == LENGTH + 1 and all(letter in ALPHABET for letter in code)
    return known and check_character(code[:LENGTH]) == code[LENGTH]


def version_of(code: str, versions: int) -> str:
    """The version a code belongs to: its eighth character counts around the versions."""
    return VERSIONS[ALPHABET.index(tidy(code)[LENGTH - 1]) % versions]
