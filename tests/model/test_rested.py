"""What a judgement rests on is reviewed only when every part of it is."""

from functools import cache

import pytest

from builder.judge.judge import Judge
from builder.model.judgement import OptionJudgement, VisitJudgement
from builder.model.library import Content
from builder.model.rested import (
    deciding,
    option_reviewed,
    phase_reviewed,
    session_reviewed,
    severity_reviewed,
    visit_reviewed,
)
from builder.model.reviewable import reviewable
from tests.demo.built import opened
from tests.model.signed import signed_but


@cache
def signed(*left_out: str) -> Content:
    """The shipped content with all of it signed but what is left out."""
    course = opened().course
    assert course is not None
    return signed_but(course.content, *left_out)


@cache
def judged(case: str, *left_out: str) -> tuple[VisitJudgement, ...]:
    """A case of the demonstration, judged by signed content."""
    course = opened().course
    assert course is not None
    return Judge(signed(*left_out)).case(course.cases[case])


def each(case: str, *left_out: str) -> VisitJudgement:
    """The first visit of a case."""
    return judged(case, *left_out)[0]


def graded() -> str:
    """A case whose first visit goes on, in one phase, graded by a table."""
    for name, (first, *_) in opened().judged.items():
        if first.session.answer == "go_on" and first.severity.table and first.phase.possible != ("none",):
            return name
    raise LookupError


def refers(urgency: str) -> tuple[str, str]:
    """A case whose first visit is referred by a single rule, and that rule."""
    for name, (first, *_) in opened().judged.items():
        rules = [one.id for one in first.session.rules if one.effect == first.session.urgency == urgency]
        if len(rules) == 1:
            return name, rules[0]
    raise LookupError


def right(visit: VisitJudgement) -> OptionJudgement:
    """A right option."""
    return next(one for one in visit.chosen if one.right)


def test_all_signed_is_all_reviewed() -> None:
    """Every visit of the demonstration, with all that is said of it."""
    for name in opened().judged:
        assert all(visit_reviewed(signed(), one) for one in judged(name)), name


@pytest.mark.parametrize("left_out", ["phases/all", "table"])
def test_a_phase_rests_on_the_clocks_and_on_the_table_that_graded(left_out: str) -> None:
    """Without either it is not reviewed, nor is a right option of a visit that goes on."""
    name = graded()
    table = f"severity/{each(name).severity.table}"
    missing = table if left_out == "table" else left_out
    visit = each(name, missing)
    assert phase_reviewed(signed(), each(name))
    assert not phase_reviewed(signed(missing), visit)
    assert not option_reviewed(signed(missing), visit, right(visit))
    assert not visit_reviewed(signed(missing), visit)
    assert severity_reviewed(signed(missing), visit.severity) == (left_out != "table")


def test_another_table_is_no_matter() -> None:
    """A phase does not wait for a table that did not grade, nor for a list that is only taught."""
    name = graded()
    others = set(reviewable(signed())["severity"]) - {each(name).severity.table or ""}
    missing = (*(f"severity/{one}" for one in sorted(others)), "background/clot_score")
    visit = each(name, *missing)
    assert phase_reviewed(signed(*missing), visit)
    assert option_reviewed(signed(*missing), visit, right(visit))


def test_to_go_on_rests_on_every_rule_that_might_have_stopped_it() -> None:
    """One stop rule that nobody signed, or the rule about consent, is enough."""
    for rule in ("rules/chest_signs", "rules/no_consent"):
        assert not session_reviewed(signed(rule), each(graded(), rule))
    assert session_reviewed(signed(), each(graded()))


def test_a_referral_rests_on_the_rules_that_refer() -> None:
    """The one that fires, and no other."""
    name, rule = refers("emergency")
    other = "rules/chest_signs" if rule != "chest_signs" else "rules/fever_today"
    assert session_reviewed(signed(other), each(name, other))
    assert not session_reviewed(signed(f"rules/{rule}"), each(name, f"rules/{rule}"))


def test_what_bars_an_option_is_enough_for_its_answer() -> None:
    """A barred option rests on what bars it; OK rests on every rule about the card as well."""
    name = graded()
    rule = "rules/no_consent"
    visit = each(name, rule)
    assert not option_reviewed(signed(rule), visit, right(visit))
    for case, visits in opened().judged.items():
        for number, one in enumerate(visits):
            for place, option in enumerate(one.wrong):
                decided = {fired.id for fired in deciding(option)}
                if option.at_worst == "barred" and decided and decided <= set(signed().rules):
                    visit = judged(case, "phases/all")[number]
                    names = {"phase", "signs_behind", "severity"}
                    free = not any(
                        name in f"{signed().rules[rule].when}" for rule in decided for name in names
                    )
                    if free:
                        assert option_reviewed(signed("phases/all"), visit, visit.wrong[place])
                        return
    raise LookupError


def test_a_phase_that_does_not_apply_needs_no_grade() -> None:
    """Only the phases themselves are asked for."""
    name = next(name for name, (first, *_) in opened().judged.items() if first.phase.possible == ("none",))
    tables = tuple(f"severity/{one}" for one in reviewable(signed())["severity"])
    assert phase_reviewed(signed(*tables), each(name, *tables))
    assert not phase_reviewed(signed("phases/all"), each(name, "phases/all"))
