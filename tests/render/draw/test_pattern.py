"""A phase is known by its pattern."""

from builder.model.card import PHASES
from builder.render.draw.pattern import definitions, filled, swatch


def test_phases_differ_without_colour() -> None:
    """Hatched, dotted, lined and plain: no two share a pattern."""
    drawn = {phase: filled(phase, "M0 0z", "x").replace("go", "").replace("thin", "") for phase in PHASES[:4]}
    patterns = [
        next((part for part in one.split('"') if part.startswith("url(")), "plain") for one in drawn.values()
    ]
    assert patterns == ["url(#x-acute)", "url(#x-early_repair)", "url(#x-late_repair)", "plain"]


def test_patterns_are_defined_under_the_name_given() -> None:
    """Two drawings on one page do not share ids."""
    assert 'id="one-acute"' in definitions("one")
    assert swatch("acute") != swatch("remodelling")
