"""The arguments and printing that several commands share."""

from __future__ import annotations

import json
import shutil
import sys
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

if TYPE_CHECKING:
    from builder.flow.records import Desk

Decorated = Callable[..., Any]

course_argument = click.argument(
    "folder", metavar="COURSE", default=".", type=click.Path(path_type=Path, file_okay=False)
)
json_option = click.option("--json", "as_json", is_flag=True, help="Print data for programs.")
out_option = click.option(
    "--out", type=click.Path(path_type=Path), default=None, help="Where the sites are written (COURSE/out)."
)
fresh_option = click.option(
    "--fresh", is_flag=True, help="Work everything out anew, and use nothing kept from before."
)
class_option = click.option("--class", "klass", required=True, help="The class: a folder in COURSE/classes.")
records_option = click.option(
    "--records", type=click.Path(path_type=Path), default=None, help="The record (COURSE/private/records.db)."
)


def class_work(command: Decorated) -> Decorated:
    """The arguments of every command that works on one class."""
    for option in (records_option, out_option, class_option, course_argument):
        command = option(command)
    return command


def desk_of(folder: Path, klass: str, out: Path | None, records: Path | None) -> Desk:
    """The class laid out, with where its keys and its record lie."""
    from builder.flow.records import lay_out

    return lay_out(folder, klass, out_of(folder, out) / "private", records_of(folder, records))


def out_of(folder: Path, out: Path | None) -> Path:
    """Where a course is built."""
    return out if out is not None else folder / "out"


def records_of(folder: Path, records: Path | None) -> Path:
    """The record a course writes to."""
    return records if records is not None else folder / "private" / "records.db"


def say(lines: Iterable[str]) -> None:
    """Print lines for a person."""
    for line in lines:
        click.echo(line)


def say_json(data: object) -> None:
    """Print data for a program."""
    click.echo(json.dumps(data, ensure_ascii=False, indent=2))


def home() -> Path:
    """Where this person's own settings of the tool lie."""
    return Path(click.get_app_dir("caseloom"))


def width() -> int:
    """The width of the terminal, at most 100."""
    return min(shutil.get_terminal_size((80, 24)).columns, 100)


def colour() -> bool:
    """Whether the terminal shows colour."""
    return sys.stdout.isatty()
