"""Why someone gets no certificate: every reason, not the first alone."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from builder.model.basis import basis_of
from builder.model.records import ClassFolder, Decision, KeptSheet, Terms
from builder.model.taught import Participant


@dataclass(frozen=True)
class Reason:
    """One reason, with the requirement it belongs to."""

    requirement: str
    words: str


def unmet(decision: Decision) -> list[Reason]:
    """The requirements that a decision found not met."""
    return [
        Reason(f"{one.kind.replace('_', ' ')} {one.name}", one.reason)
        for one in decision.requirements
        if not one.met
    ]


def stale(
    terms: Terms, folder: ClassFolder, person: Participant, decision: Decision, sheets: Iterable[KeptSheet]
) -> list[Reason]:
    """What changed since the decision, so that it may no longer hold."""
    now = basis_of(terms, folder, person, sheets, ())
    then = decision.basis
    changed = {
        "the answer sheets that count": now.sheets != then.sheets,
        "the course's requirements, agenda, boards or stations": now.terms != then.terms,
        "the attendance, station sheets, dates or codes": now.evidence != then.evidence,
    }
    return [
        Reason("decision", f"Graded before {what} changed; grade again.")
        for what, did in changed.items()
        if did
    ]


def too_early(folder: ClassFolder, today: date) -> list[Reason]:
    """A class that is not over certifies nobody."""
    last = max(folder.taught.dates)
    return [Reason("dates", f"The class ends on {last.isoformat()}.")] if today < last else []
