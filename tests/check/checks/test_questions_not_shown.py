"""Questions that have no place yet are counted."""

from dataclasses import replace

from builder.check.checks import questions_not_shown
from builder.model.plan import EXAMPLE_TEST, CourseTest
from tests.check.wording.written import course_of, question


def test_how_many_there_are_is_said_once() -> None:
    """One line for all of them, in any language; none where there are none."""
    one, two = (question("What?", "This", "That", name=name) for name in ("one", "two"))
    (first,) = questions_not_shown.check(course_of(one))
    (both,) = questions_not_shown.check(course_of(one, two, language="nb"))
    assert first.message.startswith("1 author-written question is")
    assert both.message.startswith("2 author-written questions are")
    assert list(questions_not_shown.check(course_of())) == []


def test_a_question_that_a_lesson_places_is_not_counted() -> None:
    """Placed is shown; the other one is still counted."""
    one, two = (question("What?", "This", "That", name=name) for name in ("one", "two"))
    (left,) = questions_not_shown.check(course_of(one, two, lesson="[question two]\n"))
    assert left.message.startswith("1 author-written question is")
    assert list(questions_not_shown.check(course_of(two, lesson="[question two]\n"))) == []


def test_a_question_that_a_test_draws_from_is_not_counted() -> None:
    """It has its place, though no page shows it before the test."""
    evidence = course_of(question("What?", "This", "That", name="one"))
    drawn = CourseTest.model_validate({**EXAMPLE_TEST, "questions": ["one"]})
    file = evidence.course.file.model_copy(update={"tests": (drawn,)})
    whole = replace(evidence.course, file=file)
    assert list(questions_not_shown.check(replace(evidence, course=whole))) == []
