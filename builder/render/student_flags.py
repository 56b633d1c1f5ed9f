"""The red-flags page: what stops a session, how urgent it is, and what to do at once."""

from __future__ import annotations

from builder.model.condition import atoms
from builder.model.rule import URGENCIES, Rule, Urgency
from builder.model.site import SitePage
from builder.render import address
from builder.render.maker import Maker, all_reviewed
from builder.render.source import contested_text, rests_on


def flags_page(made: Maker) -> SitePage:
    """All rules that stop a session, the most urgent first."""
    course = made.course
    rules = [rule for rule in course.content.rules.values() if rule.session]
    groups = [_group(made, urgency, rules) for urgency in reversed(URGENCIES)]
    return made.page(
        address.FLAGS,
        made.say("flags"),
        "flags",
        kind="flags",
        reviewed=all_reviewed(course),
        groups=[group for group in groups if group["flags"]],
    )


def _group(made: Maker, urgency: Urgency, rules: list[Rule]) -> dict[str, object]:
    mine = [rule for rule in rules if rule.session and rule.session.urgency == urgency]
    return {
        "id": urgency.replace("_", "-"),
        "title": made.say(f"urgency_{urgency}"),
        "lede": made.say(f"urgency_{urgency}_lede"),
        "flags": [_flag(made, rule) for rule in mine],
    }


def _flag(made: Maker, rule: Rule) -> dict[str, object]:
    action = rule.session.first_action if rule.session else None
    return {
        "id": f"flag-{rule.id}",
        "title": rule.title,
        "why": rule.why,
        "notice": _notice(made, rule),
        "do": action.do if action else (),
        "avoid": action.avoid if action else (),
        "rests_on": rests_on(made, rule.source, rule.strength),
        "contested": contested_text(made, rule.contested),
    }


def _notice(made: Maker, rule: Rule) -> list[str]:
    """What to ask or look for: the questions of the facts that the rule rests on, each once."""
    facts = made.course.content.facts.facts
    named = dict.fromkeys(atom.name for atom in atoms(rule.when))
    return [facts[name].question or facts[name].label for name in named if name in facts]
