"""A bruised muscle graded by the range left, against the other side.

Italian society for muscles, ligaments and tendons, Muscles Ligaments Tendons J 2013 (PMC3940495), read
second-hand: more than half mild, between half and a third moderate, under a third severe. Exactly half as
moderate and the window of 12 to 72 hours are our own defaults.
"""

from decimal import Decimal

import pytest

from builder.judge.space import Value
from builder.model.tables import Severity
from tests.content.clients import client
from tests.content.library import content, judge


def graded(
    hours: int, found: dict[str, Value], declared: Severity | None = "mild"
) -> tuple[tuple[str, ...], str | None]:
    """The possible grades of a bruised calf, and the table that gave them."""
    values = client(hours, {"region": "calf", "pain_out_of_proportion": "no", **found})
    severity = judge().frame(values, declared, None).severity
    return severity.possible, severity.table


@pytest.mark.parametrize(
    ("left", "grade"),
    [("full", "mild"), ("near_full", "mild"), ("half", "moderate"), ("little", "severe")],
)
def test_the_grade_follows_the_range_left(left: str, grade: str) -> None:
    """More than half is mild, about half moderate, very little severe (ISMuLT 2013)."""
    assert graded(24, {"range": left}) == ((grade,), "any_contusion")


@pytest.mark.parametrize(
    ("percent", "grade"),
    [(51, "mild"), (50, "moderate"), (49, "moderate"), (34, "moderate"), (33, "severe"), (10, "severe")],
)
def test_a_measured_range_follows_the_published_bounds(percent: int, grade: str) -> None:
    """Over 50 % mild, 50 % and 34 % moderate, 33 % severe (ISMuLT 2013; half: own default)."""
    assert graded(24, {"range": "near_full", "range_percent": Decimal(percent)})[0] == (grade,)


def test_the_table_only_makes_a_declared_grade_worse() -> None:
    """A severe bruise with much range left stays severe (own default: the worse of the two counts)."""
    assert graded(24, {"range": "full"}, "severe")[0] == ("severe",)


def test_the_thigh_has_its_own_table() -> None:
    """By the bend of the knee, not by range (Ryan 1991 before ISMuLT 2013)."""
    assert graded(24, {"region": "thigh", "knee_flexion": Decimal(100)})[1] == "thigh_contusion"


def test_the_table_names_its_source_and_what_is_ours() -> None:
    """The source, that it was read second-hand, and that the window is our own."""
    table = content().severity.tables["any_contusion"]
    assert {"ismult2013", "own_default"} <= set(table.source)
    assert "second-hand" in (table.note or "")
    assert "second-hand" in content().references.sources["ismult2013"].cite
