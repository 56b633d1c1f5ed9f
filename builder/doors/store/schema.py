"""The tables as statements see them; the migrations make them."""

from __future__ import annotations

from sqlalchemy import Boolean, ColumnElement, Integer, LargeBinary, String, TableClause, column, table

from builder.model.records import ClassFolder


def _table(name: str, texts: str, numbers: str = "id") -> TableClause:
    made = [column(one, Integer) for one in numbers.split()] + [column(one, String) for one in texts.split()]
    return table(name, *made)


SHEETS = _table("sheets", "course klass test version edition code sheet digest received", "id rev")
SHEETS.append_column(column("body", LargeBinary))
REFUSALS = _table("refusals", "course klass digest fault seen")
RINGS = _table("rings", "test edition key_edition seen body")
DECISIONS = _table("decisions", "course klass code decided body")
DECISIONS.append_column(column("met", Boolean))
PEOPLE = _table("people", "course klass code name name_on_licence licence email since")
PEOPLE.append_column(column("report", Boolean))
CERTIFICATES = _table(
    "certificates",
    "provider course klass code issued written printed",
    "id number revision person decision",
)

REVISIONS = ("0001", "0002")


def of_class(rows: TableClause, folder: ClassFolder) -> ColumnElement[bool]:
    """The condition that a row belongs to one class of one course."""
    return (rows.c.course == folder.course) & (rows.c.klass == folder.taught.id)
