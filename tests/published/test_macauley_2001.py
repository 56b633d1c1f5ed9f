"""Cold: short, with pauses, and no demanding work straight after.

MacAuley DC, Int J Sports Med 2001;22:379-384: ten minutes, repeated, are best supported; reflexes and
control are weaker for up to 30 minutes. Twenty minutes at most: cryotherapy chapter (15 to 20) and common
practice.
"""

from decimal import Decimal

import pytest

from tests.content.clients import CALM, HEALED, HOT, client, option, seen


@pytest.mark.parametrize(
    ("minutes", "answer"), [(10, "ok"), (19, "ok"), (20, "ok"), (21, "change"), (25, "change")]
)
def test_ten_minutes_are_right_and_twenty_five_are_not(minutes: int, answer: str) -> None:
    """10 (MacAuley 2001) and up to 20 (cryotherapy chapter) are right; 25 is only right if changed."""
    judged = option(seen(client(18, HOT)), "cold_pack", {"minutes": Decimal(minutes)})
    assert judged.at_worst == answer


@pytest.mark.parametrize("card", ["friction", "strip", "stretch", "lengthen_active"])
def test_deep_and_stretching_work_wait_after_cold(card: str) -> None:
    """Within half an hour of cold, deep work and stretching on the spot wait (MacAuley 2001)."""
    assert option(seen(client(720, HEALED, {"cold_just_applied": "yes"})), card).answer == "not_yet"
    assert option(seen(client(720, HEALED)), card).answer == "ok"


def test_light_strokes_need_not_wait() -> None:
    """Cold for ease before a light stroke is allowed (own default)."""
    assert option(seen(client(144, CALM, {"cold_just_applied": "yes"})), "glide").right
