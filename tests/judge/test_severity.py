"""Severity: by the published table in its window, else as declared, else the worse."""

from dataclasses import replace
from decimal import Decimal
from typing import Any

import pytest

from builder.judge.judge import Judge
from builder.judge.space import Value
from builder.model.fact import Fact
from builder.model.judgement import SeverityJudgement
from builder.model.tables import SEVERITIES, Severity, SeverityTable
from tests.judge.small import case, content

JUDGE = Judge(content())
BRUISE: dict[str, Value] = {"injury": "contusion", "region": "thigh", "reinjured": "no", "hours": Decimal(18)}


def grade(
    declared: Severity | None = None, earlier: Severity | None = None, **values: Value | int | None
) -> SeverityJudgement:
    """The severity of a bruised thigh 18 h after the blow, with some facts changed or taken away."""
    changed = {name: Decimal(one) if isinstance(one, int) else one for name, one in values.items()}
    known = {name: value for name, value in {**BRUISE, **changed}.items() if value is not None}
    return JUDGE.severities.judge(JUDGE.space.state(known), declared, earlier)


@pytest.mark.parametrize(
    ("flexion", "severity"),
    [
        ("160", "mild"),
        ("90.1", "mild"),
        ("90", "moderate"),
        ("72", "moderate"),
        ("45", "moderate"),
        ("44.9", "severe"),
        ("0", "severe"),
    ],
)
def test_the_measure_grades_inside_the_window(flexion: str, severity: Severity) -> None:
    """Exactly 90 and exactly 45 degrees are moderate, whatever was declared."""
    for declared in (None, *SEVERITIES):
        judged = grade(declared, knee_flexion=Decimal(flexion))
        assert (judged.possible, judged.table, judged.gradable) == ((severity,), "thigh", True)


@pytest.mark.parametrize(
    ("hours", "gradable"), [("11.9", False), ("12", True), ("18", True), ("24", True), ("24.1", False)]
)
def test_the_window_includes_its_ends(hours: str, *, gradable: bool) -> None:
    """From exactly 12 h to exactly 24 h since the latest injury, and not before or after."""
    assert grade("mild", hours=Decimal(hours), knee_flexion=100).gradable is gradable


@pytest.mark.parametrize(
    ("declared", "possible"),
    [
        (None, ("mild", "moderate", "severe")),
        ("mild", ("mild", "moderate", "severe")),
        ("moderate", ("moderate", "severe")),
        ("severe", ("severe",)),
    ],
)
@pytest.mark.parametrize(
    "missing", [{"knee_flexion": None}, {"hours": 30, "knee_flexion": 100}, {"hours": None}]
)
def test_without_a_measure_in_the_window_anything_worse_is_possible(
    declared: Severity | None, possible: tuple[Severity, ...], missing: dict[str, Any]
) -> None:
    """A table that cannot grade is said to be so, and the declared grade is the least."""
    judged = grade(declared, **missing)
    assert (judged.possible, judged.table, judged.gradable) == (possible, "thigh", False)
    assert judged.reasons[0].text.endswith("Treat as the worse.")


def test_a_measure_from_that_window_is_recalled() -> None:
    """Days later the first day's measure, known from a record, still grades."""
    judged = grade("mild", hours=200, recalled_flexion=40, knee_flexion=150)
    assert (judged.possible, judged.gradable) == (("severe",), True)


@pytest.mark.parametrize("reinjured", ["yes", None])
def test_a_recalled_measure_says_nothing_of_a_later_injury(reinjured: str | None) -> None:
    """After a second injury, or when that is not known, the first day's measure does not grade."""
    judged = grade("mild", hours=200, recalled_flexion=140, reinjured=reinjured)
    assert (judged.possible, judged.gradable) == (("mild", "moderate", "severe"), False)


def test_a_measure_in_the_window_stands_over_a_recalled_one() -> None:
    """What is measured at the right time is believed."""
    assert grade(knee_flexion=100, recalled_flexion=40).possible == ("mild",)


def test_an_earlier_grade_of_the_same_injury_holds() -> None:
    """A grade that the table gave at an earlier visit stays when the window has passed."""
    judged = grade("severe", "mild", hours=200, knee_flexion=40)
    assert (judged.possible, judged.gradable) == (("mild",), True)


