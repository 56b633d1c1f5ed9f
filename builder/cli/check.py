"""`caseloom check`: what is to fix in a course."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import click

from builder.cli.options import colour, course_argument, fresh_option, home, json_option, say_json, width

if TYPE_CHECKING:
    from builder.flow.class_told import ClassTold
    from builder.flow.gate import Told
    from builder.flow.opened import Opened


@click.command("check")
@course_argument
@click.option("--class", "klass", help="Look at this class alone: a folder in COURSE/classes.")
@fresh_option
@json_option
def command(folder: Path, klass: str | None, *, fresh: bool, as_json: bool) -> int:
    """Say everything that is to fix in COURSE, or in one class of it, with file, line and remedy."""
    found = _found(folder, fresh=fresh) if klass is None else _of_class(folder, klass)
    if as_json:
        say_json(found.json())
    else:
        click.echo(found.text(width=width(), colour=colour()))
    return 0 if found.sound else 1


def _of_class(folder: Path, klass: str) -> ClassTold:
    """What is to fix in one class: its file, its sheets, and what its examiners marked."""
    from builder.flow.class_told import told_class
    from builder.flow.records import course_and_folder

    course, place = course_and_folder(folder, klass)
    return told_class(place, course)


def _found(folder: Path, *, fresh: bool) -> Told | Opened:
    """What is to fix; where no file has changed, what was found the last time."""
    from builder.flow.gate import cache_of, gate_key, recall, remember

    cache = key = None
    if not fresh and (folder / "course.yml").is_file():
        cache, key = cache_of(folder, home()), gate_key(folder)
        if (known := recall(folder, cache, key)) is not None:
            return known
    from builder.flow.opened import open_course
    from builder.flow.schema import refresh_schemas

    opened = open_course(folder, cache)
    refresh_schemas(folder)
    if cache is not None and key is not None and opened.course is not None:
        remember(folder, cache, key, opened.to_fix)
    return opened
