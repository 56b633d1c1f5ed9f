"""Which of the author's options to choose, each meant exactly as written."""

from __future__ import annotations

from collections.abc import Iterator

from builder.assess.material import Material, Row, Text
from builder.assess.question import Question
from builder.assess.reasons import said_of_option
from builder.assess.scene import choice_of
from builder.assess.wording import say


def questions(material: Material) -> Iterator[Question]:
    """One question: one answer where the author chose one option, else as many as the reader would do."""
    course, visit, judged = material.course, material.visit, material.judged
    written = (*visit.chosen, *visit.wrong)
    rows = [
        Row(choice_of(course.content, option), said.right, said_of_option(course, said, judged))
        for option, said in zip(written, (*judged.chosen, *judged.wrong), strict=True)
    ]
    one = len(visit.chosen) == 1
    text = Text(
        say(course.content, "stem_option" if one else "stem_options"),
        say(course.content, "hint_option" if one else "hint_options"),
        "one" if one else "many",
    )
    question = material.question("option", text, rows)
    if len(question.shown.options) > 1:
        yield question
