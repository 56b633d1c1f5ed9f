"""`caseloom host`: the class in the hall, on the instructor's own machine."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import click

from builder.cli.options import course_argument, json_option, out_of, out_option

if TYPE_CHECKING:
    from builder.model.outputs.host import HostOutput


@click.command("host")
@course_argument
@click.argument("klass", metavar="CLASS")
@click.option(
    "--hall", default="", metavar="ADDRESS", help="Open the hall at once on this address of the machine."
)
@click.option(
    "--port",
    type=click.IntRange(0, 65534),
    default=8028,
    show_default=True,
    help="Of your own page; the hall takes the next one. 0 takes any.",
)
@out_option
@json_option
def command(folder: Path, klass: str, hall: str, port: int, out: Path | None, *, as_json: bool) -> int:
    """Serve the built student site of COURSE to the phones of CLASS, and take their answer sheets.

    The instructor's page opens on this machine alone; from there the hall is opened on one address.
    Sheets lie in COURSE/classes/CLASS/answers, safe on the disk before anyone is told "received"; then
    run collect.
    """
    from builder.flow.hall import open_class
    from builder.host.run import Asked, host

    desk = open_class(folder, klass, out_of(folder, out) / "publish")

    def tell(told: HostOutput) -> None:
        click.echo(told.model_dump_json(by_alias=True) if as_json else _line(told, desk.taught.taught.title))

    host(desk, Asked(port, port + 1 if port else 0, hall), tell)
    if not as_json:
        click.echo(f"Next: caseloom collect {folder} --class {klass}")
    return 0


def _line(told: HostOutput, title: str) -> str:
    if told.ways and told.counts:
        return (
            f"Class {told.klass}: {title}, {told.counts.of} people.\n"
            f"  yours  {told.ways.instructor}  (this machine only; opens once)\n"
            f"  hall   {told.ways.hall or 'shut; open it on your page'}\n"
            "Keep this machine awake. Ctrl-C ends the host; phones go on by themselves when it is back."
        )
    if told.counts:
        counts = told.counts
        return (
            f"Host ended. {counts.sheets} sheets lie in the inbox, from {counts.people} of {counts.of} "
            f"people; {counts.set_aside} set aside."
        )
    return f"  {told.line}"
