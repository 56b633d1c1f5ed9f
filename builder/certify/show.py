"""Says on the terminal who was certified and who was refused."""

from __future__ import annotations

from builder.model.outcome import Issued


def lines(issued: Issued) -> list[str]:
    """One line a certificate, one a reason of refusal."""
    return [issued.klass]
