"""A condition as a tree in plain words, so that a reviewer can not misread what is joined with what."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal

from builder.model.condition import AllOf, Among, AnyOf, Node, Not
from builder.model.fact import Fact
from builder.render.limit import limit_text
from builder.render.wording import Say


@dataclass(frozen=True)
class Branch:
    """A line, and the lines that stand under it."""

    text: str
    parts: tuple[Branch, ...] = ()


def branch(node: Node, facts: Mapping[str, Fact], say: Say) -> Branch:
    """The condition as a tree; facts of clients and attributes of options are looked up together."""
    match node:
        case AllOf(parts):
            return Branch(say("i_all_of"), tuple(branch(one, facts, say) for one in parts))
        case AnyOf(parts):
            return Branch(say("i_any_of"), tuple(branch(one, facts, say) for one in parts))
        case Not(part):
            return Branch(say("i_none_of"), (branch(part, facts, say),))
        case Among(name, values):
            return Branch(
                f"{_label(name, facts)}: {say('or').join(_value(name, one, facts) for one in values)}"
            )
        case _:
            return Branch(limit_text(node, facts, say))


def _label(name: str, facts: Mapping[str, Fact]) -> str:
    bare = name.removeprefix("written.")
    return facts[bare].label if bare in facts else bare.replace("_", " ")


def _value(name: str, value: str | Decimal, facts: Mapping[str, Fact]) -> str:
    fact = facts.get(name.removeprefix("written."))
    if fact is None or fact.kind == "yes_no":
        return f"{value}"
    return fact.in_words(value)
