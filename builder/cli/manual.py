"""`caseloom manual`: the handbook of the tool as a small site."""

from __future__ import annotations

from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING

import click

from builder.cli.options import say

if TYPE_CHECKING:
    from builder.model.manual import ManualCommand

FOLDER = click.Path(path_type=Path, file_okay=False)


@click.command("manual")
@click.option("--out", type=FOLDER, default=Path("manual"), help="The folder it is written into (manual).")
def command(out: Path) -> int:
    """Write the handbook: every command, every field of every file, and every name that a check prints.

    It is built from the commands, schemas and checks themselves, so that it says what this version does.
    """
    from builder.cli import COMMANDS
    from builder.flow.manual import write_manual

    start = write_manual(tuple(described(name, summary) for name, summary in COMMANDS.items()), out)
    say([f"The manual is written: open {start}"])
    return 0


def described(name: str, summary: str) -> ManualCommand:
    """A command as the handbook tells it, from its own help."""
    from builder.model.manual import ManualCommand

    made: click.Command = import_module(f"builder.cli.{name}").command
    context = click.Context(made, info_name=f"caseloom {name}")
    records = (one.get_help_record(context) for one in made.params)
    options = tuple((flags, words) for flags, words in (one for one in records if one) if words)
    usage = made.get_usage(context).removeprefix("Usage: ")
    paragraphs = (made.help or "").split("\n\n")
    text = "\n\n".join(" ".join(one.split()) for one in paragraphs)
    return ManualCommand(name, summary, usage, text, options)
