"""Faults of the machine: message and remedy, apart and together."""

import pytest

from builder.fault import Fault


def test_message_and_remedy_are_kept_apart() -> None:
    """A printer can place the two by itself."""
    fault = Fault("The disk is full.", "Make room.")
    assert (fault.message, fault.remedy) == ("The disk is full.", "Make room.")


@pytest.mark.parametrize(
    ("fault", "line"),
    [(Fault("No.", "Try again."), "No. Try again."), (Fault("No."), "No.")],
)
def test_a_fault_reads_as_one_line(fault: Fault, line: str) -> None:
    """Printed as it is, a fault has no loose end."""
    assert str(fault) == line
