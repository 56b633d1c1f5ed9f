"""In what order the chosen strokes follow each other, the mildest first; asked as it is taught here."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from builder.assess.material import Material, Row, Text
from builder.assess.question import Choice, Question
from builder.assess.reasons import said_of_option
from builder.assess.wording import say
from builder.model.judgement import OptionJudgement

LEAST_TESTED, LEAST = 3, 2


def questions(material: Material) -> Iterator[Question]:
    """One question, where enough of what is right today has a place in the order of strokes.

    Two strokes are enough to practise on; in a test they would be as good as a guess. What is contested in a
    test needs the course's own position, for the order is taught and not proven.
    """
    steps = _steps(material)
    least = LEAST_TESTED if material.alone else LEAST
    if len(steps) >= least and (not material.alone or _settled(material, steps)):
        rows = [_row(material, place, one) for place, one in enumerate(steps, start=1)]
        content = material.course.content
        text = Text(say(content, "stem_order"), say(content, "hint_order"), "order")
        yield material.steps("order", text, rows)


def _steps(material: Material) -> list[OptionJudgement]:
    """The strokes in their order; none where one is wrong today, or two have the same place."""
    cards, chosen = material.course.content.cards, material.judged.chosen
    placed = [(order, one) for one in chosen if (order := cards[one.card].order) is not None]
    apart = len({order for order, _ in placed}) == len(placed)
    right = all(one.right for _, one in placed)
    return [one for _, one in sorted(placed, key=lambda pair: pair[0])] if apart and right else []


def _settled(material: Material, steps: list[OptionJudgement]) -> bool:
    points = {rule.contested.point for one in steps for rule in one.rules if rule.contested}
    return points <= material.course.file.positions.keys()


def _row(material: Material, place: int, step: OptionJudgement) -> Row:
    content = material.course.content
    said = said_of_option(material.course, step, material.judged)
    word = say(content, "word_place", n=str(place))
    return Row(
        Choice(content.cards[step.card].name),
        right=True,
        said=replace(said, mark="right", word=word, would_change=()),
    )
