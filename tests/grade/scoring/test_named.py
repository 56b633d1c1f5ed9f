"""A policy is found by its name alone."""

import pytest

from builder.fault import Fault
from builder.grade.scoring.named import named


def test_a_policy_is_found_by_its_name() -> None:
    """The one of that name is given back."""
    assert named({"a": 1, "b": 2}, "b") == 2


def test_an_unknown_name_is_a_fault_with_the_known_ones() -> None:
    """The fault says what there is."""
    with pytest.raises(Fault, match=r"`c`.*Use one of a, b\."):
        named({"a": 1, "b": 2}, "c")
