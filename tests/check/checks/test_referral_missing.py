"""Where the session calls for a referral or a question, it is chosen."""

from typing import Any

import pytest

from builder.check.checks.referral_missing import check
from tests.check.small_course import evidence
from tests.judge.small import case

FEVER = {"screen": {"set": "short", "all_no_except": {"fever": "yes"}}}


@pytest.mark.parametrize(
    "visit",
    [
        {},
        {**FEVER, "chosen": [{"card": "refer", "written": {"urgency": "same_day"}}]},
        {"consent": None, "chosen": [{"card": "ask"}]},
        {"screen": None, "chosen": [{"card": "protect"}, {"card": "ask"}]},
    ],
)
def test_what_is_called_for_is_silent(visit: dict[str, Any]) -> None:
    """Nothing, a referral or a question, as the session asks."""
    assert list(check(evidence(case(visit)))) == []


@pytest.mark.parametrize(
    ("visit", "message", "remedy", "rules"),
    [
        (
            FEVER,
            "The session is to refer first, but no chosen option does.",
            "Choose the card `refer`, with its urgency.",
            ("fever",),
        ),
        (
            {"screen": None, "consent": None},
            "The session is to ask first, but no chosen option does. Not recorded: consent, fever.",
            "Choose the card `ask`, or record what is missing.",
            ("fever",),
        ),
        (
            {**FEVER, "chosen": [{"card": "ask"}]},
            "The session is to refer first, but no chosen option does.",
            "Choose the card `refer`, with its urgency.",
            ("fever",),
        ),
    ],
)
def test_what_is_left_out_is_told(
    visit: dict[str, Any], message: str, remedy: str, rules: tuple[str, ...]
) -> None:
    """The card that is missing, and what else would do."""
    (found,) = check(evidence(case(visit)))
    assert (found.file, found.path) == ("cases/bruise.yml", ("visits", 0, "chosen"))
    assert (found.message, found.remedy, found.rules) == (message, remedy, rules)
