"""Every JSON that is handed out holds to its published schema, key for key."""

import json
from collections.abc import Callable, Iterator
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft202012Validator
from jsonschema.exceptions import best_match

from builder.flow.sample import lay_over
from builder.flow.schema import output_schemas
from builder.model.outputs.registry import OUTPUTS
from tests.cli.classwork import on_class
from tests.cli.run import run, status
from tests.demo.built import COURSE, demo
from tests.demo.small import small
from tests.flow.laid import OF_THE_SAMPLE
from tests.host.running import running
from tests.render.sample_site import built as site

Data = dict[str, Any]


def printed(*arguments: object) -> Data:
    """The data that a command prints."""
    data: Data = json.loads(run(*arguments, "--json").output)
    return data


def faulty(folder: Path) -> Data:
    """What is to fix in a course with an error that names a second place, and with one accepted."""
    course = lay_over(OF_THE_SAMPLE, folder) / "course"
    text = (course / "course.yml").read_text(encoding="utf-8")
    text = text.replace("lessons:", "# accepted: lesson_not_listed, because it is a draft\nlessons:", 1)
    (course / "course.yml").write_text(text + "subjects: Twice\n", encoding="utf-8")
    (course / "lessons" / "draft.md").write_text("# A draft\n", encoding="utf-8")
    return printed("check", course)


def built(folder: Path) -> Data:
    """What a build prints."""
    return printed("build", small(), "--out", folder / "out")


def analysed(folder: Path) -> Data:
    """What an analysis writes."""
    for command in ("collect", "grade", "analyse"):
        status(on_class(command, folder))
    path = folder / "private" / "classes" / "spring" / "analysis.json"
    data: Data = json.loads(path.read_text(encoding="utf-8"))
    return data


def hosted(folder: Path) -> list[Data]:
    """What a host says first and last."""
    (folder / "publish").symlink_to(site(), target_is_directory=True)
    with running(small(), folder, folder, "--port", "0") as host:
        return [host.opened, *host.end()]


HANDED_OUT: dict[str, dict[str, Callable[[Path], Data]]] = {
    "analysis": {"a class": analysed},
    "build": {"a course": built},
    "check": {"faulty": faulty, "whole": lambda _: printed("check", small())},
    "explain": {
        "case": lambda _: printed("explain", small(), "unicycle_thigh"),
        "referred": lambda _: printed("explain", small(), "clown_shin"),
        "checks": lambda _: printed("explain", small(), "check"),
        "check": lambda _: printed("explain", small(), "check", "policy_missing"),
        "rule": lambda _: printed("explain", small(), "rule", "compartment_syndrome"),
        "card": lambda _: printed("explain", small(), "card", "cold_pack"),
        "policies": lambda _: printed("explain", small(), "policy"),
        "settings": lambda _: printed("explain", small(), "settings"),
        "hours": lambda _: printed("explain", small(), "hours"),
    },
    "export": {"a test": lambda folder: printed("export", small(), "test", "--out", folder / "out")},
    "flags": {"a course": lambda _: printed("explain", small(), "flags")},
    "host": {"opened": lambda folder: hosted(folder)[0], "ended": lambda folder: hosted(folder)[-1]},
    "reviews": {"a course": lambda _: printed("explain", small(), "reviews")},
    "schema": {"a folder": lambda folder: printed("schema", "--out", folder / "shapes")},
}
EVERY = [(name, what) for name, outputs in HANDED_OUT.items() for what in outputs]


@cache
def validator(name: str) -> Draft202012Validator:
    """The schema of a shape, closed so that no key passes that it does not describe."""
    return Draft202012Validator(closed(output_schemas()[name]))


def closed(schema: object) -> object:
    """A schema in which every block with described keys takes no others."""
    if isinstance(schema, dict):
        shut = {"additionalProperties": False} if "properties" in schema else {}
        return {**shut, **{key: closed(value) for key, value in schema.items()}, **shut}
    return [closed(one) for one in schema] if isinstance(schema, list) else schema


def refused(name: str, data: Data) -> str:
    """What the closed schema has against some data; empty where it holds."""
    error = best_match(validator(name).iter_errors(data))
    return "" if error is None else f"{error.json_path}: {error.message[:200]}"


@pytest.mark.parametrize(("name", "what"), EVERY)
def test_what_is_handed_out_holds_to_its_schema(name: str, what: str, tmp_path: Path) -> None:
    """Nothing is missing, and no key is there that is not described."""
    data = HANDED_OUT[name][what](tmp_path)
    assert data["format"] == f"caseloom/{name}/1"
    assert refused(name, data) == ""


def test_a_course_with_faults_shows_every_part_of_that_shape(tmp_path: Path) -> None:
    """So that the test above looks at more than an empty list."""
    data = faulty(tmp_path)
    assert data["to_fix"]
    assert data["accepted"]
    assert any(one["related"] for one in data["to_fix"])


def test_every_answer_sheet_of_the_demonstration_holds_to_its_schema() -> None:
    """They were made by the site itself, in a browser."""
    sheets = sorted((COURSE / "classes" / "spring" / "answers").glob("*.json"))
    assert len(sheets) >= 9
    for path in sheets:
        assert refused("answers", json.loads(path.read_text(encoding="utf-8"))) == "", path.name


@pytest.mark.parametrize("name", OUTPUTS)
def test_what_lacks_a_key_is_refused(name: str) -> None:
    """The schemas are no empty promise."""
    assert refused(name, {"format": f"caseloom/{name}/1"})


@pytest.mark.parametrize("name", OUTPUTS)
def test_every_field_is_described(name: str) -> None:
    """A sound schema with a title, each block and each field of it told in words."""
    schema = output_schemas()[name]
    Draft202012Validator.check_schema(schema)
    assert schema["title"]
    assert schema["description"]
    assert list(silent(schema)) == []


def silent(schema: dict[str, Any]) -> Iterator[str]:
    """Every field without a description."""
    for block, part in {"": schema, **schema.get("$defs", {})}.items():
        for key, field in part.get("properties", {}).items():
            if not field.get("description"):
                yield f"{block}.{key}"


def test_the_demonstration_was_run() -> None:
    """Its keys are what the class above is graded by."""
    assert (demo()[0] / "private" / "keys").is_dir()
