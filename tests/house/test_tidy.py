"""The top level holds what it should, and no file tells of the machine it was made on."""

from pathlib import Path

import pytest

from tests.house.plan import ROOT, TOP_LEVEL, TRACES
from tests.house.source import files, is_ignored, text_of


def traces(text: str) -> list[str]:
    """What a text holds that no file may, in words with its line."""
    lines = text.splitlines()
    return [
        f"line {number}: {what}"
        for number, line in enumerate(lines, start=1)
        for what, pattern in TRACES.items()
        if pattern.search(line)
    ]


def test_the_top_level_is_exact() -> None:
    """Nothing is missing from the top level and nothing lies about."""
    assert {path.name for path in ROOT.iterdir() if not is_ignored(path.name)} == TOP_LEVEL


def test_no_file_holds_traces() -> None:
    """No file holds a path of one machine, a registry's address or unfinished work."""
    texts = {path.relative_to(ROOT).as_posix(): text_of(path) for path in files()}
    assert {name: bad for name, text in texts.items() if text and (bad := traces(text))} == {}


@pytest.mark.parametrize(
    "steps",
    [
        ("", "root", "x"),
        ("see '", "tmp", "x"),
        ("file://", "home", "ada"),
        ("https:", "", "pypi" + ".org", "simple"),
        ("https:", "", "registry.npm" + "js.org", ""),
        ("# TO" + "DO: later",),
        ("raise Not" + "ImplementedError",),
    ],
)
def test_a_trace_is_seen(steps: tuple[str, ...]) -> None:
    """Each kind of trace is reported with its line."""
    assert traces("fine\n" + "/".join(steps))[0].startswith("line 2")


@pytest.mark.parametrize("text", ["../work/index.html", "cases/home/x", "homework", "#!/usr/bin/env bash"])
def test_ordinary_words_are_no_traces(text: str) -> None:
    """A page's relative address and everyday words are let be."""
    assert traces(text) == []


def test_pictures_are_not_read_as_text(tmp_path: Path) -> None:
    """A file with null bytes has no text."""
    picture = tmp_path / "picture.png"
    picture.write_bytes(b"\x89PNG\0")
    assert text_of(picture) is None
