"""A course that was just begun, as a new author has it."""

from collections.abc import Mapping
from datetime import date
from pathlib import Path

from builder.disk import shipped
from builder.flow.new import asked, begin, begin_course
from builder.flow.opened import Opened, open_course
from builder.model.library import Course
from builder.read.course import read_all

TODAY = date(2026, 11, 25)


def suggested(kind: str, folder: Path, given: Mapping[str, str]) -> dict[str, str]:
    """What is given, and what is suggested for the rest."""
    answers = {one.name: one.suggested for one in asked(kind, folder, TODAY) if one.suggested is not None}
    return {**answers, **given}


def begun(folder: Path, title: str = "Soft tissue by phase") -> Path:
    """A new course in a folder."""
    begin_course(folder, suggested("course", folder, {"title": title}))
    return folder


def add(kind: str, folder: Path, title: str, /, **given: str) -> list[str]:
    """A new file of the course; what was said about it."""
    return begin(kind, folder, suggested(kind, folder, {"title": title, **given}), TODAY)


def course_in(folder: Path) -> Course:
    """The course as read."""
    course = read_all(folder, shipped("content"), shipped("site_config.yml")).course
    if course is None:
        raise ValueError("this makes no course")
    return course


def faults(folder: Path) -> list[str]:
    """Everything to fix but advice."""
    return said(open_course(folder))


def said(opened: Opened) -> list[str]:
    """Every error and warning, in one line each."""
    worse = [one for one in opened.to_fix if one.level != "advice"]
    return [f"{one.place.file}:{one.place.line} {one.check}: {one.message}" for one in worse]
