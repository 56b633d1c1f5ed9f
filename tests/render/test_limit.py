"""Limits on how an option is written, in words."""

import pytest

from builder.model.condition import Recorded, parse, parse_limits
from builder.render.limit import limit_text
from builder.render.wording import speaker
from tests.render.samples import facts, words

SAY = speaker(words())
WRITTEN = facts().written


@pytest.mark.parametrize(
    ("limit", "text"),
    [
        ({"minutes": {"at_most": 5}}, "time at most 5 min"),
        ({"minutes": {"over": 2, "below": 5}}, "time over 2 min and below 5 min"),
        ({"warmed": "yes"}, "warmed first"),
        ({"pressure": [1, 2]}, "pressure 1 of 5 or pressure 2 of 5"),
        ({"pad_size": {"at_least": 2}}, "pad size at least 2"),
        ({"pain_at_most": {"at_most": 3}}, "pain at most 3"),
    ],
)
def test_a_limit_reads(limit: dict[str, object], text: str) -> None:
    """Bounds, words and undeclared attributes; a label that says its bound is not echoed."""
    read = parse_limits(limit)
    assert isinstance(read, dict)
    assert [limit_text(node, WRITTEN, SAY) for node in read.values()] == [text]


@pytest.mark.parametrize(
    ("condition", "text"),
    [
        ({"not": {"written.warmed": "no"}}, "not: not warmed"),
        ({"all": [{"written.warmed": "yes"}, {"written.minutes": 2}]}, "warmed first and time 2 min"),
        ({"any": [{"written.warmed": "yes"}, {"written.minutes": 2}]}, "warmed first or time 2 min"),
    ],
)
def test_joined_limits_read(condition: dict[str, object], text: str) -> None:
    """Negation and both joins."""
    assert limit_text(parse(condition), WRITTEN, SAY) == text


def test_what_must_be_stated_reads() -> None:
    """An attribute that only has to be there."""
    assert limit_text(Recorded("written.minutes"), WRITTEN, SAY) == "time must be stated"
