"""A case that a lesson places needs a page."""

from dataclasses import replace

from builder.check.checks.case_without_page import check
from builder.check.evidence import Evidence
from tests.check.leak.site import COURSE

TEXT = "Words.\n\n[case practised]\n\n[case beta]\n"


def test_a_case_of_no_set_is_found_at_its_line() -> None:
    """A practised case is fine; a tested one is for another check to say."""
    assert list(check(Evidence(replace(COURSE, lessons={"first": TEXT}), {}))) == []
    file = COURSE.file.model_copy(update={"practice": ()})
    (one,) = check(Evidence(replace(COURSE, file=file, lessons={"first": TEXT}), {}))
    assert (one.file, one.line) == ("lessons/first.md", 3)
    assert "`practised`" in one.message
