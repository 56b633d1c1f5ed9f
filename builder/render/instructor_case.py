"""One case as its key: where it is used, and every visit as the rules see it."""

from __future__ import annotations

from builder.model.case import Case
from builder.model.judgement import VisitJudgement
from builder.model.rested import visit_reviewed
from builder.model.site import SitePage
from builder.render.address import of_case, of_version, way
from builder.render.instructor_address import of_room, of_station
from builder.render.instructor_found import client_line
from builder.render.instructor_said import Linked
from builder.render.instructor_visit import visit_key
from builder.render.maker import Maker


def case_page(made: Maker, case: Case, judged: tuple[VisitJudgement, ...]) -> SitePage:
    """The key of one case, visit by visit."""
    at = of_case(case.id)
    objectives = {one.id: one.text for one in made.course.file.objectives}
    return made.page(
        at,
        case.title,
        "instructor_case",
        kind="key",
        reviewed=all(visit_reviewed(made.course.content, one) for one in judged),
        case=case,
        who=client_line(made, case),
        room="" if tested(made, case.id) else way(at, of_room(case.id)),
        used=used_in(made, at, case.id),
        in_test=tested(made, case.id),
        objectives=[objectives.get(one, one) for one in case.objectives],
        visits=[
            visit_key(made, at, case, visit, one) for visit, one in zip(case.visits, judged, strict=True)
        ],
    )


def tested(made: Maker, case: str) -> bool:
    """Whether a case stands in a test; such a case is shown to no room."""
    return any(case in one.cases for one in made.course.file.tests)


def used_in(made: Maker, at: str, case: str) -> list[Linked]:
    """Where a case stands in the course; empty where nothing uses it."""
    file, say = made.course.file, made.say
    practice = [
        Linked(say("i_in_practice", name=one.title), "") for one in file.practice if case in one.cases
    ]
    tests = [
        Linked(say("i_in_test", name=one.title), way(at, of_version(one.id, "a")))
        for one in file.tests
        if case in one.cases
    ]
    stations = [
        Linked(say("i_in_station", name=one.title), way(at, of_station(one.id)))
        for one in made.course.stations.values()
        if one.case == case
    ]
    return [*practice, *tests, *stations]
