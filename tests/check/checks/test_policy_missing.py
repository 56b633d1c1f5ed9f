"""The policies a board asks for are there."""

from dataclasses import replace

from builder.check.checks.policy_missing import check
from builder.model.board import BoardRules
from tests.check.checks.test_references_old import BOARD
from tests.check.small_course import evidence
from tests.judge.small import content


def told(**policies: str) -> list[str]:
    """What is said of a course with these policies, for a board that asks for two."""
    board = BoardRules.model_validate({**BOARD, "policies": ["refund", "weather"]})
    made = replace(content(), boards={"generic": board})
    return [one.message for one in check(evidence(rules=made, policies=policies))]


def test_what_is_not_written_is_named_in_one_line() -> None:
    """Each by its short name, under the board that asks."""
    assert told(refund="Within 14 days.", weather="A new date.") == []
    assert told() == ["Board asks for policies that are not written: `refund`, `weather`."]
    assert told(refund="Within 14 days.") == ["Board asks for policies that are not written: `weather`."]
