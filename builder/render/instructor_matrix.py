"""The matrix that approving bodies ask for: each objective with its content, time, sources and proof."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from builder.model.course import AgendaItem
from builder.model.key import Key, KeyRing
from builder.model.matrix import Hole, Served, items_without_objective, lessons_without_objective, matrix
from builder.model.plan import CourseTest, PlanRow
from builder.model.site import SitePage
from builder.render.instructor_address import MATRIX, of_source, of_station
from builder.render.maker import Maker, all_reviewed

_HOLE_IN: dict[Hole, str] = {
    "lesson": "content",
    "practice": "content",
    "minutes": "agenda",
    "reference": "sources",
    "proof": "questions",
}
COLUMNS = ("content", "agenda", "sources", "questions", "lines")


@dataclass(frozen=True)
class Entry:
    """One line in a cell: where it leads, if anywhere, its words, and what belongs to it."""

    text: str
    more: tuple[str, ...] = ()
    goal: str = ""


@dataclass(frozen=True)
class Row:
    """One objective: its number and text, the lines of each cell by its column, and which cells are holes."""

    number: int
    text: str
    cells: dict[str, list[Entry]]
    holes: frozenset[str]


def matrix_page(made: Maker, rings: tuple[KeyRing, ...]) -> SitePage:
    """The whole matrix, made to be printed on a wide or an upright sheet, with its holes named."""
    served = matrix(made.course)
    return made.page(
        MATRIX,
        made.say("i_grid"),
        "instructor_matrix",
        kind="matrix",
        reviewed=all_reviewed(made.course),
        columns=COLUMNS,
        rows=[_row(made, at, one, rings) for at, one in enumerate(served, start=1)],
        holes=[_hole(made, at, hole) for at, one in enumerate(served, start=1) for hole in one.holes],
        unserved=list(_unserved(made)),
    )


def _row(made: Maker, number: int, one: Served, rings: tuple[KeyRing, ...]) -> Row:
    sources = made.course.content.references.sources
    cells = {
        "content": list(_content(made, one)),
        "agenda": [_time(made, item) for item in one.agenda],
        "sources": [
            Entry(sources[name].short, goal=of_source(name))
            for name in one.objective.references
            if name in sources
        ],
        "questions": [_questions(made, test, row, rings) for test, row in one.planned],
        "lines": [
            Entry(
                proof.station.title, tuple(line.title for line in proof.lines), of_station(proof.station.id)
            )
            for proof in one.proofs
        ],
    }
    return Row(number, one.objective.text, cells, frozenset(_HOLE_IN[hole] for hole in one.holes))


def _content(made: Maker, one: Served) -> Iterator[Entry]:
    """Its lessons, then how many practice cases of which set."""
    yield from (Entry(made.say("i_grid_lesson", title=lesson.title)) for lesson in one.lessons)
    cases = {case.id for case in one.practice}
    sets = [(each.title, len(cases & {*each.cases})) for each in made.course.file.practice]
    if cases:
        more = tuple(made.say("i_grid_of_set", title=title, n=count) for title, count in sets if count)
        yield Entry(made.say("i_grid_cases", n=len(cases)), more)


def _time(made: Maker, item: AgendaItem) -> Entry:
    when = made.say("i_grid_time", day=item.day, start=f"{item.start:%H:%M}", end=f"{item.end:%H:%M}")
    return Entry(item.title, (when,))


def _questions(made: Maker, test: CourseTest, row: PlanRow, rings: Iterable[KeyRing]) -> Entry:
    """One row of a plan, and the numbers of its questions in each version."""
    topic = made.say(f"i_topic_{row.topic}")
    text = made.say("i_grid_row", test=test.title, n=row.count, topic=topic)
    must = (made.say("i_must_pass"),) if row.must_pass else ()
    keys = [key for ring in rings if ring.test == test.id for key in ring.keys]
    numbers = {key.version: ", ".join(map(str, _numbers(key, row))) for key in keys}
    told = (made.say("i_grid_numbers", letter=name, numbers=one) for name, one in numbers.items() if one)
    return Entry(text, (*must, *told))


def _numbers(key: Key, row: PlanRow) -> list[int]:
    """The numbers, in one version, of the questions that a row may have drawn."""
    about = row.objective, row.topic
    return [
        at
        for at, one in enumerate(key.answers, start=1)
        if (one.objective, one.topic) == about and row.kind in (None, one.kind)
    ]


def _hole(made: Maker, number: int, hole: Hole) -> str:
    return made.say(f"i_grid_hole_{hole}", number=number)


def _unserved(made: Maker) -> Iterator[str]:
    """Lessons and taught parts of the agenda that serve no objective."""
    yield from (one.title for one in lessons_without_objective(made.course))
    yield from (made.course.file.agenda[at].title for at in items_without_objective(made.course))
