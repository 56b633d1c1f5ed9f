"""The wording checks on labelled questions: the half that nothing was tuned on decides."""

from __future__ import annotations

from tests.check.wording.labelled import halves
from tests.check.wording.measured import Measure, measured

LEAST_PRECISION = 0.85
LEAST_RECALL = 0.70


def test_the_untouched_half_is_told_well_enough() -> None:
    """Most of what is said is so, and most of what is so is said; the figures are printed."""
    measure = measured(halves()[1])
    print("untouched half:", *measure.lines(), sep="\n  ")
    assert measure.precision >= LEAST_PRECISION
    assert measure.recall >= LEAST_RECALL


def test_the_tuning_half_is_told_no_worse() -> None:
    """What was tuned on holds as well."""
    measure = measured(halves()[0])
    print("tuning half:", *measure.lines(), sep="\n  ")
    assert measure.precision >= LEAST_PRECISION
    assert measure.recall >= LEAST_RECALL


def test_what_is_missed_and_said_wrongly_lowers_the_figures() -> None:
    """The measure is able to fail."""
    pair = ("a", "longest_option")
    measure = Measure(found=[pair], missed=[pair], wrongly=[pair, pair, pair])
    assert (measure.precision, measure.recall) == (0.25, 0.5)
    assert measure.lines()[1] == "longest_option: 1 found, 1 missed, 3 wrongly"
