"""The library: content and course as read, never changed after."""

from dataclasses import FrozenInstanceError

import pytest

from tests.check.small_course import course


def test_nothing_in_the_library_is_set_again() -> None:
    """Neither the course nor its content can be exchanged under the judge's hands."""
    made = course()
    with pytest.raises(FrozenInstanceError):
        made.content = made.content  # type: ignore[misc]
    with pytest.raises(FrozenInstanceError):
        made.content.rules = {}  # type: ignore[misc]


def test_a_course_has_no_places_and_no_own_rules_unless_it_says_so() -> None:
    """What was not read from files has no places; shipped rules are nobody's own."""
    made = course()
    assert (made.places, made.content.own_rules) == ({}, frozenset())
