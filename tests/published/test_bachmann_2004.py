"""Knee: any one sign asks for an image, age among them.

Bachmann LM et al., Ann Intern Med 2004;140:121-124: 55 years or older, kneecap alone tender, head of the
fibula tender, no bend to 90 degrees, or four steps impossible both times.
"""

from decimal import Decimal

import pytest

from builder.judge.space import Value
from tests.content.clients import HOT, client, seen
from tests.content.taught import rows_of

SIGNS = ("patella_tender", "fibular_head_tender", "cannot_bend_knee_to_90", "cannot_take_four_steps")
KNEE: dict[str, Value] = {"injury": "sprain", "tissue": "ligament", "region": "knee"}


@pytest.mark.parametrize("sign", SIGNS)
def test_one_sign_is_enough(sign: str) -> None:
    """Each sign alone refers the same day (Bachmann 2004)."""
    assert seen(client(3, HOT, KNEE, {sign: "yes"})).session.urgency == "same_day"


@pytest.mark.parametrize(("age", "urgency"), [(54, None), (55, "same_day"), (56, "same_day")])
def test_fifty_five_counts(age: int, urgency: str | None) -> None:
    """Exactly 55 counts; pages that print over 55 are wrong (Bachmann 2004)."""
    assert seen(client(3, HOT, KNEE, {"age": Decimal(age)})).session.urgency == urgency
    assert rows_of("ottawa_knee", str(age)) == (["age"] if urgency else [])


def test_with_no_sign_the_rule_is_negative() -> None:
    """At 24 with every sign answered no, the rule asks for no image (Bachmann 2004)."""
    assert seen(client(3, HOT, KNEE)).session.answer == "go_on"
