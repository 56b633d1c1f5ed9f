"""The sample site with a time limit on its test, built once."""

from atexit import register
from functools import cache
from pathlib import Path
from shutil import rmtree
from tempfile import mkdtemp

from builder.doors.site import build_site
from builder.render.student import student_site
from tests.render.sample_cases import practice_case, published_test
from tests.render.samples import course, sample_test

LIMIT = 40


@cache
def timed() -> Path:
    """The folder of the built site; its test may take forty minutes."""
    folder = Path(mkdtemp(prefix="caseloom-timed-"))
    register(rmtree, folder, ignore_errors=True)
    limited = course(tests=[{**sample_test(), "time_limit": LIMIT}])
    build_site(student_site(limited, (practice_case(),), (published_test(),)), folder)
    return folder
