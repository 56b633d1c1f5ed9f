"""Says on the terminal where every participant stands."""

from __future__ import annotations

from builder.model.outcome import Graded


def lines(graded: Graded) -> list[str]:
    """Each participant's answer with its reasons."""
    return [graded.klass]
