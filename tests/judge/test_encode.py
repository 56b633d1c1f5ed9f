"""The encoding: for every client known in full, the solver says what the judge says."""

from decimal import Decimal
from hashlib import sha512
from itertools import product
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from builder.doors.solver import Solver
from builder.judge.encode import Encoding, sites_of
from builder.judge.judge import Judge
from builder.judge.space import RECORDED, Value
from builder.judge.truth import Truth, compiled
from builder.model.card import SITES, Card, site_of
from builder.model.condition import parse
from tests.judge.laws import LENGTH, SMALL, World, safe, shipped_world
from tests.judge.small import CARDS, RULES, content, rule

MORE = [
    rule(
        "bad",
        {"any": [{"signs_behind": 0, "age": {"over": 70}}, {"not": {"phase": "none"}, "cool_head": "no"}]},
    ),
    rule("late", {"all": [{"hours": {"over": 500}}, {"knee_flexion": [0, 160]}]}),
    rule("unknown", {"not": {"recorded": "reinjured"}}),
]
EFFECTS: list[dict[str, Any]] = [
    {
        "session": {"urgency": "emergency"},
        "options": [{"groups": ["all"], "sites": ["on"], "answer": "not_yet"}],
    },
    {"session": {"urgency": "days"}},
    {"options": [{"groups": ["hands_on"], "answer": "barred"}]},
]
RULE_SET = content(rules=[*RULES, *({**one, **effect} for one, effect in zip(MORE, EFFECTS, strict=True))])
JUDGE = Judge(RULE_SET)
DERIVED = {"phase", "severity", "signs_behind", "session_urgency"}
FREE = {
    name: one for name, one in JUDGE.space.variables.items() if name in RULE_SET.facts.facts.keys() - DERIVED
}
CLIENTS = st.fixed_dictionaries(
    {name: st.sampled_from([cell.value for cell in variable.cells]) for name, variable in FREE.items()}
).filter(lambda client: not (client["cool_head"] == client["fever"] == "yes"))
WELL = {"minutes": 10, "barrier": "yes", "urgency": "emergency"}


@settings(max_examples=150)
@given(CLIENTS, st.sampled_from(["mild", "moderate", "severe"]))
def test_the_solver_agrees_with_the_judge(client: dict[str, Value], declared: str) -> None:
    """Phase, referral, every rule and every card at every site come out alike."""
    frame = JUDGE.frame(client, declared, None)  # type: ignore[arg-type]
    sure = {
        name: JUDGE.space.variables[name].values_in(frame.state[JUDGE.space.index[name]]) for name in DERIVED
    }
    if any(len(values) > 1 for values in sure.values()):
        return
    with Solver() as solver:
        made = Encoding(RULE_SET, JUDGE.space, solver)
        known = [literal_of(made, name, value) for name, value in client.items()]
        known += [*made.recorded, literal_of(made, "severity", sure["severity"][0])]
        known += [literal_of(made, "signs_behind", sure["signs_behind"][0])]
        cards = {(one.id, site): made.is_open(one, site) for one in RULE_SET.cards.values() for site in SITES}
        model = solver.model(known)
        assert model is not None
        for name in ("phase", "session_urgency"):
            assert literal_of(made, name, sure[name][0]) in model
        for one in RULE_SET.rules.values():
            fires = compiled(one.when, JUDGE.space)(list(frame.state)) is Truth.TRUE
            assert (solver.model([*known, made.fires[one.id]]) is not None) == fires
        for (name, site), literal in cards.items():
            answers = JUDGE.options.answers(frame, RULE_SET.cards[name], site_of(site), WELL)  # type: ignore[arg-type]
            assert (solver.model([*known, literal]) is not None) == (answers[1] in ("ok", "change"))


def literal_of(made: Encoding, name: str, value: Value) -> int:
    """The literal of the cell that holds a value."""
    return made.cells[name][JUDGE.space.variables[name].mask_of(value).bit_length() - 1]


def encoded(solver: Solver) -> Encoding:
    """The small rule set in a solver."""
    return Encoding(RULE_SET, JUDGE.space, solver)


def test_a_client_has_exactly_one_value_of_each_fact() -> None:
    """No fact without a value, and none with two."""
    with Solver() as solver:
        made = encoded(solver)
        for cells in made.cells.values():
            assert solver.model([-one for one in cells]) is None
            assert all(solver.model([a, b]) is None for a, b in product(cells, cells) if a < b)


def test_what_is_excluded_is_not_possible() -> None:
    """No client has what a fact excludes beside it."""
    with Solver() as solver:
        made = encoded(solver)
        assert solver.model([made.word("cool_head", "yes"), made.word("fever", "yes")]) is None
        assert solver.model([made.word("cool_head", "no"), made.word("fever", "yes")]) is not None


