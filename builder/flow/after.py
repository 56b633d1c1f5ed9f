"""A calendar file for each class: the days on which its participants come back to the course."""

from __future__ import annotations

from pathlib import Path

from builder.assess.spaced import spaced_sets
from builder.disk import write_bytes
from builder.doors.calendar import calendar_file
from builder.model.library import Course
from builder.model.taught import TaughtClass
from builder.read.written import read_entry
from builder.render.maker import maker
from builder.render.student_after import reminders

NAME = "after.ics"


def write_calendars(course: Course, folder: Path, private: Path) -> list[Path]:
    """Write one for each class that can be read, beside its lists; it holds no learner and no address."""
    made, written = maker(course), []
    classes = sorted((folder / "classes").glob("*/class.yml")) if spaced_sets(course) else []
    for path in classes:
        noun = read_entry(TaughtClass, path, f"classes/{path.parent.name}/class.yml").noun
        if isinstance(noun, TaughtClass):
            target = private / "classes" / path.parent.name / NAME
            write_bytes(target, calendar_file(reminders(made, max(noun.dates))))
            written.append(target)
    return written
