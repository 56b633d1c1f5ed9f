"""Grades of a muscle tear on an image, as taught and reported.

Pollock N et al., Br J Sports Med 2014;48:1347-1351; bounds read second-hand: under 10 % or 5 cm is 1, 10 to
50 % or 5 to 15 cm is 2, over 50 % or 15 cm is 3.
"""

import pytest

from tests.content.library import content
from tests.content.taught import rows_of


@pytest.mark.parametrize(
    ("share", "grade"), [("9.9", "1"), ("10", "2"), ("49", "2"), ("50", "2"), ("50.1", "3"), ("80", "3")]
)
def test_the_share_of_the_cross_section(share: str, grade: str) -> None:
    """Exactly 10 and exactly 50 % are grade 2; one page misprints grade 3 (Pollock 2014)."""
    assert rows_of("muscle_image_grades", share) == [grade]


@pytest.mark.parametrize(("length", "grade"), [("4.9", "1"), ("5", "2"), ("15", "2"), ("15.1", "3")])
def test_the_length_of_the_signal(length: str, grade: str) -> None:
    """Exactly 5 and exactly 15 cm are grade 2 (Pollock 2014)."""
    assert rows_of("muscle_image_lengths", length) == [grade]


def test_it_is_reported_and_never_judged_by() -> None:
    """The list says that a clinician reports it, and its measures are no facts of the judge."""
    listed = content().severity.background["muscle_image_grades"]
    assert "Reported by a clinician" in (listed.note or "")
    assert {"cross_section_percent", "length_cm"} & set(content().facts.facts) == set()
