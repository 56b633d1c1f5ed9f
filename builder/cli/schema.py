"""`caseloom schema`: what an editor needs to complete and check the files of a course."""

from __future__ import annotations

from pathlib import Path

import click

from builder.cli.options import json_option, say, say_json

FOLDER = click.Path(path_type=Path, file_okay=False)


@click.command("schema")
@click.argument("folder", metavar="[COURSE]", required=False, type=FOLDER)
@click.option("--out", type=FOLDER, help="The folder (COURSE/.caseloom/schema).")
@json_option
def command(folder: Path | None, out: Path | None, *, as_json: bool) -> int:
    """Write a JSON Schema for every sort of file, with the names that COURSE may use.

    Those of answer sheets, and of all that other commands print with --json, lie in `outputs`. Without a
    course: for the shipped content alone, into the folder named by --out.
    """
    from builder.flow.schema import BESIDE, write_schemas

    if folder is None and out is None:
        raise click.UsageError("Name a course, or a folder with --out.")
    if folder is not None and not (folder / "course.yml").is_file():
        raise click.UsageError(f"{folder} holds no course.yml.")
    target = out if out is not None else (folder or Path()) / BESIDE
    changed = write_schemas(folder, target)
    if as_json:
        files = [path.relative_to(target).as_posix() for path in changed]
        say_json({"format": "caseloom/schema/1", "folder": target.as_posix(), "changed": files})
    else:
        say([f"The schemas are in {target}; {len(changed)} changed."])
    return 0
