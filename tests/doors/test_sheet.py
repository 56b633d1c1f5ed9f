"""Sheets of separated values: read with places, written so that no cell becomes a formula."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.doors.sheet import Sheet, guard, read_sheet, unguard, write_sheet
from builder.place import Place

# As RFC 4180 (Shafranovich, 2005) section 2 has it: quotes around commas and line ends, quotes doubled.
CELLS = st.text("abé =+-@'\"\t,;\n", max_size=8).map(str.strip)


def rows(data: bytes) -> list[dict[str, str]]:
    """The rows of a sheet in bytes."""
    return list(read_sheet(data, "a.csv").rows)


def told(sheet: Sheet) -> list[tuple[str, int, int]]:
    """Every fault by check and place."""
    return [(one.check, one.place.line, one.place.column) for one in sheet.found]


@pytest.mark.parametrize(
    "data",
    [
        b"name,licence\nBea,00123\n",
        b"name;licence\r\nBea;00123\r\n",
        b'\xef\xbb\xbf"name", "licence"\nBea, 00123',
        b"Name,LICENCE,\n\nBea,00123,\n,,\n\n",
    ],
    ids=["comma", "semicolon and CRLF", "mark, quotes and spaces", "blank rows and columns"],
)
def test_spreadsheets_write_the_same_in_many_ways(data: bytes) -> None:
    """Separator, line end, mark, quotes, capitals and blank rows make no difference; codes stay text."""
    sheet = read_sheet(data, "a.csv")
    assert [{name: row[name] for name in ("name", "licence")} for row in sheet.rows] == [
        {"name": "Bea", "licence": "00123"}
    ]
    assert sheet.found == ()


def test_names_of_columns_are_tidied() -> None:
    """Capitals, spaces and dashes in a column's name do not matter."""
    assert read_sheet(b"Name on-Licence,Code 1\n", "a.csv").columns == ("name_on_licence", "code_1")


def test_text_stays_as_typed() -> None:
    """Licence numbers that look like powers or dates, and names with accents and apostrophes, are kept."""
    text = "name,licence\nZoë O’Brien-Müller,MA0045E7\nd'Angelo,3-12\nNguyễn Thị Ánh,00123\nSuharto,\n"
    assert [tuple(row.values()) for row in rows(text.encode())] == [
        ("Zoë O’Brien-Müller", "MA0045E7"),
        ("d'Angelo", "3-12"),
        ("Nguyễn Thị Ánh", "00123"),
        ("Suharto", ""),
    ]


def test_every_cell_has_its_place() -> None:
    """Cells are placed by line and column, also behind a cell of several lines."""
    sheet = read_sheet(b'a,b,c\n1,"x, ""y""\nz",3\n,5,\n', "a.csv")
    assert sheet.rows == ({"a": "1", "b": 'x, "y"\nz', "c": "3"}, {"a": "", "b": "5", "c": ""})
    assert sheet.places.of((0, "b")) == Place("a.csv", 2, 3, 3, 3)
    assert sheet.places.of((0, "c")) == Place("a.csv", 3, 4, 3, 5)
    assert sheet.places.of((1, "b")) == Place("a.csv", 4, 2, 4, 3)
    assert sheet.places.of_key(("c",)) == Place("a.csv", 1, 5, 1, 6)


@pytest.mark.parametrize(
    ("data", "faults"),
    [
        (b"a,b,a\n1,2,3\n", [("sheet_column_twice", 1, 5)]),
        (b"a,b\n1,2,3\n", [("sheet_no_column", 2, 5)]),
        (b"a,,b\n1,2,3\n", [("sheet_no_column", 2, 3)]),
        (b'a,b\n1,"2\n3,4\n', [("sheet_quotes", 2, 1)]),
        (b'a,b\n1,"2"x\n', [("sheet_quotes", 2, 1)]),
        ("a,b\nZoë,2\n".encode("cp1252"), [("not_utf8", 2, 3)]),
        ("a,b\n1,2\n".encode("utf-16"), [("not_utf8", 1, 1)]),
        (b"a,b\n1,\x002\n", [("odd_character", 2, 3)]),
        (b"", []),
    ],
)
def test_faults_of_form_are_placed(data: bytes, faults: list[tuple[str, int, int]]) -> None:
    """Columns, quotes and encodings that are wrong are said at their place."""
    assert told(read_sheet(data, "a.csv")) == faults


def test_writing_follows_the_standard() -> None:
    """RFC 4180 with the mark spreadsheets know UTF-8 by; text in quotes, numbers bare, CRLF at line ends."""
    written = write_sheet(["name", "hours"], [['Zoë, "Z"', Decimal("7.5")], ["00123", 2]])
    assert written == '\ufeff"name","hours"\r\n"Zoë, ""Z""",7.5\r\n"00123",2\r\n'.encode()


@pytest.mark.parametrize("text", ["=HYPERLINK()", "+1", "-1", "@SUM(A1)", "\tx", "\rx", "'=1", "''-1"])
def test_no_text_becomes_a_formula(text: str) -> None:
    """Text that a spreadsheet could take for a formula is led by an apostrophe, and read back as it was."""
    assert guard(text) == f"'{text}"
    assert unguard(guard(text)) == text
    assert f'"\'{text}"' in write_sheet(["a"], [[text]]).decode("utf-8-sig")


@pytest.mark.parametrize("text", ["", "Bea", "'t Hooft", "a=b", "d'Angelo", "3-12"])
def test_other_text_is_left_alone(text: str) -> None:
    """Apostrophes and signs inside a text do no harm and stay."""
    assert guard(text) == unguard(text) == text


@given(st.lists(st.tuples(CELLS, CELLS).filter(any), max_size=6))
def test_what_is_written_is_read_back(cells: list[tuple[str, str]]) -> None:
    """Any text without odd characters comes back from a sheet as it went in."""
    sheet = read_sheet(write_sheet(["first", "second"], cells), "a.csv")
    assert sheet.found == ()
    assert [tuple(row.values()) for row in sheet.rows] == cells


@given(st.text('ab,;"\n =é\0') | st.binary().map(lambda data: data.decode("latin-1")))
def test_nothing_raises(text: str) -> None:
    """Whatever a file holds, there are rows with a place for each cell, or something to fix."""
    sheet = read_sheet(text.encode(), "a.csv")
    for index, row in enumerate(sheet.rows):
        assert sheet.places.of((index,)).line > 1
        for column, cell in row.items():
            place = sheet.places.of((index, column))
            assert not cell or (place.line, place.column) <= (place.end_line, place.end_column)
