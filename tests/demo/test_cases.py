"""The demonstration's cases reach over the whole field, and set the traps that a course has to set."""

from collections.abc import Iterator

import pytest

from builder.judge.coverage import covered, nothing_shown
from builder.judge.judge import Judge
from builder.model.case import Case, Visit
from builder.model.judgement import Covered, VisitJudgement
from builder.model.library import Course
from tests.demo.built import opened

TRAPS = [
    ("peg_calf", "a", "go_on", "swelling still rising on day 3"),
    ("peg_calf", "b", "days", "and on day 5"),
    ("barrow_arm", "b", "days", "a firm lump at week 4"),
    ("puppet_calf", "a", "same_day", "a suspected clot after a journey"),
    ("lamp_heel", "a", "same_day", "a tendon rupture that can walk"),
    ("paste_shin", "a", "emergency", "a compartment syndrome with a pulse"),
    ("pump_thigh", "a", "go_on", "plain soreness"),
    ("pump_thigh", "b", "emergency", "muscle breakdown that looks like soreness"),
    ("sail_calf", "a", "go_on", "numb skin"),
    ("trumpet_shoulder", "a", "ask_first", "a history not recorded"),
    ("seller_calf", "between_shows", "ask_first", "a minor"),
    ("bell_shoulder", "a", "same_day", "a torn tendon"),
    ("bell_shoulder", "b", "go_on", "and the same client cleared in writing"),
]


def course() -> Course:
    """The demonstration, put together."""
    found = opened().course
    assert found is not None
    return found


def visits() -> Iterator[tuple[Case, Visit, VisitJudgement]]:
    """Every visit with its case and judgement."""
    for case in course().cases.values():
        for visit, judged in zip(case.visits, opened().judged[case.id], strict=True):
            yield case, visit, judged


def test_the_cases_reach_over_tissues_phases_severities_and_injuries() -> None:
    """At least twenty, none of the values left out, many with more than one visit, from neck to foot."""
    cases = list(course().cases.values())
    facts = course().content.facts.facts
    assert len(cases) >= 20
    assert {case.tissue.kind for case in cases} == set(facts["tissue"].words_of_values)
    assert {case.injury for case in cases} == set(facts["injury"].words_of_values)
    assert {case.severity for case in cases} == {None, "mild", "moderate", "severe"}
    assert {visit.phase for _, visit, _ in visits()} == set(facts["phase"].words_of_values)
    assert sum(len(case.visits) > 1 for case in cases) >= 10
    assert len({case.tissue.region for case in cases}) > 12


@pytest.mark.parametrize(("name", "day", "ends", "trap"), TRAPS, ids=[one[3] for one in TRAPS])
def test_the_trap_is_set(name: str, day: str, ends: str, trap: str) -> None:
    """The session of that visit ends as it must, and a wrong option stands beside the right ones."""
    assert trap
    (found,) = [
        judged for case, visit, judged in visits() if (case.id, visit.id) == (name, day) and judged.wrong
    ]
    session = found.session
    assert (session.urgency if session.answer == "refer" else session.answer) == ends


@pytest.mark.parametrize("card", ["cold_pack", "wrap_pad"])
def test_numb_skin_turns_cold_and_a_wrap_into_wrong_options(card: str) -> None:
    """They would be right for the phase; the skin that feels less is what bars them."""
    (day,) = [judged for case, visit, judged in visits() if (case.id, visit.id) == ("sail_calf", "a")]
    (option,) = [one for one in day.wrong if one.card == card]
    assert [one.id for one in option.rules if one.effect == "barred"] == ["numb_skin_temperature"]


def test_every_rule_decides_some_visit_and_every_stop_rule_has_a_near_miss() -> None:
    """Stop rules and all others, beyond the four in five that are wished for."""
    content = course().content
    shown = covered(Judge(content), course().cases, opened().judged, nothing_shown(content.rules))
    assert [one for one in shown if not one.decides] == []
    assert [one for one in shown if content.rules[one.rule].session and not one.near_miss] == []
    assert len(shown) == len(content.rules)


def test_without_the_practice_cases_most_rules_are_idle() -> None:
    """The new cases are what shows the rules: the tested ones alone leave most of them idle."""
    tested = {name: course().cases[name] for test in course().file.tests for name in test.cases}
    shown = covered(Judge(course().content), tested, opened().judged, nothing_shown(course().content.rules))
    idle: list[Covered] = [one for one in shown if not one.decides]
    assert len(idle) > len(shown) / 2


def test_a_case_is_practised_once_or_tested() -> None:
    """Every case has its place, in one practice set or in the pool, and never in two."""
    file = course().file
    placed = [name for one in file.practice for name in one.cases]
    placed += [name for one in file.tests for name in one.cases]
    assert sorted(placed) == sorted(course().cases)
