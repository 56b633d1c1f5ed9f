"""What approving bodies ask a certificate to say, as far as their rules could be read."""

from datetime import date

import pytest

from builder.certify.printed import printed
from builder.certify.rows import certificate_row
from builder.model.records import Basis, Certificate, Decision, Requirement
from tests.records.made import folder, terms

PROVIDER = "provider, provider number"
DEMANDS = {
    "Florida massage, 64B7-28.009": f"{PROVIDER}, name, licence number, course number, course, hours",
    "Texas massage, 16 TAC 117": f"{PROVIDER}, name, course, completed, place, hours, subjects, to sign",
    "South Carolina massage, 77-120": (
        f"{PROVIDER}, name, licence number, course, completed, hours, instructor"
    ),
    "California nursing, 16 CCR 1458": (
        f"{PROVIDER}, provider address, name, licence number, course, completed, hours, to sign"
    ),
    "Texas physical therapy, 22 TAC 341.3": (
        f"{PROVIDER}, name, licence number, course, completed, place, hours, to sign"
    ),
    "Idaho massage": "name, course, provider, completed, hours, subjects, instructor, credentials",
    "a national board of massage": (
        f"{PROVIDER}, provider contact, name, course, completed, hours, delivery, kind, to sign"
    ),
    "California insurance, 10 CCR 2105.10": (
        f"{PROVIDER}, provider contact, course, course number, first day, last day, "
        "place, hours, to keep, warning"
    ),
    "an association of physical therapists in Iowa": (
        "name, course, provider, completed, hours, instructor, objectives"
    ),
}
PASSED = Requirement(kind="test", name="final", met=True, reason="Passed.")
BASIS = Basis(sheets=(), keys=(), terms="t", evidence="e")
DECISION = Decision(
    course="falls", klass="spring", code="A", attempts=(), requirements=(PASSED,), basis=BASIS
)
ISSUED = date(2026, 6, 9)


def row() -> dict[str, str]:
    """One certificate of the invented class, as it stands in the list."""
    made = Certificate(
        provider="P-0042",
        number=1,
        revision=0,
        course="falls",
        klass="spring",
        code="A",
        person=1,
        decision=1,
        issued=ISSUED,
        printed=printed(terms(), folder(), DECISION, ISSUED),
    )
    return certificate_row(made, {"name": "Ann", "name_on_licence": "Ann", "licence": "00123"}, [])


@pytest.mark.parametrize("body", DEMANDS)
def test_every_field_asked_for_is_there(body: str) -> None:
    """No field that a body asks for is missing or empty; a signature is by hand, of whom we name."""
    made = row()
    assert {field: made[field] for field in DEMANDS[body].split(", ") if not made[field]} == {}


def test_no_one_list_is_enough_for_all() -> None:
    """Florida's own list names no date and would fail Texas: hence the union."""
    florida, texas = (set(DEMANDS[body].split(", ")) for body in list(DEMANDS)[:2])
    assert {"completed", "place", "subjects"} <= texas - florida
