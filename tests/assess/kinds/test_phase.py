"""Which phase of healing."""

from dataclasses import replace

import pytest

from builder.assess.kinds.phase import questions
from builder.model.card import PHASES, Phase
from builder.model.judgement import PhaseJudgement, Reason
from tests.assess.sample import ASKED, REFERRED, material
from tests.model.signed import signed_but


def phase(*possible: Phase) -> PhaseJudgement:
    """A phase judgement with one reason."""
    return PhaseJudgement(possible, (Reason("Because of the calendar.", (), ("ryan",)),))


@pytest.mark.parametrize("one", PHASES[:4])
def test_the_sure_phase_is_right(one: Phase) -> None:
    """All five answers are offered in order of healing; the judged one is right."""
    (asked,) = questions(material(phase=phase(one)))
    assert [choice.title for choice in asked.shown.options][:2] == ["acute", "early"]
    assert len(asked.shown.options) == len(PHASES)
    assert asked.judged.right == (PHASES.index(one),)


def test_the_reason_is_what_time_and_signs_say() -> None:
    """The right answer has the judge's reasons and sources, a wrong one names the right one."""
    (asked,) = questions(material(phase=phase("acute")))
    assert asked.judged.said[0].reason == "Because of the calendar."
    assert asked.judged.said[0].ground.rests_on.startswith("Ryan JB et al, 1991")
    assert asked.judged.said[1].reason == "Time and signs give: acute."


def test_an_open_phase_is_not_asked() -> None:
    """Where signs are not recorded and two phases are possible, nobody can know."""
    assert list(questions(material(phase=phase("acute", "early_repair")))) == []


def test_no_phase_is_not_asked() -> None:
    """Where phase does not apply, it is not asked."""
    assert list(questions(material(phase=phase("none")))) == []


@pytest.mark.parametrize("session", [ASKED, REFERRED])
def test_a_session_that_stops_is_not_asked_for_its_phase(session: object) -> None:
    """Phase is asked only where the session goes on."""
    assert list(questions(material(phase=phase("acute"), session=session))) == []


def test_once_signed_no_phase_says_otherwise() -> None:
    """With the phases signed every option is reviewed, right or wrong; without them none is."""
    plain = material()
    signed = replace(plain, course=replace(plain.course, content=signed_but(plain.course.content)))
    (before,), (after,) = questions(plain), questions(signed)
    assert not any(one.ground.reviewed for one in before.judged.said)
    assert all(one.ground.reviewed for one in after.judged.said)
    told = [one.ground.rests_on for one in after.judged.said if one.mark == "right"]
    assert told == ["Ryan JB et al, 1991"]
