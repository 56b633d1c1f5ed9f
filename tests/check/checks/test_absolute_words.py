"""Absolute words that tell right from wrong."""

import pytest

from builder.check.checks import absolute_words
from tests.check.wording.written import told


@pytest.mark.parametrize(
    ("right", "wrong", "side"),
    [
        ("usually light", ["always deep", "never oiled"], "wrong"),
        ("never without asking", ["with oil", "with cold"], "right"),
        ("usually light", ["always deep", "oiled"], None),
        ("always asked for", ["always deep", "never oiled"], None),
        ("never", ["with oil", "with cold"], None),
        ("on all fours", ["on the back", "on the side"], None),
        ("usually light", ["all of these", "none of these"], None),
    ],
)
def test_only_what_tells_them_apart_is_told(right: str, wrong: list[str], side: str | None) -> None:
    """Two wrong ones or a right one; a value of one word, another sense and options for others are let be."""
    said = told(absolute_words, "Deep work is", right, *wrong)
    assert [one.split()[1] for one in said] == ([side] if side else [])


def test_the_words_are_named() -> None:
    """Each once, in the order of the options."""
    (said,) = told(absolute_words, "Deep work is", "light", "always deep", "never oiled", "always dry")
    assert "“always”, “never”" in said
