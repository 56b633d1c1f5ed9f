"""An arrival is taken where it has a receipt."""

from datetime import UTC, datetime

from builder.model.arrival import Arrival

NOW = datetime(2026, 4, 19, tzinfo=UTC)


def test_only_a_receipt_says_that_it_was_taken() -> None:
    """One that was set aside has none."""
    assert Arrival(digest="a", at=NOW, receipt="7K3-M9Q").taken
    assert not Arrival(digest="a", at=NOW, fault="This is no answer sheet.").taken
