"""Lengths of home study: laws that hold whatever there is to study."""

from decimal import Decimal
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from builder.model.home_study import StudyLoad, study_lengths

LOADS = st.builds(
    StudyLoad,
    st.integers(0, 100_000),
    st.integers(0, 600).map(Fraction),
    st.integers(0, 200),
    st.decimals(1, 5, places=1),
)


@given(LOADS)
def test_more_to_study_is_never_shorter(load: StudyLoad) -> None:
    """More words, film, questions or difficulty never give fewer hours by any formula."""
    more = StudyLoad(
        load.words + 500, load.media_minutes + 5, load.questions + 1, load.difficulty + Decimal("0.5")
    )
    assert all(
        one.exact <= other.exact and one.credit <= other.credit
        for one, other in zip(study_lengths(load), study_lengths(more), strict=True)
    )


@given(LOADS)
def test_nothing_is_credited_that_was_not_worked_out(load: StudyLoad) -> None:
    """A credit is never more than an eighth of an hour above what the formula gives, and never negative."""
    assert all(0 <= one.credit <= one.exact + Fraction(1, 8) for one in study_lengths(load))
