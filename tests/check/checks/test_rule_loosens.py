"""A rule tightens: what is more dangerous fires it at least as well."""

from dataclasses import replace
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from builder.check.checks.rule_loosens import check
from builder.check.evidence import Evidence, Finding
from builder.judge.judge import Judge
from builder.judge.truth import compiled
from builder.model.condition import parse
from builder.model.fact import FactBook
from tests.check.small_course import course
from tests.judge.small import FACTS, PHASES, WRITTEN, card, content, fact, rule

# One fact of each kind and direction; knee_flexion is worse when lower, swelling and minutes when higher.
MORE = {
    "pulse": fact("scale", "sign", "lower", values=["gone", "weak", "strong"]),
    "pain": fact("number", "sign", "higher", low=0, high=10),
}
LOOSE_WRITTEN = {
    **WRITTEN,
    "pause": fact("number", "written", "lower", low=0, high=1440),
    "pad": fact("number", "written", "both", low=0, high=10),
}
LOOSE = FactBook.model_validate({"format": 1, "facts": FACTS, "written": LOOSE_WRITTEN})
BARS = [{"groups": ["cold"], "answer": "barred"}]


def made(when: dict[str, Any]) -> Evidence:
    """The evidence of one rule, without the proofs that this check does not look at."""
    rules = content(rules=[rule("one", when, options=BARS)])
    facts = {"format": 1, "facts": {**FACTS, **MORE}, "written": WRITTEN}
    return Evidence(course(rules=replace(rules, facts=FactBook.model_validate(facts))), {})


def found(when: dict[str, Any]) -> list[Finding]:
    """What is to fix in one rule."""
    return list(check(made(when)))


@pytest.mark.parametrize(
    "when",
    [
        {"fever": "yes"},
        {"not": {"fever": "no"}},
        {"consent": "no"},
        {"fever": ["yes", "no"]},
        {"swelling": "rising"},
        {"swelling": ["falling", "rising"]},
        {"swelling": {"at_least": "falling"}},
        {"not": {"swelling": "none"}},
        {"not": {"swelling": {"below": "rising"}}},
        {"pulse": "gone"},
        {"pulse": {"at_most": "weak"}},
        {"knee_flexion": {"below": 45}},
        {"pain": {"over": 3, "at_least": 4}},
        {"written.minutes": {"over": 10}},
        {"written.barrier": "no"},
        {"region": "thigh", "hours": {"at_most": 240}, "phase": ["acute"]},
        {"any": [{"fever": "yes"}, {"all": [{"pain": {"over": 5}}, {"age": {"below": 18}}]}]},
        {"not": {"recorded": "age"}},
    ],
)
def test_a_rule_that_tightens_is_silent(when: dict[str, Any]) -> None:
    """It fires on the dangerous side, or asks about what has no dangerous side."""
    assert found(when) == []


@pytest.mark.parametrize(
    ("when", "name"),
    [
        ({"fever": "no"}, "fever"),
        ({"not": {"fever": "yes"}}, "fever"),
        ({"consent": "yes"}, "consent"),
        ({"swelling": "none"}, "swelling"),
        ({"swelling": "falling"}, "swelling"),
        ({"swelling": ["none", "rising"]}, "swelling"),
        ({"swelling": {"at_most": "falling"}}, "swelling"),
        ({"not": {"swelling": {"at_least": "falling"}}}, "swelling"),
        ({"pulse": "strong"}, "pulse"),
        ({"pulse": {"over": "gone"}}, "pulse"),
        ({"knee_flexion": {"over": 90}}, "knee_flexion"),
        ({"knee_flexion": {"at_least": 45, "at_most": 90}}, "knee_flexion"),
        ({"knee_flexion": 0}, "knee_flexion"),
        ({"written.minutes": {"below": 5}}, "written.minutes"),
        ({"any": [{"fever": "yes"}, {"not": {"pain": {"over": 5}}}]}, "pain"),
        ({"session_urgency": ["same_day"]}, "session_urgency"),
    ],
)
def test_a_rule_that_fires_on_the_safe_side_is_told(when: dict[str, Any], name: str) -> None:
    """Whichever way it is written, the fact is named."""
    assert found(when) == [
        Finding(
            "content/rules/one.yml",
            ("when",),
            f"The rule fires for a safe value of `{name}` and not for a more dangerous one.",
            "Turn the condition round, or widen it to every worse value.",
            ("one",),
        )
    ]


def test_a_rule_that_waits_for_a_record_is_told() -> None:
    """A rule that fires only where something is recorded lets go whoever was not asked."""
    (told,) = found({"recorded": "age"})
    assert told.message == "The rule fires where `age` is recorded and not where nobody asked."
    assert told.remedy == "Put `recorded` under `not`."


