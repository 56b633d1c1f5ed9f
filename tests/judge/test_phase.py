"""Phase: the calendar of tissue and severity, held back by signs, never pushed on."""

from decimal import Decimal
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.judge.judge import Judge
from builder.judge.phase import HEALING, PhaseJudge, ends, phase_at
from builder.judge.space import Value
from builder.model.card import Phase
from builder.model.condition import parse
from builder.model.judgement import PhaseJudgement
from builder.model.tables import SEVERITIES, Clock, Severity
from tests.judge.small import case, content

JUDGE = Judge(content())
CLOCKS = JUDGE.content.phases.clocks
CALM: dict[str, Value] = {"injury": "contusion", "tissue": "muscle", "region": "ankle", "swelling": "none"}


def dated(
    hours: Decimal | None, grade: Severity | None = "mild", **values: str | None
) -> tuple[PhaseJudgement, set[int]]:
    """The phase of a calm bruise of the ankle, with some facts changed or taken away."""
    known = {name: one for name, one in {**CALM, **values, "hours": hours}.items() if one is not None}
    state = JUDGE.space.state(known)
    severity = JUDGE.severities.judge(state, grade, None).possible
    state[JUDGE.space.index["severity"]] = sum(
        JUDGE.space.variables["severity"].mask_of(one) for one in severity
    )
    return JUDGE.phases.judge(state, hours)


@pytest.mark.parametrize("clock", CLOCKS, ids=lambda clock: f"{clock.tissue}-{clock.severity}")
def test_the_hour_at_which_a_phase_ends_belongs_to_it(clock: Clock) -> None:
    """For every tissue and grade: at the end still the earlier phase, just after it the later one."""
    for end, phase, after in zip(ends(clock), HEALING[:3], HEALING[1:], strict=True):
        assert phase_at(clock, end) == phase
        assert phase_at(clock, end + Decimal("0.1")) == after
        for hours, expected in ((end, phase), (end + Decimal("0.1"), after)):
            judged, behind = dated(hours, clock.severity, tissue=clock.tissue)
            assert (judged.possible, behind) == ((expected,), {0})


@given(st.decimals(0, 3000, places=1), st.sampled_from(CLOCKS))
def test_the_calendar_never_goes_back(hours: Decimal, clock: Clock) -> None:
    """An hour later is never an earlier phase."""
    assert HEALING.index(phase_at(clock, hours)) <= HEALING.index(phase_at(clock, hours + 1))


@pytest.mark.parametrize(("hours", "steps"), [(20, 0), (60, 1), (200, 2), (400, 3)])
def test_a_sign_holds_the_phase_back(hours: int, steps: int) -> None:
    """Rising swelling is acute on any day, and says how many phases the signs lie behind."""
    judged, behind = dated(Decimal(hours), swelling="rising")
    assert (judged.possible, behind) == (("acute",), {steps})


@given(
    st.decimals(0, 3000, places=1),
    st.sampled_from(SEVERITIES),
    st.sampled_from(["none", "falling", "rising"]),
)
def test_signs_never_push_on(hours: Decimal, grade: Severity, swelling: str) -> None:
    """Whatever the signs, the phase is never later than the calendar says."""
    clock = next(one for one in CLOCKS if (one.tissue, one.severity) == ("muscle", grade))
    judged, _ = dated(hours, grade, swelling=swelling)
    assert HEALING.index(judged.possible[-1]) <= HEALING.index(phase_at(clock, hours))


@pytest.mark.parametrize(
    ("hours", "possible", "steps"),
    [
        (20, ("acute",), {0}),
        (60, ("acute", "early_repair"), {0, 1}),
        (400, ("acute", "remodelling"), {0, 3}),
    ],
)
def test_a_sign_that_is_not_recorded_makes_the_earlier_phase_possible(
    hours: int, possible: tuple[Phase, ...], steps: set[int]
) -> None:
    """Nobody looked: the calendar's phase and the one the sign would hold are both possible."""
    judged, behind = dated(Decimal(hours), swelling=None)
    assert (judged.possible, behind) == (possible, steps)
    told = [reason.text for reason in judged.reasons]
    assert ("Not recorded: Swelling is rising." in told) == (len(possible) > 1)


