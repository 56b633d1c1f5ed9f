"""A course that means harm is told what is wrong with it, word for word, and nothing else happens."""

from pathlib import Path

import pytest

from tests.flow.hostile import HOSTILE
from tests.flow.laid import SAID, everything, printed

OF_THE_SAMPLE = {"not_reviewed", "questions_not_shown"}


@pytest.mark.parametrize("name", HOSTILE)
def test_harm_is_named_word_for_word(name: str, tmp_path: Path) -> None:
    """Bombs, depth, paths, links, orders to the terminal, numbers and lines without end."""
    told = printed(*everything(HOSTILE[name], tmp_path), OF_THE_SAMPLE)
    assert told == (SAID / f"{name}.txt").read_text(encoding="utf-8")


@pytest.mark.parametrize("name", HOSTILE)
def test_nothing_is_printed_that_a_terminal_would_obey(name: str) -> None:
    """Only letters and line ends, and no line without end."""
    text = (SAID / f"{name}.txt").read_text(encoding="utf-8")
    assert all(line.isprintable() and len(line) <= 80 for line in text.split("\n"))
