"""The client that shows a fault, told by what must be remarkable."""

from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

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
        (
            {
                "any": [
                    {"swelling": "falling"},
                    {"all": [{"numb_skin": "yes"}, {"knee_flexion": {"below": 45}}]},
                ]
            },
            "swelling: falling",
        ),
    ],
)
def test_only_what_must_be_remarkable_is_told(when: dict[str, object], told: str) -> None:
    """Everything else is at its safest."""
    made = content()
    with Solver() as solver:
        proof = Encoding(made, Judge(made).space, solver)
        assert witness(proof, [*proof.recorded, proof.literal(parse(when))]) == told


FACTS = [
    {"numb_skin": "yes"},
    {"swelling": "rising"},
    {"knee_flexion": {"below": 45}},
    {"recalled_flexion": {"below": 45}},
    {"cool_head": "no"},
    {"reinjured": "yes"},
]


@settings(max_examples=60, deadline=None)
@given(
    st.lists(st.lists(st.sampled_from(FACTS), min_size=1, max_size=3, unique_by=str), min_size=2, max_size=3)
)
def test_no_client_with_fewer_remarkable_facts_shows_it(ways: list[list[dict[str, object]]]) -> None:
    """Compared with every smaller choice of facts that may lie away from their safest."""
    made = content()
    with Solver() as solver:
        proof = Encoding(made, Judge(made).space, solver)
        assumed = [*proof.recorded, proof.literal(parse({"any": [{"all": way} for way in ways]}))]
        told = witness(proof, assumed).count("; ") + 1
        safest = {
            name: proof.cells[name][-1 if one.fact.worse_when in ("lower", "no") else 0]
            for name, one in proof.space.variables.items()
            if not name.startswith(("recorded:", "written."))
        }
        for free in combinations(safest, told - 1):
            rest = [literal for name, literal in safest.items() if name not in free]
            assert not solver.can_be([*assumed, *rest])
