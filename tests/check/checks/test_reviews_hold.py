"""Signatures that are void are named."""

from dataclasses import replace

from builder.check.checks.reviews_hold import LEVEL, check
from builder.model.review import ReviewBook, fingerprint
from tests.check.small_course import evidence

WHO = {"who": "A clinician", "licence": "None real", "date": "2026-11-01"}


def test_a_void_signature_is_named_and_one_that_holds_is_not() -> None:
    """An id that nobody has, and a rule that has changed since it was signed."""
    made = evidence()
    rules = made.course.content.rules
    signed = {
        "fever": {**WHO, "fingerprint": fingerprint(rules["fever"])},
        "no_consent": {**WHO, "fingerprint": "0"},
        "nobody": {**WHO, "fingerprint": "0"},
    }
    book = ReviewBook.model_validate({"format": 1, "rules": signed})
    found = list(check(replace(made, course=replace(made.course, reviews=book))))
    assert LEVEL == "warning"
    assert [one.path for one in found] == [("rules", "no_consent", "fingerprint"), ("rules", "nobody")]
    assert fingerprint(rules["no_consent"]) in found[0].remedy


def test_phases_and_tables_are_held_as_well() -> None:
    """A signature for other clocks is void, and one for a table that is not there."""
    made = evidence()
    signed = {
        "phases": {"all": {**WHO, "fingerprint": "0"}},
        "severity": {"nothing": {**WHO, "fingerprint": "0"}},
    }
    book = ReviewBook.model_validate({"format": 1, **signed})
    found = list(check(replace(made, course=replace(made.course, reviews=book))))
    assert [one.path for one in found] == [("phases", "all", "fingerprint"), ("severity", "nothing")]
    assert fingerprint(made.course.content.phases) in found[0].remedy


def test_a_course_without_signatures_is_silent() -> None:
    """Nothing to hold."""
    assert list(check(evidence())) == []
