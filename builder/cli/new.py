"""`caseloom new`: begin a course, or a file of one."""

from __future__ import annotations

import sys
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

import click

from builder.cli.options import course_argument, say

if TYPE_CHECKING:
    from builder.model.asking import Asking

# For each thing that may be begun: what it is, and the names of what is asked.
THINGS: dict[str, tuple[str, tuple[str, ...]]] = {
    "course": ("a course in a new FOLDER", ("title", "provider", "instructor", "licence")),
    "case": ("a case that holds together", ("title", "region", "tissue", "injury", "since", "use")),
    "station": ("a practical station", ("title", "case")),
    "lesson": ("a teaching page", ("title",)),
    "question": ("a question that belongs to no case", ("title", "objective", "kind", "use")),
    "rule": ("a rule of this course, which may only tighten", ("title", "fact", "group", "answer")),
    "card": ("a technique or action, as strict as its family", ("title", "group")),
    "board": ("the rules of an approving body", ("title", "source", "minutes", "floor")),
    "class": ("a class: one run of the course", ("title", "dates", "zone", "place")),
}


@click.group("new")
def command() -> None:
    """Begin a course, or a file of one; nothing is ever written over.

    What is not given as an option is asked for, each with a suggestion.
    """


def _begin(kind: str, folder: Path, given: dict[str, str | None], *, defaults: bool) -> None:
    from builder.flow.new import asked, begin, begin_course

    today = datetime.now().astimezone().date()
    answers = _answers(asked(kind, folder, today), given, defaults=defaults)
    if name := given.get("id"):
        answers["id"] = name
    say(begin_course(folder, answers) if kind == "course" else begin(kind, folder, answers, today))


def _answers(askings: tuple[Asking, ...], given: dict[str, str | None], *, defaults: bool) -> dict[str, str]:
    """Every answer, as given, suggested, or typed now; where nobody can type, what is missing is named."""
    found: dict[str, str] = {}
    missing: list[str] = []
    for asking in askings:
        answer = given.get(asking.name)
        if answer is None and defaults:
            answer = asking.suggested
        if answer is None and _can_ask():
            answer = click.prompt(asking.words, default=asking.suggested, type=_kind_of(asking))
        if answer is None:
            missing.append(f"--{asking.name}")
            continue
        _fits(asking, answer)
        found[asking.name] = answer.strip()
    if missing:
        raise click.UsageError(
            f"Nobody is there to ask. Give {', '.join(missing)}; --defaults takes what is suggested."
        )
    return found


def _can_ask() -> bool:
    return sys.stdin.isatty()


def _kind_of(asking: Asking) -> click.Choice[str] | None:
    return click.Choice(asking.choices) if asking.choices else None


def _fits(asking: Asking, answer: str) -> None:
    if asking.choices and answer not in asking.choices:
        known = ", ".join(asking.choices)
        raise click.UsageError(f"--{asking.name} cannot be {answer!r}. It may be: {known}.")
    if not answer.strip():
        raise click.UsageError(f"--{asking.name} is empty.")


def _command(kind: str) -> click.Command:
    what, names = THINGS[kind]

    def run(folder: Path, *, defaults: bool, **given: str | None) -> int:
        _begin(kind, folder, given, defaults=defaults)
        return 0

    folder = (
        click.argument("folder", type=click.Path(path_type=Path)) if kind == "course" else course_argument
    )
    run = folder(run)
    for name in reversed(names):
        run = click.option(f"--{name}")(run)
    run = click.option("--id", help="The name of the file, where not from the title.")(run)
    run = click.option("--defaults", is_flag=True, help="Take what is suggested; ask nothing.")(run)
    return click.command(kind, help=f"Begin {what}.")(run)


for _kind in THINGS:
    command.add_command(_command(_kind))
