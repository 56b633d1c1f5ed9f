"""Each law of judging can fail: a bad rule, content or judge is planted, and the law is broken."""

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from builder.judge.said import Said, Tally
from builder.model.condition import AllOf, Among, atoms
from builder.model.rule import Rule
from tests.judge import lawbook, small
from tests.judge.lawbook import (
    a_red_flag_refers_wherever_it_is_found,
    adding_a_course_rule_never_loosens,
    adding_a_red_flag_never_loosens,
    no_work_by_hand_without_consent_and_screen,
    not_knowing_is_never_better,
    raising_severity_never_loosens_work_by_hand,
    rising_swelling_is_never_milder_than_on_the_first_day,
    rule_order_changes_nothing,
    the_answer_is_never_worse_than_at_worst,
)
from tests.judge.laws import SMALL, Law, World, shipped_world, tried

BARS = [{"groups": ["hands_on"], "answer": "barred"}]


def broken(law: Law, world: World) -> bool:
    """Whether some client of the rule set breaks the law."""
    try:
        tried(law, world, shrink=False)
    except AssertionError:
        return True
    return False


def with_rule(when: dict[str, Any], **effect: object) -> Callable[[World], World]:
    """Plants one more rule, which bars work by hand unless it does something else."""

    def plant(world: World) -> World:
        bad = Rule.model_validate(small.rule("bad", when, **(effect or {"options": BARS})))
        return World(replace(world.content, rules={**world.content.rules, "bad": bad}))

    return plant


def without_rule(name: str) -> Callable[[World], World]:
    """Takes one rule away."""

    def plant(world: World) -> World:
        rules = {one: rule for one, rule in world.content.rules.items() if one != name}
        assert len(rules) < len(world.content.rules)
        return World(replace(world.content, rules=rules))

    return plant


def without_swelling(world: World) -> World:
    """Takes away every sign by which swelling holds a phase back."""
    book = world.content.phases
    signs = [
        one for one in book.signs if not any(atom.name.startswith("swelling") for atom in atoms(one.when))
    ]
    return World(replace(world.content, phases=book.model_copy(update={"signs": tuple(signs)})))


def on_the_thigh_alone(world: World) -> World:
    """Binds every rule that ends a session to one region."""
    rules = {
        name: rule.model_copy(update={"when": AllOf((rule.when, Among("region", ("thigh",))))})
        if rule.session
        else rule
        for name, rule in world.content.rules.items()
    }
    return World(replace(world.content, rules=rules))


PLANTED: list[tuple[Law, Callable[[World], World]]] = [
    (
        adding_a_red_flag_never_loosens,
        with_rule({"fever": "no"}, options=[{"groups": ["all"], "answer": "barred"}]),
    ),
    (adding_a_red_flag_never_loosens, with_rule({"fever": "no"}, session={"urgency": "emergency"})),
    (a_red_flag_refers_wherever_it_is_found, on_the_thigh_alone),
    (not_knowing_is_never_better, with_rule({"recorded": "numb_skin"})),
    (not_knowing_is_never_better, with_rule({"recorded": "hours"})),
    (no_work_by_hand_without_consent_and_screen, without_rule("no_consent")),
    (rising_swelling_is_never_milder_than_on_the_first_day, without_swelling),
    (raising_severity_never_loosens_work_by_hand, with_rule({"severity": "mild"})),
    (raising_severity_never_loosens_work_by_hand, with_rule({"phase": ["late_repair", "remodelling"]})),
]


@pytest.mark.parametrize("world", [lambda: SMALL, shipped_world], ids=["small", "shipped"])
@pytest.mark.parametrize(("law", "plant"), PLANTED)
def test_a_planted_fault_breaks_the_law(
    law: Law, plant: Callable[[World], World], world: Callable[[], World]
) -> None:
    """A rule or a content that loosens is found out on either rule set."""
    assert broken(law, plant(world()))


def test_work_by_hand_instead_of_a_question_breaks_the_law() -> None:
    """A hands-on card that serves where something must be asked, and no rule that ends work by hand."""
    world = without_rule("refer_ends")(SMALL)
    stroke = world.content.cards["stroke"].model_copy(update={"serves": ("ask", "clear", "restore")})
    cards = {**world.content.cards, "stroke": stroke}
    assert broken(no_work_by_hand_without_consent_and_screen, World(replace(world.content, cards=cards)))


def test_a_course_that_displaces_rules_breaks_the_law(monkeypatch: pytest.MonkeyPatch) -> None:
    """Own rules in place of the given ones, instead of beside them."""

    def displacing(world: World, number: int) -> World:
        rule = lawbook.course_rule(world, number)
        return World(replace(world.content, rules={rule.id: rule}))

    monkeypatch.setattr(lawbook, "with_course_rule", displacing)
    assert broken(adding_a_course_rule_never_loosens, SMALL)


def test_a_judge_by_whom_the_last_rule_wins_breaks_the_law(monkeypatch: pytest.MonkeyPatch) -> None:
    """Not the strictest, but the last that was read."""

    def last_wins(self: Tally, one: Said, sure: int) -> None:
        self.sure, self.worst, self.said = sure, one.worst, [*self.said, one]

    monkeypatch.setattr(Tally, "take", last_wins)
    assert broken(rule_order_changes_nothing, shipped_world())


def test_a_judge_who_takes_open_for_sure_breaks_the_law(monkeypatch: pytest.MonkeyPatch) -> None:
    """What may be counts as what is, and less than it at worst."""

    def hasty(self: Tally, one: Said, sure: int) -> None:
        self.sure = max(self.sure, one.worst)
        self.worst = max(self.worst, one.worst if sure == one.worst else min(one.worst, 1))

    monkeypatch.setattr(Tally, "take", hasty)
    assert broken(the_answer_is_never_worse_than_at_worst, SMALL)
