"""Drawing versions by a plan."""

from collections import Counter
from collections.abc import Mapping
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.assess.question import Choice, Shown
from builder.assess.versions import Version, drawn_versions, tell_each_other
from builder.model.paper import Scene
from builder.model.plan import TOPICS, CourseTest, QuestionTopic
from tests.assess.sample import a_test

SCENE = Scene(title="", client="", story="", board=(), screen="")


def shown(case: str, visit: str, topic: QuestionTopic, part: str = "") -> Shown:
    """What may be seen of a question, of which the draw looks only at its name."""
    return Shown(case, visit, topic, part, "one", "s", "h", SCENE, (Choice("a"), Choice("b")), in_order=False)


def row(topic: str, count: int, objective: str = "choose") -> dict[str, Any]:
    """One row of a plan."""
    return {"objective": objective, "topic": topic, "count": count}


def drawn(
    pool: list[Shown],
    *plan: dict[str, Any],
    objectives: Mapping[str, tuple[str, ...]] | None = None,
    **changed: object,
) -> list[Version]:
    """The versions of a test with this plan; its cases serve the objective `choose` unless told otherwise."""
    objectives = objectives or {one.case: ("choose",) for one in pool}
    test = CourseTest.model_validate(a_test(["any"], plan=list(plan), **changed))
    return list(drawn_versions(test, pool, objectives))


OPTIONS = [shown(case, visit, "option") for case in "abc" for visit in ("v1", "v2")]


def test_a_version_fills_its_plan_and_asks_nothing_twice() -> None:
    """As many questions as the plan counts, each its own."""
    for version in drawn(OPTIONS, row("option", 4)):
        assert len({one.identity for one in version.drawn.values()}) == 4
        assert version.lacking == {}


def test_the_draw_follows_the_seed() -> None:
    """The same seed draws the same; among other seeds some draw otherwise."""
    first = drawn(OPTIONS, row("option", 2))
    assert first == drawn(OPTIONS, row("option", 2))
    assert any(first != drawn(OPTIONS, row("option", 2), seed=f"seed {number}") for number in range(5))


def test_the_order_of_the_pool_leaves_no_trace() -> None:
    """However an author lists cases, the same is drawn."""
    assert drawn(OPTIONS, row("option", 3)) == drawn(OPTIONS[::-1], row("option", 3))


def test_questions_spread_over_cases() -> None:
    """Three questions of six come from three cases, not from one."""
    for version in drawn(OPTIONS, row("option", 3), versions=6):
        assert sorted(one.case for one in version.drawn.values()) == ["a", "b", "c"]


def test_later_versions_use_what_earlier_ones_left() -> None:
    """Two versions of three share nothing where the pool has six."""
    first, second = drawn(OPTIONS, row("option", 3))
    assert not {one.identity for one in first.drawn.values()} & {
        one.identity for one in second.drawn.values()
    }


def test_objectives_decide_who_may_be_drawn() -> None:
    """A row draws only from cases that serve its objective, and lacks what they do not yield."""
    objectives = {"a": ("refer",), "b": ("choose",), "c": ("choose",)}
    (version,) = drawn(OPTIONS, row("option", 3, "refer"), objectives=objectives, versions=1)
    assert {one.case for one in version.drawn.values()} == {"a"}
    assert version.lacking == {0: 1}


def test_a_row_gives_way_to_one_with_less_choice() -> None:
    """The first row takes the question the second cannot use, whichever it drew first."""
    pool = [shown("a", "v1", "option"), shown("b", "v1", "option")]
    objectives = {"a": ("choose",), "b": ("choose", "refer")}
    plan = (row("option", 1), row("option", 1, "refer"))
    for number in range(8):
        (version,) = drawn(pool, *plan, objectives=objectives, versions=1, seed=f"seed {number}")
        assert version.lacking == {}


