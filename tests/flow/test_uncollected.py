"""The collector rests for a while, and works again whatever happens."""

import gc

import pytest

from builder.flow.uncollected import uncollected


def test_the_collector_works_again_afterwards() -> None:
    """Also after a fault."""
    with uncollected():
        assert not gc.isenabled()
    assert gc.isenabled()
    with pytest.raises(ValueError, match="so"), uncollected():
        raise ValueError("so")
    assert gc.isenabled()


def test_a_collector_that_rested_before_rests_on() -> None:
    """Whoever let it rest wakes it."""
    with uncollected():
        with uncollected():
            pass
        assert not gc.isenabled()
