"""The demonstration, run once for all tests that look at what it wrote."""

import atexit
import shutil
import tempfile
from functools import cache
from pathlib import Path

from builder.disk import shipped
from builder.flow.build import build
from builder.flow.demo import run_demo
from builder.flow.opened import Opened, open_course

COURSE = shipped("demo_course")


@cache
def opened() -> Opened:
    """The demonstration course, read, judged and checked."""
    return open_course(COURSE)


@cache
def demo() -> tuple[Path, tuple[str, ...]]:
    """Where the whole demonstration was written, and every line it said."""
    out, said = _folder(), list[str]()
    run_demo(out, said.append)
    return out, tuple(said)


def built_again() -> Path:
    """A second build of the same course, somewhere else."""
    out = _folder()
    build(opened(), COURSE, out)
    return out


def _folder() -> Path:
    folder = Path(tempfile.mkdtemp(prefix="caseloom-"))
    atexit.register(shutil.rmtree, folder, ignore_errors=True)
    return folder
