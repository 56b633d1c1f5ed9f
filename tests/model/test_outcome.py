"""What the records verbs hand back is plain data."""

from builder.model.outcome import Collected, Issued, LeftFile


def test_outcomes_are_json() -> None:
    """An outcome goes to JSON and back unchanged."""
    left = LeftFile(file="a.json", fault="Damaged.", remedy="Ask again.")
    made = Collected(klass="spring", taken=(), had=("b.json",), left=(left,), notices=())
    assert Collected.model_validate_json(made.model_dump_json()) == made
    issued = Issued(klass="spring", certificates=({"certificate": "00001"},), refused=(), fresh=("00001",))
    assert Issued.model_validate_json(issued.model_dump_json()) == issued
