"""Rows of conditions read as boxes: which of them overlap, and what none of them covers, each with a witness.

Exact: every variable is cut at each bound that a row names, into points and the gaps between them, and one
value of each cell is tried.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations, product

from builder.judge.phase import ends
from builder.judge.space import Space, Value
from builder.judge.truth import TRUE, compiled
from builder.model.condition import AllOf, Among, Node, atoms
from builder.model.judgement import Hole
from builder.model.library import Content

Witness = dict[str, Value]


@dataclass(frozen=True)
class Cover:
    """Pairs of rows, by place, that share a box, with a point in it; and a point of every cell left out."""

    overlaps: dict[tuple[int, int], Witness]
    gaps: tuple[Witness, ...]


def cover(rows: Sequence[Node], space: Space, names: Sequence[str] = ()) -> Cover:
    """How rows cover all values of the variables they name, or of these."""
    columns = list(names) or list(dict.fromkeys(atom.name for row in rows for atom in atoms(row)))
    tests = [compiled(row, space) for row in rows]
    overlaps: dict[tuple[int, int], Witness] = {}
    gaps: list[Witness] = []
    for point in _points(space, columns):
        state = space.state(point)
        held = [place for place, test in enumerate(tests) if test(state) is TRUE]
        for pair in combinations(held, 2):
            overlaps.setdefault(pair, point)
        if not held:
            gaps.append(point)
    return Cover(overlaps, tuple(gaps))


def _points(space: Space, columns: list[str]) -> Iterator[Witness]:
    cells = [[cell.value for cell in space.variables[name].cells] for name in columns]
    yield from (dict(zip(columns, point, strict=True)) for point in product(*cells))


def in_words(point: Witness, space: Space) -> str:
    """A point as it reads on a page."""
    facts = {name: space.variables[name].fact for name in point}
    return "; ".join(f"{facts[name].in_sentence}: {facts[name].in_words(one)}" for name, one in point.items())


def table_holes(content: Content, space: Space) -> Iterator[Hole]:
    """Severity bands that overlap or leave a gap, and clocks that are doubled, missing or run back."""
    for name, table in content.severity.tables.items():
        grades = [band.grade for band in table.bands]
        if others := {atom.name for band in table.bands for atom in atoms(band.when)} - {table.measure}:
            labels = [space.variables[one].fact.in_sentence for one in (table.measure, *sorted(others))]
            yield Hole("bands_of_another", name, f"measured: {labels[0]}; bounded: {', '.join(labels[1:])}")
        yield from _holes(name, grades, cover([band.when for band in table.bands], space), space)
    clocks = content.phases.clocks
    rows = [AllOf((Among("tissue", (one.tissue,)), Among("severity", (one.severity,)))) for one in clocks]
    names = [f"{one.tissue} {one.severity}" for one in clocks]
    yield from _holes("clocks", names, cover(rows, space, ("tissue", "severity")), space)
    for name, clock in zip(names, clocks, strict=True):
        if list(ends(clock)) != sorted(set(ends(clock))):
            yield Hole("clock_runs_back", name, ", ".join(f"{end} h" for end in ends(clock)))


def _holes(name: str, rows: Sequence[str], found: Cover, space: Space) -> Iterator[Hole]:
    for (one, other), point in found.overlaps.items():
        yield Hole("bands_overlap", f"{name}: {rows[one]} and {rows[other]}", in_words(point, space))
    if found.gaps:
        yield Hole("bands_gap", name, in_words(found.gaps[0], space))
