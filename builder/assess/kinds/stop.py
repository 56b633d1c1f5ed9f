"""What would end a session that goes on: one red flag among what changes nothing today."""

from __future__ import annotations

from collections.abc import Iterator

from builder.assess.beside import beside
from builder.assess.material import Material, Row, Text
from builder.assess.question import Choice, Ground, Question, Said
from builder.assess.reasons import ground_of, whys
from builder.assess.wording import say
from builder.model.judgement import Turn
from builder.model.rested import option_reviewed, session_reviewed

ENDING = ("same_day", "emergency")


def questions(material: Material) -> Iterator[Question]:
    """One question, where the session goes on and enough is known to change nothing of it."""
    content, turns = material.course.content, material.judged.turns
    ending = [one for one in turns if one.urgency in ENDING]
    idle = [one for one in turns if one.urgency is None]
    name = f"{material.case.id}/{material.visit.id}/stop"
    offered = beside(name, ending, idle, lambda one: _title(material, one))
    rows = [
        Row(Choice(_title(material, one)), one.urgency is not None, _said(material, one)) for one in offered
    ]
    if rows:
        yield material.question("stop", Text(say(content, "stem_stop"), say(content, "hint_one")), rows)


def _title(material: Material, turn: Turn) -> str:
    fact = material.course.content.facts.facts[turn.fact]
    return fact.label if fact.kind == "yes_no" else f"{fact.label}: {fact.in_words(turn.value)}"


def _said(material: Material, turn: Turn) -> Said:
    course, content, judged = material.course, material.course.content, material.judged
    if turn.urgency is None:
        reviewed = session_reviewed(content, judged) and all(
            option_reviewed(content, judged, one) for one in judged.chosen
        )
        found = turn.found
        reason = say(content, "stop_found" if found else "stop_nothing")
        return Said("ok", say(content, "word_goes_on"), reason, Ground(reviewed=reviewed))
    decided = [one for one in turn.rules if one.effect == turn.urgency]
    ground = ground_of(course, decided, decided, reviewed=all(one.reviewed for one in decided))
    return Said("refer", say(content, f"answer_{turn.urgency}"), whys(decided), ground)
