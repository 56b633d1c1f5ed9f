"""Old references are known to be old."""

from dataclasses import replace

import pytest

from builder.check.checks.references_old import check
from builder.model.board import BoardRules
from builder.model.tables import ReferenceBook
from tests.check.small_course import evidence
from tests.judge.small import content

BOARD = {
    "format": 1,
    "id": "generic",
    "name": "Board",
    "dated": "2026-11-25",
    "source": "s",
    "minutes_in_hour": 60,
    "hour_name": "hours",
    "counted": ["lecture"],
    "attendance_floor": "90 %",
    "note": "n",
}


@pytest.mark.parametrize(
    ("year", "told"),
    [
        (2011, []),
        (2010, ["The reference `one` is of 2010, more than 15 years old."]),
        (None, ["The reference `one` has no year."]),
    ],
)
def test_age_is_counted_to_the_day_the_boards_rules_were_read(year: int | None, told: list[str]) -> None:
    """Exactly fifteen years are not old; without a year nobody can tell."""
    source = {"cite": "A paper", **({"year": year} if year else {})}
    references = ReferenceBook.model_validate({"format": 1, "sources": {"one": source}})
    made = replace(content(), references=references, boards={"generic": BoardRules.model_validate(BOARD)})
    found = check(evidence(rules=made, references=["one"]))
    assert [one.message for one in found] == told
