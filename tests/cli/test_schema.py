"""`caseloom schema`."""

import json
from pathlib import Path

import click
import pytest

from tests.cli.run import run, status
from tests.demo.small import small_course


def test_schemas_are_put_beside_a_course_or_into_a_folder(tmp_path: Path) -> None:
    """The folder is named; the data lists what changed."""
    course = small_course(tmp_path / "Kurs für Ältere")
    assert status(run("schema", course)) == 0
    assert (course / ".caseloom" / "schema" / "case.json").is_file()
    done = run("schema", course, "--out", tmp_path / "shapes", "--json")
    assert "case.json" in json.loads(done.output)["changed"]


def test_schema_of_nothing_says_what_to_name() -> None:
    """Neither a course nor a folder: the remedy is told."""
    with pytest.raises(click.UsageError, match="Name a course"):
        status(run("schema"))
