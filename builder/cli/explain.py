"""`caseloom explain`: what the rules make of a case, and why; what is left to review; what a check means."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import click

from builder.cli.options import json_option, say, say_json


@click.command("explain")
@click.argument("folder", metavar="COURSE", type=click.Path(path_type=Path, file_okay=False))
@click.argument("case")
@click.argument("name", required=False)
@click.option(
    "--out",
    type=click.Path(path_type=Path, dir_okay=False),
    help="With `reviews`: write a sheet to sign here.",
)
@json_option
def command(folder: Path, case: str, name: str | None, out: Path | None, *, as_json: bool) -> int:
    """Print the judgement of CASE in COURSE: phase, severity, session, and every option as written.

    In place of a case, `reviews`: all that a clinician is to go through; `flags`: which rule stops which
    card; `check` and a name: what that check says and why, with an example of either kind; `rule`, `card` or
    `policy` and a name: what it says and rests on; `hours`: the agenda added up by the rules of its boards,
    or of the board named; `settings`: what holds and where it comes from. After a
    case, the id of a visit tells that visit alone.
    """
    from builder.fault import Fault
    from builder.flow.explain_check import explain_check

    if name is not None and case in ("reviews", "flags"):
        raise Fault(f"`{name}` belongs to nothing here.", f"Write `{case}` alone.")
    if case == "check":
        _print(*explain_check(name), as_json=as_json)
        return 0
    _explain(folder, case, name, out, as_json=as_json)
    return 0


def _explain(folder: Path, case: str, name: str | None, out: Path | None, *, as_json: bool) -> None:
    """Print what needs the course itself."""
    from builder.flow.explain_content import CONTENT
    from builder.flow.explain_hours import explain_hours
    from builder.flow.flags import explain_flags
    from builder.flow.opened import explain_case, open_course
    from builder.flow.reviews import review_list, write_review_sheet

    opened = open_course(folder)
    if case == "reviews" and out is not None:
        say([write_review_sheet(opened, out)])
    elif case in CONTENT:
        _print(*CONTENT[case](opened, name), as_json=as_json)
    elif case == "hours":
        _print(*explain_hours(opened, name, datetime.now(UTC).date()), as_json=as_json)
    else:
        told = {"reviews": review_list, "flags": explain_flags}.get(case)
        _print(*(told(opened) if told else explain_case(opened, case, name)), as_json=as_json)


def _print(lines: list[str], data: dict[str, Any], *, as_json: bool) -> None:
    if as_json:
        say_json(data)
    else:
        say(lines)
