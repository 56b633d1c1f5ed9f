"""LSAT sections 6 and 7: Bock & Lieberman 1970, Psychometrika 35:179-197.

Frequencies of the 32 answer patterns of 1,000 people each, in binary order from 00000 to 11111.
"""

from fractions import Fraction
from itertools import product

import pytest

from builder.analyse.gate import consistency, difficulty, discrimination
from builder.analyse.items import item_rest, reliability

LSAT6 = "3 6 2 11 1 1 3 4 1 8 0 16 0 3 2 15 10 29 14 81 3 28 15 80 16 56 21 173 11 61 28 298"
LSAT7 = "12 19 1 7 3 19 3 17 10 5 3 7 7 23 8 28 7 39 11 34 14 51 15 90 6 25 7 35 18 136 32 308"


def people(counts: str) -> list[list[int]]:
    """One row a person, from the frequency of each pattern."""
    patterns = product((0, 1), repeat=5)
    return [
        list(pattern)
        for pattern, count in zip(patterns, counts.split(), strict=True)
        for _ in range(int(count))
    ]


SIX, SEVEN = people(LSAT6), people(LSAT7)


def test_the_data_are_whole() -> None:
    """A thousand people each, with the printed totals from 0 to 5."""
    totals = [[sum(row) for row in rows] for rows in (SIX, SEVEN)]
    assert [len(rows) for rows in totals] == [1000, 1000]
    assert [[rows.count(at) for at in range(6)] for rows in totals] == [
        [3, 20, 85, 237, 357, 298],
        [12, 40, 114, 205, 321, 308],
    ]


@pytest.mark.parametrize(
    ("rows", "shares"),
    [(SIX, [0.924, 0.709, 0.553, 0.763, 0.870]), (SEVEN, [0.828, 0.658, 0.772, 0.606, 0.843])],
)
def test_difficulties(rows: list[list[int]], shares: list[float]) -> None:
    """The share right of each item."""
    assert [difficulty([Fraction(row[item]) for row in rows]).value for item in range(5)] == shares


@pytest.mark.parametrize(("rows", "value"), [(SIX, 0.2949971922), (SEVEN, 0.4534087354)])
def test_kr20_takes_the_variance_of_the_population(rows: list[list[int]], value: float) -> None:
    """0.295 and 0.453, as statistics packages print; the sample's variance would give 0.4542."""
    assert float(reliability(rows) or 0) == pytest.approx(value, abs=1e-10)
    assert consistency(rows).note == ""


@pytest.mark.parametrize(
    ("rows", "values"),
    [
        (SIX, [0.1128326889, 0.1531781201, 0.1727789433, 0.1444280952, 0.1215964025]),
        (SEVEN, [0.2457316499, 0.2466735767, 0.3131792534, 0.2227512541, 0.1747863009]),
    ],
)
def test_item_rest_correlations(rows: list[list[int]], values: list[float]) -> None:
    """Each item with the rest; two packages print the same to three decimals (from memory)."""
    assert [item_rest(rows, item) for item in range(5)] == pytest.approx(values, abs=1e-10)
    assert discrimination(rows, 0).value == pytest.approx(values[0])
