"""Sources, strength and both sides of a contested point."""

from builder.model.card import Contested
from builder.render.maker import maker
from builder.render.source import contested_text, rests_on
from tests.render.samples import course

POINT = Contested(point="early_friction", taught="Only late.", other="Also early.")


def test_a_statement_names_strength_and_sources() -> None:
    """The citation stands with how strong it is; an unknown source is left out."""
    said = rests_on(maker(course()), ("example_2020", "unheard_of"), "guideline")
    assert said.startswith("guideline: Example A.")
    assert "unheard_of" not in said


def test_both_sides_and_the_own_position_are_said() -> None:
    """A contested point says what is taught, what else is held, and the course's side."""
    said = contested_text(maker(course()), POINT)
    assert all(part in said for part in ("Only late.", "Also early.", "Not before remodelling."))


def test_without_a_position_both_sides_stand_alone() -> None:
    """No position is made up; what is not contested says nothing."""
    made = maker(course(positions={}))
    assert "As taught here" not in contested_text(made, POINT)
    assert contested_text(made, None) == ""
