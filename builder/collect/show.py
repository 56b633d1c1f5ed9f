"""Says on the terminal what collecting did."""

from __future__ import annotations

from builder.model.outcome import Collected


def lines(collected: Collected) -> list[str]:
    """What was taken, what was there already, and what could not be taken and why."""
    return [collected.klass]
