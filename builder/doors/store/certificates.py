"""Certificates: numbered without a gap for each provider, changed only by a further row."""

from __future__ import annotations

import json
from datetime import date, datetime

from sqlalchemy import func, insert, select

from builder.doors.store.opening import Store, stamp
from builder.doors.store.schema import CERTIFICATES, of_class
from builder.model.records import Certificate, ClassFolder


def certificates_of(store: Store, folder: ClassFolder) -> dict[str, Certificate]:
    """The certificates of a class as they stand now, by first personal code, in order of number."""
    found = select(CERTIFICATES).where(of_class(CERTIFICATES, folder))
    rows = store.rows(found.order_by(CERTIFICATES.c.number, CERTIFICATES.c.revision))
    return {
        row.code: Certificate(
            provider=row.provider,
            number=row.number,
            revision=row.revision,
            course=row.course,
            klass=row.klass,
            code=row.code,
            person=row.person,
            decision=row.decision,
            issued=date.fromisoformat(row.issued),
            printed=json.loads(row.printed),
        )
        for row in rows
    }


def next_number(store: Store, provider: str) -> int:
    """The number that follows the last one of a provider."""
    last = select(func.max(CERTIFICATES.c.number)).where(CERTIFICATES.c.provider == provider)
    return (store.rows(last)[0][0] or 0) + 1


def add_certificate(store: Store, certificate: Certificate, now: datetime) -> None:
    """Write a certificate, or the next revision of one, below all earlier ones."""
    values = {
        **certificate.model_dump(exclude={"issued", "printed"}),
        "issued": certificate.issued.isoformat(),
    }
    printed = json.dumps(certificate.printed, ensure_ascii=False)
    store.add(insert(CERTIFICATES), {**values, "written": stamp(now), "printed": printed})
