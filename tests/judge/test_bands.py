"""Overlaps and gaps of rows read as boxes, in the tables of the content and in any others."""

from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.judge.bands import cover, in_words, table_holes
from builder.judge.judge import Judge
from builder.judge.space import Space, Value
from builder.model.condition import parse
from builder.model.fact import Fact
from builder.model.library import Content
from builder.model.tables import PhaseBook, SeverityBook
from tests.judge.small import SEVERITY, content, fact, phase_book


def bent(*bands: tuple[str, dict[str, Any]]) -> Content:
    """The small content with other bands of knee bend."""
    table = dict(SEVERITY["tables"]["thigh"])
    table["bands"] = [{"grade": grade, "when": {"knee_flexion": when}} for grade, when in bands]
    return replace(content(), severity=SeverityBook.model_validate({**SEVERITY, "tables": {"thigh": table}}))


def clocked(change: Callable[[list[dict[str, Any]]], object]) -> Content:
    """The small content with its clocks changed."""
    book = phase_book()
    change(book["clocks"])
    return replace(content(), phases=PhaseBook.model_validate(book))


def found(made: Content) -> list[tuple[str, str, str]]:
    """What is wrong with the tables; the space is that of the sound content with the bounds of this one."""
    return [(one.sort, one.about, one.witness) for one in table_holes(made, Judge(made).space)]


def test_sound_tables_have_no_hole() -> None:
    """The bands of the small content touch, and share and leave nothing."""
    assert found(content()) == []


@pytest.mark.parametrize(
    ("bands", "expected"),
    [
        (
            [
                ("mild", {"at_least": 90}),
                ("moderate", {"at_least": 45, "at_most": 90}),
                ("severe", {"below": 45}),
            ],
            [("bands_overlap", "thigh: mild and moderate", "knee bend: 90°")],
        ),
        (
            [("mild", {"over": 90}), ("moderate", {"over": 45, "at_most": 90}), ("severe", {"below": 45})],
            [("bands_gap", "thigh", "knee bend: 45°")],
        ),
        (
            [("mild", {"over": 80}), ("severe", {"below": 90})],
            [("bands_overlap", "thigh: mild and severe", "knee bend: 85°")],
        ),
        ([("mild", {"over": 90})], [("bands_gap", "thigh", "knee bend: 0°")]),
    ],
)
def test_bands_that_overlap_or_leave_a_gap_are_found(
    bands: list[tuple[str, dict[str, Any]]], expected: list[tuple[str, str, str]]
) -> None:
    """A single shared or missing degree is enough."""
    assert found(bent(*bands)) == expected


def test_bands_of_another_fact_are_found_and_grade_nothing() -> None:
    """A measure that no band bounds says nothing of the injury, so the worse is taken."""
    table = {**SEVERITY["tables"]["thigh"], "measure": "swelling"}
    book = SeverityBook.model_validate({**SEVERITY, "tables": {"thigh": table}})
    made = replace(content(), severity=book)
    assert found(made) == [("bands_of_another", "thigh", "measured: swelling; bounded: knee bend")]
    values: dict[str, Value] = {"injury": "contusion", "region": "thigh", "swelling": "none"}
    values |= {"hours": Decimal(18), "knee_flexion": Decimal(100)}
    assert Judge(made).frame(values, "mild", None).severity.possible == ("mild", "moderate", "severe")


def test_a_doubled_and_a_missing_clock_are_found() -> None:
    """Every tissue and severity has one clock."""
    assert found(clocked(lambda clocks: clocks.append(dict(clocks[0])))) == [
        ("bands_overlap", "clocks: muscle mild and muscle mild", "measure: muscle; measure: mild")
    ]
    assert found(clocked(lambda clocks: clocks.pop())) == [
        ("bands_gap", "clocks", "measure: tendon; measure: severe")
    ]


def test_a_clock_that_runs_back_is_found() -> None:
    """Late repair can not end before early repair does."""
    assert found(clocked(lambda clocks: clocks[0].update(late_repair_until=90))) == [
        ("clock_runs_back", "muscle mild", "48 h, 96 h, 90 h")
    ]


BOX = st.fixed_dictionaries({name: st.tuples(st.integers(0, 6), st.integers(0, 6)) for name in "xy"})
FACTS = {name: Fact.model_validate(fact("number", "sign", "both", low=0, high=6)) for name in "xy"}


@given(st.lists(BOX, min_size=1, max_size=4))
def test_every_overlap_and_gap_of_boxes_is_found(boxes: list[dict[str, tuple[int, int]]]) -> None:
    """As counting every half step says; each witness lies where it should."""
    rows = [
        parse({name: {"at_least": min(pair), "at_most": max(pair)} for name, pair in box.items()})
        for box in boxes
    ]
    made = cover(rows, Space(FACTS, rows, ()), ("x", "y"))
    halves = [Decimal(step) / 2 for step in range(13)]
    inside = {
        (x, y): [at for at, box in enumerate(boxes) if holds(box, x, y)] for x in halves for y in halves
    }
    pairs = {(a, b) for held in inside.values() for a in held for b in held if a < b}
    assert set(made.overlaps) == pairs
    assert bool(made.gaps) == any(not held for held in inside.values())
    for (a, b), point in made.overlaps.items():
        assert all(holds(boxes[at], Decimal(point["x"]), Decimal(point["y"])) for at in (a, b))
    for point in made.gaps:
        assert not any(holds(box, Decimal(point["x"]), Decimal(point["y"])) for box in boxes)


def holds(box: dict[str, tuple[int, int]], x: Decimal, y: Decimal) -> bool:
    """Whether a point lies in a box."""
    return all(min(box[name]) <= value <= max(box[name]) for name, value in (("x", x), ("y", y)))


def test_a_point_reads_as_it_does_on_a_page() -> None:
    """Each value in its fact's own words."""
    point: dict[str, Value] = {"knee_flexion": Decimal(45), "written.barrier": "no"}
    assert in_words(point, Judge(content()).space) == "knee bend: 45°; written: on the skin"
