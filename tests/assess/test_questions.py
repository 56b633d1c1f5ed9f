"""What a visit yields by itself."""

from builder.assess.questions import questions_of
from tests.assess.sample import REFERRED, case, course, judged_visit


def test_a_visit_that_goes_on_yields_every_kind() -> None:
    """Session, phase, option and dose, in the order they are asked."""
    one = case("alpha", 1)
    (asked,) = questions_of(course([one]), one, (judged_visit("v1"),), alone=True)
    assert [question.shown.topic for question in asked] == ["session", "phase", "option", "dose"]


def test_a_referral_yields_no_phase() -> None:
    """Where the session stops, the phase is not asked."""
    one = case("alpha", 1)
    (asked,) = questions_of(course([one]), one, (judged_visit("v1", session=REFERRED, doses=()),), alone=True)
    assert [question.shown.topic for question in asked] == ["session", "option"]
