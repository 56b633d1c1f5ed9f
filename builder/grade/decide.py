"""Decides about one participant, each requirement on its own."""

from __future__ import annotations

from collections.abc import Sequence

from builder.fault import Fault
from builder.grade.attempts import Rings, attempts_of
from builder.grade.attendance import attendance_requirement
from builder.grade.exam import exam_requirements
from builder.grade.stations import station_requirement
from builder.model.basis import basis_of
from builder.model.records import ClassFolder, Decision, KeptSheet, Requirement, Terms
from builder.model.station import Station
from builder.model.taught import Participant


def decide(
    terms: Terms, folder: ClassFolder, person: Participant, sheets: Sequence[KeptSheet], rings: Rings
) -> Decision:
    """Whether one participant, of whom these sheets count, met everything that is required."""
    attempts = attempts_of(person, sheets, rings, folder.markings)
    keys = [rings[kept.sheet.test, kept.sheet.edition] for kept in sheets]
    return Decision(
        course=folder.course,
        klass=folder.taught.id,
        code=person.code,
        attempts=attempts,
        requirements=(
            *exam_requirements(attempts, terms.course.requirements.test),
            *_stations(terms, folder, person),
            *_attendance(terms, folder, person),
        ),
        basis=basis_of(terms, folder, person, sheets, keys),
    )


def _stations(terms: Terms, folder: ClassFolder, person: Participant) -> list[Requirement]:
    known = {station.id: station for station in terms.stations}
    needed = terms.course.requirements.stations
    return [station_requirement(_known(known, name), folder.station_sheets, person) for name in needed]


def _known(stations: dict[str, Station], name: str) -> Station:
    if name not in stations:
        raise Fault(f"The course requires a station `{name}` that it does not have.", "Run check.")
    return stations[name]


def _attendance(terms: Terms, folder: ClassFolder, person: Participant) -> list[Requirement]:
    course = terms.course
    needed = course.requirements.attendance
    return [attendance_requirement(course.agenda, board, needed, folder, person) for board in terms.boards]
