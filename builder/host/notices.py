"""What the instructor must know now: each thing once, until it is over."""

from __future__ import annotations

from collections.abc import Callable
from threading import Lock

from builder.model.words import unmarked

Heard = Callable[[str], None]
Say = Callable[..., str]


class Notices:
    """Lines by what they are about; `heard` is told of each new one."""

    def __init__(self, say: Say, heard: Heard) -> None:
        self._say, self._heard = say, heard
        self._lines: dict[str, str] = {}
        self._lock = Lock()

    def add(self, about: str, word: str, **blanks: object) -> None:
        """Say something; the same again is said once, something new in its place anew."""
        line = unmarked(self._say(word, **blanks))
        with self._lock:
            known = self._lines.get(about)
            self._lines[about] = line
        if line != known:
            self._heard(line)

    def drop(self, about: str) -> None:
        """It is over."""
        with self._lock:
            self._lines.pop(about, None)

    def lines(self) -> list[str]:
        """All that holds now, in the order it came."""
        with self._lock:
            return list(self._lines.values())
