"""Every rule with its condition, effects and ground; the page a reviewing clinician works through."""

from __future__ import annotations

from collections.abc import Iterator

from builder.model.rule import URGENCIES, OptionEffect, Rule
from builder.model.site import SitePage
from builder.render.address import way
from builder.render.instructor_address import RULES, of_rule_card
from builder.render.instructor_condition import branch
from builder.render.instructor_said import Linked, cited
from builder.render.limit import limit_text
from builder.render.maker import Maker
from builder.render.source import contested_text


def rules_page(made: Maker) -> SitePage:
    """The rules that stop a session by urgency, then those about options."""
    content = made.course.content
    rules = sorted(content.rules.values(), key=lambda rule: rule.title)
    groups = [(made.say(f"urgency_{urgency}"), _referring(rules, urgency)) for urgency in reversed(URGENCIES)]
    groups.append((made.say("i_option_rules"), [rule for rule in rules if not rule.session]))
    return made.page(
        RULES,
        made.say("i_rules"),
        "instructor_rules",
        kind="rules",
        reviewed=all(rule.reviewed for rule in rules),
        groups=[(title, [_rule(made, rule) for rule in some]) for title, some in groups if some],
        count=len(rules),
        unreviewed=sum(rule.reviewed is None for rule in rules),
    )


def _referring(rules: list[Rule], urgency: str) -> list[Rule]:
    return [rule for rule in rules if rule.session and rule.session.urgency == urgency]


def _rule(made: Maker, rule: Rule) -> dict[str, object]:
    book = made.course.content.facts
    first = rule.session.first_action if rule.session else None
    return {
        "id": rule.id,
        "title": rule.title,
        "own": rule.id in made.course.content.own_rules,
        "when": branch(rule.when, {**book.written, **book.facts}, made.say),
        "effects": [_effect(made, one) for one in rule.options],
        "do": first.do if first else (),
        "avoid": first.avoid if first else (),
        "why": rule.why,
        "strength": made.say(f"strength_{rule.strength}"),
        "sources": cited(made, RULES, rule.source),
        "contested": contested_text(made, rule.contested),
        "reviewed": rule.reviewed,
    }


def _effect(made: Maker, effect: OptionEffect) -> dict[str, object]:
    facts = made.course.content.facts.written
    needs = [limit_text(node, facts, made.say) for node in effect.needs.values()]
    answer = effect.answer or "change"
    return {
        "mark": answer,
        "word": made.say(f"answer_{answer}"),
        "on": list(_meant(made, effect)),
        "sites": [made.say(f"site_{one}") for one in effect.sites],
        "needs": "; ".join(needs),
    }


def _meant(made: Maker, effect: OptionEffect) -> Iterator[Linked]:
    """The groups and cards an effect is about."""
    given = {"hands_on", "techniques", "all"}
    for name in effect.groups:
        known = (
            made.say(f"i_group_{name}") if name in given else made.say("i_group", name=name.replace("_", " "))
        )
        yield Linked(known, "")
    cards = made.course.content.cards
    for name in effect.cards:
        yield Linked(cards[name].name if name in cards else name, way(RULES, of_rule_card(name)))
