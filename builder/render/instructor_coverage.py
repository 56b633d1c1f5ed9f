"""Where each objective is taught, practised and tested, and which of that is missing."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from builder.model.course import AgendaItem, Objective
from builder.model.key import Key, KeyRing
from builder.model.matrix import Served, matrix
from builder.model.site import SitePage
from builder.render.instructor_address import COVERAGE
from builder.render.instructor_study import study_values
from builder.render.maker import Maker, all_reviewed


@dataclass(frozen=True)
class Cell:
    """One place of the matrix: its column, how many, and their names or a note."""

    head: str
    count: int
    note: str = ""


@dataclass(frozen=True)
class Row:
    """One objective with its cells, in the order of the columns."""

    objective: Objective
    lessons: Cell
    practice: Cell
    tests: tuple[Cell, ...]
    stations: Cell
    minutes: Cell

    @property
    def cells(self) -> tuple[Cell, ...]:
        """All cells, from left to right."""
        return (self.lessons, self.practice, *self.tests, self.stations, self.minutes)

    @property
    def proven(self) -> bool:
        """Whether a station proves it, or every version of every test asks for it."""
        return bool(self.stations.count) or (bool(self.tests) and all(one.count for one in self.tests))

    @property
    def marked(self) -> tuple[tuple[Cell, bool], ...]:
        """Every cell, and whether it is a hole: what is proven elsewhere needs no proof here."""
        proofs = (*self.tests, self.stations) if self.proven else ()
        return tuple((cell, not cell.count and cell not in proofs) for cell in self.cells)


def coverage_page(made: Maker, rings: tuple[KeyRing, ...]) -> SitePage:
    """The matrix of objectives, and its holes by name."""
    rows = [_row(made, one, rings) for one in matrix(made.course)]
    return made.page(
        COVERAGE,
        made.say("i_coverage"),
        "instructor_coverage",
        kind="coverage",
        reviewed=all_reviewed(made.course),
        heads=[cell.head for cell in rows[0].cells],
        rows=rows,
        holes=[hole for row in rows for hole in _holes(made, row)],
        **study_values(made.course),
    )


def _row(made: Maker, served: Served, rings: tuple[KeyRing, ...]) -> Row:
    say, name = made.say, served.objective.id
    lessons = [one.title for one in served.lessons]
    practice = [case.title for case in served.practice]
    stations = [one.station.title for one in served.proofs]
    return Row(
        objective=served.objective,
        lessons=Cell(say("lessons"), len(lessons), "; ".join(lessons)),
        practice=Cell(say("practice"), len(practice), "; ".join(practice)),
        tests=tuple(_questions(made, ring, key, name) for ring in rings for key in ring.keys),
        stations=Cell(say("i_stations"), len(stations), "; ".join(stations)),
        minutes=Cell(
            say("i_minutes"), sum(map(_minutes, served.agenda)), "; ".join(one.title for one in served.agenda)
        ),
    )


def _questions(made: Maker, ring: KeyRing, key: Key, objective: str) -> Cell:
    title = next((one.title for one in made.course.file.tests if one.id == ring.test), ring.test)
    asked = [one for one in key.answers if one.objective == objective]
    must = sum(one.must_pass for one in asked)
    return Cell(f"{title} {key.version}", len(asked), made.say("i_must_count", n=must) if must else "")


def _minutes(item: AgendaItem) -> int:
    return (item.end.hour - item.start.hour) * 60 + item.end.minute - item.start.minute


def _holes(made: Maker, row: Row) -> Iterator[str]:
    """What an objective lacks: a lesson, practice, time, or proof (in each version, or by a station)."""
    lacking = {
        "lesson": not row.lessons.count,
        "practice": not row.practice.count,
        "proof": not row.proven,
        "minutes": not row.minutes.count,
    }
    return (
        made.say(f"i_hole_{name}", objective=row.objective.text) for name, there in lacking.items() if there
    )
