"""Options that stand for other options."""

from builder.check.checks import all_or_none
from tests.check.wording.written import course_of, question


def test_each_such_option_is_told_where_it_stands() -> None:
    """Right or wrong, it is told at its own place."""
    found = list(all_or_none.check(course_of(question("When?", "Now", "All of these", "None of the above"))))
    assert [one.path[2] for one in found] == [1, 2]
    assert found[0].message == "“All of these” stands for other options."


def test_options_of_their_own_are_silent() -> None:
    """The words alone are no fault."""
    assert list(all_or_none.check(course_of(question("Where?", "Above the knee", "All round", "None")))) == []
