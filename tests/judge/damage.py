"""One damage at a time done to a rule set: a rule or a cell changed, taken away or added."""

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from builder.model.card import Card, CellRow
from builder.model.condition import parse
from builder.model.rule import Rule
from tests.judge import small
from tests.judge.laws import World

Damage = Callable[[World], World]


def without_rule(name: str) -> Damage:
    """One rule is missing."""

    def damage(world: World) -> World:
        return _with_rules(world, {one: rule for one, rule in world.content.rules.items() if one != name})

    return told(damage, f"without the rule {name}")


def with_rule(when: dict[str, Any], **effect: object) -> Damage:
    """One rule is too many."""

    def damage(world: World) -> World:
        bad = Rule.model_validate(small.rule("bad", when, **effect))
        return _with_rules(world, {**world.content.rules, "bad": bad})

    return told(damage, f"with a rule for {when}: {effect}")


def rule_changed(name: str, **changed: Any) -> Damage:  # noqa: ANN401 - any part of a rule
    """One rule has another condition or other effects."""

    def damage(world: World) -> World:
        written = {one: parse(part) if one == "when" else part for one, part in changed.items()}
        rule = world.content.rules[name].model_copy(update=written)
        return _with_rules(world, {**world.content.rules, name: rule})

    return told(damage, f"the rule {name} with {changed}")


def options_changed(name: str, **changed: Any) -> Damage:  # noqa: ANN401 - any part of an effect
    """Every effect of one rule on options reaches elsewhere."""

    def damage(world: World) -> World:
        options = [one.model_copy(update=changed) for one in world.content.rules[name].options]
        return rule_changed(name, options=tuple(options))(world)

    return told(damage, f"the effects of {name} with {changed}")


def rows_changed(card: str, *phases: str, **changed: Any) -> Damage:  # noqa: ANN401 - any part of a row
    """The rows of a card that are about a phase say something else."""
    damage = _card(card, lambda row: row.model_copy(update=changed) if set(phases) & set(row.phase) else row)
    return told(damage, f"the card {card} in {', '.join(phases)} with {changed}")


def rows_missing(card: str, phase: str) -> Damage:
    """The rows of a card that are about a phase are missing."""
    damage = _card(card, lambda row: None if phase in row.phase else row)
    return told(damage, f"the card {card} without a row for {phase}")


def _card(name: str, change: Callable[[CellRow], CellRow | None]) -> Damage:
    def damage(world: World) -> World:
        card: Card = world.content.cards[name]
        rows = [made for row in card.baseline if (made := change(row)) is not None]
        changed = card.model_copy(update={"baseline": tuple(rows)})
        return World(replace(world.content, cards={**world.content.cards, name: changed}))

    return damage


def phase_applies_to(injuries: list[str]) -> Damage:
    """The calendar counts but for these injuries."""

    def damage(world: World) -> World:
        book = world.content.phases.model_copy(update={"does_not_apply": parse({"injury": injuries})})
        return World(replace(world.content, phases=book))

    return told(damage, f"phases that apply to all but {', '.join(injuries)}")


def told(damage: Damage, words: str) -> Damage:
    """The same damage, which says of itself what it does."""
    damage.__doc__ = words
    return damage


def _with_rules(world: World, rules: dict[str, Rule]) -> World:
    return World(replace(world.content, rules=rules))
