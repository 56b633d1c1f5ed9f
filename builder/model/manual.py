"""The tool's own handbook as plain values: its commands, the files of a course, and what a check may say."""

from __future__ import annotations

from dataclasses import dataclass

from builder.diagnostic import Level


@dataclass(frozen=True)
class ManualCommand:
    """One command: how it is called, what it does, and its arguments and options with their words."""

    name: str
    summary: str
    usage: str
    text: str
    options: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class ManualField:
    """One field of a sort of file; `name` is its way from the top, with dots."""

    name: str
    needed: bool
    says: str
    example: str


@dataclass(frozen=True)
class ManualFile:
    """One sort of file: where such files lie, and every field of it."""

    name: str
    title: str
    where: str
    fields: tuple[ManualField, ...]


@dataclass(frozen=True)
class ManualExample:
    """Lines of one file of a small course; empty lines mean that the file is not there."""

    file: str
    at: str
    lines: str


@dataclass(frozen=True)
class ManualCheck:
    """One name that `check` may print: what it says, why, what it finds and what it does not."""

    name: str
    level: Level
    says: str
    why: str
    bad: tuple[ManualExample, ...]
    good: tuple[ManualExample, ...]


@dataclass(frozen=True)
class Manual:
    """All of it."""

    commands: tuple[ManualCommand, ...]
    files: tuple[ManualFile, ...]
    checks: tuple[ManualCheck, ...]
