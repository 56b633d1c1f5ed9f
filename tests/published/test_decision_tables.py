"""Overlaps and gaps of published decision tables.

Source of the analysis: Calvanese, Dumas, Laurson, Maggi, Montali and Teinemaa, BPM 2016, LNCS 9850, 217-233.
The loan grades are its example, the numbers from memory. The approval tables are two of the open test set of
the decision table standard (simple table, unique and any): their rows are from memory, what should be found
in them is not. Of the other tables of that set the rows were not at hand, so they are not tried.
"""

from decimal import Decimal
from itertools import combinations
from typing import Any

from builder.judge.bands import Cover, cover
from builder.judge.space import Space
from builder.model.condition import parse
from builder.model.fact import Fact
from tests.judge.small import fact


def fact_of(kind: str, **more: object) -> Fact:
    """One input of a table."""
    return Fact.model_validate(fact(kind, "sign", "both" if kind == "number" else "neither", **more))


LOAN = {name: fact_of("number", low=0, high=10000) for name in ("income", "loan")}
GRADES = {
    "A": ((0, 1000), (0, 1000)),
    "B": ((250, 750), (4000, 5000)),
    "C": ((500, 1500), (500, 3000)),
    "D": ((2000, 2500), (0, 2000)),
}
APPROVAL = {
    "age": fact_of("number", low=0, high=120),
    "risk": fact_of("one_of", values=["low", "medium", "high"]),
    "affordable": fact_of("yes_no"),
}
ADULT: dict[str, Any] = {"age": {"at_least": 18}, "risk": ["low", "medium"], "affordable": "yes"}
MINOR: dict[str, Any] = {"age": {"below": 18}}
UNIQUE = [ADULT, {**ADULT, **MINOR}, {"risk": "high", "affordable": "yes"}, {"affordable": "no"}]
ANY = [ADULT, MINOR, {"risk": "high"}, {"affordable": "no"}]
OUTPUTS = ["approved", "declined", "declined", "declined"]


def covered(facts: dict[str, Fact], rows: list[dict[str, Any]]) -> Cover:
    """How the rows of a table cover all of its inputs."""
    parsed = [parse(row) for row in rows]
    return cover(parsed, Space(facts, parsed, ()), list(facts))


def clashes(found: Cover, outputs: list[str]) -> set[tuple[int, int]]:
    """The overlaps that a table in which equal outputs may overlap does not allow."""
    return {pair for pair in found.overlaps if outputs[pair[0]] != outputs[pair[1]]}


def test_the_loan_grades_overlap_once() -> None:
    """A and C share a box, with the corner (500, 500) in it, and much is left out."""
    rows = [
        {name: {"at_least": low, "at_most": high} for name, (low, high) in zip(LOAN, box, strict=True)}
        for box in GRADES.values()
    ]
    found = covered(LOAN, rows)
    names = list(GRADES)
    assert [(names[a], names[b]) for a, b in found.overlaps] == [("A", "C")]
    assert found.overlaps[0, 2] == {"income": Decimal(500), "loan": Decimal(500)}
    assert len(found.gaps) > 1


def test_the_unique_table_has_neither_overlap_nor_gap() -> None:
    """Four rows that share nothing and leave nothing out."""
    assert covered(APPROVAL, UNIQUE) == Cover({}, ())


def test_a_row_dropped_from_the_unique_table_leaves_a_gap() -> None:
    """Whichever row it is, and only where it stood."""
    for dropped in range(len(UNIQUE)):
        found = covered(APPROVAL, [row for at, row in enumerate(UNIQUE) if at != dropped])
        assert found.overlaps == {}
        assert found.gaps != ()


def test_the_any_table_overlaps_where_the_outputs_are_equal() -> None:
    """Each two of the rows that decline, counted from 0; so it is sound, and not if read as unique."""
    found = covered(APPROVAL, ANY)
    assert set(found.overlaps) == set(combinations((1, 2, 3), 2))
    assert found.gaps == ()
    assert clashes(found, OUTPUTS) == set()


def test_another_output_in_the_any_table_is_a_clash() -> None:
    """Approving what another row declines."""
    for changed in (1, 2, 3):
        outputs = ["approved" if at == changed else one for at, one in enumerate(OUTPUTS)]
        expected = {pair for pair in combinations((1, 2, 3), 2) if changed in pair}
        assert clashes(covered(APPROVAL, ANY), outputs) == expected
