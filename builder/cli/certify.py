"""`caseloom certify`: the certificate list of a class, and the refusals."""

from __future__ import annotations

from pathlib import Path

import click

from builder.cli.options import class_work, desk_of, say


@click.command("certify")
@class_work
def command(folder: Path, klass: str, out: Path | None, records: Path | None) -> int:
    """Write the certificate list of CLASS, and who was refused with every reason."""
    from builder.flow.records import certify

    say(certify(desk_of(folder, klass, out, records)))
    return 0
