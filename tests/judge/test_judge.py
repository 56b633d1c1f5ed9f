"""The judge as a whole: visits of a case from first to last."""

from dataclasses import replace
from decimal import Decimal
from typing import Any

import pytest

from builder.judge.judge import Judge, earlier_grade
from builder.judge.space import Value
from builder.model.fact import Fact
from builder.model.judgement import DoseJudgement, VisitJudgement
from tests.judge.small import CARDS, RULES, card, case, content, rule

JUDGE = Judge(content())


def visits(*written: dict[str, Any], **more: object) -> tuple[VisitJudgement, ...]:
    """The judgements of a case with these visits."""
    return JUDGE.case(case(*written, **more))


def test_every_visit_is_judged_in_order() -> None:
    """As many judgements as visits, under the author's ids."""
    assert [one.visit for one in visits({"id": "a"}, {"id": "b", "since_injury": "4 days"})] == ["a", "b"]


def test_options_follow_the_author() -> None:
    """Chosen and wrong options stand in the order they were written, each with its site."""
    options = [{"card": "stroke", "site": "distal"}, {"card": "cold"}, {"card": "stroke"}]
    (judged,) = visits({"chosen": options, "wrong": options[::-1]})
    assert [(one.card, one.site) for one in judged.chosen] == [
        ("stroke", "distal"),
        ("cold", "on"),
        ("stroke", "on"),
    ]
    assert judged.wrong == judged.chosen[::-1]


@pytest.mark.parametrize(
    ("visit", "aims"),
    [
        ({}, ("limit",)),
        ({"since_injury": "5 days", "findings": {"recalled_flexion": 72}}, ("clear",)),
        ({"since_injury": "20 days", "findings": {"recalled_flexion": 72}}, ("restore",)),
        ({"since_injury": "5 days", "severity": "moderate"}, ("limit", "clear")),
        ({"consent": None}, ("ask",)),
        ({"screen": None}, ("ask",)),
        ({"screen": {"set": "short", "all_no_except": {"fever": "yes"}}, "consent": None}, ("refer",)),
    ],
)
def test_the_aim_follows_from_session_and_phase(visit: dict[str, Any], aims: tuple[str, ...]) -> None:
    """Refer, then ask, then what each possible phase is for."""
    assert visits(visit)[0].aims == aims


def test_a_complaint_without_phases_is_eased() -> None:
    """Where no phase applies the aim is the phase book's own for none."""
    assert visits({}, injury="soreness")[0].aims == ("ease",)


def test_what_is_derived_cannot_be_recorded() -> None:
    """A phase, a grade or a referral that someone writes among the findings changes nothing."""
    false = {"phase": "remodelling", "severity": "mild", "session_urgency": "none", "signs_behind": 0}
    assert visits({"findings": false, "screen": None}) == visits({"screen": None})


def test_severity_comes_before_phase_and_phase_before_session() -> None:
    """A rule may refer because of the phase that the grade gives."""
    late = rule("late", {"phase": "early_repair", "severity": "mild"}, session={"urgency": "days"})
    judge = Judge(content(rules=[*RULES, late]))
    for flexion, answer in ((100, "refer"), (72, "go_on")):
        (judged,) = judge.case(case({"since_injury": "60 h", "findings": {"recalled_flexion": flexion}}))
        assert judged.session.answer == answer


def test_doses_along_the_ladder() -> None:
    """Each dose of the ladder and the written one, with its answer at worst; the rest as it is written."""
    chosen = {"card": "cold", "written": {"minutes": 20, "barrier": "yes"}}
    (judged,) = visits({"chosen": [{"card": "protect"}, chosen]})
    answers = {5: "ok", 15: "ok", 20: "ok", 30: "change", 60: "change"}
    expected = {Decimal(dose): answer for dose, answer in answers.items()}
    assert judged.doses == (DoseJudgement(1, "minutes", Decimal(20), expected),)  # type: ignore[arg-type]
    assert list(judged.doses[0].answers) == sorted(expected)


@pytest.mark.parametrize("written", [{}, {"barrier": "yes"}])
def test_a_dose_that_is_not_written_has_no_ladder(written: dict[str, Any]) -> None:
    """There is no other dose of what has none."""
    assert visits({"chosen": [{"card": "cold", "written": written}]})[0].doses == ()


def test_a_card_of_the_library_stands_at_its_usual_site_and_dose() -> None:
    """A card may be usual elsewhere than on the injury; the site is no dose."""
    rows = [{"phase": ["acute"], "site": ["on"], "answer": "barred"}, {"phase": ["acute"], "answer": "ok"}]
    away = card("away", "technique", ["limit"], rows, usual={"site": "distal", "minutes": 5})
    (judged,) = Judge(content(cards=[*CARDS, away])).case(case({}))
    shown = judged.cards["away"]
    assert (shown.site, shown.written, shown.answer) == ("distal", {"minutes": Decimal(5)}, "ok")


def test_shown_phase_and_judged_options_may_differ() -> None:
    """Where the session ends today no phase is shown, yet each option has its reason in its own phase."""
    flagged = {"screen": {"set": "short", "all_no_except": {"fever": "yes"}}, "wrong": [{"card": "stroke"}]}
    (judged,) = visits({**flagged, "chosen": [{"card": "refer", "written": {"urgency": "same_day"}}]})
    assert judged.phase.possible == ("none",)
    assert [one.id for one in judged.wrong[0].rules] == ["baseline.stroke", "refer_ends"]
    assert judged.chosen[0].right


