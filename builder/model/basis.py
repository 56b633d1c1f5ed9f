"""What a decision rests on, as fingerprints of parsed values, so that a stale decision is seen."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable

from builder.model.code import tidy
from builder.model.key import KeyRing
from builder.model.noun import Noun
from builder.model.records import Basis, ClassFolder, KeptSheet, Terms
from builder.model.taught import Participant


def basis_of(
    terms: Terms,
    folder: ClassFolder,
    person: Participant,
    sheets: Iterable[KeptSheet],
    rings: Iterable[KeyRing],
) -> Basis:
    """The basis of a decision about one participant; `sheets` are those that count, `rings` their keys."""
    return Basis(
        sheets=tuple(sorted(kept.digest for kept in sheets)),
        keys=tuple(sorted({f"{ring.test} {ring.edition} {ring.key_edition}" for ring in rings})),
        terms=terms_fingerprint(terms),
        evidence=_evidence(folder, person),
    )


def terms_fingerprint(terms: Terms) -> str:
    """The fingerprint of whatever decides in a course: requirements, agenda, boards and stations."""
    course = terms.course
    return _fingerprint((course.requirements, *course.agenda, *terms.boards, *terms.stations))


def _evidence(folder: ClassFolder, person: Participant) -> str:
    codes = {tidy(code) for code in person.codes}
    presences = [row for row in folder.presences if tidy(row.code) in codes]
    sheets = [sheet for sheet in folder.station_sheets if tidy(sheet.code) in codes]
    marked = [one for one in folder.markings if tidy(one.code) in codes]
    days = " ".join(day.isoformat() for day in folder.taught.dates)
    return _fingerprint((*presences, *sheets, *marked), days, folder.taught.zone, *person.codes)


def _fingerprint(nouns: Iterable[Noun], *words: str) -> str:
    whole = "\n".join([*sorted(noun.model_dump_json() for noun in nouns), *words])
    return hashlib.sha256(whole.encode("utf-8")).hexdigest()
