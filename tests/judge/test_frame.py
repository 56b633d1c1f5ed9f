"""The frame of a visit: what of it is shown when the session ends."""

from decimal import Decimal

import pytest

from builder.judge.judge import Judge
from builder.judge.space import Value
from tests.judge.small import RULES, content, rule

JUDGE = Judge(content(rules=[*RULES, rule("lump", {"cool_head": "no"}, session={"urgency": "days"})]))
KNOWN: dict[str, Value] = {
    "injury": "contusion",
    "tissue": "muscle",
    "region": "ankle",
    "swelling": "none",
    "consent": "yes",
}


@pytest.mark.parametrize(
    ("flags", "urgency", "shown"),
    [
        ({"fever": "yes", "cool_head": "yes"}, "same_day", "none"),
        ({"fever": "no", "cool_head": "no"}, "days", "acute"),
        ({"fever": "no", "cool_head": "yes"}, None, "acute"),
        ({"cool_head": "yes"}, None, "acute"),
    ],
)
def test_no_phase_is_shown_where_the_session_ends_today(
    flags: dict[str, str], urgency: str | None, shown: str
) -> None:
    """Emergency and same day leave no phase; a milder referral and an open flag keep it."""
    frame = JUDGE.frame({**KNOWN, **flags, "hours": Decimal(20)}, "mild", None)
    assert frame.session.urgency == urgency
    assert frame.phase.possible == ("acute",)
    assert frame.shown_phase(JUDGE.space).possible == (shown,)
    assert (frame.shown_phase(JUDGE.space).next_phase is None) == (shown == "none")


def test_the_reason_says_why_no_phase_is_shown() -> None:
    """The calendar's reason would contradict the answer, so it is not told."""
    frame = JUDGE.frame({**KNOWN, "fever": "yes", "hours": Decimal(20)}, "mild", None)
    assert [one.text for one in frame.shown_phase(JUDGE.space).reasons] == [
        "Stop and refer today: the healing phase does not count."
    ]
    assert frame.aims == ("refer",)
