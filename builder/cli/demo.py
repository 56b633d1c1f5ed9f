"""`caseloom demo`: the whole job on the course that comes with the tool."""

from __future__ import annotations

from pathlib import Path

import click


@click.command("demo")
@click.option("--out", type=click.Path(path_type=Path), default=Path("out/demo"), show_default=True)
def command(out: Path) -> int:
    """Check, build, collect, grade, certify and analyse the demonstration course into OUT."""
    from builder.flow.demo import run_demo

    run_demo(out, click.echo)
    return 0
