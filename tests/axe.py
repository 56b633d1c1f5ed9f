"""The accessibility checker, run inside a page that Chromium shows."""

from pathlib import Path
from typing import Any

from playwright.sync_api import Page

SCRIPT = Path(__file__).parent / "browser" / "node_modules" / "axe-core" / "axe.min.js"
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]

COLOURS = ["color-contrast", "link-in-text-block"]


def looked(page: Page, rules: list[str] | None = None) -> tuple[list[str], list[tuple[str, str]]]:
    """What the checker finds on the page as it stands, each with its first place; and what it cannot tell.

    What it cannot tell is a rule with a place, every one of them. Without `rules`, all are looked at.
    """
    if not page.evaluate("'axe' in window"):
        page.evaluate(SCRIPT.read_text(encoding="utf-8"))
    asked = {"preload": False, "runOnly": rules or RULES, "resultTypes": ["violations", "incomplete"]}
    told: dict[str, Any] = page.evaluate("asked => axe.run(document, asked)", asked)
    wrong = [f"{one['id']}: {one['nodes'][0]['target']}" for one in told["violations"]]
    open_ = [(one["id"], " ".join(node["target"])) for one in told["incomplete"] for node in one["nodes"]]
    return wrong, open_


def violations(page: Page) -> list[str]:
    """What the checker finds on the page as it stands, each with its first place."""
    return looked(page)[0]
