"""Personal codes: typed badly they are seen, typed loosely they are understood."""

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.model.code import ALPHABET, LENGTH, VERSIONS, check_character, is_code, tidy, version_of

BODIES = st.text(ALPHABET, min_size=LENGTH, max_size=LENGTH)


def whole(body: str) -> str:
    """A code with its check character."""
    return body + check_character(body)


@given(BODIES)
def test_every_single_wrong_character_is_caught(body: str) -> None:
    """At each of the nine places, each of the thirty other characters is seen."""
    code = whole(body)
    assert is_code(code)
    for place, right in enumerate(code):
        wrong = [f"{code[:place]}{letter}{code[place + 1 :]}" for letter in ALPHABET if letter != right]
        assert not any(is_code(one) for one in wrong)


@given(BODIES)
def test_every_swap_of_two_characters_is_caught(body: str) -> None:
    """Any two different characters that change places are seen, neighbours or not, the check one included."""
    code = whole(body)
    for left, right in combinations(range(LENGTH + 1), 2):
        swapped = list(code)
        swapped[left], swapped[right] = swapped[right], swapped[left]
        assert is_code("".join(swapped)) == (code[left] == code[right])


def test_a_check_that_ignored_the_place_would_miss_swaps() -> None:
    """The swaps above are hard: a plain sum of the characters lets them through."""

    def plain(body: str) -> int:
        return sum(map(ALPHABET.index, body)) % len(ALPHABET)

    assert plain("23456789") == plain("32456789")
    assert check_character("23456789") != check_character("32456789")


@pytest.mark.parametrize("code", ["222222222", "3F9K2MX7Y", "ZZZZZZZZL"])
def test_codes_stay_valid(code: str) -> None:
    """Codes that were given out once are valid for ever: the arithmetic never changes."""
    assert is_code(code)


@pytest.mark.parametrize(
    "typed",
    ["3F9K2MX7Y", "3f9k2mx7y", " 3F9K 2MX7 Y ", "3F9K-2MX7-Y", "3F9K\u20102MX7\u2011Y", "3F9K\u20132MX7\tY"],
)
def test_a_code_is_understood_however_it_is_typed(typed: str) -> None:
    """Small letters, spaces and dashes of every sort do no harm."""
    assert tidy(typed) == "3F9K2MX7Y"
    assert is_code(typed)


@pytest.mark.parametrize(
    "typed", ["", "3F9K2MX7", "3F9K2MX7YJ", "3F9K2MX7!", "0F9K2MX7J", "ßßßßßßßßß", "3F9K2MX7\nY"]
)
def test_what_is_no_code_is_refused(typed: str) -> None:
    """Too short, too long, or with a character that no code has."""
    assert not is_code(typed)


def test_characters_that_look_alike_are_not_used() -> None:
    """No zero, one, I, O or U; the number of characters is a prime, as the check needs it."""
    assert not set("01IOU") & set(ALPHABET)
    assert len(set(ALPHABET)) == len(ALPHABET) == 31


@given(BODIES, st.integers(1, len(VERSIONS)))
def test_a_code_belongs_to_one_of_the_versions(body: str, versions: int) -> None:
    """The last character before the check one fixes the version, however the code is typed."""
    code = whole(body)
    assert version_of(code, versions) in VERSIONS[:versions]
    assert version_of(code.lower(), versions) == version_of(f"2222222{body[-1]}2", versions)


def test_every_version_has_its_codes() -> None:
    """Each version is reached, and none by more than one character above its share."""
    for versions in range(1, len(VERSIONS) + 1):
        given_out = [version_of(f"2222222{last}2", versions) for last in ALPHABET]
        counts = [given_out.count(version) for version in VERSIONS[:versions]]
        assert max(counts) - min(counts) <= 1
