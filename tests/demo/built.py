"""The demonstration, run once for all tests that look at what it wrote."""

import atexit
import shutil
import tempfile
from contextlib import chdir
from functools import cache
from pathlib import Path

from click.testing import Result

from builder.disk import shipped
from builder.flow.build import build
from builder.flow.opened import Opened, open_course
from tests.cli.run import run, status

COURSE = shipped("demo_course")
OUT = Path("some where/out")


@cache
def opened() -> Opened:
    """The demonstration course, read, judged and checked."""
    return open_course(COURSE)


@cache
def demo_run() -> tuple[Path, Result]:
    """The folder in which `caseloom demo` was run, with `OUT` named from there, and its result."""
    folder = fresh_folder()
    with chdir(folder):
        return folder, run("demo", "--out", OUT)


def demo() -> tuple[Path, tuple[str, ...]]:
    """Where the whole demonstration was written, and every line it said."""
    folder, done = demo_run()
    if status(done):
        raise LookupError(done.output)
    return folder / OUT, tuple(done.output.splitlines())


def built_again() -> Path:
    """A second build of the same course, somewhere else."""
    out = fresh_folder()
    build(opened(), COURSE, out)
    return out


def fresh_folder() -> Path:
    """A folder that goes when the tests end."""
    folder = Path(tempfile.mkdtemp(prefix="caseloom-"))
    atexit.register(shutil.rmtree, folder, ignore_errors=True)
    return folder
