"""A test draws from questions that are kept for tests."""

from dataclasses import replace

from builder.check.checks.pool_question_use import check
from builder.check.evidence import Evidence
from builder.model.library import Course
from builder.model.plan import CourseTest
from tests.assess.sample import a_test, case, course
from tests.check.wording.written import question

ASKED = question("What?", "This", "That")


def of(use: str) -> Course:
    """A course whose test draws from one question of this use."""
    drawn = CourseTest.model_validate(a_test(["alpha"], questions=[ASKED.id]))
    plain = course([case("alpha")])
    kept = ASKED.model_copy(update={"use": use})
    return replace(plain, file=plain.file.model_copy(update={"tests": (drawn,)}), questions={ASKED.id: kept})


def test_a_practice_question_in_a_pool_is_found_in_the_list() -> None:
    """The place is its entry in the course file; a question for a test is fine."""
    (one,) = check(Evidence(of("practice"), {}))
    assert (one.file, one.path) == ("course.yml", ("tests", 0, "questions", 0))
    assert list(check(Evidence(of("test"), {}))) == []
