"""The rows of the certificate list and of the refusals, by column in plain words."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from builder.certify.reasons import Reason
from builder.model.records import Certificate
from builder.model.taught import Participant

CERTIFICATE_COLUMNS = (
    "certificate",
    "status",
    "name",
    "name on licence",
    "licence number",
    "course",
    "course number",
    "approval number",
    "provider",
    "provider number",
    "provider address",
    "provider contact",
    "first day",
    "last day",
    "completed",
    "place",
    "hours",
    "hour unit",
    "hours by the rules of",
    "other hours",
    "subjects",
    "delivery",
    "instructor",
    "credentials",
    "objectives",
    "kind",
    "issued",
    "to sign",
    "to keep",
    "warning",
)
REFUSED_COLUMNS = ("name", "name on licence", "licence number", "code", "requirement", "reason")
DESTROYED = "(no longer kept)"


def certificate_row(
    certificate: Certificate, person: Mapping[str, str] | None, reasons: Sequence[Reason]
) -> dict[str, str]:
    """One row of the list; a certificate whose decision no longer stands is marked, never dropped."""
    row = {
        "certificate": certificate.serial,
        "status": _status(certificate, reasons),
        "name": person["name"] if person else DESTROYED,
        "name on licence": person["name_on_licence"] if person else DESTROYED,
        "licence number": person["licence"] if person else DESTROYED,
        **certificate.printed,
    }
    return {column: row[column] for column in CERTIFICATE_COLUMNS}


def refused_row(person: Participant, reason: Reason) -> dict[str, str]:
    """One row of the refusals: one reason of one participant."""
    cells = (
        person.name,
        person.name_on_licence,
        person.licence,
        person.code,
        reason.requirement,
        reason.words,
    )
    return dict(zip(REFUSED_COLUMNS, cells, strict=True))


def _status(certificate: Certificate, reasons: Sequence[Reason]) -> str:
    if reasons:
        return "look at this: its holder is now refused"
    return f"reissued, first issued {certificate.issued.isoformat()}" if certificate.revision else "issued"
