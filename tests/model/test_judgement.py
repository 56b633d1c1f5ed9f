"""Judgements: plain values, equal where they say the same."""

from dataclasses import replace

from builder.judge.judge import Judge
from tests.judge.small import case, content


def test_the_same_visit_is_judged_the_same() -> None:
    """Two judges of one content give equal judgements, word for word."""
    bruise = case({"chosen": [{"card": "cold", "written": {"minutes": 15, "barrier": "yes"}}]})
    assert Judge(content()).case(bruise) == Judge(content()).case(bruise)


def test_judgements_that_say_something_else_differ() -> None:
    """One changed word is a changed judgement, and the old one stays as it was."""
    (judged,) = Judge(content()).case(case({}))
    other = replace(judged, phase=replace(judged.phase, possible=("none",)))
    assert other != judged
    assert judged.phase.possible == ("acute",)
