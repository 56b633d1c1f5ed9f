"""The door to work done before: slots in a folder of the course, each believed only under its seal."""

from __future__ import annotations

import hashlib
import hmac
import os
import secrets
from collections.abc import Iterable
from pathlib import Path
from typing import Protocol

FOLDER = Path(".caseloom") / "cache"
SEAL = 32
_MAC = 64
_LIMIT = 256 * 1024 * 1024


class Cache(Protocol):
    """Slots that hold what was worked out under a key; under any other key a slot is empty."""

    def get(self, slot: str, key: str) -> bytes | None:
        """What the slot holds under exactly this key."""

    @property
    def keeps(self) -> bool:
        """Whether anything is kept at all, so that it is worth putting into a form that can be."""

    def put(self, slot: str, key: str, data: bytes) -> None:
        """Let the slot hold this and nothing else; where that cannot be, nothing is kept."""

    def keep(self, kind: str, names: Iterable[str]) -> None:
        """Of the slots `kind/name`, drop all but these."""


class NoCache:
    """Nothing is ever kept."""

    keeps = False

    def get(self, slot: str, key: str) -> bytes | None:  # noqa: ARG002 - the protocol's arguments
        """Nothing."""
        return None

    def put(self, slot: str, key: str, data: bytes) -> None:
        """Keep nothing."""

    def keep(self, kind: str, names: Iterable[str]) -> None:
        """Drop nothing."""


class FolderCache:
    """Slots as files. A slot of another person's hand, damaged, cut short or of another key is empty.

    `seal` is this person's own secret: whoever sends a course along with a cache does not know it.
    """

    def __init__(self, folder: Path, seal: bytes) -> None:
        self._folder, self._seal = folder, seal
        self.keeps = True

    def get(self, slot: str, key: str) -> bytes | None:
        """What the slot holds under this key, if it is whole and sealed by us."""
        try:
            with self._path(slot).open("rb") as file:
                found = file.read(_LIMIT + 1)
        except OSError:
            return None
        mac, data = found[:_MAC], found[_MAC:]
        return data if hmac.compare_digest(mac, self._mac(slot, key, data)) else None

    def put(self, slot: str, key: str, data: bytes) -> None:
        """Write the slot whole, beside any other command that does the same; a full disk is no fault."""
        if len(data) + _MAC > _LIMIT:
            return
        path = self._path(slot)
        draft = path.with_name(f"{path.name}.{secrets.token_hex(4)}.draft")
        try:
            self._made(path.parent)
            draft.write_bytes(self._mac(slot, key, data) + data)
            draft.replace(path)
        except OSError:
            _removed(draft)

    def keep(self, kind: str, names: Iterable[str]) -> None:
        """Drop what belongs to cases that are gone, and drafts left by a command that was cut off."""
        wanted = {self._path(f"{kind}/{name}").name for name in names}
        try:
            there = [one.name for one in os.scandir(self._folder / kind)]
        except OSError:
            return
        for name in there:
            if name not in wanted:
                _removed(self._folder / kind / name)

    def _path(self, slot: str) -> Path:
        kind, _, name = slot.partition("/")
        return self._folder / kind / f"{kind}-{name}"

    def _mac(self, slot: str, key: str, data: bytes) -> bytes:
        mac = hashlib.blake2b(f"{slot}\n{key}\n".encode(), key=self._seal, digest_size=_MAC // 2)
        mac.update(data)
        return mac.hexdigest().encode("ascii")

    def _made(self, folder: Path) -> None:
        if not folder.is_dir():
            folder.mkdir(parents=True, exist_ok=True)
            ignored = self._folder.parent / ".gitignore"
            if not ignored.exists():
                ignored.write_text("*\n", encoding="utf-8", newline="\n")


class LayeredCache:
    """Slots in memory, before another cache: for a command that stays open."""

    def __init__(self, below: Cache) -> None:
        self._below = below
        self.keeps = True
        self._held: dict[str, tuple[str, bytes]] = {}

    def get(self, slot: str, key: str) -> bytes | None:
        """What is held in memory, or else what lies below."""
        held = self._held.get(slot)
        if held is not None and held[0] == key:
            return held[1]
        found = self._below.get(slot, key)
        if found is not None:
            self._held[slot] = (key, found)
        return found

    def put(self, slot: str, key: str, data: bytes) -> None:
        """Hold it in memory and below."""
        self._held[slot] = (key, data)
        self._below.put(slot, key, data)

    def keep(self, kind: str, names: Iterable[str]) -> None:
        """Drop the rest in memory and below."""
        wanted = {f"{kind}/{name}" for name in names}
        for slot in [one for one in self._held if one.startswith(f"{kind}/") and one not in wanted]:
            del self._held[slot]
        self._below.keep(kind, [one.partition("/")[2] for one in wanted])


def open_cache(course: Path, home: Path) -> Cache:
    """The cache of a course folder under the seal kept in `home`; none where no seal can be kept."""
    seal = _seal(home / "cache_seal")
    return FolderCache(course / FOLDER, seal) if seal else NoCache()


def digest(*parts: str | bytes) -> str:
    """The fingerprint of parts, each counted by its length so that none can run into the next."""
    made = hashlib.blake2b(digest_size=20)
    for part in parts:
        data = part if isinstance(part, bytes) else part.encode("utf-8")
        made.update(b"%d:" % len(data))
        made.update(data)
    return made.hexdigest()


def _seal(path: Path) -> bytes | None:
    """The secret of whoever works at this machine; made once, readable by nobody else."""
    try:
        if not path.exists():
            path.parent.mkdir(parents=True, exist_ok=True)
            draft = path.with_name(f"{path.name}.{secrets.token_hex(4)}")
            with os.fdopen(os.open(draft, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "wb") as file:
                file.write(secrets.token_bytes(SEAL))
            draft.replace(path)
        found = path.read_bytes()
    except OSError:
        return None
    return found if len(found) == SEAL else None


def _removed(path: Path) -> None:
    try:
        path.unlink(missing_ok=True)
    except OSError:
        return
