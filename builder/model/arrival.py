"""An answer sheet as it came to the host: kept for the record to take, or set aside with the reason."""

from __future__ import annotations

from datetime import datetime

from builder.model.noun import Noun


class Arrival(Noun):
    """One sheet that came; `at` is our time, with the zone of the class.

    `receipt` is what the participant was told, empty where the sheet was set aside; `fault` then says why.
    """

    digest: str
    at: datetime
    receipt: str = ""
    code: str = ""
    test: str = ""
    version: str = ""
    rev: int = 0
    answered: int = 0
    of: int = 0
    fault: str = ""
    remedy: str = ""

    @property
    def taken(self) -> bool:
        """Whether it lies where the record takes it from."""
        return bool(self.receipt)
