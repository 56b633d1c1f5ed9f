"""The table of stop rules and cards for the hands, as a command prints it."""

from builder.flow.flags import WIDTH, explain_flags
from tests.demo.built import opened


def test_no_cell_is_empty_and_none_is_open() -> None:
    """Every rule that stops the session, every card for the hands, each proven to be stopped."""
    lines, data = explain_flags(opened())
    course = opened().course
    assert course is not None
    hands = {name for name, card in course.content.cards.items() if card.hands_on}
    rules = {
        name
        for name, rule in course.content.rules.items()
        if rule.session and rule.session.urgency in ("emergency", "same_day")
    }
    assert data["flags"].keys() == rules
    assert all(set(row) == hands and all(row.values()) for row in data["flags"].values())
    assert data["open"] == 0
    assert lines[-1] == f"{len(rules)} rules, {len(hands)} cards, 0 left open."
    assert max(map(len, lines)) <= WIDTH


def test_the_legend_names_every_column() -> None:
    """As many letters as cards, over as many marks in each row."""
    lines, data = explain_flags(opened())
    row = next(line for line in lines if line.startswith("  chest_signs "))
    assert row.split()[1:] == ["x"] * len(data["flags"]["chest_signs"])
    assert "  f  Gliding strokes" in lines
