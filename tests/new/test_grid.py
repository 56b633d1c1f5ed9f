"""The baseline of a new card is as strict as the strictest of its family."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from builder.doors.yaml import read_yaml
from builder.model.card import PHASES, SITES, Card
from builder.model.condition import parse_limits
from builder.new.grid import STRICTER, grid_text, strictest
from tests.content.library import content

CARDS = content().cards
GROUPS = sorted({group for card in CARDS.values() for group in card.groups})


def family(group: str) -> list[Card]:
    """The cards of a group."""
    return [card for card in CARDS.values() if group in card.groups]


@settings(max_examples=300)
@given(
    st.lists(st.sampled_from(sorted(CARDS)), min_size=1, max_size=4),
    st.sampled_from(PHASES),
    st.sampled_from(SITES),
)
def test_no_card_of_the_family_is_stricter(names: list[str], phase: str, site: str) -> None:
    """In no phase and at no site; where it allows, every limit of every card of the family still holds."""
    cards = [CARDS[name] for name in names]
    place = next(one for one in PHASES if one == phase), next(one for one in SITES if one == site)
    made = strictest(cards, *place)
    for card in cards:
        cell = card.cell(*place)
        assert STRICTER.index(made.answer) >= STRICTER.index(cell.answer)
        assert made.answer != "ok" or set(cell.limits) <= set(made.limits)


@pytest.mark.parametrize("group", GROUPS)
def test_every_family_makes_a_whole_grid(group: str) -> None:
    """Each phase and site has exactly one line, and the lines read back."""
    parsed = read_yaml(f"baseline:\n{grid_text(family(group))}\n".encode(), "x.yml")
    assert parsed.found == ()
    assert isinstance(parsed.value, dict)
    rows = parsed.value["baseline"]
    places = sorted((phase, site) for row in rows for phase in row["phase"] for site in row["site"])
    assert places == sorted((phase, site) for phase in PHASES for site in SITES)
    assert all(parse_limits(row.get("limits", {})) is not None for row in rows)
