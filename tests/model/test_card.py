"""Cards: the baseline grid, and the site a card is written for."""

from itertools import product

import pytest
from pydantic import ValidationError

from builder.model.card import PHASES, SITES, Card, Phase, Site, groups_of, site_of
from tests.judge.small import CARDS, card

STROKE = Card.model_validate(CARDS[1])


@pytest.mark.parametrize(
    ("phase", "site", "answer"),
    [
        ("acute", "on", "barred"),
        ("acute", "adjacent", "barred"),
        ("acute", "proximal", "ok"),
        ("early_repair", "adjacent", "not_yet"),
        ("none", "on", "ok"),
    ],
)
def test_a_cell_is_found_by_phase_and_site(phase: Phase, site: Site, answer: str) -> None:
    """The row that names both answers; a row without sites names them all."""
    assert STROKE.cell(phase, site).answer == answer


@pytest.mark.parametrize("written", CARDS, ids=lambda one: one["id"])
def test_every_cell_of_a_filled_grid_is_found(written: dict[str, object]) -> None:
    """No pair of phase and site is left without an answer."""
    made = Card.model_validate(written)
    for phase, site in product(PHASES, SITES):
        row = made.cell(phase, site)
        assert phase in row.phase
        assert site in row.site


def test_an_empty_cell_bars() -> None:
    """Where a card says nothing the answer is the strictest, and says why."""
    holed = Card.model_validate(card("x", "technique", ["ease"], [{"phase": ["acute"], "answer": "ok"}]))
    assert holed.cell("acute", "on").answer == "ok"
    empty = holed.cell("remodelling", "on")
    assert (empty.answer, empty.why) == ("barred", "The card says nothing of this phase and site.")


@pytest.mark.parametrize(
    ("written", "site"), [("distal", "distal"), ("on", "on"), (None, "on"), ("elsewhere", "on"), (3, "on")]
)
def test_a_card_without_a_site_is_meant_for_the_injury(written: object, site: Site) -> None:
    """What is no site counts as on the injury, the strictest place."""
    assert site_of(written) == site


@pytest.mark.parametrize(
    "row",
    [
        {"phase": ["acute"], "answer": "change"},
        {"phase": ["later"], "answer": "ok"},
        {"phase": ["acute"], "site": ["elsewhere"], "answer": "ok"},
        {"phase": ["acute"], "answer": "ok", "source": []},
        {"phase": ["acute"], "answer": "ok", "strength": "strong"},
    ],
)
def test_a_row_is_sourced_and_plain(row: dict[str, object]) -> None:
    """A cell is ok, not yet or barred, for known phases and sites, with a source and its strength."""
    with pytest.raises(ValidationError):
        Card.model_validate(card("x", "technique", ["ease"], [row]))


@pytest.mark.parametrize(
    ("name", "groups"),
    [
        ("cold", {"cold", "techniques", "all"}),
        ("stroke", {"hands_on", "techniques", "all"}),
        ("refer", set()),
        ("ask", set()),
        ("protect", {"all"}),
    ],
)
def test_the_groups_by_which_rules_address_a_card(name: str, groups: set[str]) -> None:
    """Its own, those of its kind, and `all`, which leaves out what only asks or refers."""
    written = next(one for one in CARDS if one["id"] == name)
    assert groups_of(Card.model_validate(written)) == groups


@pytest.mark.parametrize(
    ("changed", "drawn"),
    [
        ({}, False),
        ({"stroke": "along"}, True),
        ({"usual": {"wrap_from": "below", "wrap_to": "above"}}, True),
        ({"usual": {"wrap_from": "below"}}, False),
    ],
)
def test_a_card_that_says_how_it_goes_is_drawn(changed: dict[str, object], *, drawn: bool) -> None:
    """A stroke, or a wrap with its start and end; nothing is drawn from half of it."""
    written = next(one for one in CARDS if one["id"] == "refer")
    assert Card.model_validate({**written, **changed}).drawn == drawn
