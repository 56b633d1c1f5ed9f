"""The files of an inbox, read with care: anyone may have put them there."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import islice
from pathlib import Path

from builder.collect.pasted import recovered
from builder.disk import read_bytes
from builder.fault import Fault

LARGEST = 256_000
KIND = ".json"
TEXT = ".txt"


@dataclass(frozen=True)
class Handed:
    """One file: its name, its bytes and their digest, or the fault that kept it from being read.

    Of a pasted text the bytes are those of the sheet in it, so that it is the same however it came.
    """

    name: str
    data: bytes = b""
    fault: str = ""
    remedy: str = ""

    @property
    def digest(self) -> str:
        """The SHA-256 of the bytes, as hex."""
        return hashlib.sha256(self.data).hexdigest()


def batches(inbox: Path, size: int) -> Iterator[list[Handed]]:
    """The files of the inbox in order of name, `size` at a time."""
    names = iter(listing(inbox))
    while batch := list(islice(names, size)):
        yield [_open(path) for path in batch]


def listing(inbox: Path) -> list[Path]:
    """What lies in the inbox, but for names with a leading dot; nothing, where there is no inbox."""
    if not inbox.is_dir():
        return []
    return sorted(path for path in inbox.iterdir() if not path.name.startswith("."))


def _open(path: Path) -> Handed:
    name = path.name.encode("utf-8", "replace").decode("utf-8")
    if path.is_symlink() or not path.is_file():
        return Handed(name, fault="This is no plain file.", remedy="Put the answer sheets themselves here.")
    if path.suffix.lower() not in (KIND, TEXT):
        ending = f"that end in `{path.suffix}`" if path.suffix else "without a suffix"
        return Handed(name, fault=f"Files {ending} are not taken.", remedy=f"Hand in `{KIND}` or `{TEXT}`.")
    try:
        data = read_bytes(path, LARGEST)
        return Handed(name, data if path.suffix.lower() == KIND else recovered(data))
    except Fault as fault:
        return Handed(name, fault=fault.message, remedy=fault.remedy)
    except ValueError as error:
        return Handed(name, fault=str(error), remedy="Ask for the answer sheet as a file, or paste it again.")
