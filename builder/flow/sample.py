"""The small sample course that every example of a fault is laid over."""

from __future__ import annotations

import re
import shutil
from pathlib import Path

from builder.disk import shipped
from builder.doors.yaml import read_yaml
from builder.model.kind import Example
from builder.place import Path as Steps

SAMPLE = Path(__file__).parent / "sample"
FROM_SHIPPED = ("references.yml", "words/en.yml", "wording.yml")
_SHARED = ("content/", "site_config.yml")
_WHOLE = re.compile(r"^format:", re.MULTILINE)
_KEY = re.compile(r"[^\s#:-][^:\n]*:")


def lay_over(example: Example, root: Path) -> Path:
    """Write the sample with the example in it below `root`: `course/`, `content/` and `site_config.yml`."""
    shutil.copytree(SAMPLE, root, dirs_exist_ok=True)
    for name in FROM_SHIPPED:
        (root / "content" / name).parent.mkdir(exist_ok=True)
        shutil.copyfile(shipped("content") / name, root / "content" / name)
    for one in (example, *example.more):
        path = root / (one.file if one.file.startswith(_SHARED) else f"course/{one.file}")
        if not one.text:
            path.unlink(missing_ok=True)
            if one.link:
                path.parent.mkdir(parents=True, exist_ok=True)
                path.symlink_to(one.link)
            continue
        path.parent.mkdir(parents=True, exist_ok=True)
        whole = path.read_text(encoding="utf-8") if path.is_file() else ""
        with path.open("w", encoding="utf-8", errors="surrogateescape", newline="\n") as file:
            file.write(_laid(whole, one))
    return root


def _laid(whole: str, one: Example) -> str:
    if not whole or not one.file.endswith(".yml") or _WHOLE.search(one.written):
        return one.written
    return merged(whole, one.written, one.at)


def merged(whole: str, written: str, at: str) -> str:
    """The text of a file with the keys in `written` put in place of the same keys of its block `at`."""
    block: Steps = tuple(int(step) if step.isdigit() else step for step in at.split("/") if step)
    for key, chunk in _chunks(written).items():
        whole = _with_key(whole, (*block, key), chunk)
    return whole


def _chunks(written: str) -> dict[str, list[str]]:
    """The lines of each key at the margin; a comment belongs to the key below it, all else to that above."""
    chunks: dict[str, list[str]] = {}
    key, comments = "", list[str]()
    for line in written.splitlines():
        if line.startswith("#"):
            comments.append(line)
            continue
        if found := _KEY.match(line):
            key = found[0][:-1]
        chunks.setdefault(key, []).extend([*comments, line])
        comments = []
    return chunks


def _with_key(whole: str, path: Steps, chunk: list[str]) -> str:
    places = read_yaml(whole.encode(), "").places
    lines, block = whole.rstrip("\n").split("\n"), places.of(path[:-1])
    margin = block.column - 1 if path[1:] else 0
    put = [" " * margin + line if line else line for line in chunk]
    found = places.keys.get(path)
    if found is None:
        end = block.end_line if path[1:] else len(lines)
        return "\n".join([*lines[:end], *put, *lines[end:], ""])
    put[0] = lines[found.line - 1][:margin] + chunk[0]
    return "\n".join([*lines[: found.line - 1], *put, *lines[places.of(path).end_line :], ""])
