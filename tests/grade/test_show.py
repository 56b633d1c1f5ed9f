"""What grading says on the terminal."""

from builder.grade.show import lines
from builder.model.outcome import Graded
from builder.model.records import Basis, Decision, Requirement


def test_everyone_has_every_reason() -> None:
    """Each participant is named with each requirement, and a reversal is said."""
    found = (
        Requirement(kind="test", name="final", met=True, reason="9 of 10."),
        Requirement(kind="must_pass", name="final", met=False, reason="Missed q1."),
    )
    basis = Basis(sheets=(), keys=(), terms="t", evidence="e")
    made = Decision(course="falls", klass="spring", code="A", attempts=(), requirements=found, basis=basis)
    graded = Graded(klass="spring", names={"A": "Ann"}, decisions=(made,), written=("A",), turned=("A",))
    assert lines(graded) == [
        "Class spring: 0 of 1 met everything; 1 decisions new.",
        "  not met  Ann (A)",
        "    yes  test final: 9 of 10.",
        "    no   must pass final: Missed q1.",
        "  turned Ann (A): the decision before said otherwise.",
    ]
