"""Where each objective is taught, practised and tested."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

import pytest
from bs4 import BeautifulSoup

from builder.model.library import Course
from builder.render.instructor_coverage import coverage_page
from builder.render.maker import maker
from tests.render.sample_judged import judged_course, ring
from tests.render.sample_site import parsed, said


def page(course: Course, *, keys: bool = True) -> BeautifulSoup:
    """The page of a course, with or without keys."""
    return parsed(coverage_page(maker(course), (ring(),) if keys else ()).body)


def lesson(**more: object) -> list[dict[str, object]]:
    """The list of lessons with its only one changed."""
    return [{"file": "phases.md", "title": "Tissue heals in phases", **more}]


def test_the_matrix_counts_each_place() -> None:
    """Lessons, practice cases, questions by version, stations, minutes; 90 and 30 minutes name the first."""
    tree = page(judged_course())
    assert [said(node) for node in tree.select(".coverage thead th")] == [
        "Objective",
        "Lessons",
        "Practice",
        "Final test A",
        "Final test B",
        "Stations",
        "Minutes",
    ]
    rows = [[said(cell) for cell in row.select("td")] for row in tree.select(".coverage tbody tr")]
    assert rows == [
        ["1", "1", "3", "3", "none", "120"],
        ["none", "none", "none", "none", "1", "none"],
    ]


def test_holes_are_named() -> None:
    """Each missing place in words; what a station proves needs no question."""
    assert [said(node) for node in page(judged_course()).select(".aside-clay li")] == [
        "No lesson serves: Work across the fibres.",
        "No practice case serves: Work across the fibres.",
        "No minute of the agenda is given to: Work across the fibres.",
    ]


def test_only_holes_are_marked() -> None:
    """What is proven elsewhere is plainly none; what is missing is marked as such."""
    rows = page(judged_course()).select(".coverage tbody tr")
    assert [len(row.select(".hole")) for row in rows] == [0, 3]
    bare = page(replace(judged_course(), stations={})).select(".coverage tbody tr")
    assert [len(row.select(".hole")) for row in bare] == [0, 6]


def test_an_objective_that_nothing_proves_is_a_hole() -> None:
    """Neither questions in every version nor a station."""
    bare = replace(judged_course(), stations={})
    holes = [said(node) for node in page(bare, keys=False).select(".aside-clay li")]
    assert "Neither a station nor every version of a test asks for: Work across the fibres." in holes
    assert any(hole.startswith("Neither") and "Tell the phase" in hole for hole in holes)


def test_a_version_that_leaves_an_objective_out_is_a_hole() -> None:
    """One version that asks is not enough, since nobody sits them all."""
    keys = ring().keys
    empty = keys[1].model_copy(update={"answers": ()})
    made = maker(judged_course())
    body = coverage_page(made, (ring().model_copy(update={"keys": (keys[0], empty)}),)).body
    assert "Neither a station nor every version of a test asks for: Tell the phase" in said(parsed(body))


@pytest.mark.parametrize(
    ("lessons", "served"),
    [
        (lesson(), ["1", "none"]),
        (lesson(objectives=["hands"]), ["none", "1"]),
        (lesson(objectives=["phases", "hands"]), ["1", "1"]),
    ],
)
def test_a_lesson_serves_what_it_names(lessons: list[dict[str, object]], served: list[str]) -> None:
    """Its own objectives, or else those of the cases it places."""
    rows = page(judged_course(lessons=lessons)).select(".coverage tbody tr")
    assert [said(row.select("td")[0]) for row in rows] == served


def test_a_course_without_holes_says_so() -> None:
    """Nothing is missing, in word and shape."""
    objectives = [{"id": "phases", "text": "Tell the phase."}]
    tree = page(replace_objectives(judged_course(), objectives))
    assert not tree.select(".aside-clay")
    assert said(tree.select(".wash")[0]) == "Every objective is taught, practised and tested."


def replace_objectives(course: Course, objectives: Sequence[Mapping[str, object]]) -> Course:
    """The course with other objectives."""
    file = type(course.file).model_validate(course.file.model_dump() | {"objectives": list(objectives)})
    return replace(course, file=file)
