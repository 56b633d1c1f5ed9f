"""How spans of time and citations read."""

import re
from decimal import Decimal
from pathlib import Path
from typing import get_args

import pytest

import builder.assess
from builder.assess.kinds.session import ANSWERS
from builder.assess.wording import citations, say, span
from builder.model.noun import Strength
from builder.model.practice import Mark
from builder.model.words import ONE
from tests.assess.sample import content
from tests.assess.words import WORDS

SAID = re.compile(r"""say\(\s*(?:course\.)?content,\s*["'](\w+)["'](?: if \w+ else "(\w+)")?""")
FAMILIES = {
    "side": ("left", "right", "both", "middle"),
    "consent": ("yes", "no", "unknown"),
    "answer": ANSWERS,
    "word": (*get_args(Mark), "aim", "open"),
    **dict.fromkeys(("stem_ask", "word_needed", "word_idle", "ask_idle"), ("before", "still")),
    "strength": get_args(get_args(Strength)[0]),
}
COUNTED = ("hours", "days", "days_and_hours")


@pytest.mark.parametrize(
    ("hours", "words"),
    [
        ("0", "0 hours"),
        ("1", "1 hour"),
        ("0.5", "0.5 hours"),
        ("30", "30 hours"),
        ("71", "71 hours"),
        ("72", "3 days"),
        ("73", "3 days and 1 hour"),
        ("90", "3 days and 18 hours"),
        ("240", "10 days"),
    ],
)
def test_a_span_keeps_every_hour(hours: str, words: str) -> None:
    """A span never rounds: the hour at which a phase ends can be told from the one after."""
    assert span(content(), Decimal(hours)) == words


def test_gaps_are_filled() -> None:
    """Words come from the shipped file, with their gaps filled."""
    assert say(content(), "after", span="9 days") == "9 days after the injury"


def test_braces_in_a_filling_stay() -> None:
    """What fills a gap is text, never a gap itself."""
    assert say(content(), "needed", change="{card}") == "Needed: {card}."


def test_sources_are_cited_shortly_and_once() -> None:
    """A published source is cited by authors and year; what has no year says in full what it is."""
    assert (
        citations(content(), ("ryan", "habit", "ryan")) == "Ryan JB et al, 1991; Common practice, no source"
    )


def test_an_unknown_source_stands_by_its_id() -> None:
    """A source that is not on the list is still named."""
    assert citations(content(), ("someone",)) == "someone"


def test_every_word_that_is_said_is_there_and_every_one_there_is_said() -> None:
    """The words of questions in the shipped file are exactly those the code asks for."""
    code = "\n".join(
        path.read_text(encoding="utf-8") for path in Path(builder.assess.__path__[0]).rglob("*.py")
    )
    said = {key for match in SAID.finditer(code) for key in match.groups() if key}
    said |= {f"{family}_{member}" for family, members in FAMILIES.items() for member in members} | set(
        COUNTED
    )
    assert {f"q_{key}" for key in said} == {
        key for key in WORDS if key.startswith("q_") and not key.endswith(ONE)
    }
