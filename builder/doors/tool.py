"""The door to the tool itself: the fingerprint of its own files and of the libraries it works with."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from functools import cache
from importlib.metadata import PackageNotFoundError, version
from importlib.resources import files
from pathlib import Path

from builder.doors.cache import digest

LIBRARIES = ("jinja2", "markdown", "mkdocs", "mkdocs-material", "pydantic", "python-sat", "pyyaml")
_NOT_OURS = ("__pycache__", "_data")


@cache
def tool_fingerprint() -> str:
    """One fingerprint for everything but its input that an answer of this tool can depend on."""
    return digest(sys.version, *_libraries(), *_own_files())


def _libraries() -> Iterator[str]:
    for name in LIBRARIES:
        try:
            yield f"{name} {version(name)}"
        except PackageNotFoundError:
            yield name


def _own_files() -> Iterator[str | bytes]:
    root = Path(str(files("builder")))
    for path in sorted(root.rglob("*")):
        steps = path.relative_to(root).parts
        if path.is_file() and not set(steps) & set(_NOT_OURS):
            yield "/".join(steps)
            yield path.read_bytes()
