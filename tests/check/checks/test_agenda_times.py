"""The agenda's items follow each other without overlap."""

from typing import Any

import pytest

from builder.check.checks.agenda_times import check
from tests.check.small_course import evidence


def item(day: int, start: str, end: str, title: str) -> dict[str, Any]:
    """One stretch of the agenda."""
    return {"day": day, "start": start, "end": end, "title": title, "kind": "lecture"}


MORNING = [
    item(1, "09:00", "10:30", "Phases"),
    item(1, "10:30", "10:45", "Break"),
    item(2, "09:00", "10:00", "Tests"),
]


def told(*agenda: dict[str, Any]) -> list[tuple[tuple[str | int, ...], str]]:
    """Where and what is to fix in an agenda."""
    return [(one.path, one.message) for one in check(evidence(agenda=list(agenda)))]


def test_items_that_follow_each_other_are_silent() -> None:
    """One may begin at the minute at which another ends, and another day begins anew, in any order."""
    assert told(*MORNING) == []
    assert told(*MORNING[::-1]) == []


@pytest.mark.parametrize(
    ("agenda", "found"),
    [
        (
            [*MORNING, item(1, "10:44", "12:00", "Wraps")],
            [(("agenda", 3, "start"), "`Wraps` begins before `Break` has ended at 10:45.")],
        ),
        (
            [item(1, "10:00", "11:00", "Wraps"), *MORNING],
            [
                (("agenda", 0, "start"), "`Wraps` begins before `Phases` has ended at 10:30."),
                (("agenda", 2, "start"), "`Break` begins before `Wraps` has ended at 11:00."),
            ],
        ),
        (
            [
                item(1, "09:00", "12:00", "Long"),
                item(1, "09:30", "09:40", "Short"),
                item(1, "11:00", "12:00", "Late"),
            ],
            [
                (("agenda", 1, "start"), "`Short` begins before `Long` has ended at 12:00."),
                (("agenda", 2, "start"), "`Late` begins before `Long` has ended at 12:00."),
            ],
        ),
        ([item(1, "10:00", "09:00", "Back")], [(("agenda", 0), "`Back` ends at 09:00, before it begins.")]),
        ([item(1, "10:00", "10:00", "None")], [(("agenda", 0), "`None` ends at 10:00, before it begins.")]),
    ],
)
def test_overlapping_and_backward_items_are_told(
    agenda: list[dict[str, Any]], found: list[tuple[tuple[str | int, ...], str]]
) -> None:
    """Wherever the two stand in the list, the one that begins later is to move."""
    assert told(*agenda) == found


def test_the_remedy_says_why() -> None:
    """Overlapping minutes are the reason, and the file is the course's."""
    (found,) = check(evidence(agenda=[item(1, "09:00", "10:00", "A"), item(1, "09:30", "10:30", "B")]))
    assert found.file == "course.yml"
    assert found.remedy == "Move one of them: overlapping minutes cannot be counted twice."
