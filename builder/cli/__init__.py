"""The command line: a lazy group, so that `--help` imports no command."""

from __future__ import annotations

import sys
from importlib import import_module
from io import TextIOWrapper

import click

from builder import __version__
from builder.fault import Fault

COMMANDS = {
    "new": "Begin a course, or a file of one, with comments that say what each line is for.",
    "check": "Say what is to fix in a course.",
    "explain": "Say what the rules make of a case, and why.",
    "schema": "Write what an editor needs to complete and check the files of a course.",
    "build": "Build the student site and the instructor site.",
    "preview": "Show the course beside the editor, and follow every save.",
    "host": "Serve a class in the hall, and take its answer sheets.",
    "collect": "Take the answer sheets of a class into the record.",
    "grade": "Decide about every participant of a class.",
    "certify": "Write the certificate list of a class, and the refusals.",
    "analyse": "Count what a class answered.",
    "export": "Write a test, a case or the site as files that stand by themselves.",
    "manual": "Write the handbook of the tool.",
    "demo": "Run the whole job on the course that comes with the tool.",
}


class LazyGroup(click.Group):
    """A group that imports a command only when it is called."""

    def list_commands(self, ctx: click.Context) -> list[str]:  # noqa: ARG002 - click gives the context to every group
        """Every command, in the order of the job."""
        return list(COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:  # noqa: ARG002 - as above
        """The command of this name, imported now."""
        if cmd_name not in COMMANDS:
            return None
        command: click.Command = import_module(f"builder.cli.{cmd_name}").command
        return command

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:  # noqa: ARG002 - as above
        """List the commands from the table alone."""
        with formatter.section("Commands"):
            formatter.write_dl(list(COMMANDS.items()))


@click.group(cls=LazyGroup)
@click.version_option(__version__, prog_name="caseloom")
def group() -> None:
    """Write cases, teach by phase of healing, examine, certify, and keep the record.

    Education, not medical advice: work within your licence and local law, and refer where a red flag shows.
    """


def main() -> None:
    """Run the command line; a fault is one plain line and exit status 2."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, TextIOWrapper):  # a letter that the terminal has not becomes a mark
            stream.reconfigure(errors="replace")
    try:
        sys.exit(group.main(standalone_mode=False) or 0)
    except click.exceptions.Abort:
        click.echo("Stopped; nothing half done was kept.", err=True)
        sys.exit(2)
    except click.ClickException as error:
        error.show()
        sys.exit(2)
    except Fault as fault:
        click.echo(f"caseloom: {fault.message} {fault.remedy}".strip(), err=True)
        sys.exit(2)
    except Exception as error:  # noqa: BLE001 - the last stand: whatever went wrong becomes one line and a log entry
        from builder.cli.trouble import log_trouble

        click.echo(log_trouble(error), err=True)
        sys.exit(2)
