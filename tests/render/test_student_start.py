"""The start page: what to do, in which order."""

from builder.render.maker import maker
from builder.render.student_start import start_page, stem_of
from tests.render.sample_cases import practice_case, published_test
from tests.render.sample_site import body, one, parsed, said
from tests.render.samples import course

START = body("index.md")


def test_the_order_is_lessons_practice_reference_test() -> None:
    """Four things to do, in this order."""
    titles = [said(node) for node in START.select(".way > li > h2")]
    assert titles == ["Read the lessons", "Practise on cases", "Keep these at hand", "Take the test"]


def test_what_a_course_lacks_is_not_a_step() -> None:
    """Without tests there is no step for them; that lessons are still to come is said."""
    made = maker(course(lessons=[], tests=[]))
    tree = parsed(start_page(made, {"landing": practice_case()}, ()).body)
    assert len(tree.select(".way > li")) == 3
    assert said(tree.select(".way > li")[0]).startswith("Read the lessons There is no lesson here yet.")


def test_many_cases_are_folded() -> None:
    """A set of more than twelve cases shows how many there are and opens on demand."""
    cases = {f"case_{n}": practice_case(f"case_{n}") for n in range(13)}
    made = maker(course(practice=[{"id": "big", "title": "Big", "cases": list(cases)}]))
    tree = parsed(start_page(made, cases, (published_test(),)).body)
    assert said(one(tree, ".way details > summary")) == "Show all 13"
    assert len(tree.select(".way details li")) == 13


def test_the_provider_answers_for_the_course() -> None:
    """Objectives, audience, instructor, positions, policies, disclosures and references are there."""
    text = said(START)
    for part in (
        "Tell the phase",
        "Ada Quill",
        "Not before remodelling.",
        "Twice.",
        "Disclosures None.",
        "Example A.",
    ):
        assert part in text


def test_a_lesson_is_known_by_its_stem() -> None:
    """With or without its folder."""
    assert stem_of("phases.md") == stem_of("lessons/phases.md") == "phases"
