"""Phases, severity tables and background lists as they are read for review."""

from builder.render.review_tables import said_of_background, said_of_phases, said_of_table
from tests.render.test_review_list import demonstration


def test_the_phases_say_every_clock_and_sign() -> None:
    """The calendar, the signs that hold it back and those that cast doubt, each with its source."""
    made = demonstration()
    book = made.course.content.phases
    clocks, signs, doubt = said_of_phases(made).grids
    assert clocks.rows[0][:4] == ("muscle, mild", "48 h", "7 days", "21 days")
    assert [len(one.rows) for one in (clocks, signs, doubt)] == [
        len(book.clocks),
        len(book.signs),
        len(book.doubt),
    ]
    assert signs.rows[0] == (
        "Swelling: going up",
        "acute",
        "Swelling that is going up means acute, whatever the date.",
        "Common practice, no source",
    )


def test_a_table_says_its_window_and_its_bands() -> None:
    """Where it applies, what is measured when, and each grade."""
    made = demonstration()
    tables = made.course.content.severity.tables
    said = {one.label: one.line for one in said_of_table(made, tables["thigh_contusion"]).said}
    assert said["Measured"] == "Knee bend, 12 h to 24 h after the injury"
    assert said["Moderate"] == "knee bend at least 45° and at most 90°"
    for table in tables.values():
        told = [one.line for one in said_of_table(made, table).said]
        assert len(told) >= len(table.bands) + len(table.raised) + 3
        assert table.note is None or table.note in told
        assert ("It can only make a declared grade worse." in told) == table.least


def test_a_background_list_says_that_it_is_only_taught() -> None:
    """Every line with its points, both sides, and the note."""
    made = demonstration()
    for one in made.course.content.severity.background.values():
        lines = [said.line for said in said_of_background(made, one).said]
        assert lines[0] == "Taught as background. Nothing is worked out from it for a client."
        assert all(any(row.text in line for line in lines) for row in one.rows)
    score = said_of_background(made, made.course.content.severity.background["clot_score"])
    assert any(said.line.endswith("points: -2") for said in score.said)
