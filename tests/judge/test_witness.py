"""The client that shows a fault, told by what must be remarkable."""

import pytest

from builder.doors.solver import Solver
from builder.judge.encode import Encoding
from builder.judge.judge import Judge
from builder.judge.witness import witness
from builder.model.condition import parse
from tests.judge.small import content


@pytest.mark.parametrize(
    ("when", "told"),
    [
        ({"numb_skin": "no"}, "any client"),
        ({"numb_skin": "yes"}, "numb skin: yes"),
        ({"knee_flexion": {"below": 45}}, "knee bend: 22.5°"),
        ({"any": [{"numb_skin": "yes"}, {"swelling": {"at_least": "falling"}}]}, "numb skin: yes"),
        ({"all": [{"numb_skin": "yes"}, {"swelling": "rising"}]}, "swelling: rising; numb skin: yes"),
    ],
)
def test_only_what_must_be_remarkable_is_told(when: dict[str, object], told: str) -> None:
    """Everything else is at its safest."""
    made = content()
    with Solver() as solver:
        proof = Encoding(made, Judge(made).space, solver)
        assert witness(proof, [*proof.recorded, proof.literal(parse(when))]) == told
