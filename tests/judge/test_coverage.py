"""What visits show of the rules: where one decides, and where it only just does not fire."""

from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from builder.judge.coverage import covered, is_near_miss, nothing_shown
from builder.judge.judge import Judge
from builder.judge.truth import compiled
from builder.model.card import ANSWERS
from builder.model.condition import parse
from builder.model.judgement import Covered
from tests.judge.laws import LENGTH, shipped_world
from tests.judge.small import RULES, case, content, rule

FEVER = {"screen": {"set": "short", "all_no_except": {"fever": "yes"}}}
NUMB = {"screen": {"set": "short", "all_no_except": {"numb_skin": "yes"}}}
COLD = {"wrong": [{"card": "cold", "written": {"minutes": 15, "barrier": "yes"}}]}
LATE = {"wrong": [{"card": "refer", "written": {"urgency": "days"}}]}
STROKE = {"wrong": [{"card": "stroke", "site": "proximal"}]}


def shown(*visits: dict[str, Any], more: tuple[dict[str, Any], ...] = ()) -> dict[str, Covered]:
    """What a case with these visits shows of each small rule and these more."""
    judge, one = Judge(content(rules=[*RULES, *more])), case(*visits)
    return {
        found.rule: found
        for found in covered(
            judge, {one.id: one}, {one.id: judge.case(one)}, nothing_shown(judge.content.rules)
        )
    }


def deciding(*visits: dict[str, Any], more: tuple[dict[str, Any], ...] = ()) -> set[str]:
    """The rules that decide one of these visits."""
    return {name for name, one in shown(*visits, more=more).items() if one.decides}


def test_every_rule_is_told_of_in_order() -> None:
    """Also those that no visit comes near; without a case no rule is shown."""
    assert list(shown({})) == [one["id"] for one in RULES]
    judge = Judge(content())
    names = [one["id"] for one in RULES]
    nothing = tuple(Covered(name, False, False) for name in names)
    assert covered(judge, {}, {}, nothing_shown(names)) == nothing


@pytest.mark.parametrize("before", [(True, True), (True, False), (False, True), (False, False)])
def test_what_was_shown_before_stays_shown(before: tuple[bool, bool]) -> None:
    """A visit with the flag decides and is no near miss; what other visits showed is kept."""
    judge, one = Judge(content()), case(FEVER)
    (shown_now,) = covered(judge, {one.id: one}, {one.id: judge.case(one)}, [Covered("fever", *before)])
    assert (shown_now.decides, shown_now.near_miss) == (True, before[1])


@pytest.mark.parametrize(
    ("visit", "decides"),
    [
        ({}, set()),
        (FEVER, {"fever"}),
        ({**FEVER, **LATE}, {"fever", "refer_soon_enough"}),
        ({**FEVER, **STROKE}, {"fever", "refer_ends"}),
        (NUMB, set()),
        ({**NUMB, **COLD}, {"numb"}),
        ({"consent": None}, {"no_consent"}),
        ({"consent": "no", **STROKE}, {"no_consent"}),
    ],
)
def test_a_rule_decides_where_its_lack_changes_an_answer(visit: dict[str, Any], decides: set[str]) -> None:
    """The session's answer or urgency, or what is said of an option; firing alone is not enough."""
    assert deciding(visit) == decides


def test_two_rules_for_the_same_thing_hide_each_other() -> None:
    """Where another rule would say as much, neither decides."""
    twin = rule("twin", {"fever": "yes"}, session={"urgency": "same_day"})
    assert deciding(FEVER, more=(twin,)) == set()


def test_a_more_urgent_rule_decides_over_a_milder_one() -> None:
    """Its lack changes how soon."""
    sooner = rule("sooner", {"fever": "yes"}, session={"urgency": "emergency"})
    assert deciding(FEVER, more=(sooner,)) == {"sooner"}


def test_one_visit_of_several_is_enough() -> None:
    """Whichever it is."""
    assert deciding({"id": "a"}, {"id": "b", "since_injury": "2 days", **FEVER}) == {"fever"}


def test_a_near_miss_is_one_fact_short() -> None:
    """A visit without the flag is one for a rule on the flag; a visit with it is none."""
    assert shown({})["fever"].near_miss
    assert not shown(FEVER)["fever"].near_miss


def nears(seen: dict[str, str]) -> bool:
    """Whether these facts come near a rule on a fever and rising swelling together."""
    when = {"fever": "yes", "swelling": "rising"}
    space = Judge(content(rules=[rule("both", when, session={"urgency": "days"})])).space
    return is_near_miss(parse(when), compiled(parse(when), space), space, space.state({**seen}))


@pytest.mark.parametrize(
    "seen", [{"fever": "no", "swelling": "rising"}, {"fever": "yes", "swelling": "none"}]
)
def test_one_fact_that_differs_is_near(seen: dict[str, str]) -> None:
    """Whichever of the two it is."""
    assert nears(seen)


@pytest.mark.parametrize(
    "seen",
    [
        {"fever": "yes", "swelling": "rising"},
        {"fever": "no", "swelling": "falling"},
        {"fever": "yes"},
        {"fever": "no"},
    ],
)
def test_nothing_else_is_near(seen: dict[str, str]) -> None:
    """Neither what fires, nor what is two facts off, nor what is not recorded."""
    assert not nears(seen)


def test_a_number_just_under_a_limit_is_a_near_miss() -> None:
    """Every cell of a number is tried, the gaps as well."""
    later = rule("later", {"hours": {"over": 96}, "fever": "yes"}, session={"urgency": "days"})
    assert shown({"since_injury": "30 h", **FEVER}, more=(later,))["later"].near_miss
    assert not shown({"since_injury": "30 h"}, more=(later,))["later"].near_miss


def test_options_without_a_rule_leave_the_others() -> None:
    """The rule bears on no card any more; the first judge still has it."""
    options = Judge(content()).options
    fewer = options.without("numb")
    assert "numb" in options.effects
    assert list(fewer.effects) == [name for name in options.effects if name != "numb"]


def test_the_rules_an_option_rests_on_are_told_by_its_reasons() -> None:
    """Whatever is recorded, an answer without a rule is the worst that the other reasons say."""
    made = shipped_world()
    options = made.judge.options
    fewer = {name: options.without(name) for name in options.effects}

    @settings(max_examples=60, deadline=None, suppress_health_check=list(HealthCheck))
    @given(st.binary(min_size=LENGTH, max_size=LENGTH))
    def run(drawn: bytes) -> None:
        client = made.client(drawn)
        frame = made.frame(client)
        for card in made.content.cards.values():
            here = frame, card, client.site, made.written(card, client)
            judged = options.judge(*here)
            for name in {one.id for one in judged.rules} & fewer.keys():
                others = [ANSWERS.index(one.effect) for one in judged.rules if one.id != name]
                assert fewer[name].answers(*here)[1] == ANSWERS[max(others, default=0)]

    run()
