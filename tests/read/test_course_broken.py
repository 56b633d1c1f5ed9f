"""Hard input as text, each with its expectation beside it, word for word."""

from pathlib import Path

import pytest

from tests.read.folders import BASE, BROKEN, printed, put

CASES = sorted(path.parent for path in BROKEN.glob("*/expected.txt"))


def test_there_are_cases() -> None:
    """An empty folder of cases is no proof."""
    assert len(CASES) >= 12


def test_the_base_is_sound() -> None:
    """Nothing is to fix before something is broken."""
    assert printed(BASE) == "Nothing to fix.\n"


@pytest.mark.parametrize("folder", CASES, ids=lambda path: path.name)
def test_what_is_printed(folder: Path, tmp_path: Path) -> None:
    """Every fault of every file is printed with its place, its line and its remedy, and nothing else is."""
    root = put(tmp_path / "root", over=folder)
    assert printed(root) == (folder / "expected.txt").read_text(encoding="utf-8")
