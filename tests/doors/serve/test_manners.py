"""Manners: how often each address may ask."""

from hypothesis import given
from hypothesis import strategies as st

from builder.doors.serve.manners import MOST_PEERS, Pace


@given(st.lists(st.floats(0, 3), max_size=80))
def test_never_more_than_a_burst_and_a_rate(pauses: list[float]) -> None:
    """In no time are more let through than the burst and so many a second."""
    pace, now, let = Pace(5, 2.0), 0.0, 0
    for pause in pauses:
        now += pause
        let += pace.allows("a", now)
        assert let <= 5 + 2 * now + 1e-6


def test_one_address_does_not_hinder_another() -> None:
    """Each has a measure of its own, and it fills again."""
    pace = Pace(1, 1.0)
    assert [pace.allows("a", 0), pace.allows("a", 0), pace.allows("b", 0)] == [True, False, True]
    assert pace.allows("a", 1.0)


def test_addresses_without_end_take_no_room_without_end() -> None:
    """The ones that asked longest ago are forgotten."""
    pace = Pace(1, 0.0)
    for number in range(MOST_PEERS + 10):
        assert pace.allows(str(number), 0)
    assert not pace.allows(str(MOST_PEERS + 9), 0)
    assert pace.allows("0", 0)
