"""Statistics are about first tries alone."""

from fractions import Fraction

from builder.analyse.sitters import first_sittings
from builder.model.handed import sheet_of
from builder.model.records import Attempt, Basis, Decision, KeptSheet, Mark
from tests.records.made import NOW, code_for, sheet_bytes

GIVEN = {"a1": "o2", "a2": None, "a3": ["o1", "o4"]}
SHEETS = [
    KeptSheet(digest=name, received=NOW, sheet=sheet_of(sheet_bytes(code_for(1), GIVEN))) for name in "xyz"
]


def attempt(sheet: str, number: int, version: str = "A", test: str = "final") -> Attempt:
    """A graded try of three questions."""
    marks = tuple(
        Mark(question=f"a{at}", mark=Fraction(at, 3), given=True, must_pass=False) for at in range(1, 4)
    )
    return Attempt(
        test=test,
        number=number,
        code="A",
        version=version,
        sheet=sheet,
        edition="e",
        key_edition="k",
        marks=marks,
        total=Fraction(2, 3),
        pass_mark=Fraction(7, 10),
        counts=True,
        passed=False,
    )


def decision(*attempts: Attempt) -> Decision:
    """A decision that saw these attempts."""
    basis = Basis(sheets=(), keys=(), terms="t", evidence="e")
    return Decision(course="c", klass="k", code="A", attempts=attempts, requirements=(), basis=basis)


def test_the_first_try_of_each_test_is_taken() -> None:
    """A retake is left out, another test is not; versions stand apart and in order."""
    first = decision(attempt("x", 1, "B"), attempt("y", 2, "A"), attempt("z", 1, "A", "quiz"))
    other = decision(attempt("y", 2, "A"))
    found = first_sittings([first, other], SHEETS)
    assert {place[:2]: [one.sheet for one in sat] for place, sat in found.items()} == {
        ("final", "A"): ["y"],
        ("final", "B"): ["x"],
        ("quiz", "A"): ["z"],
    }


def test_a_sitting_tells_marks_and_choices() -> None:
    """What was given stays as it was, whatever the kind; what was left open is none."""
    (sitting,) = first_sittings([decision(attempt("x", 1))], SHEETS)["final", "A", "e", "k"]
    assert sitting.row == (Fraction(1, 3), Fraction(2, 3), Fraction(1))
    assert sitting.marks["a2"] == Fraction(2, 3)
    assert sitting.given == {"a1": "o2", "a3": ("o1", "o4")}
    assert not sitting.waits
