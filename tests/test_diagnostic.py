"""Things to fix: sorted by place, told once, counted by level."""

from builder.diagnostic import LEVELS, Diagnostic, Level, count_levels, in_order
from builder.place import Place


def made(check: str = "gap", line: int = 1, message: str = "Missing.", level: Level = "error") -> Diagnostic:
    """One thing to fix."""
    return Diagnostic(check, level, Place("case.yml", line), message, "Add it.")


def test_things_to_fix_are_sorted_by_place_then_check_then_message() -> None:
    """The order does not depend on which check ran first."""
    found = [made("b", 2), made("a", 10), made("b", 1), made("a", 1), made("a", 1, "Also missing.")]
    told = [(one.place.line, one.check, one.message) for one in in_order(found)]
    assert told == [
        (1, "a", "Also missing."),
        (1, "a", "Missing."),
        (1, "b", "Missing."),
        (2, "b", "Missing."),
        (10, "a", "Missing."),
    ]
    assert in_order(found) == in_order(found[::-1])


def test_the_same_thing_is_told_once() -> None:
    """Two checks' equal findings are one; a finding of another level is another."""
    assert in_order([made(), made()]) == [made()]
    assert len(in_order([made(), made(level="advice")])) == 2


def test_every_level_is_counted() -> None:
    """A level without a finding counts zero, so that the shape never changes."""
    assert count_levels([]) == dict.fromkeys(LEVELS, 0)
    found = [made(), made(line=2), made(level="advice")]
    assert count_levels(found) == {"error": 2, "warning": 0, "advice": 1}
