"""Time that serves no objective."""

from builder.check.checks.agenda_without_objective import check
from tests.check.small_course import evidence

ITEM = {"day": 1, "start": "09:00", "end": "10:00", "title": "Cold", "kind": "lecture"}


def test_what_is_taught_for_nothing_is_told() -> None:
    """A lecture and hands-on work; not a break, and not what names an objective."""
    agenda = [ITEM, {**ITEM, "kind": "break"}, {**ITEM, "objectives": ["one"]}, {**ITEM, "kind": "hands_on"}]
    found = list(check(evidence(agenda=agenda)))
    assert [one.path for one in found] == [("agenda", 0), ("agenda", 3)]
    assert found[0].message == "“Cold” in the agenda serves no objective."
