"""Rows of a sheet, and faults at their cells."""

from pathlib import Path

from builder.place import Place
from builder.read.rows import read_rows, rows_of, wrong_columns
from tests.read.sheets import sheet, told


def test_a_cell_has_text_and_place() -> None:
    """A column that is not there is empty, and has the place of its row."""
    (row,) = rows_of(sheet("name,code_1\nBea,X\n"))
    assert (row["name"], row["email"]) == ("Bea", "")
    assert row.at("code_1") == Place("a.csv", 2, 5, 2, 6)
    assert row.at("email") == Place("a.csv", 2, 1, 2, 6)


def test_a_fault_of_a_cell_names_its_place_and_path() -> None:
    """Row number and column are the path; the first of two places is related."""
    (row,) = rows_of(sheet("name\nBea\n"))
    fault = row.fault("c", "name", ("Message.", "Remedy."), first=Place("a.csv", 9))
    assert (fault.path, fault.place.line, fault.related[0].place.line) == ((0, "name"), 2, 9)


def test_columns_that_are_missing_or_unknown_are_told() -> None:
    """A missing one at the header's start, an unknown one at itself, with the warning to keep no more."""
    found = list(wrong_columns(sheet("nmae,born\nBea,1\n"), ("name",), ("name",)))
    assert told(found) == [
        ("sheet_column_missing", 1, 1),
        ("sheet_column_unknown", 1, 1),
        ("sheet_column_unknown", 1, 6),
    ]
    assert found[1].remedy == (
        "Did you mean `name`? If it is something else, remove it: no more is kept of a person."
    )


def test_an_empty_sheet_and_one_that_is_not_there_are_told(tmp_path: Path) -> None:
    """Each says one thing."""
    assert told(list(wrong_columns(sheet(""), ("name",), ("name",)))) == [("sheet_empty", 1, 1)]
    missing = read_rows(tmp_path / "roster.csv", "roster.csv")
    assert told([*missing.found, *wrong_columns(missing, ("name",), ())]) == [("file_unreadable", 1, 1)]
