"""`caseloom collect`: take the answer sheets of a class into the record."""

from __future__ import annotations

from pathlib import Path

import click

from builder.cli.options import class_work, desk_of, say


@click.command("collect")
@class_work
def command(folder: Path, klass: str, out: Path | None, records: Path | None) -> int:
    """Take every answer sheet in COURSE/classes/CLASS/answers into the record, each exactly once."""
    from builder.flow.records import collect

    lines, whole = collect(desk_of(folder, klass, out, records))
    say(lines)
    return 0 if whole else 1
