"""The draw `draw_sha256_counter_1`: fixed for ever, and fair."""

import hashlib
from collections import Counter
from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.assess.draw import METHOD, WORDS, Draw

GOLDEN_NUMBERS = [183, 747, 746, 971, 775, 409, 850, 792]
GOLDEN_ORDER = "fagdbech"


def block(seed: str, number: int) -> int:
    """Block `number` of a seed, worked out from the definition."""
    digest = hashlib.sha256(f"draw_sha256_counter_1|{seed}|{number}".encode()).hexdigest()
    return int(digest[:16], 16)


def test_the_draw_never_changes() -> None:
    """These values were drawn once and must come for ever: published versions rest on them."""
    draw = Draw("lanternfall")
    assert METHOD == "draw_sha256_counter_1"
    assert [draw.below(1000) for _ in range(8)] == GOLDEN_NUMBERS
    assert Draw("lanternfall").shuffled("abcdefgh") == list(GOLDEN_ORDER)


def test_numbers_follow_the_definition() -> None:
    """A number below b is the next block modulo b."""
    draw = Draw("seed")
    assert [draw.below(7) for _ in range(3)] == [block("seed", number) % 7 for number in range(3)]


def test_blocks_beyond_the_last_multiple_are_passed_over(monkeypatch: pytest.MonkeyPatch) -> None:
    """A block that would make small numbers likelier is not used; the last one that may be used is."""
    blocks = iter([WORDS - 1, WORDS - 2])
    monkeypatch.setattr(Draw, "_next", lambda _: next(blocks))
    assert Draw("seed").below(3) == (WORDS - 2) % 3


@given(st.text(), st.lists(st.integers(), max_size=30))
def test_a_shuffle_keeps_every_item(seed: str, items: list[int]) -> None:
    """Nothing is lost or doubled, and the list given is not touched."""
    before = list(items)
    assert Counter(Draw(seed).shuffled(items)) == Counter(items)
    assert items == before


def test_every_order_is_about_as_likely() -> None:
    """Of 6,000 drawn orders of three the six come about 1,000 times each (chi-square, 5 degrees, 0.1 %)."""
    draw = Draw("fair")
    counts = Counter(tuple(draw.shuffled("abc")) for _ in range(6000))
    chi_square = sum((counts[order] - 1000) ** 2 / 1000 for order in permutations("abc"))
    assert chi_square < 20.515
