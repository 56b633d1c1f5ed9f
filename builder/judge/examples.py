"""Every rule's own examples, tried."""

from __future__ import annotations

from collections.abc import Iterator

from builder.judge.space import Space
from builder.judge.truth import FALSE, OPEN, TRUE, compiled
from builder.model.judgement import FailedExample
from builder.model.rule import Rule

WORDS = {TRUE: "yes", FALSE: "no", OPEN: "open"}


def failed_examples(rules: dict[str, Rule], space: Space) -> Iterator[FailedExample]:
    """The examples that do not come out as their rule says; an open answer is a failure too."""
    for rule in rules.values():
        test = compiled(rule.when, space)
        for index, example in enumerate(rule.examples):
            found = WORDS[test(space.state(dict(example.given)))]
            if found != example.fires:
                yield FailedExample(rule.id, index, example.fires, found)
