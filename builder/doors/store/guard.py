"""The triggers by which the record itself refuses what must never happen to it."""

from __future__ import annotations

TRIGGER = (
    "CREATE TRIGGER {table}_{name} BEFORE {event} ON {table} {when}BEGIN SELECT RAISE(ABORT, '{words}'); END"
)


def append_only(table: str, *identities: tuple[str, ...]) -> tuple[str, ...]:
    """The triggers that refuse to change, remove or replace a row; an identity is a set of unique columns."""
    words = f"rows of {table} are never changed or removed"
    same = " OR ".join(" AND ".join(f"{name} = NEW.{name}" for name in one) for one in (("id",), *identities))
    again = f"WHEN EXISTS (SELECT 1 FROM {table} WHERE {same}) "  # noqa: S608 - names of our own tables
    return (
        TRIGGER.format(table=table, name="never_changed", event="UPDATE", when="", words=words),
        TRIGGER.format(table=table, name="never_removed", event="DELETE", when="", words=words),
        TRIGGER.format(table=table, name="never_replaced", event="INSERT", when=again, words=words),
    )


def without_gaps() -> str:
    """The trigger that refuses a certificate number that leaves out another of the same provider."""
    last = "SELECT COALESCE(MAX(number), 0) FROM certificates WHERE provider = NEW.provider"
    when = f"WHEN NEW.number > ({last}) + 1 OR NEW.number < 1 "
    words = "certificate numbers leave no gap"
    return TRIGGER.format(table="certificates", name="without_gaps", event="INSERT", when=when, words=words)
