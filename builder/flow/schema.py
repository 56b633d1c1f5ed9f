"""The JSON Schemas of a course's files and of every output, written beside it and kept in step with it."""

from __future__ import annotations

import json
from contextlib import suppress
from pathlib import Path

from builder.disk import shipped, write_text
from builder.doors.schema import Schema, schema_of_output
from builder.model.outputs.registry import OUTPUTS
from builder.read.editor.known import known_in
from builder.read.editor.schemas import schemas

BESIDE = Path(".caseloom") / "schema"
OF_OUTPUTS = "outputs"


def schema_files(course: Path | None = None) -> dict[str, str]:
    """Every schema as a file, those of outputs in a folder; with the names that a course adds."""
    made = schemas(known_in(shipped("content"), course))
    made |= {f"{OF_OUTPUTS}/{name}": one for name, one in output_schemas().items()}
    return {f"{name}.json": _as_text(one) for name, one in made.items()}


def output_schemas() -> dict[str, Schema]:
    """The schema of every output, by the name in its format."""
    return {name: schema_of_output(shape.model, shape.title) for name, shape in OUTPUTS.items()}


def write_schemas(course: Path | None, out: Path) -> list[Path]:
    """Write every schema into a folder, and say which files changed."""
    texts = {out / name: text for name, text in schema_files(course).items()}
    changed = [path for path, text in texts.items() if not _holds(path, text)]
    for path in changed:
        write_text(path, texts[path])
    return changed


def refresh_schemas(course: Path) -> None:
    """Bring the schemas beside a course up to date, if it has any."""
    if (course / BESIDE).is_dir():
        with suppress(OSError):  # a folder that may only be read keeps the ones it has
            write_schemas(course, course / BESIDE)


def _as_text(schema: Schema) -> str:
    return json.dumps(schema, ensure_ascii=False, indent=1) + "\n"


def _holds(path: Path, text: str) -> bool:
    return path.is_file() and path.read_bytes() == text.encode("utf-8")
