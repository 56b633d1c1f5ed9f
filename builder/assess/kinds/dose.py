"""How much of a chosen technique: the dose as written among doses that would have to be changed."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal

from builder.assess.material import Material, Row, Text
from builder.assess.question import Choice, Question, Said
from builder.assess.reasons import ground_of, said_of_option
from builder.assess.scene import choice_of
from builder.assess.wording import say
from builder.model.case import CaseOption
from builder.model.judgement import DoseJudgement

LEAST_WRONG = 2


def questions(material: Material) -> Iterator[Question]:
    """One question for each dose of a right technique that has at least two doses to be changed.

    Other doses that are as right as the written one are not offered beside it. In a test the doses do not
    rise, since the right one is often the least.
    """
    for dose in material.judged.doses:
        option = material.visit.chosen[dose.chosen]
        technique = material.course.content.cards[option.card].kind == "technique"
        wrong = [value for value, answer in dose.answers.items() if answer == "change"]
        right = material.judged.chosen[dose.chosen].right and dose.answers.get(dose.written) == "ok"
        if technique and right and len(wrong) >= LEAST_WRONG:
            yield _question(material, option, dose, sorted([dose.written, *wrong]))


def _question(material: Material, option: CaseOption, dose: DoseJudgement, values: list[Decimal]) -> Question:
    content = material.course.content
    fact = content.facts.written[dose.attribute]
    rows = [
        Row(Choice(fact.in_words(value)), value == dose.written, _said(material, dose, value))
        for value in values
    ]
    rest = {name: value for name, value in option.written.items() if name != dose.attribute}
    chips = "; ".join(choice_of(content, option.model_copy(update={"written": rest})).chips)
    text = Text(
        say(content, "stem_dose", card=content.cards[option.card].name, attribute=fact.label.lower()),
        say(content, "hint_dose", chips=chips),
    )
    lay = material.question if material.alone else material.ordered
    return lay("dose", text, rows, f"{option.card}.{option.site}.{dose.attribute}")


def _said(material: Material, dose: DoseJudgement, value: Decimal) -> Said:
    course = material.course
    chosen = material.judged.chosen[dose.chosen]
    right = said_of_option(course, chosen, material.judged)
    if value == dose.written:
        return replace(right, would_change=())
    fact = course.content.facts.written[dose.attribute]
    accepted = [fact.in_words(one) for one, answer in dose.answers.items() if answer == "ok"]
    return Said(
        mark="change",
        word=say(course.content, "word_change"),
        reason=say(course.content, "dose_is", doses=", ".join(accepted)),
        ground=ground_of(course, chosen.rules, ()),
    )
