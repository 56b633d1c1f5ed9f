"""What to do with the session: go on, ask first, or stop and refer, and how soon."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from builder.assess.material import Material, Row, Text
from builder.assess.question import Choice, Ground, Question, Said
from builder.assess.reasons import ground_of, unknown, whys
from builder.assess.wording import say
from builder.model.practice import Mark
from builder.model.rested import session_reviewed

ANSWERS = ("go_on", "ask_first", "days", "same_day", "emergency")


def questions(material: Material) -> Iterator[Question]:
    """One question, unless the referral is one without urgency, which these answers do not tell apart."""
    content, session = material.course.content, material.judged.session
    right = session.urgency if session.answer == "refer" else session.answer
    if right not in ANSWERS:
        return
    reason, ground = _reason(material)
    words = {answer: say(content, f"answer_{answer}") for answer in ANSWERS}
    other = say(content, "session_is", answer=words[right])
    brief = replace(ground, rests_on="", contested="")
    rows = []
    for answer in ANSWERS:
        mark: Mark = "wrong" if answer != right else "refer" if session.answer == "refer" else "right"
        told, rests = (reason, ground) if answer == right else (other, brief)
        said = Said(mark, say(content, f"word_{mark}"), told, rests)
        rows.append(Row(Choice(words[answer]), answer == right, said))
    yield material.ordered("session", Text(say(content, "stem_session"), say(content, "hint_one")), rows)


def _reason(material: Material) -> tuple[str, Ground]:
    course, session = material.course, material.judged.session
    fired = [one for one in session.rules if one.truth == "fires" and one.effect == session.urgency]
    waiting = [one for one in session.rules if one.truth == "open"] if session.answer == "ask_first" else []
    reviewed = session_reviewed(course.content, material.judged)
    ground = ground_of(course, fired or waiting, fired or waiting, reviewed=reviewed)
    if session.answer == "refer":
        return whys(fired), ground
    if session.answer == "ask_first":
        return unknown(course, session.ask), ground
    return say(course.content, "go_on_because"), ground
