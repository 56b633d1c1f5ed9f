"""What a record holds after the step of 0002."""

from sqlalchemy import NullPool, create_engine

from builder.doors.store.upgrade import upgrade

GUARDED = {"sheets", "refusals", "rings", "decisions", "certificates"}


def test_every_lasting_table_is_guarded() -> None:
    """Each table that must keep its rows has its three triggers."""
    with create_engine("sqlite://", poolclass=NullPool).begin() as connection:
        upgrade(connection, "0002")
        rows = connection.exec_driver_sql(
            "SELECT tbl_name FROM sqlite_master WHERE name LIKE '%_never_%'"
        ).all()
    assert sorted(row[0] for row in rows) == sorted([*GUARDED] * 3)
