"""Writes the answer sheets of the demonstration's class: `python -m tests.demo.write_sheets`."""

import shutil
import tempfile
from pathlib import Path

from playwright.sync_api import Browser

from builder.flow.build import build
from builder.flow.opened import open_course
from builder.flow.records import key_rings
from tests.chromium import chromium
from tests.demo.people import SITTINGS
from tests.demo.sitting import sit

COURSE = Path(__file__).parents[2] / "demo_course"
CLASS = "spring"
ANSWERS = COURSE / "classes" / CLASS / "answers"


def sheets(browser: Browser, out: Path) -> dict[str, bytes]:
    """Every sheet by file name, made by answering the course that was built into `out`."""
    (ring,) = key_rings(out / "private")
    made = {one.code: sit(browser, out / "publish", ring, one, CLASS) for one in SITTINGS}
    return {f"{code}.json": text.encode() for code, text in made.items()}


def main() -> None:
    """Replace the sheets that the demonstration ships."""
    with tempfile.TemporaryDirectory() as folder, chromium() as browser:
        build(open_course(COURSE), COURSE, Path(folder))
        made = sheets(browser, Path(folder))
    shutil.rmtree(ANSWERS, ignore_errors=True)
    ANSWERS.mkdir(parents=True)
    for name, data in made.items():
        (ANSWERS / name).write_bytes(data)


if __name__ == "__main__":
    main()
