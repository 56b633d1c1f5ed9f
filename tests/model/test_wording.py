"""The book of wording: complete, sourced, and for one language."""

import pytest
from pydantic import ValidationError

from builder.model.wording import WordingBook
from tests.check.wording.book import wording


@pytest.mark.parametrize(
    ("language", "spoken"), [("en", True), ("en-GB", True), ("en_US", True), ("nb", False), ("eng", False)]
)
def test_it_speaks_one_language_of_any_country(language: str, spoken: bool) -> None:  # noqa: FBT001 - a row of a table
    """English of any country is English."""
    assert wording().speaks(language) is spoken


def test_every_threshold_is_given() -> None:
    """None is left to the code: a book without one is refused."""
    data = wording().model_dump()
    for name in data["thresholds"]:
        rest = {key: value for key, value in data["thresholds"].items() if key != name}
        with pytest.raises(ValidationError, match=name):
            WordingBook.model_validate({**data, "thresholds": rest})


def test_every_number_says_what_it_decides_and_where_it_comes_from() -> None:
    """A sentence and a source beside each."""
    for _, one in wording().thresholds:
        assert one.says.endswith(".")
        assert one.source


def test_words_are_small_and_stand_once() -> None:
    """As they are compared."""
    for name, words in wording().words:
        assert list(words) == sorted({word.lower() for word in words}), name
