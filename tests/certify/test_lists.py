"""The lists are written as sheets that come back as they went."""

from pathlib import Path

from builder.certify.lists import write_lists
from builder.certify.rows import CERTIFICATE_COLUMNS, REFUSED_COLUMNS
from builder.doors.sheet import read_sheet, unguard
from builder.model.outcome import Issued

ROW = dict.fromkeys(CERTIFICATE_COLUMNS, "x") | {"name": "Zoë O’Brien-Müller", "licence number": "00123"}
REFUSED = dict.fromkeys(REFUSED_COLUMNS, "x") | {
    "name": "=HYPERLINK(1)",
    "reason": 'A "reason", of two\nlines.',
}


def test_both_lists_are_written(tmp_path: Path) -> None:
    """Names, licence numbers and reasons survive, and nothing in them is a formula."""
    issued = Issued(klass="spring", certificates=(ROW,), refused=(REFUSED,), fresh=())
    files = write_lists(issued, tmp_path / "spring")
    assert [path.name for path in files] == ["certificates.csv", "refused.csv"]
    certificates, refused = (read_sheet(path.read_bytes(), path.name) for path in files)
    assert list(certificates.rows[0].values()) == list(ROW.values())
    assert [unguard(cell) for cell in refused.rows[0].values()] == list(REFUSED.values())
    assert b'"=' not in files[1].read_bytes()


def test_an_empty_list_has_its_columns(tmp_path: Path) -> None:
    """A class that certified nobody still has both files."""
    files = write_lists(Issued(klass="spring", certificates=(), refused=(), fresh=()), tmp_path)
    sheets = [read_sheet(path.read_bytes(), path.name) for path in files]
    assert [len(sheet.columns) for sheet in sheets] == [len(CERTIFICATE_COLUMNS), len(REFUSED_COLUMNS)]
    assert [sheet.rows for sheet in sheets] == [(), ()]
