"""`caseloom explain`: what the rules make of a case, and why."""

from __future__ import annotations

from pathlib import Path

import click

from builder.cli.options import json_option, say, say_json


@click.command("explain")
@click.argument("folder", metavar="COURSE", type=click.Path(path_type=Path, file_okay=False))
@click.argument("case")
@json_option
def command(folder: Path, case: str, *, as_json: bool) -> int:
    """Print the judgement of CASE in COURSE: phase, severity, session, and every option as written."""
    from builder.flow.opened import explain_case, open_course

    lines, data = explain_case(open_course(folder), case)
    if as_json:
        say_json(data)
    else:
        say(lines)
    return 0
