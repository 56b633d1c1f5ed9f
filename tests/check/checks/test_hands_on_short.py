"""A share of hands-on work that a board asks for."""

from dataclasses import replace
from typing import Any

import pytest

from builder.check.checks.hands_on_short import check
from builder.model.board import BoardRules
from tests.check.checks.test_references_old import BOARD
from tests.check.small_course import evidence
from tests.judge.small import content

LECTURE: dict[str, Any] = {"day": 1, "start": "09:00", "end": "10:00", "title": "Cold", "kind": "lecture"}
HANDS: dict[str, Any] = {"day": 1, "start": "10:00", "end": "13:00", "title": "Wraps", "kind": "hands_on"}


@pytest.mark.parametrize(
    ("asked", "said"),
    [
        ("75 %", []),
        ("75.01 %", ["Board asks for 75.01 % hands-on work; of what it counts here, 75 % is."]),
        (None, []),
    ],
)
def test_exactly_enough_is_enough(asked: str | None, said: list[str]) -> None:
    """Three hours of four are 75 %; a hundredth more is short."""
    share = {"hands_on_share": asked} if asked else {}
    board = BoardRules.model_validate({**BOARD, "counted": ["lecture", "hands_on"], **share})
    made = replace(content(), boards={"generic": board})
    assert [one.message for one in check(evidence(rules=made, agenda=[LECTURE, HANDS]))] == said


def test_without_an_agenda_nothing_is_short() -> None:
    """Another check says that an agenda is missing."""
    board = BoardRules.model_validate({**BOARD, "hands_on_share": "75 %"})
    assert list(check(evidence(rules=replace(content(), boards={"generic": board}), agenda=[]))) == []
