"""The built site as the hall sees it: exactly the files there are, and the host's script in every page."""

from __future__ import annotations

import gzip
import hashlib
import os
from dataclasses import dataclass
from html import escape
from pathlib import Path
from threading import Lock

from builder.doors.serve import Answer, Asked

PAGE = ".html"
TEXTS = {
    PAGE: "text/html; charset=utf-8",
    ".css": "text/css; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".svg": "image/svg+xml",
    ".json": "application/json",
    ".vtt": "text/vtt; charset=utf-8",
    ".txt": "text/plain; charset=utf-8",
    ".ics": "text/calendar; charset=utf-8",
}
KINDS = {
    ".png": "image/png",
    ".jpg": "image/jpeg",
    ".jpeg": "image/jpeg",
    ".gif": "image/gif",
    ".webp": "image/webp",
    ".mp4": "video/mp4",
    ".webm": "video/webm",
    ".mp3": "audio/mpeg",
    ".m4a": "audio/mp4",
    ".pdf": "application/pdf",
}
ODD = "application/octet-stream"
KEPT = {"Cache-Control": "no-cache", "Vary": "Accept-Encoding"}
SCRIPT = "/host.js"
HEAD = b"</head>"
TEST = b'id="test-data"'
NOTHING = Answer(b"There is nothing here.\n", "text/plain; charset=utf-8", 404, {"Cache-Control": "no-store"})


@dataclass(frozen=True)
class _Ready:
    """A text as it is sent: as it is, and packed."""

    plain: bytes
    packed: bytes
    mark: str


class Shelf:
    """Answers with the files of one folder; a path is looked up among their names and never walked."""

    def __init__(self, publish: Path, told: str) -> None:
        self._publish, self._told = publish, told
        self._script = _packed((Path(__file__).parent / "look" / "host.js").read_bytes())
        self._lock = Lock()
        self._stamp: tuple[int, int] | None = None
        self._files: dict[str, Path] = {}
        self._ready: dict[str, _Ready] = {}

    def answer(self, asked: Asked) -> Answer:
        """The file under this very path, or the host's script; anything else is nothing."""
        if asked.path == SCRIPT:
            return _sent(asked, self._script, TEXTS[".js"])
        try:
            self._follow()
            path = self._files.get(asked.path)
            return NOTHING if path is None else self._of_file(asked, path)
        except OSError:
            self._stamp = None
            return NOTHING

    def _follow(self) -> None:
        """List the folder anew where another build has taken its place."""
        found = self._publish.stat()
        stamp = (found.st_ino, found.st_mtime_ns)
        with self._lock:
            if stamp != self._stamp:
                self._files, self._ready, self._stamp = _listed(self._publish), {}, stamp

    def _of_file(self, asked: Asked, path: Path) -> Answer:
        kind = TEXTS.get(path.suffix.lower())
        if kind is None:
            return Answer(
                b"", KINDS.get(path.suffix.lower(), ODD), headers={"Cache-Control": "no-cache"}, file=path
            )
        ready = self._ready.get(asked.path)
        if ready is None:
            ready = self._ready[asked.path] = self._made(path)
        return _sent(asked, ready, kind)

    def _made(self, path: Path) -> _Ready:
        data = path.read_bytes()
        if path.suffix == PAGE:
            data = with_script(data, self._told)
        return _packed(data)


def _packed(data: bytes) -> _Ready:
    mark = f'"{hashlib.sha256(data).hexdigest()[:24]}"'
    return _Ready(data, gzip.compress(data, 9, mtime=0), mark)


def _sent(asked: Asked, ready: _Ready, kind: str) -> Answer:
    """A text as the phone can read it; nothing where it has it already."""
    headers = {**KEPT, "ETag": ready.mark}
    if asked.headers.get("if-none-match") == ready.mark:
        return Answer(b"", kind, 304, headers)
    if "gzip" in asked.headers.get("accept-encoding", ""):
        return Answer(ready.packed, kind, headers=headers | {"Content-Encoding": "gzip"})
    return Answer(ready.plain, kind, headers=headers)


def with_script(page: bytes, told: str) -> bytes:
    """A page with the host's script before its own; a test is told apart, since it must know its class."""
    before, end, after = page.partition(HEAD)
    test = " data-test" if TEST in page else ""
    tag = f'<script src="{SCRIPT}" data-hall="{escape(told)}"{test}></script>\n'
    return before + tag.encode("utf-8") + end + after if end else page


def _listed(root: Path) -> dict[str, Path]:
    """Every plain file below a folder by its path; no link is followed, nothing hidden is there."""
    found = {}
    for at, folders, names in os.walk(root, followlinks=False):
        folders[:] = [one for one in folders if not one.startswith(".")]
        for name in names:
            path = Path(at) / name
            if not name.startswith(".") and not path.is_symlink() and path.is_file():
                found["/" + path.relative_to(root).as_posix()] = path
    return found
