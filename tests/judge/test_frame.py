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
    assert frame.shown(JUDGE.space).phase.possible == (shown,)
    assert (frame.shown(JUDGE.space).phase.next_phase is None) == (shown == "none")


def test_the_reason_says_why_no_phase_is_shown() -> None:
    """The calendar's reason would contradict the answer, so it is not told; all else stays."""
    frame = JUDGE.frame({**KNOWN, "fever": "yes", "hours": Decimal(20)}, "mild", None)
    shown = frame.shown(JUDGE.space)
    assert [one.text for one in shown.phase.reasons] == [
        "Stop and refer today: the healing phase does not count."
    ]
    assert (shown.severity, shown.session, shown.aims, shown.state) == (
        frame.severity,
        frame.session,
        ("refer",),
        frame.state,
    )
