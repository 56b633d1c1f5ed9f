"""Which policies are owed where."""

from typing import get_args

from builder.model.owed import OWED, Where, policies_at
from tests.check.small_course import course

POLICIES = {"refund": "Paid back.", "second_try": "Twice.", "our_own": "As we like it."}


def test_where_nothing_is_set_apart_all_of_them_are_owed() -> None:
    """In the order of the course, with the course's own."""
    file = course(policies=POLICIES).file
    told = {"Refund": "Paid back.", "Second try": "Twice.", "Our own": "As we like it."}
    for where in ("start", "handout"):
        assert policies_at(file, where) == told


def test_elsewhere_only_what_belongs_there() -> None:
    """A station tells of the second try and not of money; what the course has not is left out."""
    file = course(policies=POLICIES).file
    assert policies_at(file, "station") == {"Second try": "Twice."}
    assert policies_at(file, "flyer") == {"Refund": "Paid back."}
    assert policies_at(file, "certificate") == {}


def test_every_place_is_a_place() -> None:
    """What is set apart is so for places that there are."""
    assert OWED.keys() < set(get_args(Where))