@pytest.mark.parametrize(
    ("given", "variable", "points"),
    [
        ("clock ends", "hours", {48, 72, 96, 168, 240, 336, 504, 1008}),
        ("table window", "hours", {12, 24}),
        ("bands", "knee_flexion", {45, 90}),
        ("bands of the recalled measure", "recalled_flexion", {45, 90}),
        ("phases behind", "signs_behind", {0, 1, 2, 3}),
        ("limits and ladders", "written.minutes", {5, 15, 20, 30, 60}),
    ],
)
def test_the_space_is_cut_at_every_bound(given: str, variable: str, points: set[int]) -> None:
    """Every number that anything in the content names is a cell of its own."""
    cells = JUDGE.space.variables[variable].cells
    assert points <= {cell.value for cell in cells if cell.least is None}, given


def test_a_judge_without_a_rule_is_another_judge() -> None:
    """It judges as if the rule had not been written, and the first still knows it."""
    visit = {
        "screen": {"set": "short", "all_no_except": {"fever": "yes"}},
        "chosen": [{"card": "stroke", "site": "proximal"}],
    }
    (short,) = JUDGE.without("fever").case(case(visit))
    (known,) = JUDGE.case(case(visit))
    fewer = Judge(content(rules=[one for one in RULES if one["id"] != "fever"]))
    (never,) = fewer.case(case(visit))
    assert short.session.answer == never.session.answer == "go_on"
    assert short.chosen[0].at_worst == never.chosen[0].at_worst == "ok"
    assert (known.session.answer, known.chosen[0].at_worst) == ("refer", "barred")


def test_a_grade_holds_until_the_next_injury() -> None:
    """The grade before a visit is the one a table last gave, unless the visit knows of a later injury."""
    first = {"id": "a", "since_injury": "18 h", "findings": {"knee_flexion": 72}}
    later = {"id": "b", "since_injury": "6 days"}
    again = {"id": "c", "since_injury": "7 days", "since_reinjury": "2 h"}
    whole = case(first, later, again)
    judged = JUDGE.case(whole)
    assert [earlier_grade(whole, judged[:number]) for number in range(3)] == [None, "moderate", None]


def with_fever(**marks: object) -> Judge:
    """The small content, in which a fever need not be asked of everyone."""
    made = content()
    fever = made.facts.facts["fever"]
    marked = Fact.model_validate({**fever.model_dump(exclude_defaults=True), **marks})
    book = made.facts.model_copy(update={"facts": {**made.facts.facts, "fever": marked}})
    return Judge(replace(made, facts=book))


@pytest.mark.parametrize(
    ("marks", "region", "found", "answer"),
    [
        ({"asked_where": {"region": "thigh"}}, "thigh", {}, "ask_first"),
        ({"asked_where": {"region": "thigh"}}, "ankle", {}, "go_on"),
        ({"asked_where": {"region": "thigh"}}, "ankle", {"fever": "yes"}, "refer"),
        ({"asked_where": {"region": "thigh"}}, "ankle", {"fever": "no"}, "go_on"),
        ({"extra": True}, "thigh", {}, "go_on"),
        ({"extra": True}, "thigh", {"fever": "yes"}, "refer"),
    ],
)
def test_what_need_not_be_asked_is_at_its_safest_until_it_is_recorded(
    marks: dict[str, object], region: str, found: dict[str, str], answer: str
) -> None:
    """Where it must be asked it is asked; elsewhere it stops nothing, and recorded it counts for everyone."""
    values: dict[str, Value] = {"region": region, "consent": "yes", "cool_head": "no", **found}
    assert with_fever(**marks).frame(values, "mild", None).session.answer == answer


def test_where_it_is_not_known_who_it_is_it_is_asked() -> None:
    """An unknown region may be the one on which it must be asked."""
    judge = with_fever(asked_where={"region": "thigh"})
    assert judge.frame({"consent": "yes", "cool_head": "no"}, "mild", None).session.answer == "ask_first"


def test_what_is_only_told_is_no_part_of_the_answer() -> None:
    """Answered first, told later: no probe, no change and no other card makes any difference to it."""
    judge = Judge(content())
    one = case({"wrong": [{"card": "stroke", "site": "on"}]}, {"id": "b", "since_injury": "6 days"})
    answered = judge.answered(one)
    told = judge.told(one, judge.probed(one, answered))
    assert told == judge.case(one)
    for before, after in zip(answered, told, strict=True):
        assert before.cards == {}
        assert after.cards.keys() == judge.content.cards.keys()
        assert not before.turns
        assert after.turns
        bare = replace(after, cards={}, turns=(), doubts=())
        assert replace(bare, chosen=before.chosen, wrong=before.wrong) == before
        for short, whole in zip((*before.chosen, *before.wrong), (*after.chosen, *after.wrong), strict=True):
            assert not short.would_change
            assert replace(whole, would_change=(), more_would=False) == short
    assert any(option.would_change for visit in told for option in (*visit.chosen, *visit.wrong))
