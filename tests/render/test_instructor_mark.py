"""The mark of the instructor's side in the look and on paper."""

from builder.model.site import SitePage
from builder.render.instructor_mark import marked
from builder.render.maker import maker, site_plan
from tests.render.sample_judged import judged_course


def look(title: str = "A course") -> str:
    """The style sheet of a marked plan."""
    made = maker(judged_course(title=title))
    plan = site_plan(made, [SitePage(address="index.md", title="x", body="<h1>x</h1>")], [], "")
    return marked(made, plan).assets["assets/look.css"].decode("utf-8")


def test_every_sheet_of_paper_is_marked() -> None:
    """The margins of a printed page carry mark and caution; a sheet to hand out the course's title."""
    assert "@page { @top-left { content: \"Instructor's side - holds keys" in look()
    assert '@page { @bottom-left { content: "Education, not medical advice. On a red flag' in look()
    assert '@page handout { @top-left { content: "A course";' in look()


def test_a_title_cannot_break_out_of_the_style_sheet() -> None:
    """Quotes, backslashes and line ends of a title stay inside the string."""
    assert 'content: "So-called \\"care\\" \\\\ more";' in look('So-called "care" \\ more')


def test_the_look_of_the_students_stays() -> None:
    """The instructor's own rules are added to the shared look, never put in its place."""
    assert ":root {" in look()
    assert look().index(".private-mark") > look().index(".chips")
