"""`caseloom build`: the student site and the instructor site."""

from __future__ import annotations

from pathlib import Path

import click

from builder.cli.options import colour, course_argument, json_option, out_of, out_option, say, say_json, width


@click.command("build")
@course_argument
@out_option
@json_option
def command(folder: Path, out: Path | None, *, as_json: bool) -> int:
    """Build COURSE: OUT/publish for students, OUT/private for the instructor."""
    from builder.flow.build import KeyInPublished, build
    from builder.flow.opened import open_course

    opened = open_course(folder)
    if not opened.sound:
        click.echo(opened.text(width=width(), colour=colour()), err=as_json)
        return 1
    try:
        built = build(opened, folder, out_of(folder, out))
    except KeyInPublished as refused:
        say(f"{leak.place.file}: {leak.message} {leak.remedy}" for leak in refused.leaks)
        click.echo(f"Nothing was published: {refused}.")
        return 1
    if as_json:
        say_json({"format": "caseloom/build/1", "publish": str(built.publish), "editions": built.editions})
    else:
        say(built.lines())
    return 0
