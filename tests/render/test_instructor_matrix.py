"""The matrix of objectives as approving bodies ask for it."""

from dataclasses import replace

from bs4 import BeautifulSoup

from builder.model.library import Course
from builder.render.instructor_matrix import matrix_page
from builder.render.maker import maker
from tests.render.sample_judged import judged_course, ring
from tests.render.sample_site import parsed, said
from tests.render.test_instructor_coverage import replace_objectives

SOURCED = [{"id": "phases", "text": "Tell the phase.", "references": ["example_2020"]}]


def page(course: Course) -> BeautifulSoup:
    """The matrix of a course."""
    return parsed(matrix_page(maker(course), (ring(),)).body)


def test_each_objective_stands_beside_all_that_serves_it() -> None:
    """Content, agenda, references, rows of the plan with their questions, lines of a rubric."""
    tree = page(judged_course())
    assert [said(one) for one in tree.select("thead th")] == [
        "Objective", "Content", "Agenda", "References", "Test questions", "Station and rubric lines",
    ]  # fmt: skip
    first, second = ([said(cell) for cell in row.select("td")] for row in tree.select("tbody tr"))
    assert first[0].startswith("Lesson: Tissue heals in phases 1 practice case")
    assert "Day 1, " in first[1]
    assert first[2] == "none"
    assert first[3].startswith("Final test: 1 × the phase")
    assert second[4] == "Friction Agrees Works"


def test_the_questions_of_a_row_are_numbered_in_each_version() -> None:
    """Those of its objective and topic; the sample's keys ask for the choice."""
    plan = [{"objective": "phases", "topic": "option", "count": 3, "must_pass": "yes"}]
    tests = [{**one.model_dump(mode="json"), "plan": plan} for one in judged_course().file.tests]
    row = page(judged_course(tests=tests)).select("tbody tr")[0]
    told = "Final test: 3 × the choice must be right Version A: 1, 2, 3 Version B: 1, 2, 3"
    assert said(row.select("td")[3]) == told


def test_holes_are_told_and_marked() -> None:
    """By the number of the objective; a cell that is proven elsewhere is plainly none."""
    tree = page(judged_course())
    told = [said(one) for one in tree.select(".aside-clay li")]
    assert "No reference is named for objective 1." in told
    assert "No practice case serves objective 2." in told
    assert "No test and no station asks for objective 1." not in told
    first, second = tree.select("tbody tr")
    assert [said(one) for one in first.select("td")][4] == "none"
    assert len(first.select(".hole")) == 1
    assert len(second.select(".hole")) == 3


def test_references_lead_to_their_source() -> None:
    """With author and year."""
    (cell,) = page(replace_objectives(judged_course(), SOURCED)).select("tbody td:nth-of-type(3) a")
    assert cell["href"] == "sources.html#source-example_2020"


def test_what_serves_no_objective_is_told() -> None:
    """A lesson of a course whose cases and lessons name none."""
    made = judged_course(lessons=[{"file": "other.md", "title": "Something else"}])
    told = [said(one) for one in page(replace(made, lessons={"other": "# Other"})).select(".aside-clay li")]
    assert "Something else" in told


def test_a_course_without_holes_shows_none() -> None:
    """No warning stands above the table."""
    assert not page(replace_objectives(judged_course(), SOURCED)).select(".aside-clay")
