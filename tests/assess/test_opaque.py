"""Names that tell nothing."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.assess.opaque import Opaque, canonical, edition_of, shortened
from builder.fault import Fault
from tests.assess.sample import SECRET


def test_a_token_follows_from_secret_scope_and_parts() -> None:
    """The same in, the same out; any of the three changed, another token."""
    token = Opaque(SECRET, "final|A").token("question", "alpha")
    assert token == Opaque(SECRET, "final|A").token("question", "alpha")
    others = {
        Opaque(SECRET[::-1], "final|A").token("question", "alpha"),
        Opaque(SECRET, "final|B").token("question", "alpha"),
        Opaque(SECRET, "final|A").token("question", "beta"),
        Opaque(SECRET, "final|A").token("questional", "pha"),
        Opaque(SECRET, "final|A").token("option", "alpha"),
    }
    assert token not in others
    assert len(others) == 5


def test_a_short_secret_is_refused() -> None:
    """A secret that could be tried out is a fault with a remedy."""
    with pytest.raises(Fault, match="shorter than 16 bytes"):
        Opaque(b"secret", "final|A")


@given(st.lists(st.text("ab", min_size=8, max_size=8), unique=True, max_size=40))
def test_ids_stay_apart(tokens: list[str]) -> None:
    """However alike the tokens begin, every id is its own, of one length and with its letter."""
    ids = list(shortened("q", tokens).values())
    assert len(set(ids)) == len(tokens)
    assert {len(one) for one in ids} <= {6, 7, 8, 9}
    assert all(one.startswith("q") for one in ids)


def test_ids_are_no_longer_than_they_must() -> None:
    """Five characters are enough until two begin alike."""
    assert shortened("o", ["abcdefg", "abcdeff"]) == {"abcdefg": "oabcdefg", "abcdeff": "oabcdeff"}
    assert shortened("o", ["abcdefg", "bbcdeff"]) == {"abcdefg": "oabcde", "bbcdeff": "obbcde"}


def test_an_edition_is_eight_characters_of_base32() -> None:
    """SHA-256 of `abc` (FIPS 180-4) begins ba7816bf 8f, in base32 lower case XJ4BNP4P."""
    assert edition_of("abc") == "xj4bnp4p"


def test_canonical_text_has_one_form() -> None:
    """Order of keys and spaces do not matter, letters stay as they are."""
    assert canonical({"b": [1, None], "a": "é"}) == '{"a":"é","b":[1,null]}'
