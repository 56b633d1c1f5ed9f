"""The rows of the certificate list and of the refusals."""

from datetime import date

from builder.certify.printed import printed
from builder.certify.reasons import Reason
from builder.certify.rows import CERTIFICATE_COLUMNS, REFUSED_COLUMNS, certificate_row, refused_row
from builder.model.records import Basis, Certificate, Decision
from tests.records.made import folder, person, terms

ISSUED = date(2026, 6, 9)
BASIS = Basis(sheets=(), keys=(), terms="t", evidence="e")
DECISION = Decision(course="falls", klass="spring", code="A", attempts=(), requirements=(), basis=BASIS)
PERSON = {"name": "Suharto", "name_on_licence": "SUHARTO", "licence": "00123"}


def certificate(revision: int = 0) -> Certificate:
    """A certificate of the spring class."""
    return Certificate(
        provider="P",
        number=7,
        revision=revision,
        course="falls",
        klass="spring",
        code="A",
        person=1,
        decision=1,
        issued=ISSUED,
        printed=printed(terms(), folder(), DECISION, ISSUED),
    )


def test_a_row_has_every_column_once() -> None:
    """The columns are those of the list, in its order, and the licence number is text."""
    row = certificate_row(certificate(), PERSON, [])
    assert tuple(row) == CERTIFICATE_COLUMNS
    assert (row["certificate"], row["name"], row["licence number"]) == ("00007", "Suharto", "00123")
    assert row["status"] == "issued"


def test_a_reissue_says_so() -> None:
    """The first day of issue stays on it."""
    row = certificate_row(certificate(revision=1), PERSON, [])
    assert (row["certificate"], row["status"]) == ("00007-R1", "reissued, first issued 2026-06-09")


def test_a_holder_who_is_now_refused_is_to_be_looked_at() -> None:
    """A certificate is never dropped from the list."""
    row = certificate_row(certificate(), PERSON, [Reason("test final", "Failed.")])
    assert row["status"].startswith("look at this")


def test_a_person_who_was_destroyed_leaves_the_certificate() -> None:
    """Without the personal row the list says so."""
    assert certificate_row(certificate(), None, [])["name"] == "(no longer kept)"


def test_a_refusal_names_person_and_reason() -> None:
    """One reason is one row."""
    row = refused_row(person(1, name="Ann"), Reason("test final", "Failed."))
    assert tuple(row) == REFUSED_COLUMNS
    assert (row["name"], row["requirement"], row["reason"]) == ("Ann", "test final", "Failed.")
