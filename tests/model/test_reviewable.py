"""All that can be signed, counted and signed part by part."""

import pytest

from builder.model.review import ReviewBook
from builder.model.reviewable import reviewable, signed_content, unsigned, unsigned_words
from tests.content.library import content as shipped
from tests.judge.small import content
from tests.model.signed import signed_but


def test_everything_shipped_can_be_signed() -> None:
    """Rules, cards, the phases as one, every severity table and every list that is only taught."""
    parts = reviewable(shipped())
    assert set(parts) == set(ReviewBook.model_fields) - {"format"}
    assert set(parts["severity"]) == set(shipped().severity.tables)
    assert set(parts["phases"]) == {"all"}
    assert all(parts.values())


def test_all_signed_leaves_nothing() -> None:
    """Nothing is counted any more; what was signed is otherwise the same."""
    made = signed_but(content())
    assert unsigned(made) == {}
    assert made.phases.model_copy(update={"reviewed": None}) == content().phases


@pytest.mark.parametrize("part", ["rules", "cards", "phases", "severity"])
def test_one_left_out_is_counted(part: str) -> None:
    """In its own part alone."""
    name = next(iter(reviewable(content())[part]))
    assert unsigned(signed_but(content(), f"{part}/{name}")) == {part: 1}


def test_without_signatures_the_content_is_what_it_was() -> None:
    """No file, no change."""
    made = content()
    assert signed_content(made, None) is made


def test_counts_read_as_words() -> None:
    """One and many differ; the phases are one thing."""
    said = unsigned_words({"rules": 2, "cards": 1, "phases": 1})
    assert said == "2 rules, 1 card, the phases with their calendar and signs"
