"""Personal codes: eight characters and a check character that tie a participant to a version."""

from __future__ import annotations

from unicodedata import normalize

ALPHABET = "23456789ABCDEFGHJKLMNPQRSTVWXYZ"
LENGTH = 8
VERSIONS = "ABCDEF"

# What may stand between the characters of a code: spaces, dashes, points, quotes, and what cannot be seen.
DASHES = "-\u00ad\u2010\u2011\u2012\u2013\u2014\u2015\u2212"
BETWEEN = f" \t{DASHES}\u200b\u200c\u200d\u2060\ufeff.,:;_/'\"\u00b7\u2018\u2019\u201c\u201d"
# Letters that are in no code, each with the one it is taken for: alike in print, Cyrillic, Greek.
ALIKE = dict(
    zip(
        "01OIU|"
        "\u0410\u0412\u0415\u041a\u041c\u041d\u0420\u0421\u0422\u0425\u0423\u0405\u0408"
        "\u0391\u0392\u0395\u0396\u0397\u039a\u039c\u039d\u03a1\u03a4\u03a5\u03a7",
        "QLQLVLABEKMHPCTXYSJABEZHKMNPTYX",
        strict=True,
    )
)
_TIDY = str.maketrans({**dict.fromkeys(BETWEEN), **ALIKE})


def check_character(body: str) -> str:
    """The check character of eight code characters.

    A weighted sum modulo 31, a prime: every single wrong character and every swap of two is caught.
    """
    total = sum(weight * ALPHABET.index(letter) for weight, letter in enumerate(body, start=2))
    return ALPHABET[total % len(ALPHABET)]


def tidy(typed: str) -> str:
    """A typed or pasted code in capitals, without what stands between; look-alikes are told apart."""
    return normalize("NFKC", typed).upper().translate(_TIDY)


def is_code(typed: str) -> bool:
    """Whether this is a whole personal code with the right check character."""
    code = tidy(typed)
    known = len(code) == LENGTH + 1 and all(letter in ALPHABET for letter in code)
    return known and check_character(code[:LENGTH]) == code[LENGTH]


def version_of(code: str, versions: int) -> str:
    """The version a code belongs to: its eighth character counts around the versions."""
    return VERSIONS[ALPHABET.index(tidy(code)[LENGTH - 1]) % versions]
