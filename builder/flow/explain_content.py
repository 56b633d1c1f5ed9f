"""Explaining what a course rests on: a rule, a card, a policy, and where each setting comes from."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from textwrap import wrap
from typing import Any

from builder.fault import Fault
from builder.flow.opened import Opened
from builder.model.card import Contested
from builder.model.course import SiteConfig
from builder.model.library import Course
from builder.model.noun import Noun
from builder.model.plan import CourseTest
from builder.read.nearest import suggest
from builder.render.instructor_condition import Branch, branch
from builder.render.limit import limit_text
from builder.render.wording import Say, speaker

Told = tuple[list[str], dict[str, Any]]
FORMAT = "caseloom/explain/1"
UNREVIEWED = "not yet reviewed by a clinician"
WIDTH = 80
LEAD = 11


def explain_rule(opened: Opened, name: str | None) -> Told:
    """One rule: when it fires, what it does, why, and what it rests on."""
    course = _course(opened)
    rule = _named(course.content.rules, name, "rule")
    say, book = speaker(course.content.words), course.content.facts
    facts = {**book.written, **book.facts}
    lines = [f"{rule.title} ({rule.id})", ""]
    lines += _said("Fires", _tree(branch(rule.when, facts, say)))
    if rule.session:
        lines += _said("Session", [f"stop and refer, {say(f'urgency_{rule.session.urgency}').lower()}"])
        first = rule.session.first_action
        lines += _said("At once", first.do if first else ())
        lines += _said("Not now", first.avoid if first else ())
    for effect in rule.options:
        about = ", ".join((*effect.cards, *(one.replace("_", " ") for one in effect.groups)))
        where = ", ".join(say(f"site_{one}") for one in effect.sites) or "everywhere"
        does = "; ".join(limit_text(one, book.written, say) for one in effect.needs.values())
        what = say(f"answer_{effect.answer}").lower() if effect.answer else f"needs {does}"
        lines += _said("Options", [f"{about} ({where}): {what}"])
    lines += _ground(course, say, rule.why, rule.source, rule.strength, rule.contested)
    lines += _said("Reviewed", [rule.reviewed.who if rule.reviewed else UNREVIEWED])
    return lines, {"format": FORMAT, "rule": _data(rule)}


def explain_card(opened: Opened, name: str | None) -> Told:
    """One card: what it is, and its answer for each phase and site, with limits and reason."""
    course = _course(opened)
    card = _named(course.content.cards, name, "card")
    say, written = speaker(course.content.words), course.content.facts.written
    lines = [f"{card.name} ({card.id})", ""]
    lines += _said("What", [card.what])
    lines += _said("By hand", ["yes" if card.hands_on else "no"])
    for row in card.baseline:
        phases = ", ".join(course.content.phases.phase_words[one] for one in row.phase)
        sites = ", ".join(say(f"site_{one}") for one in row.site)
        limits = "; ".join(limit_text(one, written, say) for one in row.limits.values())
        lines += ["", *_said("Phase", [phases]), *_said("Site", [sites])]
        lines += _said("Answer", [say(f"answer_{row.answer}") + (f": {limits}" if limits else "")])
        lines += _ground(course, say, row.why, row.source, row.strength, row.contested)
    lines += ["", *_said("Reviewed", [card.reviewed.who if card.reviewed else UNREVIEWED])]
    return lines, {"format": FORMAT, "card": _data(card)}


def explain_policy(opened: Opened, name: str | None) -> Told:
    """One policy and which boards ask for it; without a name, every one that is asked for or written."""
    course = _course(opened)
    boards = course.content.boards.values()
    wanted = sorted({one for board in boards for one in board.policies})
    asked = {one: [board.name for board in boards if one in board.policies] for one in wanted}
    texts = {**dict.fromkeys(asked, ""), **course.file.policies}
    shown = texts if name is None else {name: _named(texts, name, "policy")}
    lines: list[str] = []
    for one, text in shown.items():
        lines += _said(one, [text or "not written yet"])
        lines += _said("", [f"asked for by {', '.join(asked[one])}"] if one in asked else [])
    told = [
        {"policy": one, "text": text or None, "asked_by": asked.get(one, [])} for one, text in shown.items()
    ]
    return lines, {"format": FORMAT, "policies": told}


def explain_settings(opened: Opened, name: str | None) -> Told:
    """Every setting with its value and where it comes from: the course, the provider's look, or a default."""
    course = _course(opened)
    rows = [
        *_settings(opened, "course.yml", (), course.file, ("language", "boards")),
        *(
            row
            for at, test in enumerate(course.file.tests)
            for row in _settings(opened, "course.yml", ("tests", at), test, _OF_TESTS)
        ),
        *_settings(opened, "site_config.yml", (), course.site, tuple(SiteConfig.model_fields)),
    ]
    known = {one["setting"]: one for one in rows}
    shown = known if name is None else {name: _named(known, name, "setting")}
    lines = [
        line
        for one in shown.values()
        for line in _said(one["setting"], [f"{one['value']}  ({one['from']})"], 26)
    ]
    return lines, {"format": FORMAT, "settings": list(shown.values())}


