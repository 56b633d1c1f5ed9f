"""Runs a command on the demonstration's class with a record of its own."""

import shutil
from pathlib import Path

from click.testing import Result

from tests.cli.run import run
from tests.demo.built import COURSE, demo


def on_class(command: str, folder: Path, *more: str) -> Result:
    """One command on the class `spring`, its keys and its record below `folder`."""
    for part in ("keys", "papers"):
        shutil.copytree(demo()[0] / "private" / part, folder / "private" / part, dirs_exist_ok=True)
    where = ("--class", "spring", "--out", folder, "--records", folder / "private" / "records.db")
    return run(command, COURSE, *where, *more)
