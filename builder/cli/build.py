"""`caseloom build`: the student site and the instructor site."""

from __future__ import annotations

from pathlib import Path

import click

from builder.cli.options import (
    colour,
    course_argument,
    fresh_option,
    home,
    json_option,
    out_of,
    out_option,
    say,
    say_json,
    width,
)


@click.command("build")
@course_argument
@out_option
@fresh_option
@json_option
def command(folder: Path, out: Path | None, *, fresh: bool, as_json: bool) -> int:
    """Build COURSE: OUT/publish for students, OUT/private for the instructor."""
    from builder.flow.build import build
    from builder.flow.gate import cache_of
    from builder.flow.opened import open_course

    cache = None if fresh or not folder.is_dir() else cache_of(folder, home())
    opened = open_course(folder, cache)
    if not opened.sound:
        click.echo(opened.text(width=width(), colour=colour()), err=as_json)
        return 1
    built = build(opened, folder, out_of(folder, out), cache)
    if as_json:
        say_json({"format": "caseloom/build/1", "publish": str(built.publish), "editions": built.editions})
    else:
        say(built.lines())
    return 0
