"""The accessibility checker, run inside a page that Chromium shows."""

from pathlib import Path

from playwright.sync_api import Page

SCRIPT = Path(__file__).parent / "browser" / "node_modules" / "axe-core" / "axe.min.js"
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]


def violations(page: Page) -> list[str]:
    """What the checker finds on the page as it stands, each with its first place."""
    page.evaluate(SCRIPT.read_text(encoding="utf-8"))
    asked = {"preload": False, "runOnly": RULES}
    found = page.evaluate("asked => axe.run(document, asked)", asked)["violations"]
    return [f"{one['id']}: {one['nodes'][0]['target']}" for one in found]
