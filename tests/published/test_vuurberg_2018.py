"""Ankle sprain: the drawer test is a clinician's, and tells most on day 4 to 5.

Vuurberg G et al., Br J Sports Med 2018;52:956: the test is best delayed by four to five days. That a loose
ankle counts as severe is our own default.
"""

import pytest

from builder.judge.space import Value
from tests.content.clients import CALM, client
from tests.content.library import content, judge

SPRAIN: dict[str, Value] = {"injury": "sprain", "tissue": "ligament", "region": "ankle", "range": "near_full"}


@pytest.mark.parametrize(("loose", "grades"), [("yes", ("severe",)), ("no", ("mild",))])
@pytest.mark.parametrize("hours", [24, 108, 336])
def test_a_loose_ankle_is_severe_on_any_day(loose: str, grades: tuple[str, ...], hours: int) -> None:
    """What the clinician found counts whenever it is known (own default)."""
    values = client(hours, CALM, SPRAIN, {"drawer_loose": loose})
    assert judge().frame(values, "mild", None).severity.possible == grades


def test_the_test_is_reported_and_its_day_is_told() -> None:
    """The question and the taught list both say day 4 to 5, and that a clinician did it (Vuurberg 2018)."""
    fact = content().facts.facts["drawer_loose"]
    assert fact.reported
    assert "clinician" in (fact.question or "")
    assert "day 4 to 5" in (fact.question or "")
    listed = content().severity.background["ankle_sprain_grades"]
    assert "day 4 to 5" in (listed.note or "")
    assert "vuurberg2018" in listed.source
