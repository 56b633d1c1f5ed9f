"""`caseloom analyse`: count what a class answered."""

from __future__ import annotations

from pathlib import Path

import click

from builder.cli.options import class_work, desk_of, say


@click.command("analyse")
@class_work
def command(folder: Path, klass: str, out: Path | None, records: Path | None) -> int:
    """Count what CLASS answered, and say of each figure how far it can be trusted."""
    from builder.flow.records import analyse

    say(analyse(desk_of(folder, klass, out, records)))
    return 0
