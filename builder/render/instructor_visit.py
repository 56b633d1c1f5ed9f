"""One visit as its key: phase, session and options, each answer with the rules behind it."""

from __future__ import annotations

from dataclasses import dataclass

from builder.doors.page import markup
from builder.model.card import ANSWERS
from builder.model.case import Case, CaseOption, Visit
from builder.model.judgement import (
    DoseJudgement,
    OptionJudgement,
    SessionJudgement,
    VisitJudgement,
)
from builder.model.rested import phase_reviewed, severity_reviewed
from builder.model.rule import URGENCIES
from builder.model.span import exact_span
from builder.render.draw.pattern import swatch
from builder.render.instructor_found import consented, found, screened, when_line
from builder.render.instructor_said import OptionRow, deciding, option_row, reason_rows, rule_row
from builder.render.maker import Maker

SHAPES = {"go_on": "ok", "ask_first": "ask", "refer": "refer"}


@dataclass(frozen=True)
class Usual:
    """The cards of the library that get one answer at their usual dose."""

    mark: str
    word: str
    cards: list[str]


def visit_key(made: Maker, at: str, case: Case, visit: Visit, judged: VisitJudgement) -> dict[str, object]:
    """What the page of a case says of one visit."""
    content = made.course.content
    return {
        "id": visit.id,
        "title": visit.title,
        "when": when_line(made, visit),
        "story": visit.story or "",
        "found": [*found(made, case, visit), *consented(made, visit), *screened(made, visit)],
        "phase": _phase(made, at, visit, judged),
        "grades": [content.severity.words[one] for one in judged.severity.possible],
        "graded": reason_rows(
            made, at, judged.severity.reasons, reviewed=severity_reviewed(content, judged.severity)
        ),
        "session": _session(made, at, judged.session),
        "aims": [content.phases.aim_words.get(one, one) for one in judged.aims],
        "chosen": _options(made, at, visit.chosen, judged.chosen, judged),
        "wrong": _options(made, at, visit.wrong, judged.wrong, judged),
        "doses": _doses(made, judged),
        "usual": _usual(made, judged),
        "before": _before(made, judged),
        "ending": _ending(made, judged),
        "next": visit.next or "",
    }


def _phase(made: Maker, at: str, visit: Visit, judged: VisitJudgement) -> dict[str, object]:
    phase, content = judged.phase, made.course.content
    words = content.phases.phase_words
    later = ""
    if phase.next_phase and phase.next_in_hours is not None:
        later = made.say(
            "i_next_phase",
            phase=words[phase.next_phase],
            span=exact_span(content.words, phase.next_in_hours),
        )
    return {
        "shown": [(words[one], markup(swatch(one, f"{visit.id}-phase"))) for one in phase.possible],
        "declared": "" if phase.possible == (visit.phase,) else words[visit.phase],
        "reasons": reason_rows(made, at, phase.reasons, reviewed=phase_reviewed(content, judged)),
        "next": later,
    }


def _session(made: Maker, at: str, session: SessionJudgement) -> dict[str, object]:
    urgency = made.say(f"urgency_{session.urgency}") if session.urgency else ""
    first = session.first_action
    return {
        "mark": SHAPES[session.answer],
        "word": made.say(f"i_session_{session.answer}"),
        "urgency": urgency,
        "ask": [one.question for one in session.ask],
        "rules": [rule_row(made, at, one) for one in session.rules],
        "do": first.do if first else (),
        "avoid": first.avoid if first else (),
    }


def _options(
    made: Maker,
    at: str,
    written: tuple[CaseOption, ...],
    judged: tuple[OptionJudgement, ...],
    visit: VisitJudgement,
) -> list[OptionRow]:
    return [option_row(made, at, one, said, visit) for one, said in zip(written, judged, strict=True)]


def _doses(made: Maker, judged: VisitJudgement) -> list[dict[str, object]]:
    return [_dose(made, judged, dose) for dose in judged.doses]


def _dose(made: Maker, judged: VisitJudgement, dose: DoseJudgement) -> dict[str, object]:
    content = made.course.content
    card, fact = content.cards[judged.chosen[dose.chosen].card], content.facts.written[dose.attribute]
    answers = [(fact.in_words(one), answer, one == dose.written) for one, answer in dose.answers.items()]
    return {"title": f"{card.name} · {fact.label}", "answers": answers}


def _usual(made: Maker, judged: VisitJudgement) -> list[Usual]:
    """Every card of the library by its answer at worst, those that serve today's aim first."""
    cards, groups = made.course.content.cards, dict[tuple[str, str], list[str]]()
    for name, one in sorted(judged.cards.items(), key=lambda pair: cards[pair[0]].name):
        sign = deciding(made, one, judged)
        groups.setdefault(sign, []).append(cards[name].name)
    order = ("refer", *ANSWERS[:1], "wrong", *ANSWERS[1:])
    rows = [Usual(mark, word, names) for (mark, word), names in groups.items()]
    return sorted(rows, key=lambda row: order.index(row.mark))


def _before(made: Maker, judged: VisitJudgement) -> list[tuple[str, list[str]]]:
    """For each chosen technique, the history that must be known before it."""
    content = made.course.content
    asked: dict[int, list[str]] = {}
    for one in judged.doubts:
        if one.chosen is not None and one.matters:
            asked.setdefault(one.chosen, []).append(content.facts.facts[one.fact].label)
    return [(content.cards[judged.chosen[place].card].name, labels) for place, labels in asked.items()]


def _ending(made: Maker, judged: VisitJudgement) -> list[tuple[str, list[str]]]:
    """What would send this client on if it came up now, the most urgent first."""
    facts = made.course.content.facts.facts
    groups = {
        urgency: [facts[one.fact].label for one in judged.turns if one.urgency == urgency]
        for urgency in reversed(URGENCIES)
    }
    return [(made.say(f"urgency_{urgency}"), labels) for urgency, labels in groups.items() if labels]
