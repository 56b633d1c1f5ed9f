"""Which phase of healing the visit is in; asked only where the session goes on and one phase is sure."""

from __future__ import annotations

from collections.abc import Iterator

from builder.assess.material import Material, Row, Text
from builder.assess.question import Choice, Ground, Question, Said
from builder.assess.reasons import rests_on
from builder.assess.wording import citations, say
from builder.model.card import PHASES
from builder.model.practice import Mark
from builder.model.rested import phase_reviewed


def questions(material: Material) -> Iterator[Question]:
    """One question, where phase applies and time and signs leave one."""
    content, judged = material.course.content, material.judged
    if judged.session.answer != "go_on" or len(judged.phase.possible) != 1 or "none" in judged.phase.possible:
        return
    right = judged.phase.possible[0]
    reason = " ".join(one.text for one in judged.phase.reasons)
    sources = citations(content, (source for one in judged.phase.reasons for source in one.source))
    reviewed = phase_reviewed(content, judged)
    ground = Ground(rests_on(material.course, [sources], reviewed=reviewed), reviewed=reviewed)
    words = content.phases.phase_words
    other = say(content, "phase_is", phase=words[right])
    rows = []
    for phase in PHASES:
        mark: Mark = "right" if phase == right else "wrong"
        told, rests = (reason, ground) if phase == right else (other, Ground(reviewed=reviewed))
        said = Said(mark, say(content, f"word_{mark}"), told, rests)
        rows.append(Row(Choice(words[phase]), phase == right, said))
    yield material.ordered("phase", Text(say(content, "stem_phase"), say(content, "hint_one")), rows)
