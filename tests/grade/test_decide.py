"""A decision lists every requirement, met or not, with its reason."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.fault import Fault
from builder.grade.decide import decide
from builder.model.handed import sheet_of
from builder.model.records import ClassFolder, Decision, KeptSheet
from tests.records.made import (
    NOW,
    Value,
    answers,
    folder,
    person,
    presence,
    ring,
    sheet_bytes,
    station_sheet,
    terms,
)

ANN, BEN = person(1), person(2)
SPRING = folder(ANN, BEN)
KEYS = ring()


def decided(given: dict[str, Value] | None, spring: ClassFolder = SPRING) -> Decision:
    """The decision about Ann, who answered so."""
    data = [sheet_bytes(ANN.code, given)] if given is not None else []
    sheets = [KeptSheet(digest="d", received=NOW, sheet=sheet_of(one)) for one in data]
    return decide(terms(), spring.apart()[ANN.code], ANN, sheets, {("final", "k7q2m9xa"): KEYS})


def met(decision: Decision) -> dict[str, bool]:
    """Each requirement's kind, and whether it is met."""
    return {one.kind: one.met for one in decision.requirements}


def test_whoever_met_everything_is_through() -> None:
    """Test, must-pass questions, station and attendance are all listed."""
    made = decided(answers())
    assert met(made) == {"test": True, "must_pass": True, "station": True, "attendance": True}
    assert made.met
    assert (made.course, made.klass, made.code) == ("falls", "spring", ANN.code)


@pytest.mark.parametrize(
    ("given", "spring", "failing"),
    [
        (answers(wrong=4), SPRING, {"test"}),
        ({**answers(), "a1": "o2"}, SPRING, {"must_pass"}),
        ({**answers(wrong=4), "a1": None}, SPRING, {"test", "must_pass"}),
        (answers(), SPRING.model_copy(update={"station_sheets": (station_sheet(ANN, "numb"),)}), {"station"}),
        (answers(), SPRING.model_copy(update={"presences": (presence(ANN, "11:00"),)}), {"attendance"}),
        (
            None,
            SPRING.model_copy(update={"presences": (), "station_sheets": ()}),
            {"test", "station", "attendance"},
        ),
    ],
)
def test_each_requirement_fails_on_its_own(
    given: dict[str, Value] | None, spring: ClassFolder, failing: set[str]
) -> None:
    """One thing missed is one requirement not met, and every one missed is named."""
    made = decided(given, spring)
    assert {kind for kind, fine in met(made).items() if not fine} == failing
    assert not made.met
    assert all(one.reason.endswith(".") for one in made.requirements)


def test_a_decision_says_what_it_rests_on() -> None:
    """The sheet by digest, the key by edition and key edition."""
    basis = decided(answers()).basis
    assert basis.sheets == ("d",)
    assert basis.keys == ("final k7q2m9xa first",)


def test_a_station_that_is_not_there_is_a_fault() -> None:
    """A course that requires a station it does not have cannot decide."""
    with pytest.raises(Fault, match="requires a station"):
        decide(terms().model_copy(update={"stations": ()}), SPRING, ANN, (), {})


chosen = st.sampled_from(["o1", "o2", None])
sheets = st.fixed_dictionaries({f"a{at}": chosen for at in range(1, 11)})


@given(sheets, st.integers(1, 10))
def test_a_right_answer_made_wrong_never_helps(given: dict[str, Value], at: int) -> None:
    """The total never rises, and no requirement comes to be met."""
    worse = {**given, f"a{at}": "o2"}
    before, after = decided(given), decided(worse)
    assert after.attempts[0].total <= before.attempts[0].total
    assert all(met(before)[kind] for kind, fine in met(after).items() if fine)


@given(sheets)
def test_a_total_is_the_exact_share(given: dict[str, Value]) -> None:
    """The total is the number right over the number of questions, and passes by exact comparison."""
    right = sum(value == "o1" for value in given.values())
    made = decided(given)
    assert made.attempts[0].total == Fraction(right, 10)
    assert met(made)["test"] == (10 * right >= 7 * 10)
