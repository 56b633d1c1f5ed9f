"""What decides nothing is found: rules, flags, warnings, and facts that nothing reads."""

from dataclasses import replace
from typing import Any

import pytest

from builder.judge.judge import Judge
from builder.judge.prove import holes
from builder.model.fact import FactBook
from builder.model.library import Content
from builder.model.tables import SeverityBook
from tests.judge.small import FACTS, RULES, SEVERITY, WRITTEN, content, fact, rule

COLD_BARRED = [{"cards": ["cold"], "answer": "barred"}]


def told(made: Content) -> list[tuple[str, str]]:
    """What the proof finds, without its witnesses."""
    return [(one.sort, one.about) for one in holes(made, Judge(made).space)]


def with_facts(more: dict[str, Any], rules: list[dict[str, Any]] | None = None, **book: object) -> Content:
    """The small content with further facts."""
    given = {"format": 1, "facts": {**FACTS, **more}, "written": WRITTEN, **book}
    return replace(content(rules=rules), facts=FactBook.model_validate(given))


def rules_without(name: str) -> list[dict[str, Any]]:
    """The small rules but one."""
    return [one for one in RULES if one["id"] != name]


@pytest.mark.parametrize(
    "idle",
    [
        rule("idle", {"numb_skin": "yes"}, options=COLD_BARRED),
        rule("idle", {"numb_skin": "yes", "age": {"over": 60}}, options=COLD_BARRED),
        rule("idle", {"numb_skin": "yes"}, options=[{"cards": ["cold"], "answer": "not_yet"}]),
        rule("idle", {"fever": "yes"}, session={"urgency": "days"}),
        rule("idle", {"fever": "yes"}, options=[{"cards": ["stroke"], "answer": "barred"}]),
        rule(
            "idle",
            {"phase": "acute"},
            options=[{"cards": ["stroke"], "sites": ["on"], "answer": "not_yet"}],
        ),
        rule(
            "idle",
            {"phase": "acute"},
            options=[{"cards": ["cold"], "needs": {"minutes": {"at_most": 25}}}],
        ),
    ],
)
def test_a_rule_that_never_decides_is_found(idle: dict[str, Any]) -> None:
    """Another rule, a cell or a limit says as much wherever it fires."""
    found = told(content(rules=[*RULES, idle]))
    assert ("never_decides", "idle") in found
    assert {sort for sort, _ in found} == {"never_decides"}


@pytest.mark.parametrize(
    "deciding",
    [
        rule("new", {"age": {"over": 60}}, options=COLD_BARRED),
        rule("new", {"fever": "yes"}, session={"urgency": "emergency"}),
        rule("new", {"numb_skin": "yes"}, session={"urgency": "not_urgent"}),
        rule("new", {"phase": "acute"}, options=[{"cards": ["cold"], "needs": {"minutes": {"at_most": 15}}}]),
        rule(
            "new",
            {"phase": "early_repair"},
            options=[{"cards": ["stroke"], "sites": ["on"], "answer": "barred"}],
        ),
    ],
)
def test_a_rule_that_decides_something_is_not(deciding: dict[str, Any]) -> None:
    """An answer, its severity, a referral or what must be written is enough."""
    assert "never_decides" not in {
        sort for sort, about in told(content(rules=[*RULES, deciding])) if about == "new"
    }


def test_a_warning_that_changes_no_answer_is_found() -> None:
    """A contraindication without its rule."""
    assert told(content(rules=rules_without("numb"))) == [("fact_changes_nothing", "numb_skin")]


def test_a_warning_whose_only_rule_something_else_says_is_found() -> None:
    """A rule beside it that fires anyway does not count."""
    always = rule("always", {"age": {"at_least": 0}}, options=COLD_BARRED)
    found = told(content(rules=[*RULES, always]))
    assert ("fact_changes_nothing", "numb_skin") in found
    assert ("never_decides", "numb") in found


def test_a_red_flag_that_lets_the_session_go_on_is_found() -> None:
    """Without its rule, or with one that needs another stop as well."""
    assert ("flag_goes_on", "fever") in told(content(rules=rules_without("fever")))
    stroke = rule("stroke", {"fever": "yes"}, options=[{"cards": ["cold"], "answer": "barred"}])
    assert ("flag_goes_on", "fever") in told(content(rules=[*rules_without("fever"), stroke]))
    beside = {"rash": fact("yes_no", "red_flag", "yes", label="Rash")}
    both = rule("both", {"fever": "yes", "rash": "yes"}, session={"urgency": "emergency"})
    assert told(with_facts(beside, rules=[*RULES, both])) == [("flag_goes_on", "rash")]


def test_a_flag_that_refers_in_one_region_alone_is_enough() -> None:
    """Some visit goes on without it and is referred with it."""
    beside = {"rash": fact("yes_no", "red_flag", "yes", label="Rash")}
    here = rule("here", {"region": "ankle", "rash": "yes"}, session={"urgency": "days"})
    assert told(with_facts(beside, rules=[*RULES, here])) == []


def test_a_fact_that_nothing_reads_is_found_unless_it_is_for_teaching() -> None:
    """One place lists what is there to be taught, with the reason."""
    score = {"score": fact("number", "measure", "higher", low=0, high=9, label="Score")}
    assert told(with_facts(score)) == [("fact_unread", "score")]
    assert told(with_facts(score, teaching={"score": "Taught as background."})) == []


def test_a_measure_that_only_a_table_reads_decides_through_the_grade() -> None:
    """A measure is a warning of its own where severity decides, and changes nothing where it does not."""
    severe = rule("severe", {"severity": "severe"}, options=COLD_BARRED)
    warned = {**FACTS, "knee_flexion": {**FACTS["knee_flexion"], "group": "clearance"}}
    made = with_facts(warned, rules=[*RULES, severe])
    assert told(made) == []
    tables = SeverityBook.model_validate({**SEVERITY, "tables": {}})
    assert told(replace(made, severity=tables)) == [
        ("fact_changes_nothing", "knee_flexion"),
        ("fact_unread", "recalled_flexion"),
    ]


@pytest.mark.parametrize(("raised", "found"), [("moderate", [("flag_goes_on", "rash")]), ("severe", [])])
def test_a_flag_that_raises_a_grade_refers_by_the_grade_it_gives(
    raised: str, found: list[tuple[str, str]]
) -> None:
    """Two visits that differ in it alone are told the same grade otherwise, so it must raise far enough."""
    severe = rule("severe", {"severity": "severe"}, session={"urgency": "days"})
    rash = {"rash": fact("yes_no", "red_flag", "yes", label="Rash")}
    table = {
        **SEVERITY["tables"]["thigh"],
        "least": True,
        "recalled": None,
        "raised": [{"grade": raised, "when": {"rash": "yes"}}],
    }
    book = SeverityBook.model_validate({**SEVERITY, "tables": {"thigh": table}})
    made = replace(with_facts(rash, rules=[*RULES, severe]), severity=book)
    assert [one for one in told(made) if one[0] == "flag_goes_on"] == found
