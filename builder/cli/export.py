"""`caseloom export`: a test, a case or the student site as files that stand by themselves."""

from __future__ import annotations

from pathlib import Path

import click

from builder.cli.options import colour, json_option, out_of, out_option, say, say_json, width

WHAT = ("test", "case", "site")


@click.command("export")
@click.argument("folder", metavar="COURSE", type=click.Path(path_type=Path, file_okay=False))
@click.argument("what", type=click.Choice(WHAT))
@click.argument("name", required=False)
@click.argument("version", required=False)
@out_option
@json_option
def command(
    folder: Path, what: str, name: str | None, version: str | None, out: Path | None, *, as_json: bool
) -> int:
    """Write a test, a practice case or the student site of COURSE as files that stand by themselves.

    `test`, with its NAME and VERSION or for all of them: one HTML file for each version, with everything in
    it; it opens from a phone's files, asks nothing of any network, and hands out the answer sheet. It holds
    no key. `case` NAME: a practice case in the same way, with the red flags. Both lie in
    OUT/private/handouts; a build writes the tests there as well. `site`: the student site as a folder,
    OUT/site_source, that `mkdocs build` builds without this tool.
    """
    from builder.flow.export import export_case, export_site, export_tests
    from builder.flow.opened import open_course

    opened = open_course(folder)
    if not opened.sound:
        click.echo(opened.text(width=width(), colour=colour()), err=as_json)
        return 1
    target = out_of(folder, out)
    if what == "test":
        written = export_tests(opened, folder, target, name, version)
    else:
        made = {"case": export_case, "site": export_site}[what]
        written = made(opened, folder, target, name)
    if as_json:
        say_json({"format": "caseloom/export/1", "files": [path.as_posix() for path in written]})
    else:
        say([f"Wrote {path}" for path in written])
    return 0
