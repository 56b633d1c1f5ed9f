"""`caseloom manual`: every command stands in it, told by its own help."""

import pytest

from builder.cli import COMMANDS
from builder.cli.manual import described


@pytest.mark.parametrize("name", list(COMMANDS))
def test_every_command_is_told_from_its_own_help(name: str) -> None:
    """Its usage names it, its text is its help, and no option is without words."""
    told = described(name, COMMANDS[name])
    assert told.usage.startswith(f"caseloom {name}")
    assert told.text
    assert all(flags and words for flags, words in told.options)


def test_a_wrapped_help_is_one_line_a_paragraph() -> None:
    """Line ends of the source are none of the handbook's."""
    assert "\n" not in described("manual", "").text.replace("\n\n", " ")
