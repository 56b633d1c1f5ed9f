"""A judgement as a trace in words, for a terminal of eighty columns."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from decimal import Decimal
from textwrap import wrap

from builder.model.card import Answer
from builder.model.case import Case, Visit
from builder.model.fact import plain
from builder.model.judgement import Fired, OptionJudgement, Reason, VisitJudgement
from builder.model.library import Content
from builder.model.reviewable import unsigned, unsigned_words
from builder.model.tables import Reference

WIDTH, MARGIN = 80, 12
IN_HOURS = 72
MOST_OPEN = 2
ANSWER_WORDS: dict[Answer, str] = {
    "ok": "OK as written",
    "change": "Only if changed",
    "not_yet": "Not yet",
    "barred": "Not here",
}
SESSION_WORDS = {"go_on": "Go on", "ask_first": "Ask first", "refer": "Stop and refer"}
SITE_WORDS = {
    "on": "on the injury",
    "adjacent": "beside the injury",
    "proximal": "above the injury",
    "distal": "below the injury",
    "remote": "elsewhere on the body",
}


def in_words(case: Case, judged: tuple[VisitJudgement, ...], content: Content) -> Iterator[str]:
    """The trace of one case, line by line, none wider than a terminal; last, what nobody has reviewed."""
    yield f"{case.title} ({case.id})"
    for visit, one in zip(case.visits, judged, strict=True):
        yield ""
        yield visit.title
        yield from _derived(visit, one, content)
        yield from _session(one, content)
        for label, options in (("Chosen", one.chosen), ("Wrong", one.wrong)):
            for option in options:
                yield from _option(label, option, content)
    if counted := unsigned(content):
        yield ""
        yield from wrap(f"Not yet reviewed by a clinician: {unsigned_words(counted)}.", WIDTH)


def _headed(label: str, text: str) -> list[str]:
    return wrap(text, WIDTH, initial_indent=f"  {label:<{MARGIN - 2}}", subsequent_indent=" " * MARGIN)


def _under(text: str) -> list[str]:
    return wrap(text, WIDTH, initial_indent=" " * MARGIN, subsequent_indent=" " * (MARGIN + 2))


def _derived(visit: Visit, judged: VisitJudgement, content: Content) -> Iterator[str]:
    words, phase = content.phases.phase_words, judged.phase
    yield from _headed("Phase", " or ".join(words[one] for one in phase.possible))
    if phase.possible != (visit.phase,):
        yield from _under(f"The case declares: {words[visit.phase]}.")
    yield from _reasons(phase.reasons, content)
    if phase.next_phase and phase.next_in_hours is not None:
        left = _span(phase.next_in_hours)
        yield from _under(f"By the calendar {words[phase.next_phase]} begins in {left}.")
    grades = " or ".join(content.severity.words[grade] for grade in judged.severity.possible)
    yield from _headed("Severity", grades)
    yield from _reasons(judged.severity.reasons, content)


def _reasons(reasons: Iterable[Reason], content: Content) -> Iterator[str]:
    for one in reasons:
        yield from _under(f"{one.text}{_cited(one.source, content)}")


def _session(judged: VisitJudgement, content: Content) -> Iterator[str]:
    session = judged.session
    urgency = f": {session.urgency.replace('_', ' ')}" if session.urgency else ""
    yield from _headed("Session", f"{SESSION_WORDS[session.answer]}{urgency}")
    for asked in session.ask:
        yield from _under(f"Ask: {asked.question}")
    for fired in session.rules:
        if fired.truth == "fires":
            yield from _rule(fired, content)
    if session.first_action is not None:
        yield from _under(f"At once: {_all(session.first_action.do)}")
        if session.first_action.avoid:
            yield from _under(f"Not now: {_all(session.first_action.avoid)}")
    yield from _headed("Aim", " or ".join(content.phases.aim_words[aim] for aim in judged.aims))


def _all(actions: Iterable[str]) -> str:
    return "; ".join(one.rstrip(".") for one in actions) + "."


def _option(label: str, option: OptionJudgement, content: Content) -> Iterator[str]:
    card = content.cards[option.card]
    answer = ANSWER_WORDS[option.answer]
    if option.at_worst != option.answer:
        answer += f", at worst {ANSWER_WORDS[option.at_worst].lower()}"
    aim = "" if option.serves_aim else "; does not serve today's aim"
    where = f", {SITE_WORDS[option.site]}" if card.kind == "technique" else ""
    yield from _headed(label, f"{card.name}{where}: {answer}{aim}")
    yield from _details(option, content)


def _details(option: OptionJudgement, content: Content) -> Iterator[str]:
    known = content.facts.written
    if written := [known[name].chip(value) for name, value in option.written.items() if name in known]:
        yield from _under(f"Written: {'; '.join(written)}")
    yield from _rules([one for one in option.rules if one.effect != "ok"], content)
    if option.change:
        yield from _under(f"Needed: {option.change}")
    for one in option.would_change:
        yield from _under(f"Would change it: {one.text} -> {ANSWER_WORDS[one.answer]}")
    if option.more_would:
        yield from _under("More changes of this size would do as much.")


def _rules(bearing: list[Fired], content: Content) -> Iterator[str]:
    """Each rule with its reason; of many that may apply, for want of a record, only the names."""
    maybe = [one for one in bearing if one.truth != "fires"]
    named = maybe if len(maybe) > MOST_OPEN else []
    for fired in bearing:
        if fired not in named:
            yield from _rule(fired, content)
    if named:
        yield from _under(f"May apply (not recorded): {', '.join(one.id for one in named)}")


def _rule(fired: Fired, content: Content) -> list[str]:
    lead = "The card" if fired.id.startswith("baseline.") else fired.id
    sure = "" if fired.truth == "fires" else ", if it applies (not recorded)"
    return _under(f"{lead}{sure}: {fired.why}{_cited(fired.source, content)}")


def _cited(sources: Iterable[str], content: Content) -> str:
    known = content.references.sources
    short = "; ".join(_brief(known[one]) if one in known else one for one in dict.fromkeys(sources))
    return f" [{short}]" if short else ""


def _brief(source: Reference) -> str:
    """Author and year; where there is no year, only the first words."""
    return source.short if source.year else re.split(r"[.,]", source.cite, maxsplit=1)[0]


def _span(hours: Decimal) -> str:
    return f"{plain(hours)} h" if hours <= IN_HOURS or hours % 24 else f"{plain(hours / 24)} days"
