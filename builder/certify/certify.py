"""Issues certificates to those who met everything, and refuses the others with every reason."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

from builder.certify.printed import printed
from builder.certify.reasons import Reason, stale, too_early, unmet
from builder.certify.rows import certificate_row, refused_row
from builder.doors.store.certificates import add_certificate, certificates_of, next_number
from builder.doors.store.decisions import latest_decisions
from builder.doors.store.opening import Store
from builder.doors.store.people import person_of, remember_person
from builder.doors.store.sheets import sheets_of
from builder.model.hours import zone_of
from builder.model.outcome import Issued
from builder.model.records import Certificate, ClassFolder, Decision, KeptSheet, Terms
from builder.model.standing import counted_apart
from builder.model.taught import Participant


@dataclass(frozen=True)
class Desk:
    """What lies on the desk while a class is certified; `today` is the day where the class is held."""

    store: Store
    terms: Terms
    folder: ClassFolder
    now: datetime
    today: date
    decisions: dict[str, tuple[int, Decision]]
    sheets: dict[str, list[KeptSheet]]
    apart: dict[str, ClassFolder]
    held: dict[str, Certificate]


def certify_class(store: Store, terms: Terms, folder: ClassFolder, now: datetime) -> Issued:
    """The certificate list of a class and its refusals; serials once given are kept."""
    with store.transaction():
        desk = _desk(store, terms, folder, now)
        refusals = {person.code: _reasons(desk, person) for person in folder.participants}
        fresh = [_issue(desk, person) for person in folder.participants if not refusals[person.code]]
        standing = certificates_of(store, folder)
        return Issued(
            klass=folder.taught.id,
            certificates=tuple(
                certificate_row(one, person_of(store, one.person), refusals.get(one.code, []))
                for one in sorted(standing.values(), key=lambda one: one.number)
            ),
            refused=tuple(
                refused_row(person, reason)
                for person in folder.participants
                for reason in refusals[person.code]
            ),
            fresh=tuple(serial for serial in fresh if serial),
        )


def _desk(store: Store, terms: Terms, folder: ClassFolder, now: datetime) -> Desk:
    return Desk(
        store=store,
        terms=terms,
        folder=folder,
        now=now,
        today=now.astimezone(zone_of(folder.taught.zone)).date(),
        decisions=latest_decisions(store, folder),
        sheets=counted_apart(sheets_of(store, folder), folder),
        apart=folder.apart(),
        held=certificates_of(store, folder),
    )


def _reasons(desk: Desk, person: Participant) -> list[Reason]:
    if person.code not in desk.decisions:
        return [Reason("decision", "Not graded yet; grade the class first.")]
    _, decision = desk.decisions[person.code]
    return [
        *stale(desk.terms, desk.apart[person.code], person, decision, desk.sheets[person.code]),
        *unmet(decision),
        *too_early(desk.folder, desk.today),
    ]


def _issue(desk: Desk, person: Participant) -> str | None:
    """The serial of a certificate that is new or must say something else; None where nothing changed."""
    held = desk.held.get(person.code)
    made = _made(desk, person, held)
    if held and (held.person, held.printed) == (made.person, made.printed):
        return None
    add_certificate(desk.store, made, desk.now)
    return made.serial


def _made(desk: Desk, person: Participant, held: Certificate | None) -> Certificate:
    provider = desk.terms.course.provider
    number, decision = desk.decisions[person.code]
    sequence = held.provider if held else provider.number or provider.name
    issued = held.issued if held else desk.today
    return Certificate(
        provider=sequence,
        number=held.number if held else next_number(desk.store, sequence),
        revision=held.revision + 1 if held else 0,
        course=desk.folder.course,
        klass=desk.folder.taught.id,
        code=person.code,
        person=remember_person(desk.store, desk.folder, person, desk.now),
        decision=number,
        issued=issued,
        printed=printed(desk.terms, desk.folder, decision, issued),
    )
