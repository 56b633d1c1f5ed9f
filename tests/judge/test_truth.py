"""Conditions over what may be: surely true, surely false, or open."""

from itertools import product
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.judge.space import Space
from builder.judge.truth import Conditions, Truth, compiled, open_facts
from builder.model.condition import AllOf, AnyOf, Node, Not, parse
from builder.model.fact import Fact, Value
from tests.judge.small import fact

T, F, O = Truth.TRUE, Truth.FALSE, Truth.OPEN  # noqa: E741 - as in a table
RECORDED: dict[str, Value] = {"t": "yes", "f": "no"}
NAMES = {T: "t", F: "f", O: "o"}
FACTS = {name: Fact.model_validate(fact("yes_no", "sign", "yes")) for name in ("t", "f", "o", "p")}
CONDITION = parse({"any": [{name: "yes"} for name in FACTS] + [{"recorded": name} for name in FACTS]})
SPACE = Space(FACTS, (CONDITION,), ())


def truth(written: dict[str, Any] | Node, values: dict[str, Value] = RECORDED) -> Truth:
    """The truth of a condition where `t` is surely yes, `f` surely no, and the others not recorded."""
    return compiled(parse(written), SPACE)(SPACE.state(values))


def atom(value: Truth) -> dict[str, str]:
    """A condition of that truth."""
    return {NAMES[value]: "yes"}


@pytest.mark.parametrize("value", [T, F, O])
def test_a_leaf_is_true_false_or_open(value: Truth) -> None:
    """It surely holds, surely does not, or may."""
    assert truth(atom(value)) is value


@pytest.mark.parametrize(("value", "turned"), [(T, F), (F, T), (O, O)])
def test_not(value: Truth, turned: Truth) -> None:
    """`not` turns what is sure and leaves what is open."""
    assert truth({"not": atom(value)}) is turned


@pytest.mark.parametrize(
    ("left", "right", "both", "either"),
    [
        (T, T, T, T),
        (T, F, F, T),
        (T, O, O, T),
        (F, F, F, F),
        (F, O, F, O),
        (O, O, O, O),
    ],
)
def test_all_and_any(left: Truth, right: Truth, both: Truth, either: Truth) -> None:
    """`all` is as weak as its weakest part, `any` as strong as its strongest, either way round."""
    for one, other in ((left, right), (right, left)):
        assert truth({"all": [atom(one), atom(other)]}) is both
        assert truth({"any": [atom(one), atom(other)]}) is either


@given(st.lists(st.sampled_from([T, F, O]), min_size=1, max_size=6))
def test_many_parts(values: list[Truth]) -> None:
    """With any number of parts the weakest and the strongest decide."""
    assert truth({"all": [atom(one) for one in values]}) is min(values)
    assert truth({"any": [atom(one) for one in values]}) is max(values)


def test_no_parts() -> None:
    """Nothing to hold always holds; nothing to choose from never does."""
    assert truth(AllOf(())) is T
    assert truth(AnyOf(())) is F


def test_several_values_of_one_fact() -> None:
    """A list that names every possible value is surely true, though none is recorded."""
    assert truth({"o": ["yes", "no"]}) is T
    assert truth({"o": ["yes"]}) is O


@pytest.mark.parametrize(("name", "value"), [("t", T), ("f", T), ("o", F)])
def test_recorded_is_never_open(name: str, value: Truth) -> None:
    """Whether something is recorded is known, whatever was recorded."""
    assert truth({"recorded": name}) is value
    assert truth({"not": {"recorded": name}}) is Truth(2 - value)


@given(st.data())
def test_an_answer_that_is_sure_stays_when_more_is_recorded(data: st.DataObject) -> None:
    """Recording what was open never turns sure into its opposite, nor back to open."""
    leaves = st.sampled_from([{name: value} for name, value in product(FACTS, ("yes", "no"))])
    nodes = st.recursive(
        leaves,
        lambda below: st.one_of(
            st.fixed_dictionaries({"not": below}),
            st.fixed_dictionaries({"all": st.lists(below, min_size=1, max_size=3)}),
            st.fixed_dictionaries({"any": st.lists(below, min_size=1, max_size=3)}),
        ),
        max_leaves=6,
    )
    written = data.draw(nodes)
    before = truth(written)
    after = truth(
        written, {**RECORDED, data.draw(st.sampled_from("op")): data.draw(st.sampled_from(["yes", "no"]))}
    )
    assert before is O or after is before


@pytest.mark.parametrize(
    ("written", "names"),
    [
        ({"t": "yes"}, []),
        ({"o": "yes"}, ["o"]),
        ({"p": "yes", "t": "yes", "o": "no"}, ["p", "o"]),
        ({"any": [{"not": {"o": "yes"}}, {"o": "no"}]}, ["o"]),
        ({"recorded": "o"}, []),
    ],
)
def test_the_open_facts_of_a_condition(written: dict[str, Any], names: list[str]) -> None:
    """Those that may still be several things, each once, in order of mention."""
    assert open_facts(parse(written), SPACE, SPACE.state(RECORDED)) == names


def nodes() -> st.SearchStrategy[Node]:
    """Conditions of every form over the four facts."""
    leaf = st.sampled_from(
        [parse({name: "yes"}) for name in FACTS] + [parse({"recorded": name}) for name in FACTS]
    )
    return st.recursive(
        leaf,
        lambda inner: (
            st.lists(inner, min_size=1, max_size=3).map(lambda some: AllOf(tuple(some)))
            | st.lists(inner, min_size=1, max_size=3).map(lambda some: AnyOf(tuple(some)))
            | inner.map(Not)
        ),
        max_leaves=5,
    )


VALUES = st.dictionaries(st.sampled_from(sorted(FACTS)), st.sampled_from(["yes", "no"]))


@given(st.lists(nodes(), max_size=5), VALUES, VALUES)
def test_what_does_not_differ_need_not_be_asked_again(
    some: list[Node], one: dict[str, Value], other: dict[str, Value]
) -> None:
    """Beside a known state, every condition has the truth that it has by itself."""
    conditions = Conditions([(node, compiled(node, SPACE)) for node in some], SPACE)
    near = conditions.known(SPACE.state(one))
    state = SPACE.state(other)
    assert conditions.known(state, near).truths == [compiled(node, SPACE)(state) for node in some]
