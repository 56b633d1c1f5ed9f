"""Decisions and certificates as values."""

from datetime import date

import pytest
from pydantic import ValidationError

from builder.model.records import Basis, Certificate, Decision, Requirement, Terms
from tests.records.made import folder, person, terms

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


def test_a_class_apart_is_each_one_alone() -> None:
    """Everyone keeps what was seen of them, under any of their codes, and nothing of the others."""
    ann, ben = person(1, "A", "B"), person(2)
    both = folder(ann, ben)
    later = both.presences[0].model_copy(update={"code": ann.codes[1].lower()})
    stray = both.presences[0].model_copy(update={"code": "nobody"})
    apart = both.model_copy(update={"presences": (*both.presences, later, stray)}).apart()
    assert apart[ann.code].presences == (both.presences[0], later)
    assert apart[ben.code].presences == (both.presences[1],)
    assert apart[ben.code].station_sheets == (both.station_sheets[1],)
    assert apart[ben.code].participants == (ben,)
