"""Visits follow each other in time, and a second injury is not forgotten."""

from typing import Any

import pytest

from builder.check.checks.visit_times import check
from builder.check.evidence import Finding
from tests.check.small_course import evidence
from tests.judge.small import case


def found(*visits: dict[str, Any]) -> list[Finding]:
    """What is to fix in a case with these visits."""
    return list(check(evidence(case(*visits))))


@pytest.mark.parametrize(
    "visits",
    [
        [{}],
        [{}, {"since_injury": "5 days"}],
        [{}, {}],
        [{}, {"since_injury": "5 days", "since_reinjury": "5 days"}],
        [
            {},
            {"since_injury": "5 days", "since_reinjury": 0},
            {"since_injury": "6 days", "since_reinjury": "1 day"},
        ],
    ],
)
def test_visits_in_order_are_silent(visits: list[dict[str, Any]]) -> None:
    """Each at the time of the one before or later, with what was known then."""
    assert found(*visits) == []


@pytest.mark.parametrize(
    ("visits", "path", "message", "remedy"),
    [
        (
            [{"since_injury": "5 days"}, {"since_injury": "4 days"}],
            ("visits", 1, "since_injury"),
            "This visit lies before the one above it.",
            "Put the visits in the order of their days.",
        ),
        (
            [{"since_injury": "5 days", "since_reinjury": "6 days"}],
            ("visits", 0, "since_reinjury"),
            "The second injury lies before the first.",
            "Correct one of the two times.",
        ),
        (
            [{"since_injury": "5 days", "since_reinjury": "1 day"}, {"since_injury": "20 days"}],
            ("visits", 1, "since_injury"),
            "The visit before knows of a second injury, and this one counts from the first.",
            "Add `since_reinjury`: the clock runs from the latest injury.",
        ),
    ],
)
def test_what_cannot_be_is_told(
    visits: list[dict[str, Any]], path: tuple[str | int, ...], message: str, remedy: str
) -> None:
    """A forgotten second injury would make a fresh one look healed."""
    assert found(*visits) == [Finding("cases/bruise.yml", path, message, remedy)]
