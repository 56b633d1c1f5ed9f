"""First step: answer sheets as they came, files that could not be taken, and keys by edition."""

from alembic import op
from sqlalchemy import Column, Integer, LargeBinary, String, Text, UniqueConstraint

from builder.doors.store.guard import append_only

revision = "0001"
down_revision = None


def upgrade() -> None:
    """Make the tables of collecting, each append-only."""
    _sheets()
    _refusals()
    _rings()
    for statement in (
        *append_only("sheets", ("digest",)),
        *append_only("refusals", ("course", "klass", "digest", "fault")),
        *append_only("rings", ("test", "edition", "key_edition")),
    ):
        op.execute(statement)


def _sheets() -> None:
    op.create_table(
        "sheets",
        Column("id", Integer, primary_key=True),
        Column("course", String, nullable=False),
        Column("klass", String, nullable=False),
        Column("test", String, nullable=False),
        Column("version", String, nullable=False),
        Column("edition", String, nullable=False),
        Column("code", String, nullable=False),
        Column("sheet", String, nullable=False),
        Column("rev", Integer, nullable=False),
        Column("digest", String, nullable=False, unique=True),
        Column("received", String, nullable=False),
        Column("body", LargeBinary, nullable=False),
    )
    op.create_index("sheets_of_class", "sheets", ["course", "klass"])


def _refusals() -> None:
    op.create_table(
        "refusals",
        Column("id", Integer, primary_key=True),
        Column("course", String, nullable=False),
        Column("klass", String, nullable=False),
        Column("digest", String, nullable=False),
        Column("fault", Text, nullable=False),
        Column("seen", String, nullable=False),
        UniqueConstraint("course", "klass", "digest", "fault"),
    )


def _rings() -> None:
    op.create_table(
        "rings",
        Column("id", Integer, primary_key=True),
        Column("test", String, nullable=False),
        Column("edition", String, nullable=False),
        Column("key_edition", String, nullable=False),
        Column("seen", String, nullable=False),
        Column("body", Text, nullable=False),
        UniqueConstraint("test", "edition", "key_edition"),
    )
