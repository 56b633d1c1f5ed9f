"""A lesson: Markdown with tags replaced by what they place."""

from dataclasses import replace

import pytest

from builder.fault import Fault
from builder.model.course import Lesson
from builder.render.maker import maker
from builder.render.student_lesson import lesson_page
from tests.render.sample_cases import practice_case
from tests.render.sample_site import page
from tests.render.samples import course

LESSON = Lesson(file="phases.md", title="Tissue heals")


def made_from(text: str) -> str:
    """The body of a lesson with this text."""
    sample = replace(course(), lessons={"phases": text})
    return lesson_page(maker(sample), LESSON, {"landing": practice_case()}).body


def test_each_tag_places_its_thing() -> None:
    """Card, figure, case, test and red flags are linked from where the lesson lies."""
    body = page("lessons/phases.md").body
    for link in (
        "../cards/friction.html",
        "../cases/landing.html",
        "../tests/final.html",
        "../red-flags.html",
    ):
        assert f'href="{link}"' in body
    assert body.count("<figure") == 2
    assert body.count("timeline narrow") == 1
    assert "[card" not in body


@pytest.mark.parametrize(
    "tag", ["card nobody", "case hidden_case", "test nobody", "figure nobody", "figure refer"]
)
def test_a_tag_that_names_nothing_is_a_fault(tag: str) -> None:
    """A case that is kept for a test is nothing a lesson may place."""
    with pytest.raises(Fault, match="line 3"):
        made_from(f"Words.\n\n[{tag}]\n")


def test_a_lesson_has_one_first_heading() -> None:
    """The title from the course file, unless the text brings its own."""
    assert made_from("Words.").count("<h1>") == 1
    assert "<h1>" not in made_from("# Own title\n\nWords.")


def test_a_title_is_escaped() -> None:
    """The title of a lesson is text."""
    lesson = Lesson(file="phases.md", title="a < b")
    sample = replace(course(), lessons={"phases": "Words."})
    assert "<h1>a &lt; b</h1>" in lesson_page(maker(sample), lesson, {}).body
