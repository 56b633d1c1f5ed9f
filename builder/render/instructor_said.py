"""What the judge says, as rows of a page: each rule with its ground, each option with both answers."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from builder.model.card import Card
from builder.model.case import CaseOption
from builder.model.judgement import Fired, OptionJudgement, Reason, VisitJudgement
from builder.model.rule import URGENCIES
from builder.render.address import way
from builder.render.instructor_address import of_rule, of_source
from builder.render.maker import Maker
from builder.render.source import contested_text
from builder.render.wording import chip


@dataclass(frozen=True)
class Linked:
    """A word that leads somewhere."""

    text: str
    link: str


@dataclass(frozen=True)
class RuleRow:
    """One rule as it bears on an answer; `mark` is the shape of its effect, `sure` that it fires."""

    id: str
    title: Linked
    mark: str
    word: str
    sure: bool
    why: str
    strength: str
    sources: tuple[Linked, ...]
    contested: str
    reviewed: bool
    change: str


@dataclass(frozen=True)
class OptionRow:
    """One option as written: what decides, both answers, why, and what would change them."""

    title: str
    chips: tuple[str, ...]
    mark: str
    word: str
    right: bool
    serves: bool
    answer: str
    at_worst: str
    because: str
    change: str
    ask: tuple[str, ...]
    rules: tuple[RuleRow, ...]
    would_change: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class ReasonRow:
    """One step of a judgement in words, with its sources."""

    text: str
    sources: tuple[Linked, ...]
    reviewed: bool


def cited(made: Maker, at: str, sources: Iterable[str]) -> tuple[Linked, ...]:
    """The sources, shortly, each leading to its place in the list; an unknown one under its own name."""
    known = made.course.content.references.sources
    return tuple(
        Linked(known[one].short if one in known else one, way(at, of_source(one)))
        for one in dict.fromkeys(sources)
    )


def rule_row(made: Maker, at: str, fired: Fired) -> RuleRow:
    """One rule, cell or limit on the page `at`."""
    referring = fired.effect in URGENCIES
    word = made.say(f"urgency_{fired.effect}" if referring else f"answer_{fired.effect}")
    return RuleRow(
        id=fired.id,
        title=Linked(_title(made, fired), way(at, of_rule(fired.id))),
        mark="refer" if referring else fired.effect,
        word=word,
        sure=fired.truth == "fires",
        why=fired.why,
        strength=made.say(f"strength_{fired.strength}"),
        sources=cited(made, at, fired.source),
        contested=contested_text(made, fired.contested),
        reviewed=fired.reviewed,
        change=fired.change or "",
    )


def _title(made: Maker, fired: Fired) -> str:
    """A rule's title; a baseline bears its card's name, which stands above it already."""
    return made.say("i_baseline") if fired.id.startswith("baseline.") else fired.title


def reason_rows(made: Maker, at: str, reasons: Iterable[Reason], *, reviewed: bool) -> list[ReasonRow]:
    """The steps that led to a phase or a severity; whether a clinician has looked at what they rest on."""
    return [ReasonRow(one.text, cited(made, at, one.source), reviewed) for one in reasons]


def option_row(
    made: Maker, at: str, option: CaseOption, judged: OptionJudgement, visit: VisitJudgement
) -> OptionRow:
    """One option of a visit on the page `at`."""
    card = made.course.content.cards[option.card]
    mark, word = deciding(made, judged, visit)
    return OptionRow(
        title=card.name,
        chips=_chips(made, card, option),
        mark=mark,
        word=word,
        right=judged.right,
        serves=judged.serves_aim,
        answer=judged.answer,
        at_worst=judged.at_worst,
        because=option.because or "",
        change=judged.change or "",
        ask=tuple(one.question for one in judged.ask),
        rules=tuple(rule_row(made, at, one) for one in judged.rules),
        would_change=tuple((one.text, one.answer) for one in judged.would_change),
    )


def deciding(made: Maker, judged: OptionJudgement, visit: VisitJudgement) -> tuple[str, str]:
    """The shape and word that decide: the answer at worst, the referral, or that it misses today's aim."""
    if judged.right and visit.aims == ("refer",) and "urgency" in judged.written:
        return "refer", made.say("answer_refer")
    if judged.at_worst == "ok" and not judged.serves_aim:
        return "wrong", made.say("q_word_aim")
    return judged.at_worst, made.say(f"answer_{judged.at_worst}")


def _chips(made: Maker, card: Card, option: CaseOption) -> tuple[str, ...]:
    """How it is written, in the order of the facts file; the site of a technique is always said."""
    site = {"site": option.site} if card.kind == "technique" else {}
    written, declared = {**option.written, **site}, made.course.content.facts.written
    return tuple(chip(name, fact, written[name]) for name, fact in declared.items() if name in written)