@pytest.mark.parametrize(
    ("written", "possible"),
    [
        ({"fever": "yes"}, True),
        ({"fever": ["yes", "no"]}, True),
        ({"not": {"fever": ["yes", "no"]}}, False),
        ({"fever": "yes", "cool_head": "yes"}, False),
        ({"all": [{"knee_flexion": {"over": 90}}, {"knee_flexion": {"below": 45}}]}, False),
        ({"any": [{"knee_flexion": {"over": 160}}, {"swelling": "rising"}]}, True),
        ({"knee_flexion": {"over": 160}}, False),
        ({"not": {"recorded": "reinjured"}}, True),
    ],
)
def test_a_condition_is_possible_or_not(written: dict[str, object], possible: bool) -> None:  # noqa: FBT001
    """The literal of a condition can be true just where some client meets it."""
    with Solver() as solver:
        made = encoded(solver)
        assert (solver.model([made.literal(parse(written))]) is not None) == possible


def test_whether_something_is_recorded_is_free_unless_assumed() -> None:
    """A client known in full has everything recorded; any other may not."""
    with Solver() as solver:
        made = encoded(solver)
        unknown = made.literal(parse({"not": {"recorded": "reinjured"}}))
        assert made.recorded == [made.cells[f"{RECORDED}reinjured"][1]]
        assert solver.model([unknown]) is not None
        assert solver.model([unknown, *made.recorded]) is None


def test_a_technique_has_sites_and_an_action_has_none() -> None:
    """Where an action is written down does not matter."""
    cards = {one["id"]: Card.model_validate(one) for one in CARDS}
    assert sites_of(cards["stroke"]) == SITES
    assert sites_of(cards["protect"]) == ("on",)


@pytest.mark.parametrize(
    ("effect", "site", "about"),
    [
        ({"cards": ["stroke"]}, "on", True),
        ({"cards": ["cold"]}, "on", False),
        ({"groups": ["hands_on"]}, "remote", True),
        ({"groups": ["hands_on"], "sites": ["on"]}, "on", True),
        ({"groups": ["hands_on"], "sites": ["on"]}, "remote", False),
    ],
)
def test_an_effect_is_about_cards_and_sites(effect: dict[str, object], site: str, about: bool) -> None:  # noqa: FBT001
    """By id or group, and only at the sites it names."""
    given = content(rules=[rule("one", {"fever": "yes"}, options=[{**effect, "answer": "barred"}])])
    with Solver() as solver:
        found = list(Encoding(given, JUDGE.space, solver).about(given.cards["stroke"], site))
    assert [one.id for one, _ in found] == (["one"] if about else [])


def test_the_same_is_said_to_the_solver_once() -> None:
    """One literal for one condition, and for one list of literals in whatever order."""
    with Solver() as solver:
        made = encoded(solver)
        one, other = parse({"fever": "yes"}), parse({"fever": "yes"})
        assert made.literal(one) == made.literal(other)
        assert made.any_of([1, 2]) == made.any_of([2, 1]) != made.any_of([1, 3])


@pytest.mark.parametrize(
    ("found", "grade", "reachable"),
    [
        ({"knee_flexion": "100"}, "mild", True),
        ({"knee_flexion": "100"}, "severe", False),
        ({"knee_flexion": "30"}, "severe", True),
        ({"knee_flexion": "30"}, "mild", False),
        ({"knee_flexion": "100", "hours": "30"}, "severe", True),
    ],
)
def test_a_grade_follows_its_table(found: dict[str, str], grade: str, *, reachable: bool) -> None:
    """In its window a table leaves one grade; outside it what was declared may stand."""
    made = content()
    space = Judge(made).space
    values = {"hours": "18", **found}
    with Solver() as solver:
        proof = Encoding(made, space, solver)
        words = [
            proof.word("injury", "contusion"),
            proof.word("region", "thigh"),
            proof.word("reinjured", "yes"),
        ]
        numbers = [
            proof.cells[name][space.variables[name].mask_of(Decimal(one)).bit_length() - 1]
            for name, one in values.items()
        ]
        assert solver.can_be([*words, *numbers, proof.word("severity", grade)]) is reachable


@pytest.mark.parametrize("world", [SMALL, shipped_world()], ids=["small", "shipped"])
def test_every_client_the_judge_meets_is_a_model(world: World) -> None:
    """What is worked out of a client known in full is what the clauses allow."""
    space = world.judge.space
    with Solver() as solver:
        proof = Encoding(world.content, space, solver)
        for seed in range(150):
            client = world.client(sha512(f"{seed}".encode()).digest() + bytes(LENGTH))
            whole = client.but(
                **{name: client.values.get(name, safe(one)) for name, one in world.facts.items()}
            )
            if any(whole.values[name] == "yes" and world.contradicts(whole, name) for name in world.facts):
                continue
            state = world.frame(whole).state
            cells = [
                proof.cells[name][mask.bit_length() - 1]
                for (name, variable), mask in zip(space.variables.items(), state, strict=True)
                if mask.bit_count() == 1 and not name.startswith("written.")
            ]
            assert solver.can_be(cells), whole
