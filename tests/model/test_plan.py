"""The tests of a course: by which policy each kind is marked."""

import pytest
from pydantic import ValidationError

from builder.model.plan import EXAMPLE_TEST, CourseTest
from builder.model.policy import USUAL
from builder.model.question import QUESTION_KINDS


def test_what_is_not_said_is_marked_as_usual() -> None:
    """A test that names no policy has the usual one for every kind."""
    made = CourseTest.model_validate(EXAMPLE_TEST)
    assert {kind: made.policy(kind) for kind in QUESTION_KINDS} == dict(USUAL)


def test_a_test_may_mark_otherwise() -> None:
    """Each of its settings holds for its own kind, and no other."""
    own = {"many_policy": "exact", "order_policy": "footrule", "match_policy": "exact"}
    made = CourseTest.model_validate({**EXAMPLE_TEST, **own})
    assert [made.policy(kind) for kind in QUESTION_KINDS] == [
        "exact",
        "exact",
        "footrule",
        "exact",
        "within",
        "aggregate",
        "rubric",
    ]


@pytest.mark.parametrize("setting", ["many_policy", "order_policy", "match_policy"])
def test_a_policy_that_is_not_there_is_refused(setting: str) -> None:
    """No name is taken for another."""
    with pytest.raises(ValidationError, match="Input should be"):
        CourseTest.model_validate({**EXAMPLE_TEST, setting: "by_feeling"})
