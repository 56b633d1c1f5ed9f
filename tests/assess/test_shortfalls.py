"""What a plan asks and a pool cannot give."""

from dataclasses import replace

from builder.assess.shortfalls import shortfalls
from builder.place import Place, Places
from tests.assess.sample import a_test, case, course, judged

CASES = [case("alpha"), case("beta")]
PLACES = Places(
    Place("course.yml"),
    {("tests", 0, "plan", 1): Place("course.yml", 41, 9), ("tests", 0, "cases"): Place("course.yml", 30, 5)},
)


def row(topic: str, count: int) -> dict[str, object]:
    """One row of a plan."""
    return {"objective": "choose", "topic": topic, "count": count}


def found(*plan: dict[str, object]) -> list[tuple[str, str, int]]:
    """Check, level and line of everything a plan falls short of."""
    of = replace(
        course(CASES, tests=[a_test(["alpha", "beta"], plan=list(plan))]), places={"course.yml": PLACES}
    )
    return [(one.check, one.level, one.place.line) for one in shortfalls(of, judged(CASES))]


def test_a_row_that_cannot_be_filled_is_an_error_at_its_line() -> None:
    """Each version that lacks questions is reported at the row of the plan."""
    assert found(row("phase", 1), row("session", 5)).count(("plan_not_met", "error", 41)) == 2


def test_what_is_lacking_is_counted() -> None:
    """Four visits yield four phases: one of five is lacking."""
    of = course(CASES, tests=[a_test(["alpha", "beta"], plan=[row("phase", 5)], versions=1)])
    short = [one for one in shortfalls(of, judged(CASES)) if one.level == "error"]
    assert [one.message.partition(" for the")[0] for one in short] == [
        "Version A lacks 1 of 5 questions on phase"
    ]


def test_several_visits_of_a_case_are_advised_against() -> None:
    """Four questions from two cases ask two visits of each; each case is named once, at the pool."""
    assert found(row("phase", 4)).count(("pool_is_narrow", "advice", 30)) == 2


def test_a_pool_that_could_not_be_read_is_passed_over() -> None:
    """A case that is not there is reported by reading, not as a plan that is not met."""
    of = course(CASES, tests=[a_test(["alpha", "missing"], plan=[row("phase", 9)])])
    assert shortfalls(of, judged(CASES)) == []


def test_a_plan_that_is_met_is_silent() -> None:
    """Two questions from two cases are fine."""
    assert found(row("option", 2)) == []
