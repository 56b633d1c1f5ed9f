"""How limits, values and changes read in plain words."""

from __future__ import annotations

from decimal import Decimal

from builder.judge.space import Space, Value
from builder.model.condition import Among, Node, Within
from builder.model.fact import Fact

BOUND_WORDS = {"over": "over", "at_least": "at least", "below": "under", "at_most": "at most"}


def plain(number: Decimal) -> str:
    """A number without needless zeros."""
    return f"{number.normalize():f}"


def value_words(fact: Fact, value: Value) -> str:
    """A value as it reads on the page: the fact's own words, or the number with its unit."""
    if isinstance(value, str):
        return fact.words.get(value, value.replace("_", " "))
    unit = fact.unit if fact.unit in ("°", "%") else f" {fact.unit}".rstrip()
    return f"{plain(value)}{unit}"


def limit_words(node: Node, space: Space) -> str:
    """What a limit asks for, such as `time at most 20 min` or `cloth between`."""
    if isinstance(node, Within):
        fact = space.variables[node.name].fact
        bounds = " and ".join(
            f"{BOUND_WORDS[bound]} {value_words(fact, limit)}" for bound, limit in node.bounds
        )
        return f"{fact.label.lower()} {bounds}"
    if isinstance(node, Among):
        fact = space.variables[node.name].fact
        words = " or ".join(value_words(fact, one) for one in node.values)
        return words if fact.kind == "yes_no" else f"{fact.label.lower()}: {words}"
    return "as the rule asks"
