"""`caseloom preview`: the course beside the editor."""

from __future__ import annotations

from pathlib import Path

import click

from builder.cli.options import course_argument, home


@click.command("preview")
@course_argument
@click.option("--port", type=click.IntRange(0, 65535), default=8027, show_default=True, help="0 takes any.")
def command(folder: Path, port: int) -> int:
    """Show COURSE in a browser on this machine, and follow every save.

    Nothing is published: no edition, no secret and no key is made.
    """
    from builder.flow.gate import cache_of
    from builder.preview.run import preview

    preview(folder, cache_of(folder, home()), port, click.echo)
    return 0
