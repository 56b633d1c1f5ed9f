"""The trace of a judgement in words, as a terminal shows it."""

import pytest

from builder.judge.trace import WIDTH, in_words
from tests.demo.built import opened
from tests.judge.test_explain import BRUISE, JUDGE
from tests.model.signed import signed_but

LINES = list(in_words(BRUISE, JUDGE.case(BRUISE), JUDGE.content))


@pytest.mark.parametrize(
    "line",
    [
        "A bruise (bruise)",
        "  Phase     acute",
        "            By the calendar early repair begins in 54 h.",
        "  Severity  moderate",
        "  Session   Go on",
        "  Session   Stop and refer: emergency",
        "            head: Why head. [Own default]",
        "            At once: Call for help.",
        "            Not now: Wait.",
        "  Chosen    Cold, on the injury: OK as written, at worst not here",
        "            numb, if it applies (not recorded): Why numb. [Own default]",
        "  Wrong     Stroke, on the injury: Not here; does not serve today's aim",
    ],
)
def test_the_trace_in_words(line: str) -> None:
    """Phase, severity, session with what to do at once, and each option with what bears on it."""
    assert line in LINES


def test_no_line_is_wider_than_a_terminal() -> None:
    """Every case of the demonstration; what goes on is set in."""
    course = opened().course
    assert course is not None
    for name, judged in opened().judged.items():
        lines = list(in_words(course.cases[name], judged, course.content))
        assert [line for line in lines if len(line) > WIDTH] == []


def test_an_option_says_how_it_is_written() -> None:
    """Two options with one card are told apart by dose."""
    course = opened().course
    assert course is not None
    lines = list(in_words(course.cases["unicycle_thigh"], opened().judged["unicycle_thigh"], course.content))
    at = lines.index("  Chosen    Cold pack, on the injury: OK as written")
    assert lines[at + 1] == "            Written: time 20 min; cloth between; pause 40 min"
    assert any(line.startswith("            Would change it: ") for line in lines)
    assert "  Aim       limit the injury" in lines


def test_many_rules_that_may_apply_are_only_named() -> None:
    """Where a whole history is not recorded, their reasons would hide the answer."""
    course = opened().course
    assert course is not None
    lines = list(in_words(course.cases["ring_thigh"], opened().judged["ring_thigh"], course.content))
    assert any("May apply (not recorded): bone_forming_lump," in line for line in lines)
    assert not any("if it applies" in line for line in lines)


def test_what_nobody_reviewed_is_said_last() -> None:
    """By number, until all of it is signed."""
    text = " ".join(LINES[-2:])
    assert "Not yet reviewed by a clinician: " in text
    signed = signed_but(JUDGE.content)
    assert not any("reviewed" in line for line in in_words(BRUISE, JUDGE.case(BRUISE), signed))
