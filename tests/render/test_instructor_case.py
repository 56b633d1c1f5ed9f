"""A case as its key."""

from dataclasses import replace

import pytest

from builder.judge.judge import Judge
from builder.render.instructor_case import case_page, used_in
from builder.render.maker import maker
from tests.demo.built import opened
from tests.model.signed import signed_but
from tests.render.sample_instructor import private_page
from tests.render.sample_judged import judged_course
from tests.render.sample_site import one, parsed, said

LANDING = private_page("cases/landing.md")


def test_a_case_says_where_it_is_used() -> None:
    """Practice, test and station are told, the last two with the way there."""
    made = maker(judged_course())
    assert [use.text for use in used_in(made, "cases/landing.md", "landing")] == [
        "Practice: First cases",
        "Station: Friction",
    ]
    (test,) = used_in(made, "cases/hidden-case.md", "hidden_case")
    assert (test.text, test.link) == ("Test: Final test", "../tests/final-a.html")
    assert used_in(made, "index.md", "nowhere") == []


def test_a_tested_case_warns() -> None:
    """A case of a test may be talked through only afterwards; a practice case says nothing of the kind."""
    assert "only after everyone has sat it" in said(private_page("cases/hidden-case.md"))
    assert "only after everyone has sat it" not in said(LANDING)


def test_a_case_begins_with_the_client() -> None:
    """Who, what happened, what is wanted, which objectives."""
    text = said(LANDING)
    assert said(one(LANDING, "h1")) == "The landing"
    assert "Acrobat base, 24 · right thigh" in text
    assert "A heel came down on the thigh. The client wants: To fly on Friday" in text
    assert "Tell the phase of healing from time and signs." in text


def test_visits_stand_in_order() -> None:
    """Every visit has its number, its time and its title."""
    assert [said(node) for node in LANDING.select(".visit h2")] == ["The next afternoon", "Hurt again"]
    assert said(LANDING.select(".visit .kicker")[0]) == "visit 1 of 2 · 30 hours after the injury"


@pytest.mark.parametrize(("left_out", "lines"), [((), 0), (("phases/all",), 1)])
def test_the_last_line_goes_when_all_is_reviewed(left_out: tuple[str, ...], lines: int) -> None:
    """Whatever a visit rests on, and one part that is not signed is enough for the page to say so."""
    course = opened().course
    assert course is not None
    signed = replace(course, content=signed_but(course.content, *left_out))
    shown = signed.cases["unicycle_thigh"]
    page = case_page(maker(signed), shown, Judge(signed.content).case(shown))
    assert len(parsed(page.body).select(".unreviewed")) == lines
    assert ("not yet reviewed" in page.body) == bool(lines)
