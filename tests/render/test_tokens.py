"""The colours give the contrast that their use needs, light, dark and on paper."""

import re
from pathlib import Path

import pytest
import yaml

from builder.fault import Fault
from builder.render.tokens import DARK, LIGHT, PAIRS, PRINT, contrast, stylesheet, too_faint

SHIPPED = Path(__file__).parents[2] / "site_config.yml"


@pytest.mark.parametrize("tokens", [LIGHT, DARK, PRINT])
def test_every_pair_has_its_contrast(tokens: dict[str, str]) -> None:
    """Text reaches 4.5 and shapes 3 on every ground they stand on (WCAG 2.2, 1.4.3 and 1.4.11)."""
    assert too_faint(tokens) == []


def test_the_shipped_colours_are_the_ones_tested() -> None:
    """What `site_config.yml` ships are these tokens, so that the contrast test speaks of them."""
    shipped = yaml.safe_load(SHIPPED.read_text(encoding="utf-8"))["colours"]
    assert shipped == {"light": LIGHT, "dark": DARK}


@pytest.mark.parametrize(
    ("one", "other", "ratio"),
    [("#000000", "#ffffff", 21.0), ("#777777", "#ffffff", 4.48), ("#ffffff", "#ffffff", 1.0)],
)
def test_contrast_is_that_of_the_standard(one: str, other: str, ratio: float) -> None:
    """Black on white is 21, the well-known grey #777 on white just misses 4.5."""
    assert contrast(one, other) == pytest.approx(ratio, abs=0.005)
    assert contrast(other, one) == contrast(one, other)


def test_the_pairs_name_only_tokens() -> None:
    """Each pair speaks of tokens that there are."""
    assert {name for text, ground, _ in PAIRS for name in (text, ground)} <= LIGHT.keys()


def test_a_provider_can_change_one_colour() -> None:
    """A colour of the provider's own stands in its scheme only."""
    css = stylesheet({"light": {"accent": "#123456"}})
    assert css.count("--accent: #123456;") == 1
    assert f"--accent: {DARK['accent']};" in css


@pytest.mark.parametrize(
    ("name", "colour"),
    [("accent", "red;} body{"), ("accent", "#12345"), ("glow", "#123456"), ("ink", "#cccccc")],
)
def test_a_colour_that_cannot_be_used_is_refused(name: str, colour: str) -> None:
    """No colour may be malformed, unknown or too faint."""
    with pytest.raises(Fault, match=name):
        stylesheet({"light": {name: colour}})


def test_style_sheets_take_colours_from_tokens_alone() -> None:
    """No style sheet names a colour of its own, but for paper."""
    folder = Path(__file__).parents[2] / "builder" / "render" / "look" / "css"
    on_screen = {
        path.name: path.read_text(encoding="utf-8").partition("@media print")[0]
        for path in folder.glob("*.css")
    }
    found = {name: re.findall(r"#[0-9a-f]{3,8}\b", text) for name, text in on_screen.items()}
    assert {name: colours for name, colours in found.items() if colours} == {}
