"""The first page of the instructor's side."""

from builder.model.site import SitePage
from builder.render.instructor_start import start_page
from builder.render.maker import maker
from tests.render.sample_instructor import private_page
from tests.render.sample_judged import judged_course
from tests.render.sample_site import parsed, said

START = private_page("index.md")


def test_editions_stand_with_the_ways_to_the_keys() -> None:
    """Edition and key edition of a test; whole key and sheet of each version."""
    text = said(START)
    assert "Edition of the papers k7q2m9xa Key edition p4w8z3tn" in text
    assert [str(link["href"]) for link in START.select(".versions a")][:5] == [
        "tests/final-a.html",
        "tests/final-a-table.html",
        "paper/final-a.html",
        "paper/final-a-large.html",
        "paper/final-a-answers.html",
    ]
    assert START.select_one('a[href="paper/final.html"]') is not None


def test_cases_say_where_they_are_used() -> None:
    """Practice, station and test are told on the list."""
    text = said(START)
    assert "The landing Acrobat base, 24 · right thigh Practice: First cases; Station: Friction" in text
    assert "The ring Acrobat base, 24 · right thigh Test: Final test" in text


def test_what_is_unreviewed_is_counted() -> None:
    """Rules and cards that no clinician has looked at."""
    assert "Rules not yet reviewed by a clinician: 2 of 2." in said(START)
    assert "Cards not yet reviewed by a clinician: 3 of 3." in said(START)


def test_points_without_a_position_are_named() -> None:
    """A contested point on which the course takes no side is told; where it does, none is."""
    assert "The course says where it stands on each of them." in said(START)
    undecided: SitePage = start_page(maker(judged_course(positions={})), ())
    assert "The course does not say where it stands on: early friction." in said(parsed(undecided.body))
