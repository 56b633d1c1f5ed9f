"""Fields of a certificate that would stay empty."""

from dataclasses import replace

from builder.check.checks.certificate_field_empty import check
from builder.model.board import BoardRules
from tests.check.checks.test_references_old import BOARD
from tests.check.small_course import evidence
from tests.judge.small import content


def told(number: str, *fields: str) -> list[str]:
    """What is said of a course with this number, for a board that asks for these fields."""
    board = BoardRules.model_validate({**BOARD, "certificate": list(fields)})
    made = replace(content(), boards={"generic": board})
    return [one.message for one in check(evidence(rules=made, number=number))]


def test_an_empty_field_counts_where_it_is_asked_for() -> None:
    """A number of blanks is none; a field that nobody asks for may stay empty."""
    assert told("LF-CE-02", "name", "course number") == []
    assert told(" ", "name") == []
    said = ["Board asks for what the certificate would leave empty: `course number`."]
    assert told(" ", "name", "course number") == said