@pytest.mark.parametrize(
    ("hours", "grade", "possible"),
    [
        (Decimal(60), None, ("acute", "early_repair")),
        (Decimal(40), None, ("acute",)),
        (Decimal(300), None, ("early_repair", "late_repair")),
        (None, "mild", ("acute", "early_repair", "late_repair", "remodelling")),
    ],
)
def test_what_is_not_known_of_the_calendar_makes_several_phases_possible(
    hours: Decimal | None, grade: Severity | None, possible: tuple[Phase, ...]
) -> None:
    """Every grade and every hour that may be gives its phase."""
    assert dated(hours, grade)[0].possible == possible


def test_a_complaint_without_phases_has_none() -> None:
    """Where healing phases do not apply, no clock and no sign is asked."""
    judged, behind = dated(Decimal(400), injury="soreness", swelling="rising")
    assert (judged.possible, behind, judged.next_phase) == (("none",), {0}, None)
    assert [reason.facts for reason in judged.reasons] == [("injury",)]


def test_a_complaint_that_may_have_none_keeps_both() -> None:
    """If the injury is not recorded, none is possible beside the rest, and so is nothing behind."""
    judged, behind = dated(Decimal(400), injury=None, swelling="rising")
    assert (judged.possible, behind) == (("acute", "none"), {0, 3})


@pytest.mark.parametrize(
    ("hours", "grade", "following", "left"),
    [
        (Decimal(18), "mild", "early_repair", Decimal(30)),
        (Decimal("47.5"), "mild", "early_repair", Decimal("0.5")),
        (Decimal(48), "mild", None, None),
        (Decimal(49), "mild", "late_repair", Decimal(47)),
        (Decimal(300), "severe", "late_repair", Decimal(204)),
        (Decimal(400), "mild", None, None),
        (Decimal(60), None, None, None),
    ],
)
def test_the_next_phase_is_dated_by_the_calendar(
    hours: Decimal, grade: Severity | None, following: Phase | None, left: Decimal | None
) -> None:
    """How long it still lasts, where one phase and one clock are sure; nothing follows remodelling."""
    judged, _ = dated(hours, grade)
    assert (judged.next_phase, judged.next_in_hours) == (following, left)


def test_a_phase_that_signs_hold_back_has_no_date() -> None:
    """Swelling does not go down by the calendar."""
    judged, _ = dated(Decimal(300), swelling="rising")
    assert (judged.possible, judged.next_phase) == (("acute",), None)


def test_the_clock_restarts_with_a_second_injury() -> None:
    """A case's visit 20 days after the first and a day after the second injury is acute."""
    (judged,) = JUDGE.case(
        case({"since_injury": "20 days", "since_reinjury": "1 day", "findings": {"knee_flexion": 100}})
    )
    assert judged.phase.possible == ("acute",)


def test_calm_signs_too_soon_are_told_and_change_nothing() -> None:
    """Doubt is a reason in words; the calendar still holds."""
    rising = JUDGE.content.phases.signs[0]
    calm = rising.model_copy(update={"when": parse({"swelling": "none", "hours": {"at_most": 72}})})
    doubting = PhaseJudge(JUDGE.content.phases.model_copy(update={"doubt": (calm,)}), JUDGE.space)
    told = [doubting.judge(state_at(hours))[0] for hours in (20, 400)]
    assert [judged.possible for judged in told] == [("acute",), ("remodelling",)]
    assert ["Swelling is rising." in [one.text for one in judged.reasons] for judged in told] == [True, False]


def state_at(hours: int) -> list[int]:
    """The state of a calm, mild bruise."""
    return JUDGE.space.state({**CALM, "severity": "mild", "hours": Decimal(hours)})


def test_every_tissue_and_grade_has_a_clock() -> None:
    """The small rule set dates everything that may be recorded."""
    tissues = JUDGE.content.facts.facts["tissue"].values
    assert {(one.tissue, one.severity) for one in CLOCKS} == set(product(tissues, SEVERITIES))


def test_reasons_name_their_facts_and_sources() -> None:
    """The calendar's reason rests on hours, severity and tissue, and carries its source."""
    reason = dated(Decimal(20))[0].reasons[0]
    assert reason.text == "By the calendar, mild injury of muscle: acute."
    assert (reason.facts, reason.source) == (("hours", "severity", "tissue"), ("own_default",))
