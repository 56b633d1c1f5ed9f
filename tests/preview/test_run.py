"""A preview as it runs: it follows its folder, tells when it is behind, and ends cleanly."""

import os
import re
import signal
import subprocess
import sys
import time
import urllib.request
from pathlib import Path

import pytest

from builder.preview.run import is_source
from tests.demo.small import small_course

LONG = 120.0


@pytest.mark.parametrize(
    ("path", "seen"),
    [
        ("cases/landing.yml", True),
        ("course.yml", True),
        ("lessons/dose.md", True),
        ("media/out/film.vtt", True),
        ("out/publish/index.html", False),
        ("private/draw_secret", False),
        ("classes/spring/answers/a.json", False),
        (".caseloom/cache/a", False),
        ("cases/.landing.yml.swp", False),
        ("cases/landing.yml~", False),
        ("cases/landing.yml.tmp", False),
    ],
)
def test_what_is_followed(path: str, seen: bool) -> None:  # noqa: FBT001 - a table of yes and no
    """Sources, and neither what is built nor what an editor leaves beside them."""
    assert is_source(path) is seen


def started(folder: Path, home: Path) -> tuple[subprocess.Popen[str], str]:
    """A preview in a process of its own, and its address."""
    code = "from builder.cli import main; main()"
    process = subprocess.Popen(
        [sys.executable, "-u", "-c", code, "preview", str(folder), "--port", "0"],
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        env=os.environ | {"XDG_CONFIG_HOME": str(home)},
    )
    assert process.stdout is not None
    for line in process.stdout:
        if found := re.search(r"http://127\.0\.0\.1:\d+/", line):
            return process, found[0]
    raise LookupError("The preview never began.")


def read(address: str) -> str:
    """A page."""
    with urllib.request.urlopen(address, timeout=60) as answer:  # noqa: S310 - our own address
        data: bytes = answer.read()
    return data.decode("utf-8")


def test_a_preview_follows_saves_and_ends_with_ctrl_c(tmp_path: Path) -> None:
    """A save by rename is shown; Ctrl-C ends it with status 0 and no trace; no secret was made."""
    folder = small_course(tmp_path / "a course é")
    (folder / "private" / "draw_secret").unlink()
    process, address = started(folder, tmp_path / "home")
    page = f"{address}students/cases/stilt-ankle.html"
    assert "caseloom-panel" in read(page)
    path = folder / "cases" / "stilt_ankle.yml"
    draft = path.with_name("draft")
    text = path.read_text(encoding="utf-8")
    draft.write_text(re.sub(r"(?m)^mechanism: .*", "mechanism: Told anew.", text), encoding="utf-8")
    draft.replace(path)
    end = time.monotonic() + LONG
    while "Told anew." not in read(page) and time.monotonic() < end:
        time.sleep(0.05)
    assert "Told anew." in read(page)
    process.send_signal(signal.SIGINT)
    said, _ = process.communicate(timeout=60)
    assert process.returncode == 0
    assert "Preview ended." in said
    assert "Traceback" not in said
    assert not (folder / "private" / "draw_secret").exists()
    assert not (folder / "out").exists()
