"""One rule as a clinician reads it for review: when, what it does, why, and examples."""

from __future__ import annotations

from collections.abc import Iterator

from builder.model.card import groups_of
from builder.model.rule import OptionEffect, Rule
from builder.render.limit import limit_text
from builder.render.maker import Maker
from builder.render.review_entry import Said, Told, condition, given, ground

GIVEN = ("hands_on", "techniques", "all")


def said_of_rule(made: Maker, rule: Rule) -> Told:
    """All that a rule says."""
    return Told(tuple(_said(made, rule)))


def _said(made: Maker, rule: Rule) -> Iterator[Said]:
    say = made.say
    yield condition(made, say("i_when"), rule.when)
    if rule.session:
        urgency = say(f"urgency_{rule.session.urgency}").lower()
        yield Said(say("i_effect"), f"{say('i_session_refer')}: {urgency}")
        if (first := rule.session.first_action) is not None:
            yield Said(say("at_once"), "; ".join(first.do))
            if first.avoid:
                yield Said(say("not_now"), "; ".join(first.avoid))
    yield from (Said(say("i_effect"), _effect(made, one)) for one in rule.options)
    yield from ground(made, rule.why, rule.source, rule.strength, rule.contested)
    for example in rule.examples:
        yield Said(say(f"review_fires_{example.fires}"), given(made, example.given))


def _effect(made: Maker, effect: OptionEffect) -> str:
    say, content = made.say, made.course.content
    names = [content.cards[one].name if one in content.cards else one for one in effect.cards]
    about = ", ".join([*(_group(made, one) for one in effect.groups), *names])
    sites = f" ({', '.join(say(f'site_{one}') for one in effect.sites)})" if effect.sites else ""
    needs = "; ".join(limit_text(node, content.facts.written, say) for node in effect.needs.values())
    answer = say(f"answer_{effect.answer or 'change'}")
    return f"{answer}{f' – {needs}' if needs else ''}: {about}{sites}"


def _group(made: Maker, name: str) -> str:
    """A group, with the cards that are in it where its name does not say so."""
    if name in GIVEN:
        return made.say(f"i_group_{name}")
    cards = sorted(card.name for card in made.course.content.cards.values() if name in groups_of(card))
    group = name.replace("_", " ")
    return f"{made.say('i_group', name=group)} ({', '.join(cards)})"
