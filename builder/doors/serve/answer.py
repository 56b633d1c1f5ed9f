"""What is asked of a server, and what it answers."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path


@dataclass(frozen=True)
class Asked:
    """One request; names of headers are in small letters, `peer` is the address it came from."""

    method: str
    path: str
    query: Mapping[str, str] = field(default_factory=dict)
    headers: Mapping[str, str] = field(default_factory=dict)
    body: bytes = b""
    peer: str = ""

    def cookie(self, name: str) -> str:
        """The value of a cookie, or nothing."""
        pairs = (one.strip().partition("=") for one in self.headers.get("cookie", "").split(";"))
        return next((value for key, _, value in pairs if key == name), "")


@dataclass(frozen=True)
class Answer:
    """What is sent back: bytes of a kind such as `text/html`, a file as it stands, or where to go instead."""

    body: bytes
    kind: str = "text/html; charset=utf-8"
    status: int = 200
    headers: dict[str, str] = field(default_factory=dict)
    file: Path | None = None


def elsewhere(address: str) -> Answer:
    """The answer that leads to another address."""
    return Answer(b"", status=307, headers={"Location": address})
