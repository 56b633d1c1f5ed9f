"""How limits, values and changes read in plain words."""

from __future__ import annotations

from decimal import Decimal

from builder.judge.space import Space, Value
from builder.model.condition import Among, Node, Within
from builder.model.fact import Fact

BOUND_WORDS = {"over": "over", "at_least": "at least", "below": "under", "at_most": "at most"}


def told(fact: Fact, value: Value) -> str:
    """A fact with its value inside a sentence; how an option is done reads by its own words alone."""
    words = fact.in_words(value)
    if isinstance(value, Decimal):
        return f"{fact.in_sentence} {words}"
    spoken = value in fact.words and (fact.group == "written" or fact.kind == "yes_no")
    return words if spoken else f"{fact.in_sentence}: {words}"


def between(fact: Fact, least: Decimal, most: Decimal) -> str:
    """Two bounds of a number, the unit said once where it is the same."""
    low, high = fact.in_words(least), fact.in_words(most)
    same_unit = low.partition(" ")[2] == high.partition(" ")[2]
    return f"{low.partition(' ')[0] if same_unit else low} to {high}"


def limit_words(node: Node, space: Space) -> str:
    """What a limit asks for, such as `time at most 20 min` or `cloth between`."""
    if isinstance(node, Within):
        fact, bounds = space.variables[node.name].fact, dict(node.bounds)
        least, most = bounds.get("at_least"), bounds.get("at_most")
        if isinstance(least, Decimal) and isinstance(most, Decimal):
            return f"{fact.in_sentence} {between(fact, least, most)}"
        words = " and ".join(f"{BOUND_WORDS[bound]} {fact.in_words(limit)}" for bound, limit in node.bounds)
        return words if fact.group == "written" and fact.words else f"{fact.in_sentence} {words}"
    if isinstance(node, Among):
        fact, first, rest = space.variables[node.name].fact, node.values[0], node.values[1:]
        return " or ".join([told(fact, first), *(fact.in_words(one) for one in rest)])
    return "as the rule asks"
