"""A course small enough to see through at a glance, on the judge's small rule set."""

from dataclasses import replace
from typing import Any

from builder.check.evidence import Evidence
from builder.judge.coverage import covered, nothing_shown
from builder.judge.examples import failed_examples
from builder.judge.judge import Judge
from builder.judge.prove import holes
from builder.model.case import Case
from builder.model.course import CourseFile, SiteConfig
from builder.model.library import Content, Course
from builder.place import Place, Places
from tests.judge.small import content

COURSE: dict[str, Any] = {
    "format": 1,
    "id": "small",
    "title": "A small course",
    "level": "First steps",
    "provider": {"name": "Lanternfall clinic", "address": "Under the big top", "contact": "At the gate"},
    "instructor": {"name": "The clinician", "credentials": "Licensed"},
    "audience": {"who": "Therapists", "licence": "Massage"},
    "description": "One bruise.",
    "subjects": "Soft tissue",
    "delivery": "Live",
    "objectives": [{"id": "one", "text": "Choose what is right."}],
    "requirements": {"test": "final", "attendance": "100 %"},
    "disclosures": "None.",
}
SITE = {
    "format": 1,
    "caution": "Education.",
    "short_caution": "Care.",
    "unreviewed": "Not yet.",
    "colours": {},
}


def course(*cases: Case, rules: Content | None = None, **more: object) -> Course:
    """A course of these cases; `rules` replaces the small content, `more` keys of `course.yml`."""
    return Course(
        file=CourseFile.model_validate({**COURSE, **more}),
        cases={one.id: one for one in cases},
        stations={},
        lessons={},
        site=SiteConfig.model_validate(SITE),
        content=rules or content(),
    )


def evidence(*cases: Case, rules: Content | None = None, **more: object) -> Evidence:
    """All that the checks look at, worked out as it is for any course."""
    made = course(*cases, rules=rules, **more)
    judge = Judge(made.content)
    judged = {one.id: judge.case(one) for one in cases}
    return Evidence(
        made,
        judged,
        tuple(failed_examples(made.content.rules, judge.space)),
        tuple(holes(made.content, judge.space)),
        covered(judge, made.cases, judged, nothing_shown(made.content.rules)),
    )


def placed(found: Evidence, file: str, places: dict[tuple[str | int, ...], int]) -> Evidence:
    """The evidence with a place in `file`, given by its line, for each of these paths."""
    values = {path: Place(file, line) for path, line in places.items()}
    return replace(found, course=replace(found.course, places={file: Places(Place(file), values)}))
