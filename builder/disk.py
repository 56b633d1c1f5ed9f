"""Files on disk: bounded reading, atomic writing, whole folders swapped in."""

from __future__ import annotations

import hashlib
import os
import secrets
import shutil
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from importlib.resources import files
from pathlib import Path

from builder.fault import Fault


def shipped(name: str) -> Path:
    """The folder or file that comes with the tool: `content`, `demo_course` or `site_config.yml`."""
    inside = Path(str(files("builder"))) / "_data" / name
    beside = Path(str(files("builder"))).parent / name
    for found in (inside, beside):
        if found.exists():
            return found
    raise Fault(f"The tool's own {name} is missing.", "Install caseloom again.")


def read_bytes(path: Path, limit: int) -> bytes:
    """The bytes of a file of at most `limit` bytes; a Fault when it is larger or cannot be read."""
    try:
        with path.open("rb") as file:
            data = file.read(limit + 1)
    except OSError as error:
        raise Fault(
            f"{path.name} cannot be read: {error.strerror}.", "Check that it is there and yours."
        ) from error
    if len(data) > limit:
        raise Fault(
            f"{path.name} is larger than {limit:,} bytes.", "Split it, or remove what does not belong."
        )
    return data


def read_ends(path: Path, limit: int) -> bytes:
    """The bytes of a file; of a large one the first `limit` and the last, with a line end between."""
    with path.open("rb") as file:
        size = file.seek(0, os.SEEK_END)
        file.seek(0)
        if size <= 2 * limit:
            return file.read()
        first = file.read(limit)
        file.seek(size - limit)
        return first + b"\n" + file.read()


def write_text(path: Path, text: str) -> None:
    """Write a text file so that a reader sees the old or the new, never half."""
    write_bytes(path, text.encode("utf-8"))


def write_bytes(path: Path, data: bytes) -> None:
    """Write a file so that a reader sees the old or the new, never half."""
    path.parent.mkdir(parents=True, exist_ok=True)
    draft = path.with_name(f".{path.name}.{secrets.token_hex(4)}")
    try:
        with draft.open("wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        draft.replace(path)
    finally:
        draft.unlink(missing_ok=True)


def keep_bytes(path: Path, data: bytes) -> None:
    """Write a file so that it, and its name, are safe on the disk when this returns."""
    write_bytes(path, data)
    sync_folder(path.parent)


def sync_folder(folder: Path) -> None:
    """See to it that the names in a folder are on the disk; Windows does this by itself."""
    if os.name == "nt":
        return
    held = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(held)
    finally:
        os.close(held)


def write_tree(root: Path, tree: Mapping[str, str | bytes]) -> None:
    """Write many files under `root`; names are relative with `/`."""
    for name, data in tree.items():
        write_bytes(root / name, data if isinstance(data, bytes) else data.encode("utf-8"))


def taken_over(source: Path, target: Path) -> bool:
    """Let a file that stands also stand elsewhere: linked, or else copied; False where it cannot be."""
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        try:
            target.hardlink_to(source)
        except OSError:
            shutil.copyfile(source, target)
    except OSError:
        return False
    return True


@contextmanager
def swapped_in(target: Path) -> Iterator[Path]:
    """Give a fresh folder to fill; it takes the place of `target` whole, only if all went well."""
    target.parent.mkdir(parents=True, exist_ok=True)
    draft = target.with_name(f".{target.name}.{secrets.token_hex(4)}")
    draft.mkdir()
    try:
        yield draft
        _take_the_place(draft, target)
    finally:
        shutil.rmtree(draft, ignore_errors=True)


def _take_the_place(draft: Path, target: Path) -> None:
    old = target.with_name(f"{draft.name}.old")
    if target.exists():
        target.rename(old)
    try:
        draft.rename(target)
    finally:
        if old.exists() and not target.exists():
            old.rename(target)
    shutil.rmtree(old, ignore_errors=True)


def fingerprint(text: str) -> str:
    """The SHA-256 of a normalised text, as hex."""
    return hashlib.sha256(text.encode("utf-8")).hexdigest()
