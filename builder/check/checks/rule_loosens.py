"""A rule may only tighten: it fires on the dangerous side of a fact, and asks for the safe side."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, content_file
from builder.diagnostic import Level
from builder.model.condition import Among, Node, Recorded, Within, polar_atoms
from builder.model.fact import Fact
from builder.model.kind import Example
from builder.model.sample_rule import FILE, GOOD_RULE, sample_rule

LEVEL: Level = "error"
WHY = (
    "Rules may only make treatment stricter. One that holds for the safer value and not for the more "
    "dangerous one has its condition the wrong way round."
)
BAD = Example(
    FILE,
    sample_rule(
        when="{numb_skin: no}",
        about="cards: [glide]\n    sites: [distal]",
        fires="{numb_skin: no}",
        does_not="{numb_skin: yes}",
    ),
)
GOOD = Example(FILE, GOOD_RULE)
SLACK = "Bound the dangerous side of the attribute."


def check(evidence: Evidence) -> Iterator[Finding]:
    """Conditions that hold on the safe side alone, and limits and needs that let the dangerous side pass."""
    facts = dict(evidence.course.content.facts.facts)
    facts.update({f"written.{name}": fact for name, fact in evidence.course.content.facts.written.items()})
    for rule in evidence.course.content.rules.values():
        file = content_file(evidence, f"rules/{rule.id}.yml")
        for atom, positive in polar_atoms(rule.when):
            if said := _loosens(atom, facts, positive=positive):
                yield Finding(file, ("when",), *said, (rule.id,))
        for at, effect in enumerate(rule.options):
            for name in _slack(effect.needs, facts):
                yield Finding(file, ("options", at, "needs", name), _said("need", name), SLACK, (rule.id,))
    for card in evidence.course.content.cards.values():
        file = content_file(evidence, f"cards/{card.id}.yml")
        for at, row in enumerate(card.baseline):
            for name in _slack(row.limits, facts):
                yield Finding(file, ("baseline", at, "limits", name), _said("limit", name), SLACK)


def _slack(limits: dict[str, Node], facts: dict[str, Fact]) -> list[str]:
    """The attributes whose limit turns back a safe value and lets a more dangerous one pass."""
    return [
        name
        for name, node in limits.items()
        if any(_loosens(atom, facts, positive=not positive) for atom, positive in polar_atoms(node))
    ]


def _said(what: str, name: str) -> str:
    return f"The {what} on `{name}` lets a dangerous value pass and turns a safer one back."


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
