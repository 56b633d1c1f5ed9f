"""Every reason against a certificate is given."""

from datetime import date

import pytest

from builder.certify.reasons import stale, too_early, unmet
from builder.model.basis import basis_of
from builder.model.handed import sheet_of
from builder.model.records import ClassFolder, Decision, KeptSheet, Requirement, Terms
from tests.records.made import AGENDA, NOW, answers, folder, person, presence, sheet_bytes, terms

ANN = person(1)
SPRING = folder(ANN)
SHEET = KeptSheet(digest="d", received=NOW, sheet=sheet_of(sheet_bytes(ANN.code, answers())))


def decision(*requirements: Requirement) -> Decision:
    """A decision about Ann that rests on one sheet."""
    basis = basis_of(terms(), SPRING, ANN, [SHEET], ())
    return Decision(
        course="falls", klass="spring", code=ANN.code, attempts=(), requirements=requirements, basis=basis
    )


def test_each_unmet_requirement_is_a_reason() -> None:
    """What was met is no reason; what was not is named by kind and name."""
    found = unmet(
        decision(
            Requirement(kind="must_pass", name="final", met=False, reason="Missed q1."),
            Requirement(kind="station", name="wrap", met=True, reason="Fine."),
            Requirement(kind="attendance", name="generic", met=False, reason="Half."),
        )
    )
    assert [(one.requirement, one.words) for one in found] == [
        ("must pass final", "Missed q1."),
        ("attendance generic", "Half."),
    ]


@pytest.mark.parametrize(
    ("given", "spring", "sheets", "words"),
    [
        (terms(), SPRING, [SHEET], []),
        (terms(), SPRING, [], ["answer sheets"]),
        (terms(agenda=AGENDA[:1]), SPRING, [SHEET], ["agenda"]),
        (terms(), folder(ANN, presences=(presence(ANN, "10:00"),)), [SHEET], ["attendance"]),
        (terms(agenda=()), folder(ANN, station_sheets=()), [], ["answer sheets", "agenda", "attendance"]),
    ],
)
def test_a_decision_that_rests_on_something_else_is_stale(
    given: Terms, spring: ClassFolder, sheets: list[KeptSheet], words: list[str]
) -> None:
    """Whatever changed since the grading is named, and nothing else."""
    found = stale(given, spring, ANN, decision(), sheets)
    assert len(found) == len(words)
    assert all(word in one.words for word, one in zip(words, found, strict=True))


def test_a_class_certifies_from_its_last_day_on() -> None:
    """The day before is too early, the day itself is not."""
    assert too_early(SPRING, date(2026, 6, 5))[0].words == "The class ends on 2026-06-06."
    assert too_early(SPRING, date(2026, 6, 6)) == []
