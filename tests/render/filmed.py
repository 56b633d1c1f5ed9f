"""The sample course with the demonstration's film in its lesson, and its site with the film beside it."""

from __future__ import annotations

import shutil
from atexit import register
from dataclasses import replace
from functools import cache
from pathlib import Path
from tempfile import mkdtemp

from builder.disk import shipped
from builder.doors.site import build_site
from builder.model.library import Course
from builder.read.films import read_films
from builder.render.student import student_site
from tests.render.samples import course

NAME = "wrap_and_look"
DEMO = shipped("demo_course")
LESSON = f"Words to read.\n\n[film {NAME}]\n\nAfter it.\n"


@cache
def filmed() -> Course:
    """The course; its only lesson places the film."""
    media = frozenset(path.relative_to(DEMO).as_posix() for path in (DEMO / "media").iterdir())
    read = read_films(DEMO, media)
    return replace(course(), lessons={"phases": LESSON}, media=media, films=read.films)


@cache
def filmed_site() -> Path:
    """Its site, built into a folder that goes when the tests end."""
    folder = Path(mkdtemp(prefix="caseloom-film-"))
    register(shutil.rmtree, folder, ignore_errors=True)
    plan = student_site(filmed(), (), ())
    build_site(plan, folder)
    for name in plan.media:
        (folder / name).parent.mkdir(exist_ok=True)
        shutil.copyfile(DEMO / name, folder / name)
    return folder
