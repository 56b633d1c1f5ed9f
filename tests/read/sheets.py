"""Sheets and a class for the tests of reading a class."""

from datetime import date
from zoneinfo import ZoneInfo

from builder.diagnostic import Diagnostic
from builder.doors.sheet import Sheet, read_sheet
from builder.model.taught import TaughtClass

BEA, CURRO, KEIKO = "QZVNRBLAD", "WSBVCVQMF", "FRHGCYSSX"
ZONE = ZoneInfo("America/New_York")
MAY = TaughtClass(
    format=1,
    id="may",
    title="May",
    dates=(date(2026, 5, 2), date(2026, 5, 3)),
    zone="America/New_York",
    place="The tent",
)


def sheet(text: str) -> Sheet:
    """A sheet as if it were on disk."""
    return read_sheet(text.encode(), "a.csv")


def told(found: list[Diagnostic]) -> list[tuple[str, int, int]]:
    """Check, line and column of everything found."""
    return [(one.check, one.place.line, one.place.column) for one in found]
