"""Every check can be explained, in lines that fit and without what a terminal could take for an order."""

import json

import pytest

from builder.fault import Fault
from builder.flow.explain_check import explain_check
from builder.flow.kinds import KINDS

SOME = ("odd_character", "yaml_too_many", "file_unreadable", "sheet_quotes", "options_alike", "yaml_tab")


@pytest.mark.parametrize("name", SOME)
def test_a_check_is_told_in_lines_that_fit(name: str) -> None:
    """Name, what it says, why, what is found and what is not; nothing invisible, nothing endless."""
    lines, data = explain_check(name)
    text = "\n".join(lines)
    assert lines[0] == f"{name}  ({KINDS[name].level})"
    assert [lead for lead in ("Says: ", "Why: ", "Found, in", "Not found, in") if lead not in text] == []
    assert max(map(len, lines)) <= 101
    assert len(lines) < 80
    assert all(line.isprintable() for line in lines)
    assert json.loads(json.dumps(data))["says"]


def test_reading_says_it_in_its_own_words() -> None:
    """What has no check of its own is told as it would be printed."""
    assert explain_check("key_unknown")[1]["says"] == "`storry` is not known here. Did you mean `story`?"


def test_all_are_listed_without_a_name() -> None:
    """A line each, with the level."""
    lines, data = explain_check(None)
    assert len(lines) == len(data["checks"]) == len(KINDS)
    assert "declared_phase  (error)" in lines


def test_an_unknown_name_suggests_the_nearest() -> None:
    """As everywhere."""
    with pytest.raises(Fault, match="declared_fase") as raised:
        explain_check("declared_fase")
    assert raised.value.remedy == "Did you mean `declared_phase`?"