@pytest.mark.parametrize(
    ("declared", "possible"), [("moderate", ("moderate",)), (None, ("mild", "moderate", "severe"))]
)
def test_where_no_table_applies_the_declared_grade_counts(
    declared: Severity | None, possible: tuple[Severity, ...]
) -> None:
    """Another region: as declared; with nothing declared, any grade is possible."""
    judged = grade(declared, region="ankle", knee_flexion=100)
    assert (judged.possible, judged.table, judged.gradable) == (possible, None, False)


@pytest.mark.parametrize(
    ("declared", "flexion", "possible"),
    [
        ("mild", 30, ("mild", "severe")),
        ("severe", 100, ("mild", "severe")),
        ("moderate", None, ("moderate", "severe")),
    ],
)
def test_a_table_that_may_apply_adds_its_grade(
    declared: Severity, flexion: int | None, possible: tuple[Severity, ...]
) -> None:
    """Where it is not recorded whether the table applies, both its grade and the declared one may be."""
    judged = grade(declared, injury=None, knee_flexion=flexion)
    assert (judged.possible, judged.gradable) == (possible, False)
    assert len(judged.reasons) == 2


@pytest.mark.parametrize(
    ("second", "gradable"),
    [
        ({"since_injury": "6 days"}, True),
        ({"since_injury": "6 days", "since_reinjury": "30 h"}, False),
        ({"since_injury": "3 days", "since_reinjury": "60 h"}, False),
    ],
)
def test_a_grade_is_carried_to_the_next_visit_until_a_new_injury(
    second: dict[str, Any], *, gradable: bool
) -> None:
    """The clock of a new injury takes the old grade away, also where it happened before the last visit."""
    first, later = JUDGE.case(case({"since_injury": "18 h"}, {**second, "severity": "mild"}))
    assert first.severity.possible == ("moderate",)
    assert later.severity.gradable is gradable
    assert later.severity.possible == (("moderate",) if gradable else ("mild", "moderate", "severe"))


@pytest.mark.parametrize("since_reinjury", ["64 h", "60 h", "3 days"])
def test_a_grade_of_the_second_injury_is_carried_on(since_reinjury: str) -> None:
    """The same second injury at the next visit keeps its grade, though the author's spans are rounded."""
    visits = JUDGE.case(
        case(
            {"since_injury": "18 h", "findings": {"knee_flexion": 100}},
            {"since_injury": "6 days", "since_reinjury": "20 h", "findings": {"knee_flexion": 40}},
            {"since_injury": "8 days", "since_reinjury": since_reinjury},
        )
    )
    assert [one.severity.possible for one in visits] == [("mild",), ("severe",), ("severe",)]


def floor(
    declared: Severity | None, changed: dict[str, Value | None], earlier: Severity | None = None
) -> SeverityJudgement:
    """The severity of a bruise under a table that says only how bad at least."""
    calm: dict[str, Value | None] = {"swelling": "none", "numb_skin": "no"}
    known = {"injury": "contusion", "hours": Decimal(18), "range": "half", **calm, **changed}
    recorded = {name: value for name, value in known.items() if value is not None}
    return LEAST.severities.judge(LEAST.space.state(recorded), declared, earlier)


def least_table() -> Judge:
    """The small content with its one table turned into one that only makes worse, by range."""
    made = content()
    facts = made.facts.model_copy(update={"facts": {**made.facts.facts, "range": RANGE}})
    table = SeverityTable.model_validate(
        {
            "applies": {"injury": "contusion"},
            "measure": "range",
            "not_before": "12 h",
            "not_after": "72 h",
            "least": True,
            "bands": [
                {"grade": "mild", "when": {"range": "full"}},
                {"grade": "moderate", "when": {"range": "half"}},
                {"grade": "severe", "when": {"range": "little"}},
            ],
            "raised": [
                {"grade": "moderate", "when": {"swelling": "falling"}},
                {"grade": "severe", "when": {"any": [{"swelling": "rising"}, {"numb_skin": "yes"}]}},
            ],
            "source": ["own_default"],
        }
    )
    book = made.severity.model_copy(update={"tables": {"bruise": table}})
    return Judge(replace(made, facts=facts, severity=book))


