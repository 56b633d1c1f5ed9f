"""Sheets of comma- or semicolon-separated values: read with the place of every cell, written safely."""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal

from builder.diagnostic import Diagnostic
from builder.doors.text import decode
from builder.place import Path, Place, Places

Cell = str | int | Decimal

_STARTS_FORMULA = re.compile(r"'*[=+\-@\t\r]")
_GUARDED = re.compile(r"'+[=+\-@\t\r]")


@dataclass(frozen=True)
class Sheet:
    """A sheet as written: tidied column names, every row a dict; places go by (row index, column)."""

    columns: tuple[str, ...]
    rows: tuple[dict[str, str], ...]
    places: Places
    found: tuple[Diagnostic, ...]


@dataclass(frozen=True)
class _Row:
    cells: tuple[str, ...]
    places: tuple[Place, ...]


def write_sheet(columns: Sequence[str], rows: Iterable[Sequence[Cell]]) -> bytes:
    """The bytes of a sheet after RFC 4180, with the byte-order mark by which spreadsheets know UTF-8.

    Text is quoted, and text that a spreadsheet would take for a formula begins with an apostrophe.
    """
    out = io.StringIO()
    writer = csv.writer(out, quoting=csv.QUOTE_NONNUMERIC, lineterminator="\r\n")
    writer.writerow(columns)
    writer.writerows([guard(cell) if isinstance(cell, str) else cell for cell in row] for row in rows)
    return out.getvalue().encode("utf-8-sig")


def guard(text: str) -> str:
    """The text as it may stand in a cell; `unguard` gives it back."""
    return f"'{text}" if _STARTS_FORMULA.match(text) else text


def unguard(text: str) -> str:
    """The text that was meant by a guarded cell."""
    return text[1:] if _GUARDED.match(text) else text


def read_sheet(data: bytes, file: str) -> Sheet:
    """The rows of a sheet below its header, as text, and what is wrong with its form; never raises."""
    decoded = decode(data, file)
    found = list(decoded.found)
    written = [row for row in _rows(decoded.text or "", file, found) if any(row.cells)]
    header = written[0] if written else _Row((), ())
    columns = tuple(_tidy(name) for name in header.cells)
    found += _bad_columns(columns, header)
    found += [fault for row in written[1:] for fault in _homeless(row, columns)]
    rows = tuple(
        dict.fromkeys(columns, "") | dict(zip(columns, row.cells, strict=False)) for row in written[1:]
    )
    return Sheet(columns, rows, _places(written, columns, file, decoded.lines), tuple(found))


def _tidy(name: str) -> str:
    return re.sub(r"[\s\-]+", "_", name.casefold())


def _rows(text: str, file: str, found: list[Diagnostic]) -> Iterator[_Row]:
    lines = text.splitlines(keepends=True)
    delimiter = ";" if lines and lines[0].count(";") > lines[0].count(",") else ","
    reader = csv.reader(lines, delimiter=delimiter, strict=True, skipinitialspace=True)
    start = 0
    try:
        for cells in reader:
            places = _cell_places("".join(lines[start : reader.line_num]), file, start + 1, delimiter)
            yield _Row(tuple(unguard(cell.strip()) for cell in cells), tuple(places))
            start = reader.line_num
    except csv.Error:
        message = "The quotation marks of this row do not match."
        remedy = "Write quotes in pairs; inside quotes a quote is written twice."
        found.append(
            Diagnostic("sheet_quotes", "error", _line(file, start + 1, lines[start]), message, remedy)
        )


def _line(file: str, line: int, text: str) -> Place:
    return Place(file, line, 1, line, len(text.rstrip("\n")) + 1)


def _cell_places(row: str, file: str, line: int, delimiter: str) -> Iterator[Place]:
    cell = re.compile(rf' *"[^"]*(?:""[^"]*)*" *(?=[{delimiter}\n])|[^{delimiter}\n]*')
    at = base = 0
    while at < len(row) and (match := cell.match(row, at)):
        first = line, at - base + 1
        if breaks := row.count("\n", at, match.end()):
            line, base = line + breaks, row.rfind("\n", at, match.end()) + 1
        yield Place(file, *first, line, match.end() - base + 1)
        at = match.end() + 1


def _bad_columns(columns: tuple[str, ...], header: _Row) -> Iterator[Diagnostic]:
    seen: set[str] = set()
    for name, place in zip(columns, header.places, strict=False):
        if name and name in seen:
            message = f"The column `{name}` stands twice."
            yield Diagnostic("sheet_column_twice", "error", place, message, "Keep one of the two.")
        seen.add(name)


def _homeless(row: _Row, columns: tuple[str, ...]) -> Iterator[Diagnostic]:
    for index, (cell, place) in enumerate(zip(row.cells, row.places, strict=False)):
        if cell and not (index < len(columns) and columns[index]):
            remedy = "Put text that holds the separator in quotes, or name the column."
            yield Diagnostic("sheet_no_column", "error", place, "This cell stands under no column.", remedy)


def _places(written: list[_Row], columns: tuple[str, ...], file: str, lines: tuple[str, ...]) -> Places:
    values: dict[Path, Place] = {}
    for index, row in enumerate(written[1:]):
        values[(index,)] = _line(file, row.places[0].line, lines[row.places[0].line - 1])
        values |= {(index, name): place for name, place in zip(columns, row.places, strict=False)}
    header = written[0].places if written else ()
    keys: dict[Path, Place] = {(name,): place for name, place in zip(columns, header, strict=False)}
    return Places(Place(file), values, keys, lines)
