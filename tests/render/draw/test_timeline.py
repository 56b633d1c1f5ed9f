"""The healing timeline: pins where they belong, words that do not run into each other."""

import re
from decimal import Decimal

import pytest
from bs4.element import Tag
from hypothesis import given
from hypothesis import strategies as st

from builder.model.practice import Timeline
from builder.render.draw.timeline import timelines
from builder.render.wording import speaker
from tests.render.sample_cases import timeline
from tests.render.sample_site import parsed
from tests.render.samples import words

SAY = speaker(words())
HOURS = st.decimals(min_value=0, max_value=1512, places=1)


def drawn(line: Timeline) -> list[Tag]:
    """Both drawings, the narrow one first."""
    return parsed(timelines(line, "x", SAY)).select("svg")


def pins(drawing: Tag) -> list[float]:
    """Where the pins stand, from left to right as drawn."""
    return [float(str(node["cx"])) for node in drawing.select("svg > circle")]


def labels(drawing: Tag) -> list[str]:
    """The words in a drawing."""
    return [node.get_text() for node in drawing.select("text")]


def test_it_is_drawn_for_a_phone_and_for_a_desk() -> None:
    """Two drawings, told apart by class, each named by the timeline's words."""
    narrow, broad = drawn(timeline())
    assert ("narrow" in narrow["class"], "broad" in broad["class"]) == (True, True)
    assert {one["aria-label"] for one in (narrow, broad)} == {timeline().words}


def test_the_phone_gets_one_word_a_line() -> None:
    """What stands in brackets is left out, and words stand below each other."""
    narrow, broad = drawn(timeline())
    assert labels(narrow)[:3] == ["acute", "early", "repair"]
    assert labels(broad)[:2] == ["acute", "early repair"]


@given(HOURS)
def test_today_stands_in_the_band_it_belongs_to(today: Decimal) -> None:
    """Its pin lies within the width of the phase that holds it, boundaries with the earlier one."""
    line = timeline().model_copy(update={"today": today, "earlier": ()})
    for drawing, width in zip(drawn(line), (344, 656), strict=True):
        band = next(place for place, one in enumerate(line.bands) if today <= one.end)
        share = (width - 2) / len(line.bands)
        assert 1 + band * share - 0.1 <= pins(drawing)[0] <= 1 + (band + 1) * share + 0.1


@given(st.lists(HOURS, max_size=6), HOURS)
def test_every_earlier_visit_has_its_pin(earlier: list[Decimal], today: Decimal) -> None:
    """Labels may give way to each other, pins do not; all stand inside the drawing."""
    line = timeline().model_copy(update={"today": today, "earlier": tuple(sorted(earlier))})
    for drawing, width in zip(drawn(line), (344, 656), strict=True):
        assert len(pins(drawing)) == len(earlier) + 1
        assert all(0 <= pin <= width for pin in pins(drawing))


@pytest.mark.parametrize(("today", "side"), [("30", "start"), ("1500", "end")])
def test_the_words_of_today_turn_at_the_edge(today: str, side: str) -> None:
    """Near the right edge they stand to the left of their pin."""
    line = timeline().model_copy(update={"today": Decimal(today)})
    for drawing in drawn(line):
        assert drawing.select("text.loud")[0]["text-anchor"] == side


def test_a_time_beyond_the_calendar_stays_inside() -> None:
    """A visit later than the last band is drawn at the end of it."""
    line = timeline().model_copy(update={"today": Decimal(9000)})
    assert all(pins(drawing)[-1] < width for drawing, width in zip(drawn(line), (344, 656), strict=True))


def test_an_arrow_shows_where_the_signs_hold_it() -> None:
    """From today back to the middle of that phase; without such signs there is none."""
    late = timeline().model_copy(update={"today": Decimal(400), "held": "acute"})
    for drawing, width in zip(drawn(late), (344, 656), strict=True):
        path = drawing.select("path.go")[-1]
        start, goal = (float(one) for one in re.findall(r"M([\d.]+) [\d.]+H([\d.]+)", str(path["d"]))[0])
        assert start == pytest.approx(pins(drawing)[-1], abs=0.1)
        assert goal == pytest.approx(1 + (width - 2) / 8, abs=0.1)
    assert not drawn(timeline())[0].select("path.under")
