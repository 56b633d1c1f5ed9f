"""The demonstration without its tours: one practice set, the test, the station and the class, soon opened."""

import re
import shutil
from dataclasses import replace
from functools import cache
from pathlib import Path

from builder.flow.opened import Opened
from tests.demo.built import COURSE, fresh_folder

TOURS = re.compile(r"(?ms)(^practice:\n  - .*?)^  - .*?(?=^tests:)")


@cache
def small() -> Path:
    """The small course in a folder of its own, for tests that change nothing in it."""
    return small_course(fresh_folder() / "course")


def small_course(target: Path) -> Path:
    """A copy of the demonstration with its first practice set alone; whole and sound in itself."""
    shutil.copytree(COURSE, target, ignore=shutil.ignore_patterns(".*"))
    file = target / "course.yml"
    text, cut = TOURS.subn(r"\1", file.read_text(encoding="utf-8"))
    if not cut:
        raise LookupError("The demonstration has no second practice set to leave out.")
    file.write_text(text, encoding="utf-8", newline="\n")
    for case in (target / "cases").iterdir():
        if not re.search(rf"\b{case.stem}\b", text):
            case.unlink()
    return target


def made_small(opened: Opened) -> Opened:
    """The same course, cut out of the whole demonstration as it was judged."""
    course = opened.course
    if course is None:
        raise LookupError("The demonstration can not be read.")
    first = course.file.practice[:1]
    kept = {name for one in first for name in one.cases} | {
        name for one in course.file.tests for name in one.cases
    }
    return replace(
        opened,
        course=replace(
            course,
            file=course.file.model_copy(update={"practice": first}),
            cases={name: case for name, case in course.cases.items() if name in kept},
        ),
        judged={name: visits for name, visits in opened.judged.items() if name in kept},
    )
