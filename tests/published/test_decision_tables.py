"""Overlaps and gaps of published decision tables.

Source of the analysis: Calvanese, Dumas, Laurson, Maggi, Montali and Teinemaa, BPM 2016, LNCS 9850, 217-233.
The loan grades are its example, the numbers from memory. All other tables are those of the open test set of
the decision table standard (DMN technology compatibility kit, compliance level 2), named by their numbers
there: rows as the set gives them, counted from 0. The set says how its tables answer, not where they overlap
or leave gaps: pairs and counts come from a computation apart from ours, the counts again by hand.
"""

from decimal import Decimal
from typing import Any

import pytest

from builder.judge.bands import Cover, cover
from builder.judge.space import Space, Value
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
Row = dict[str, Any]
Pair = tuple[int, int]


def row(age: str = "", risk: str = "", affordable: str = "") -> Row:
    """One row: age as `>=18` or `<18`, words with a space between; what is left out is any."""
    when: Row = {"age": {"at_least": 0}}
    if age:
        when["age"] = {"at_least": int(age[2:])} if age.startswith(">=") else {"below": int(age[1:])}
    return (
        when | ({"risk": risk.split()} if risk else {}) | ({"affordable": affordable} if affordable else {})
    )


ADULT, MINOR = row(">=18", "medium low", "yes"), row("<18")
HIGH, POOR = row(risk="high"), row(affordable="no")
UNIQUE = [ADULT, row("<18", "medium low", "yes"), row(risk="high", affordable="yes"), POOR]
ANY = [ADULT, MINOR, HIGH, POOR]
OUTPUTS = ["approved", "declined", "declined", "declined"]
RATED = [row(">=18", "low", "yes"), row(">=18", "medium", "yes"), *UNIQUE[1:]]
RATES = ["approved best", "approved standard", *["declined standard"] * 3]
ORDERED = [row(">=18", "medium", "yes"), row(">=12", "medium", "yes"), row("<12", "low", "yes")]
PRIORITY = [ADULT, MINOR, HIGH]

# Number in the test set, rows, pairs that overlap, and how many cells of age, risk and means are left out,
# age cut at the bounds that the rows name.
TABLES: list[tuple[str, list[Row], set[Pair], int]] = [
    ("0004", UNIQUE, set(), 0),
    ("0005", ANY, {(1, 2), (1, 3), (2, 3)}, 0),
    ("0006", ANY, {(1, 2), (1, 3), (2, 3)}, 0),
    ("0007", [ADULT, row()], {(0, 1)}, 0),
    ("0010", RATED, set(), 0),
    ("0108", ORDERED, {(0, 1)}, 25),
    ("0109", ORDERED, {(0, 1)}, 25),
    ("0110", PRIORITY, {(1, 2)}, 4),
    ("0117", [*RATED, row(">=19", "low", "yes")], {(0, 5)}, 0),
    ("0118", PRIORITY, {(1, 2)}, 4),
    ("0119", PRIORITY, {(1, 2)}, 4),
]


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


def cells_left_out(found: Cover) -> set[tuple[Value, ...]]:
    """The gaps, without those at the ends of age, which a row without bounds does not cut off."""
    ends = (APPROVAL["age"].low, APPROVAL["age"].high)
    return {tuple(one.values()) for one in found.gaps if one["age"] not in ends}


@pytest.mark.parametrize(("number", "rows", "overlaps", "left_out"), TABLES, ids=[one[0] for one in TABLES])
def test_a_table_of_the_open_set(number: str, rows: list[Row], overlaps: set[Pair], left_out: int) -> None:
    """Exactly these rows share a box, and exactly so many cells are left out."""
    found = covered(APPROVAL, rows)
    assert set(found.overlaps) == overlaps, number
    assert len(cells_left_out(found)) == left_out


def test_what_is_left_out_has_a_client() -> None:
    """The child of 11 whom the first-hit table forgets, and the poor adult at low risk."""
    child = Space(APPROVAL, [parse(one) for one in ORDERED], ()).variables["age"]
    (stretch,) = child.values_in(child.mask_of(Decimal(11)))
    assert (stretch, "medium", "yes") in cells_left_out(covered(APPROVAL, ORDERED))
    assert (Decimal(18), "low", "no") in cells_left_out(covered(APPROVAL, PRIORITY))


def test_the_sixth_row_says_what_the_first_says() -> None:
    """So the table of six rows is sound as long as equal outputs may overlap."""
    six = covered(APPROVAL, [*RATED, row(">=19", "low", "yes")])
    assert clashes(six, [*RATES, "approved best"]) == set()
    assert clashes(six, [*RATES, "approved standard"]) == {(0, 5)}


def test_rows_that_share_a_box_may_differ_where_the_order_decides() -> None:
    """Read by priority, by order or by first hit; as unique or any each is an error."""
    assert clashes(covered(APPROVAL, ORDERED), ["best", "standard", "declined"]) == {(0, 1)}
    assert clashes(covered(APPROVAL, PRIORITY), ["approved", "declined", "approved"]) == {(1, 2)}


def test_a_row_dropped_from_the_unique_table_leaves_a_gap() -> None:
    """Whichever row it is, and only where it stood."""
    for dropped in range(len(UNIQUE)):
        found = covered(APPROVAL, [row for at, row in enumerate(UNIQUE) if at != dropped])
        assert found.overlaps == {}
        assert found.gaps != ()


def test_the_any_table_is_sound_as_its_outputs_are_equal() -> None:
    """And read as unique it has an error for each pair."""
    found = covered(APPROVAL, ANY)
    assert clashes(found, OUTPUTS) == set()
    assert len(found.overlaps) == 3


def test_another_output_in_the_any_table_is_a_clash() -> None:
    """Approving what another row declines."""
    pairs = covered(APPROVAL, ANY).overlaps
    for changed in (1, 2, 3):
        outputs = ["approved" if at == changed else one for at, one in enumerate(OUTPUTS)]
        expected = {pair for pair in pairs if changed in pair}
        assert clashes(covered(APPROVAL, ANY), outputs) == expected