def test_a_question_that_tells_the_answer_gives_way() -> None:
    """The dose has one visit, so the option comes from the other, whichever was drawn first."""
    pool = [shown("a", "v1", "option"), shown("b", "v1", "option"), shown("a", "v1", "dose", "cold")]
    for number in range(8):
        (version,) = drawn(pool, row("option", 1), row("dose", 1), versions=1, seed=f"seed {number}")
        assert version.lacking == {}
        assert {one.case for one in version.drawn.values()} == {"a", "b"}


@pytest.mark.parametrize(
    ("one", "other", "tells"),
    [
        (shown("a", "v1", "option"), shown("a", "v1", "dose", "x"), True),
        (shown("a", "v1", "dose", "y"), shown("a", "v1", "dose", "x"), True),
        (shown("a", "v1", "session"), shown("a", "v1", "phase"), True),
        (shown("a", "v1", "session"), shown("a", "v1", "dose", "x"), True),
        (shown("a", "v1", "ask_first"), shown("a", "v1", "session"), True),
        (shown("a", "v1", "ask_first"), shown("a", "v1", "option"), True),
        (shown("a", "v1", "ask_first"), shown("a", "v1", "phase"), True),
        (shown("a", "v1", "stop"), shown("a", "v1", "session"), True),
        (shown("a", "v1", "order"), shown("a", "v1", "phase"), True),
        (shown("a", "v1", "order"), shown("a", "v1", "option"), True),
        (shown("a", "v1", "order"), shown("a", "v1", "dose", "x"), True),
        (shown("a", "v1", "order"), shown("a", "v1", "stop"), False),
        (shown("a", "v1", "stop"), shown("a", "v1", "ask_first"), False),
        (shown("a", "v1", "stop"), shown("a", "v2", "session"), False),
        (shown("a", "v1", "phase"), shown("a", "v1", "option"), False),
        (shown("a", "v1", "session"), shown("a", "v1", "option"), False),
        (shown("a", "v1", "option"), shown("a", "v2", "dose", "x"), False),
        (shown("a", "v1", "option"), shown("a", "v1", "option"), True),
    ],
)
def test_which_questions_tell_each_other(one: Shown, other: Shown, *, tells: bool) -> None:
    """A dose names what was right to choose; a phase and a dose say that the session went on."""
    assert tell_each_other(one, other) is tells
    assert tell_each_other(other, one) is tells


POOLS = st.lists(
    st.builds(shown, st.sampled_from("abcd"), st.sampled_from(["v1", "v2"]), st.sampled_from(TOPICS)),
    unique_by=lambda one: one.identity,
)
PLANS = st.lists(st.builds(row, st.sampled_from(TOPICS), st.integers(1, 4)), min_size=1, max_size=5)


@given(POOLS, PLANS)
def test_no_version_gives_itself_away(pool: list[Shown], plan: list[dict[str, Any]]) -> None:
    """Whatever the pool and the plan: rows get their topic, nothing tells another, and the sum is right."""
    for version in drawn(pool, *plan, versions=3):
        asked = list(version.drawn.values())
        pairs = [(one, other) for one in asked for other in asked if one is not other]
        assert not any(tell_each_other(one, other) for one, other in pairs)
        assert all(one.topic == plan[slot.row]["topic"] for slot, one in version.drawn.items())
        filled = Counter(slot.row for slot in version.drawn)
        for index, planned in enumerate(plan):
            assert filled[index] + version.lacking.get(index, 0) == planned["count"]


@given(POOLS, st.sampled_from(TOPICS), st.integers(1, 6))
def test_a_single_row_lacks_only_what_cannot_be_had(pool: list[Shown], topic: str, count: int) -> None:
    """With one row and questions of one topic, a version draws as many as there are."""
    (version,) = drawn(pool, row(topic, count), versions=1)
    there = {one.visit + one.case if topic == "dose" else one.identity for one in pool if one.topic == topic}
    assert len(version.drawn) == min(count, len(there))
