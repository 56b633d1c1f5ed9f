"""The words for faults of YAML, and how a parser's words are heard."""

import pytest

from builder.doors.yaml_fault import FAULTS, Syntax, fault, syntax
from builder.place import Place


def test_every_fault_says_what_and_how() -> None:
    """Each sort of fault has a sentence for what is wrong and one for what mends it."""
    assert all(check.startswith("yaml_") for check in FAULTS)
    assert all(text.endswith(".") for words in FAULTS.values() for text in words)


@pytest.mark.parametrize(
    ("problem", "context", "letter", "heard"),
    [
        ("mapping values are not allowed in this context", "", "", Syntax("yaml_colon")),
        ("mapping values are not allowed here", "", "", Syntax("yaml_colon")),
        ("found character that cannot start any token", "", "\t", Syntax("yaml_tab")),
        ("found character that cannot start any token", "", "@", Syntax("yaml_start")),
        ("found unexpected end of stream", "", "", Syntax("yaml_open_quote", at_opening=True)),
        ("did not find expected ',' or ']'", "", "", Syntax("yaml_open_bracket", at_opening=True)),
        ("did not find expected x", "while scanning an anchor", "", Syntax("yaml_anchor", at_opening=True)),
        ("something no parser said before", "", "", Syntax("yaml_syntax")),
    ],
)
def test_a_parser_is_heard(problem: str, context: str, letter: str, heard: Syntax) -> None:
    """Both parsers' ways to say a thing lead to one fault; what is new is told plainly."""
    assert syntax(problem, context, letter) == heard


def test_the_first_of_two_is_named() -> None:
    """A key that stands twice points to where it stood first."""
    made = fault("yaml_key_twice", Place("a.yml", 3), Place("a.yml", 1), "dose")
    assert (made.place.line, made.related[0].place.line) == (3, 1)
    assert made.related[0].message == "`dose` was first written here."
    assert fault("yaml_tag", Place("a.yml")).related == ()
