"""Brings a record up to date, step by step, in one transaction."""

from __future__ import annotations

from pathlib import Path

from alembic import command
from alembic.config import Config
from sqlalchemy import Connection

STEPS = Path(__file__).parent / "migrations"


def upgrade(connection: Connection, to: str = "head") -> None:
    """Run the steps that the record has not seen; the caller holds the transaction."""
    config = Config()
    config.set_main_option("script_location", str(STEPS).replace("%", "%%"))
    config.set_main_option("path_separator", "os")
    config.attributes["connection"] = connection
    command.upgrade(config, to)
