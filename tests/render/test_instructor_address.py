"""Where the pages of the instructor's side stand."""

import pytest

from builder.render import instructor_address as where


@pytest.mark.parametrize(
    ("found", "address"),
    [
        (where.of_visit("ring_thigh", "day_two"), "cases/ring-thigh.md#visit-day_two"),
        (where.of_table("final", "B"), "tests/final-b-table.md"),
        (where.of_station("friction_station"), "stations/friction-station.md"),
        (where.of_handouts("friction_station"), "stations/friction-station-handouts.md"),
        (where.of_sheet("friction_station"), "stations/friction-station-sheet.md"),
        (where.of_rule("no_consent"), "rules.md#rule-no_consent"),
        (where.of_rule("baseline.cold_pack"), "cards.md#card-cold_pack"),
        (where.of_source("ryan1991"), "sources.md#source-ryan1991"),
    ],
)
def test_an_address_follows_from_a_name(found: str, address: str) -> None:
    """Pages and places are named after what they hold; a baseline stands with its card."""
    assert found == address
