"""`caseloom check`: what is to fix in a course."""

from __future__ import annotations

from pathlib import Path

import click

from builder.cli.options import colour, course_argument, json_option, say_json, width


@click.command("check")
@course_argument
@json_option
def command(folder: Path, *, as_json: bool) -> int:
    """Say everything that is to fix in COURSE, with file, line and remedy."""
    from builder.flow.opened import open_course
    from builder.flow.schema import refresh_schemas

    opened = open_course(folder)
    refresh_schemas(folder)
    if as_json:
        say_json(opened.json())
    else:
        click.echo(opened.text(width=width(), colour=colour()))
    return 0 if opened.sound else 1