def bounded(needs: dict[str, Any]) -> tuple[Evidence, Evidence]:
    """The evidence of one rule that needs this, and of one card whose cell has it as its limits."""
    rules = content(rules=[rule("one", {"fever": "yes"}, options=[{"groups": ["cold"], "needs": needs}])])
    rows: list[dict[str, Any]] = [
        {"phase": PHASES, "answer": "barred"},
        {"phase": ["acute"], "answer": "ok", "limits": needs},
    ]
    cards = content(cards=[card("one", "technique", ["limit"], rows)])
    made = [replace(one, facts=LOOSE) for one in (rules, cards)]
    return Evidence(course(rules=made[0]), {}), Evidence(course(rules=made[1]), {})


@pytest.mark.parametrize(
    "needs",
    [
        {"minutes": {"at_most": 20}},
        {"minutes": {"below": 20}, "barrier": "yes"},
        {"urgency": {"at_least": "days"}},
        {"urgency": ["same_day", "emergency"]},
        {"pause": {"at_least": 40}},
        {"site": ["on", "remote"]},
        {"pad": {"at_least": 2, "at_most": 3}},
    ],
)
def test_a_need_or_limit_that_bounds_the_dangerous_side_is_silent(needs: dict[str, Any]) -> None:
    """Or both sides, where neither or both are dangerous."""
    assert [list(check(one)) for one in bounded(needs)] == [[], []]


@pytest.mark.parametrize(
    ("needs", "name"),
    [
        ({"minutes": {"at_least": 20}}, "minutes"),
        ({"minutes": {"at_least": 5, "at_most": 20}}, "minutes"),
        ({"minutes": 20}, "minutes"),
        ({"barrier": "no"}, "barrier"),
        ({"urgency": {"at_most": "days"}}, "urgency"),
        ({"urgency": "days"}, "urgency"),
        ({"pause": {"at_most": 40}}, "pause"),
    ],
)
def test_a_need_or_limit_on_the_safe_side_is_told(needs: dict[str, Any], name: str) -> None:
    """In the rule or in the cell, with its place."""
    (of_rule,), (of_card,) = (list(check(one)) for one in bounded(needs))
    assert (of_rule.file, of_rule.path) == ("content/rules/one.yml", ("options", 0, "needs", name))
    assert (of_card.file, of_card.path) == ("content/cards/one.yml", ("baseline", 1, "limits", name))
    assert of_rule.message == f"The need on `{name}` lets a dangerous value pass and turns a safer one back."
    assert of_card.message == f"The limit on `{name}` lets a dangerous value pass and turns a safer one back."
    assert of_rule.remedy == of_card.remedy == "Bound the dangerous side of the attribute."


VALUES = {
    "fever": ["no", "yes"],
    "swelling": ["none", "falling", "rising"],
    "pulse": ["strong", "weak", "gone"],
}
LEAVES = st.one_of(
    *(
        st.builds(
            lambda chosen, name=name: {name: chosen},
            st.lists(st.sampled_from(words), min_size=1, unique=True),
        )
        for name, words in VALUES.items()
    ),
    st.builds(
        lambda bound, limit: {"pain": {bound: limit}}, st.sampled_from(["over", "at_most"]), st.integers(2, 8)
    ),
)
CONDITIONS = st.recursive(
    LEAVES,
    lambda below: st.one_of(
        st.fixed_dictionaries({"not": below}),
        st.fixed_dictionaries({"all": st.lists(below, min_size=2, max_size=3)}),
        st.fixed_dictionaries({"any": st.lists(below, min_size=2, max_size=3)}),
    ),
    max_leaves=4,
)
WORSE: dict[str, list[tuple[Any, Any]]] = {name: list(pairwise(words)) for name, words in VALUES.items()}
WORSE["pain"] = [(2, 5), (5, 9)]


@settings(max_examples=400)
@given(CONDITIONS, st.data())
def test_no_rule_that_passes_lets_go_of_a_worse_client(when: dict[str, Any], data: st.DataObject) -> None:
    """What passes is monotone: making any one fact more dangerous never stops it from firing."""
    if found(when):
        return
    space = Judge(made(when).course.content).space
    test = compiled(parse(when), space)
    client: dict[str, Any] = {name: data.draw(st.sampled_from(words)) for name, words in VALUES.items()}
    client["pain"] = data.draw(st.sampled_from([0, 2, 5, 9]))
    name = data.draw(st.sampled_from(sorted(WORSE)))
    mild, worse = data.draw(st.sampled_from(WORSE[name]))
    assert test(space.state({**client, name: mild})) <= test(space.state({**client, name: worse}))
