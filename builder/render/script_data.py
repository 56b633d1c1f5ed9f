"""What a script must know of a test: its edition, how codes are made, and its words."""

from __future__ import annotations

from collections.abc import Iterable

from builder.model.code import ALIKE, ALPHABET, BETWEEN, LENGTH, VERSIONS
from builder.model.paper import PublishedTest
from builder.render.maker import Maker


def about_test(made: Maker, test: PublishedTest, said: Iterable[str]) -> dict[str, object]:
    """The same for every page of a test; `said` are the ids of the words that its script says."""
    return {
        "edition": test.edition,
        "test": test.test,
        "alphabet": ALPHABET,
        "between": BETWEEN,
        "alike": ALIKE,
        "length": LENGTH,
        "letters": VERSIONS,
        "versions": len(test.papers),
        "say": {key: made.say(key) for key in said},
    }
