"""The labelled questions are many, invented once, and parted without choice."""

from __future__ import annotations

from collections import Counter

from tests.check.wording.labelled import halves, labelled_questions


def test_there_are_enough_questions_with_keys_that_exist() -> None:
    """At least 60 questions, each with its own id and a key among its options."""
    found = labelled_questions()
    assert len(found) >= 60
    assert len({one.id for one in found}) == len(found)
    assert all(one.right and max(one.right) < len(one.options) for one in found)


def test_the_halves_part_every_question_and_hold_every_label() -> None:
    """Each question is in one half; both halves hold each of the nine labels, and questions without any."""
    tuning, untouched = halves()
    assert sorted(one.id for one in tuning + untouched) == sorted(one.id for one in labelled_questions())
    for half in (tuning, untouched):
        counted = Counter(label for one in half for label in one.faults)
        assert len(counted) == 9
        assert min(counted.values()) >= 3
        assert sum(not one.faults for one in half) >= 20
