"""How much of a chosen technique: the most, or the least, that the rules still accept."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal

from builder.assess.material import Material, Row, Text
from builder.assess.question import Choice, Ground, Question, Said
from builder.assess.reasons import ground_of, said_of_option
from builder.assess.scene import choice_of
from builder.assess.wording import say
from builder.model.case import CaseOption
from builder.model.fact import Fact
from builder.model.judgement import DoseJudgement
from builder.model.library import Content
from builder.model.rested import option_reviewed

LEAST_WRONG = 2


def questions(material: Material) -> Iterator[Question]:
    """One question for each ladder of a right technique that has a dose to be changed and two wrong ones.

    Where more is the dangerous way the right dose is the most that is accepted, where less is it is the
    least; smaller doses stand beside it, so its place tells nothing. Where both ways are, it is the written
    one among doses to be changed.
    """
    for dose in material.judged.doses:
        option = material.visit.chosen[dose.chosen]
        technique = material.course.content.cards[option.card].kind == "technique"
        right = material.judged.chosen[dose.chosen].right and dose.answers.get(dose.written) == "ok"
        if technique and right:
            fact = material.course.content.facts.written[dose.attribute]
            offered = _offered(dose, fact, material.course.content.cards[option.card].ladder[dose.attribute])
            sorts = {dose.answers[value] for value in offered}
            if sorts >= {"ok", "change"} and len(offered) > LEAST_WRONG:
                yield _question(material, option, dose, offered)


def _offered(dose: DoseJudgement, fact: Fact, ladder: tuple[Decimal, ...]) -> list[Decimal]:
    """The doses to choose from, rising; those of the ladder, none that is barred outright."""
    both = fact.worse_when not in ("higher", "lower")
    answers = {"change"} if both else {"change", "ok"}
    held = {value for value in ladder if dose.answers.get(value) in answers}
    return sorted(held | {dose.written} if both else held)


def _right(dose: DoseJudgement, fact: Fact, offered: list[Decimal]) -> Decimal:
    if fact.worse_when not in ("higher", "lower"):
        return dose.written
    accepted = [value for value in offered if dose.answers[value] == "ok"]
    return max(accepted) if fact.worse_when == "higher" else min(accepted)


def _question(material: Material, option: CaseOption, dose: DoseJudgement, values: list[Decimal]) -> Question:
    content = material.course.content
    fact = content.facts.written[dose.attribute]
    right = _right(dose, fact, values)
    rows = [
        Row(Choice(fact.in_words(value)), value == right, _said(material, dose, value, right))
        for value in values
    ]
    rest = {name: value for name, value in option.written.items() if name != dose.attribute}
    chips = "; ".join(choice_of(content, option.model_copy(update={"written": rest})).chips)
    text = Text(_stem(content, content.cards[option.card].name, fact), say(content, "hint_dose", chips=chips))
    return material.ordered("dose", text, rows, f"{option.card}.{option.site}.{dose.attribute}")


def _stem(content: Content, card: str, fact: Fact) -> str:
    if fact.worse_when == "higher":
        return say(content, "stem_dose_most", card=card, attribute=fact.in_sentence)
    if fact.worse_when == "lower":
        return say(content, "stem_dose_least", card=card, attribute=fact.in_sentence)
    return say(content, "stem_dose", card=card, attribute=fact.in_sentence)


def _said(material: Material, dose: DoseJudgement, value: Decimal, right: Decimal) -> Said:
    course = material.course
    chosen = material.judged.chosen[dose.chosen]
    reviewed = option_reviewed(course.content, material.judged, chosen)
    if value == right:
        return replace(said_of_option(course, chosen, material.judged), would_change=())
    fact = course.content.facts.written[dose.attribute]
    accepted = [fact.in_words(one) for one, answer in sorted(dose.answers.items()) if answer == "ok"]
    if dose.answers[value] == "ok":
        told = say(course.content, "dose_allowed", dose=fact.in_words(right))
        return Said("ok", say(course.content, "word_allowed"), told, Ground(reviewed=reviewed))
    return Said(
        mark="change",
        word=say(course.content, "word_change"),
        reason=say(course.content, "dose_is", doses=", ".join(accepted)),
        ground=ground_of(course, chosen.rules, (), reviewed=reviewed),
    )
