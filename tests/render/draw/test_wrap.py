"""The wrap figure: pad against injury, from where to where, and how the turns cross."""

from decimal import Decimal
from math import pi

import pytest
from bs4.element import Tag
from hypothesis import given
from hypothesis import strategies as st

from builder.render.draw.wrap import HEIGHT, LEVELS, WIDTH, wrap, wrap_words
from builder.render.wording import speaker
from tests.judge.laws import shipped_world
from tests.render.sample_site import parsed
from tests.render.samples import words

SAY = speaker(words())
FACTS = shipped_world().content.facts.written
AS_TAUGHT: dict[str, str | Decimal] = {
    "pad_ratio": Decimal(2),
    "wrap_from": "below",
    "wrap_to": "above",
    "tension": "medium",
}


def drawn(**written: str | Decimal) -> Tag:
    """The figure of a wrap as taught, but for what is given."""
    found = parsed(wrap("Wrap", {**AS_TAUGHT, **written}, FACTS, SAY)).select_one("svg")
    assert found is not None
    return found


def area(drawing: Tag, kind: str) -> float:
    """The area of the ellipse of one class."""
    found = drawing.select_one(f"ellipse.{kind}")
    return pi * float(str(found["rx"])) * float(str(found["ry"])) if found else 0.0


def heights(drawing: Tag) -> dict[str, float]:
    """How far down the numbers of start and end stand."""
    return {one.get_text(): float(str(one["y"])) for one in drawing.select("text.on-go")}


def crossings(drawing: Tag) -> int:
    """How many pairs of turns cross."""
    path = drawing.select_one("path.turns")
    return str(path["d"]).count("M") // 2 if path else 0


@given(st.decimals(min_value="0.5", max_value=10, places=1))
def test_the_pad_has_the_area_that_is_written(ratio: Decimal) -> None:
    """Pad and injured area stand to each other as the option says."""
    drawing = drawn(pad_ratio=ratio)
    assert area(drawing, "ink") / area(drawing, "clay-full") == pytest.approx(float(ratio), rel=0.02)


@given(st.sampled_from(sorted(LEVELS)), st.sampled_from(sorted(LEVELS)))
def test_start_and_end_stand_where_they_are_written(start: str, end: str) -> None:
    """1 is where it starts, 2 where it ends; above is further up the page."""
    assert heights(drawn(wrap_from=start, wrap_to=end)) == {"1": LEVELS[start] + 5, "2": LEVELS[end] + 5}


def test_turns_cross_more_often_the_firmer_it_is() -> None:
    """Light, medium and firm can be told apart, and every wrap has turns that cross."""
    counts = [crossings(drawn(tension=one)) for one in ("light", "medium", "firm")]
    assert counts == sorted(set(counts))
    assert crossings(drawn(wrap_from="at", wrap_to="at")) == 1


def test_what_is_drawn_is_said() -> None:
    """The name of the figure says all that it shows, in the order in which it is done."""
    said = wrap_words(AS_TAUGHT, FACTS, SAY)
    assert drawn()["aria-label"] == f"Wrap: {', '.join(said)}"
    assert [one.partition(" ")[0] for one in said] == ["the", "1", "2", "turns"]


def test_nothing_leaves_the_frame() -> None:
    """The largest pad that can be written still lies within the drawing."""
    largest = drawn(pad_ratio=Decimal(10)).select_one("ellipse.ink")
    assert largest is not None
    assert float(str(largest["rx"])) < WIDTH / 2
    assert float(str(largest["ry"])) < HEIGHT / 2


def test_without_start_and_end_there_is_no_figure() -> None:
    """What is not written is not drawn."""
    assert wrap("Wrap", {"pad_ratio": Decimal(2)}, FACTS, SAY) == ""
