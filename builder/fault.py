"""The machine's own faults: what could not be done, and what would let it be done."""

from __future__ import annotations


class Fault(Exception):
    """Something outside the author's files stopped the work; shown as one plain line, never a trace."""

    def __init__(self, message: str, remedy: str = "") -> None:
        """Keep the fault and its remedy apart, so that each printer can place them."""
        super().__init__(f"{message} {remedy}".strip())
        self.message = message
        self.remedy = remedy
