"""The tables as statements see them are the tables that the migrations make."""

from pathlib import Path

import pytest
from sqlalchemy import TableClause, select

from builder.doors.store import schema
from tests.records.kept import look, opened
from tests.records.made import folder

TABLES = [table for table in vars(schema).values() if isinstance(table, TableClause)]


@pytest.mark.parametrize("table", TABLES, ids=lambda table: table.name)
def test_columns_agree(tmp_path: Path, table: TableClause) -> None:
    """No column is missing on either side."""
    with opened(tmp_path):
        made = {row[1] for row in look(tmp_path, f"PRAGMA table_info({table.name})")}
    assert {column.name for column in table.columns} == made


def test_a_class_is_named_with_its_course() -> None:
    """Two courses may both have a class of one name."""
    condition = str(select(schema.SHEETS.c.id).where(schema.of_class(schema.SHEETS, folder())))
    assert "course" in condition
    assert "klass" in condition
