"""A card in one calm page, its grid whole."""

from tests.render.sample_site import body, one, said

FRICTION = body("cards/friction.md")
REFER = body("cards/refer.md")


def test_the_grid_has_no_hole() -> None:
    """Five phases, and in each the five sites, however they are joined."""
    rows = FRICTION.select("table.grid tbody tr")
    assert [said(one(row, "th")) for row in rows][0::4] == ["acute", "does not apply"]
    assert [sum(int(str(cell["colspan"])) for cell in row.select("td")) for row in rows] == [5] * 5


def test_a_cell_is_a_word_with_its_shape() -> None:
    """Each answer is drawn and said; a limited one says so."""
    cells = FRICTION.select("table.grid td")
    assert all(len(cell.select("svg.mark")) == 1 and said(cell) for cell in cells)
    assert [said(cell) for cell in cells if "is-ok" in cell["class"]] == ["OK as written within limits"]


def test_the_grid_can_be_scrolled_by_keyboard() -> None:
    """The frame around the table is a named region that takes focus."""
    frame = one(FRICTION, ".scroller")
    assert (frame["role"], frame["tabindex"]) == ("region", "0")
    assert said(one(FRICTION, f"#{frame['aria-labelledby']}")) == "Where and when"


def test_limits_are_told_in_words() -> None:
    """Where the limits hold, and what they are."""
    assert "remodelling · on the injury time at most 5 min; pressure at most 3 of 5; warmed first" in said(
        FRICTION
    )


def test_the_card_gives_dose_cautions_and_evidence() -> None:
    """Usual dose, when to stop, what speaks for and against, both sides where contested."""
    text = said(FRICTION)
    for part in (
        "time 2 min",
        "Pain still rising",
        "thinned blood",
        "For: Wide use.",
        "Against: Two small trials",
    ):
        assert part in text
    assert "One school works early." in text


def test_an_action_has_no_stroke() -> None:
    """What is no technique has no figure and no dose."""
    assert REFER.select("figure") == []
    assert "Usually" not in said(REFER)


def test_the_index_lists_techniques_before_actions() -> None:
    """Each kind by name, with what it is for."""
    index = body("cards/index.md")
    assert [said(node) for node in index.select(".list b")] == ["Cold pack", "Cross-fibre friction", "Refer"]
    assert len(index.select(".marks > li")) == 5
