"""Lengths of home study by the published formulas; the loads are ours, worked out by hand."""

from decimal import Decimal
from fractions import Fraction

import pytest

from builder.model.exact import places
from builder.model.home_study import StudyLoad, accounting_credit, least_questions, study_lengths
from builder.model.hours import study_minutes

LOADS = [
    ((24_000, 0, 20, 3), ("2.000", "2.400", "3.406", "1.949"), ("2", "2.4", "3", "2", "1")),
    ((12_000, 0, 10, 2), ("1.000", "1.200", "1.703", "0.923"), ("1", "1.2", "1.5", "1", "0")),
    ((12_000, 60, 10, 3), ("2.000", "2.200", "2.903", "2.156"), ("2", "2.2", "2.5", "2.25", "2")),
    ((6_000, 0, 5, 2), ("0.500", "0.600", "0.851", "0.527"), ("0.5", "0.6", "0.5", "0.5", "0")),
]


def load(words: int, media: int, questions: int, difficulty: int) -> StudyLoad:
    """What there is to study."""
    return StudyLoad(words, Fraction(media), questions, Decimal(difficulty))


@pytest.mark.parametrize(("given", "exact", "credit"), LOADS)
def test_the_formulas_side_by_side(
    given: tuple[int, int, int, int], exact: tuple[str, ...], credit: tuple[str, ...]
) -> None:
    """NCBTMB, a board for animals, NASBA, Mergener (Am J Pharm Educ 1991;55:263-6); cut to three places."""
    told = study_lengths(load(*given))
    assert [places(one.exact, 3) for one in told] == [*exact, exact[-1]]
    assert [one.credit for one in told] == [Fraction(one) for one in credit]


@pytest.mark.parametrize(
    ("words", "questions", "difficulty", "minutes"),
    [
        (24_000, 20, "3", "116.964"),
        (12_000, 10, "2", "55.422"),
        (12_000, 10, "3", "69.372"),
        (6_000, 5, "2", "31.626"),
    ],
)
def test_minutes_by_mergener(words: int, questions: int, difficulty: str, minutes: str) -> None:
    """0.9 x (-22.3 + 0.00209 words + 2.78 questions + 15.5 difficulty), in minutes (Mergener 1991)."""
    assert study_minutes(words, questions, Decimal(difficulty)) == Decimal(minutes)


@pytest.mark.parametrize(("credit", "scored", "review"), [("1", 5, 3), ("0.5", 3, 2), ("1.5", 8, 5)])
def test_the_least_questions(credit: str, scored: int, review: int) -> None:
    """One credit asks five scored and three review questions, half a credit three and two (NASBA)."""
    assert least_questions(Fraction(credit)) == (scored, review)


def test_media_count_by_the_minute() -> None:
    """An hour of film is an hour, whatever the formula says of words (NCBTMB, NASBA)."""
    film, none = load(0, 60, 0, 3), load(0, 0, 0, 3)
    assert accounting_credit(film) - accounting_credit(none) == Fraction(60, 50)
    assert study_lengths(film)[0].exact == 1
