"""A practice question in a lesson: what is asked, and folded away the answer with its reasons."""

from __future__ import annotations

import json

from builder.model.keyed import KeyedParts
from builder.model.question import AuthorQuestion
from builder.render.key_line import key_lines
from builder.render.maker import Maker

SCRIPT = "assets/lesson.js"


def question_part(made: Maker, question: AuthorQuestion) -> str:
    """The question as a part of a page; it can be read and unfolded without a script."""
    placed = made.placed[question.id]
    sources = made.course.content.references.sources
    cited = [sources[one].cite for one in question.source if one in sources]
    lines = key_lines(made.say, placed.question, placed.keyed, placed.reasons)
    scored = {"question": scored_by(placed.keyed), "policy": placed.policy}
    values = {"asked": placed.question, "lines": lines, "cited": cited, "scored": json.dumps(scored)}
    return made.fill("parts/question.html", values).strip()


def scored_by(held: KeyedParts) -> dict[str, object]:
    """What the script needs to score an answer, in the shape of the examples that both sides share."""
    if held.kind == "order":
        return {"kind": held.kind, "steps": held.right, "must": held.must}
    if held.kind == "match":
        return {"kind": held.kind, "pairs": held.pairs, "partners": held.partners}
    if held.kind == "panel":
        return {"kind": held.kind, "votes": held.votes}
    if held.within is not None:
        least, most = str(held.within.least), str(held.within.most)
        return {"kind": held.kind, "least": least, "most": most, "unit": held.within.unit}
    return {"kind": held.kind, "options": held.options, "right": held.right}
