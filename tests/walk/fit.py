"""Whether the text on a page fits: nothing wider than the screen, nothing cut off, nothing out of its box."""

from pathlib import Path

from playwright.sync_api import Page

# Text that may be cut short: a course's title in the bar, which heads the first page in full.
SHORTENED = ".bar .course"
SCRIPT = Path(__file__).with_suffix(".js").read_text(encoding="utf-8")


def misfits(page: Page) -> list[str]:
    """Every place where text does not fit, each once."""
    found: list[str] = page.evaluate(SCRIPT, SHORTENED)
    return found
