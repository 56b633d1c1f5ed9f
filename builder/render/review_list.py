"""The list a clinician goes through: each rule and card in words, on what it rests, and room to sign."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from builder.model.card import Card, Contested, Reviewed
from builder.model.review import fingerprint
from builder.model.rule import OptionEffect, Rule
from builder.render.instructor_condition import Branch, branch
from builder.render.limit import limit_text
from builder.render.maker import Maker
from builder.render.source import contested_text

Said = tuple[str, str]


@dataclass(frozen=True)
class Listed:
    """One rule or card as it is read for review."""

    part: str
    id: str
    title: str
    fingerprint: str
    reviewed: Reviewed | None
    said: tuple[Said, ...]


def listed(made: Maker) -> list[Listed]:
    """Every rule, then every card, by title."""
    content = made.course.content
    rules = sorted(content.rules.values(), key=lambda one: one.title)
    cards = sorted(content.cards.values(), key=lambda one: one.name)
    return [
        *(_entry("rules", one, one.title, _rule(made, one)) for one in rules),
        *(_entry("cards", one, one.name, _card(made, one)) for one in cards),
    ]


def remaining(entries: Iterable[Listed]) -> int:
    """How many have no signature that holds."""
    return sum(one.reviewed is None for one in entries)


def in_text(made: Maker, entries: list[Listed]) -> Iterator[str]:
    """The list, line by line, for a terminal."""
    yield made.say("review_left", n=remaining(entries), all=len(entries))
    for one in entries:
        yield ""
        yield f"{one.part}/{one.id}  {one.title}  [{one.fingerprint}]"
        yield from (f"  {label}: {text}" for label, text in one.said)
        yield f"  {_standing(made, one)}"


def as_sheet(made: Maker, entries: list[Listed]) -> str:
    """The list as one printable page of HTML, with room to sign beside each."""
    return made.fill(
        "pages/review_sheet.html",
        {
            "course": made.course,
            "entries": [(one, _standing(made, one)) for one in entries],
            "left": made.say("review_left", n=remaining(entries), all=len(entries)),
        },
    )


def _standing(made: Maker, one: Listed) -> str:
    signed = one.reviewed
    if signed is None:
        return made.say("i_not_reviewed")
    return made.say("i_reviewed", who=signed.who, licence=signed.licence, date=signed.date)


def _entry(part: str, noun: Rule | Card, title: str, said: Iterable[Said]) -> Listed:
    return Listed(part, noun.id, title, fingerprint(noun), noun.reviewed, tuple(said))


def _rule(made: Maker, rule: Rule) -> Iterator[Said]:
    say, book = made.say, made.course.content.facts
    facts = {**book.written, **book.facts}
    yield say("i_when"), _tree(branch(rule.when, facts, say))
    if rule.session:
        yield say("i_effect"), f"{say('i_refer_effect')}: {say(f'urgency_{rule.session.urgency}')}"
    if rule.session and rule.session.first_action:
        yield say("at_once"), "; ".join(rule.session.first_action.do)
        if rule.session.first_action.avoid:
            yield say("not_now"), "; ".join(rule.session.first_action.avoid)
    yield from ((say("i_effect"), _effect(made, one)) for one in rule.options)
    yield from _ground(made, rule.why, rule.source, rule.strength, rule.contested)
    for example in rule.examples:
        given = ", ".join(f"{name}: {value}" for name, value in example.given.items())
        yield say(f"review_fires_{example.fires}"), given or "–"


def _effect(made: Maker, effect: OptionEffect) -> str:
    say, content = made.say, made.course.content
    groups = [one.replace("_", " ") for one in effect.groups]
    names = [content.cards[one].name if one in content.cards else one for one in effect.cards]
    sites = f" ({', '.join(say(f'site_{one}') for one in effect.sites)})" if effect.sites else ""
    needs = "; ".join(limit_text(node, content.facts.written, say) for node in effect.needs.values())
    answer = say(f"answer_{effect.answer or 'change'}")
    return f"{answer}: {', '.join([*groups, *names])}{sites}{f' – {needs}' if needs else ''}"


def _card(made: Maker, card: Card) -> Iterator[Said]:
    say, facts = made.say, made.course.content.facts.written
    yield say("review_what"), card.what
    for row in card.baseline:
        phases = ", ".join(made.course.content.phases.phase_words[one] for one in row.phase)
        sites = ", ".join(say(f"site_{one}") for one in row.site)
        limits = "; ".join(limit_text(node, facts, say) for node in row.limits.values())
        yield f"{phases} ({sites})", f"{say(f'answer_{row.answer}')}{f' – {limits}' if limits else ''}"
        yield from _ground(made, row.why, row.source, row.strength, row.contested)


def _ground(
    made: Maker, why: str, source: Iterable[str], strength: str, contested: Contested | None
) -> Iterator[Said]:
    known = made.course.content.references.sources
    cited = "; ".join(known[one].cite if one in known else one for one in source)
    yield made.say("reasons"), why
    yield made.say("review_rests"), f"{made.say(f'strength_{strength}')}; {cited}"
    if contested is not None:
        yield made.say("contested").rstrip(":"), contested_text(made, contested)


def _tree(node: Branch) -> str:
    parts = "; ".join(_tree(one) for one in node.parts)
    return f"{node.text} ({parts})" if parts else node.text
