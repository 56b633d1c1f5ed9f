"""Options that share a value."""

from builder.check.checks import overlapping_numbers
from tests.check.wording.written import course_of, question, told


def test_the_later_option_is_told() -> None:
    """Once, however many it overlaps with."""
    asked = question("How long?", "1 to 20 minutes", "5 to 30 minutes", "10 minutes", "2 hours")
    found = list(overlapping_numbers.check(course_of(asked)))
    assert [one.path[2] for one in found] == [1, 2]
    assert found[0].message == "“1 to 20 minutes” and “5 to 30 minutes” share a value."


def test_apart_is_silent() -> None:
    """So are options without numbers."""
    assert told(overlapping_numbers, "How long?", "1 to 5", "6 to 10", "as long as it takes") == []
