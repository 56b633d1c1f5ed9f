"""What may come up, and what must be asked: on the small rules, and on every visit of the demonstration."""

from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest

from builder.judge.frame import Frame
from builder.judge.judge import Judge, earlier_grade
from builder.judge.values import values_of
from builder.model.case import Case, Visit
from builder.model.fact import Value
from builder.model.judgement import Doubt, Turn, VisitJudgement
from tests.demo.built import opened
from tests.judge.small import FACTS, RULES, case, content, fact, rule

COLD = {"card": "cold", "written": {"minutes": 10, "barrier": "yes"}}
GOES_ON = {"chosen": [COLD], "findings": {"swelling": "falling"}}
CALM = fact("yes_no", "contraindication", "yes", label="Calm", question="Calm?")


def probed(visit: dict[str, Any], *more: dict[str, Any]) -> VisitJudgement:
    """One visit under the small rules and these more, with a fact that no rule reads."""
    made = content(rules=[*RULES, *more])
    calm = made.facts.model_copy(
        update={"facts": {**made.facts.facts, "calm": type(made.facts.facts["fever"]).model_validate(CALM)}}
    )
    judge, one = Judge(replace(made, facts=calm)), case(visit)
    (judged,) = judge.probed(one, judge.answered(one))
    return judged


def turns(judged: VisitJudgement) -> dict[str, Turn]:
    """What may come up, by its fact."""
    return {one.fact: one for one in judged.turns}


def test_a_flag_that_was_denied_would_refer() -> None:
    """It comes with the urgency and the rule that would send the client on."""
    turn = turns(probed(GOES_ON))["fever"]
    assert (turn.value, turn.urgency, [one.id for one in turn.rules]) == ("yes", "same_day", ["fever"])


def test_of_several_rules_the_most_urgent_tells() -> None:
    """Both speak, one decides."""
    turn = turns(probed(GOES_ON, rule("hot", {"fever": "yes"}, session={"urgency": "emergency"})))["fever"]
    assert (turn.urgency, {one.id for one in turn.rules}) == ("emergency", {"fever", "hot"})


def test_what_no_rule_reads_changes_nothing() -> None:
    """It is told as such; what bears on a chosen option is not told at all."""
    found = turns(probed(GOES_ON))
    assert (found["calm"].urgency, found["calm"].found) == (None, False)
    assert "numb_skin" not in found
    assert "numb_skin" in turns(probed({**GOES_ON, "chosen": [{"card": "protect"}]}))


def test_what_is_there_today_is_expected_unless_it_is_at_its_worst_or_gone() -> None:
    """Swelling that falls; not swelling that rises, and none that is not there."""
    assert turns(probed(GOES_ON))["swelling"] == Turn("swelling", "falling", found=True)
    for end in ("none", "rising"):
        assert "swelling" not in turns(probed({**GOES_ON, "findings": {"swelling": end}}))


@pytest.mark.parametrize(
    "visit", [{"consent": None}, {"screen": {"set": "short", "all_no_except": {"fever": "yes"}}}]
)
def test_nothing_comes_up_where_the_session_does_not_go_on(visit: dict[str, Any]) -> None:
    """Asked about or referred, there is no work that could be ended."""
    assert probed({**GOES_ON, **visit}).turns == ()


def test_a_technique_waits_for_what_could_bar_it() -> None:
    """Numb skin bars cold, so it is asked before; what no rule on cold reads is not."""
    doubts = {one.fact: one for one in probed(GOES_ON).doubts}
    assert (doubts["numb_skin"].matters, doubts["numb_skin"].chosen) == (True, 0)
    assert [one.id for one in doubts["numb_skin"].rules] == ["numb"]
    assert doubts["calm"] == Doubt("calm", "Calm?", 0)


def test_an_action_waits_for_no_question() -> None:
    """Only techniques are asked about."""
    assert probed({**GOES_ON, "chosen": [{"card": "protect"}]}).doubts == ()


def test_a_session_that_asks_says_what_for() -> None:
    """Each open question with its rules; and of the rest only what nothing else waits for."""
    doubts = {one.fact: one for one in probed({"consent": None, "findings": {"swelling": "falling"}}).doubts}
    assert doubts["consent"].matters
    assert [one.id for one in doubts["consent"].rules] == ["no_consent"]
    assert doubts.keys() >= {"fever", "swelling"}
    assert not doubts["fever"].matters
    assert "calm" not in doubts or not doubts["calm"].matters
    assert "numb_skin" not in {one.fact for one in probed({"screen": None}).doubts}


