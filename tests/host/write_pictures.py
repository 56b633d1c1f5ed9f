"""Takes the README's pictures of a class in the hall: `python -m tests.host.write_pictures`."""

import json
import shutil
import tempfile
from pathlib import Path

from playwright.sync_api import Browser

from tests.chromium import chromium
from tests.demo.small import small_course
from tests.demo.write_pictures import PICTURES
from tests.host.made import codes, sheet
from tests.host.running import Running, own_address, running
from tests.render.sample_site import built

SIZE = {"width": 1280, "height": 720}
TALL = {"width": 1280, "height": 960}


def main() -> None:
    """Replace both pictures."""
    with tempfile.TemporaryDirectory() as root, chromium() as browser:
        course = small_course(Path(root) / "course")
        shutil.rmtree(course / "classes" / "spring" / "answers")
        shutil.copytree(built(), course / "out" / "publish")
        with running(course, course / "out", Path(root), "--port", "8028", "--hall", own_address()) as host:
            begun(host)
            shoot(browser, host)


def begun(host: Running) -> None:
    """Some have handed in, some are at it, some are not here yet."""
    for code in codes()[:2]:
        host.hall.post("/hand", sheet(code))
    for code, answered in zip(codes()[2:6], (7, 4, 0, 9), strict=True):
        told = {"code": code, "answered": answered, "of": 10}
        host.hall.post("/here", json.dumps(told).encode())


def shoot(browser: Browser, host: Running) -> None:
    """The screen for the room, and the instructor's page."""
    page = browser.new_context(viewport=SIZE, reduced_motion="reduce").new_page()  # type: ignore[arg-type]
    page.set_viewport_size(TALL)  # type: ignore[arg-type]
    page.goto(host.ways["instructor"])
    page.wait_for_selector("#people li")
    page.screenshot(path=PICTURES / "instructor.png")
    page.set_viewport_size(SIZE)  # type: ignore[arg-type]
    page.goto(page.url + "screen")
    page.screenshot(path=PICTURES / "hall.png")


if __name__ == "__main__":
    main()
