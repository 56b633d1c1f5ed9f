"""Certificates are numbered without a gap and change only by a further row."""

from datetime import date
from pathlib import Path

import pytest

from builder.doors.store.certificates import add_certificate, certificates_of, next_number
from builder.doors.store.decisions import add_decision
from builder.doors.store.opening import Store
from builder.fault import Fault
from builder.model.records import Basis, Certificate, Decision
from tests.records.kept import contents, opened
from tests.records.made import NOW, folder

BASIS = Basis(sheets=(), keys=(), terms="t", evidence="e")


def certificate(number: int, code: str, revision: int = 0, provider: str = "P") -> Certificate:
    """A certificate of the spring class."""
    return Certificate(
        provider=provider,
        number=number,
        revision=revision,
        course="falls",
        klass="spring",
        code=code,
        person=1,
        decision=1,
        issued=date(2026, 6, 9),
        printed={"course": "Falls é"},
    )


def decide(store: Store) -> None:
    """Write a decision for certificates to rest on."""
    made = Decision(course="falls", klass="spring", code="A", attempts=(), requirements=(), basis=BASIS)
    add_decision(store, made, NOW)


def test_a_reissue_stands_for_the_first(tmp_path: Path) -> None:
    """The newest revision is what stands; the first is kept."""
    with opened(tmp_path) as store:
        decide(store)
        for one in (certificate(1, "A"), certificate(2, "B"), certificate(1, "A", revision=1)):
            add_certificate(store, one, NOW)
        assert certificates_of(store, folder()) == {
            "A": certificate(1, "A", revision=1),
            "B": certificate(2, "B"),
        }
        assert (next_number(store, "P"), next_number(store, "Q")) == (3, 1)
    assert len(contents(tmp_path)["certificates"]) == 3


@pytest.mark.parametrize(
    ("wrong", "words"),
    [
        (certificate(3, "B"), "no gap"),
        (certificate(1, "B"), "never changed"),
        (certificate(2, "A"), "never changed"),
        (certificate(2, "B").model_copy(update={"decision": 7}), "FOREIGN KEY"),
    ],
    ids=["gap", "number twice", "holder twice", "no decision"],
)
def test_a_wrong_number_is_refused(tmp_path: Path, wrong: Certificate, words: str) -> None:
    """No gap, no number given twice, no second certificate for one holder, none without a decision."""
    with opened(tmp_path) as store:
        decide(store)
        add_certificate(store, certificate(1, "A"), NOW)
        with pytest.raises(Fault, match=words):
            add_certificate(store, wrong, NOW)
