"""A question of a test stands in no lesson."""

from builder.check.checks import test_question_shown as subject
from tests.check.wording.written import course_of, question

ASKED = question("What?", "This", "That")


def test_only_a_question_of_a_test_is_found_at_its_line() -> None:
    """The use that is written in the question decides."""
    kept = ASKED.model_copy(update={"use": "test"})
    (one,) = subject.check(course_of(kept, lesson="Words.\n\n[question asked]\n"))
    assert (one.file, one.line) == ("lessons/cold.md", 3)
    assert list(subject.check(course_of(ASKED, lesson="[question asked]\n"))) == []
    assert list(subject.check(course_of(kept, lesson="[card asked]\n"))) == []
