"""One sheet of a class: its rows with what each must hold, and faults placed at a cell."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from pathlib import Path

from builder.diagnostic import Diagnostic, Level, Related
from builder.disk import read_bytes
from builder.doors.sheet import Sheet, read_sheet
from builder.doors.text import LIMIT
from builder.fault import Fault
from builder.place import Place, Places
from builder.read.nearest import quoted, suggest


@dataclass(frozen=True)
class Row:
    """One row: its cells by column, and where it stands."""

    index: int
    cells: dict[str, str]
    places: Places

    def __getitem__(self, column: str) -> str:
        return self.cells.get(column, "")

    def at(self, column: str) -> Place:
        """The place of a cell, or of the whole row where the cell is not there."""
        return self.places.of((self.index, column))

    def fault(
        self,
        check: str,
        column: str,
        words: tuple[str, str],
        *,
        level: Level = "error",
        first: Place | None = None,
    ) -> Diagnostic:
        """A Diagnostic about one cell; `words` are message and remedy, `first` where it stood before."""
        related = (Related(first, "First written here."),) if first else ()
        return Diagnostic(check, level, self.at(column), *words, path=(self.index, column), related=related)


def read_rows(path: Path, file: str) -> Sheet:
    """A sheet on disk; one that cannot be read has no rows and says why."""
    try:
        return read_sheet(read_bytes(path, LIMIT + 1), file)
    except Fault as fault:
        found = Diagnostic("file_unreadable", "error", Place(file), fault.message, fault.remedy)
        return Sheet((), (), Places(Place(file)), (found,))


def rows_of(sheet: Sheet) -> Iterator[Row]:
    """The rows of a sheet, in order."""
    return (Row(index, cells, sheet.places) for index, cells in enumerate(sheet.rows))


def wrong_columns(sheet: Sheet, needed: Collection[str], known: Collection[str]) -> Iterator[Diagnostic]:
    """Every column that is missing or not known; a sheet that could not be read has said so itself."""
    if not sheet.columns:
        if not sheet.found:
            message = "This sheet is empty."
            yield Diagnostic(
                "sheet_empty", "error", sheet.places.whole, message, "Begin it with its column names."
            )
        return
    for name in needed:
        if name not in sheet.columns:
            place = next(iter(sheet.places.keys.values()), sheet.places.whole)
            message, remedy = f"The column `{name}` is missing.", "Add it to the first line."
            yield Diagnostic("sheet_column_missing", "error", place, message, remedy)
    for name in sheet.columns:
        if name and name not in known:
            message = f"The column {quoted(name)} is not known."
            remedy = (
                f"{suggest(name, known)} If it is something else, remove it: no more is kept of a person."
            )
            yield Diagnostic("sheet_column_unknown", "error", sheet.places.of_key((name,)), message, remedy)
