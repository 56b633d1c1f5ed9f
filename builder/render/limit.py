"""A limit on how an option is written, in words."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal

from builder.model.condition import AllOf, Among, AnyOf, Node, Not, Recorded, Within
from builder.model.fact import Fact, plain
from builder.render.wording import Say, chip

Facts = Mapping[str, Fact]


def limit_text(node: Node, facts: Facts, say: Say) -> str:
    """What must be written, such as `time at most 20 min`."""
    match node:
        case Among(name, values):
            return say("or").join(_one(_bare(name), value, facts) for value in values)
        case Within(name, bounds):
            label = _label(_bare(name), facts)
            parts = [_bound(label, bound, _value(_bare(name), one, facts), say) for bound, one in bounds]
            return f"{label} {say('and').join(parts)}"
        case Recorded(name):
            return say("must_be_written", label=_label(_bare(name), facts))
        case Not(part):
            return say("not", text=limit_text(part, facts, say))
        case AllOf(parts):
            return say("and").join(limit_text(one, facts, say) for one in parts)
        case AnyOf(parts):
            return say("or").join(limit_text(one, facts, say) for one in parts)


def _bare(name: str) -> str:
    return name.removeprefix("written.")


def _bound(label: str, bound: str, value: str, say: Say) -> str:
    """A bound with its value; a label such as `pain at most` has said the bound itself."""
    said = say(f"bound_{bound}", value=value)
    return value if label.endswith(said.removesuffix(value).rstrip()) else said


def _label(name: str, facts: Facts) -> str:
    return facts[name].label.lower() if name in facts else name.replace("_", " ")


def _one(name: str, value: str | Decimal, facts: Facts) -> str:
    return chip(name, facts.get(name), value)


def _value(name: str, value: str | Decimal, facts: Facts) -> str:
    if name in facts:
        return facts[name].in_words(value)
    return value if isinstance(value, str) else plain(value)
