"""`caseloom explain`: what the rules make of a case, and why; what is left to review."""

from __future__ import annotations

from pathlib import Path

import click

from builder.cli.options import json_option, say, say_json


@click.command("explain")
@click.argument("folder", metavar="COURSE", type=click.Path(path_type=Path, file_okay=False))
@click.argument("case")
@click.option(
    "--out",
    type=click.Path(path_type=Path, dir_okay=False),
    help="With `reviews`: write a sheet to sign here.",
)
@json_option
def command(folder: Path, case: str, out: Path | None, *, as_json: bool) -> int:
    """Print the judgement of CASE in COURSE: phase, severity, session, and every option as written.

    With `reviews` in place of a case: every rule and card, as a clinician goes through them.
    """
    from builder.flow.opened import explain_case, open_course
    from builder.flow.reviews import review_list, write_review_sheet

    opened = open_course(folder)
    if case == "reviews" and out is not None:
        say([write_review_sheet(opened, out)])
        return 0
    lines, data = review_list(opened) if case == "reviews" else explain_case(opened, case)
    if as_json:
        say_json(data)
    else:
        say(lines)
    return 0
