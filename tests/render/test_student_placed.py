"""What a tag places, kind by kind."""

import pytest

from builder.fault import Fault
from builder.model.lesson import KINDS, LessonTag
from builder.render.maker import maker
from builder.render.student_placed import Placing, placed, scripts_of
from tests.render.filmed import NAME, filmed
from tests.render.sample_cases import practice_case

NAMES = {"card": "friction", "figure": "friction", "case": "landing", "film": NAME, "test": "final"}


def placing() -> Placing:
    """A page on which everything of the sample may be placed."""
    return Placing(maker(filmed()), "lessons/phases.md", {"landing": practice_case()})


@pytest.mark.parametrize("kind", [kind for kind in KINDS if kind != "question"])
def test_each_kind_of_tag_places_something(kind: str) -> None:
    """There is no kind without a maker; questions are placed in their own tests."""
    tag = next(LessonTag(one, NAMES.get(one, ""), 1) for one in KINDS if one == kind)
    assert placed(placing(), tag).startswith("<")


@pytest.mark.parametrize("kind", ["film", "question", "case"])
def test_what_is_not_there_is_a_fault(kind: str) -> None:
    """With its kind, its name and its line."""
    tag = next(LessonTag(one, "nobody", 7) for one in KINDS if one == kind)
    with pytest.raises(Fault, match=rf"\[{kind} nobody\] on line 7"):
        placed(placing(), tag)


def test_only_pages_with_a_film_load_its_script() -> None:
    """Nothing is loaded that a page does not use."""
    assert scripts_of({"film", "card"}) == ("assets/film.js",)
    assert scripts_of({"card", "flags"}) == ()
