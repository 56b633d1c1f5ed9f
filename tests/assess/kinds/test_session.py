"""Go on, ask first, or stop and refer."""

from dataclasses import replace

import pytest

from builder.assess.kinds.session import questions
from builder.assess.question import Question
from builder.model.judgement import SessionJudgement
from tests.assess.sample import ASKED, REFERRED, judged_visit, material

GO_ON = judged_visit("v1").session


def asked(session: SessionJudgement) -> Question:
    """The one question a visit with this session yields."""
    (question,) = questions(material(session=session))
    return question


def right(question: Question) -> list[str]:
    """The titles of what is right."""
    return [question.shown.options[place].title for place in question.judged.right]


@pytest.mark.parametrize(
    ("session", "title"),
    [
        (GO_ON, "Go on with the session"),
        (ASKED, "Ask first, then decide"),
        (replace(REFERRED, urgency="days"), "Stop and refer, within days"),
        (replace(REFERRED, urgency="same_day"), "Stop and refer, the same day"),
        (REFERRED, "Stop and get emergency help"),
    ],
)
def test_one_answer_is_right(session: SessionJudgement, title: str) -> None:
    """Each answer of the session, and each urgency apart, is one of five options."""
    assert right(asked(session)) == [title]


def test_what_is_shown_does_not_depend_on_the_answer() -> None:
    """The same five options stand in the same order whatever is right."""
    assert asked(GO_ON).shown == asked(ASKED).shown == asked(REFERRED).shown


def test_a_referral_gives_the_reason_of_its_urgency() -> None:
    """The rules that decide speak, the milder ones do not."""
    said = asked(REFERRED).judged.said
    assert said[4].reason == "Why flag."
    assert said[4].mark == "refer"
    assert said[4].ground.rests_on == "Ryan JB et al, 1991 · single study · not yet reviewed by a clinician"
    assert said[0].reason == "The rules say: Stop and get emergency help."


def test_asking_names_the_questions() -> None:
    """Where something must be asked first, the reason is what to ask."""
    assert asked(ASKED).judged.said[1].reason == "Not recorded: May I?"


def test_a_referral_without_urgency_is_not_asked() -> None:
    """The options do not tell `not urgent` apart, so no question is made."""
    assert list(questions(material(session=replace(REFERRED, urgency="not_urgent")))) == []
