"""The identity of a question, and what its visible part may hold."""

from dataclasses import fields

from builder.assess.question import Judged, Shown
from builder.assess.questions import questions_of
from tests.assess.sample import case, course, judged_visit


def test_identity_tells_questions_of_a_case_apart() -> None:
    """No two questions of one case share an identity."""
    one = case("alpha")
    visits = questions_of(course([one]), one, (judged_visit("v1"), judged_visit("v2")), alone=True)
    identities = [question.shown.identity for visit in visits for question in visit]
    assert len(set(identities)) == len(identities) == 8


def test_the_two_parts_share_no_field() -> None:
    """What may be seen and what is right have nothing in common by which one could carry the other."""
    assert {one.name for one in fields(Shown)}.isdisjoint(one.name for one in fields(Judged))
