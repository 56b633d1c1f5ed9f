"""Practice questions as lessons place them: as shown, what is right, and what is told of every part."""

from __future__ import annotations

from builder.assess.keyed import keyed_parts, said_by_name
from builder.assess.laying import Laid, laid_out
from builder.assess.opaque import Opaque
from builder.assess.practice import OPEN_TO_ALL
from builder.assess.written import written_question
from builder.model.library import Course
from builder.model.policy import USUAL
from builder.model.practice import PlacedQuestion


def placed_questions(course: Course) -> dict[str, PlacedQuestion]:
    """Every author-written question for practice, by the name its author gave it."""
    ours = {name: one for name, one in course.questions.items() if one.use == "practice"}
    made = [written_question(course, one) for one in ours.values()]
    laid = laid_out([one.shown for one in made], Opaque(OPEN_TO_ALL, "lessons"))
    placed = {}
    for name, question, each in zip(ours, made, laid, strict=True):
        parts = keyed_parts(each, question.judged)
        placed[name] = PlacedQuestion(
            question=_not_as_it_is_right(each, parts.right).question,
            keyed=parts,
            policy=USUAL[parts.kind],
            reasons={one: said.reason for one, said in said_by_name(each, question.judged).items()},
        )
    return placed


def _not_as_it_is_right(laid: Laid, right: tuple[str, ...]) -> Laid:
    """Steps that were drawn in their right order are shown with the last one first: practice has to ask."""
    asked = laid.question
    if asked.kind != "order" or tuple(one.id for one in asked.options) != right:
        return laid
    turned = (*asked.options[-1:], *asked.options[:-1])
    return Laid(laid.shown, asked.model_copy(update={"options": turned}), laid.ids, laid.partners)
