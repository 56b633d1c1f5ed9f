"""Second step: decisions, certificates, and people in a table of their own."""

from alembic import op
from sqlalchemy import Boolean, Column, ForeignKey, Integer, String, Text, UniqueConstraint

from builder.doors.store.guard import append_only, without_gaps

revision = "0002"
down_revision = "0001"

SERIAL = ("provider", "number", "revision")
HOLDER = ("provider", "course", "klass", "code", "revision")


def upgrade() -> None:
    """Make the tables of deciding and certifying; people may be destroyed, the rest is append-only."""
    _decisions()
    _people()
    _certificates()
    for statement in (
        *append_only("decisions"),
        *append_only("certificates", SERIAL, HOLDER),
        without_gaps(),
    ):
        op.execute(statement)


def _decisions() -> None:
    op.create_table(
        "decisions",
        Column("id", Integer, primary_key=True),
        Column("course", String, nullable=False),
        Column("klass", String, nullable=False),
        Column("code", String, nullable=False),
        Column("met", Boolean, nullable=False),
        Column("decided", String, nullable=False),
        Column("body", Text, nullable=False),
    )
    op.create_index("decisions_of_class", "decisions", ["course", "klass"])


def _people() -> None:
    op.create_table(
        "people",
        Column("id", Integer, primary_key=True),
        Column("course", String, nullable=False),
        Column("klass", String, nullable=False),
        Column("code", String, nullable=False),
        Column("name", Text, nullable=False),
        Column("name_on_licence", Text, nullable=False),
        Column("licence", Text, nullable=False),
        Column("email", Text, nullable=False),
        Column("report", Boolean, nullable=False),
        Column("since", String, nullable=False),
    )


def _certificates() -> None:
    op.create_table(
        "certificates",
        Column("id", Integer, primary_key=True),
        Column("provider", String, nullable=False),
        Column("number", Integer, nullable=False),
        Column("revision", Integer, nullable=False),
        Column("course", String, nullable=False),
        Column("klass", String, nullable=False),
        Column("code", String, nullable=False),
        Column("person", Integer, nullable=False),
        Column("decision", Integer, ForeignKey("decisions.id"), nullable=False),
        Column("issued", String, nullable=False),
        Column("written", String, nullable=False),
        Column("printed", Text, nullable=False),
        UniqueConstraint(*SERIAL),
        UniqueConstraint(*HOLDER),
    )
