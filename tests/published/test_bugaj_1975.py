"""Cold massage: ten minutes at most.

Phys Ther 1975;55:11-19: ten minutes gave numbness once the skin was below about 13.6 degrees, for about
three minutes.
"""

from decimal import Decimal

import pytest

from tests.content.clients import CALM, client, option, seen
from tests.content.library import content


@pytest.mark.parametrize(("minutes", "answer"), [(9, "ok"), (10, "ok"), (11, "change"), (12, "change")])
def test_past_ten_minutes_it_has_to_change(minutes: int, answer: str) -> None:
    """10 minutes are right in early repair, 12 are only right if changed (Phys Ther 1975)."""
    judged = option(seen(client(144, CALM)), "cold_massage", {"minutes": Decimal(minutes)})
    assert judged.at_worst == answer


def test_the_card_tells_the_measured_figures() -> None:
    """13.6 degrees and about three minutes stand on the card (Phys Ther 1975)."""
    told = content().cards["cold_massage"].evidence
    assert told is not None
    assert "13.6 °C" in told.speaks_for
    assert "three minutes" in told.speaks_for
