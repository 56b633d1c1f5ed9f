"""Takes the pictures of the README from the demonstration itself: `python -m tests.demo.write_pictures`."""

import tempfile
from pathlib import Path

from playwright.sync_api import Browser, Page

from builder.flow.demo import run_demo
from tests.chromium import chromium

PICTURES = Path(__file__).parents[1] / "pictures"
PHONE = {"width": 390, "height": 844}
DESK = {"width": 1280, "height": 900}


def main() -> None:
    """Replace every picture."""
    PICTURES.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory() as folder, chromium() as browser:
        out = Path(folder)
        run_demo(out, lambda _: None)
        publish, private = out / "publish", out / "private" / "instructor"
        shoot(browser, publish / "cases" / "unicycle-thigh.html", PHONE, "visit", ".visit:not([hidden]) h2")
        decided(browser, publish / "cases" / "unicycle-thigh.html")
        shoot(browser, publish / "tests" / "final-a.html", PHONE, "test", ".question", "#code=QZVNRBLAD")
        shoot(browser, private / "tests" / "final-a.html", DESK, "key", "main section, main h2")


def shoot(browser: Browser, file: Path, size: dict[str, int], name: str, at: str, more: str = "") -> None:
    """One picture of a page, scrolled to its first match of `at`."""
    page = opened(browser, file, size, more)
    keep(page, name, at)


def decided(browser: Browser, file: Path) -> None:
    """A visit after its first two decisions, in the dark."""
    page = opened(browser, file, PHONE, scheme="dark")
    for _ in range(2):
        step = page.locator(".visit:not([hidden]) .step:not([hidden])").last
        step.locator("label").first.click()
        step.locator(".decide").click()
    keep(page, "decided", ".step >> nth=1")


def opened(browser: Browser, file: Path, size: dict[str, int], more: str = "", scheme: str = "light") -> Page:
    """A page in a context of its own."""
    context = browser.new_context(viewport=size, color_scheme=scheme, reduced_motion="reduce")  # type: ignore[arg-type]
    page = context.new_page()
    page.goto(file.as_uri() + more)
    return page


def keep(page: Page, name: str, at: str) -> None:
    """Scroll to the first match and keep what is seen."""
    page.locator(at).first.evaluate("one => one.scrollIntoView({block: 'start'})")
    page.screenshot(path=PICTURES / f"{name}.png")
    page.context.close()


if __name__ == "__main__":
    main()
