"""Decisions and certificates as values."""

from datetime import date

import pytest
from pydantic import ValidationError

from builder.model.records import Basis, Certificate, Decision, Requirement, Terms
from tests.records.made import terms

BASIS = Basis(sheets=(), keys=(), terms="t", evidence="e")


def decision(*met: bool) -> Decision:
    """A decision with these requirements."""
    found = tuple(Requirement(kind="station", name="wrap", met=one, reason="Seen.") for one in met)
    return Decision(course="falls", klass="spring", code="A", attempts=(), requirements=found, basis=BASIS)


def test_one_unmet_requirement_decides() -> None:
    """Everything must be met."""
    assert decision(True, True).met
    assert not decision(True, False).met


def test_a_decision_survives_the_record() -> None:
    """A decision comes back from JSON as it went."""
    made = decision(True)
    assert Decision.model_validate_json(made.model_dump_json()) == made


@pytest.mark.parametrize(("revision", "serial"), [(0, "00042"), (2, "00042-R2")])
def test_a_reissue_keeps_its_number(revision: int, serial: str) -> None:
    """The serial of a reissue says that it is one."""
    made = Certificate(
        provider="P-0042",
        number=42,
        revision=revision,
        course="falls",
        klass="spring",
        code="A",
        person=1,
        decision=1,
        issued=date(2026, 6, 9),
        printed={},
    )
    assert made.serial == serial


def test_terms_name_a_board() -> None:
    """Without a board's rules attendance would go unasked, so there are no such terms."""
    with pytest.raises(ValidationError):
        Terms(course=terms().course, boards=())
