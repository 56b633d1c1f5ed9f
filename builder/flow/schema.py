"""The JSON Schemas of a course's files, written beside it and kept in step with it."""

from __future__ import annotations

import json
from contextlib import suppress
from pathlib import Path

from builder.disk import shipped, write_text
from builder.read.editor.known import known_in
from builder.read.editor.schemas import schemas

BESIDE = Path(".caseloom") / "schema"


def schema_files(course: Path | None = None) -> dict[str, str]:
    """Every schema as a file; with the names that a course adds where one is given."""
    made = schemas(known_in(shipped("content"), course)).items()
    return {f"{name}.json": json.dumps(one, ensure_ascii=False, indent=1) + "\n" for name, one in made}


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


def _holds(path: Path, text: str) -> bool:
    return path.is_file() and path.read_bytes() == text.encode("utf-8")
