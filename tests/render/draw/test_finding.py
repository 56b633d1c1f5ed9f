"""Small drawings on a board, only where one says more than the value."""

import pytest

from builder.model.paper import BoardCell
from builder.render.draw.finding import ARROWS, drawing
from tests.render.samples import facts

FACTS = facts().facts


def cell(fact: str, value: str, number: str | None = None) -> BoardCell:
    """A finding as a board shows it."""
    return BoardCell(label="x", value=value, fact=fact, number=number)


@pytest.mark.parametrize(
    ("value", "step"), [("still rising", "rising"), ("steady", "steady"), ("falling", "falling")]
)
def test_a_trend_is_an_arrow(value: str, step: str) -> None:
    """Rising, steady and falling, by the fact's own words or by its values."""
    assert ARROWS[step] in drawing(cell("swelling_trend", value), FACTS["swelling_trend"])


def test_an_angle_is_drawn_as_it_bends() -> None:
    """A right angle stands upright, more of it leans further."""
    upright = drawing(cell("knee_bend", "90°", "90"), FACTS["knee_bend"])
    assert "M24 40L24.0 10.0" in upright
    assert drawing(cell("knee_bend", "120°", "120"), FACTS["knee_bend"]) != upright


@pytest.mark.parametrize(("number", "full"), [("10", 'width="60"'), ("5", 'width="30"')])
def test_a_rating_is_a_level(number: str, full: str) -> None:
    """The bar is as full as the rating is high."""
    assert drawing(cell("pain", f"{number} of 10", number), FACTS["pain"]).count(full) >= 1


def test_nothing_of_a_rating_is_an_empty_bar() -> None:
    """A rating of 0 has no full part."""
    assert "go-full" not in drawing(cell("pain", "0 of 10", "0"), FACTS["pain"])


@pytest.mark.parametrize(
    ("fact", "value", "number"),
    [
        ("heat", "clear", None),
        ("calf_pain", "no", None),
        ("swelling_trend", "none", None),
        ("pain", "unknown", None),
        ("pain", "odd", "odd"),
    ],
)
def test_other_findings_have_no_drawing(fact: str, value: str, number: str | None) -> None:
    """What no drawing says better is left to its words."""
    assert drawing(cell(fact, value, number), FACTS[fact]) == ""


def test_an_undeclared_fact_has_no_drawing() -> None:
    """A cell whose fact is not declared is words alone."""
    assert drawing(cell("unheard_of", "5", "5"), None) == ""