RANGE = Fact(
    kind="scale", label="Range", group="sign", worse_when="higher", values=("full", "half", "little")
)
LEAST = least_table()


@pytest.mark.parametrize(
    ("declared", "range_left", "expected"),
    [
        ("mild", "full", "mild"),
        ("mild", "half", "moderate"),
        ("severe", "half", "severe"),
        ("moderate", "little", "severe"),
        (None, "full", "mild"),
    ],
)
def test_a_least_grade_only_makes_worse(
    declared: Severity | None, range_left: str, expected: Severity
) -> None:
    """The worse of the declared grade and the table's counts."""
    judged = floor(declared, {"range": range_left})
    assert (judged.possible, judged.gradable) == ((expected,), True)


@pytest.mark.parametrize("missing", [{"range": None}, {"hours": None, "range": "full"}])
def test_without_the_measure_a_least_grade_may_be_worse(missing: dict[str, Value | None]) -> None:
    """Not measured, or at a time not known: the declared grade or anything worse."""
    judged = floor("moderate", missing)
    assert (judged.possible, judged.gradable) == (("moderate", "severe"), False)


@pytest.mark.parametrize("hours", ["11", "73"])
def test_outside_the_window_the_declared_grade_stands(hours: str) -> None:
    """Range that comes back makes no injury milder, and before the window it makes none worse."""
    assert floor("mild", {"hours": Decimal(hours), "range": "little"}).possible == ("mild",)
    assert floor("mild", {"hours": Decimal(hours), "range": "full"}, "severe").possible == ("severe",)


def test_a_least_grade_is_waited_for_in_its_window_alone() -> None:
    """The measure is asked for while it can still grade."""
    known: dict[str, Value] = {
        "injury": "contusion",
        "hours": Decimal(18),
        "swelling": "none",
        "numb_skin": "no",
    }
    assert LEAST.severities.waits_for(LEAST.space.state(known)) == ["range"]
    assert LEAST.severities.waits_for(LEAST.space.state({**known, "hours": Decimal(73)})) == []


@pytest.mark.parametrize("hours", ["11", "18", "73"])
@pytest.mark.parametrize(
    ("declared", "found", "possible"),
    [
        ("mild", {"swelling": "falling"}, ("moderate",)),
        ("mild", {"swelling": "rising"}, ("severe",)),
        ("mild", {"swelling": "falling", "numb_skin": "yes"}, ("severe",)),
        ("severe", {"swelling": "falling"}, ("severe",)),
        ("mild", {"swelling": None}, ("mild", "moderate", "severe")),
        ("moderate", {"numb_skin": None}, ("moderate", "severe")),
    ],
)
def test_a_further_finding_raises_the_grade_on_any_day(
    hours: str, declared: Severity, found: dict[str, Value | None], possible: tuple[Severity, ...]
) -> None:
    """The worst that holds counts, a milder one changes nothing, and what is not recorded leaves it open."""
    judged = floor(declared, {"range": "full", "hours": Decimal(hours), **found})
    assert judged.possible == possible
    assert judged.gradable is (len(possible) == 1)


def test_a_raised_grade_that_nobody_declared_may_be_worse() -> None:
    """After the window nothing but the finding tells the grade, and it tells only how bad at least."""
    judged = floor(None, {"hours": Decimal(90), "swelling": "falling"})
    assert (judged.possible, judged.gradable) == (("moderate", "severe"), False)


def test_the_reason_names_the_finding_that_raises() -> None:
    """Only what holds is named, with the source of the table."""
    judged = floor("mild", {"range": "full", "numb_skin": "yes"})
    assert judged.reasons[-1].text == "By numb skin: at least severe."
    assert (judged.reasons[-1].facts, judged.reasons[-1].source) == (("numb_skin",), ("own_default",))


def test_what_may_raise_a_grade_is_waited_for() -> None:
    """A finding that is not recorded and would make it worse is asked for on any day."""
    known: dict[str, Value] = {"injury": "contusion", "hours": Decimal(73), "numb_skin": "no"}
    assert set(LEAST.severities.waits_for(LEAST.space.state(known))) == {"swelling"}
