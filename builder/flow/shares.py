"""The pages of many cases, laid out a share of the cases at a time, so that several processes can do it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from builder.assess.practice import practice_case
from builder.flow.crew import Crew
from builder.flow.sides import Laid, Planner, Record
from builder.flow.uncollected import uncollected
from builder.flow.worked import Part, Told
from builder.render.address import of_case
from builder.render.instructor import case_pages as key_pages
from builder.render.instructor import room_pages
from builder.render.student import case_pages as practice_pages

FEW = 40  # as many cases are laid out sooner than another process is started
SHARES = 12
LEAST = 10


Pages = dict[str, Laid]


@dataclass(frozen=True)
class Both:
    """Pages of both sites by their address."""

    student: Pages = field(default_factory=dict)
    instructor: Pages = field(default_factory=dict)


def laid_out(crew: Crew, planner: Planner, student: Record, instructor: Record) -> Both:
    """The pages of all cases of which some do not stand as they were last built; none where these are few."""
    names = list(planner.missing(student, instructor))
    if len(names) <= FEW or not isinstance(planner.judged, Told):
        return Both()
    every = max(LEAST, -(-len(names) // SHARES))
    shares = [planner.judged.part(names[start : start + every]) for start in range(0, len(names), every)]
    made = crew.done(lay_out, shares)
    return Both(_joined(one.student for one in made), _joined(one.instructor for one in made))


@uncollected()
def lay_out(share: Part) -> Both:
    """Tell a share of the cases, and lay out every page of them."""
    course, told = share.course, share.told()
    tested = {name for one in course.file.tests for name in one.cases}
    practised = {name for one in course.file.practice for name in one.cases}
    cases = {
        name: practice_case(course, case, told[name])
        for name, case in course.cases.items()
        if name in practised or name not in tested
    }
    keys = [
        *key_pages(course, told),
        *room_pages(course, [cases[name] for name in cases if name not in tested]),
    ]
    heads = {of_case(name): case.model_copy(update={"visits": ()}) for name, case in cases.items()}
    shown = practice_pages(course, [cases[name] for name in cases if name in practised])
    return Both(
        {page.address: Laid(page, heads[page.address]) for page in shown},
        {page.address: Laid(page) for page in keys},
    )


def _joined(some: Iterable[Pages]) -> Pages:
    return {at: laid for pages in some for at, laid in pages.items()}
