"""Which options stand for others."""

import pytest

from builder.check.wording.together import takes_others
from tests.check.wording.book import wording


@pytest.mark.parametrize(
    "text",
    [
        "All of the above",
        "none of these",
        "Both a and c",
        "A and B only",
        "neither of the first two",
        "b, c and d",
    ],
)
def test_options_that_stand_for_others(text: str) -> None:
    """Taken together, or left out together."""
    assert takes_others(wording().words, text)


@pytest.mark.parametrize(
    "text",
    [
        "above the knee",
        "None",
        "all round the pad",
        "Neither heat nor ice",
        "Both hands",
        "1 and 2",
        "",
        "A bandage",
    ],
)
def test_options_of_their_own(text: str) -> None:
    """The same words in another sense."""
    assert not takes_others(wording().words, text)