def test_without_a_screen_every_screened_flag_is_asked() -> None:
    """The fever is open, and the rule that waits for it is named."""
    doubts = {one.fact: one for one in probed({"screen": None}).doubts}
    assert (doubts["fever"].matters, [one.id for one in doubts["fever"].rules]) == (True, ["fever"])
    assert FACTS["fever"]["question"] == doubts["fever"].question


def visits() -> Iterator[tuple[Judge, Case, int, VisitJudgement]]:
    """Every visit of the demonstration as it was probed."""
    course = opened().course
    assert course is not None
    judge = Judge(course.content)
    for one in course.cases.values():
        yield from ((judge, one, number, judged) for number, judged in enumerate(opened().judged[one.id]))


def framed(judge: Judge, one: Case, number: int, changed: dict[str, Value]) -> Frame:
    """The frame of a visit that found these things as well."""
    visit = one.visits[number]
    after = visit.model_copy(update={"findings": {**visit.findings, **changed}})
    graded = earlier_grade(one, opened().judged[one.id][:number])
    return judge.frame(values_of(one, after, judge.content.screening), visit.severity or one.severity, graded)


def all_right(judge: Judge, frame: Frame, visit: Visit, place: int | None = None) -> bool:
    """Whether every chosen option, or the one at a place, is OK at worst and serves the aim of a frame."""
    chosen = visit.chosen if place is None else visit.chosen[place : place + 1]
    cards = judge.content.cards
    judged = (judge.options.judge(frame, cards[one.card], one.site, one.written) for one in chosen)
    return all(one.right for one in judged)


def test_what_comes_up_on_the_demonstrations_visits_does_what_is_said_of_it() -> None:
    """Judged anew with the finding in place: it refers as urgently as said, or leaves everything right."""
    seen = {True: 0, False: 0}
    for judge, one, number, judged in visits():
        for turn in judged.turns:
            frame = framed(judge, one, number, {turn.fact: turn.value})
            if turn.urgency is None:
                assert frame.session.answer == "go_on", (one.id, turn)
                assert all_right(judge, frame, one.visits[number]), (one.id, turn)
            else:
                assert (frame.session.answer, frame.session.urgency) == ("refer", turn.urgency), (
                    one.id,
                    turn,
                )
            seen[turn.urgency is None] += 1
    assert min(seen.values()) > 500


def test_a_question_before_a_technique_matters_or_does_not() -> None:
    """A yes to one that matters makes the technique wrong; of one that does not, neither answer does."""
    seen = {True: 0, False: 0}
    for judge, one, number, judged in visits():
        for doubt in (each for each in judged.doubts if each.chosen is not None):
            visit = one.visits[number]
            frames = [framed(judge, one, number, {doubt.fact: answer}) for answer in ("yes", "no")]
            still = [all_right(judge, frame, visit, doubt.chosen) for frame in frames]
            assert still == ([False, True] if doubt.matters else [True, True]), (one.id, doubt)
            if not doubt.matters:
                assert {frame.session.answer for frame in frames} == {"go_on"}
            seen[doubt.matters] += 1
    assert min(seen.values()) > 100


def test_a_session_goes_on_only_after_each_question_that_matters() -> None:
    """With all but one of them answered it still asks; with all of them it goes on, whatever else is open."""
    seen = 0
    for judge, one, number, judged in visits():
        if judged.session.answer != "ask_first":
            assert all(each.chosen is not None for each in judged.doubts)
            continue
        matter = {each.fact for each in judged.doubts if each.matters}
        facts = judge.content.facts.facts
        safe: dict[str, Value] = {name: "yes" if facts[name].worse_when == "no" else "no" for name in matter}
        assert framed(judge, one, number, safe).session.answer == "go_on", one.id
        for name in matter:
            rest = {other: value for other, value in safe.items() if other != name}
            assert framed(judge, one, number, rest).session.answer == "ask_first", (one.id, name)
            seen += 1
    assert seen > 10