CONTENT: Mapping[str, Callable[[Opened, str | None], Told]] = {
    "rule": explain_rule,
    "card": explain_card,
    "policy": explain_policy,
    "settings": explain_settings,
}
_OF_TESTS = tuple(name for name, field in CourseTest.model_fields.items() if not field.is_required())


def _course(opened: Opened) -> Course:
    if opened.course is None:
        raise Fault("The course cannot be put together.", "Run check and mend what it names.")
    return opened.course


def _named(known: Mapping[str, Any], name: str | None, what: str) -> Any:  # noqa: ANN401 - whatever the mapping holds
    if name is None:
        raise Fault(f"Which {what}?", f"They are: {', '.join(known)}.")
    if name not in known:
        raise Fault(f"There is no {what} `{name}`.", suggest(name, known))
    return known[name]


def _settings(
    opened: Opened, file: str, at: tuple[str | int, ...], noun: Noun, names: Iterable[str]
) -> Iterator[dict[str, str]]:
    places = opened.places.get(file)
    for name in names:
        path = (*at, name)
        written = places is not None and any(one[: len(path)] == path for one in places.values)
        lead = f"{noun.id}." if isinstance(noun, CourseTest) else ""
        value = getattr(noun, name)
        shown = ", ".join(map(str, value)) if isinstance(value, tuple | dict) else str(value)
        yield {"setting": f"{lead}{name}", "value": shown, "from": file if written else "default"}


def _ground(
    course: Course, say: Say, why: str, source: Iterable[str], strength: str, contested: Contested | None
) -> Iterator[str]:
    yield from _said("Why", [why])
    sources = course.content.references.sources
    cited = "; ".join(sources[one].short if one in sources else one for one in source)
    yield from _said("Rests on", [f"{cited} ({say(f'strength_{strength}')})"])
    if contested:
        yield from _said("Contested", [f"Taught: {contested.taught}", f"Also held: {contested.other}"])


def _tree(one: Branch, depth: int = 0) -> list[str]:
    return [f"{'  ' * depth}{one.text}", *(line for part in one.parts for line in _tree(part, depth + 1))]


def _said(lead: str, texts: Iterable[str], width: int = LEAD) -> list[str]:
    """Texts under one lead, each wrapped beside it; nothing where there are none."""
    lines = []
    for text in texts:
        inset = len(text) - len(text.lstrip())
        lines += wrap(text.lstrip(), WIDTH - width, initial_indent=" " * inset, subsequent_indent=" " * inset)
    return [f"{lead if not at else '':<{width}}{line}" for at, line in enumerate(lines)]


def _data(noun: Noun) -> dict[str, Any]:
    return noun.model_dump(mode="json", exclude_none=True)
