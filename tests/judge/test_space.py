"""The decision space: values cut into cells, and sets of them as masks."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.judge.space import FAR, Space, holds
from builder.model.condition import Among, Node, Within, parse
from builder.model.fact import Fact, Value
from tests.judge.small import fact

FACTS = {
    "fever": fact("yes_no", "red_flag", "yes"),
    "cool_head": fact("yes_no", "sign", "no", excludes=["fever"]),
    "swelling": fact("scale", "sign", "higher", values=["none", "falling", "rising"]),
    "bend": fact("number", "measure", "lower", low=0, high=160),
    "count": fact("number", "measure", "higher"),
    "side": fact("one_of", "measure", "both", values=["left", "right"]),
}
CONDITION = parse({"bend": {"at_least": 45, "at_most": 90}, "recorded": "fever"})


def space(*conditions: Node, cuts: tuple[tuple[str, Decimal], ...] = ()) -> Space:
    """The space of these facts, cut at 45 and 90 degrees and wherever else is asked."""
    facts = {name: Fact.model_validate(one) for name, one in FACTS.items()}
    return Space(facts, (CONDITION, *conditions), cuts)


def within(name: str, **bounds: int) -> Within:
    """A range of a number."""
    return Within(name, tuple((bound, Decimal(value)) for bound, value in bounds.items()))


def test_words_are_cells_in_their_order() -> None:
    """Yes and no, and the words of a scale, are one cell each."""
    made = space()
    assert [cell.value for cell in made.variables["fever"].cells] == ["no", "yes"]
    assert [cell.value for cell in made.variables["swelling"].cells] == ["none", "falling", "rising"]


def test_a_number_is_cut_into_points_and_gaps() -> None:
    """Each bound is a cell of its own, and so is each stretch between two."""
    cells = space(cuts=(("bend", Decimal(120)), ("bend", Decimal(500)))).variables["bend"].cells
    assert [(cell.least, cell.value, cell.most) for cell in cells] == [
        (None, 0, None),
        (0, Decimal("22.5"), 45),
        (None, 45, None),
        (45, Decimal("67.5"), 90),
        (None, 90, None),
        (90, 105, 120),
        (None, 120, None),
        (120, 140, 160),
        (None, 160, None),
    ]


def test_a_number_without_bounds_reaches_far() -> None:
    """Where a fact gives no lowest and highest value, any number may be recorded."""
    count = space().variables["count"]
    assert [cell.value for cell in count.cells] == [-FAR, 0, FAR]
    assert count.mask_of(Decimal(-7)) == count.mask_of(Decimal(99)) == 0b010


@pytest.mark.parametrize(
    ("name", "value", "cells"),
    [
        ("bend", Decimal(45), [45]),
        ("bend", Decimal("45.0"), [45]),
        ("bend", Decimal("45.1"), [Decimal("67.5")]),
        ("bend", Decimal(0), [0]),
        ("bend", Decimal(160), [160]),
        ("bend", Decimal(161), []),
        ("bend", Decimal("-0.1"), []),
        ("bend", "72", []),
        ("swelling", "rising", ["rising"]),
        ("swelling", "huge", []),
        ("swelling", Decimal(1), []),
    ],
)
def test_a_value_lies_in_one_cell_or_none(name: str, value: Value, cells: list[Value]) -> None:
    """A recorded value is one bit; what the fact cannot be is none."""
    variable = space().variables[name]
    assert variable.values_in(variable.mask_of(value)) == cells


@given(st.decimals(0, 160, places=2), st.sampled_from(["over", "at_least", "below", "at_most"]))
def test_no_condition_tells_two_numbers_of_one_cell_apart(value: Decimal, bound: str) -> None:
    """Whatever number was recorded, its cell answers every bound as the number itself does."""
    made = space()
    variable = made.variables["bend"]
    for limit in (45, 90):
        atom = within("bend", **{bound: limit})
        assert bool(made.mask(atom) & variable.mask_of(value)) == holds(atom, value, variable.fact)


@pytest.mark.parametrize(
    ("atom", "values"),
    [
        (within("bend", below=45), [0, Decimal("22.5")]),
        (within("bend", at_most=45), [0, Decimal("22.5"), 45]),
        (within("bend", over=90), [125, 160]),
        (within("bend", at_least=90), [90, 125, 160]),
        (within("bend", at_least=45, at_most=90), [45, Decimal("67.5"), 90]),
        (within("bend", over=90, below=45), []),
        (Among("bend", (Decimal(90),)), [90]),
        (Within("swelling", (("at_least", "falling"),)), ["falling", "rising"]),
        (Within("swelling", (("below", "falling"),)), ["none"]),
        (Within("swelling", (("over", "none"), ("at_most", "falling"))), ["falling"]),
        (Among("swelling", ("rising", "none")), ["none", "rising"]),
        (Among("fever", ("yes",)), ["yes"]),
    ],
)
def test_a_condition_is_the_cells_in_which_it_holds(atom: Among | Within, values: list[Value]) -> None:
    """Bounds belong to `at_least` and `at_most`, not to `over` and `below`; scales are in order."""
    made = space()
    assert made.variables[atom.name].values_in(made.mask(atom)) == values


@pytest.mark.parametrize(
    ("name", "values"),
    [
        ("fever", ["no"]),
        ("cool_head", ["yes"]),
        ("swelling", ["none"]),
        ("bend", [Decimal(160)]),
        ("side", ["left", "right"]),
    ],
)
def test_the_safest_cell_lies_away_from_danger(name: str, values: list[Value]) -> None:
    """The end that is not the dangerous one; everything where neither end is safer."""
    variable = space().variables[name]
    assert variable.values_in(variable.safest) == values


def test_nothing_recorded_is_every_value() -> None:
    """A fact that nobody recorded may have any of its values, and is known not to be recorded."""
    made = space()
    state = made.unknown()
    assert all(
        state[made.index[name]] == variable.everything
        for name, variable in made.variables.items()
        if name in FACTS
    )
    assert state[made.index["recorded:fever"]] == 0b01


def test_a_recorded_value_is_the_only_one_left() -> None:
    """One value is left, the record is marked, and nothing else is touched."""
    made = space()
    state = made.state({"fever": "no", "bend": Decimal(90)})
    assert made.variables["fever"].values_in(state[made.index["fever"]]) == ["no"]
    assert made.variables["bend"].values_in(state[made.index["bend"]]) == [90]
    assert state[made.index["recorded:fever"]] == 0b10
    assert state[made.index["swelling"]] == 0b111


@pytest.mark.parametrize(
    "values", [{"bend": Decimal(999)}, {"bend": "a lot"}, {"nobody": "yes"}, {"fever": "maybe"}]
)
def test_what_a_fact_cannot_be_counts_as_not_recorded(values: dict[str, Value]) -> None:
    """An impossible value never makes anything surer than it is."""
    made = space()
    assert made.state(values) == made.unknown()


def values_of(made: Space, state: list[int], name: str) -> list[Value]:
    """The values a variable may have in a state."""
    return made.variables[name].values_in(state[made.index[name]])


def test_a_yes_excludes_what_cannot_be_beside_it() -> None:
    """A recorded yes makes the excluded fact a no, without recording it; a no excludes nothing."""
    made = space()
    state = made.state({"cool_head": "yes"})
    assert values_of(made, state, "fever") == ["no"]
    assert state[made.index["recorded:fever"]] == 0b01
    assert values_of(made, made.state({"cool_head": "no"}), "fever") == ["no", "yes"]


@pytest.mark.parametrize("names", [("cool_head", "fever"), ("fever", "cool_head")])
def test_what_is_recorded_stands_over_what_is_excluded(names: tuple[str, str]) -> None:
    """Where a file contradicts itself, a recorded yes is never taken away, in whatever order it is read."""
    made = space()
    state = made.state(dict.fromkeys(names, "yes"))
    assert values_of(made, state, "fever") == ["yes"]
