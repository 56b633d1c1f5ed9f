"""`caseloom grade`: decide about every participant of a class."""

from __future__ import annotations

from pathlib import Path

import click

from builder.cli.options import class_work, desk_of, say


@click.command("grade")
@class_work
@click.option("--try", "only_try", is_flag=True, help="Only say who would change; write nothing.")
def command(folder: Path, klass: str, out: Path | None, records: Path | None, *, only_try: bool) -> int:
    """Grade CLASS and write every decision that is new."""
    from builder.flow.records import grade

    say(grade(desk_of(folder, klass, out, records), write=not only_try))
    return 0
