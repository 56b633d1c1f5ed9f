"""What a rule set names."""

from decimal import Decimal

from builder.judge.named import conditions, cuts, dating, of_sessions
from builder.model.condition import atoms
from tests.judge.small import content

MADE = content()


def test_every_condition_is_named() -> None:
    """Of rules, limits of cards, tables and signs alike."""
    names = {atom.name for node in conditions(MADE) for atom in atoms(node)}
    assert names >= {"fever", "session_urgency", "knee_flexion", "swelling", "injury"}


def test_severity_and_phase_are_worked_out_from_time_measure_and_signs() -> None:
    """The session's own facts are named apart from them."""
    assert {"hours", "knee_flexion", "swelling", "injury", "region"} <= set(dating(MADE))
    assert set(of_sessions(MADE)) == {"fever"}


def test_numbers_are_cut_where_clocks_tables_and_ladders_say() -> None:
    """A phase's end, a table's window, a dose of a ladder."""
    found = set(cuts(MADE))
    assert {("hours", Decimal(48)), ("hours", Decimal(12)), ("written.minutes", Decimal(30))} <= found
