"""Fingers: every target is large, nothing has to be dragged, nothing moves for whoever wants it still."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from builder.render.assets import LOOK
from tests.walk.kinds import KINDS
from tests.walk.sites import plain
from tests.walk.walker import walker

OURS, LEAST = 44, 24  # CSS pixels; the least is WCAG 2.2, 2.5.8, where links in a sentence are left out
TARGETS = (Path(__file__).parent / "targets.js").read_text(encoding="utf-8")
DRAGGED = re.compile(r"\b(drag|dragstart|draggable|pointermove|touchmove|mousemove)\b")
FILES = sorted(path for path in LOOK.rglob("*") if path.suffix in (".html", ".js", ".css"))


@pytest.mark.browser
def test_targets_are_large_and_nothing_moves(browser: Browser) -> None:
    """On every kind of page: 44 pixels, 24 for what unfolds within what is told."""
    found: dict[str, list[str]] = {}
    with walker(browser, plain(), width=320) as visitor:
        for kind in KINDS:
            visitor.walk_to(kind)
            found[kind.name] = visitor.page.evaluate(TARGETS, [OURS, LEAST])
    assert {name: wrong for name, wrong in found.items() if wrong} == {}


@pytest.mark.browser
def test_a_small_target_and_a_movement_are_found(browser: Browser) -> None:
    """The test above can fail."""
    with walker(browser, plain()) as visitor:
        page = visitor.go("publish/red-flags.html")
        style = ".jump a { min-height: 0 !important; padding: 0 } h1 { transition: color 1s !important }"
        page.add_style_tag(content=style)
        told = " ".join(page.evaluate(TARGETS, [OURS, LEAST]))
    assert "Emergency" in told
    assert "h1. moves" in told


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.relative_to(LOOK).as_posix())
def test_nothing_is_dragged(path: Path) -> None:
    """No template or script listens to a finger or pointer that moves (WCAG 2.2, 2.5.7)."""
    assert DRAGGED.findall(path.read_text(encoding="utf-8")) == []
