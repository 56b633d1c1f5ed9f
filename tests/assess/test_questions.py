"""What a visit yields by itself."""

from builder.assess.questions import questions_of
from tests.assess.sample import REFERRED, case, course, judged_visit


def test_a_visit_that_goes_on_yields_every_kind() -> None:
    """Session, phase, option and dose, in the order they are asked."""
    one = case("alpha", 1)
    (asked,) = questions_of(course([one]), one, (judged_visit("v1"),), alone=True)
    assert [question.shown.topic for question in asked] == ["session", "phase", "option", "dose"]


def test_a_referral_is_asked_about_once() -> None:
    """Where the session stops, no phase is asked, and in a test no option: the first question told it all."""
    one, stopped = case("alpha", 1), judged_visit("v1", session=REFERRED, doses=())
    for alone, topics in ((False, ["session", "option"]), (True, ["session"])):
        (asked,) = questions_of(course([one]), one, (stopped,), alone=alone)
        assert [question.shown.topic for question in asked] == topics
