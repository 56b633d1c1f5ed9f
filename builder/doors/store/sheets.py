"""Answer sheets as they came, and the files that could not be taken."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import insert, select

from builder.doors.store.opening import Store, stamp
from builder.doors.store.schema import REFUSALS, SHEETS, of_class
from builder.model.answers import AnswerSheet
from builder.model.code import tidy
from builder.model.records import ClassFolder, KeptSheet


def owner_of(store: Store, digest: str) -> tuple[str, str] | None:
    """The course and class for which these very bytes were taken before, if they were."""
    rows = store.rows(select(SHEETS.c.course, SHEETS.c.klass).where(SHEETS.c.digest == digest))
    return (rows[0].course, rows[0].klass) if rows else None


def add_sheet(store: Store, folder: ClassFolder, kept: KeptSheet, body: bytes) -> None:
    """Keep an answer sheet byte by byte, under the digest of its bytes."""
    sheet = kept.sheet
    values = {
        "course": folder.course,
        "klass": folder.taught.id,
        "test": sheet.test,
        "version": sheet.version,
        "edition": sheet.edition,
        "code": tidy(sheet.code),
        "sheet": sheet.sheet,
        "rev": sheet.rev,
        "digest": kept.digest,
        "received": stamp(kept.received),
        "body": body,
    }
    store.add(insert(SHEETS), values)


def sheets_of(store: Store, folder: ClassFolder) -> tuple[KeptSheet, ...]:
    """Every answer sheet of a class, in the order of its digests."""
    found = select(SHEETS.c.digest, SHEETS.c.received, SHEETS.c.body).where(of_class(SHEETS, folder))
    return tuple(
        KeptSheet(
            digest=row.digest,
            received=datetime.fromisoformat(row.received),
            sheet=AnswerSheet.model_validate_json(row.body),
        )
        for row in store.rows(found.order_by(SHEETS.c.digest))
    )


def add_refusal(store: Store, folder: ClassFolder, digest: str, fault: str, now: datetime) -> None:
    """Note once that a file could not be taken, and why."""
    values = {"course": folder.course, "klass": folder.taught.id, "digest": digest, "fault": fault}
    same = (REFUSALS.c.digest == digest) & (REFUSALS.c.fault == fault) & of_class(REFUSALS, folder)
    with store.transaction():
        if not store.rows(select(REFUSALS.c.id).where(same)):
            store.add(insert(REFUSALS), {**values, "seen": stamp(now)})
