"""A rule may only tighten: it may not fire on the safe side of a fact while the dangerous side is let go."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, content_file
from builder.diagnostic import Level
from builder.model.condition import Among, Recorded, Within, polar_atoms
from builder.model.fact import Fact

LEVEL: Level = "error"


def check(evidence: Evidence) -> Iterator[Finding]:
    """Conditions that hold for a safe value and not for every more dangerous one."""
    facts = dict(evidence.course.content.facts.facts)
    facts.update({f"written.{name}": fact for name, fact in evidence.course.content.facts.written.items()})
    for rule in evidence.course.content.rules.values():
        file = content_file(evidence, f"rules/{rule.id}.yml")
        for atom, positive in polar_atoms(rule.when):
            if said := _loosens(atom, facts, positive=positive):
                yield Finding(file, ("when",), *said, (rule.id,))


def _loosens(
    atom: Among | Within | Recorded, facts: dict[str, Fact], *, positive: bool
) -> tuple[str, str] | None:
    if isinstance(atom, Recorded):
        message = f"The rule fires where `{atom.name}` is recorded and not where nobody asked."
        return (message, "Put `recorded` under `not`.") if positive else None
    if atom.name not in facts or _tightens(atom, facts[atom.name], positive=positive):
        return None
    return (
        f"The rule fires for a safe value of `{atom.name}` and not for a more dangerous one.",
        "Turn the condition round, or widen it to every worse value.",
    )


def _tightens(atom: Among | Within, fact: Fact, *, positive: bool) -> bool:
    if fact.worse_when in ("both", "neither"):
        return True
    upward = fact.worse_when in ("higher", "yes")
    if isinstance(atom, Within):
        rising = {bound in ("over", "at_least") for bound, _ in atom.bounds}
        return rising == {upward == positive}
    if fact.kind == "number":
        return False
    order = fact.words_of_values
    chosen = {order.index(str(one)) for one in atom.values if one in order}
    top, bottom = set(range(len(order) - len(chosen), len(order))), set(range(len(chosen)))
    return chosen == (top if upward == positive else bottom)
