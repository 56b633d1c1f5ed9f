"""The rules of an approving body: bounds, and combinations that are hardly meant."""

from typing import Any

import pytest
from pydantic import ValidationError

from builder.model.board import BoardRules
from tests.check.checks.test_references_old import BOARD


def test_what_is_not_said_is_the_plain_way() -> None:
    """One hour is one unit, a rest is dropped, and nothing is capped or forbidden."""
    made = BoardRules.model_validate(BOARD)
    assert (made.hours_in_unit, made.rounded, made.most_in_day, made.never_called) == (1, "down", None, ())


@pytest.mark.parametrize(
    "changed",
    [
        {"break_minutes_in_hour": 10},
        {"counted": ["lecture", "meal"]},
        {"counted": ["nap"]},
        {"rounded": "up"},
        {"step": 0},
        {"hours_in_unit": 0},
        {"certificate": ["shoe size"]},
    ],
)
def test_what_is_hardly_meant_is_refused(changed: dict[str, Any]) -> None:
    """An allowance for breaks that do not count, meals without breaks, and unknown words."""
    with pytest.raises(ValidationError):
        BoardRules.model_validate({**BOARD, **changed})
