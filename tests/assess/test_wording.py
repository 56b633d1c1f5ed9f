"""How spans of time and citations read."""

from decimal import Decimal

import pytest

from builder.assess.wording import citations, say, span
from tests.assess.sample import content


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
