"""Boards that cannot be met by the same words or minutes."""

from dataclasses import replace

from builder.check.checks.boards_disagree import check
from builder.model.board import BoardRules
from tests.check.checks.test_references_old import BOARD
from tests.check.small_course import evidence
from tests.judge.small import content

AGENDA = [{"day": 1, "start": "09:00", "end": "10:40", "title": "Cold", "kind": "lecture"}]


def told(**other: object) -> list[str]:
    """What is said of a course of 100 minutes by a board and by another that differs in this."""
    boards = {
        "generic": BoardRules.model_validate(BOARD),
        "guild": BoardRules.model_validate({**BOARD, "id": "guild", "name": "Guild", **other}),
    }
    made = replace(content(), boards=boards)
    return [one.message for one in check(evidence(rules=made, agenda=AGENDA, boards=["generic", "guild"]))]


def test_boards_that_agree_are_not_named() -> None:
    """The same hours under the same conditions need no word."""
    assert told() == []


def test_what_they_differ_in_is_said() -> None:
    """Hours, the share that must be attended, and a word that one forbids to the other."""
    lead = "Board and Guild differ for this course:"
    assert told(minutes_in_hour=50) == [f"{lead} 1.66 hours and 2 hours."]
    assert told(attendance_floor="100 %") == [f"{lead} how much of it must be attended."]
    assert told(never_called=["Hours"]) == [f"{lead} “hours” is a word that Guild forbids."]
