"""What a rule set names: its conditions, its bounds, and what severity, phase and session depend on."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from builder.judge.phase import ends
from builder.model.condition import Node, atoms
from builder.model.library import Content


def conditions(content: Content) -> Iterator[Node]:
    """Every condition of rules, cards, tables, facts and phases."""
    for rule in content.rules.values():
        yield rule.when
        for effect in rule.options:
            yield from effect.needs.values()
    for card in content.cards.values():
        for row in card.baseline:
            yield from row.limits.values()
    for table in content.severity.tables.values():
        yield table.applies
        yield from (band.when for band in (*table.bands, *table.raised))
    yield from (fact.asked_where for fact in content.facts.facts.values() if fact.asked_where)
    yield content.phases.does_not_apply
    yield from (sign.when for sign in (*content.phases.signs, *content.phases.doubt))


def dating(content: Content) -> Iterator[str]:
    """Every variable on which severity or phase depend."""
    yield "hours"
    for table in content.severity.tables.values():
        yield table.measure
        yield from (atom.name for band in table.raised for atom in atoms(band.when))
    nodes = [content.phases.does_not_apply, *(sign.when for sign in content.phases.signs)]
    nodes += [table.applies for table in content.severity.tables.values()]
    yield from (atom.name for node in nodes for atom in atoms(node))


def of_sessions(content: Content) -> Iterator[str]:
    """Every variable on which the session depends."""
    rules = (rule for rule in content.rules.values() if rule.session)
    yield from (atom.name for rule in rules for atom in atoms(rule.when))


def cuts(content: Content) -> Iterator[tuple[str, Decimal]]:
    """Every bound that clocks, tables and ladders name beside the conditions, with its variable."""
    for clock in content.phases.clocks:
        yield from (("hours", end) for end in ends(clock))
    for table in content.severity.tables.values():
        yield from (("hours", one) for one in (table.not_before, table.not_after))
        for band in table.bands:
            for bound in getattr(band.when, "bounds", ()):
                yield (table.recalled or table.measure, bound[1])
    yield from (("signs_behind", Decimal(one)) for one in range(4))
    for card in content.cards.values():
        for attribute, ladder in card.ladder.items():
            yield from ((f"written.{attribute}", one) for one in ladder)
