"""Marks of written answers, and the text that they hold for."""

import pytest

from builder.model.marking import same_words


@pytest.mark.parametrize(
    "other", ["Rest first.\r\nThen cold.", "  Rest  first. Then cold. ", "Rest first.\nThen\tcold."]
)
def test_spaces_and_lines_make_no_other_answer(other: str) -> None:
    """A spreadsheet may keep them differently."""
    assert same_words("Rest first.\nThen cold.", other)


def test_another_word_is_another_answer() -> None:
    """A mark holds for the text that was marked alone."""
    assert not same_words("Rest first.", "Rest at first.")
