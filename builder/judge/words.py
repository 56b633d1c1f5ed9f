"""How limits, values and changes read in plain words."""

from __future__ import annotations

from decimal import Decimal

from builder.judge.space import Space, Value
from builder.model.condition import Among, Node, Within
from builder.model.fact import Fact


def told(fact: Fact, value: Value) -> str:
    """A fact with its value inside a sentence; how an option is done reads by its own words alone."""
    words = fact.in_words(value)
    if isinstance(value, Decimal):
        return f"{fact.in_sentence} {words}"
    spoken = value in fact.words and (fact.group == "written" or fact.kind == "yes_no")
    return words if spoken else f"{fact.in_sentence}: {words}"


def between(fact: Fact, least: Decimal, most: Decimal) -> tuple[str, str]:
    """Two bounds of a number, the unit said once where it is the same."""
    low, high = fact.in_words(least), fact.in_words(most)
    same_unit = low.partition(" ")[2] == high.partition(" ")[2]
    return low.partition(" ")[0] if same_unit else low, high


def limit_words(node: Node, space: Space) -> str:
    """What a limit asks for, such as `time at most 20 min` or `cloth between`."""
    if isinstance(node, Within):
        fact, bounds = space.variables[node.name].fact, dict(node.bounds)
        least, most = bounds.get("at_least"), bounds.get("at_most")
        if isinstance(least, Decimal) and isinstance(most, Decimal):
            low, high = between(fact, least, most)
            return space.say("range", of=fact.in_sentence, low=low, high=high)
        told_each = [space.say(bound, value=fact.in_words(limit)) for bound, limit in node.bounds]
        words = space.say("and").join(told_each)
        return words if fact.group == "written" and fact.words else f"{fact.in_sentence} {words}"
    if isinstance(node, Among):
        fact, first, rest = space.variables[node.name].fact, node.values[0], node.values[1:]
        return space.say("or").join([told(fact, first), *(fact.in_words(one) for one in rest)])
    return space.say("as_the_rule_asks")
