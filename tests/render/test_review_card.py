"""A card as it is read for review: nothing that is signed goes unsaid."""

from builder.render.review_card import said_of_card
from tests.render.test_review_list import demonstration


def test_every_cell_and_every_caution_is_said() -> None:
    """All rows with limits, why and source; dose, stop signs, cautions and evidence."""
    made = demonstration()
    for card in made.course.content.cards.values():
        told = said_of_card(made, card)
        (grid,) = told.grids
        assert len(grid.rows) == len(card.baseline)
        assert all(row.why in cells[-1] for row, cells in zip(card.baseline, grid.rows, strict=True))
        text = "\n".join(one.line for one in told.said)
        assert card.what in text
        assert all(one in text for one in (*card.stop_if, *card.cautions, *filter(None, [card.licence])))
        if card.evidence:
            assert card.evidence.speaks_for in text
            assert card.evidence.speaks_against in text


def test_how_it_is_done_is_one_line() -> None:
    """Kind, hands, direction, muscle, who moves, and its place in the order."""
    made = demonstration()
    told = said_of_card(made, made.course.content.cards["broaden_passive"])
    said = {one.label: one.line for one in told.said}
    assert said["How"] == (
        "technique · hands-on · across the fibres · muscle slack · the therapist moves"
        " · place 2 in the order, mildest first"
    )
    assert said["Doses asked"] == "Pressure: 1, 2, 3, 4, 5 of 5"
    assert told.grids[0].heads[0] == "Broadening, muscle at rest: phase and place"


def test_an_action_is_without_hands() -> None:
    """What is empty is left out."""
    made = demonstration()
    said = {one.label: one.line for one in said_of_card(made, made.course.content.cards["refer"]).said}
    assert said["How"].startswith("action · no hands on the client")
    assert all(said.values())
