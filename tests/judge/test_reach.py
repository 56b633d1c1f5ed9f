"""How far an answer reaches: the solver ranks every option of a client known in full as the judge does."""

from hypothesis import given, settings
from hypothesis import strategies as st

from builder.doors.solver import Solver
from builder.judge.encode import Encoding, sites_of
from builder.judge.reach import Reach
from builder.judge.space import Value
from builder.model.card import ANSWERS, site_of
from tests.judge.test_encode import CLIENTS, DERIVED, JUDGE, RULE_SET, literal_of

WRITTEN = {
    name.removeprefix("written."): one
    for name, one in JUDGE.space.variables.items()
    if name.startswith("written.") and name != "written.site"
}
OPTIONS = st.fixed_dictionaries(
    {name: st.sampled_from([cell.value for cell in one.cells]) for name, one in WRITTEN.items()}
)


@settings(max_examples=100)
@given(CLIENTS, OPTIONS)
def test_the_solver_ranks_as_the_judge_does(client: dict[str, Value], written: dict[str, Value]) -> None:
    """Every card at every site is at least as strict as its answer, and no stricter."""
    frame = JUDGE.frame(client, "mild", None)
    space = JUDGE.space
    if any(frame.state[space.index[name]].bit_count() > 1 for name in DERIVED):
        return
    with Solver() as solver:
        made = Encoding(RULE_SET, space, solver)
        reach = Reach(made)
        derived = [cells[0] for cells in _derived(made, frame.state)]
        known = [literal_of(made, name, value) for name, value in client.items()]
        known += [*made.recorded, *derived]
        known += [literal_of(made, f"written.{name}", value) for name, value in written.items()]
        for card in RULE_SET.cards.values():
            for site in sites_of(card):
                answer = JUDGE.options.answers(frame, card, site_of(site), written)[0]
                here = [*known, *reach.here(site)]
                for rank in range(1, len(ANSWERS)):
                    literal = reach.at_least(card.id, site, rank)
                    assert (solver.model([*here, literal]) is not None) == (ANSWERS.index(answer) >= rank)


def _derived(made: Encoding, state: tuple[int, ...]) -> list[list[int]]:
    masks = {name: state[JUDGE.space.index[name]] for name in DERIVED}
    return [[made.cells[name][mask.bit_length() - 1]] for name, mask in masks.items()]


def test_every_push_knows_where_it_comes_from() -> None:
    """A rule's pushes carry its name, and those of a cell none; what must be written is kept beside it."""
    with Solver() as solver:
        reach = Reach(Encoding(RULE_SET, JUDGE.space, solver))
        refer = reach.pushes["refer", "on"]
        assert {one.rule for one in refer} == {"refer_soon_enough"}
        assert all(one.demand is not None and one.rank == 1 for one in refer)
        cold = reach.pushes["cold", "remote"]
        assert {one.rule for one in cold if one.demand} == {None}
        assert "numb" in {one.rule for one in cold}
