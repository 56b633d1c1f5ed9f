"""Explaining a check: what it says, why, and an example that it finds beside one that it does not."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from builder.check.excerpt import printable
from builder.fault import Fault
from builder.flow.kinds import KINDS
from builder.flow.sample import lay_over
from builder.model.kind import Example, Kind
from builder.read.course import read_all
from builder.read.nearest import suggest
from builder.read.taught import read_class

FORMAT = "caseloom/explain/1"
_WIDTH = 96
_MOST_LINES = 24


def explain_check(name: str | None) -> tuple[list[str], dict[str, Any]]:
    """One check in words and as data; without a name, all of them in a line each."""
    if name is None:
        names = [{"check": one.name, "level": one.level} for one in KINDS.values()]
        return [f"{one.name}  ({one.level})" for one in KINDS.values()], {"format": FORMAT, "checks": names}
    if name not in KINDS:
        raise Fault(f"There is no check `{name}`.", suggest(name, KINDS))
    kind = KINDS[name]
    says = kind.says or _said(kind)
    data = {"format": FORMAT, "check": kind.name, "level": kind.level, "says": says, "why": kind.why}
    examples = {"bad": _as_data(kind.bad), "good": _as_data(kind.good)}
    return list(_in_words(kind, says)), data | examples


def _said(kind: Kind) -> str:
    """What reading says of the bad example."""
    with TemporaryDirectory() as folder:
        root = lay_over(kind.bad, Path(folder))
        reading = read_all(root / "course", root / "content", root / "site_config.yml")
        found = list(reading.found)
        if reading.course is not None:
            found += read_class(root / "course" / "classes" / "may", reading.course).found
    return next((f"{one.message} {one.remedy}" for one in found if one.check == kind.name), "")


def _in_words(kind: Kind, says: str) -> Iterator[str]:
    yield f"{kind.name}  ({kind.level})"
    for lead, text in (("Says", says), ("Why", kind.why)):
        yield ""
        yield from textwrap.wrap(f"{lead}: {printable(text)}", _WIDTH)
    for lead, example in (("Found", kind.bad), ("Not found", kind.good)):
        for one in (example, *example.more):
            yield ""
            yield f"{lead}, in {one.file}{f' under {one.at}' if one.at else ''}:"
            yield from _lines(one)


def _lines(example: Example) -> Iterator[str]:
    """The lines of an example, made safe to print and cut to what a person reads."""
    lines = example.written.split("\n") if example.text else [_without_text(example)]
    shown = [printable(line.replace("\t", "→   ")).rstrip() for line in lines]
    while shown and not shown[-1]:
        shown.pop()
    for line in shown[:_MOST_LINES]:
        yield f"    {line if len(line) <= _WIDTH else line[:_WIDTH] + '…'}".rstrip()
    if len(shown) > _MOST_LINES:
        yield "    …"


def _without_text(example: Example) -> str:
    return f"(a link to {example.link})" if example.link else "(the file is not there)"


def _as_data(example: Example) -> dict[str, Any]:
    more = [_as_data(one) for one in example.more]
    text = example.written.encode("utf-8", errors="replace").decode() if example.text else None
    return {"file": example.file, "at": example.at, "text": text, "link": example.link, "more": more}
